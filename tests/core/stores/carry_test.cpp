#include "core/stores/carry.h"

#include <random>

#include <gtest/gtest.h>

#include "core/trail/whole_json.h"
#include "tests/core/stores/support.h"
#include "tests/support/shift.h"

namespace bathside::test {
namespace {

const auto kToday = onDay("2026-03-05");

TEST(CarryTest, whatIsCarriedIsWhatWasThere)
{
    Stores stores;
    tell(stores, ampoules("K07", 10));
    tell(stores, ampoules("K07", 2, "2027-01-31", kOtherCane));
    tell(stores, diluent("D1", 4));
    tell(stores, CaneExposed{kOtherCane, Millis(20'000)});
    tell(stores, LotQuarantined{diluentOf({400'000}, {"D1"}), {}, "leaking box"});

    const auto document = carried(stores, kToday);
    ASSERT_TRUE(document.has_value());
    EXPECT_TRUE(isPayload(document->text));
    const auto lots = lotsFrom(*document);
    ASSERT_EQ(lots.size(), 2U);
    const StockLot& lot = lots.at(ampoulesOf(kThree, {"K07"}));
    EXPECT_EQ(lot.places, stores.lot(lot.of)->places);
    EXPECT_EQ(lot.receipts, stores.lot(lot.of)->receipts);
    EXPECT_EQ(lot.flow.opening, 12);
    EXPECT_EQ(lot.flow.received, 0);
    EXPECT_EQ(lots.at(diluentOf({400'000}, {"D1"})).quarantine, "leaking box");
}

TEST(CarryTest, anEmptyLotStaysKnownUntilItExpires)
{
    Stores stores;
    tell(stores, ampoules("K07", 1, "2026-03-31"));
    tell(stores, AmpouleOut{{1, 1}, kThree, {"K07"}});

    EXPECT_TRUE(carried(stores, onDay("2026-03-31")).has_value());
    EXPECT_FALSE(carried(stores, onDay("2026-04-01")).has_value());
    EXPECT_FALSE(carried(Stores{}, kToday).has_value());
}

TEST(CarryTest, whatCannotBeReadIsNothing)
{
    EXPECT_TRUE(lotsFrom({"{}"}).empty());
    EXPECT_TRUE(lotsFrom({"no JSON"}).empty());
    EXPECT_TRUE(lotsFrom({R"({"lots":[{"kind":"ampoule","places":[]}]})"}).empty());
}

// The property that a restart rests on: the fold of the whole trail is the fold from the last
// opening (with the cards before it).
State fromLastOpening(const std::vector<Event>& events)
{
    std::size_t opening = 0;
    for (std::size_t i = 0; i < events.size(); ++i) {
        if (std::holds_alternative<ShiftOpened>(events[i].fact))
            opening = i;
    }
    const auto at = events.begin() + static_cast<std::ptrdiff_t>(opening);
    std::vector<Event> cards;
    std::copy_if(events.begin(), at, std::back_inserter(cards), [](const Event& event) {
        return std::holds_alternative<CardAdopted>(event.fact);
    });
    return restored(cards, {at, events.end()});
}

// Anything a person may say of the stores, whether it is taken or not.
Intent anything(std::mt19937& random)
{
    const auto below = [&](unsigned bound) { return static_cast<std::int64_t>(random() % bound); };
    const std::string lot = "K0" + std::to_string(below(3));
    const std::string place = below(2) == 0 ? kCane : kOtherCane;
    const Stock of = ampoulesOf(kThree, {lot});
    const std::int64_t count = 1 + below(4);
    switch (below(9)) {
        case 0:
        case 1: {
            StoreReceived line = ampoules(lot, count, "2026-03-07", place);
            return Receive{{line}};
        }
        case 2:
            return MoveStock{of, kCane, kOtherCane, count};
        case 3:
            return CountStock{of, place, count};
        case 4:
            return DiscardStock{of, place, count, DiscardReason::Broken};
        case 5:
            return QuarantineLot{of, {}, "certificate missing"};
        case 6:
            return ReleaseLot{of, {"EF"}, "certificate seen"};
        case 7:
            return ExposeCane{place, Millis(20'000)};
        default:
            return TakeOut{{{0, kThree, {lot}}}};
    }
}

TEST(CarryTest, theWholeTrailGivesTheSameAsTheLastShift)
{
    for (unsigned seed = 1; seed <= 30; ++seed) {
        std::mt19937 random(seed);
        BenchShift shift;
        double at = 1;
        for (int day = 0; day < 3; ++day) {
            shift.at(at += 86'400).say(OpenShift{"UTC", {"AB"}});
            for (int i = 0; i < 25; ++i)
                (void)shift.at(at += 7).attempt(anything(random));
            while (shift.bench().openPull())
                shift.at(at += 5).say(LoseAmpoule{
                    std::ranges::find_if(shift.bench().pulls.back().ampoules, &Ampoule::isOpen)
                        ->ref.no,
                    LossReason::Dropped});
            shift.at(at += 60).say(CloseShift{});
        }
        const State whole = restored({}, shift.recorder.events);
        EXPECT_EQ(whole.bench.stores, shift.bench().stores) << "seed " << seed;
        EXPECT_EQ(fromLastOpening(shift.recorder.events).bench.stores, shift.bench().stores)
            << "seed " << seed;
    }
}

}  // namespace
}  // namespace bathside::test
