#include "core/facts/codec.h"

#include <set>
#include <string>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/trail/whole_json.h"
#include "tests/support/random_facts.h"

namespace bathside {
namespace {

using Json = nlohmann::json;

struct Written {
    const char* name;
    Fact fact;
    const char* kind;
    const char* payload;
};

void PrintTo(const Written& row, std::ostream* out) { *out << row.name; }

class PayloadText : public testing::TestWithParam<Written> {};

TEST_P(PayloadText, isWrittenAsAlways)
{
    EXPECT_EQ(kindOf(GetParam().fact), GetParam().kind);
    EXPECT_EQ(payloadOf(GetParam().fact), GetParam().payload);
}

TEST_P(PayloadText, isReadForEver)
{
    const auto fact = factFrom(GetParam().kind, GetParam().payload);
    ASSERT_TRUE(fact.has_value()) << fact.error().key << ": " << fact.error().expected;
    EXPECT_EQ(fact->index(), GetParam().fact.index());
    EXPECT_EQ(payloadOf(*fact), GetParam().payload);
}

// Written by hand: one row for each type a member can have, so that a change of form shows.
INSTANTIATE_TEST_SUITE_P(
    Codec, PayloadText,
    testing::Values(
        Written{"Nothing", StationStopped{}, "station.stopped", "{}"},
        Written{"BoolAndText", StationStarted{"0.1.0", "1:ab", true}, "station.started",
                R"({"head":"1:ab","rehearsal":true,"version":"0.1.0"})"},
        Written{"Milliseconds", ClockStepped{Millis(-3600000)}, "clock.stepped",
                R"({"by_ms":-3600000})"},
        Written{"AbsentOptional", ClockChecked{false, std::nullopt}, "clock.checked",
                R"({"synchronised":false})"},
        Written{"PresentOptional", ClockChecked{true, Millis(12)}, "clock.checked",
                R"({"offset_ms":12,"synchronised":true})"},
        Written{"WholeDocument", CardAdopted{{R"({"limits":{"thaw":{"at_ms":90000}}})"}},
                "card.adopted", R"({"document":{"limits":{"thaw":{"at_ms":90000}}}})"},
        Written{"DocumentWithDecimals", ProbeDescribed{{"P1"}, {R"({"resolution_c":0.1})"}},
                "probe.described", R"({"document":"{\"resolution_c\":0.1}","probe":"P1"})"},
        Written{
            "Temperatures",
            ReadingTaken{{"P1"},
                         MilliCelsius{28100},
                         MilliCelsius{28040},
                         MilliCelsius{120},
                         Verdict::Inside,
                         std::nullopt},
            "reading.taken",
            R"({"corrected_mc":28040,"probe":"P1","raw_mc":28100,"u_mc":120,"verdict":"inside"})"},
        Written{"WordOfTwoWords", ReadingTaken{{"P1"}, {}, {}, {}, {}, ReadingFault::PowerOn},
                "reading.taken", R"({"fault":"power-on value","probe":"P1"})"},
        Written{"Volume", BagStarted{{"B1"}, MicroLitres{400000}, {"D7"}, MilliCelsius{21500}},
                "bag.started",
                R"({"bag":"B1","diluent_lot":"D7","temperature_mc":21500,"volume_ul":400000})"},
        Written{"AmpouleOut", AmpouleOut{{3, 2}, {"serotype 3"}, {"K07"}}, "ampoule.out",
                R"({"ampoule":2,"component":"serotype 3","lot":"K07","pull":3})"},
        Written{"NotTimed", AmpouleBagged{{1, 1}, {"B1"}, false}, "ampoule.bagged",
                R"({"ampoule":1,"bag":"B1","pull":1,"timed":false})"},
        Written{"Reason", AmpouleLost{{1, 3}, LossReason::HandedOver}, "ampoule.lost",
                R"({"ampoule":3,"pull":1,"why":"handed over"})"},
        Written{"Instant", PullPlanned{WallTime(Millis(1772691000000))}, "pull.planned",
                R"({"start":"2026-03-05T06:10:00.000Z"})"},
        Written{
            "SubjectAndSeqs",
            DeviationFound{
                LimitName::Exposure, {SubjectKind::Ampoule, "3/2"}, BagId{"B1"}, 1500, {41, 42}},
            "deviation",
            R"({"bag":"B1","from":[41,42],"limit":"exposure","over":1500,"subject":"ampoule:3/2"})"},
        Written{"SubjectAlone",
                Rejudged{
                    LimitName::BathAtPull, {SubjectKind::Bath, ""}, std::nullopt, std::nullopt, {}},
                "rejudged", R"({"from":[],"limit":"bath at pull","subject":"bath"})"},
        Written{"Escapes", NoteMade{"\"ñ\"\n\t\x01\\\xF0\x9F\x90\xA3/"}, "note.made",
                "{\"text\":\"\\\"ñ\\\"\\n\\t\\u0001\\\\\xF0\x9F\x90\xA3/\"}"},
        Written{"NotUtf8", NoteMade{"a\xFF\xC3"}, "note.made",
                "{\"text\":\"a\xEF\xBF\xBD\xEF\xBF\xBD\"}"}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(CodecTest, everyKindHasItsOwnName)
{
    test::RandomFacts random(1);
    std::set<std::string_view> kinds;
    for (std::size_t kind = 0; kind < test::RandomFacts::kKinds; ++kind)
        kinds.insert(kindOf(random.fact(kind)));
    EXPECT_EQ(kinds.size(), test::RandomFacts::kKinds);
}

TEST(CodecTest, whatIsWrittenIsAPayloadAndReadsBackToTheSame)
{
    test::RandomFacts random(2);
    for (int round = 0; round < 200; ++round) {
        for (std::size_t kind = 0; kind < test::RandomFacts::kKinds; ++kind) {
            const Fact fact = random.fact(kind);
            const std::string payload = payloadOf(fact);
            ASSERT_TRUE(isPayload(payload)) << payload;
            const auto read = factFrom(kindOf(fact), payload);
            ASSERT_TRUE(read.has_value())
                << kindOf(fact) << ' ' << payload << ' ' << read.error().key;
            ASSERT_EQ(payloadOf(*read), payload);
        }
    }
}

// Every member of every kind in turn: left out, of another type, not whole; and one too many.
TEST(CodecTest, whatCouldNotHaveBeenWrittenIsRefusedByTheNameOfTheMember)
{
    test::RandomFacts random(3);
    int tried = 0;
    for (int round = 0; round < 20; ++round) {
        for (std::size_t kind = 0; kind < test::RandomFacts::kKinds; ++kind) {
            const Fact fact = random.fact(kind);
            const auto refusedFor = [&](const Json& payload) {
                ++tried;
                const auto read = factFrom(kindOf(fact), payload.dump());
                return read ? std::string("nothing: it was read") : read.error().key;
            };
            const Json payload = Json::parse(payloadOf(fact));
            Json extra = payload;
            extra["zz"] = 1;
            EXPECT_EQ(refusedFor(extra), "zz") << kindOf(fact);
            for (const auto& [name, value] : payload.items()) {
                Json changed = payload;
                changed[name] = nullptr;
                EXPECT_EQ(refusedFor(changed), name) << kindOf(fact);
                changed[name] = Json::array({Json::array()});
                EXPECT_EQ(refusedFor(changed), name) << kindOf(fact);
                changed[name] = 1.5;
                EXPECT_EQ(refusedFor(changed), "payload") << kindOf(fact);
            }
        }
    }
    EXPECT_GT(tried, 1000);
}

struct Refused {
    const char* name;
    const char* kind;
    const char* payload;
    const char* key;
};

void PrintTo(const Refused& row, std::ostream* out) { *out << row.name; }

class FactFromRefuses : public testing::TestWithParam<Refused> {};

TEST_P(FactFromRefuses, andNamesTheKey)
{
    const auto fact = factFrom(GetParam().kind, GetParam().payload);
    ASSERT_FALSE(fact.has_value());
    EXPECT_EQ(fact.error().key, GetParam().key);
    EXPECT_FALSE(fact.error().expected.empty());
}

INSTANTIATE_TEST_SUITE_P(
    Codec, FactFromRefuses,
    testing::Values(
        Refused{"UnknownKind", "bag.flown", "{}", "bag.flown"},
        Refused{"NotJson", "bag.mixed", "bag", "payload"},
        Refused{"NoObject", "bag.mixed", "[]", "payload"},
        Refused{"Empty", "station.stopped", "", "payload"},
        Refused{"Spaces", "bag.mixed", R"({"bag": "B1"})", "payload"},
        Refused{"KeysOutOfOrder", "bag.hung", R"({"line":"A","bag":"B1"})", "payload"},
        Refused{"KeyTwice", "bag.mixed", R"({"bag":"B1","bag":"B1"})", "payload"},
        Refused{"NeedlessEscape", "bag.mixed", R"({"bag":"\u0042"})", "payload"},
        Refused{"MissingMember", "bag.hung", R"({"bag":"B1"})", "line"},
        Refused{"UnknownWord", "bag.down", R"({"bag":"B1","left_ul":0,"why":"gone"})", "why"},
        Refused{"BeyondWhole", "clock.stepped", R"({"by_ms":9007199254740992})", "payload"},
        Refused{"BeyondInt", "ampoule.rinsed", R"({"ampoule":2147483648,"pull":1,"timed":true})",
                "ampoule"},
        Refused{"SubjectWithoutKind", "alarm.raised",
                R"({"alarm":"a","level":"limit","subject":"x:1"})", "subject"},
        Refused{"SubjectWithEmptyId", "alarm.raised",
                R"({"alarm":"a","level":"limit","subject":"bag:"})", "subject"},
        Refused{"LocalTime", "pull.planned", R"({"start":"2026-03-05T06:10:00.000+01:00"})",
                "start"},
        Refused{"TimeWithoutMs", "pull.planned", R"({"start":"2026-03-05T06:10:00Z"})", "start"},
        Refused{"WholeDocumentAsText", "card.adopted", R"({"document":"{\"a\":1}"})", "document"},
        Refused{"DocumentNotCanonical", "card.adopted", R"({"document":"{\"a\": 1.5}"})",
                "document"},
        Refused{"DocumentNoObject", "card.adopted", R"({"document":"1.5"})", "document"}),
    [](const auto& row) { return std::string(row.param.name); });

}  // namespace
}  // namespace bathside
