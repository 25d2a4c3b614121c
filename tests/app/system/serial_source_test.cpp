#include "app/system/serial_source.h"

#include <fstream>
#include <memory>

#include <gtest/gtest.h>

#include "tests/support/pseudo_terminal.h"
#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;
using test::Device;
using Value = std::variant<MilliCelsius, ReadingFault>;

const Stamp kStart{.wall = WallTime(1'772'000'000s), .boot = 5'000s, .bootId = {1}};

class SerialSourceTest : public testing::Test {
protected:
    // A link stands for the port, so that another device can be plugged into it.
    void plugIn(const Device& device)
    {
        unplug();
        std::filesystem::create_symlink(device.port(), port);
    }
    void unplug() { std::filesystem::remove(port); }

    [[nodiscard]] SerialSetting setting(const char* pattern = "#",
                                        DecimalSign decimal = DecimalSign::Point) const
    {
        return {port, 9'600, LinePattern::from(pattern, decimal).value(), {}};
    }

    [[nodiscard]] static std::vector<Value> valuesBy(SerialSource& source, Micros since)
    {
        std::vector<Value> all;
        while (const auto reading = source.poll(shifted(kStart, since)))
            all.push_back(reading->value);
        return all;
    }

    test::TempFolder folder;
    std::filesystem::path port = folder / "port";
};

using Values = std::vector<Value>;

TEST_F(SerialSourceTest, readsLines)
{
    const Device device;
    plugIn(device);
    SerialSource source(setting("T = # C"), {"P1"});
    EXPECT_EQ(valuesBy(source, 0s), (Values{}));
    device.send("tail of a line\r\nT = 28.06 C\r\nT = 28.12 C\r\n");
    const auto first = source.poll(shifted(kStart, 1s));
    ASSERT_TRUE(first);
    EXPECT_EQ(first->probe, ProbeId{"P1"});
    EXPECT_EQ(first->at, shifted(kStart, 1s));
    EXPECT_EQ(first->value, Value(MilliCelsius{28'060}));
    EXPECT_EQ(valuesBy(source, 1s), (Values{MilliCelsius{28'120}}));
}

TEST_F(SerialSourceTest, waitsForTheEndOfALine)
{
    const Device device;
    plugIn(device);
    SerialSource source(setting("#", DecimalSign::Comma), {"P1"});
    EXPECT_EQ(valuesBy(source, 0s), (Values{}));
    device.send("\n28");
    EXPECT_EQ(valuesBy(source, 1s), (Values{}));
    device.send(",1");
    EXPECT_EQ(valuesBy(source, 2s), (Values{}));
    device.send("\r");
    EXPECT_EQ(valuesBy(source, 3s), (Values{MilliCelsius{28'100}}));
    device.send("\n");
    EXPECT_EQ(valuesBy(source, 4s), (Values{}));
}

TEST_F(SerialSourceTest, saysWhatIsNoReading)
{
    const Device device;
    plugIn(device);
    SerialSource source(setting(), {"P1"});
    EXPECT_EQ(valuesBy(source, 0s), (Values{}));
    device.send("\nERR\n  \n28,1\n5000\n");
    EXPECT_EQ(valuesBy(source, 1s), (Values{ReadingFault::Unreadable, ReadingFault::Empty,
                                            ReadingFault::Unreadable, ReadingFault::Implausible}));
}

TEST_F(SerialSourceTest, survivesALineWithoutEnd)
{
    const Device device;
    plugIn(device);
    SerialSource source(setting(), {"P1"});
    EXPECT_EQ(valuesBy(source, 0s), (Values{}));
    device.send("\n");
    for (int i = 0; i < 20; ++i) {
        device.send(std::string(1'000, '7'));
        EXPECT_EQ(valuesBy(source, 1s), (Values{}));
    }
    device.send("\n28.1\n");
    EXPECT_EQ(valuesBy(source, 2s), (Values{ReadingFault::Unreadable, MilliCelsius{28'100}}));
}

TEST_F(SerialSourceTest, tellsOnceThatThePortIsNotThereAndTriesOnceASecond)
{
    SerialSource source(setting(), {"P1"});
    EXPECT_EQ(valuesBy(source, 0s), (Values{ReadingFault::Lost}));
    const Device device;
    plugIn(device);
    EXPECT_EQ(valuesBy(source, 999ms), (Values{}));
    device.send("\n28.1\n");
    EXPECT_EQ(valuesBy(source, 999'999us), (Values{}));
    EXPECT_EQ(valuesBy(source, 1s), (Values{MilliCelsius{28'100}}));
}

TEST_F(SerialSourceTest, goesOnWhenThePlugIsPulledAndPutBack)
{
    auto device = std::make_unique<Device>();
    plugIn(*device);
    SerialSource source(setting(), {"P1"});
    EXPECT_EQ(valuesBy(source, 0s), (Values{}));
    device->send("\n28.1\n28");
    EXPECT_EQ(valuesBy(source, 1s), (Values{MilliCelsius{28'100}}));
    device.reset();
    unplug();
    EXPECT_EQ(valuesBy(source, 2s), (Values{ReadingFault::Lost}));
    EXPECT_EQ(valuesBy(source, 10s), (Values{}));
    const Device again;
    plugIn(again);
    EXPECT_EQ(valuesBy(source, 20s), (Values{}));
    again.send(".9\n28.3\n");  // the first is the tail of a line, and not 28 before it
    EXPECT_EQ(valuesBy(source, 21s), (Values{MilliCelsius{28'300}}));
}

TEST_F(SerialSourceTest, isNoTerminal)
{
    std::ofstream(port) << "28.1\n";
    SerialSource source(setting(), {"P1"});
    EXPECT_EQ(valuesBy(source, 0s), (Values{ReadingFault::Lost}));
}

TEST_F(SerialSourceTest, setsTheSpeedAndNeitherEchoesNorEdits)
{
    const Device device;
    plugIn(device);
    SerialSetting fast = setting();
    fast.baud = 115'200;
    SerialSource source(fast, {"P1"});
    EXPECT_EQ(valuesBy(source, 0s), (Values{}));
    const termios line = device.settings();
    EXPECT_EQ(cfgetispeed(&line), static_cast<speed_t>(B115200));
    EXPECT_EQ(line.c_lflag & static_cast<tcflag_t>(ECHO | ICANON), 0U);
}

TEST(BaudTest, knowsTheUsualSpeeds)
{
    EXPECT_TRUE(isBaud(1'200));
    EXPECT_TRUE(isBaud(115'200));
    EXPECT_FALSE(isBaud(0));
    EXPECT_FALSE(isBaud(12'345));
}

}  // namespace
}  // namespace bathside::app
