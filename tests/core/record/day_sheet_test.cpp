// The sheet of the day in sample_day.h, whose times and amounts are worked by hand there.

#include "core/record/day_sheet.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/core/record/sample_day.h"
#include "tests/support/cards.h"
#include "tests/support/memory_trail.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

class DaySheetTest : public testing::Test {
protected:
    /// The default card is in force from before the day.
    DaySheetTest()
    {
        order.zone = "Europe/Amsterdam";
        order.firstDay = order.lastDay = 2026y / 3 / 5;
        order.version = "0.1.0";
        Event adopted;
        adopted.fact = CardAdopted{{test::defaultCard()->document()}};
        order.context.push_back(entryOf(adopted, {"bench 1"}));
        const Seq last = trail.entries.back().seq;
        order.runs = {{1, last - 1}};  // the last one is of the next day
        if (auto made = daySheetOf(trail, order))
            sheet = std::move(*made);
    }

    const SheetShift& morning() const { return sheet.shifts.at(0); }

    test::MemoryTrail trail{test::sampleDay().entries};
    ExportOrder order;
    DaySheet sheet;
};

TEST_F(DaySheetTest, namesWhatItIsOf)
{
    EXPECT_EQ(sheet.station.text, "bench 1");
    EXPECT_TRUE(sheet.rehearsal);
    EXPECT_EQ(sheet.head, trail.head());  // of the whole trail, not of the day
    EXPECT_EQ(sheet.entries, sheet.head.seq - 1);
    ASSERT_EQ(sheet.shifts.size(), 2U);
    EXPECT_EQ(morning().closed, fromRfc3339("2026-03-05T08:00:00Z"));
    EXPECT_EQ(sheet.shifts[1].bags.size(), 1U);
    EXPECT_TRUE(sheet.seals.empty());
}

TEST_F(DaySheetTest, givesEachAmpoulesTimesBesideTheirLimits)
{
    ASSERT_EQ(morning().ampoules.size(), 3U);
    const SheetAmpoule& first = morning().ampoules[0];
    EXPECT_EQ(first.lot.text, "K08");  // corrected
    EXPECT_EQ(first.toBath.took->time, 6250ms);
    EXPECT_EQ(first.toBath.limit, 10s);
    EXPECT_EQ(first.toDiluent.took->time, 73751ms);
    EXPECT_EQ(first.toDiluent.limit, 90s);
    EXPECT_EQ(morning().ampoules[1].toBath.took->time, 9s);  // corrected
    EXPECT_FALSE(morning().ampoules[1].toBath.isOver);
    EXPECT_EQ(morning().ampoules[2].lost, LossReason::Broken);
    EXPECT_FALSE(morning().ampoules[2].toBath.took);
}

// 07:11:21.235 less 06:11:20.001; limit and overrun as the deviation has it.
TEST_F(DaySheetTest, givesEachBagsAge)
{
    ASSERT_EQ(morning().bags.size(), 2U);
    const SheetBag& bag = morning().bags[0];
    EXPECT_EQ(bag.content.ampoules, 2);
    EXPECT_EQ(bag.age.took->time, 60min + 1234ms);
    EXPECT_EQ(bag.age.limit, 60min);
    EXPECT_TRUE(bag.age.isOver);
    EXPECT_FALSE(morning().bags[1].age.took);
    EXPECT_EQ(morning().bags[1].bag.held()->why, HoldReason::Colour);
}

TEST_F(DaySheetTest, keepsWhatStandsApartFromWhatACorrectionHasCleared)
{
    ASSERT_EQ(morning().cases.size(), 3U);
    ASSERT_EQ(morning().limits.size(), 3U);
    ASSERT_TRUE(morning().cases[0].hold);  // thrown away, but nobody decided on it
    for (std::size_t i = 1; i < 3; ++i) {
        const DeviationFound& fact = morning().cases[i].deviation->fact;
        EXPECT_EQ(fact.over, fact.limit == LimitName::InUse ? 1234 : 600);
        if (fact.limit == LimitName::InUse) {
            EXPECT_EQ(morning().limits[i], 3'600'000);
        }
    }
    ASSERT_EQ(morning().kept.size(), 1U);
    EXPECT_EQ(morning().kept[0].key.first, LimitName::Exposure);
}

TEST_F(DaySheetTest, leavesOutANoteThatWasTakenBack)
{
    ASSERT_EQ(morning().notes.size(), 1U);
    EXPECT_EQ(morning().notes[0].text, "+ nobody hurt; \"all\" well");
}

