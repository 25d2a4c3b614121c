// The plan page, by real taps: a line entered, changed and removed; timeline, list and words; the
// sheet. Sizes as in tests/ui/bench/walk_test.cpp.

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/ui/plan/plan_stand.h"
#include "ui/controls/banner.h"
#include "ui/plan/ask_plan.h"
#include "ui/plan/bag_table.h"
#include "ui/plan/timeline_view.h"
#include "ui/record/field_sheet.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

class PlanPageTest : public testing::Test {
protected:
    PlanPageTest() : pages(kTenInch, QStringLiteral("en")) { pages.show(); }

    Stand& stand() { return pages.stand(); }
    void type(std::int64_t number)
    {
        for (const char digit : std::to_string(number))
            stand().tap(QStringLiteral("pad.") + QLatin1Char(digit));
        stand().tap(QStringLiteral("pad.set"));
    }
    void enterLineA()
    {
        stand().taps({"plan.lines", "ask.line:A"});
        type(6000);
        type(3000);
        type(800);
    }
    void change(const char* what)
    {
        stand().taps({"plan.lines", "ask.line:A"});
        stand().tap(QString::fromLatin1(what));
    }
    template <typename Widget>
    Widget* shown()
    {
        for (auto* each : stand().frame().current()->findChildren<Widget*>()) {
            if (each->isVisible())
                return each;
        }
        return nullptr;
    }
    /// Bars on line A's row, as they are on the screen.
    std::size_t barsOnScreen()
    {
        const auto* view = shown<ui::TimelineView>();
        return view ? view->layout().rows.front().bars.size() : 0;
    }
    QString notice()
    {
        return stand().frame().findChild<ui::Banner*>(QStringLiteral("plan.notice"))->text();
    }
    QString words()
    {
        QString all;
        for (const ui::Field& field : shown<ui::FieldSheet>()->fields())
            all += field.value + u'\n';
        return all;
    }

    PlanStand pages;
};

TEST_F(PlanPageTest, isTwoTapsFromTheIdleBench)
{
    stand().tap(QStringLiteral("plan.bench"));
    stand().taps({"more", "ask.page:plan"});
    EXPECT_TRUE(stand().target(QStringLiteral("plan.bench")));
}

TEST_F(PlanPageTest, nothingIsShownBeforeALineIsPlanned)
{
    EXPECT_FALSE(shown<ui::TimelineView>());
    EXPECT_FALSE(stand().target(QStringLiteral("plan.print")));
}

// A bag of 400 mL at 0.2 mL a bird holds 2,000 doses (common practice: volume over dose).
TEST_F(PlanPageTest, aLineEnteredIsAPlanOnTheScreen)
{
    enterLineA();
    ASSERT_TRUE(pages.day());
    EXPECT_EQ(barsOnScreen(), 3U);
    EXPECT_EQ(pages.day()->plan.lines[0]->bags[0].turn.birds, 2000);
}

TEST_F(PlanPageTest, anotherRateIsAnotherPlanAtOnce)
{
    enterLineA();
    const auto last = pages.day()->plan.lines[0]->worth.lastBird;
    change("ask.rate");
    type(2500);
    EXPECT_EQ(stand().bench().planned.front().birdsPerHour, 2500);
    EXPECT_GT(pages.day()->plan.lines[0]->worth.lastBird, last);
    EXPECT_EQ(barsOnScreen(), 3U);
}

TEST_F(PlanPageTest, otherBirdsAreOtherBags)
{
    enterLineA();
    change("ask.birds");
    type(2000);
    EXPECT_EQ(barsOnScreen(), 1U);
}

TEST_F(PlanPageTest, anotherStartMovesTheFirstPull)
{
    enterLineA();
    const WallTime start = pages.day()->next->start;
    change("ask.start");
    type(930);
    EXPECT_EQ(pages.day()->next->start, start + 90min);
}

TEST_F(PlanPageTest, breaksAreAddedAndRemoved)
{
    enterLineA();
    change("ask.break");
    type(930);
    type(950);
    const std::vector<DaySpan> pause{{9h + 30min, 9h + 50min}};
    EXPECT_EQ(stand().bench().planned.front().breaks, pause);
    EXPECT_EQ(shown<ui::TimelineView>()->layout().rows.front().breaks.size(), 1U);
    change("ask.no-break");
    stand().tap(QStringLiteral("ask.break:0"));
    EXPECT_TRUE(stand().bench().planned.front().breaks.empty());
}

