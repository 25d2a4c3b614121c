#include "app/system/w1_bus.h"

#include <fstream>

#include <gtest/gtest.h>

#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

constexpr const char* kOne = "28-0000075f2b1c";
constexpr const char* kOther = "28-0000075f2b1d";

// Texts as the kernel's printf writes them (drivers/w1/slaves/w1_therm.c), constructed.
constexpr const char* kBath =
    "c0 01 4b 46 7f ff 0c 10 2e : crc=2e YES\nc0 01 4b 46 7f ff 0c 10 2e t=28000\n";
constexpr const char* kWarmer =
    "50 02 4b 46 7f ff 0c 10 af : crc=af YES\n50 02 4b 46 7f ff 0c 10 af t=37000\n";

class W1BusTest : public testing::Test {
protected:
    void plugIn(const std::string& name, const std::string& text)
    {
        std::filesystem::create_directories(folder / name);
        std::ofstream(folder / name / "w1_slave") << text;
    }
    void unplug(const std::string& name) { std::filesystem::remove_all(folder / name); }

    test::TempFolder folder;
    W1Bus bus{folder.path()};
};

using Readings = std::vector<ProbeValue>;

TEST_F(W1BusTest, readsEveryThermometer)
{
    plugIn(kOther, kWarmer);
    plugIn(kOne, kBath);
    EXPECT_EQ(bus.readAll(),
              (Readings{{{kOne}, MilliCelsius{28'000}}, {{kOther}, MilliCelsius{37'000}}}));
}

TEST_F(W1BusTest, passesOverWhatIsNoThermometer)
{
    plugIn("w1_bus_master1", "");
    plugIn("01-000000000001", "");
    std::ofstream(folder / "uevent") << "";
    EXPECT_TRUE(bus.thermometers().empty());
    EXPECT_TRUE(bus.readAll().empty());
}

TEST_F(W1BusTest, findsAProbeThatIsPluggedIn)
{
    EXPECT_TRUE(bus.readAll().empty());
    plugIn(kOne, kBath);
    EXPECT_EQ(bus.readAll(), (Readings{{{kOne}, MilliCelsius{28'000}}}));
}

TEST_F(W1BusTest, tellsOnceThatAProbeIsGoneAndReadsItAgainWhenItIsBack)
{
    plugIn(kOne, kBath);
    plugIn(kOther, kWarmer);
    EXPECT_EQ(bus.readAll().size(), 2U);
    unplug(kOther);
    EXPECT_EQ(bus.readAll(),
              (Readings{{{kOne}, MilliCelsius{28'000}}, {{kOther}, ReadingFault::Lost}}));
    EXPECT_EQ(bus.readAll(), (Readings{{{kOne}, MilliCelsius{28'000}}}));
    plugIn(kOther, kWarmer);
    EXPECT_EQ(bus.readAll().size(), 2U);
}

TEST_F(W1BusTest, givesFaultsAsTheyAre)
{
    plugIn("28-1", "");
    plugIn("28-2", "c0 01 4b 46 7f ff 0c 10 2e : crc=2e NO\nc0 01 4b 46 7f ff 0c 10 2e t=28000\n");
    plugIn("28-3", "50 05 4b 46 7f ff 0c 10 1c : crc=1c YES\n50 05 4b 46 7f ff 0c 10 1c t=85000\n");
    std::filesystem::create_directories(folder / "28-4");  // no file in it
    EXPECT_EQ(bus.readAll(), (Readings{{{"28-1"}, ReadingFault::Empty},
                                       {{"28-2"}, ReadingFault::CheckFailed},
                                       {{"28-3"}, ReadingFault::PowerOn},
                                       {{"28-4"}, ReadingFault::Empty}}));
}

TEST(W1BusWithoutAFolderTest, hasNoThermometers)
{
    test::TempFolder folder;
    W1Bus bus(folder / "none");
    EXPECT_TRUE(bus.readAll().empty());
}

}  // namespace
}  // namespace bathside::app
