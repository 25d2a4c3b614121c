// A calibration holds through its due date (spec, temperatures), and a day is the shift's local
// one: at 2026-03-05T06:00Z it is still the 4th in the far west.

#include <gtest/gtest.h>

#include "core/bench/bench.h"
#include "tests/support/shift.h"

namespace bathside {
namespace {

using std::chrono::sys_days;
using test::BenchShift;
using namespace std::chrono_literals;

constexpr sys_days kFourth{2026y / 3 / 4}, kFifth{2026y / 3 / 5}, kSixth{2026y / 3 / 6};

class DueDayTest : public testing::Test {
protected:
    /// Opened on that local day, and the bath read by a thermometer due on the 4th.
    void readOn(sys_days day)
    {
        shift.say(DescribeProbe{
            {"T1"},
            R"({"resolution_uc": 10000, "drift_uc": 0, "due": "2026-03-04", "points": [
                {"indicated_uc": 28000000, "reference_uc": 28000000, "expanded_uc": 50000}]})"});
        shift.say(OpenShift{"Etc/GMT+12", {"AB"}, day});
        shift.say(TakeReading{{"T1"}, MilliCelsius{28'000}});
    }
    [[nodiscard]] std::vector<std::int64_t> overdue() const
    {
        std::vector<std::int64_t> over;
        for (const auto& found : shift.all<DeviationFound>()) {
            if (found.limit == LimitName::Reading)
                over.push_back(found.over);
        }
        return over;
    }

    BenchShift shift;
};

TEST_F(DueDayTest, holdsThroughTheDueDateWhereTheShiftIs)
{
    readOn(kFourth);
    EXPECT_TRUE(overdue().empty());
}

TEST_F(DueDayTest, theDayAfterIsADeviationByDays)
{
    readOn(kFifth);
    EXPECT_EQ(overdue(), std::vector<std::int64_t>{Millis(24h).count()});
}

TEST_F(DueDayTest, alsoWhereTheDayBeginsBeforeUtcs)
{
    readOn(kSixth);
    EXPECT_EQ(overdue(), std::vector<std::int64_t>{Millis(48h).count()});
}

}  // namespace
}  // namespace bathside
