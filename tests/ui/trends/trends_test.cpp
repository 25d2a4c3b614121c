// The page of charts, by real taps to what is shown and recorded. Sizes as in
// tests/ui/bench/walk_test.cpp.

#include <QLocale>

#include <gmock/gmock.h>

#include "tests/support/cards.h"
#include "tests/ui/trends/trends_stand.h"
#include "ui/charts/chart.h"
#include "ui/controls/label.h"
#include "ui/record/field_sheet.h"
#include "ui/theme/theme.h"

namespace bathside::test {
namespace {

using testing::HasSubstr;

class TrendsPageTest : public testing::Test {
protected:
    TrendsPageTest() : pages(kTenInch, QStringLiteral("en"))
    {
        liveThroughPulls(pages);
        pages.show();
    }

    const Trend& trend() { return pages.page().trend(); }
    ui::Chart& chart(const char* name)
    {
        return *pages.page().findChild<ui::Chart*>(QString::fromLatin1(name));
    }
    ui::FieldSheet& story()
    {
        return *pages.page().findChild<ui::FieldSheet*>(QStringLiteral("trends.story"));
    }
    std::string notice() { return pages.pages().notice("trends.notice").toStdString(); }
    std::string words()
    {
        return pages.page()
            .findChild<ui::Label*>(QStringLiteral("trends.words"))
            ->text()
            .toStdString();
    }
    void taps(std::initializer_list<const char*> places)
    {
        for (const char* place : places)
            pages.tap(place);
    }

