#include "core/trail/store/search.h"

#include <gmock/gmock.h>

#include "tests/core/trail/store/support.h"
#include "tests/support/temp_folder.h"
#include "tests/support/trail_days.h"

namespace bathside::store {
namespace {

using test::TempFolder;
using test::TrailDays;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::IsSupersetOf;

// Three days of work, each with bags B1 … B4 of three ampoules, as test::TrailDays makes them.
class SearchTest : public testing::Test {
protected:
    SearchTest()
    {
        for (int day = 0; day < 3; ++day) {
            m_runs.push_back({m_days.head().seq + 1, 0});
            const auto entries = m_days.day(80);
            m_log.insert(m_log.end(), entries.begin(), entries.end());
            m_runs.back().last = m_days.head().seq;
        }
        m_trail = opened(m_folder / "trail.db");
        EXPECT_TRUE(m_trail->append(m_log));
    }

    [[nodiscard]] std::set<Seq> found(const Search& wanted, int limit = 1000,
                                      Seq before = kAll) const
    {
        return found(wanted, m_runs, limit, before);
    }
    [[nodiscard]] std::set<Seq> found(const Search& wanted, const std::vector<SeqRange>& runs,
                                      int limit = 1000, Seq before = kAll) const
    {
        const auto seqs = search(*m_trail, wanted, runs, before, limit);
        EXPECT_TRUE(seqs.has_value());
        return seqs ? *seqs : std::set<Seq>();
    }

    [[nodiscard]] std::set<Seq> seqsWhere(auto test) const
    {
        std::set<Seq> seqs;
        for (const Entry& entry : m_log) {
            if (test(entry))
                seqs.insert(entry.seq);
        }
        return seqs;
    }

    /// The n-th entry of that kind on that day.
    [[nodiscard]] Seq seqOf(std::string_view kind, int day, int n = 0) const
    {
        for (const Entry& entry : m_log) {
            if (entry.seq >= m_runs[static_cast<std::size_t>(day)].first && entry.kind == kind &&
                n-- == 0)
                return entry.seq;
        }
        return 0;
    }

    /// At the trail's end: later than everything.
    Seq add(Fact fact)
    {
        const Entry entry = m_days.entry(std::move(fact));
        EXPECT_TRUE(m_trail->append(std::vector{entry}));
        m_log.push_back(entry);
        return entry.seq;
    }

