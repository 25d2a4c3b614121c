// The drivers follow what the state describes: a thermometer on a pseudo-terminal and one of the
// kernel's one-wire folders, plugged in, unplugged and put back.
//
// The text of `w1_slave`: Linux, Documentation/w1/slaves/w1_therm.rst; bytes computed with the CRC
// of Maxim Application Note 27.

#include "app/station/thermometers.h"

#include <QSignalSpy>
#include <fstream>

#include <fcntl.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <stdlib.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include "tests/support/shift.h"
#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

constexpr int kLongest = 10'000;  // ms

/// A device at the far end of a pseudo-terminal, plugged in as `link`.
class Plugged {
public:
    explicit Plugged(std::filesystem::path link)
        : m_link(std::move(link)), m_far(posix_openpt(O_RDWR | O_NOCTTY))
    {
        EXPECT_EQ(grantpt(m_far), 0);
        EXPECT_EQ(unlockpt(m_far), 0);
        m_near = open(ptsname(m_far), O_RDONLY | O_NOCTTY | O_NONBLOCK);
        std::filesystem::create_symlink(ptsname(m_far), m_link);
    }
    Plugged(const Plugged&) = delete;
    Plugged& operator=(const Plugged&) = delete;
    ~Plugged()
    {
        std::filesystem::remove(m_link);
        close(m_near);
        close(m_far);
    }

    /// The kernel carries bytes over on a thread of its own: waits until they have come.
    void send(const std::string& text) const
    {
        EXPECT_EQ(write(m_far, text.data(), text.size()), static_cast<ssize_t>(text.size()));
        int there = 0;
        while (ioctl(m_near, FIONREAD, &there) == 0 && there < static_cast<int>(text.size())) {
            pollfd come{m_near, POLLIN, 0};
            ASSERT_EQ(poll(&come, 1, kLongest), 1);
        }
    }

private:
    std::filesystem::path m_link;
    int m_far, m_near = -1;
};

class ThermometersTest : public testing::Test {
protected:
    ThermometersTest()
    {
        std::filesystem::create_directories(folder.path() / "dev");
        std::filesystem::create_directories(folder.path() / "w1");
        shift.open();
    }

