#include "core/bath/probe_source.h"

#include <gtest/gtest.h>

#include "core/bath/probe.h"
#include "core/trail/whole_json.h"

namespace bathside {
namespace {

std::string with(const std::string& source)
{
    return R"({"resolution_uc": 62500, "drift_uc": 0, "points": [], "source": )" + source + "}";
}

std::string serial(const std::string& baud, const std::string& pattern,
                   const std::string& port = "/dev/ttyUSB0")
{
    return R"({"kind": "serial", "port": ")" + port + R"(", "baud": )" + baud +
           R"(, "pattern": ")" + pattern + R"(", "decimal": "comma", "shows": "pt100"})";
}

std::string thermistor(const std::string& coefficients)
{
    return R"({"kind": "serial", "port": "/dev/ttyUSB0", "baud": 9600, "pattern": "#",
               "decimal": "point", "shows": "ntc")" +
           coefficients + "}";
}

TEST(ProbeSourceTest, aDocumentWithoutOneIsReadByHandAndStaysAsItWas)
{
    const auto probe = probeFrom(R"({"resolution_uc": 1, "drift_uc": 0, "points": []})");
    ASSERT_TRUE(probe);
    EXPECT_EQ(probe->source, ProbeSource(ByHand{}));
    EXPECT_EQ(documentOf(*probe), R"({"drift_uc":0,"points":[],"resolution_uc":1})");
}

TEST(ProbeSourceTest, eachKindReadsBackWhatTheTrailKeeps)
{
    const ProbeSource all[] = {
        OneWire{"28-0000075f2b1c"},
        SerialLine{"/dev/ttyUSB0", 19'200, "T = # C", DecimalSign::Comma, LineUnit::Pt1000},
        SerialLine{.port = "/dev/ttyUSB0",
                   .pattern = "#",
                   .shows = LineUnit::Ntc,
                   .ntc = Thermistor{1.129148e-3, 2.34125e-4, 8.76741e-8}},
        OutOfUse{}};
    for (const ProbeSource& source : all) {
        Probe probe;
        probe.source = source;
        const std::string kept = documentOf(probe);
        EXPECT_TRUE(isPayload(kept)) << kept;  // canonical, and whole numbers only
        const auto again = probeFrom(kept);
        ASSERT_TRUE(again) << kept << again.error().key;
        EXPECT_EQ(again->source, source) << kept;
    }
}

TEST(ProbeSourceTest, aThermistorIsKeptToTheLastDigitOfItsCoefficients)
{
    const SerialLine line{.port = "/dev/ttyUSB0",
                          .pattern = "#",
                          .shows = LineUnit::Ntc,
                          .ntc = Thermistor{2.108508173e-3, 7.979204727e-5, 6.535076315e-7}};
    EXPECT_NE(documentOf(line).find(
                  R"("ntc":{"a":2108508173000000,"b":79792047270000,"c":653507631500},)"),
              std::string::npos)
        << documentOf(line);
    EXPECT_EQ(meaningOf(line), LineMeaning(*line.ntc));
}

struct SourceFault {
    const char* name;
    std::string source;
    const char* key;
};

class ProbeSourceFault : public testing::TestWithParam<SourceFault> {};

TEST_P(ProbeSourceFault, namesItsKey)
{
    const auto probe = probeFrom(with(GetParam().source));
    ASSERT_FALSE(probe);
    EXPECT_EQ(probe.error().key, GetParam().key);
}

INSTANTIATE_TEST_SUITE_P(
    Bath, ProbeSourceFault,
    testing::Values(SourceFault{"UnknownKind", R"({"kind": "radio"})", "source.kind"},
                    SourceFault{"NoDevice", R"({"kind": "one-wire"})", "source.device"},
                    SourceFault{"DeviceElsewhere", R"({"kind": "one-wire", "device": "../../x"})",
                                "source.device"},
                    SourceFault{"NoSuchSpeed", serial("9601", "#"), "source.baud"},
                    SourceFault{"NoNumber", serial("9600", "T = C"), "source.pattern"},
                    SourceFault{"PortFromNowhere", serial("9600", "#", "ttyUSB0"), "source.port"},
                    SourceFault{"NoCoefficients", thermistor(""), "source.ntc"},
                    SourceFault{"NoThermistor", thermistor(R"(, "ntc": {"a": 1, "b": 1, "c": 1})"),
                                "source.ntc.a"},
                    SourceFault{"CoefficientMissing", thermistor(R"(, "ntc": {"a": 1, "b": 1})"),
                                "source.ntc.c"},
                    SourceFault{"MoreThanAskedFor", R"({"kind": "hand", "device": "28-1"})",
                                "source.device"}),
    [](const auto& test) { return std::string(test.param.name); });

}  // namespace
}  // namespace bathside
