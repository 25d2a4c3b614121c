// What takes long, on its own thread: asking returns before the answer is there, and the answer is
// what the same reckoning gives here.

#include "ui/thermometers/bath_reckoner.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

#include "tests/support/cards.h"

namespace bathside::ui {
namespace {

constexpr int kLongestWaitMs = 60'000;  // a test that fails, not a figure

State stateOf(const std::shared_ptr<const Card>& card)
{
    State state;
    state.bench.card = card;
    return state;
}

TEST(BathReckonerTest, answersLaterAndAsTheModelDoes)
{
    BathReckoner reckoner;
    QSignalSpy answers(&reckoner, &BathReckoner::reckoned);
    const State state = stateOf(test::defaultCard());
    reckoner.reckon(state);
    EXPECT_TRUE(reckoner.isBusy());
    EXPECT_FALSE(reckoner.last());  // told by an event only, and none was handled yet
    ASSERT_TRUE(answers.wait(kLongestWaitMs));
    EXPECT_FALSE(reckoner.isBusy());
    ASSERT_TRUE(reckoner.last());
    EXPECT_EQ(reckoner.last()->of, state.bench.card->hash());
    EXPECT_FALSE(reckoner.last()->fits.film);
    const auto here = slushCurve(state.bench.card->content().heat);
    ASSERT_EQ(reckoner.last()->curve.size(), here.size());
    for (std::size_t i = 0; i < here.size(); ++i)
        EXPECT_DOUBLE_EQ(reckoner.last()->curve[i].seconds, here[i].seconds);
}

TEST(BathReckonerTest, whatWasAskedForLastIsWhatIsAnswered)
{
    BathReckoner reckoner;
    QSignalSpy answers(&reckoner, &BathReckoner::reckoned);
    const auto thin = test::cardWith(R"({"heat": {"diameter_um": 10000, "source": "a rule"}})");
    reckoner.reckon(stateOf(test::defaultCard()));
    reckoner.reckon(stateOf(thin));
    ASSERT_TRUE(answers.wait(kLongestWaitMs));
    EXPECT_EQ(answers.count(), 1);
    EXPECT_EQ(reckoner.last()->of, thin->hash());
    EXPECT_FALSE(reckoner.isBusy());
}

TEST(BathReckonerTest, endingWhileItReckonsWaitsForIt)
{
    BathReckoner reckoner;
    reckoner.reckon(stateOf(test::defaultCard()));
}

}  // namespace
}  // namespace bathside::ui
