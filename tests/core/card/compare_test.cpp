#include "core/card/compare.h"

#include <gtest/gtest.h>

#include "tests/support/cards.h"

namespace bathside {
namespace {

TEST(DifferencesTest, areNoneBetweenACardAndItself)
{
    EXPECT_TRUE(differences(*test::defaultCard(), *test::defaultCard()).empty());
}

TEST(DifferencesTest, nameEachKeyThatChangedCameOrWent)
{
    const auto after = test::cardWith(
        R"({"version": 2, "limits": {"thaw": {"at_ms": 91000}, "needle": {"overrun_birds": null}},
            "recipe": [{"component": "serotype 3", "thaw": {"at_ms": 85000}}, {"component": "serotype 1"}]})");
    const std::vector<CardDifference> expected{
        {"limits.needle.overrun_birds", "1200", std::nullopt},
        {"limits.thaw.at_ms", "90000", "91000"},
        {"recipe[0].thaw.at_ms", std::nullopt, "85000"},
        {"version", "1", "2"},
    };
    EXPECT_EQ(differences(*test::defaultCard(), *after), expected);
}

}  // namespace
}  // namespace bathside