TEST_F(PlanPageTest, aBreakThatEndsEarlierRunsPastMidnight)
{
    enterLineA();
    change("ask.break");
    type(2350);
    type(10);
    EXPECT_EQ(stand().bench().planned.front().breaks.front().to, 24h + 10min);
}

TEST_F(PlanPageTest, aLineIsRemovedWhenThatIsSaidTwice)
{
    enterLineA();
    change("ask.remove");
    stand().tap(QStringLiteral("ask.back"));
    EXPECT_EQ(stand().bench().planned.size(), 1U);
    change("ask.remove");
    stand().tap(QStringLiteral("ask.sure"));
    EXPECT_TRUE(stand().bench().planned.empty());
    EXPECT_FALSE(pages.day());
    EXPECT_FALSE(shown<ui::TimelineView>());
}

TEST_F(PlanPageTest, aMinuteThatThereIsNotIsAskedAgain)
{
    enterLineA();
    change("ask.start");
    type(875);
    EXPECT_TRUE(stand().target(QStringLiteral("pad.set")));
    EXPECT_FALSE(notice().isEmpty());
    EXPECT_EQ(stand().bench().planned.front().start, 8h);
}

TEST(TimeOfDigits, isHoursAndMinutes)
{
    EXPECT_EQ(ui::timeOfDigits(0), 0min);
    EXPECT_EQ(ui::timeOfDigits(730), 7h + 30min);
    EXPECT_EQ(ui::timeOfDigits(2359), 23h + 59min);
    for (const qint64 none : {-1, 60, 1275, 2400})
        EXPECT_FALSE(ui::timeOfDigits(none)) << none;
}

TEST_F(PlanPageTest, theListHasEveryBagInTheOrderOfThePulls)
{
    planTwoLines(stand());
    stand().tap(QStringLiteral("plan.list"));
    const auto* table = shown<ui::BagTable>();
    ASSERT_TRUE(table);
    QStringList pulls;
    for (const ui::BagRow& row : table->rows())
        pulls.append(row.cells.at(1));
    EXPECT_EQ(pulls.size(), 5);
    EXPECT_TRUE(std::ranges::is_sorted(pulls));
    const ui::BagRow& first = table->rows().front();
    EXPECT_EQ(first.cells.at(0), QStringLiteral("A-1"));
    EXPECT_EQ(first.cells.at(1), QStringLiteral("07:49"));
}

TEST_F(PlanPageTest, aSmallMarginIsSaidInTheListAsWell)
{
    planTwoLines(stand());
    stand().tap(QStringLiteral("plan.list"));
    const auto& rows = shown<ui::BagTable>()->rows();
    const auto small = std::ranges::find(rows, ui::Role::HeadsUp, &ui::BagRow::role);
    ASSERT_NE(small, rows.end());
    EXPECT_TRUE(small->cells.last().startsWith(QStringLiteral("only")));
}

TEST_F(PlanPageTest, theDayIsToldInWords)
{
    planTwoLines(stand());
    runForAnHour(stand());
    pages.show();
    stand().tap(QStringLiteral("plan.words"));
    const QString all = words();
    EXPECT_TRUE(all.contains(QStringLiteral("birds an hour measured"))) << all.toStdString();
    EXPECT_TRUE(all.contains(QStringLiteral("with 95 % confidence"))) << all.toStdString();
    EXPECT_TRUE(all.contains(QStringLiteral("Bag B1 is empty at"))) << all.toStdString();
}

TEST_F(PlanPageTest, aLineThatStandsIsSaid)
{
    planTwoLines(stand());
    runForAnHour(stand());
    stand().say(StopLine{LineId{"A"}});
    pages.show();
    EXPECT_TRUE(notice().contains(QStringLiteral("Line A has stood still since")))
        << notice().toStdString();
}

TEST_F(PlanPageTest, whatOnePreparerCannotDoIsSaid)
{
    planTooManyLines(stand());
    stand().pass(1s);
    EXPECT_TRUE(notice().contains(QStringLiteral("cannot be made in time")))
        << notice().toStdString();
}

