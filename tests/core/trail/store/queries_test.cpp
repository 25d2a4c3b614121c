#include "core/trail/store/queries.h"

#include <gmock/gmock.h>

#include "tests/core/trail/store/support.h"
#include "tests/support/temp_folder.h"
#include "tests/support/trail_days.h"

namespace bathside::store {
namespace {

using test::kFirstMorning;
using test::TempFolder;
using test::TrailDays;
using testing::ElementsAre;
using testing::IsEmpty;

// Three days of work; every seq that is asked for below is known from here.
class QueriesTest : public testing::Test {
protected:
    QueriesTest()
    {
        add({m_days.entry(CardAdopted{{R"({"name":"first"})"}}),
             m_days.entry(ProbeDescribed{{"28-01"}, {"{}"}})});
        for (int day = 0; day < 3; ++day) {
            m_starts.push_back(m_days.head().seq + 1);
            add(m_days.day(80));
        }
        m_trail = opened(written(m_folder / "trail.db", m_log));
    }

    void add(const std::vector<Entry>& entries)
    {
        m_log.insert(m_log.end(), entries.begin(), entries.end());
    }

    std::vector<Seq> seqsWhere(auto test) const
    {
        std::vector<Seq> seqs;
        for (const Entry& entry : m_log) {
            if (test(entry))
                seqs.push_back(entry.seq);
        }
        return seqs;
    }

