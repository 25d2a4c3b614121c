#include "core/bath/probe_reader.h"

#include <gtest/gtest.h>

#include "core/bath/reading_case.h"
#include "core/trail/whole_json.h"

namespace bathside {
namespace {

using namespace std::chrono;

constexpr const char* kDecimal =
    R"({"id": "P1", "name": "bath", "certificate": "C-7", "calibrated": "2025-09-01", "due": "2026-09-01",
        "resolution_c": 0.0625, "drift_c": 0.05,
        "points": [{"indicated_c": 28.4, "reference_c": 28.0, "u_c": 0.06},
                   {"indicated_c": 0.1, "reference_c": -0.01, "u_c": 0.03}]})";

TEST(ProbeFromTest, readsDecimalsAndOrdersThePoints)
{
    const auto probe = probeFrom(kDecimal);
    ASSERT_TRUE(probe) << probe.error().key;
    EXPECT_EQ(probe->id, ProbeId{"P1"});
    EXPECT_EQ(probe->certificate, "C-7");
    EXPECT_EQ(probe->calibrated, sys_days(2025y / September / 1));
    EXPECT_EQ(probe->due, sys_days(2026y / September / 1));
    ASSERT_EQ(probe->points.size(), 2U);
    EXPECT_DOUBLE_EQ(probe->points[0].indicated, 0.1);
    EXPECT_DOUBLE_EQ(probe->points[1].expanded, 0.06);
}

TEST(ProbeFromTest, readsBackWhatTheTrailKeeps)
{
    const auto probe = probeFrom(kDecimal);
    ASSERT_TRUE(probe);
    const std::string kept = documentOf(*probe);
    EXPECT_TRUE(isPayload(kept)) << kept;  // canonical, and whole numbers only
    const auto again = probeFrom(kept);
    ASSERT_TRUE(again) << again.error().key;
    EXPECT_EQ(documentOf(*again), kept);
    EXPECT_DOUBLE_EQ(again->resolution, 0.0625);
    EXPECT_DOUBLE_EQ(again->points[0].reference, -0.01);
    EXPECT_EQ(again->due, probe->due);
    EXPECT_EQ(again->name, "bath");
}

TEST(ProbeFromTest, takesAProbeThatIsNotCalibrated)
{
    const auto probe = probeFrom(R"({"resolution_c": 0.1, "drift_c": 0, "points": []})");
    ASSERT_TRUE(probe) << probe.error().key;
    EXPECT_FALSE(probe->due);
    EXPECT_TRUE(probeFrom(documentOf(*probe)));
}

struct FaultCase {
    const char* name;
    const char* text;
    const char* key;
};

std::string rowName(const testing::TestParamInfo<FaultCase>& row) { return row.param.name; }

class ProbeFaults : public testing::TestWithParam<FaultCase> {};

TEST_P(ProbeFaults, nameTheKey)
{
    const auto probe = probeFrom(GetParam().text);
    ASSERT_FALSE(probe);
    EXPECT_EQ(probe.error().key, GetParam().key);
    EXPECT_FALSE(probe.error().expected.empty());
}

INSTANTIATE_TEST_SUITE_P(
    Probe, ProbeFaults,
    testing::Values(
        FaultCase{"NoJson", "probe", ""}, FaultCase{"Empty", "{}", "resolution_c"},
        FaultCase{"NoDrift", R"({"resolution_c": 0.1, "points": []})", "drift_c"},
        FaultCase{"NoPoints", R"({"resolution_c": 0.1, "drift_c": 0})", "points"},
        FaultCase{"NegativeResolution", R"({"resolution_c": -0.1, "drift_c": 0, "points": []})",
                  "resolution_c"},
        FaultCase{"DecimalComma", R"({"resolution_c": "0,1", "drift_c": 0, "points": []})",
                  "resolution_c"},
        FaultCase{
            "PointsWithoutDue",
            R"({"resolution_c": 0, "drift_c": 0, "points": [{"indicated_c": 1, "reference_c": 1, "u_c": 0}]})",
            "due"},
        FaultCase{"PointTwice",
                  R"({"resolution_c": 0, "drift_c": 0, "due": "2026-01-01", "points": [
                      {"indicated_c": 1, "reference_c": 1, "u_c": 0}, {"indicated_c": 1, "reference_c": 2, "u_c": 0}]})",
                  "points"},
        FaultCase{
            "PointWithoutU",
            R"({"resolution_c": 0, "drift_c": 0, "due": "2026-01-01", "points": [{"indicated_c": 1, "reference_c": 1}]})",
            "points[0].u_c"},
        FaultCase{"NoSuchDay",
                  R"({"resolution_c": 0, "drift_c": 0, "due": "2026-02-29", "points": []})", "due"},
        FaultCase{
            "DueBeforeCalibrated",
            R"({"resolution_c": 0, "drift_c": 0, "calibrated": "2026-02-02", "due": "2026-02-01", "points": []})",
            "due"},
        FaultCase{"Unknown", R"({"resolution_c": 0, "drift_c": 0, "points": [], "colour": 1})",
                  "colour"},
        FaultCase{"TwoForms", R"({"resolution_uc": 0, "drift_c": 0, "points": []})", "drift_uc"}),
    rowName);