    TempFolder m_folder;
    TrailDays m_days;
    std::vector<Entry> m_log;
    std::vector<SeqRange> m_runs;  // each day's
    std::unique_ptr<TrailDb> m_trail;
};

bool isAbout(const Entry& entry, std::string_view member)
{
    return entry.payload.find(member) != std::string::npos;
}

TEST_F(SearchTest, findsByKindAndByPerson)
{
    const auto mixed = seqsWhere([](const Entry& entry) { return entry.kind == "bag.mixed"; });
    EXPECT_EQ(found({.kinds = {"bag.mixed"}}), mixed);
    EXPECT_EQ(found({.person = "AB"}).size(), m_log.size());
    EXPECT_EQ(found({.kinds = {"bag.mixed"}, .person = "AB"}), mixed);
    EXPECT_THAT(found({.kinds = {"bag.mixed"}, .person = "XY"}), IsEmpty());
    EXPECT_EQ(found({.kinds = {"bag.mixed", "bag.hung"}}).size(), 2 * mixed.size());
}

TEST_F(SearchTest, everythingIsTheNewestOfTheRuns)
{
    EXPECT_EQ(found({}).size(), m_log.size());
    const Seq first = m_runs[1].first;
    EXPECT_THAT(found({}, 3, first + 2), ElementsAre(first - 1, first, first + 1))
        << "over the days' edge";
    EXPECT_THAT(found({}, {m_runs[0], m_runs[2]}, 2, m_runs[2].first + 1),
                ElementsAre(m_runs[0].last, m_runs[2].first));
    EXPECT_THAT(found({}, std::vector<SeqRange>()), IsEmpty());
}

TEST_F(SearchTest, theNewestBeforeThatSeqAreKept)
{
    const auto all = found({.kinds = {"ampoule.out", "bag.mixed"}});
    const auto last = std::next(all.begin(), std::ssize(all) - 5);
    EXPECT_EQ(found({.kinds = {"ampoule.out", "bag.mixed"}}, 5), std::set<Seq>(last, all.end()));
    const auto before = found({.kinds = {"ampoule.out", "bag.mixed"}}, 4, *last);
    EXPECT_EQ(before, std::set<Seq>(std::prev(last, 4), last));
}

// B2's own entries, and those of the three ampoules that went into it: by day, as both names come
// again on the next one.
TEST_F(SearchTest, aBagHasItsAmpoules)
{
    const auto bag = found({.bag = "B2"}, {m_runs[1]});
    const auto own = seqsWhere([&](const Entry& entry) {
        return contain({m_runs[1]}, entry.seq) &&
               (isAbout(entry, R"("bag":"B2")") || isAbout(entry, R"("pull":2)"));
    });
    EXPECT_EQ(bag, own);
    EXPECT_EQ(bag.size(), 3U + 3U * 5U) << "started, mixed, hung; five steps of three ampoules";
    EXPECT_EQ(found({.bag = "B2"}).size(), 3 * bag.size());
    EXPECT_THAT(found({.kinds = {"ampoule.out"}, .bag = "B2"}, {m_runs[1]}).size(), 3U);
    EXPECT_EQ(found({.bag = "B2", .lot = "K07"}, {m_runs[1]}).size(), 15U) << "of its ampoules";
    EXPECT_THAT(found({.bag = "B2", .lot = "K08"}), IsEmpty());
    EXPECT_THAT(found({.bag = "B77"}), IsEmpty());
    EXPECT_EQ(found({.lot = "D71"}),
              seqsWhere([](const Entry& entry) { return entry.kind == "bag.started"; }));
}

// A correction of a later day counts for the day that it is about.
TEST_F(SearchTest, aBagAndALotAreAlsoWhatACorrectionSays)
{
    const Seq out = seqOf("ampoule.out", 0, 4), bagged = seqOf("ampoule.bagged", 0, 1);
    const Seq lot = add(FactCorrected{out, "lot", "K99", "misread"});
    const Seq bag = add(FactCorrected{bagged, "bag", "B99", "misread"});
    add(FactCorrected{out, "component", "s9", "misread"});
    EXPECT_THAT(found({.lot = "K99"}), ElementsAre(out, out + 1, out + 2, out + 3, out + 4));
    EXPECT_THAT(found({.bag = "B99"}),
                ElementsAre(bagged - 4, bagged - 3, bagged - 2, bagged - 1, bagged));
    EXPECT_THAT(found({.lot = "K99"}, {m_runs[0], {m_runs[1].first, kAll}}),
                IsSupersetOf({out, lot}));
    EXPECT_THAT(found({.bag = "B99"}, {{bag, bag}}), ElementsAre(bag))
        << "what it corrects is before";
    EXPECT_THAT(found({.lot = "s9"}), IsEmpty());
    EXPECT_TRUE(*projectionsAgree(m_trail->connection()));
}

// However short the stretches are that it looks at: each ampoule's entries lie in several.
TEST_F(SearchTest, looksBackInStretchesAndFindsTheSame)
{
    add(FactCorrected{seqOf("ampoule.bagged", 0, 1), "bag", "B99", "misread"});
    for (const Search& wanted :
         {Search{.bag = "B2"}, Search{.lot = "K07"}, Search{.bag = "B99"}, Search{.person = "AB"},
          Search{.kinds = {"ampoule.out"}, .bag = "B1", .lot = "K07"},
          Search{.kinds = {"bag.mixed", "bag.hung"}}, Search{.lot = "none"}, Search{}}) {
        for (const int limit : {1, 10, 1000}) {
            const auto inShort = search(*m_trail, wanted, m_runs, kAll, limit, 2);
            ASSERT_TRUE(inShort.has_value());
            EXPECT_EQ(*inShort, found(wanted, limit)) << wanted.bag << wanted.lot << limit;
        }
    }
}

TEST_F(SearchTest, aKindAndWhateverWasMended)
{
    const Seq out = seqOf("ampoule.out", 1), mixed = seqOf("bag.mixed", 0);
    const Seq corrected = add(FactCorrected{out, "component", "s9", "misread"});
    const Seq back = add(FactTakenBack{{mixed, mixed + 1}, "slip"});
    const std::vector<SeqRange> all{{1, back}};
    const Search wanted{.kinds = {"fact.corrected", "fact.taken-back"}, .orMended = true};
    EXPECT_THAT(found(wanted, all), ElementsAre(mixed, mixed + 1, out, corrected, back));
    Search ofLot = wanted;
    ofLot.lot = "K07";
    EXPECT_THAT(found(ofLot, all), ElementsAre(out));
    Search byPerson = wanted;
    byPerson.person = "AB";
    EXPECT_EQ(found(byPerson, all), found(wanted, all));
}

TEST_F(SearchTest, anAlarmIsFoundByWhatItIsAbout)
{
    const Seq alarm = add(AlarmRaised{"in use B77", Level::Limit, {SubjectKind::Bag, "B77"}});
    EXPECT_THAT(found({.bag = "B77"}, {{1, alarm}}), ElementsAre(alarm));
}

TEST_F(SearchTest, whatPointsAtEntriesAndWhichKindsThereAre)
{
    const Seq note = add(NoteMade{"wet floor"});
    const Seq seen = add(NoteCommented{note, "mopped"});
    const auto pointing = pointingAt(*m_trail, {note, m_runs[0].first});
    ASSERT_TRUE(pointing.has_value());
    ASSERT_EQ(pointing->size(), 1U);
    EXPECT_EQ(pointing->front().seq, seen);
    std::set<std::string> kinds;
    for (const Entry& entry : m_log)
        kinds.insert(entry.kind);
    EXPECT_EQ(*kindsIn(*m_trail), std::vector<std::string>(kinds.begin(), kinds.end()));
}

}  // namespace
}  // namespace bathside::store
