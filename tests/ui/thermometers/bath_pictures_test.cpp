// What the charts are given: corrected values at their minutes, gaps, bands. Numbers by hand.

#include "ui/thermometers/bath_pictures.h"

#include <gtest/gtest.h>

#include "core/base/rfc3339.h"
#include "tests/support/cards.h"
#include "tests/ui/thermometers/thermo_stand.h"
#include "ui/text/language.h"
#include "ui/thermometers/probe_words.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

Stamp stamp(Millis at)
{
    return {.wall = *fromRfc3339("2026-03-05T07:10:00.000+01:00") + at,
            .boot = BootTime{at},
            .bootId = {}};
}

Probe wire()
{
    Probe probe{.id = {"W"},
                .name = {},
                .certificate = {},
                .calibrated = {},
                .due = {},
                .points = {{28, 28.1, 0.1}},
                .source = OneWire{"28-1"}};
    return probe;
}

RawReading reading(Millis at, std::variant<MilliCelsius, ReadingFault> value)
{
    return {{"W"}, stamp(at), value};
}

TEST(BathTrace, isCorrectedInMinutesBeforeNowAndBrokenAtFaultsAndGaps)
{
    Bench bench;
    const std::vector<RawReading> live{
        reading(0s, MilliCelsius{28'000}),   reading(10s, MilliCelsius{27'900}),
        reading(20s, ReadingFault::Lost),    reading(30s, MilliCelsius{27'800}),
        reading(180s, MilliCelsius{28'000}),
    };
    const auto trace = traceOf(bench, wire(), live, stamp(240s));
    ASSERT_EQ(trace.size(), 5U);
    EXPECT_NEAR(trace[0].minutes, -4, 1e-9);
    EXPECT_NEAR(*trace[0].celsius, 28.1, 1e-9);
    EXPECT_FALSE(trace[2].celsius);
    const ChartContent content = traceContent(bench, wire(), trace);
    ASSERT_EQ(content.lines.size(), 3);
    EXPECT_EQ(content.lines[0].points.size(), 2);
    EXPECT_EQ(content.across.low, -5);
}

// What the record calls no reading is not drawn as one.
TEST(BathTrace, isBrokenWhereWaterCannotBe)
{
    Bench bench;
    bench.card = test::defaultCard();
    const std::vector<RawReading> live{
        reading(0s, MilliCelsius{28'000}),
        reading(2s, MilliCelsius{150'000}),  // no water bath
        reading(4s, MilliCelsius{45'000}),   // faster than water
        reading(6s, MilliCelsius{28'100}),
    };
    const auto trace = traceOf(bench, wire(), live, stamp(10s));
    ASSERT_EQ(trace.size(), 4U);
    EXPECT_FALSE(trace[1].celsius);
    EXPECT_FALSE(trace[2].celsius);
    EXPECT_EQ(traceContent(bench, wire(), trace).lines.size(), 2);
}

TEST(BathTrace, widensForWhatIsFarFromTheTarget)
{
    Bench bench;
    const auto content = traceContent(bench, wire(), {{-1, 22.0}, {-0.5, 33.0}});
    EXPECT_LT(content.up.low, 22);
    EXPECT_GT(content.up.high, 33);
}

// Readings by hand are the shift's own, as far back as an hour.
TEST(BathTrace, byHandIsWhatIsOnRecord)
{
    Bench bench;
    Probe glass = wire();
    glass.source = ByHand{};
    bench.readings = {{stamp(0s),
                       {.probe = {"W"},
                        .raw = MilliCelsius{28'000},
                        .corrected = MilliCelsius{28'100},
                        .expanded = MilliCelsius{100},
                        .verdict = Verdict::Inside,
                        .fault = {}}},
                      {stamp(0s),
                       {.probe = {"other"},
                        .raw = MilliCelsius{20'000},
                        .corrected = MilliCelsius{20'000},
                        .expanded = MilliCelsius{100},
                        .verdict = Verdict::Outside,
                        .fault = {}}}};
    const auto trace = traceOf(bench, glass, {}, stamp(20min));
    ASSERT_EQ(trace.size(), 1U);
    EXPECT_NEAR(trace[0].minutes, -20, 1e-9);
    const auto content = traceContent(bench, glass, trace);
    EXPECT_EQ(content.across.low, -20);
    EXPECT_EQ(content.marks.size(), 1);
}

BathFits fitsWith(int massPulls, int filmPulls)
{
    BathFits fits;
    const auto stand = [](int pulls) {
        return pulls < kFewestPulls ? FitStand::TooFew : FitStand::Used;
    };
    if (massPulls > 0)
        fits.mass = FitOfPulls{
            LearnedFigure{stand(massPulls), massPulls, 8.44, Interval{8.1, 8.81}, 0}, 0.126};
    if (filmPulls > 0)
        fits.film = FitOfPulls{
            LearnedFigure{stand(filmPulls), filmPulls, 1'734.6, Interval{1'500, 2'000}, 0}, 4.26};
    return fits;
}

// 10 kg and 2,000 W/(m² K) are given, so that no card's figures are tested here.
HeatRules givenHeat()
{
    HeatRules heat;
    heat.waterGrams = 10'000;
    heat.film = 2'000;
    return heat;
}

class FitsText : public testing::Test {
protected:
    FitsText() { language.use(QStringLiteral("en")); }
    ~FitsText() override { language.use(QStringLiteral("en")); }
    Language language;
};

TEST_F(FitsText, saysNothingWithoutPulls) { EXPECT_EQ(fitsText({}, givenHeat()), QString()); }

TEST_F(FitsText, saysWhatOnePullShowsOfTheBath)
{
    EXPECT_EQ(fitsText(fitsWith(1, 0), givenHeat()),
              QStringLiteral("From 1 pull: the bath acts as 8.4 kg of water; the card's 10.0 kg "
                             "foresaw its dips to 0.13 °C. Used: the card's, as it takes three "
                             "pulls."));
}

TEST_F(FitsText, saysWhatSeveralPullsShowOfTheFilm)
{
    EXPECT_EQ(fitsText(fitsWith(0, 3), givenHeat()),
              QStringLiteral("From 3 pulls: opened as with 1,735 W/(m² K) or more; the card's "
                             "2,000 foresaw it to 4.3 s. Used from the next shift on."));
}

TEST_F(FitsText, saysWhatIsUsedWithItsInterval)
{
    EXPECT_TRUE(
        fitsText(fitsWith(4, 0), givenHeat()).endsWith(QStringLiteral("Used: 8.4 (8.1 to 8.8).")));
    BathFits fits = fitsWith(0, 5);
    fits.inCue = LearnedFigure{FitStand::Used, 4, 1'800, Interval{1'600, 2'100}, 0};
    EXPECT_TRUE(
        fitsText(fits, givenHeat()).endsWith(QStringLiteral("Used: 1,800 (1,600 to 2,100).")));
}

TEST_F(FitsText, setUpSaysWhichMassTheForecastGoesBy)
{
    BathLearned learned;
    EXPECT_EQ(bathLine(nullptr), QStringLiteral("and the bath"));
    learned.mass = LearnedFigure{FitStand::Scattered, 4, 8.44, {}, 0};
    EXPECT_EQ(bathLine(&learned), QStringLiteral("and the bath"));
    learned.mass->stand = FitStand::Used;
    EXPECT_EQ(bathLine(&learned), QStringLiteral("bath: 8.4 kg, fitted"));
}

TEST_F(FitsText, saysWhyAFigureIsNotUsed)
{
    BathFits fits = fitsWith(4, 4);
    fits.mass->figure.stand = FitStand::Scattered;
    fits.film->figure.stand = FitStand::Implausible;
    const QString text = fitsText(fits, givenHeat());
    EXPECT_TRUE(text.contains(QStringLiteral("the pulls do not agree"))) << text.toStdString();
    EXPECT_TRUE(text.endsWith(QStringLiteral("as water cannot do that."))) << text.toStdString();
}

TEST_F(FitsText, saysBothOneAfterTheOther)
{
    const QString both = fitsText(fitsWith(2, 2), givenHeat());
    EXPECT_TRUE(both.startsWith(fitsText(fitsWith(2, 0), givenHeat())));
    EXPECT_TRUE(both.endsWith(fitsText(fitsWith(0, 2), givenHeat())));
}

TEST_F(FitsText, isSpanishInSpanish)
{
    language.use(QStringLiteral("es"));
    const QString text = fitsText(fitsWith(1, 0), givenHeat());
    EXPECT_TRUE(text.contains(QStringLiteral("8,4"))) << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("From")));
}

TEST(ProbeWords, numbersHaveAsFewDecimalsAsTheyNeed)
{
    EXPECT_EQ(celsiusText(28), QStringLiteral("28"));
    EXPECT_EQ(celsiusText(28.1), QStringLiteral("28.1"));
    EXPECT_EQ(celsiusText(0.0625), QStringLiteral("0.063"));
    EXPECT_EQ(celsiusText(-0.05), QStringLiteral("−0.05"));
}

}  // namespace
}  // namespace bathside::ui
