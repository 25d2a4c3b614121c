// What waits for a shift lead, in which order, what it touched, and how it came to it.

#include "core/record/cases.h"

#include <gmock/gmock.h>

#include "core/record/course.h"
#include "tests/support/staff.h"

namespace bathside::test {
namespace {

using testing::ElementsAre;

class CasesTest : public testing::Test {
protected:
    CasesTest()
    {
        staff(shift);
        shift.open();
    }

    /// One ampoule in that bag, out for `outside` seconds, in the bath for `inside`.
    void bag(const char* name, double start, double outside, double inside)
    {
        shift.at(start).readyBag(name);
        shift.say(out({1}));
        shift.at(start + outside).say(moved(Step::Bath));
        shift.at(start + outside + inside).say(moved(Step::Diluent));
        shift.at(start + outside + inside + 10).say(moved(Step::Bagged));
        shift.at(start + outside + inside + 20).say(MixBag{BagId{name}});
    }
    std::vector<std::string> subjects()
    {
        std::vector<std::string> all;
        for (const ReviewCase& one : reviewCases(shift.bench()))
            all.push_back(one.deviation ? std::string(nameOf(one.deviation->fact.limit)) + " " +
                                              toText(one.deviation->fact.subject)
                                        : "held " + one.hold->fact.bag.text);
        return all;
    }
    Course course(std::size_t index)
    {
        return courseOf(shift.station.state(), *reviewCases(shift.bench())[index].deviation);
    }

