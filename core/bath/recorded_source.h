#pragma once

// A thermometer that plays what was recorded: the twin of every live one, for tests and rehearsal.
//
// The recording is text, one reading a line, in order of time; lines that are blank or begin with #
// are skipped. Either `SECONDS VALUE` (since the start; °C with a point, or a fault's word as in
// the trail), or JSON with "t" (RFC 3339) and one of "indicated_c", "fault" or "w1" (the lines of a
// one-wire sensor, judged as the live driver would). The first JSON line's instant is the start.

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/bath/source.h"

namespace bathside {

struct RecordingFault {
    std::size_t line = 0;  // from 1
    std::string found;
    std::string expected;
};

class RecordedSource final : public ReadingSource {
public:
    /// `start` is the instant at which the recording begins to play.
    [[nodiscard]] static Result<std::unique_ptr<RecordedSource>, RecordingFault> from(
        std::string_view recording, const ProbeId& probe, const Stamp& start);

    [[nodiscard]] std::optional<RawReading> poll(const Stamp& now) override;

private:
    explicit RecordedSource(std::vector<RawReading> readings);

    std::vector<RawReading> m_readings;
    std::size_t m_next = 0;
};

}  // namespace bathside
