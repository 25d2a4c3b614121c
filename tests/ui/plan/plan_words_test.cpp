// Every reason, warning and remark has a whole sentence in both languages.

#include "ui/text/plan_words.h"

#include <QRegularExpression>
#include <QSet>

#include <gtest/gtest.h>

#include "tests/ui/plan/plan_stand.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

constexpr auto kZone = "Europe/Amsterdam";

QStringList sentences(const DayPlan& day)
{
    const ui::PlanClock clock(day.midnight, kZone);
    const std::vector<plan::Reason> reasons{plan::AmpoulesMissing{0, 9300, {}},
                                            plan::AmpoulesMissing{0, 9300, 1},
                                            plan::BagsMissing{{}, 0},
                                            plan::BagsMissing{MicroLitres{400'000}, 2},
                                            plan::StoresNotEnough{},
                                            plan::PrimingTakesAll{MicroLitres{200'000}},
                                            plan::ResidualTakesAll{MicroLitres{200'000}},
                                            plan::LimitTooShort{90s},
                                            plan::BreakInTheWay{{}},
                                            plan::BreakInTheWay{20min},
                                            plan::Undecided{{4000, 2, 400'000}},
                                            plan::Unexplained{}};
    const std::vector<plan::Warning> warnings{
        plan::RunsThroughBreak{{0, 1}, {9h, 9h + 20min}}, plan::IdlesToSpare{{0, 1}, 4min},
        plan::NoSpareLeft{0, 0}, plan::SmallMargin{{0, 1}, 3min}};
    const WallTime eight = day.midnight + 8h;
    const std::vector<DayRemark> remarks{LineWaits{{"A"}, eight, eight + 9min},
                                         LineStands{{"A"}, eight}, PullLate{{"A"}, 4min}};
    QStringList all;
    for (const plan::Reason& reason : reasons)
        all.append(ui::reasonText(day.today.input, reason));
    for (const plan::Warning& warning : warnings)
        all.append(ui::warningText(day, warning, clock));
    for (const DayRemark& remark : remarks)
        all.append(ui::remarkText(remark, clock));
    all.append(ui::benchText(day));
    all.append(ui::rateText(day.today.lines.front()));
    all.append(ui::nextText(*day.next, clock, *day.today.input.now));
    all.append(ui::nextText(*day.next, clock, clock.elapsed(day.next->start)));
    BagForecast forecast{.line = {"A"},
                         .bag = {"B1"},
                         .empty = eight,
                         .earliest = eight - 2min,
                         .latest = eight + 3min,
                         .limit = eight + 9min,
                         .birds = 300,
                         .wasted = 0};
    all.append(ui::forecastText(forecast, clock));
    forecast.latest.reset();
    all.append(ui::forecastText(forecast, clock));
    forecast.wasted = 120;
    all.append(ui::forecastText(forecast, clock));
    return all;
}

QStringList sentencesIn(const char* language)
{
    PlanStand pages(kTenInch, QString::fromLatin1(language));
    planTwoLines(pages.stand());
    return sentences(*pages.day());
}

TEST(PlanWords, areWholeSentencesInBothLanguages)
{
    const QStringList english = sentencesIn("en"), spanish = sentencesIn("es");
    ASSERT_EQ(english.size(), spanish.size());
    QSet<QString> seen;
    for (qsizetype i = 0; i < english.size(); ++i) {
        for (const QString& each : {english.at(i), spanish.at(i)}) {
            EXPECT_TRUE(each.endsWith(u'.')) << each.toStdString();
            EXPECT_FALSE(each.contains(QRegularExpression(QStringLiteral("%(L?n|[1-9])|\\(s\\)"))))
                << each.toStdString();
            EXPECT_FALSE(seen.contains(each)) << each.toStdString();
            seen.insert(each);
        }
    }
}

TEST(PlanWords, oneAndMany)
{
    PlanStand pages(kTenInch, QStringLiteral("en"));
    planTwoLines(pages.stand());
    const auto& input = pages.day()->today.input;
    EXPECT_EQ(ui::reasonText(input, plan::AmpoulesMissing{0, 1, 3}),
              QStringLiteral("Not enough ampoules of serotype 3 for 1 bird: 3 missing."));
    EXPECT_EQ(
        ui::reasonText(input, plan::Undecided{{4000, 2, 0}}),
        QStringLiteral("Too large to be planned exactly: no plan opens fewer than 4,000 doses."));
}

TEST(PlanWords, aMarginIsNeverShownLargerThanItIs)
{
    EXPECT_EQ(ui::marginText(4min + 59s), QStringLiteral("4 min"));
}

// 29 March 2026: at 02:00 clocks go to 03:00, midnight is 23:00 UTC. (tz database, release 2025b.)
TEST(PlanClock, showsWhatTheClockOnTheWallShows)
{
    const WallTime midnight(std::chrono::seconds(1774738800));
    const ui::PlanClock clock(midnight, kZone);
    EXPECT_EQ(clock.text(1h), QStringLiteral("01:00"));
    EXPECT_EQ(clock.text(6h), QStringLiteral("07:00"));
    EXPECT_EQ(clock.text(midnight + 6h), QStringLiteral("07:00"));
    EXPECT_EQ(clock.text(23h + 10min), QStringLiteral("24:10"));
}

}  // namespace
}  // namespace bathside::test
