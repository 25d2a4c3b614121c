#pragma once

// A way to the loudspeaker, behind a port.
//
// Opening is asked for and happens on the path's own thread: `open` and `close` return soon and
// `status` tells how far it is. Nothing here waits for the UI thread. An open path plays silence
// all the time, so that the device does not fall asleep. All functions are for one thread, that
// of the alarms; the listener is called from the path's own thread and may only poke.

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "ui/sound/burst.h"
#include "ui/sound/mixer.h"

namespace bathside::ui {

enum class OutState : std::uint8_t { Closed, Opening, Ready, Failed };

enum class OutFault : std::uint8_t {
    NoServer,   // there is nobody to play to
    NoDevice,   // a server, but no loudspeaker behind it
    Muted,      // every device is muted or at zero
    Refused,    // the device would not take a stream
    WriteLost,  // a write to it failed
    Stalled,    // it stopped asking for samples
};

struct Volume {
    double level = 0.0;  // 0 to 1 and over, as the server's sliders show it
    bool muted = false;
    friend bool operator==(const Volume&, const Volume&) = default;
};

/// The volume was brought below what was proven, and raised again.
struct VolumeRaise {
    std::string device;
    Volume found;
    double raisedTo = 0.0;
    friend bool operator==(const VolumeRaise&, const VolumeRaise&) = default;
};

struct DeviceName {
    std::string id;           // what `open` takes
    std::string description;  // what a person reads
    friend bool operator==(const DeviceName&, const DeviceName&) = default;
};

struct OutStatus {
    OutState state = OutState::Closed;
    std::optional<OutFault> fault{};  // of the last failure; none while it is well
    std::string device{};             // in use, empty when none
    std::optional<Volume> volume{};   // none: this path cannot tell
    std::vector<DeviceName> devices{};
    std::uint64_t asked = 0;       // grows as the device takes samples; standing still: stalled
    std::uint64_t underflows = 0;  // how often it ran dry
};

class AudioOut {
public:
    AudioOut() = default;
    AudioOut(const AudioOut&) = delete;
    AudioOut& operator=(const AudioOut&) = delete;
    virtual ~AudioOut() = default;

    /// Starts, or starts anew after a failure. Empty: whatever device is the default.
    virtual void open(const std::string& device) = 0;
    virtual void close() = 0;
    virtual void play(Voice voice, std::shared_ptr<const Burst> burst) = 0;
    /// Ends the alarm that sounds, not the cues.
    virtual void silence() = 0;

    /// Keeps the device at this level or above and not muted, until told otherwise.
    virtual void holdVolume(std::optional<double> /*atLeast*/) {}
    [[nodiscard]] virtual std::vector<VolumeRaise> takeRaises() { return {}; }

    [[nodiscard]] virtual OutStatus status() const = 0;
    /// Whether this path may reach a loudspeaker when the one before it failed that way.
    [[nodiscard]] virtual bool canFollow(OutFault) const { return true; }
    /// Before the first `open`. Called at each change of status.
    virtual void listen(std::function<void()> changed) = 0;
};

}  // namespace bathside::ui
