#include "core/trail/verify.h"

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/trail/json_lines.h"
#include "tests/support/effort.h"
#include "tests/support/sample_log.h"

namespace bathside {
namespace {

using Log = std::vector<Entry>;

constexpr Seq kCount = 1000;

const Log& soundLog()
{
    static const Log log = test::sampleLog(kCount);
    return log;
}

Head headOf(const Log& log) { return log.empty() ? Head{} : Head{log.back().seq, log.back().hash}; }

Verification verified(const Log& log, std::vector<Head> witnesses = {})
{
    Verifier verifier(
        {.before = Head{}, .runs = {}, .witnesses = std::move(witnesses), .station = {}});
    for (const Entry& entry : log)
        verifier.take(entry);
    return verifier.finish();
}

/// As an exported file, of which nothing is known beforehand.
Verification verifiedAsLines(const std::vector<std::string>& lines,
                             std::vector<Head> witnesses = {}, std::vector<SeqRange> runs = {})
{
    Verifier verifier({.before = std::nullopt,
                       .runs = std::move(runs),
                       .witnesses = std::move(witnesses),
                       .station = {}});
    for (const std::string& line : lines)
        verifier.takeLine(line);
    return verifier.finish();
}

std::vector<std::string> linesOf(const Log& log)
{
    std::vector<std::string> lines;
    for (const Entry& entry : log)
        lines.push_back(toLine({entry, std::nullopt}));
    return lines;
}

/// Entries from..to, the first saying what it follows: an export of a day in mid-trail.
std::vector<std::string> linesOf(const Log& log, Seq from, Seq to)
{
    std::vector<std::string> lines;
    for (Seq seq = from; seq <= to; ++seq) {
        const auto at = static_cast<std::size_t>(seq - 1);
        const bool follows = seq == from && seq > 1;
        lines.push_back(
            toLine({log[at], follows ? std::optional(log[at - 1].hash) : std::nullopt}));
    }
    return lines;
}

/// All hashes from `seq` on made anew: what somebody who knows the form can do.
void rechain(Log& log, Seq from)
{
    for (auto i = static_cast<std::size_t>(from - 1); i < log.size(); ++i) {
        log[i].seq = static_cast<Seq>(i) + 1;
        chain(log[i], i == 0 ? Hash{} : log[i - 1].hash);
    }
}

// --- no false alarms ---

TEST(VerifierTest, findsNothingInSoundLogs)
{
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const Log log = test::sampleLog(static_cast<Seq>(seed % 60), seed);
        const Head witness = headOf(log);
        const Verification rows = verified(log, {witness});
        const Verification lines = verifiedAsLines(linesOf(log), {witness});
        ASSERT_FALSE(rows.flaw) << seed << ' ' << nameOf(rows.flaw->kind) << ' ' << rows.flaw->seq;
        ASSERT_FALSE(lines.flaw) << seed << ' ' << nameOf(lines.flaw->kind) << ' '
                                 << lines.flaw->seq;
        ASSERT_EQ(rows.count, static_cast<Seq>(log.size()));
        ASSERT_EQ(rows.head, witness);
        ASSERT_EQ(lines.head, witness);
    }
}

TEST(VerifierTest, anEmptyTrailIsSoundAndHasNoHead)
{
    EXPECT_EQ(verified({}), (Verification{}));
    EXPECT_EQ(verifiedAsLines({}), (Verification{}));
}

TEST(VerifierTest, aPartOfATrailIsSoundByItself)
{
    const Verification part =
        verifiedAsLines(linesOf(soundLog(), 300, 400), {{400, soundLog()[399].hash}});
    EXPECT_FALSE(part.flaw);
    EXPECT_EQ(part.first, 300);
    EXPECT_EQ(part.head.seq, 400);
    EXPECT_EQ(part.count, 101);
}

TEST(VerifierTest, aFileThatGoesOnFromAnotherOnesHeadIsSound)
{
    const Log& log = soundLog();
    Verifier verifier(
        {.before = Head{500, log[499].hash}, .runs = {}, .witnesses = {}, .station = {}});
    for (std::size_t i = 500; i < log.size(); ++i)
        verifier.take(log[i]);
    EXPECT_FALSE(verifier.finish().flaw);
}

// --- the tamper classes: each at the first, a middle and the last seq ---

struct Column {
    const char* name;
    void (*change)(Entry&);
};

const std::vector<Column>& columns()
{
    static const std::vector<Column> all{
        {"at", [](Entry& e) { e.at += Millis(1); }},
        {"boot_us", [](Entry& e) { e.boot -= Micros(1); }},
        {"boot_id", [](Entry& e) { e.bootId[15] ^= 1; }},
        {"station", [](Entry& e) { e.station.text += "x"; }},
        {"person",
         [](Entry& e) {
             e.person = Person{{"ZZ"}, Proof::Claimed};
         }},
        {"proof",
         [](Entry& e) {
             Person& person = e.person ? *e.person : e.person.emplace();
             person.proof = person.proof == Proof::Claimed ? Proof::Proven : Proof::Claimed;
         }},
        {"tap", [](Entry& e) { e.tap.text += "1"; }},
        {"place", [](Entry& e) { e.place.text += "1"; }},
        {"by_receipt", [](Entry& e) { e.byReceipt = !e.byReceipt; }},
        {"card", [](Entry& e) { e.card.text += "0"; }},
        {"kind", [](Entry& e) { e.kind += "s"; }},
        {"payload", [](Entry& e) { e.payload = R"({"bag":"other"})"; }},
        {"spool_seq",
         [](Entry& e) {
             e.spool = SpoolOrigin{e.spool.value_or(SpoolOrigin{}).seq + 1, {}};
         }},
        {"spool_hash",
         [](Entry& e) {
             e.spool = SpoolOrigin{1, sha256("other")};
         }},
        {"hash", [](Entry& e) { e.hash[0] ^= 1; }},
    };
    return all;
}

class Tampered : public testing::TestWithParam<Seq> {
protected:
    Seq seq() const { return GetParam(); }
    std::size_t at() const { return static_cast<std::size_t>(GetParam() - 1); }
    Log log = soundLog();

