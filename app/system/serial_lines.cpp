#include "app/system/serial_lines.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cerrno>
#include <utility>

#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

namespace bathside::app {
namespace {

constexpr int kClosed = -1;
constexpr const char* kEnds = "\r\n";
constexpr std::size_t kMostWaiting = 1'000;

struct Speed {
    int baud;
    speed_t code;
};

constexpr std::array<Speed, 10> kSpeeds{{{300, B300},
                                         {600, B600},
                                         {1'200, B1200},
                                         {2'400, B2400},
                                         {4'800, B4800},
                                         {9'600, B9600},
                                         {19'200, B19200},
                                         {38'400, B38400},
                                         {57'600, B57600},
                                         {115'200, B115200}}};

bool setUp(int port, int baud)
{
    termios line{};
    if (tcgetattr(port, &line) != 0)
        return false;
    cfmakeraw(&line);
    line.c_cflag |= CLOCAL | CREAD;
    const speed_t speed = std::ranges::find(kSpeeds, baud, &Speed::baud)->code;
    return cfsetspeed(&line, speed) == 0 && tcsetattr(port, TCSANOW, &line) == 0;
}

int openPort(const std::filesystem::path& path, int baud)
{
    const int port = open(path.c_str(), O_RDONLY | O_NOCTTY | O_NONBLOCK | O_CLOEXEC);
    if (port != kClosed && !setUp(port, baud)) {
        close(port);
        return kClosed;
    }
    return port;
}

}  // namespace

bool isBaud(int baud) { return std::ranges::find(kSpeeds, baud, &Speed::baud) != kSpeeds.end(); }

SerialLines::SerialLines(std::filesystem::path port, int baud, std::size_t longest)
    : m_path(std::move(port)), m_baud(baud), m_longest(longest)
{
    assert(isBaud(baud));
}

SerialLines::~SerialLines()
{
    if (m_port != kClosed)
        close(m_port);
}

std::optional<SerialSaid> SerialLines::poll(const Stamp& now)
{
    openWhenDue(now);
    if (m_port != kClosed)
        takeBytes(now);
    if (m_waiting.empty())
        return std::nullopt;
    SerialSaid said = std::move(m_waiting.front());
    m_waiting.pop_front();
    return said;
}

void SerialLines::openWhenDue(const Stamp& now)
{
    if (m_port != kClosed || (m_lastTry && now.boot - *m_lastTry < kTryAgain))
        return;
    m_lastTry = now.boot;
    m_port = openPort(m_path, m_baud);
    if (m_port == kClosed)
        return lose(now);
    m_wasTold = false;
    m_isInStep = false;
    m_text.clear();
    m_last.reset();
}

void SerialLines::lose(const Stamp& now)
{
    if (m_port != kClosed)
        close(m_port);
    m_port = kClosed;
    if (!std::exchange(m_wasTold, true))
        add(std::nullopt, now);
}

// A port that is there and silent says EAGAIN; 0 bytes or anything else is a port that is gone.
void SerialLines::takeBytes(const Stamp& now)
{
    std::array<char, 4096> piece{};
    ssize_t got = 0;
    while ((got = read(m_port, piece.data(), piece.size())) > 0) {
        m_text.append(piece.data(), static_cast<std::size_t>(got));
        takeLines(now);
    }
    const bool isSilent = got < 0 && (errno == EAGAIN || errno == EINTR);
    if (!isSilent)
        lose(now);
}

// A line ends with CR, LF or both. Without an end, text longer than any line is kept short: it will
// be unreadable whatever follows.
void SerialLines::takeLines(const Stamp& now)
{
    for (auto end = m_text.find_first_of(kEnds); end != std::string::npos;
         end = m_text.find_first_of(kEnds)) {
        if (std::exchange(m_isInStep, true) && end > 0) {
            m_last = m_text.substr(0, end);
            add(m_last, now);
        }
        m_text.erase(0, end + 1);
    }
    m_text.resize(std::min(m_text.size(), m_longest + 1));
}

void SerialLines::add(std::optional<std::string> line, const Stamp& at)
{
    m_waiting.push_back({at, std::move(line)});
    if (m_waiting.size() > kMostWaiting)
        m_waiting.pop_front();
}

}  // namespace bathside::app
