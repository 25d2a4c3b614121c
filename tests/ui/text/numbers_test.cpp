// Typed numbers: the locale's sign or a point, no group signs, no exponent; what is not sure is
// refused. (D1 of style: decimal signs are what users of such programs complain about most; common
// practice.)

#include "ui/text/numbers.h"

#include <gtest/gtest.h>

namespace bathside::ui {
namespace {

const QLocale kEnglish(QLocale::English), kSpanish(QLocale::Spanish);

struct Typed {
    const char* name;
    const char16_t* text;
    std::optional<double> english, spanish;
};

class Decimal : public testing::TestWithParam<Typed> {};

TEST_P(Decimal, isParsedAsTyped)
{
    const QString text = QString::fromUtf16(GetParam().text);
    EXPECT_EQ(parseDecimal(text, kEnglish), GetParam().english);
    EXPECT_EQ(parseDecimal(text, kSpanish), GetParam().spanish);
}

constexpr std::nullopt_t kNo = std::nullopt;
INSTANTIATE_TEST_SUITE_P(
    Rows, Decimal,
    testing::Values(Typed{"Whole", u"28", 28, 28}, Typed{"Point", u"28.1", 28.1, 28.1},
                    Typed{"Comma", u"28,1", kNo, 28.1}, Typed{"Spaces", u" 28.1 ", 28.1, 28.1},
                    Typed{"Negative", u"-4", -4, -4}, Typed{"Zero", u"0", 0, 0},
                    Typed{"GroupsAndComma", u"1.000,5", kNo, kNo},
                    Typed{"GroupsAndPoint", u"1,000.5", kNo, kNo},
                    Typed{"CommaThenThree", u"1,000", kNo, 1.0},
                    Typed{"TwoPoints", u"1.2.3", kNo, kNo}, Typed{"Exponent", u"1e3", kNo, kNo},
                    Typed{"Plus", u"+1", kNo, kNo}, Typed{"InnerSpace", u"1 000", kNo, kNo},
                    Typed{"Nothing", u"", kNo, kNo}, Typed{"SignAlone", u".", kNo, kNo},
                    Typed{"NoWhole", u".5", kNo, kNo}, Typed{"NoDecimals", u"5.", kNo, kNo},
                    Typed{"Letters", u"28 C", kNo, kNo}, Typed{"ArabicDigits", u"٢٨", kNo, kNo},
                    Typed{"Minus", u"-", kNo, kNo}, Typed{"TwoMinus", u"--1", kNo, kNo},
                    Typed{"Infinity", u"inf", kNo, kNo}, Typed{"Hex", u"0x1F", kNo, kNo}),
    [](const auto& test) { return test.param.name; });

TEST(ScaledTest, isExact)
{
    EXPECT_EQ(parseScaled(u"28.1", 3, kEnglish), 28100);
    EXPECT_EQ(parseScaled(u"28,1", 3, kSpanish), 28100);
    EXPECT_EQ(parseScaled(u"0.29", 2, kEnglish), 29);  // 0.29 × 100 is 28.999… in binary
    EXPECT_EQ(parseScaled(u"-0.5", 1, kEnglish), -5);
    EXPECT_EQ(parseScaled(u"7", 0, kEnglish), 7);
}

TEST(ScaledTest, refusesWhatItCannotHold)
{
    EXPECT_EQ(parseScaled(u"28.1234", 3, kEnglish), std::nullopt);
    EXPECT_EQ(parseScaled(u"7.5", 0, kEnglish), std::nullopt);
    EXPECT_EQ(parseScaled(u"99999999999999999999", 0, kEnglish), std::nullopt);
}

TEST(ScaledTest, isShownRoundedHalfAwayFromZero)
{
    EXPECT_EQ(scaledText(28149, 3, 1, kEnglish), QStringLiteral("28.1"));
    EXPECT_EQ(scaledText(28150, 3, 1, kEnglish), QStringLiteral("28.2"));
    EXPECT_EQ(scaledText(28150, 3, 1, kSpanish), QStringLiteral("28,2"));
    EXPECT_EQ(scaledText(-28150, 3, 1, kEnglish), QStringLiteral("−28.2"));
    EXPECT_EQ(scaledText(-49, 3, 1, kEnglish), QStringLiteral("0.0"));
    EXPECT_EQ(scaledText(5, 0, 1, kEnglish), QStringLiteral("5"));
    EXPECT_EQ(scaledText(1234567, 3, 3, kEnglish), QStringLiteral("1234.567"));
}

TEST(ScaledTest, whatIsShownInFullParsesBack)
{
    for (qint64 value = -2000; value <= 2000; value += 37)
        for (const QLocale& locale : {kEnglish, kSpanish})
            EXPECT_EQ(parseScaled(scaledText(value, 3, 3, locale).replace(u'−', u'-'), 3, locale),
                      value);
}

TEST(UnitsTest, quantitiesWithTheirUnit)
{
    QLocale::setDefault(kEnglish);
    EXPECT_EQ(temperatureText(MilliCelsius{28100}), QStringLiteral("28.1\u00a0°C"));
    EXPECT_EQ(temperatureText(MilliCelsius{28100}, MilliCelsius{200}),
              QStringLiteral("28.1\u00a0±\u00a00.2\u00a0°C"));
    EXPECT_EQ(temperatureText(MilliCelsius{28126}, MilliCelsius{18}),
              QStringLiteral("28.13\u00a0±\u00a00.02\u00a0°C"));  // not "± 0.0"
    EXPECT_EQ(temperatureText(MilliCelsius{28126}, MilliCelsius{0}),
              QStringLiteral("28.1\u00a0°C"));
    EXPECT_EQ(volumeText(MicroLitres{400000}), QStringLiteral("400\u00a0mL"));
    EXPECT_EQ(volumeText(MicroLitres{200}), QStringLiteral("0.2\u00a0mL"));
    EXPECT_EQ(volumeText(MicroLitres{5250}), QStringLiteral("5.25\u00a0mL"));
    EXPECT_EQ(volumeText(MicroLitres{0}), QStringLiteral("0\u00a0mL"));
    QLocale::setDefault(kSpanish);
    EXPECT_EQ(volumeText(MicroLitres{5250}), QStringLiteral("5,25\u00a0mL"));
    QLocale::setDefault(kEnglish);
}

}  // namespace
}  // namespace bathside::ui
