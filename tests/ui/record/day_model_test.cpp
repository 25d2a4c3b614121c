// The day's rows and their filter: inserted, never reset; mended and linked both ways.

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include "tests/support/trail_days.h"
#include "ui/record/day_filter.h"

namespace bathside::ui {
namespace {

using Tester = QAbstractItemModelTester;

class Day : public testing::Test {
protected:
    Day()
    {
        QObject::connect(&m_model, &QAbstractItemModel::modelReset, [this] { ++m_resets; });
        QObject::connect(&m_filter, &QAbstractItemModel::modelReset, [this] { ++m_resets; });
        m_model.begin("Europe/Madrid");
    }
    ~Day() override { EXPECT_EQ(m_resets, 0); }

    Seq add(Fact fact)
    {
        m_model.append({m_trail.entry(std::move(fact))});
        return m_model.lastSeq();
    }
    [[nodiscard]] const DayRow& row(Seq seq)
    {
        return m_model.rows()[static_cast<std::size_t>(m_model.rowOf(seq))];
    }
    [[nodiscard]] std::vector<Seq> shown()
    {
        std::vector<Seq> seqs;
        for (int i = 0; i < m_filter.rowCount(); ++i)
            seqs.push_back(m_filter.at(m_filter.index(i, 0))->entry.seq);
        return seqs;
    }

