#include "core/bath/thaw_model.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/bath/heat_matter.h"
#include "core/bath/thaw_case.h"
#include "core/bath/thaw_fit.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

const AmpouleShape kSmall{0.01075, 0.0005, 2e-6};

ThawSetting settingAt(double bath, double film, int rings = 20)
{
    ThawSetting setting{kSmall, cryoprotected(), kCryogenCelsius, bath, film};
    setting.rings = rings;
    return setting;
}

double slushAt(double bath, double film, int rings = 20)
{
    return thawed(settingAt(bath, film, rings)).slush.value();
}

TEST(ThawMediumTest, risesStrictlyAndLosesItsIceByTheFreezingPoint)
{
    const ThawMedium medium = cryoprotected();
    for (std::size_t i = 1; i < medium.rows.size(); ++i) {
        ASSERT_LT(medium.rows[i - 1].celsius, medium.rows[i].celsius);
        ASSERT_LT(medium.rows[i - 1].enthalpy, medium.rows[i].enthalpy);
        ASSERT_GE(medium.rows[i - 1].ice, medium.rows[i].ice);
    }
    // by hand: at −36 °C a tenth of the water is left, so ice is 0.86 × 0.9 of the whole
    const auto near = std::ranges::find_if(
        medium.rows, [](const ThawRow& row) { return row.celsius > -37 && row.celsius < -35; });
    ASSERT_NE(near, medium.rows.end());
    EXPECT_NEAR(near->ice, 0.774, 0.004);
}

TEST(ThawModelTest, keepsTheHeat)
{
    const Thaw thaw = thawed(settingAt(28, 1900));
    EXPECT_NEAR(thaw.heatIn, thaw.heatKept, 1e-3 * thaw.heatIn);  // the spec's 0.1 %
}

// What went in until all is at the bath's temperature is what the medium's and the glass's enthalpy
// say, whatever the way there.
TEST(ThawModelTest, takesInAllInAllWhatTheEnthalpiesSay)
{
    ThawSetting setting = settingAt(28, 1900);
    const Thaw thaw = warmedFor(setting, 1'500);
    ASSERT_NEAR(thaw.course.back().centre, 28, 0.01);
    const double inner = kSmall.diameter / 2 - kSmall.wall;
    const double contents = 1'020 * std::numbers::pi * inner * inner;
    const double glass =
        2'230 * std::numbers::pi * (std::pow(kSmall.diameter / 2, 2) - inner * inner);
    const auto enthalpy = [&](double celsius) {
        const auto& rows = setting.contents.rows;
        std::size_t i = 1;
        while (rows[i].celsius < celsius)
            ++i;
        const double part =
            (celsius - rows[i - 1].celsius) / (rows[i].celsius - rows[i - 1].celsius);
        return rows[i - 1].enthalpy + part * (rows[i].enthalpy - rows[i - 1].enthalpy);
    };
    const double expected = contents * (enthalpy(28) - enthalpy(kCryogenCelsius)) +
                            glass * kGlassHeat * (28 - kCryogenCelsius);
    EXPECT_NEAR(thaw.heatIn, expected, 1e-3 * expected);
}

// Each halving of the rings changes the answer by less than the one before.
TEST(ThawModelTest, convergesWithFinerRings)
{
    const double five = slushAt(28, 1900, 5);
    const double ten = slushAt(28, 1900, 10);
    const double twenty = slushAt(28, 1900, 20);
    const double forty = slushAt(28, 1900, 40);
    EXPECT_LT(std::abs(twenty - ten), std::abs(ten - five));
    EXPECT_LT(std::abs(forty - twenty), std::abs(twenty - ten));
    EXPECT_NEAR(twenty, forty, 0.005 * forty);
}

TEST(ThawModelTest, isSoonerInAWarmerBathAndLaterInAThickerAmpoule)
{
    EXPECT_GT(slushAt(26, 1900), slushAt(28, 1900) + 1);
    EXPECT_GT(slushAt(28, 1900), slushAt(30, 1900) + 1);
    EXPECT_GT(slushAt(28, 1000), slushAt(28, 1900));
    ThawSetting thick = settingAt(28, 1900);
    thick.shape = {0.01475, 0.00055, 5e-6};
    EXPECT_GT(thawed(thick).slush.value(), 1.5 * slushAt(28, 1900));
    ThawSetting full = settingAt(28, 1900);
    full.shape.fill = 4e-6;
    EXPECT_GT(thawed(full).slush.value(), slushAt(28, 1900));
}

TEST(ThawModelTest, courseRunsFromAllIceToSlush)
{
    const Thaw thaw = thawed(settingAt(28, 1900));
    EXPECT_DOUBLE_EQ(thaw.course.front().ice, 1);
    EXPECT_NEAR(thaw.course.front().centre, kCryogenCelsius, 0.1);
    EXPECT_LE(thaw.course.back().ice, 0.05);
    for (std::size_t i = 1; i < thaw.course.size(); ++i) {
        EXPECT_LE(thaw.course[i].ice, thaw.course[i - 1].ice);
        EXPECT_GE(thaw.course[i].mean, thaw.course[i - 1].mean - 1e-9);
    }
}

TEST(ThawModelTest, givesUpAfterItsLongestTime)
{
    ThawSetting setting = settingAt(28, 60);
    setting.longest = 60;
    const Thaw thaw = thawed(setting);
    EXPECT_EQ(thaw.slush, std::nullopt);
    EXPECT_NEAR(thaw.course.back().seconds, 60, 1e-9);
}

TEST(FilmFitTest, findsTheFilmThatMadeTheTimes)
{
    std::vector<LoggedThaw> logs;
    for (const double bath : {26.0, 28.0, 30.0})
        logs.push_back({bath, slushAt(bath, 1500), kSmall});
    const auto fit = fittedFilm(settingAt(0, 0), logs);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->film, 1500, 0.005 * 1500);
    EXPECT_LT(fit->rms, 0.05);
}

