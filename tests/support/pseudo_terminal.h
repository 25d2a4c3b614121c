#pragma once

// A device at the far end of a pseudo-terminal, for tests of what reads a serial port.

#include <string>

#include <fcntl.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <stdlib.h>
#include <sys/ioctl.h>
#include <termios.h>
#include <unistd.h>

namespace bathside::test {

// The near end is the port. The kernel carries bytes
// over on a thread of its own, so `send` waits until they have come.
class Device {
public:
    Device() : m_far(posix_openpt(O_RDWR | O_NOCTTY))
    {
        EXPECT_EQ(grantpt(m_far), 0);
        EXPECT_EQ(unlockpt(m_far), 0);
        m_near = open(port().c_str(), O_RDONLY | O_NOCTTY | O_NONBLOCK);
        EXPECT_GE(m_near, 0);
    }
    Device(const Device&) = delete;
    Device& operator=(const Device&) = delete;
    ~Device()
    {
        close(m_near);
        close(m_far);
    }

    [[nodiscard]] std::string port() const { return ptsname(m_far); }

    /// Everything sent before has been read.
    void send(const std::string& text) const
    {
        EXPECT_EQ(write(m_far, text.data(), text.size()), static_cast<ssize_t>(text.size()));
        constexpr int kLongest = 10'000;  // ms
        int there = 0;
        while (ioctl(m_near, FIONREAD, &there) == 0 && there < static_cast<int>(text.size())) {
            pollfd come{m_near, POLLIN, 0};
            ASSERT_EQ(poll(&come, 1, kLongest), 1) << "nothing came: " << text;
        }
    }

    [[nodiscard]] termios settings() const
    {
        termios line{};
        EXPECT_EQ(tcgetattr(m_near, &line), 0);
        return line;
    }

private:
    int m_far;
    int m_near = -1;
};

}  // namespace bathside::test
