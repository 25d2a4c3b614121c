#include "core/replay/script.h"

#include <gmock/gmock.h>

namespace bathside {
namespace {

using testing::ElementsAre;

const std::string kStart =
    R"({"t":"2026-03-05T07:10:00.000+01:00","do":"start-bag","bag":"B1","volume_ml":400,"diluent_lot":"D1","temperature_c":22})";

std::vector<std::string> verbs(const std::string& text)
{
    std::vector<std::string> found;
    const auto script = scriptFrom(text);
    EXPECT_TRUE(script);
    if (script) {
        for (const ScriptEntry& entry : *script)
            found.push_back(entry.verb);
    }
    return found;
}

// A hold of a shift before is told by its entry, as its bag's name may be in use again.
TEST(Script, aReleaseMayNameTheHold)
{
    const auto script = scriptFrom(
        R"({"t":"2026-03-05T07:10:00.000+01:00","do":"release","bag":"B1","by":"LS","why":"used","of":41})");
    ASSERT_TRUE(script);
    const auto& intent = std::get<ReleaseBag>(std::get<Intent>(script->front().statement));
    EXPECT_EQ(intent.of, 41);
    EXPECT_EQ(intent.bag, BagId{"B1"});
}

struct Broken {
    std::string name, line, key;
};
class ScriptRefuses : public testing::TestWithParam<Broken> {};

TEST_P(ScriptRefuses, aLineThatIsNoEntry)
{
    const auto script = scriptFrom(kStart + "\n\n" + GetParam().line + "\n");
    ASSERT_FALSE(script);
    EXPECT_EQ(script.error().line, 3);
    EXPECT_EQ(script.error().fault.key, GetParam().key);
    EXPECT_FALSE(script.error().fault.expected.empty());
}

INSTANTIATE_TEST_SUITE_P(
    Script, ScriptRefuses,
    testing::Values(
        Broken{"NotJson", "in-bath", ""}, Broken{"NotAnObject", "[1]", ""},
        Broken{"NoTime", R"({"do":"in-bath"})", "t"},
        Broken{"TimeWithoutOffset", R"({"t":"2026-03-05T07:10:00","do":"in-bath"})", "t"},
        Broken{"NoVerb", R"({"t":"2026-03-05T07:10:00Z"})", "do"},
        Broken{"UnknownVerb", R"({"t":"2026-03-05T07:10:00Z","do":"juggle"})", "do"},
        Broken{"UnknownKey", R"({"t":"2026-03-05T07:10:00Z","do":"in-bath","speed":3})", "speed"},
        Broken{"RepeatedKey", R"({"t":"2026-03-05T07:10:00Z","do":"in-bath","do":"opened"})", "do"},
        Broken{"AmpouleZero", R"({"t":"2026-03-05T07:10:00Z","do":"in-bath","ampoules":[0]})",
               "ampoules[0]"},
        Broken{"LossForNoReason",
               R"({"t":"2026-03-05T07:10:00Z","do":"lost","ampoule":1,"why":"melted"})", "why"},
        Broken{"CountAsText",
               R"({"t":"2026-03-05T07:10:00Z","do":"birds","line":"A","count":"12"})", "count"},
        Broken{"ExpectSomethingElse",
               R"({"t":"2026-03-05T07:10:00Z","do":"in-bath","expect":"taken"})", "expect"},
        Broken{"PersonOfNoRole",
               R"({"t":"2026-03-05T07:10:00Z","do":"person","person":"AB","name":"A","role":"x"})",
               "role"},
        Broken{
            "ReviewOfNobody",
            R"({"t":"2026-03-05T07:10:00Z","do":"review","limit":"thaw","subject":"him","by":"LS"})",
            "subject"},
        Broken{
            "SignatureOfNumbers",
            R"({"t":"2026-03-05T07:10:00Z","do":"sign","person":"LS","meaning":"done","of":[1]})",
            "of[0]"},
        Broken{"NegativeVolume",
               R"({"t":"2026-03-05T07:10:00Z","do":"diluent-drawn","volume_ml":-1})", "volume_ml"},
        Broken{
            "ChecksSomeOk",
            R"({"t":"2026-03-05T07:10:00Z","do":"open-shift","zone":"UTC","person":"AB","checks":"some"})",
            "checks"},
        Broken{"LookedAtMoreThanACount",
               R"({"t":"2026-03-05T07:10:00Z","do":"birds-check","looked":"all","good":1})",
               "looked"},
        Broken{"DoseMeasuredAsText",
               R"({"t":"2026-03-05T07:10:00Z","do":"dose-check","measured":"ten"})", "measured"},
        Broken{"DoseMeasuredAndSaid",
               R"({"t":"2026-03-05T07:10:00Z","do":"dose-check","measured":{},"ok":true})", "ok"},
        Broken{"VesselWithoutDescription",
               R"({"t":"2026-03-05T07:10:00Z","do":"vessel","vessel":"1"})", "description"},
        Broken{"DipBelowNothing",
               R"({"t":"2026-03-05T07:10:00Z","do":"dip","vessel":"1","level_mm":-1})",
               "level_mm"}),
    [](const auto& test) { return test.param.name; });

TEST(ScriptTest, anEmptyScriptIsNone) { EXPECT_FALSE(scriptFrom("\n \n")); }

TEST(ScriptTest, anIdNamesOneEntry)
{
    const std::string line = R"({"t":"2026-03-05T07:10:00Z","do":"needle","id":"n","line":"A"})";
    const auto script = scriptFrom(line + "\n" + line);
    ASSERT_FALSE(script);
    EXPECT_EQ(script.error().line, 2);
    EXPECT_EQ(script.error().fault.key, "id");
}

TEST(ScriptTest, startImpliesInspectedAndDrawnUnlessTheyFollow)
{
    const std::string inspected = R"({"t":"2026-03-05T07:11:00+01:00","do":"inspected"})";
    const std::string drawn =
        R"({"t":"2026-03-05T07:12:00+01:00","do":"diluent-drawn","volume_ml":4})";
    EXPECT_THAT(verbs(kStart), ElementsAre("start-bag", "inspected", "diluent-drawn"));
    EXPECT_THAT(verbs(kStart + "\n" + drawn),
                ElementsAre("start-bag", "inspected", "diluent-drawn"));
    EXPECT_THAT(verbs(kStart + "\n" + inspected),
                ElementsAre("start-bag", "inspected", "diluent-drawn"));
    EXPECT_THAT(verbs(kStart + "\n" + inspected + "\n" + drawn),
                ElementsAre("start-bag", "inspected", "diluent-drawn"));
}

TEST(ScriptTest, aFailedInspectionDrawsNothing)
{
    const std::string bad = R"({"t":"2026-03-05T07:11:00+01:00","do":"inspected","ok":false})";
    EXPECT_THAT(verbs(kStart + "\n" + bad), ElementsAre("start-bag", "inspected"));
}

TEST(ScriptTest, checksAndDipsAreRead)
{
    const auto script = scriptFrom(
        R"({"t":"2026-03-05T07:10:00Z","do":"dose-check","line":"A","measured":{"b":1,"a":2}})"
        "\n"
        R"({"t":"2026-03-05T07:10:01Z","do":"dose-check","ok":false})"
        "\n"
        R"({"t":"2026-03-05T07:10:02Z","do":"birds-check","line":"A","looked":100,"good":97})"
        "\n"
        R"({"t":"2026-03-05T07:10:03Z","do":"dip","vessel":"1","level_mm":300})"
        "\n"
        R"({"t":"2026-03-05T07:10:04Z","do":"dip","vessel":"2","level_mm":300,"filled":true})");
    ASSERT_TRUE(script);
    const auto intent = [&](std::size_t i) { return std::get<Intent>((*script)[i].statement); };
    EXPECT_EQ(std::get<CheckDose>(intent(0)).measured, R"({"a":2,"b":1})");
    EXPECT_FALSE(std::get<CheckDose>(intent(1)).ok);
    EXPECT_EQ(std::get<CheckBirds>(intent(2)).good, 97);
    EXPECT_FALSE(std::get<DipVessel>(intent(3)).filled);
    EXPECT_TRUE(std::get<DipVessel>(intent(4)).filled);
    EXPECT_NE((*script)[3].place, (*script)[4].place);  // two vessels are two taps
}

TEST(ScriptTest, ampoulesAreNumbersOrDescribed)
{
    const auto script = scriptFrom(
        R"({"t":"2026-03-05T07:10:00Z","do":"out-of-cryogen","ampoules":[1,2]})"
        "\n"
        R"({"t":"2026-03-05T07:10:01Z","do":"out-of-cryogen","ampoules":[{"no":3,"component":"serotype 1","lot":"R1"}]})");
    ASSERT_TRUE(script);
    const auto& plain = std::get<TakeOut>(std::get<Intent>((*script)[0].statement));
    EXPECT_EQ(plain.ampoules.size(), 2U);
    const auto& described = std::get<TakeOut>(std::get<Intent>((*script)[1].statement));
    EXPECT_EQ(described.ampoules[0].lot.text, "R1");
    EXPECT_NE((*script)[0].place, (*script)[1].place);
}

}  // namespace
}  // namespace bathside
