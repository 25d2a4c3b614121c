#include "app/cli/reading.h"

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/app/cli/spoken.h"
#include "tests/support/replaced.h"

namespace bathside::cli {
namespace {

constexpr const char* kInside =
    R"({"target_c": 28, "tolerance_c": 1, "guard": 1, "indicated_c": 28.4, "at": "2026-03-05T07:12:00+01:00",
        "stability_c": 0.02, "probe": {"resolution_c": 0.1, "drift_c": 0.05, "due": "2026-09-01",
        "points": [{"indicated_c": 0.1, "reference_c": 0.0, "u_c": 0.06}, {"indicated_c": 30, "reference_c": 29.9, "u_c": 0.06}]}})";

Spoken read(const std::string& input, Answer answer, const std::string& file = "-")
{
    return spoken(input, [&](Terminal& terminal) { return readingVerb(file, answer, terminal); });
}

TEST(ReadingVerbTest, printsOneJsonObject)
{
    const Spoken said = read(kInside, Answer::Json);
    EXPECT_EQ(said.exit, Exit::Done);
    EXPECT_EQ(said.err, "");
    const auto found = nlohmann::json::parse(said.out);
    EXPECT_NEAR(found.at("corrected_c").get<double>(), 28.3, 1e-9);
    EXPECT_EQ(found.at("verdict"), "inside");
}

TEST(ReadingVerbTest, answersNoForOutsideOnly)
{
    EXPECT_EQ(read(test::replaced(kInside, "\"indicated_c\": 28.4", "\"indicated_c\": 29.1"),
                   Answer::Json)
                  .exit,
              Exit::Done);
    EXPECT_EQ(read(test::replaced(kInside, "\"indicated_c\": 28.4", "\"indicated_c\": 29.9"),
                   Answer::Json)
                  .exit,
              Exit::No);
}

// By hand: u² = 0.03² + (0.1/2√3)² + (0.05/√3)² + 0.02² = 0.0029667, U = 0.1089.
TEST(ReadingVerbTest, speaksToPeople)
{
    const Spoken said =
        read(test::replaced(kInside, "2026-09-01", "2026-03-04"), Answer::ForPeople);
    EXPECT_EQ(said.exit, Exit::Done);
    EXPECT_EQ(said.out,
              "28.300 °C ± 0.109 °C (k = 2). The bath is inside its tolerance.\n"
              "Probability that it is inside: more than 99.99 %.\n"
              "The calibration is overdue.\n");
}

TEST(ReadingVerbTest, saysWhatItCannotUse)
{
    const Spoken said = read(test::replaced(kInside, "\"2026-09-01\"", "\"soon\""), Answer::Json);
    EXPECT_EQ(said.exit, Exit::Unusable);
    EXPECT_EQ(said.out, "");
    EXPECT_EQ(said.err,
              "bathside-cli: standard input, key probe.due: found \"soon\", expected a day, "
              "YYYY-MM-DD.\n");
}

TEST(ReadingVerbTest, saysWhereTextIsNoJson)
{
    const Spoken said = read("{\n \"target_c\": 28,\n}", Answer::Json);
    EXPECT_EQ(said.exit, Exit::Unusable);
    EXPECT_EQ(said.err,
              "bathside-cli: standard input: found a fault at line 3, column 1, expected JSON in "
              "UTF-8.\n");
}

TEST(ReadingVerbTest, readsAFileAndNamesIt)
{
    const auto folder = std::filesystem::path(testing::TempDir()) / "bathside-reading";
    std::filesystem::create_directories(folder);
    const std::string file = folder / "reading.json";
    std::ofstream(file) << kInside;
    EXPECT_EQ(read("", Answer::Json, file).exit, Exit::Done);
    std::ofstream(file) << "[]";
    EXPECT_EQ(read("", Answer::Json, file).err,
              "bathside-cli: " + file + ": found a list of 0, expected an object.\n");
    const Spoken missing = read("", Answer::Json, folder / "none.json");
    EXPECT_EQ(missing.exit, Exit::Unusable);
    EXPECT_NE(missing.err.find("none.json: found nothing to read"), std::string::npos);
    EXPECT_EQ(read("", Answer::Json, folder).err,
              "bathside-cli: " + folder.string() + ": found a folder, expected a file.\n");
    std::filesystem::remove_all(folder);
}

TEST(ReadingVerbTest, doesNotCallDoneWhatWasNotPrinted)
{
    std::istringstream in(kInside);
    std::ostringstream out;
    std::ostringstream err;
    out.setstate(std::ios::badbit);
    Terminal terminal{in, out, err};
    EXPECT_EQ(readingVerb("-", Answer::Json, terminal), Exit::Unusable);
    EXPECT_NE(err.str(), "");
}

TEST(SentenceTest, showsNoControlCharacters)
{
    EXPECT_EQ(sentence({"a\nb", "line 2", "\x1b[31m", "text"}),
              "a?b, line 2: found ?[31m, expected text.");
    EXPECT_EQ(sentence({"-", "", "", "text"}), "standard input: expected text.");
}

}  // namespace
}  // namespace bathside::cli
