#include "core/trail/seal_check.h"

#include <gtest/gtest.h>

#include "core/facts/codec.h"
#include "core/trail/seal.h"
#include "core/trail/verify.h"

namespace bathside {
namespace {

/// A trail of notes, with seals where they are asked for.
class Sealed {
public:
    const Entry& add(const Fact& fact)
    {
        Entry entry;
        entry.seq = m_head.seq + 1;
        entry.station = {"bench"};
        entry.tap = {"tap " + std::to_string(entry.seq)};
        entry.kind = std::string(kindOf(fact));
        entry.payload = payloadOf(fact);
        entry.hash = chained(m_head.hash, canonicalText(entry));
        m_head = {entry.seq, entry.hash};
        entries.push_back(entry);
        return entries.back();
    }
    void notes(int count)
    {
        for (int i = 0; i < count; ++i)
            add(NoteMade{"note " + std::to_string(i)});
    }
    void seal(const SealKey& key) { add(sealOf(m_head, key)); }
    [[nodiscard]] Head head() const { return m_head; }

    [[nodiscard]] Verification verified(std::optional<std::string> key = std::nullopt) const
    {
        Verifier verifier(
            {.before = Head{}, .runs = {}, .witnesses = {}, .station = {}, .key = std::move(key)});
        for (const Entry& entry : entries)
            verifier.take(entry);
        return verifier.finish();
    }

    std::vector<Entry> entries;

private:
    Head m_head;
};

TEST(SealCheckTest, takesSealsThatFit)
{
    Sealed trail;
    const SealKey key = SealKey::fresh();
    trail.notes(3);
    trail.seal(key);
    trail.notes(2);
    trail.seal(key);
    const Verification found = trail.verified();
    EXPECT_FALSE(found.flaw);
    EXPECT_FALSE(found.badSeal);
    EXPECT_EQ(found.seals, 2);
    EXPECT_FALSE(trail.verified(key.publicKey()).badSeal);
}

// The runs of an export have gaps: what was sealed may lie in one.
TEST(SealCheckTest, whatWasSealedMayBeLeftOut)
{
    Sealed trail;
    const SealKey key = SealKey::fresh();
    trail.notes(6);
    trail.seal(key);
    trail.notes(1);
    SealCheck check;
    for (const Entry& entry : trail.entries) {
        if (entry.seq < 3 || entry.seq > 6) {
            EXPECT_EQ(check.take(entry), std::nullopt) << entry.seq;
        }
    }
    EXPECT_EQ(check.seals(), 1);
}

TEST(SealCheckTest, nothingSealsWhatCameLater)
{
    Sealed trail;
    trail.notes(3);
    trail.add(sealOf({4, sha256("itself")}, SealKey::fresh()));
    EXPECT_EQ(trail.verified().badSeal, (BadSeal{4, SealFlaw::OtherHead}));
}

TEST(SealCheckTest, findsASwappedKey)
{
    Sealed trail;
    trail.notes(3);
    trail.seal(SealKey::fresh());
    trail.notes(1);
    trail.seal(SealKey::fresh());
    EXPECT_EQ(trail.verified().badSeal, (BadSeal{6, SealFlaw::OtherKey}));
}

// A trail written anew is sound in itself and sealed; only the key known from elsewhere tells.
TEST(SealCheckTest, findsAWholeTrailSealedByAnother)
{
    Sealed trail;
    trail.notes(3);
    trail.seal(SealKey::fresh());
    EXPECT_FALSE(trail.verified().badSeal);
    EXPECT_EQ(trail.verified(SealKey::fresh().publicKey()).badSeal,
              (BadSeal{4, SealFlaw::OtherKey}));
}

TEST(SealCheckTest, findsASealOfAnotherTrail)
{
    Sealed trail, other;
    const SealKey key = SealKey::fresh();
    trail.notes(3);
    other.notes(2);
    other.add(NoteMade{"another"});
    trail.add(sealOf(other.head(), key));
    EXPECT_EQ(trail.verified().badSeal, (BadSeal{4, SealFlaw::OtherHead}));
    EXPECT_FALSE(trail.verified().flaw);
}

TEST(SealCheckTest, findsASealThatNobodySigned)
{
    Sealed trail;
    trail.notes(3);
    DaySealed seal = sealOf(trail.head(), SealKey::fresh());
    seal.key = SealKey::fresh().publicKey();
    trail.add(seal);
    EXPECT_EQ(trail.verified().badSeal, (BadSeal{4, SealFlaw::NotGenuine}));
}

TEST(SealCheckTest, trustsWhatLiesFartherBackThanItRemembers)
{
    Sealed trail, other;
    const SealKey key = SealKey::fresh();
    trail.notes(1);
    other.add(NoteMade{"another"});
    trail.notes(static_cast<int>(SealCheck::kRemembered) + 1);
    trail.add(sealOf(other.head(), key));
    EXPECT_FALSE(trail.verified().badSeal);
}

}  // namespace
}  // namespace bathside
