// The checks' documents: what they read, what they answer, and which key they name when it is
// wrong.

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/checks/chart_case.h"
#include "core/checks/coverage_case.h"
#include "core/checks/flow_case.h"
#include "core/checks/injector_case.h"
#include "core/checks/live_cells_case.h"
#include "core/checks/room_air_case.h"
#include "core/checks/vessel_case.h"

namespace bathside {
namespace {

using nlohmann::json;

TEST(InjectorCaseTest, takesWeightsVolumesOrACylinder)
{
    const auto weighed = injectorCaseFrom(R"({"dose_ml": 0.2, "weights_mg": [199, 201, 200],
        "liquid": {"water_c": 22}, "limits": {"systematic_percent": 5, "random_percent": 3}})");
    ASSERT_TRUE(weighed) << weighed.error().key;
    const json answer = json::parse(toJson(*weighed));
    EXPECT_EQ(answer.at("verdict"), "good");
    EXPECT_NEAR(answer.at("mean_ml").get<double>(), 0.2 * answer.at("ml_per_g").get<double>(),
                1e-12);
    const auto cylinder = injectorCaseFrom(R"({"dose_ml": 0.2, "cylinder": {"shots": 10,
        "collected_ml": 2.5, "graduation_ml": 0.1}, "limits": {"systematic_percent": 5, "random_percent": 3}})");
    const json failed = json::parse(toJson(*cylinder));
    EXPECT_EQ(failed.at("verdict"), "failed");
    EXPECT_TRUE(failed.at("random_ml").is_null());
    EXPECT_FALSE(failed.contains("ml_per_g"));
}

TEST(InjectorCaseTest, weighsDiluentByItsDensity)
{
    const auto check = injectorCaseFrom(R"({"dose_ml": 0.2, "weights_mg": [210, 210],
        "liquid": {"density_g_ml": 1.05}, "limits": {"systematic_percent": 1, "random_percent": 3}})");
    ASSERT_TRUE(check);
    EXPECT_NEAR(check->errors.mean, 0.2, 0.0003);
}

TEST(InjectorCaseTest, namesTheKey)
{
    EXPECT_EQ(injectorCaseFrom(R"({"dose_ml": 0.2, "limits": {"systematic_percent": 5,
        "random_percent": 3}})")
                  .error()
                  .key,
              "liquid");
    EXPECT_EQ(injectorCaseFrom(R"({"dose_ml": 0.2, "volumes_ml": [0.2], "limits":
        {"systematic_percent": 5, "random_percent": 3}})")
                  .error()
                  .key,
              "volumes_ml");
    EXPECT_EQ(
        injectorCaseFrom(R"({"dose_ml": 0.2, "weights_mg": [200, "x"], "liquid": {"water_c": 20},
        "limits": {"systematic_percent": 5, "random_percent": 3}})")
            .error()
            .key,
        "weights_mg[1]");
}

TEST(CoverageCaseTest, answers)
{
    const auto check = coverageCaseFrom(R"({"good": 97, "looked_at": 100, "target": 0.95})");
    ASSERT_TRUE(check);
    const json answer = json::parse(toJson(answered(*check)));
    EXPECT_EQ(answer.at("verdict"), "undecided");
    EXPECT_EQ(answer.at("needed_without_miss"), 59);
    EXPECT_EQ(answer.at("needed_with_these_misses"), 153);
    const auto missed = coverageCaseFrom(R"({"good": 0, "looked_at": 10, "target": 0.95})");
    const json none = json::parse(toJson(answered(missed.value())));
    EXPECT_EQ(none.at("verdict"), "missed");
    EXPECT_TRUE(none.at("needed_with_these_misses").is_null());  // no bird makes ten misses good
    EXPECT_EQ(none.at("needed_without_miss"), 59);
    EXPECT_EQ(coverageCaseFrom(R"({"good": 101, "looked_at": 100, "target": 0.95})").error().key,
              "good");
}

TEST(FlowCaseTest, answers)
{
    const auto line =
        flowCaseFrom(R"({"pieces": [{"seconds": 1200, "birds": 1000}], "left": 500})");
    ASSERT_TRUE(line);
    const json answer = json::parse(toJson(answered(*line)));
    EXPECT_EQ(answer.at("birds_per_hour"), 3000.0);
    EXPECT_EQ(answer.at("empty").at("in_s"), 600.0);
    EXPECT_EQ(flowCaseFrom(R"({"pieces": []})").error().key, "pieces");
}

