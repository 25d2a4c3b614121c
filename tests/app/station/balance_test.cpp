// The balance that is set, at the far end of a pseudo-terminal.

#include "app/station/balance.h"

#include <filesystem>

#include <gtest/gtest.h>

#include "core/base/simulated_clock.h"
#include "tests/support/pseudo_terminal.h"
#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;
using Said = ui::WeightSource::Said;

class BalanceTest : public testing::Test {
protected:
    BalanceTest()
    {
        QObject::connect(&balance, &ui::WeightSource::said,
                         [this](const Said& what) { said.push_back(what); });
    }

    void choose(const std::string& port, const WeightFormat& format = {})
    {
        ui::Preference next = preferences.now();
        next.balance = {.port = port, .format = format};
        preferences.set(next);
    }
    /// What it says to these lines.
    std::vector<Said> told(const test::Device& device, const std::string& lines)
    {
        said.clear();
        device.send(lines);
        balance.poll();
        return said;
    }

    test::TempFolder folder;
    ui::Preferences preferences{{}};
    SimulatedClock clock{WallTime(1'772'000'000s)};
    Balance balance{preferences, [this] { return clock.now(); }, folder.path()};
    std::vector<Said> said;
};

std::int64_t tenths(const Said& what)
{
    const auto* weight = std::get_if<Weighed>(&what);
    return weight ? weight->tenthsOfMilligram : -1;
}

TEST_F(BalanceTest, tellsWeightsAndWhatIsNone)
{
    const test::Device device;
    choose(device.port());
    balance.poll();
    EXPECT_TRUE(said.empty());
    const auto all = told(device, "tail\n0.1991 g\n-----\nhello\n0.2 kg\n");
    ASSERT_EQ(all.size(), 4U);
    EXPECT_EQ(tenths(all[0]), 1'991);
    EXPECT_EQ(std::get<WeightFault>(all[1]), WeightFault::Overload);
    EXPECT_EQ(std::get<WeightFault>(all[2]), WeightFault::Unreadable);
    EXPECT_EQ(std::get<WeightFault>(all[3]), WeightFault::OtherUnit);
    EXPECT_EQ(balance.lastLine(), "0.2 kg");
}

TEST_F(BalanceTest, isNotThereUntilOneIsChosenAndGoneOnceItIsNot)
{
    balance.poll();
    EXPECT_TRUE(said.empty());
    EXPECT_FALSE(balance.lastLine());
    choose((folder.path() / "nowhere").string());
    balance.poll();
    balance.poll();
    ASSERT_EQ(said.size(), 1U);
    EXPECT_TRUE(std::holds_alternative<ui::WeightSource::Gone>(said.front()));
    choose({});
    balance.poll();
    EXPECT_EQ(said.size(), 1U);
}

TEST_F(BalanceTest, anotherReadingOfItsLinesKeepsThePort)
{
    const test::Device device;
    choose(device.port());
    balance.poll();
    EXPECT_EQ(told(device, "\n0.1991\n").size(), 1U);
    choose(device.port(), {.unit = WeightUnit::Milligrams});
    const auto all = told(device, "199.1\n");  // no tail of a line before it
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(tenths(all[0]), 1'991);
}

TEST_F(BalanceTest, listsThePortsThatArePluggedIn)
{
    std::filesystem::create_directories(folder.path() / "serial" / "by-id");
    std::filesystem::create_symlink("../../ttyUSB0", folder.path() / "serial" / "by-id" / "usb-b");
    EXPECT_EQ(balance.ports(),
              std::vector<std::string>{(folder.path() / "serial" / "by-id" / "usb-b").string()});
}

}  // namespace
}  // namespace bathside::app
