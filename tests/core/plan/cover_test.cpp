#include "core/plan/cover.h"

#include <algorithm>
#include <random>

#include <gtest/gtest.h>

namespace bathside::plan {
namespace {

std::vector<Way> randomBags(std::mt19937& random)
{
    std::vector<Way> bags(1 + random() % 4);
    for (Way& bag : bags)
        bag = {{static_cast<Count>(1 + random() % 9), 1, static_cast<Count>(random() % 5)},
               static_cast<Count>(random() % 12)};
    return bags;
}

/// Bird by bird: the least cost of at least so many, with any number of each bag.
std::vector<std::optional<Cost>> birdByBird(const std::vector<Way>& bags, Count birds)
{
    std::vector<std::optional<Cost>> least{Cost{}};
    for (Count n = 1; n <= birds; ++n) {
        least.emplace_back();
        for (const Way& bag : bags) {
            const auto& before = least[static_cast<std::size_t>(std::max<Count>(n - bag.birds, 0))];
            if (bag.birds > 0 && before && (!least.back() || *before + bag.cost < *least.back()))
                least.back() = *before + bag.cost;
        }
    }
    return least;
}

TEST(CoverTest, isTheKnapsackBirdByBird)
{
    std::mt19937 random(1);
    for (int round = 0; round < 500; ++round) {
        const auto bags = randomBags(random);
        const auto expected = birdByBird(bags, 60);
        Cover cover(bags);
        for (const Count birds : {60, 0, 17, 1, 59})
            ASSERT_EQ(cover.least(birds), expected[static_cast<std::size_t>(birds)]) << round;
    }
}

void countUp(const std::vector<Way>& bags, const std::vector<Count>& counts, std::size_t at,
             const Way& soFar, Count birds, std::optional<Cost>& least)
{
    if (soFar.birds >= birds && (!least || soFar.cost < *least))
        least = soFar.cost;
    if (at == bags.size())
        return;
    Way way = soFar;
    for (Count some = 0; some <= counts[at]; ++some, way = way + bags[at])
        countUp(bags, counts, at + 1, way, birds, least);
}

TEST(CoverTest, keepsToTheBagsThereAre)
{
    std::mt19937 random(2);
    for (int round = 0; round < 500; ++round) {
        const auto bags = randomBags(random);
        std::vector<Count> counts;
        Ways ways{{}};
        for (const Way& bag : bags) {
            counts.push_back(static_cast<Count>(random() % 6));
            ways = withBags(std::move(ways), bag, counts.back(), 30);
        }
        for (const Count birds : {30, 29, 11, 1, 0}) {
            std::optional<Cost> least;
            countUp(bags, counts, 0, {}, birds, least);
            ASSERT_EQ(leastOf(ways, birds), least) << round;
        }
    }
}

}  // namespace
}  // namespace bathside::plan