    test::TrailDays m_trail;
    DayModel m_model;
    DayFilter m_filter{m_model};
    Tester m_testModel{&m_model, Tester::FailureReportingMode::Fatal};
    Tester m_testFilter{&m_filter, Tester::FailureReportingMode::Fatal};
    int m_resets = 0;
};

TEST_F(Day, takesEachEntryOnceAndInOrder)
{
    const auto day = m_trail.day(40);
    m_model.append({day.begin(), day.begin() + 10});
    m_model.append({day.begin() + 5, day.begin() + 20});
    EXPECT_EQ(m_model.rowCount(), 20);
    EXPECT_EQ(m_model.lastSeq(), 20);
    EXPECT_EQ(m_model.rowOf(7), 6);
    EXPECT_EQ(m_model.rowOf(21), -1);
}

// 06:00:04 UTC on 5 March 2026 is 07:00:04 in Madrid (tz database: CET, UTC+1).
TEST_F(Day, saysWhenWhoAndWhat)
{
    const auto day = m_trail.day(40);
    m_model.append(day);
    const QModelIndex fourth = m_model.index(3);
    EXPECT_EQ(fourth.data(DayModel::TimeRole).toString(), QStringLiteral("07:00:04"));
    EXPECT_EQ(fourth.data(DayModel::PersonRole).toString(), QStringLiteral("AB"));
    EXPECT_TRUE(fourth.data(DayModel::SentenceRole).toString().contains(QStringLiteral("B1")));
}

TEST_F(Day, anotherDayTakesItsPlace)
{
    m_model.append(m_trail.day(40));
    m_model.begin("UTC");
    EXPECT_EQ(m_model.rowCount(), 0);
    m_model.append(m_trail.day(30));
    EXPECT_GT(m_model.rowCount(), 25);
}

TEST_F(Day, whatIsCorrectedAndItsCorrectionPointAtEachOther)
{
    const Seq said = add(BirdsCounted{{"A"}, 950});
    const Seq mended = add(FactCorrected{said, "count", "940", "misread"});
    EXPECT_EQ(row(said).mend, DayRow::Mend::Corrected);
    EXPECT_EQ(row(said).links, std::set<Seq>{mended});
    EXPECT_EQ(row(mended).links, std::set<Seq>{said});
    EXPECT_EQ(row(mended).mend, DayRow::Mend::None);
}

TEST_F(Day, soDoWhatIsTakenBackAndItsTakingBack)
{
    const Seq one = add(BirdsCounted{{"A"}, 950}), two = add(BirdsCounted{{"A"}, 960});
    const Seq back = add(FactTakenBack{{one, two}, std::nullopt});
    EXPECT_EQ(row(one).mend, DayRow::Mend::TakenBack);
    EXPECT_EQ(row(two).links, std::set<Seq>{back});
    EXPECT_EQ(row(back).links, (std::set<Seq>{one, two}));
}

TEST_F(Day, aDeviationPointsAtWhatItFollowsFromButMendsNothing)
{
    const Seq out = add(AmpouleOut{{1, 1}, {"s3"}, {"K1"}});
    const Seq late =
        add(DeviationFound{LimitName::Exposure, subjectOf(AmpouleRef{1, 1}), {}, 100, {out}});
    EXPECT_EQ(row(late).links, std::set<Seq>{out});
    EXPECT_EQ(row(out).mend, DayRow::Mend::None);
}

TEST_F(Day, aLinkOutOfTheDayIsNone)
{
    const Seq mended = add(FactCorrected{4711, "count", "940", "misread"});
    EXPECT_TRUE(row(mended).links.empty());
}

TEST_F(Day, filtersByGroup)
{
    add(StationStarted{"0.1.0", {}, false});
    const Seq bag = add(BagStarted{{"B1"}, {400000}, {"D1"}, {}});
    add(BirdsCounted{{"A"}, 10});
    m_filter.wish({.by = DayWish::By::Group, .group = Group::Bags, .id = {}});
    EXPECT_EQ(shown(), std::vector<Seq>{bag});
    const Seq mixed = add(BagMixed{{"B1"}});
    EXPECT_EQ(shown(), (std::vector<Seq>{bag, mixed}));
    m_filter.wish({});
    EXPECT_EQ(m_filter.rowCount(), 4);
}

TEST_F(Day, deviationsAndCorrectionsComeWithWhatTheyMended)
{
    const Seq said = add(BirdsCounted{{"A"}, 950});
    add(BirdsCounted{{"A"}, 960});
    m_filter.wish({.by = DayWish::By::Group, .group = Group::Deviations, .id = {}});
    EXPECT_TRUE(shown().empty());
    const Seq mended = add(FactCorrected{said, "count", "940", "misread"});
    EXPECT_EQ(shown(), (std::vector<Seq>{said, mended}));
}

TEST_F(Day, aBagIsItsAmpoulesToo)
{
    const Seq start = add(BagStarted{{"B1"}, {400000}, {"D1"}, {}});
    const Seq out = add(AmpouleOut{{1, 1}, {"s3"}, {"K1"}});
    add(AmpouleOut{{1, 2}, {"s3"}, {"K2"}});
    const Seq in = add(AmpouleBagged{{1, 1}, {"B1"}, true});
    add(AmpouleBagged{{1, 2}, {"B2"}, true});
    m_filter.wish({.by = DayWish::By::Bag, .group = Group::All, .id = "B1"});
    EXPECT_EQ(shown(), (std::vector<Seq>{start, out, in}));
    m_filter.wish({.by = DayWish::By::Lot, .group = Group::All, .id = "K1"});
    EXPECT_EQ(shown(), (std::vector<Seq>{out, in}));
}

// Pulls are numbered within a shift: the next shift's first ampoule is another one.
TEST_F(Day, theNextShiftsFirstAmpouleIsAnother)
{
    add(ShiftOpened{"Europe/Madrid", {}});
    const Seq first = add(AmpouleOut{{1, 1}, {"s3"}, {"K1"}});
    const Seq firstIn = add(AmpouleInBath{{1, 1}, true});
    add(ShiftOpened{"Europe/Madrid", {}});
    add(AmpouleOut{{1, 1}, {"s3"}, {"K2"}});
    add(AmpouleInBath{{1, 1}, true});
    m_filter.wish({.by = DayWish::By::Lot, .group = Group::All, .id = "K1"});
    EXPECT_EQ(shown(), (std::vector<Seq>{first, firstIn}));
}

TEST_F(Day, namesWhoAndWhatThereIs)
{
    add(BagStarted{{"B1"}, {400000}, {"D1"}, {}});
    add(AmpouleOut{{1, 1}, {"s3"}, {"K1"}});
    add(DutyTaken{{"ZZ"}});
    const About named = m_model.named();
    EXPECT_EQ(named.persons, (std::set<std::string>{"AB", "ZZ"}));
    EXPECT_EQ(named.bags, std::set<std::string>{"B1"});
    EXPECT_EQ(named.lots, (std::set<std::string>{"D1", "K1"}));
}

TEST_F(Day, aKindThatIsNotKnownIsShownAsSuch)
{
    Entry later = m_trail.entry(NoteMade{"x"});
    later.kind = "plan.made";
    m_model.append({later});
    EXPECT_TRUE(m_model.index(0)
                    .data(DayModel::SentenceRole)
                    .toString()
                    .contains(QStringLiteral("plan.made")));
}

}  // namespace
}  // namespace bathside::ui
