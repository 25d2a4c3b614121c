// The day's rows and their filter: inserted, never reset; mended and linked both ways.

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include "tests/support/trail_days.h"
#include "ui/record/entry_text.h"

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

TEST_F(Day, aLinkOutOfTheDayIsKept)
{
    const Seq mended = add(FactCorrected{4711, "count", "940", "misread"});
    EXPECT_EQ(row(mended).links, std::set<Seq>{4711});
    EXPECT_EQ(bondText(row(mended), nullptr), QStringLiteral("what it corrects, on another day"));
}

TEST_F(Day, reviewsCommentsAndSignaturesAreLinkedBothWays)
{
    const Seq late = add(DeviationFound{LimitName::InUse, subjectOf(BagId{"B1"}), {}, 100, {}});
    const Seq review =
        add(DeviationReviewed{.of = late, .cause = "other", .words = {}, .action = {}});
    const Seq signature = add(RecordSigned{Meaning::Reviewed, {late}, {}});
    const Seq note = add(NoteMade{"x"});
    const Seq comment = add(NoteCommented{.of = note, .text = "seen"});
    EXPECT_EQ(row(late).links, (std::set<Seq>{review, signature}));
    EXPECT_EQ(row(review).links, std::set<Seq>{late});
    EXPECT_EQ(row(note).links, std::set<Seq>{comment});
    EXPECT_EQ(row(comment).links, std::set<Seq>{note});
    EXPECT_EQ(bondText(row(late), &row(review)), QStringLiteral("its review"));
    EXPECT_EQ(bondText(row(review), &row(late)), QStringLiteral("the deviation reviewed"));
    EXPECT_EQ(bondText(row(note), &row(comment)), QStringLiteral("a comment on it"));
}

TEST_F(Day, filtersHoldTogether)
{
    add(BagStarted{{"B1"}, {400000}, {"D1"}, {}});
    const Seq out = add(AmpouleOut{{1, 1}, {"s3"}, {"K1"}});
    add(AmpouleOut{{1, 2}, {"s3"}, {"K2"}});
    add(AmpouleBagged{{1, 1}, {"B1"}, true});
    add(AmpouleBagged{{1, 2}, {"B1"}, true});
    m_filter.wish({.group = Group::Ampoules, .person = "AB", .bag = "B1", .lot = "K1"});
    EXPECT_EQ(shown(), (std::vector<Seq>{out, out + 2}));
    m_filter.wish({.group = Group::Ampoules, .person = "ZZ", .bag = "B1", .lot = "K1"});
    EXPECT_TRUE(shown().empty());
}

TEST(GroupTest, storesFaultsAreTheStationsAndDeliveriesTheStores)
{
    EXPECT_EQ(groupOf("store.failed"), Group::Station);
    EXPECT_EQ(groupOf("store.received"), Group::Stores);
    EXPECT_EQ(groupOf("lot.released"), Group::Stores);
    EXPECT_EQ(groupOf("record.signed"), Group::People);
    EXPECT_EQ(groupOf("deviation.reviewed"), Group::Deviations);
}

TEST_F(Day, filtersByGroup)
{
    add(StationStarted{"0.1.0", {}, false});
    const Seq bag = add(BagStarted{{"B1"}, {400000}, {"D1"}, {}});
    add(BirdsCounted{{"A"}, 10});
    m_filter.wish({.group = Group::Bags, .person = {}, .bag = {}, .lot = {}});
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
    m_filter.wish({.group = Group::Deviations, .person = {}, .bag = {}, .lot = {}});
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
    m_filter.wish({.group = Group::All, .person = {}, .bag = "B1", .lot = {}});
    EXPECT_EQ(shown(), (std::vector<Seq>{start, out, in}));
    m_filter.wish({.group = Group::All, .person = {}, .bag = {}, .lot = "K1"});
    EXPECT_EQ(shown(), (std::vector<Seq>{out, in}));
}

TEST_F(Day, aCorrectedLotOrBagIsFoundByBothOfItsNames)
{
    const Seq out = add(AmpouleOut{{1, 1}, {"s3"}, {"K60"}});
    add(AmpouleOut{{1, 2}, {"s3"}, {"K60"}});
    const Seq bath = add(AmpouleInBath{{1, 1}, true});
    const Seq in = add(AmpouleBagged{{1, 1}, {"B1"}, true});
    m_filter.wish({.group = Group::All, .person = {}, .bag = {}, .lot = "K99"});
    EXPECT_TRUE(shown().empty());
    const Seq lot = add(FactCorrected{out, "lot", "K99", "misread"});
    EXPECT_EQ(shown(), (std::vector<Seq>{out, bath, in, lot}));
    const auto later = m_trail.entry(FactCorrected{in, "bag", "B9", "misread"});
    m_model.mendBy({later});
    m_filter.wish({.group = Group::All, .person = {}, .bag = "B9", .lot = {}});
    EXPECT_EQ(shown(), (std::vector<Seq>{out, bath, in}));
    EXPECT_EQ(m_model.named().lots, (std::set<std::string>{"K60", "K99"}));
    EXPECT_EQ(m_model.named().bags, (std::set<std::string>{"B1", "B9"}));
    m_filter.wish({.group = Group::All, .person = {}, .bag = "B1", .lot = "K60"});
    EXPECT_EQ(shown(), (std::vector<Seq>{out, bath, in})) << "what was said first stands, too";
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
    m_filter.wish({.group = Group::All, .person = {}, .bag = {}, .lot = "K1"});
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
