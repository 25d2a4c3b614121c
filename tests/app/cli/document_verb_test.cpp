#include "app/cli/document_verb.h"

#include <algorithm>
#include <map>
#include <sstream>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "app/cli/bath_verbs.h"
#include "app/cli/check_verbs.h"
#include "tests/app/cli/spoken.h"

namespace bathside::cli {
namespace {

std::vector<DocumentVerb> allVerbs()
{
    auto verbs = bathVerbs();
    for (DocumentVerb& verb : checkVerbs())
        verbs.push_back(std::move(verb));
    return verbs;
}

Spoken say(const std::string& name, const std::string& input, Answer answer = Answer::Json)
{
    for (const DocumentVerb& verb : allVerbs())
        if (verb.name == name)
            return spoken(input, [&](Terminal& terminal) {
                return runDocumentVerb(verb, "-", answer, terminal);
            });
    ADD_FAILURE() << "there is no verb " << name;
    return {};
}

// What --help shows works as it stands, in both forms.
TEST(DocumentVerbTest, answersItsOwnExample)
{
    for (const DocumentVerb& verb : allVerbs()) {
        const Spoken object = say(verb.name, verb.example);
        EXPECT_EQ(object.exit, Exit::Done) << verb.name << object.err;
        EXPECT_EQ(std::ranges::count(object.out, '\n'), 1) << verb.name;
        EXPECT_TRUE(nlohmann::json::parse(object.out).is_object()) << verb.name;
        const Spoken words = say(verb.name, verb.example, Answer::ForPeople);
        EXPECT_EQ(words.exit, Exit::Done) << verb.name;
        EXPECT_TRUE(words.out.ends_with(".\n") || verb.name == "ohms") << words.out;
    }
}

TEST(DocumentVerbTest, saysInOneSentenceWhatIsWrong)
{
    for (const DocumentVerb& verb : allVerbs()) {
        const Spoken said = say(verb.name, "{}");
        EXPECT_EQ(said.exit, Exit::Unusable) << verb.name;
        EXPECT_EQ(said.out, "") << verb.name;
        EXPECT_TRUE(said.err.starts_with("bathside-cli: standard input, key ")) << said.err;
    }
}

TEST(DocumentVerbTest, answersNo)
{
    const std::map<std::string, std::string> bad{
        {"ohms", R"({"element": "pt100", "ohm": 5000})"},
        {"heat",
         R"({"ampoules": 40, "ampoule": {"fill_g": 2, "glass_g": 3}, "bath": {"water_kg": 4, "heater_w": 800}, "start_c": 28, "target_c": 28, "tolerance_c": 1})"},
        {"thaw",
         R"({"bath_c": 15, "ampoule": {"diameter_mm": 14.75, "wall_mm": 0.55, "fill_ml": 5}, "film_w_m2k": 1900, "limit_s": 90})"},
        {"injector",
         R"({"dose_ml": 0.2, "volumes_ml": [0.25, 0.251, 0.249], "limits": {"systematic_percent": 5, "random_percent": 5}})"},
        {"coverage", R"({"good": 60, "looked_at": 100, "target": 0.95})"},
        {"vessel",
         R"({"dipstick": [{"mm": 0, "litres": 0}, {"mm": 500, "litres": 30}], "log": [{"at": "2026-03-01T07:00:00Z", "mm": 50}], "minimum_litres": 8, "usual_litres_per_day": 0.3})"},
        {"room-air", R"({"room_m3": 20, "litres": 10})"},
        {"live-cells",
         R"({"titre_per_dose": {"low": 1000, "high": 1100}, "doses_in": 1, "doses_out": 1, "bath_min": 0, "bag_min": 60, "minimum_per_dose": 1000, "bag_loss": {"half_life_h": {"low": 1, "high": 1}, "source": "row"}})"},
        {"chart", R"({"values": [10, 11, 10, 11, 10, 11, 30], "baseline": 6})"}};
    for (const auto& [name, document] : bad) {
        const Spoken said = say(name, document);
        EXPECT_EQ(said.exit, Exit::No) << name << said.err;
        EXPECT_NE(said.out, "") << name;
        EXPECT_NE(say(name, document, Answer::ForPeople).out, "") << name;
    }
}

TEST(DocumentVerbTest, saysNoReadingInWords)
{
    EXPECT_EQ(say("ohms", R"({"element": "pt100", "ohm": 5000})", Answer::ForPeople).out,
              "No reading: open line.\n");
}

}  // namespace
}  // namespace bathside::cli