TEST_F(PlanPageTest, theSheetHasTheBagsThatAreStillToBeMade)
{
    planTwoLines(stand());
    stand().tap(QStringLiteral("plan.print"));
    ASSERT_EQ(stand().papers().sheets.size(), 1U);
    const ui::PlanSheet& sheet = stand().papers().sheets.front();
    ASSERT_EQ(sheet.lines.size(), 2U);
    EXPECT_EQ(sheet.lines[0].bags.size(), 3U);
    EXPECT_EQ(sheet.lines[0].bags[0].pullStart, 7h + 49min);
    EXPECT_TRUE(sheet.rehearsal);
    EXPECT_TRUE(words().contains(QStringLiteral("/documents/printed.pdf")));
}

TEST_F(PlanPageTest, theWindowLeadsBackToTheBench)
{
    planTwoLines(stand());
    for (const Check& check : stand().bench().card->content().checks)
        stand().say(RecordCheck{check.id, true, {}});
    stand().tap(QStringLiteral("plan.lines"));
    stand().say(TakeOut{{{0, {"serotype 3"}, {}}}});
    EXPECT_EQ(stand().frame().current(),
              stand().frame().page(QString::fromLatin1(ui::Frame::kBench)));
    EXPECT_FALSE(stand().frame().showPage(QString::fromLatin1(ui::Frame::kPlan)));
}

// --- how it looks -------------------------------------------------------------------------------

struct Sight {
    const char* name;
    void (*set)(Stand&);
    std::vector<const char*> taps;
};

struct Look {
    Sight sight;
    Panel panel;
    const char* language;
};

void running(Stand& stand)
{
    planTwoLines(stand);
    runForAnHour(stand);
}

std::vector<Look> looks()
{
    const std::vector<Sight> sights{
        {"empty", [](Stand&) {}, {}},
        {"morning", planTwoLines, {}},
        {"running", running, {}},
        {"crowded", planTooManyLines, {}},
        {"many lines", planALineForEveryLetter, {}},
        {"last lines", planALineForEveryLetter, {"plan.more", "plan.more"}},
        {"list", planTwoLines, {"plan.list"}},
        {"long list", planALineForEveryLetter, {"plan.list", "plan.more"}},
        {"words", running, {"plan.words"}},
        {"lines", planTwoLines, {"plan.lines"}},
        {"line", planTwoLines, {"plan.lines", "ask.line:A"}},
        {"birds", planTwoLines, {"plan.lines", "ask.line:A", "ask.birds"}},
        {"rate", planTwoLines, {"plan.lines", "ask.line:A", "ask.rate"}},
        {"start", planTwoLines, {"plan.lines", "ask.line:A", "ask.start"}},
        {"break",
         planTwoLines,
         {"plan.lines", "ask.line:A", "ask.break", "pad.9", "pad.3", "pad.0", "pad.set"}},
        {"no break", planTwoLines, {"plan.lines", "ask.line:A", "ask.no-break"}},
        {"remove", planTwoLines, {"plan.lines", "ask.line:A", "ask.remove"}},
        {"printed", planTwoLines, {"plan.print"}},
    };
    std::vector<Look> all;
    for (const Sight& sight : sights) {
        for (const char* language : {"en", "es"}) {
            all.push_back({sight, kTenInch, language});
            all.push_back({sight, kFifteenInch, language});
        }
    }
    return all;
}

std::string nameOfLook(const testing::TestParamInfo<Look>& test)
{
    std::string name = std::string(test.param.sight.name) + "_" + test.param.language + "_" +
                       test.param.panel.name;
    std::ranges::replace(name, ' ', '_');
    return name;
}

class PlanLook : public testing::TestWithParam<Look> {};

TEST_P(PlanLook, everyTargetIsLargeApartAndWhole)
{
    PlanStand pages(GetParam().panel, QString::fromLatin1(GetParam().language));
    GetParam().sight.set(pages.stand());
    pages.show();
    pages.stand().taps(GetParam().sight.taps);
    expectTargetsAsTheyMustBe(pages.stand().frame());
}

INSTANTIATE_TEST_SUITE_P(Plan, PlanLook, testing::ValuesIn(looks()), nameOfLook);

}  // namespace
}  // namespace bathside::test