    TempFolder m_folder;
    TrailDays m_days;
    std::vector<Entry> m_log;
    std::vector<Seq> m_starts;  // the `station.started` of each day, with the opening right after
    std::unique_ptr<TrailDb> m_trail;
};

TEST_F(QueriesTest, theLastShift)
{
    EXPECT_EQ(openingOfLastShift(*m_trail), m_starts[2] + 1);
    EXPECT_EQ(openingOfLastShift(*opened(m_folder / "empty.db")), 0);
}

TEST_F(QueriesTest, everythingFromASeqOn)
{
    const Seq from = m_starts[2] + 1;
    EXPECT_EQ(*entriesFrom(*m_trail, from),
              std::vector<Entry>(m_log.begin() + from - 1, m_log.end()));
}

TEST_F(QueriesTest, whatIsCarriedOverShifts)
{
    const auto found = carried(*m_trail, {"card.adopted", "probe.described"}, m_starts[2]);
    EXPECT_EQ(*found, std::vector<Entry>(m_log.begin(), m_log.begin() + 2));
    EXPECT_THAT(*carried(*m_trail, {"card.adopted"}, 1), IsEmpty());
    EXPECT_THAT(*carried(*m_trail, {}, 100), IsEmpty());
}

// A start reads as much after ten years as after one.
TEST_F(QueriesTest, whatComesEveryDayIsCarriedByItsLatest)
{
    std::vector<Entry> later;
    for (int i = 0; i < 250; ++i)
        later.push_back(m_days.entry(RecordSigned{Meaning::Reviewed, {}, std::to_string(i)}));
    later.push_back(m_days.entry(FactCorrected{1, "words", "x", "misread"}));  // of the card
    later.push_back(m_days.entry(FactCorrected{m_starts[0] + 4, "lot", "K99", "misread"}));
    later.push_back(m_days.entry(FactTakenBack{{later[250].seq}, std::nullopt}));
    ASSERT_TRUE(m_trail->append(later));
    const auto all = carried(
        *m_trail,
        {"card.adopted", "record.signed", "station.started", "fact.corrected", "fact.taken-back"},
        kAll);
    ASSERT_TRUE(all);
    std::vector<Entry> expected{m_log[0], m_log[static_cast<std::size_t>(m_starts[2] - 1)]};
    expected.insert(expected.end(), later.begin() + 50, later.begin() + 251);
    expected.push_back(later[252]);
    EXPECT_EQ(*all, expected);
}

TEST_F(QueriesTest, aTapThatIsThereAndOneThatIsNot)
{
    EXPECT_EQ(hasTap(*m_trail, m_log[17].tap), true);
    EXPECT_EQ(hasTap(*m_trail, {"never"}), false);
}

TEST_F(QueriesTest, theShiftsOfADay)
{
    using namespace std::chrono_literals;
    const auto shifts = shiftsOpened(*m_trail, kFirstMorning + 24h, kFirstMorning + 48h);
    ASSERT_EQ(shifts->size(), 1U);
    const auto& opening = m_log[static_cast<std::size_t>(m_starts[1])];
    EXPECT_EQ(shifts->front(), (ShiftSpan{.opened = m_starts[1] + 1,
                                          .last = m_starts[2] - 2,
                                          .closed = true,
                                          .openedAt = opening.at,
                                          .zone = "Europe/Amsterdam"}));
}

TEST_F(QueriesTest, aDayHasItsShiftsAndWhatLiesOutsideThem)
{
    using namespace std::chrono_literals;
    EXPECT_THAT(*rangesOf(*m_trail, kFirstMorning + 24h, kFirstMorning + 48h),
                ElementsAre(SeqRange{m_starts[1], m_starts[2] - 1}));
    EXPECT_THAT(*rangesOf(*m_trail, kFirstMorning - 24h, kFirstMorning), IsEmpty());
}

TEST_F(QueriesTest, aShiftOverMidnightBelongsWhollyToTheDayItOpenedOn)
{
    const auto& opening = m_log[static_cast<std::size_t>(m_starts[1])];
    const WallTime midnight = opening.at + Millis(1);
    EXPECT_THAT(*rangesOf(*m_trail, opening.at, midnight),
                ElementsAre(SeqRange{m_starts[1] + 1, m_starts[2] - 2}));
    EXPECT_THAT(*rangesOf(*m_trail, midnight, midnight + std::chrono::hours(12)),
                ElementsAre(SeqRange{m_starts[2] - 1, m_starts[2] - 1}))
        << "the next day has the program's stop alone";
}

// What a day's own shift corrects is read with it; what later ones say of it is found from it.
TEST_F(QueriesTest, findsWhatLaterShiftsSayOfADay)
{
    std::vector<Entry> again = m_days.day(20);  // whose shift corrects itself, and an earlier one
    const Seq own = again[5].seq;
    m_trail.reset();
    m_trail = opened(m_folder / "trail.db");
    ASSERT_TRUE(m_trail->append(again));
    const Seq note = m_starts[0] + 4, bag = m_starts[1] + 6;
    const std::vector<Entry> later{
        m_days.entry(NoteCommented{note, "seen"}),
        m_days.entry(RecordSigned{Meaning::Reviewed, {bag, m_starts[0] + 7}, {}}),
        m_days.entry(FactTakenBack{{own}, "after closing"}),
    };
    ASSERT_TRUE(m_trail->append(later));
    const SeqRange first{m_starts[0], m_starts[1] - 1}, second{m_starts[1], m_starts[2] - 1},
        third{m_starts[2], m_starts[2] + 20};
    EXPECT_THAT(*pointingBackAt(*m_trail, {first}), ElementsAre(later[0], later[1]));
    EXPECT_THAT(*pointingBackAt(*m_trail, {second}), ElementsAre(later[1]));
    EXPECT_THAT(*pointingBackAt(*m_trail, {first, second}), ElementsAre(later[0], later[1]));
    EXPECT_THAT(*pointingBackAt(*m_trail, {third}), IsEmpty());
    EXPECT_THAT(*pointingBackAt(*m_trail, {{own, own}}), ElementsAre(later[2]));
}

TEST_F(QueriesTest, aDayIsToldWithTheFirstSealAfterIt)
{
    const SeqRange first{m_starts[0], m_starts[1] - 1};
    EXPECT_THAT(*saidLater(*m_trail, {first}), IsEmpty());
    const std::vector<Entry> later{m_days.entry(DaySealed{1, "h", "k", "s"}),
                                   m_days.entry(DaySealed{2, "h", "k", "s"}),
                                   m_days.entry(NoteCommented{m_starts[0] + 4, "seen"})};
    ASSERT_TRUE(m_trail->append(later));
    EXPECT_THAT(*saidLater(*m_trail, {first}), ElementsAre(later[0], later[2]));
}

TEST_F(QueriesTest, whatAnOpenShiftSaysOfItselfIsNotLater)
{
    const std::vector<Entry> open{
        m_days.entry(ShiftOpened{"Europe/Amsterdam", {}}), m_days.entry(NoteMade{"x"}),
        m_days.entry(NoteCommented{m_days.head().seq, "y"}), m_days.entry(NoteMade{"z"})};
    ASSERT_TRUE(m_trail->append(open));
    const SeqRange shift{open.front().seq, open.back().seq};
    EXPECT_THAT(*pointingBackAt(*m_trail, {shift}), IsEmpty());
    // Never closed, it ends where the next one opens.
    const std::vector<Entry> next{m_days.entry(ShiftOpened{"Europe/Amsterdam", {}}),
                                  m_days.entry(NoteCommented{shift.last, "w"})};
    ASSERT_TRUE(m_trail->append(next));
    EXPECT_THAT(*pointingBackAt(*m_trail, {shift}), ElementsAre(next[1]));
}

// How much a query reads must not grow with the trail: what SQLite plans is a search, never a scan.
TEST_F(QueriesTest, noQueryScansTheTrail)
{
    for (const char* const sql :
         {"SELECT max(opened_seq) FROM shift", "SELECT seq FROM loose WHERE at >= 'a' AND at < 'b'",
          "SELECT opened_seq FROM shift WHERE opened_at >= 'a' AND opened_at < 'b' ORDER BY "
          "opened_seq",
          "SELECT 1 FROM event WHERE tap = 'a'",
          "SELECT seq FROM subject_index WHERE what = 1 AND id = 'a' AND seq < 9 ORDER BY seq DESC "
          "LIMIT 5",
          "SELECT p.seq FROM subject_index p JOIN subject_index k ON k.what = 1 AND k.id = 'a' AND "
          "k.seq = p.seq WHERE p.what = 7 AND p.id = 'b' AND p.seq < 9",
          "SELECT seq FROM subject_index i WHERE what = 7 AND id BETWEEN 'a' AND 'b' AND seq > "
          "(SELECT closed_seq FROM shift WHERE opened_seq <= CAST(i.id AS INTEGER) ORDER BY "
          "opened_seq DESC LIMIT 1)"}) {
        auto plan = m_trail->connection().prepared(std::string("EXPLAIN QUERY PLAN ") + sql);
        ASSERT_TRUE(plan && plan->exec());
        while (plan->next())
            EXPECT_THAT(plan->value(3).toString().toStdString(),
                        testing::Not(testing::StartsWith("SCAN")))
                << sql;
    }
}

}  // namespace
}  // namespace bathside::store
