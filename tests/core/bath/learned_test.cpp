// What pulls teach of a bath, when it is believed, and the document that carries it.

#include "core/bath/learned.h"

#include <gtest/gtest.h>

#include "tests/support/cards.h"

namespace bathside {
namespace {

HeatRules usualHeat() { return test::defaultCard()->content().heat; }
AmpouleShape usualShape() { return thawSettingOf(usualHeat(), 0).shape; }

std::vector<LoggedThaw> openedAfter(std::initializer_list<double> seconds)
{
    std::vector<LoggedThaw> opens;
    for (const double each : seconds)
        opens.push_back({28, each, usualShape()});
    return opens;
}

/// Dips of that many °C, of three ampoules.
std::vector<LoggedDip> dipsBy(std::initializer_list<double> degrees)
{
    std::vector<LoggedDip> dips;
    for (const double each : degrees)
        dips.push_back({3, 28, 28 - each});
    return dips;
}

// Student's t at 2 and 5 degrees of freedom, from a printed table: 4.303 and 2.571. Dips of one
// size but for the scatter: the half interval of 1/mass is t s / √n of the mean, in its terms.
TEST(LearnedTest, aFigureIsUsedFromThreePullsThatAgreeToAQuarter)
{
    EXPECT_EQ(learnedMass(usualHeat(), dipsBy({0.5, 0.5}))->stand, FitStand::TooFew);
    EXPECT_EQ(learnedMass(usualHeat(), dipsBy({0.49, 0.5, 0.51}))->stand, FitStand::Used);
    EXPECT_EQ(learnedMass(usualHeat(), dipsBy({0.4, 0.5, 0.6}))->stand, FitStand::Scattered);
    EXPECT_EQ(learnedMass(usualHeat(), dipsBy({0.4, 0.5, 0.6, 0.4, 0.5, 0.6}))->stand,
              FitStand::Used);
    EXPECT_FALSE(learnedMass(usualHeat(), {}));
    EXPECT_FALSE(learnedMass(usualHeat(), dipsBy({-0.1, -0.1, -0.1})));  // it grew warmer
}

TEST(LearnedTest, aFilmThatWaterCannotHaveIsNotUsed)
{
    for (const double seconds : {60.0, 120.0, 1'100.0}) {
        const auto odd = learnedFilm(usualHeat(), openedAfter({seconds, seconds, seconds}));
        ASSERT_TRUE(odd);
        EXPECT_EQ(odd->stand, FitStand::Implausible) << seconds;
        EXPECT_EQ(heatWith(usualHeat(), {}, odd), usualHeat());
    }
    EXPECT_EQ(learnedFilm(usualHeat(), openedAfter({60, 60}))->stand, FitStand::TooFew);
}

TEST(LearnedTest, theIntervalIsStudentsTOnTheResiduals)
{
    const ThawSetting setting = thawSettingOf(usualHeat(), 28);
    const auto fit = fittedFilm(setting, openedAfter({78, 80, 82}));
    ASSERT_TRUE(fit && fit->interval);
    // By hand: residuals 2, 0, 2 s: s = 2 s; the mean of three is sure to 4.303 · 2 / √3 = 4.97 s.
    const auto secondsWith = [&](double film) {
        ThawSetting other = setting;
        other.film = film;
        return thawed(other).slush.value_or(0);
    };
    EXPECT_NEAR(*fit->sureTo, 4.97 / 80, 0.001);
    EXPECT_NEAR(secondsWith(fit->interval->low), 80 + 4.97, 2);  // the curve is bent
    EXPECT_NEAR(secondsWith(fit->interval->high), 80 - 4.97, 2);
    EXPECT_FALSE(fittedFilm(setting, openedAfter({80}))->interval);
}

TEST(LearnedTest, itsDocumentHasAllOfItAndReadsBack)
{
    const auto card = test::defaultCard();
    const BathLearned learned =
        learnedFrom(dipsBy({0.49, 0.5, 0.51}), openedAfter({74, 74.5, 73.5}), *card);
    ASSERT_TRUE(learned.cue);
    const auto again = bathLearnedFrom(documentOf(learned));
    ASSERT_TRUE(again) << again.error().key;
    EXPECT_EQ(documentOf(*again), documentOf(learned));
    EXPECT_EQ(again->card, card->hash());
    ASSERT_EQ(again->opens.size(), 3U);
    EXPECT_DOUBLE_EQ(again->opens[1].slush, 74.5);
    for (const std::int64_t bath : {20'000, 26'500, 28'000, 33'000, 40'000})
        EXPECT_NEAR(again->cue->at({bath}).value_or(0), learned.cue->at({bath}).value_or(1), 1e-3)
            << bath;
    EXPECT_FALSE(again->cue->at({19'000}));
}

// Two pulls that disagree: Student's t at one degree of freedom is 12.7, and no end is in sight.
TEST(LearnedTest, pullsThatDisagreeLeaveADocumentThatReads)
{
    const BathLearned learned =
        learnedFrom(dipsBy({0.001, 0.011}), openedAfter({98.876, 67.851}), *test::defaultCard());
    ASSERT_TRUE(learned.film && learned.film->interval);
    EXPECT_DOUBLE_EQ(learned.film->interval->low, kFilmRange.low);
    EXPECT_DOUBLE_EQ(learned.film->interval->high, kFilmRange.high);
    const auto again = bathLearnedFrom(documentOf(learned));
    ASSERT_TRUE(again) << again.error().key;
    EXPECT_EQ(again->opens.size(), 2U);
    EXPECT_EQ(again->dips.size(), 2U);

    BathLearned wide = learned;
    wide.mass = LearnedFigure{FitStand::TooFew, 2, 6, Interval{-1, 1e17}, 1e-6};
    EXPECT_TRUE(bathLearnedFrom(documentOf(wide)));
}

TEST(LearnedTest, tapsThatTellOfNoThawTeachNothing)
{
    const BathLearned learned =
        learnedFrom({}, openedAfter({0.0004, 80, 90'000}), *test::defaultCard());
    ASSERT_EQ(learned.opens.size(), 1U);
    EXPECT_DOUBLE_EQ(learned.opens.front().slush, 80);
    EXPECT_TRUE(bathLearnedFrom(documentOf(learned)));
}

TEST(LearnedTest, onlyTheLastPullsCount)
{
    std::vector<LoggedDip> dips(40, {3, 28, 27.5});
    dips.front().end = 20;
    const BathLearned learned = learnedFrom(dips, {}, *test::defaultCard());
    EXPECT_EQ(learned.dips.size(), kMostLearned);
    EXPECT_EQ(learned.mass->pulls, static_cast<int>(kMostLearned));
    EXPECT_FALSE(learned.film);
}

TEST(LearnedTest, aDamagedDocumentIsNamedByItsKey)
{
    EXPECT_EQ(bathLearnedFrom(R"({"card": "x", "dips": [{"ampoules": 0, "start_mc": 1,
        "end_mc": 1}], "opens": []})")
                  .error()
                  .key,
              "dips[0].ampoules");
    EXPECT_EQ(bathLearnedFrom(R"({"card": "x", "dips": [], "opens": [], "cue": {"usual_ms": 80000,
        "at": [{"bath_mc": 28000, "slush_ms": 80000}, {"bath_mc": 28000, "slush_ms": 80000}]}})")
                  .error()
                  .key,
              "cue.at[1].bath_mc");
}

}  // namespace
}  // namespace bathside