// Two days later the lead reviews what had no review, comments on the note and corrects its lot.
TEST_F(DaySheetTest, hasWhatWasSaidOfItOnLaterDays)
{
    test::DayScript days = test::sampleDay();
    const std::size_t before = days.entries.size();
    days.at("2026-03-07T09:00:00Z", DeviationReviewed{24, "other", "line stood still", "discard"})
        .at("2026-03-07T09:00:00Z", RecordSigned{Meaning::Reviewed, {24}, {}})
        .at("2026-03-07T09:01:00Z", NoteCommented{28, "good"})
        .at("2026-03-07T09:02:00Z", RecordSigned{Meaning::Reviewed, {}, "of another day"});
    order.later.assign(days.entries.begin() + static_cast<std::ptrdiff_t>(before),
                       days.entries.end());
    const auto made = daySheetOf(trail, order);
    ASSERT_TRUE(made);
    const SheetShift& shift = made->shifts.at(0);
    const auto reviewed = std::ranges::find(shift.cases, 24, &ReviewCase::seq);
    ASSERT_NE(reviewed, shift.cases.end());
    ASSERT_TRUE(reviewed->deviation->reviewed);
    EXPECT_EQ(reviewed->deviation->reviewed->words, "line stood still");
    EXPECT_EQ(reviewed->deviation->reviewed->at.wall, fromRfc3339("2026-03-07T09:00:00Z"));
    EXPECT_TRUE(reviewed->deviation->reviewed->isSigned);
    EXPECT_EQ(std::ranges::count_if(shift.cases, &ReviewCase::isOpen), 2);
    ASSERT_EQ(shift.notes.at(0).comments.size(), 1U);
    EXPECT_EQ(shift.notes.at(0).comments[0].text, "good");
    EXPECT_EQ(toRfc3339(shift.notes.at(0).comments[0].at.wall), "2026-03-07T09:01:00.000Z");
    EXPECT_EQ(made->signatures.size(), 2U);
    EXPECT_EQ(made->entries, sheet.entries);
}

// A card adopted and approved after the closing is that of the next shift.
TEST_F(DaySheetTest, hasTheCardThatWasInForce)
{
    test::DayScript days = test::sampleDay();
    const auto next = test::cardWith(R"({"version": 4711})");
    days.at("2026-03-06T05:00:00Z", CardAdopted{{next->document()}})
        .at("2026-03-06T05:01:00Z", CardApproved{next->hash()})
        .at("2026-03-06T05:01:00Z", RecordSigned{Meaning::Approved, {}, {}});
    days.entries.back().tap = days.entries[days.entries.size() - 2].tap;
    const test::MemoryTrail longer(days.entries);
    order.runs = {{1, longer.head().seq}};
    const auto made = daySheetOf(longer, order);
    ASSERT_TRUE(made);
    EXPECT_EQ(made->shifts.back().card->hash(), test::defaultCard()->hash());
    ASSERT_EQ(made->signatures.size(), 1U);
    EXPECT_EQ(made->signatures[0].card, next->content().name + " 4711");
}

// A seal given after midnight is of another day by its own time.
TEST_F(DaySheetTest, hasTheFirstSealAfterIt)
{
    test::DayScript days = test::sampleDay();
    days.at("2026-03-07T05:00:00Z", DaySealed{36, "h", "k", "s"});
    order.later = {days.entries.back()};
    EXPECT_EQ(daySheetOf(trail, order)->seals.size(), 1U);
    // One of its own, after its last closing, is enough.
    test::DayScript sealed = test::sampleDay();
    sealed.at("2026-03-05T23:31:00Z", DaySealed{36, "h", "k", "s"});
    const test::MemoryTrail own(sealed.entries);
    order.runs = {{1, own.head().seq}};
    const auto made = daySheetOf(own, order);
    ASSERT_EQ(made->seals.size(), 1U);
    EXPECT_EQ(made->seals[0].seq, own.head().seq);
}

TEST_F(DaySheetTest, whatWasOpenFromBeforeStandsApart)
{
    test::DayScript days;
    const DeviationFound over{LimitName::InUse, subjectOf(BagId{"B9"}), BagId{"B9"}, 5000, {}};
    Reviews reviews;
    reviews.deviations[1] = {
        .seq = 1, .at = {}, .fact = over, .isKept = false, .onDuty = {}, .reviewed = {}};
    days.at("2026-03-04T06:00:00Z", over)
        .at("2026-03-05T06:00:00Z", ShiftOpened{"Europe/Amsterdam", {}})
        .at("2026-03-05T06:00:00Z", ReviewCarried{*carriedFrom(reviews)})
        .at("2026-03-05T07:00:00Z",
            DeviationFound{LimitName::InUse, subjectOf(BagId{"B1"}), BagId{"B1"}, 1, {}})
        .at("2026-03-05T08:00:00Z", ShiftClosed{});
    const test::MemoryTrail own(days.entries);
    order.runs = {{2, own.head().seq}};
    const auto made = daySheetOf(own, order);
    ASSERT_EQ(made->shifts.size(), 1U);
    ASSERT_EQ(made->shifts[0].cases.size(), 1U);
    ASSERT_EQ(made->shifts[0].carried.size(), 1U);
    EXPECT_EQ(made->shifts[0].carried[0].deviation->fact.bag, BagId{"B9"});
}

TEST_F(DaySheetTest, listsEveryCheckOfTheCardOpenOrNot)
{
    ASSERT_TRUE(morning().card);
    EXPECT_EQ(morning().checks.size(), morning().card->content().checks.size());
    for (const SheetCheck& check : morning().checks)
        EXPECT_FALSE(check.state);
}

TEST_F(DaySheetTest, reckonsUpWhatTheBenchUsed)
{
    ASSERT_TRUE(morning().sums);
    const Reckoning& pulls =
        *std::ranges::find(morning().sums->rows, Reckoned::Pulls, &Reckoning::what);
    EXPECT_EQ(pulls.expected, 3);
    EXPECT_EQ(pulls.counted, 3);
}

TEST_F(DaySheetTest, tellsWhereTheTrailCannotBeRead)
{
    trail.failsAt = 5;
    const auto failed = daySheetOf(trail, order);
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().kind, ExportFault::Kind::Trail);
}

}  // namespace
}  // namespace bathside