    void expectFlaw(const Verification& found, Seq where, FlawKind kind) const
    {
        ASSERT_TRUE(found.flaw);
        EXPECT_EQ(found.flaw->seq, where);
        EXPECT_EQ(nameOf(found.flaw->kind), nameOf(kind));
    }

    /// In both forms. `lineWhere`: where an export without a witness shows it.
    void expectFlaw(const Log& changed, Seq where, FlawKind kind) const
    {
        expectFlaw(verified(changed, {headOf(soundLog())}), where, kind);
        expectFlaw(verifiedAsLines(linesOf(changed), {headOf(soundLog())}), where, kind);
    }
};

INSTANTIATE_TEST_SUITE_P(Trail, Tampered, testing::Values(1, kCount / 2, kCount),
                         [](const auto& row) { return "AtSeq" + std::to_string(row.param); });

TEST_P(Tampered, eachColumnChanged)
{
    for (const Column& column : columns()) {
        SCOPED_TRACE(column.name);
        Log changed = log;
        column.change(changed[at()]);
        const bool foreign = column.name == std::string("station") && seq() > 1;
        expectFlaw(changed, seq(), foreign ? FlawKind::ForeignStation : FlawKind::BadHash);
    }
}

TEST_P(Tampered, seqColumnChanged)
{
    log[at()].seq += 5;
    expectFlaw(verified(log), seq(), FlawKind::Missing);
    if (seq() == 1)  // a file that begins at seq 6 lacks seq 5 before it: there it is, later
        expectFlaw(verifiedAsLines(linesOf(log)), 5, FlawKind::Reordered);
    else
        expectFlaw(verifiedAsLines(linesOf(log)), seq(), FlawKind::Missing);
}

TEST_P(Tampered, payloadRewrittenInAnotherForm)
{
    log[at()].payload.insert(1, " ");
    expectFlaw(verified(log), seq(), FlawKind::NotCanonical);
    expectFlaw(verifiedAsLines(linesOf(log)), seq(), FlawKind::NotCanonical);
}

TEST_P(Tampered, timeThatIsNone)
{
    auto lines = linesOf(log);
    lines[at()].replace(8, 4, "abcd");
    expectFlaw(verifiedAsLines(lines), seq(), FlawKind::BadTime);
}

TEST_P(Tampered, lineThatIsNoJson)
{
    auto lines = linesOf(log);
    lines[at()].pop_back();
    expectFlaw(verifiedAsLines(lines, {headOf(log)}), seq() == 1 ? 0 : seq(), FlawKind::Unreadable);
}

TEST_P(Tampered, oneDeleted)
{
    log.erase(log.begin() + static_cast<std::ptrdiff_t>(at()));
    expectFlaw(log, seq(), seq() == kCount ? FlawKind::Truncated : FlawKind::Missing);
}

TEST_P(Tampered, tailCutOffAfterIt)
{
    log.resize(at() + 1);
    const bool whole = seq() == kCount;
    if (whole)
        EXPECT_FALSE(verified(log, {headOf(soundLog())}).flaw);
    else
        expectFlaw(log, seq() + 1, FlawKind::Truncated);
    EXPECT_FALSE(verified(log).flaw);  // the limit of what the chain alone can show
}

TEST_P(Tampered, swappedWithItsNeighbour)
{
    const std::size_t other = seq() == kCount ? at() - 1 : at() + 1;
    std::swap(log[at()], log[other]);
    const Seq first = std::min(seq(), static_cast<Seq>(other) + 1);
    expectFlaw(verified(log), first, FlawKind::Reordered);
    expectFlaw(verifiedAsLines(linesOf(log)), first, FlawKind::Reordered);
}

TEST_P(Tampered, contentsSwappedUnderTheirSeqs)
{
    const std::size_t other = seq() == kCount ? at() - 1 : at() + 1;
    std::swap(log[at()], log[other]);
    std::swap(log[at()].seq, log[other].seq);
    expectFlaw(log, std::min(seq(), static_cast<Seq>(other) + 1), FlawKind::BadHash);
}

TEST_P(Tampered, oneTwice)
{
    log.insert(log.begin() + static_cast<std::ptrdiff_t>(at()), log[at()]);
    expectFlaw(log, seq(), FlawKind::Duplicate);
}

TEST_P(Tampered, oneTwiceUnderANewSeq)
{
    log.insert(log.begin() + static_cast<std::ptrdiff_t>(at()), log[at()]);
    for (std::size_t i = at() + 1; i < log.size(); ++i)
        ++log[i].seq;
    expectFlaw(log, seq() + 1, FlawKind::BadHash);
}

TEST_P(Tampered, oneForgedAndInserted)
{
    Entry forged = log[at()];
    forged.payload = R"({"text":"all was well"})";
    log.insert(log.begin() + static_cast<std::ptrdiff_t>(at()), forged);
    for (std::size_t i = at() + 1; i < log.size(); ++i)
        ++log[i].seq;
    expectFlaw(log, seq(), FlawKind::BadHash);
    // Forged well, it is found at the next one; the witness of the last seq finds it itself.
    chain(log[at()], at() == 0 ? Hash{} : log[at() - 1].hash);
    expectFlaw(verified(log), seq() + 1, FlawKind::BadHash);
    if (seq() == kCount)
        expectFlaw(log, seq(), FlawKind::HeadMismatch);
}

TEST_P(Tampered, splicedWithAnotherStationsTrail)
{
    const Log other = test::sampleLog(kCount, 2, "bench 2");
    std::copy(other.begin() + static_cast<std::ptrdiff_t>(at()), other.end(),
              log.begin() + static_cast<std::ptrdiff_t>(at()));
    if (seq() == 1)
        expectFlaw(log, kCount, FlawKind::HeadMismatch);  // the whole file is another station's
    else
        expectFlaw(log, seq(), FlawKind::ForeignStation);
    rechain(log, seq());
    expectFlaw(log, kCount, FlawKind::HeadMismatch);  // as one that was given another name
}

TEST_P(Tampered, splicedWithAnotherTrailOfTheSameStation)
{
    const Log other = test::sampleLog(kCount, 2);
    std::copy(other.begin() + static_cast<std::ptrdiff_t>(at()), other.end(),
              log.begin() + static_cast<std::ptrdiff_t>(at()));
    if (seq() == 1)
        expectFlaw(log, kCount, FlawKind::HeadMismatch);
    else
        expectFlaw(log, seq(), FlawKind::BadHash);
}

TEST_P(Tampered, changedAndChainedAnew)
{
    log[at()].payload = R"({"text":"all was well"})";
    rechain(log, seq());
    expectFlaw(log, kCount, FlawKind::HeadMismatch);
    EXPECT_FALSE(verified(log).flaw);  // the limit of what the chain alone can show
    // With a witness at that seq, too, it is found there.
    expectFlaw(verified(log, {headOf(soundLog()), {seq(), soundLog()[at()].hash}}), seq(),
               FlawKind::HeadMismatch);
}

TEST_P(Tampered, rolledBackToAnOldCopy)
{
    log.resize(at());
    expectFlaw(log, seq(), FlawKind::Truncated);
}

TEST(VerifierTest, anotherFileInItsPlaceIsNotTheWitnessedOne)
{
    const Head witness = headOf(soundLog());
    const Verification longer = verified(test::sampleLog(kCount + 10, 3), {witness});
    const Verification shorter = verified(test::sampleLog(10, 3), {witness});
    ASSERT_TRUE(longer.flaw && shorter.flaw);
    EXPECT_EQ(*longer.flaw, (Flaw{kCount, FlawKind::HeadMismatch, kCount, ""}));
    EXPECT_EQ(*shorter.flaw, (Flaw{11, FlawKind::Truncated, 10, ""}));
}

TEST(VerifierTest, aStationMayBeRenamed)
{
    Log log = soundLog();
    for (std::size_t i = kCount / 2; i < log.size(); ++i)
        log[i].station = {"bench 2"};
    rechain(log, kCount / 2 + 1);
    EXPECT_FALSE(verified(log).flaw);
    Verifier named(
        {.before = Head{}, .runs = {}, .witnesses = {}, .station = StationId{"bench 2"}});
    for (const Entry& entry : log)
        named.take(entry);
    EXPECT_FALSE(named.finish().flaw) << "what it is called at its end";
}

TEST(VerifierTest, aGivenStationIsTheOnlyOne)
{
    Verifier verifier(
        {.before = Head{}, .runs = {}, .witnesses = {}, .station = StationId{"bench 2"}});
    verifier.take(soundLog().front());
    EXPECT_EQ(verifier.finish().flaw, (Flaw{1, FlawKind::ForeignStation, 1, "bench 1"}));
}

TEST(VerifierTest, textThatIsNotUtf8IsNotCanonical)
{
    Log log = test::sampleLog(3);
    log[1].tap.text = "t\xFF";
    rechain(log, 2);
    EXPECT_EQ(verified(log).flaw, (Flaw{2, FlawKind::NotCanonical, 2, "tap"}));
}

TEST(VerifierTest, whatCannotBeReadIsNamedByWhereItShouldBe)
{
    Verifier verifier;
    verifier.take(soundLog()[0]);
    verifier.takeUnreadable(0, FlawKind::BadTime, "at");
    verifier.take(soundLog()[2]);
    EXPECT_EQ(verifier.finish().flaw, (Flaw{2, FlawKind::BadTime, 2, "at"}));
    EXPECT_EQ(verifier.finish().head, (Head{1, soundLog()[0].hash}));
}

// --- parts of a trail ---

TEST(VerifierTest, aPartMustSayWhatItFollows)
{
    auto lines = linesOf(soundLog(), 300, 400);
    lines.erase(lines.begin());
    EXPECT_EQ(verifiedAsLines(lines).flaw, (Flaw{300, FlawKind::Missing, 1, ""}));
}

TEST(VerifierTest, theFirstEntryOfAPartIsProvenByWhatItFollows)
{
    Log log = soundLog();
    log[299].payload = R"({"text":"all was well"})";
    EXPECT_EQ(verifiedAsLines(linesOf(log, 300, 400)).flaw, (Flaw{300, FlawKind::BadHash, 1, ""}));
}

TEST(VerifierTest, onlyTheFirstLineOfAPartSaysWhatItFollows)
{
    auto lines = linesOf(soundLog(), 300, 302);
    lines[1] = toLine({soundLog()[300], soundLog()[299].hash});
    EXPECT_EQ(verifiedAsLines(lines).flaw, (Flaw{301, FlawKind::NotCanonical, 2, "previous"}));
    lines = linesOf(soundLog(), 1, 2);
    lines[0] = toLine({soundLog()[0], Hash{}});
    EXPECT_EQ(verifiedAsLines(lines).flaw, (Flaw{1, FlawKind::NotCanonical, 1, "previous"}));
}

TEST(VerifierTest, whatAPartFollowsMustBeTheWitnessedHead)
{
    const auto lines = linesOf(soundLog(), 300, 400);
    EXPECT_FALSE(verifiedAsLines(lines, {{299, soundLog()[298].hash}}).flaw);
    EXPECT_EQ(verifiedAsLines(lines, {{299, sha256("other")}}).flaw,
              (Flaw{299, FlawKind::HeadMismatch, 1, ""}));
}

class Runs : public testing::Test {
protected:
    static std::vector<std::string> lines()
    {
        auto all = linesOf(soundLog(), 100, 120);
        const auto second = linesOf(soundLog(), 200, 210);
        all.insert(all.end(), second.begin(), second.end());
        return all;
    }
    const std::vector<SeqRange> runs{{100, 120}, {200, 210}};
};

TEST_F(Runs, thatTheManifestListsAreSound)
{
    const Verification found = verifiedAsLines(lines(), {}, runs);
    EXPECT_FALSE(found.flaw);
    EXPECT_EQ(found.first, 100);
    EXPECT_EQ(found.head.seq, 210);
}

TEST_F(Runs, aGapWithoutAManifestIsMissing)
{
    EXPECT_EQ(verifiedAsLines(lines()).flaw, (Flaw{121, FlawKind::Missing, 22, ""}));
}

TEST_F(Runs, cutOffAtTheirEndsOrInBetweenAreFound)
{
    auto cut = lines();
    cut.pop_back();
    EXPECT_EQ(verifiedAsLines(cut, {}, runs).flaw, (Flaw{210, FlawKind::Truncated, 31, ""}));
    cut.resize(21);
    EXPECT_EQ(verifiedAsLines(cut, {}, runs).flaw, (Flaw{200, FlawKind::Truncated, 21, ""}));
    cut.resize(20);
    EXPECT_EQ(verifiedAsLines(cut, {}, runs).flaw, (Flaw{120, FlawKind::Truncated, 20, ""}));
    EXPECT_EQ(verifiedAsLines({}, {}, runs).flaw, (Flaw{100, FlawKind::Truncated, 0, ""}));
    auto gap = lines();
    gap.erase(gap.begin() + 20);
    EXPECT_EQ(verifiedAsLines(gap, {}, runs).flaw, (Flaw{120, FlawKind::Missing, 21, ""}));
    gap = lines();
    gap.erase(gap.begin() + 21);
    EXPECT_EQ(verifiedAsLines(gap, {}, runs).flaw, (Flaw{200, FlawKind::Missing, 22, ""}));
    gap = lines();
    gap.erase(gap.begin());
    EXPECT_EQ(verifiedAsLines(gap, {}, runs).flaw, (Flaw{100, FlawKind::Missing, 1, ""}));
}

TEST_F(Runs, longerThanListedAreFound)
{
    auto more = lines();
    more.push_back(toLine({soundLog()[210], std::nullopt}));
    EXPECT_EQ(verifiedAsLines(more, {}, runs).flaw, (Flaw{211, FlawKind::Unlisted, 33, ""}));
}

// --- a file as bytes ---

// Any change of any byte of any line is found in that line.
TEST(VerifierTest, everyChangedByteIsFoundInItsLine)
{
    const Log log = test::sampleLog(40, 7);
    const auto lines = linesOf(log, 1, 40);
    test::RandomFacts random(8);
    for (int round = 0; round < test::share(20'000); ++round) {
        auto changed = lines;
        const std::size_t line = random.below(changed.size());
        char& byte = changed[line][random.below(changed[line].size())];
        byte = static_cast<char>(byte ^ static_cast<char>(1U << random.below(8)));
        const Verification found = verifiedAsLines(changed, {headOf(log)});
        ASSERT_TRUE(found.flaw) << changed[line];
        ASSERT_EQ(found.flaw->position, static_cast<std::int64_t>(line) + 1) << changed[line];
    }
}

}  // namespace
}  // namespace bathside
