#pragma once

// Lines of text from a device on a serial port: a thermometer, a meter, a balance.
//
// The port is opened raw, 8 data bits, no parity, without ever blocking; `poll` takes what has come
// and answers at once. When the port goes it says so once and tries to open it again at most once a
// second, so that a plug that is pulled and put back just goes on. A line is stamped with the
// instant of the poll that completes it; whatever came before the first line end after opening is
// dropped, because it may be the tail of a line. Source: termios(3), POSIX.1-2017 ch. 11.

#include <deque>
#include <filesystem>
#include <optional>
#include <string>

#include "core/base/time.h"

namespace bathside::app {

/// The speeds that termios names and such devices use.
[[nodiscard]] bool isBaud(int baud);

struct SerialSaid {
    Stamp at;
    std::optional<std::string> line;  // none: the port is gone
};

class SerialLines {
public:
    static constexpr Micros kTryAgain{1'000'000};

    /// `baud`: `isBaud`. Lines longer than `longest` are cut to one more.
    SerialLines(std::filesystem::path port, int baud, std::size_t longest);
    ~SerialLines();
    SerialLines(const SerialLines&) = delete;
    SerialLines& operator=(const SerialLines&) = delete;

    [[nodiscard]] std::optional<SerialSaid> poll(const Stamp& now);
    /// As it came; none since the port was opened.
    [[nodiscard]] const std::optional<std::string>& last() const noexcept { return m_last; }

private:
    void openWhenDue(const Stamp& now);
    void lose(const Stamp& now);
    void takeBytes(const Stamp& now);
    void takeLines(const Stamp& now);
    void add(std::optional<std::string> line, const Stamp& at);

    std::filesystem::path m_path;
    int m_baud;
    std::size_t m_longest;
    int m_port = -1;
    bool m_wasTold = false;   // that the port is not there
    bool m_isInStep = false;  // a line end has been seen since the port was opened
    std::optional<BootTime> m_lastTry;
    std::string m_text;  // of a line that has not ended
    std::optional<std::string> m_last;
    std::deque<SerialSaid> m_waiting;
};

}  // namespace bathside::app