constexpr const char* kReadingCase =
    R"({"target_c": 28, "tolerance_c": 1, "guard": 1, "indicated_c": 28.4, "at": "2026-03-05T07:12:00+01:00", "stability_c": 0.02,
        "probe": {"resolution_c": 0.1, "drift_c": 0.05, "due": "2026-09-01",
                  "points": [{"indicated_c": 0.1, "reference_c": 0.0, "u_c": 0.06}]}})";

std::string caseWith(const std::string& key, const std::string& value)
{
    const std::string text = kReadingCase;
    const auto from = text.find("\"" + key + "\": ") + key.size() + 4;
    return text.substr(0, from) + value + text.substr(text.find_first_of(",}", from));
}

TEST(ReadingCaseTest, readsTheVerbsInput)
{
    const auto reading = readingCaseFrom(kReadingCase);
    ASSERT_TRUE(reading) << reading.error().key;
    EXPECT_EQ(reading->on, sys_days(2026y / March / 5));
    EXPECT_DOUBLE_EQ(reading->stability, 0.02);
    EXPECT_NEAR(judged(*reading).corrected, 28.3, 1e-12);
}

TEST(ReadingCaseTest, takesTheDayOfTheInstantsOwnOffset)
{
    const auto reading = readingCaseFrom(caseWith("at", "\"2026-03-06T00:30:00+01:00\""));
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->on, sys_days(2026y / March / 6));  // in UTC it is still the 5th
}

class ReadingCaseFaults : public testing::TestWithParam<FaultCase> {};

TEST_P(ReadingCaseFaults, nameTheKey)
{
    const auto reading = readingCaseFrom(caseWith(GetParam().key, GetParam().text));
    ASSERT_FALSE(reading);
    const std::string& key = reading.error().key;
    EXPECT_EQ(key.substr(key.rfind('.') + 1), GetParam().key);
}

INSTANTIATE_TEST_SUITE_P(Reading, ReadingCaseFaults,
                         testing::Values(FaultCase{"Target", "\"28\"", "target_c"},
                                         FaultCase{"Tolerance", "0", "tolerance_c"},
                                         FaultCase{"Guard", "-1", "guard"},
                                         FaultCase{"Indicated", "1001", "indicated_c"},
                                         FaultCase{"LocalTime", "\"2026-03-05T07:12:00\"", "at"},
                                         FaultCase{"Stability", "null", "stability_c"},
                                         FaultCase{"Due", "\"soon\"", "due"}),
                         rowName);

TEST(ReadingCaseTest, writesOneLineInTheDocumentedForm)
{
    Judged result;
    result.corrected = 28.5;
    result.expanded = 0.25;
    result.verdict = Verdict::Outside;
    result.conformity = 0.5;
    result.warnings = {ReadingWarning::BeyondRange, ReadingWarning::Overdue,
                       ReadingWarning::CannotDecide};
    EXPECT_EQ(
        toJson(result),
        R"({"corrected_c":28.5,"expanded_u_c":0.25,"verdict":"outside","conformity":0.5,)"
        R"("warnings":["beyond calibrated range","calibration overdue"],"can_decide":false})");
}

}  // namespace
}  // namespace bathside
