#include "core/trail/entry.h"

#include <gtest/gtest.h>

#include "core/trail/boot_id.h"
#include "core/trail/event_form.h"
#include "core/trail/whole_json.h"
#include "tests/support/sample_log.h"

namespace bathside {
namespace {

Entry wholeEntry()
{
    Entry entry;
    entry.seq = 7;
    entry.at = WallTime(Millis(1772691000123));
    entry.boot = Micros(123456789);
    entry.bootId = {0x3f, 0x2b, 0x90, 0x1c, 0x7d, 0x11, 0x4e, 0x5a, 0x9c, 0x40, 1, 2, 3, 4, 5, 6};
    entry.station = {"bench 1"};
    entry.person = Person{{"AB"}, Proof::Proven};
    entry.tap = {"t-1"};
    entry.place = {"step"};
    entry.byReceipt = true;
    entry.card = {"c0ffee"};
    entry.kind = "bag.mixed";
    entry.payload = R"({"bag":"B1"})";
    entry.spool = SpoolOrigin{3, sha256("abc")};
    return entry;
}

TEST(EntryTest, hasAllItsMembersInCanonicalOrder)
{
    EXPECT_EQ(
        canonicalText(wholeEntry()),
        R"({"at":"2026-03-05T06:10:00.123Z","boot_id":"3f2b901c-7d11-4e5a-9c40-010203040506",)"
        R"("boot_us":123456789,"by_receipt":true,"card":"c0ffee","kind":"bag.mixed",)"
        R"("payload":{"bag":"B1"},"person":{"id":"AB","proof":"proven"},"place":"step","seq":7,)"
        R"("spool":{"hash":"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",)"
        R"("seq":3},"station":"bench 1","tap":"t-1"})");
}

TEST(EntryTest, leavesOutWhatIsNotThere)
{
    Entry entry = wholeEntry();
    entry.person.reset();
    entry.spool.reset();
    entry.place = {};
    entry.card = {};
    entry.byReceipt = false;
    EXPECT_EQ(
        canonicalText(entry),
        R"({"at":"2026-03-05T06:10:00.123Z","boot_id":"3f2b901c-7d11-4e5a-9c40-010203040506",)"
        R"("boot_us":123456789,"kind":"bag.mixed","payload":{"bag":"B1"},"seq":7,)"
        R"("station":"bench 1","tap":"t-1"})");
}

// Computed with Python's hashlib: sha256(bytes(32) + text), then sha256(first digest + text).
TEST(EntryTest, chainsOverTheRawBytesOfThePreviousHash)
{
    const std::string text = canonicalText(wholeEntry());
    const Hash first = chained({}, text);
    EXPECT_EQ(toHex(first), "c2c92754f03390c7187fec776f5f7d29161193dab74eff9430096b5b116ea7ae");
    EXPECT_EQ(toHex(chained(first, text)),
              "67780e7a98b8d61b803428e2cc21fff3eb26a9cdef785a0999e30c4e9f00320a");
}

TEST(EntryTest, isCanonicalWhateverItHolds)
{
    for (const Entry& entry : test::sampleLog(500))
        ASSERT_TRUE(isWhole(canonicalText(entry))) << canonicalText(entry);
}

TEST(EventFormTest, anEventComesBackFromItsEntry)
{
    for (const Entry& entry : test::sampleLog(500)) {
        const auto event = eventOf(entry);
        ASSERT_TRUE(event.has_value()) << event.error().key;
        Entry again = entryOf(*event, entry.station);
        again.spool = entry.spool;
        again.hash = entry.hash;
        ASSERT_EQ(again, entry);
    }
}

TEST(EventFormTest, anEntryOfAnUnknownKindIsNoEvent)
{
    Entry entry = wholeEntry();
    entry.kind = "bag.flown";
    EXPECT_EQ(eventOf(entry).error().key, "bag.flown");
}

TEST(BootIdTest, readsBack)
{
    const BootId id = wholeEntry().bootId;
    EXPECT_EQ(bootIdFromText(toText(id)), id);
}

// RFC 4122, section 3: 8-4-4-4-12 hex digits; as the kernel writes them, in lower case.
TEST(BootIdTest, takesThatFormOnly)
{
    for (const char* text :
         {"", "3f2b901c7d114e5a9c40010203040506", "3f2b901c-7d11-4e5a-9c40-01020304050",
          "3f2b901c-7d11-4e5a-9c40-0102030405067", "3F2B901C-7d11-4e5a-9c40-010203040506",
          "3f2b901c_7d11-4e5a-9c40-010203040506", "3f2b901-c7d11-4e5a-9c40-010203040506",
          "3f2b901c-7d11-4e5a-9c40-01020304050g"})
        EXPECT_FALSE(bootIdFromText(text)) << text;
}

}  // namespace
}  // namespace bathside