    BenchShift shift;
};

// On the default card `in use` is critical, the others major. 1 s over 10 s is a tenth, 3 s over
// 90 s a thirtieth.
TEST_F(CasesTest, standWorstFirst)
{
    bag("B1", 60, 11, 93);
    shift.at(400).say(HangBag{BagId{"B1"}, {"A"}});
    shift.at(4000).say(TakeBagDown{BagId{"B1"}, DownReason::Expired, {}});
    shift.at(4100).readyBag("B2").say(HoldBag{BagId{"B2"}, HoldReason::Leak, {}});
    EXPECT_THAT(subjects(), ElementsAre("held B2", "in use bag:B1", "exposure ampoule:1/1",
                                        "thaw ampoule:1/1"));

    const Seq worst = *shift.bench().reviews.open().rbegin();
    shift.say(reviewOf(worst));
    EXPECT_THAT(subjects(), ElementsAre("held B2", "exposure ampoule:1/1", "thaw ampoule:1/1",
                                        "in use bag:B1"));
    shift.say(ReleaseBag{BagId{"B2"}, {"LS"}, "dry"});
    EXPECT_EQ(subjects().size(), 3U);
}

TEST_F(CasesTest, aBagOnHoldWaitsForALeadAlsoWhenItIsDown)
{
    shift.at(60).readyBag("B1").say(HoldBag{BagId{"B1"}, HoldReason::Leak, {}});
    shift.say(TakeBagDown{BagId{"B1"}, DownReason::Empty, {}});
    EXPECT_THAT(subjects(), ElementsAre("held B1"));
    shift.say(CloseShift{});
    shift.at(86'400).open();
    EXPECT_THAT(subjects(), ElementsAre("held B1"));
    const ReviewCase carried = reviewCases(shift.bench()).front();
    EXPECT_TRUE(carried.isCarried);
    EXPECT_FALSE(carried.bag);
    shift.say(ReleaseBag{carried.about(), {"LS"}, "discard", carried.seq()});
    EXPECT_TRUE(subjects().empty());
}

TEST_F(CasesTest, whatMayBecomeOfABagFollowsFromItsEnd)
{
    using enum Disposition;
    Bag bag;
    EXPECT_THAT(dispositionsFor(bag), ElementsAre(Use, UseWithNote, Discard));
    bag.down = BagEnd{{}, DownReason::Discarded, {4'000}};
    EXPECT_THAT(dispositionsFor(bag), ElementsAre(Discard));
    bag.hung = Moment{};
    EXPECT_THAT(dispositionsFor(bag), ElementsAre(Use, UseWithNote, Discard));
    bag.down = BagEnd{{}, DownReason::Empty, {}};
    EXPECT_THAT(dispositionsFor(bag), ElementsAre(Use, UseWithNote));
}

TEST_F(CasesTest, birdsAreThoseBetweenHungAndDown)
{
    bag("B1", 60, 5, 80);
    EXPECT_FALSE(birdsServed(shift.bench(), {"B1"}));
    shift.say(CountBirds{LineId{"A"}, 300});
    shift.at(300).say(HangBag{BagId{"B1"}, {"A"}});
    shift.at(600).say(CountBirds{LineId{"A"}, 900});
    EXPECT_EQ(birdsServed(shift.bench(), {"B1"}), 600);
    shift.at(700).say(CountBirds{LineId{"A"}, 1250});
    shift.at(710).say(TakeBagDown{BagId{"B1"}, DownReason::Empty, {}});
    shift.at(900).say(CountBirds{LineId{"A"}, 2000});
    EXPECT_EQ(birdsServed(shift.bench(), {"B1"}), 950);
    EXPECT_FALSE(birdsServed(shift.bench(), {"nowhere"}));
}

TEST_F(CasesTest, theCourseOfAnAmpouleHasItsStepsAndItsLimit)
{
    bag("B1", 60, 5, 93);
    const Course found = course(0);
    EXPECT_EQ(found.unit, CourseUnit::Time);
    EXPECT_EQ(found.from, 5'000);
    EXPECT_EQ(found.to, 95'000);
    EXPECT_EQ(found.reached, 98'000);
    ASSERT_EQ(found.ticks.size(), 5U);  // opened was never tapped: implied at in diluent
    EXPECT_EQ(found.ticks[0].what, Course::What::Out);
    EXPECT_EQ(found.ticks[1].at, 5'000);
    EXPECT_EQ(found.ticks[2].what, Course::What::Opened);
    EXPECT_FALSE(found.ticks[2].timed);
    EXPECT_EQ(found.ticks.back().what, Course::What::InBag);
    EXPECT_EQ(found.ticks.back().at, 108'000);
}

TEST_F(CasesTest, theCourseOfABagRunsFromItsFirstAmpoule)
{
    bag("B1", 60, 5, 80);  // in diluent 85 s after the start
    shift.at(4000).say(TakeBagDown{BagId{"B1"}, DownReason::Expired, {}});
    const Course found = course(0);
    EXPECT_EQ(found.from, 85'000);
    EXPECT_EQ(found.to, 85'000 + 3'600'000);
    EXPECT_EQ(found.reached, 3'940'000);  // 4000 s less the 60 s before it was started
    EXPECT_EQ(found.ticks.back().what, Course::What::Down);
    EXPECT_EQ(found.ticks.back().at, found.reached);
}

// Out at 60 s; readings 2 s and 40 s after it, one with a fault, one before and one after.
TEST_F(CasesTest, theCourseOfATimeHasTheBathMeanwhile)
{
    const auto reading = [&](double at, std::variant<MilliCelsius, ReadingFault> value) {
        shift.at(at).say(TakeReading{{"T1"}, value});
    };
    shift.at(50).readyBag("B1");
    reading(55, MilliCelsius{28'300});
    shift.at(60).say(out({1}));
    reading(62, MilliCelsius{28'000});
    shift.at(65).say(moved(Step::Bath));
    reading(80, ReadingFault::Lost);
    reading(100, MilliCelsius{30'100});
    shift.at(160).say(moved(Step::Diluent));
    shift.at(170).say(moved(Step::Bagged));
    reading(200, MilliCelsius{28'100});
    const auto all = reviewCases(shift.bench());
    const auto thaw = std::ranges::find_if(all, [](const ReviewCase& one) {
        return one.deviation && one.deviation->fact.limit == LimitName::Thaw;
    });
    ASSERT_NE(thaw, all.end());
    const Course found = courseOf(shift.station.state(), *thaw->deviation);
    ASSERT_EQ(found.readings.size(), 2U);
    EXPECT_EQ(found.readings[0].at, 2'000);
    EXPECT_EQ(found.readings[1].at, 40'000);
    EXPECT_EQ(found.readings[1].value, MilliCelsius{30'100});
    EXPECT_TRUE(found.readings[1].verdict == Verdict::Outside);
}

TEST_F(CasesTest, theCourseHasTheThermometerInTheBathAlone)
{
    const std::string plain = R"({"resolution_uc": 1000, "drift_uc": 0, "points": [], )";
    shift.say(DescribeProbe{
        {"bath"}, plain + R"("in_bath": true, "source": {"kind": "one-wire", "device": "28-1"}})"});
    shift.say(
        DescribeProbe{{"room"}, plain + R"("source": {"kind": "one-wire", "device": "28-2"}})"});
    shift.at(50).readyBag("B1").at(60).say(out({1}));
    shift.at(61).say(TakeReading{{"bath"}, MilliCelsius{28'000}});
    shift.at(62).say(TakeReading{{"room"}, MilliCelsius{20'000}});
    shift.at(74).say(moved(Step::Bath));
    const auto all = reviewCases(shift.bench());
    const auto late = std::ranges::find_if(all, [](const ReviewCase& one) {
        return one.deviation && one.deviation->fact.limit == LimitName::Exposure;
    });
    ASSERT_NE(late, all.end());
    const Course found = courseOf(shift.station.state(), *late->deviation);
    ASSERT_EQ(found.readings.size(), 1U);
    EXPECT_EQ(found.readings[0].value, MilliCelsius{28'000});
}

TEST_F(CasesTest, aTemperatureIsShownOnItsOwnSide)
{
    for (const auto& [name, celsius] : {std::pair{"B1", 16'500}, std::pair{"B2", 29'000}}) {
        shift.say(StartBag{{name}, {400'000}, {"D1"}, MilliCelsius{celsius}});
        const auto all = reviewCases(shift.bench());
        const auto mine = std::ranges::find(all, BagId{name}, &ReviewCase::bag);
        ASSERT_NE(mine, all.end());
        const Course found = courseOf(shift.station.state(), *mine->deviation);
        EXPECT_EQ(found.unit, CourseUnit::Temperature);
        EXPECT_EQ(found.from, 18'000);
        EXPECT_EQ(found.to, 27'000);
        EXPECT_EQ(found.reached, celsius);
    }
}

TEST_F(CasesTest, oneFromAShiftBeforeKnowsNothingOfTodaysBags)
{
    bag("B1", 60, 12, 80);
    shift.say(TakeBagDown{BagId{"B1"}, DownReason::Empty, {}});
    shift.say(CloseShift{});
    shift.at(86'400).open();
    bag("B1", 86'460, 5, 80);
    const auto all = reviewCases(shift.bench());
    ASSERT_EQ(all.size(), 1U);
    EXPECT_TRUE(all[0].isCarried);
    EXPECT_FALSE(all[0].bag);
    EXPECT_FALSE(all[0].birds);
    const Course found = course(0);
    EXPECT_EQ(found.from, 0);
    EXPECT_EQ(found.to, 10'000);
    EXPECT_EQ(found.reached, 12'000);
    EXPECT_TRUE(found.ticks.empty());
    EXPECT_TRUE(found.readings.empty());
}

}  // namespace
}  // namespace bathside::test