    TrendsStand pages;
};

TEST_F(TrendsPageTest, isOneTapFromTheReviewAndBack)
{
    pages.tap("trends.back");
    EXPECT_TRUE(pages.stand().target(QStringLiteral("review.bench")));
    pages.tap("review.charts");
    EXPECT_TRUE(pages.stand().target(QStringLiteral("trends.what")));
}

TEST_F(TrendsPageTest, asksForTheLastThirtyDays)
{
    pages.pages().show(ui::Frame::kReview);
    pages.pages().show(ui::TrendsPage::kPage);
    ASSERT_EQ(pages.charts().asked.size(), 1U);
    const ui::PointsWanted& wanted = pages.charts().asked.front();
    EXPECT_EQ(std::chrono::sys_days(wanted.last) - std::chrono::sys_days(wanted.first),
              std::chrono::days(29));
    EXPECT_THAT(notice(), HasSubstr("read"));
}

TEST_F(TrendsPageTest, drawsTheTimesOutOfTheCryogenWithTheirLimits)
{
    ASSERT_EQ(trend().points.size(), 12U);
    const auto& content = chart("trends.values").content();
    ASSERT_FALSE(content.lines.isEmpty());
    ASSERT_EQ(content.lines.front().points.size(), 12);
    for (int i = 0; i < 12; ++i)
        EXPECT_NEAR(content.lines.front().points.at(i).y(), kOutside[i], 0.002) << i;
    EXPECT_EQ(content.rules.size(), 3);
    EXPECT_EQ(chart("trends.ranges").content().lines.front().points.size(), 11);
    EXPECT_NEAR(chart("trends.ranges").content().lines.front().points.back().y(), 9.5 - 5.1, 0.002);
    EXPECT_THAT(notice(), HasSubstr("Of 12 point"));
}

TEST_F(TrendsPageTest, aBreakIsMarkedAndSaidOfThePointPicked)
{
    const auto& marks = chart("trends.values").content().marks;
    ASSERT_FALSE(marks.isEmpty());
    EXPECT_EQ(marks.back().at.x(), 12);
    EXPECT_EQ(marks.back().role, ui::Role::Limit);
    pages.tap("trends.before");  // the last
    EXPECT_THAT(words(), HasSubstr("1 beyond 3 sigma"));
    EXPECT_TRUE(chart("trends.values").readOut().contains(QStringLiteral("9.5 s")));
    EXPECT_TRUE(chart("trends.values").readOut().contains(QStringLiteral("OB")));
}

TEST_F(TrendsPageTest, aRuleCanBeSwitchedOffAndOn)
{
    ASSERT_FALSE(trend().breaks.empty());
    taps({"trends.rules", "ask.n:0", "ask.n:1", "ask.n:2", "ask.n:3", "ask.back"});
    EXPECT_TRUE(trend().breaks.empty());
    taps({"trends.rules", "ask.n:0", "ask.back"});
    ASSERT_EQ(trend().breaks.size(), 1U);
    EXPECT_EQ(trend().breaks.front(), (RunSignal{RunRule::OneBeyondThree, 11}));
}

TEST_F(TrendsPageTest, everySeriesCanBeCharted)
{
    taps({"trends.what", "ask.n:1"});
    EXPECT_EQ(trend().points.size(), 12U);
    EXPECT_NEAR(*trend().points.front().value, 73, 0.002);
    taps({"trends.what", "ask.n:2"});
    EXPECT_EQ(trend().points.size(), 12U);
    EXPECT_NEAR(*trend().points.front().value, 28.098, 1e-9);
    taps({"trends.what", "ask.n:3"});
    ASSERT_EQ(trend().points.size(), 1U);
    EXPECT_NEAR(*trend().points.front().value, 2.5, 1e-9);
    EXPECT_THAT(notice(), HasSubstr("1 of at least 10"));
    taps({"trends.what", "ask.n:4"});
    EXPECT_TRUE(trend().points.empty());
    EXPECT_THAT(notice(), HasSubstr("nothing of this"));
}

TEST_F(TrendsPageTest, showsOnePersonsOrOneLots)
{
    taps({"trends.whose", "ask.person", "ask.id:OB"});
    EXPECT_EQ(trend().points.size(), 6U);
    taps({"trends.whose", "ask.all"});
    EXPECT_EQ(trend().points.size(), 12U);
    taps({"trends.whose", "ask.lot", "ask.id:K07-112"});
    EXPECT_EQ(trend().points.size(), 6U);
    taps({"trends.whose", "ask.bench", "ask.id:bench 1"});
    EXPECT_EQ(trend().points.size(), 6U);
}

TEST_F(TrendsPageTest, hiddenNamesAreNowhereOnThePage)
{
    taps({"trends.whose", "ask.names"});
    taps({"trends.before"});
    const QString said = chart("trends.values").readOut();
    EXPECT_TRUE(said.contains(QStringLiteral("person 2"))) << said.toStdString();
    EXPECT_FALSE(said.contains(QStringLiteral("OB"))) << said.toStdString();
    taps({"trends.open"});
    for (const ui::Field& field : story().fields())
        EXPECT_FALSE(field.name.contains(QStringLiteral("OB"))) << field.name.toStdString();
    taps({"trends.close", "trends.whose", "ask.names", "trends.before"});
    EXPECT_TRUE(chart("trends.values").readOut().contains(QStringLiteral("OB")));
}

TEST_F(TrendsPageTest, aFingerOnAPointPicksItAndItsPullIsOneTapAway)
{
    emit chart("trends.values").touched(2.3);
    taps({"trends.open"});
    ASSERT_TRUE(story().isVisible());
    EXPECT_TRUE(story().title().contains(QStringLiteral("pull 2")))
        << story().title().toStdString();
    QStringList sentences;
    for (const ui::Field& field : story().fields())
        sentences.append(field.value);
    EXPECT_EQ(sentences.filter(QStringLiteral("pull 2")).size(), sentences.size())
        << sentences.join(u'\n').toStdString();
    EXPECT_GE(sentences.size(), 5);  // out, in bath, opened, in diluent, in bag
    taps({"trends.close"});
    EXPECT_FALSE(story().isVisible());
}

TEST_F(TrendsPageTest, aBaselineIsSignedByPinAndThenHolds)
{
    for (int i = 0; i < 2; ++i)
        pages.tap("trends.before");  // the last but one
    taps({"trends.limits", "ask.until"});
    pages.pages().pin("4071");
    pages.charts().answer();

    const auto& baselines = pages.stand().bench().baselines;
    ASSERT_TRUE(baselines.contains("out to bath"));
    EXPECT_EQ(trend().from, LimitsFrom::Baseline);
    EXPECT_EQ(trend().based, 11U);
    EXPECT_EQ(trend().points.size(), 12U);
    EXPECT_EQ(baselines.at("out to bath").to, trend().points[10].seq);
    EXPECT_THAT(notice(), HasSubstr("signed by LS"));
    const auto& kept = pages.stand().kept().all;
    const auto said = std::ranges::find_if(kept, [](const Event& event) {
        return std::holds_alternative<BaselineChosen>(event.fact);
    });
    ASSERT_NE(said, kept.end());
    EXPECT_EQ(said->person, (Person{{"LS"}, Proof::Proven}));
}

TEST_F(TrendsPageTest, aBaselineIsWithdrawnByPinToo)
{
    taps({"trends.limits"});
    EXPECT_FALSE(pages.stand().target(QStringLiteral("ask.none")));  // there is none yet
    taps({"ask.all"});
    pages.pages().pin("4071");
    pages.charts().answer();
    ASSERT_EQ(trend().from, LimitsFrom::Baseline);

    taps({"trends.limits", "ask.none"});
    EXPECT_EQ(trend().from, LimitsFrom::Baseline);  // nobody has signed it yet
    pages.pages().pin("4071");
    pages.charts().answer();
    EXPECT_TRUE(pages.stand().bench().baselines.empty());
    EXPECT_NE(trend().from, LimitsFrom::Baseline);
    EXPECT_THAT(notice(), HasSubstr("withdrawn, signed by LS"));
}

TEST_F(TrendsPageTest, tooFewPointsGiveNoBaseline)
{
    taps({"trends.whose", "ask.person", "ask.id:MK", "trends.limits", "ask.all"});
    EXPECT_TRUE(pages.stand().target(QStringLiteral("ask.all")));  // it still asks
    EXPECT_TRUE(pages.stand().bench().baselines.empty());
}

TEST_F(TrendsPageTest, anyDaysCanBeAskedFor)
{
    pages.stand().taps({"trends.days", "ask.typed"});
    for (const char* day : {"20260301", "20260215"}) {
        for (const char* digit = day; *digit; ++digit)
            pages.stand().tap(QStringLiteral("pad.") + QLatin1Char(*digit));
        pages.stand().tap(QStringLiteral("pad.set"));
    }
    ASSERT_EQ(pages.charts().asked.size(), 1U);
    using namespace std::chrono_literals;
    EXPECT_EQ(pages.charts().asked[0].first, 2026y / 2 / 15);
    EXPECT_EQ(pages.charts().asked[0].last, 2026y / 3 / 1);
    pages.charts().answer();
    pages.stand().taps({"trends.days", "ask.earlier"});
    ASSERT_EQ(pages.charts().asked.size(), 1U);
    EXPECT_EQ(pages.charts().asked[0].last, 2026y / 2 / 14);
    EXPECT_EQ(pages.charts().asked[0].first, 2026y / 1 / 31);
}

TEST_F(TrendsPageTest, aTrailThatCannotBeReadIsSaid)
{
    pages.charts().trouble = StoreTrouble{StoreFault::Damaged, 0};
    taps({"trends.days", "ask.last:7"});
    EXPECT_FALSE(notice().empty());
    EXPECT_THAT(notice(), testing::Not(HasSubstr("Of ")));
}

TEST_F(TrendsPageTest, anAnswerToAnOlderQuestionIsNotTaken)
{
    const int asked = 1;
    emit pages.charts().pointsRead({asked - 1, {}, {}});
    EXPECT_EQ(trend().points.size(), 12U);
}

TEST_F(TrendsPageTest, savesBothChartsOrSaysWhyNot)
{
    pages.tap("trends.save");
    EXPECT_THAT(pages.saved, testing::SizeIs(2));
    pages.diskIsFull = true;
    pages.tap("trends.save");
    EXPECT_THAT(pages.saved, testing::SizeIs(2));
    EXPECT_FALSE(notice().empty());
}

TEST(TrendsLooksTest, everyTargetIsBigEnoughAndEveryWordWhole)
{
    for (const Panel& panel : {kTenInch, kFifteenInch}) {
        for (const char* language : {"en", "es"}) {
            SCOPED_TRACE(std::string(panel.name) + " " + language);
            TrendsStand pages(panel, QString::fromLatin1(language));
            liveThroughPulls(pages);
            pages.show();
            expectTargetsAsTheyMustBe(pages.stand().frame());
            pages.tap("trends.before");
            expectTargetsAsTheyMustBe(pages.stand().frame());
            for (const char* question :
                 {"trends.what", "trends.whose", "trends.days", "trends.rules", "trends.limits"}) {
                SCOPED_TRACE(question);
                pages.tap(question);
                expectTargetsAsTheyMustBe(pages.stand().frame());
                pages.tap("ask.back");
            }
            pages.tap("trends.limits");
            pages.tap("ask.all");
            expectTargetsAsTheyMustBe(pages.stand().frame());
            pages.tap("pad.cancel");
            pages.tap("trends.what");
            pages.tap("ask.n:2");  // between two limits
            expectTargetsAsTheyMustBe(pages.stand().frame());
            pages.tap("trends.before");
            pages.tap("trends.open");
            expectTargetsAsTheyMustBe(pages.stand().frame());
        }
    }
    QLocale::setDefault(QLocale(QStringLiteral("en")));
}

}  // namespace
}  // namespace bathside::test
