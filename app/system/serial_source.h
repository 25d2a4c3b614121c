#pragma once

// A thermometer or meter that sends a line of text per reading over a serial port: `SerialLines`,
// each line made a reading. A port that goes is `Lost`, told once.

#include <filesystem>
#include <optional>
#include <string>

#include "app/system/serial_lines.h"
#include "core/bath/line_pattern.h"
#include "core/bath/source.h"

namespace bathside::app {

struct SerialSetting {
    std::filesystem::path port;  // "/dev/ttyUSB0"
    int baud = 9'600;            // `isBaud`
    LinePattern pattern;
    LineMeaning meaning;
};

class SerialSource final : public ReadingSource {
public:
    SerialSource(SerialSetting setting, ProbeId probe);

    [[nodiscard]] std::optional<RawReading> poll(const Stamp& now) override;
    /// As it came, whatever the pattern makes of it; none since the port was opened.
    [[nodiscard]] const std::optional<std::string>& lastLine() const noexcept
    {
        return m_lines.last();
    }

private:
    SerialSetting m_setting;
    ProbeId m_probe;
    SerialLines m_lines;
};

}  // namespace bathside::app
