#pragma once

// Which of a sound server's devices to play to. Pure.
//
// The proven device first, then the one in use, then the default, then any other. The server's
// dummy device is none: it takes every sample and nobody hears it. A muted device counts only where
// we may unmute it.

#include <cstdint>
#include <set>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "ui/sound/audio_out.h"

namespace bathside::ui {

struct SinkFacts {
    std::string name;
    std::string description;
    double level = 0.0;
    bool isMuted = false;
    bool isUnplugged = false;  // the jack in use says that nothing is in it
    bool isFlat = false;       // the stream's volume is the device's
    std::uint8_t channels = 1;
};

struct SinkSurvey {
    std::vector<SinkFacts> sinks;
    std::string defaultName;
};

struct SinkWish {
    std::string preferred{};
    std::string current{};
    std::set<std::string> refused{};  // failed a moment ago
    bool mayUnmute = false;
};

/// The device's name, or why there is none.
[[nodiscard]] Result<std::string, OutFault> chooseSink(const SinkSurvey& survey,
                                                       const SinkWish& wish);

/// Those that a person may choose among.
[[nodiscard]] std::vector<DeviceName> deviceNames(const SinkSurvey& survey);

}  // namespace bathside::ui