    [[nodiscard]] std::filesystem::path port() const { return folder.path() / "dev" / "ttyUSB0"; }
    void describeLine(const char* kind = R"("kind": "serial")")
    {
        const std::string rest = std::string(kind) == R"("kind": "serial")"
                                     ? R"(, "baud": 9600, "pattern": "T = #", "decimal": "point",
                                           "shows": "celsius", "port": ")" +
                                           port().string() + "\""
                                     : "";
        shift.say(
            DescribeProbe{{"bath"},
                          R"({"resolution_uc": 10000, "drift_uc": 0, "points": [], "source": {)" +
                              std::string(kind) + rest + "}}"});
    }
    void describeWire(const std::string& device)
    {
        shift.say(DescribeProbe{{"wire"},
                                R"({"resolution_uc": 62500, "drift_uc": 0, "points": [], "source":
                {"kind": "one-wire", "device": ")" +
                                    device + "\"}}"});
    }
    void plugInWire(const std::string& device)
    {
        std::filesystem::create_directories(folder.path() / "w1" / device);
        std::ofstream(folder.path() / "w1" / device / "w1_slave")
            << "c0 01 4b 46 7f ff 0c 10 2e : crc=2e YES\n"
               "c0 01 4b 46 7f ff 0c 10 2e t=28000\n";
    }
    void after(double seconds)
    {
        m_now += seconds;
        shift.at(m_now);
        thermometers.poll();
    }
    /// Until a reading of `probe` came that is as `wanted`.
    bool comes(const ProbeId& probe, const std::variant<MilliCelsius, ReadingFault>& wanted)
    {
        QSignalSpy changed(&thermometers, &Thermometers::changed);
        const auto isThere = [&] {
            const auto trace = thermometers.trace(probe);
            return !trace.empty() && trace.back().value == wanted;
        };
        while (!isThere()) {
            if (!changed.wait(kLongest))
                return false;
        }
        return true;
    }
    [[nodiscard]] bool probeLostStands() const
    {
        return shift.bench().alarms.contains("probe lost station");
    }

    test::TempFolder folder;
    test::BenchShift shift;
    Thermometers thermometers{shift.station, shift.clock,
                              ProbePlaces{folder.path() / "w1", folder.path() / "dev"}};

private:
    double m_now = 1;
};

TEST_F(ThermometersTest, aDescribedLineIsReadAndWritten)
{
    const Plugged device(port());
    describeLine();
    after(1);
    device.send("tail\nT = 28.1\n");
    after(1);
    ASSERT_TRUE(shift.bench().lastTaken);
    EXPECT_EQ(shift.bench().lastTaken->fact.raw, MilliCelsius{28'100});
    EXPECT_EQ(thermometers.trace({"bath"}).size(), 1U);
}

// The three points of tests/reference/resistance_test.cpp, and a row of that table: 9 kΩ.
TEST_F(ThermometersTest, aThermistorsOhmsAreReadByItsCoefficients)
{
    const Plugged device(port());
    Probe probe{.id = {"bath"},
                .name = {},
                .certificate = {},
                .calibrated = {},
                .due = {},
                .resolution = 0.01,
                .points = {},
                .source = SerialLine{
                    .port = port().string(),
                    .pattern = "R = # Ohm",
                    .shows = LineUnit::Ntc,
                    .ntc = Thermistor{1.1497697805872e-3, 2.3068036128829e-4, 1.0119336291452e-7}}};
    shift.say(DescribeProbe{probe.id, documentOf(probe)});
    after(1);
    device.send("tail\nR = 9000.0 Ohm\n");
    after(1);
    ASSERT_TRUE(shift.bench().lastTaken);
    EXPECT_EQ(shift.bench().lastTaken->fact.raw, MilliCelsius{27'467});
}

// A line that the pattern does not fit is what its pattern is chosen by.
TEST_F(ThermometersTest, theLastLineIsKeptAsItCame)
{
    const Plugged device(port());
    describeLine();
    after(1);
    EXPECT_FALSE(thermometers.lastLine({"bath"}));
    device.send("tail\nch1 28,1 C\n");
    after(1);
    EXPECT_EQ(thermometers.lastLine({"bath"}), "ch1 28,1 C");
    EXPECT_FALSE(thermometers.lastLine({"other"}));
}

// Spec: temperatures, reading; alarms: probe lost.
TEST_F(ThermometersTest, aBathsProbeThatGoesIsAnAlarmUntilItIsBack)
{
    describeLine();
    {
        const Plugged device(port());
        after(1);
        device.send("\nT = 28.0\n");
        after(1);
        EXPECT_FALSE(probeLostStands());
    }
    after(1);
    after(4);  // not for a moment only
    ASSERT_TRUE(shift.bench().lastTaken);
    EXPECT_EQ(shift.bench().lastTaken->fact.fault, ReadingFault::Lost);
    EXPECT_TRUE(probeLostStands());
    for (int second = 0; second < 5; ++second)
        after(1);
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 2U);  // told once

    const Plugged back(port());
    after(2);
    back.send("\nT = 27.9\n");
    after(1);
    EXPECT_EQ(shift.bench().lastTaken->fact.raw, MilliCelsius{27'900});
    EXPECT_FALSE(probeLostStands());
}

TEST_F(ThermometersTest, aHandsReadingEndsTheAlarmOfALostProbe)
{
    describeLine();
    after(1);
    EXPECT_TRUE(probeLostStands());  // described, and never there
    shift.say(TakeReading{{"hand"}, MilliCelsius{28'000}});
    EXPECT_FALSE(probeLostStands());
}

// The port is still there: only that nothing comes tells that it was switched off.
TEST_F(ThermometersTest, oneThatFallsSilentIsAFaultUntilItSpeaksAgain)
{
    const Plugged device(port());
    describeLine();
    after(1);
    device.send("tail\n");
    for (int second = 0; second < 20; ++second) {
        device.send("T = 28.0\n");
        after(1);
    }
    EXPECT_TRUE(bathVerdict(shift.bench(), shift.clock.now()));
    after(9);
    EXPECT_FALSE(probeLostStands());
    after(1);
    after(4);  // not for a moment only
    EXPECT_EQ(shift.bench().lastTaken->fact.fault, ReadingFault::Empty);
    EXPECT_FALSE(bathVerdict(shift.bench(), shift.clock.now()));
    EXPECT_TRUE(probeLostStands());
    const auto told = shift.all<ReadingTaken>().size();
    after(60);
    EXPECT_EQ(shift.all<ReadingTaken>().size(), told);

    device.send("T = 28.0\n");
    after(1);
    EXPECT_TRUE(bathVerdict(shift.bench(), shift.clock.now()));
    EXPECT_FALSE(probeLostStands());
}

TEST_F(ThermometersTest, oneOutOfUseIsReadNoMore)
{
    const Plugged device(port());
    describeLine();
    after(1);
    device.send("\nT = 28.0\n");
    after(1);
    const auto before = shift.all<ReadingTaken>().size();
    describeLine(R"("kind": "out of use")");
    device.send("T = 35.0\n");
    after(30);
    EXPECT_EQ(shift.all<ReadingTaken>().size(), before);
}

TEST_F(ThermometersTest, oneWireThermometersAreReadUnderTheirOwnNames)
{
    plugInWire("28-0000075f2b1c");
    plugInWire("28-000000000001");  // nobody described it
    describeWire("28-0000075f2b1c");
    EXPECT_TRUE(comes({"wire"}, MilliCelsius{28'000}));
    EXPECT_TRUE(thermometers.trace({"28-000000000001"}).empty());
    std::filesystem::remove_all(folder.path() / "w1" / "28-0000075f2b1c");
    EXPECT_TRUE(comes({"wire"}, ReadingFault::Lost));
    plugInWire("28-0000075f2b1c");
    EXPECT_TRUE(comes({"wire"}, MilliCelsius{28'000}));
}

TEST_F(ThermometersTest, oneThatWasNeverThereIsLost)
{
    describeWire("28-0000075f2b1c");
    EXPECT_TRUE(comes({"wire"}, ReadingFault::Lost));
}

TEST_F(ThermometersTest, whatIsPluggedInIsSeenWithoutBeingDescribed)
{
    EXPECT_TRUE(thermometers.pluggedIn().empty());
    plugInWire("28-0000075f2b1c");
    const Plugged device(port());
    const auto all = thermometers.pluggedIn();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(std::get<OneWire>(all[0]).device, "28-0000075f2b1c");
    EXPECT_EQ(std::get<SerialLine>(all[1]).port, port().string());
}

TEST_F(ThermometersTest, theTraceKeepsFiveMinutes)
{
    const Plugged device(port());
    describeLine();
    after(1);
    device.send("\n");
    for (int minute = 0; minute < 8; ++minute) {
        device.send("T = 28.0\n");
        after(60);
    }
    EXPECT_EQ(thermometers.trace({"bath"}).size(), 6U);  // both ends
}

}  // namespace
}  // namespace bathside::app