constexpr const char* kVessel =
    R"({"dipstick": [{"mm": 0, "litres": 0}, {"mm": 500, "litres": 50}], "log": [
    {"at": "2026-03-01T07:00:00Z", "mm": 300}, {"at": "2026-03-02T07:00:00Z", "mm": 297},
    {"at": "2026-03-03T07:00:00Z", "mm": 294}, {"at": "2026-03-04T07:00:00Z", "mm": 291},
    {"at": "2026-03-05T07:00:00Z", "mm": 288}, {"at": "2026-03-06T07:00:00Z", "mm": 285}],
    "minimum_litres": 8.4, "usual_litres_per_day": 0.3})";

// By hand: 0.3 L/day from 28.5 L, 20.1 L above the minimum: 67 days after 6 March.
TEST(VesselCaseTest, answers)
{
    const auto vessel = vesselCaseFrom(kVessel);
    ASSERT_TRUE(vessel) << vessel.error().key;
    const json answer = json::parse(toJson(answered(*vessel)));
    EXPECT_NEAR(answer.at("litres").get<double>(), 28.5, 1e-12);
    EXPECT_NEAR(answer.at("rate").at("litres_per_day").get<double>(), 0.3, 1e-12);
    EXPECT_EQ(answer.at("vacuum"), "sound");
    EXPECT_EQ(answer.at("refill").at("at").get<std::string>().substr(0, 10), "2026-05-12");
}

TEST(VesselCaseTest, namesTheKey)
{
    const auto with = [](const std::string& what, const std::string& by) {
        std::string text = kVessel;
        const auto vessel = vesselCaseFrom(text.replace(text.find(what), what.size(), by));
        return vessel.error().key;
    };
    EXPECT_EQ(with("\"mm\": 294", "\"mm\": 501"), "log[2].mm");
    EXPECT_EQ(with("03-04T07", "03-03T07"), "log[3].at");
    EXPECT_EQ(with("\"litres\": 50", "\"litres\": 0"), "dipstick");
    EXPECT_EQ(with("2026-03-01T07:00:00Z", "2026-03-01"), "log[0].at");
}

TEST(RoomAirCaseTest, answers)
{
    const auto room = roomAirCaseFrom(
        R"({"room_m3": 36, "litres": 10, "litres_per_day": 0.75, "air_changes_per_h": 0.4})");
    ASSERT_TRUE(room);
    const json answer = json::parse(toJson(answered(*room)));
    EXPECT_EQ(answer.at("caution"), "leave");
    EXPECT_GT(answer.at("oxygen_ventilated_percent").get<double>(), 20.8);
    EXPECT_EQ(roomAirCaseFrom(R"({"room_m3": 36, "litres": 10, "litres_per_day": 1})").error().key,
              "air_changes_per_h");
}

TEST(LiveCellsCaseTest, isEmptyWithoutASource)
{
    const auto without = liveCellsCaseFrom(R"({"titre_per_dose": {"low": 3000, "high": 4000},
        "doses_in": 4000, "doses_out": 4000, "bath_min": 0, "bag_min": 60, "minimum_per_dose": 1000})");
    ASSERT_TRUE(without);
    EXPECT_EQ(toJson(*without), R"({"shown":false})");
    const auto with = liveCellsCaseFrom(R"({"titre_per_dose": {"low": 3000, "high": 4000},
        "doses_in": 4000, "doses_out": 4000, "bath_min": 0, "bag_min": 60, "minimum_per_dose": 1000,
        "bag_loss": {"half_life_h": {"low": 1, "high": 5}, "source": "a paper"}})");
    const json answer = json::parse(toJson(with.value()));
    EXPECT_EQ(answer.at("verdict"), "above");
    EXPECT_EQ(answer.at("bag_source"), "a paper");
    EXPECT_EQ(answer.at("indicative"), true);
}

TEST(ChartCaseTest, answers)
{
    const auto chart = chartCaseFrom(R"({"values": [10, 11, 10, 11, 10, 11, 30], "baseline": 6,
        "rules": ["1 beyond 3"], "limit": {"at": 20, "side": "upper"}})");
    ASSERT_TRUE(chart);
    const json answer = json::parse(toJson(answered(*chart)));
    EXPECT_EQ(answer.at("signals"), json::parse(R"([{"at": 6, "rule": "1 beyond 3"}])"));
    EXPECT_EQ(answer.at("wide_ranges"), json::parse("[6]"));
    EXPECT_NEAR(answer.at("capability").get<double>(), (20 - 10.5) / (3 / 1.128), 1e-12);
    EXPECT_EQ(chartCaseFrom(R"({"values": [1, 2], "baseline": 3})").error().key, "baseline");
    EXPECT_EQ(chartCaseFrom(R"({"values": [1, 2], "rules": ["odd"]})").error().key, "rules");
}

}  // namespace
}  // namespace bathside