TEST(FilmFitTest, refusesTimesThatNoWaterCanBringAbout)
{
    EXPECT_EQ(fittedFilm(settingAt(0, 0), {}).error(), FilmFault::NoData);
    EXPECT_EQ(fittedFilm(settingAt(0, 0), {{28, 20, kSmall}}).error(), FilmFault::TooFast);
    EXPECT_EQ(fittedFilm(settingAt(0, 0), {{28, 1100, {0.006, 0.0004, 5e-7}}}).error(),
              FilmFault::TooSlow);
}

// By hand: 90 s less 8 s of handling leaves 82 s.
TEST(SlushCueTest, isThePredictionButNeverTooLateForTheLimit)
{
    EXPECT_EQ(slushCue(76.5, 90s, 8s), 76'500ms);
    EXPECT_EQ(slushCue(84.2, 90s, 8s), 82s);
    EXPECT_EQ(slushCue(84.2, 5s, 8s), 0s);
}

constexpr const char* kThawCase =
    R"({"bath_c": 28, "ampoule": {"diameter_mm": 10.75, "wall_mm": 0.5, "fill_ml": 2},
    "limit_s": 90, "handling_s": 8, "logs": [{"bath_c": 28, "slush_s": 80}]})";

TEST(ThawCaseTest, fitsAndAnswers)
{
    const auto thaw = thawCaseFrom(kThawCase);
    ASSERT_TRUE(thaw);
    const ThawAnswer answer = answered(*thaw);
    EXPECT_NEAR(answer.slush.value(), 80, 0.1);
    EXPECT_TRUE(answer.beforeLimit);
    EXPECT_EQ(answer.cue, std::chrono::floor<Millis>(std::chrono::duration<double>(*answer.slush)));
    EXPECT_NE(toJson(answer).find("\"film_is_plausible\":true"), std::string::npos);
}

TEST(ThawCaseTest, namesTheKeyThatIsWrong)
{
    std::string text = kThawCase;
    text.replace(text.find("\"slush_s\": 80"), 13, "\"slush_s\": 15");
    EXPECT_EQ(thawCaseFrom(text).error().key, "logs");
    EXPECT_EQ(
        thawCaseFrom(R"({"bath_c": 28, "ampoule": {"diameter_mm": 10, "wall_mm": 2.9, "fill_ml": 2},
        "limit_s": 90, "film_w_m2k": 1900})")
            .error()
            .key,
        "ampoule.wall_mm");
    EXPECT_EQ(
        thawCaseFrom(R"({"bath_c": 28, "ampoule": {"diameter_mm": 10, "wall_mm": 0.5, "fill_ml": 2},
        "limit_s": 90})")
            .error()
            .key,
        "film_w_m2k");
}

}  // namespace
}  // namespace bathside
