#pragma once

// Keeps one way to the loudspeaker working: the first of its paths that is well, else the next.
//
// A lost path is tried again every second for as long as it takes, and used again once it is back.
// `look` must be called at least once a second and never waits. When no path is left it reports
// SoundLost, and SoundFound when one is there again. Belongs to the alarm thread; `now` is of the
// real boot clock, whatever clock the alarms run by.

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/base/time.h"
#include "ui/sound/audio_out.h"
#include "ui/sound/bell_out.h"

namespace bathside::ui {

struct SounderChange {
    enum class Kind : std::uint8_t { Lost, Found, Moved } kind{};
    std::string from;
    std::string to;
    OutFault fault{};
};

class Sounder {
public:
    static constexpr Micros kRetry = std::chrono::seconds{1};
    static constexpr Micros kPatience = std::chrono::seconds{1};         // for a path to open
    static constexpr Micros kStalled = std::chrono::milliseconds{1500};  // without taking a sample

    explicit Sounder(std::vector<std::unique_ptr<AudioOut>> paths);

    /// Before the first look. Called from other threads when a path's status changes.
    void listen(const std::function<void()>& changed);
    void preferDevice(std::string device);
    void holdVolume(std::optional<double> atLeast);

    /// Sees to the paths; what changed since the last look.
    [[nodiscard]] std::vector<SounderChange> look(BootTime now);
    [[nodiscard]] std::vector<VolumeRaise> takeRaises();
    void close();

    [[nodiscard]] bool isReady() const { return m_used.has_value(); }
    /// Grows each time another device is used: what was sounding has to be begun again on it.
    [[nodiscard]] std::uint64_t generation() const { return m_generation; }
    /// Of the path in use, else of the first.
    [[nodiscard]] OutStatus status() const;

    void play(Voice voice, std::shared_ptr<const Burst> burst);
    void silence();

private:
    struct Path {
        std::unique_ptr<AudioOut> out;
        std::optional<BootTime> opened{};  // last try; none: closed
        bool isGivenUp = false;            // failed since it was last well: the next one may serve
        OutFault fault = OutFault::NoServer;
        std::uint64_t asked = 0;
        BootTime askedAt{};
    };

    void see(Path& path, BootTime now);
    [[nodiscard]] bool hasStalled(Path& path, const OutStatus& status, BootTime now) const;
    static void shut(Path& path);
    [[nodiscard]] std::vector<SounderChange> use(std::optional<std::size_t> path);
    [[nodiscard]] std::vector<SounderChange> nothing();

    std::vector<Path> m_paths;
    std::string m_preferred;
    std::string m_device;  // in use, or the last that was
    std::optional<std::size_t> m_used;
    std::optional<BootTime> m_lookedAt;
    std::uint64_t m_generation = 0;
    bool m_isLost = false;
};

/// The station's paths in their order (DEVELOPERS.md, the decision on sound): a stream of our own
/// to the sound server, Qt Multimedia, the machine's bell (none: only the first two).
[[nodiscard]] std::unique_ptr<Sounder> standardSounder(BellOut::Tone bell);

}  // namespace bathside::ui
