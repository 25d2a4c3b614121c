#pragma once

// A thermometer, meter or balance that sends a line of text per reading over a serial port.
//
// The port is opened raw, 8 data bits, no parity, without ever blocking; `poll` takes what has come
// and answers at once. When the port goes it says `Lost` once and tries to open it again at most
// once a second, so that a plug that is pulled and put back just goes on. A line is stamped with
// the instant of the poll that completes it; whatever came before the first line end after opening
// is dropped, because it may be the tail of a line. Source: termios(3), POSIX.1-2017 ch. 11.

#include <deque>
#include <filesystem>
#include <optional>
#include <string>

#include "core/bath/line_pattern.h"
#include "core/bath/source.h"

namespace bathside::app {

/// The speeds that termios names and such devices use.
[[nodiscard]] bool isBaud(int baud);

struct SerialSetting {
    std::filesystem::path port;  // "/dev/ttyUSB0"
    int baud = 9'600;            // `isBaud`
    LinePattern pattern;
    LineMeaning meaning;
};

class SerialSource final : public ReadingSource {
public:
    static constexpr Micros kTryAgain{1'000'000};

    SerialSource(SerialSetting setting, ProbeId probe);
    ~SerialSource() override;

    [[nodiscard]] std::optional<RawReading> poll(const Stamp& now) override;
    /// As it came, whatever the pattern makes of it; none since the port was opened.
    [[nodiscard]] const std::optional<std::string>& lastLine() const noexcept { return m_last; }

private:
    void openWhenDue(const Stamp& now);
    void lose(const Stamp& now);
    void takeBytes(const Stamp& now);
    void takeLines(const Stamp& now);
    void add(std::variant<MilliCelsius, ReadingFault> value, const Stamp& at);

    SerialSetting m_setting;
    ProbeId m_probe;
    int m_port = -1;
    bool m_wasTold = false;   // that the port is not there
    bool m_isInStep = false;  // a line end has been seen since the port was opened
    std::optional<BootTime> m_lastTry;
    std::string m_text;  // of a line that has not ended
    std::optional<std::string> m_last;
    std::deque<RawReading> m_waiting;
};

}  // namespace bathside::app
