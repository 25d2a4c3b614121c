#include "core/card/card.h"

#include <gtest/gtest.h>

#include "tests/support/cards.h"

namespace bathside {
namespace {

TEST(WordsTest, fallBackToEnglish)
{
    const Words words{{{"en", "Swirl"}, {"es", "Remueva"}}};
    EXPECT_EQ(words.in("es"), "Remueva");
    EXPECT_EQ(words.in("fr"), "Swirl");
    EXPECT_EQ(Words().in("en"), "");
}

TEST(CardTest, judgesAComponentByItsOwnTimesWhereItHasThem)
{
    const auto card = test::cardWith(
        R"({"recipe": [{"component": "a", "thaw": {"at_ms": 60000}},
                       {"component": "b", "exposure": {"heads_up_ms": 1, "at_ms": 2, "overrun_ms": 3}}]})");
    const Thresholds<Millis> own{{}, Millis(60'000), {}};
    const Thresholds<Millis> all{Millis(1), Millis(2), Millis(3)};
    EXPECT_EQ(card->timesFor(LimitName::Thaw, {"a"}), own);
    EXPECT_EQ(card->timesFor(LimitName::Exposure, {"a"}), card->limit(LimitName::Exposure).time);
    EXPECT_EQ(card->timesFor(LimitName::Exposure, {"b"}), all);
    EXPECT_EQ(card->timesFor(LimitName::Thaw, {"b"}), card->limit(LimitName::Thaw).time);
    EXPECT_EQ(card->timesFor(LimitName::Thaw, {"c"}), card->limit(LimitName::Thaw).time);
    EXPECT_EQ(card->timesFor(LimitName::InUse, {"a"}), card->limit(LimitName::InUse).time);
}

TEST(CardTest, keepsWhereItsValuesComeFrom)
{
    const auto& content = test::defaultCard()->content();
    EXPECT_EQ(content.sources.size(), 4U);
    EXPECT_EQ(content.sources.at("diluent"), "from memory");
}

}  // namespace
}  // namespace bathside
