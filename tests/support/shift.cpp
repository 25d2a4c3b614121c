#include "tests/support/shift.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/base/rfc3339.h"

namespace bathside::test {
namespace {

const WallTime kStart = *fromRfc3339("2026-03-05T06:00:00.000Z");

std::function<TapId()> numbered()
{
    return [count = 0]() mutable { return TapId{"tap-" + std::to_string(++count)}; };
}

}  // namespace

BenchShift::BenchShift(const std::shared_ptr<const Card>& card)
    : clock(kStart), station(State{}, clock, recorder, numbered())
{
    say(StartStation{
        .version = "test", .head = {}, .rehearsal = false, .synchronised = true, .offset = {}});
    say(AdoptCard{card->document()});
}

BenchShift& BenchShift::open()
{
    say(OpenShift{"Europe/Amsterdam", {"AB"}});
    for (const Check& check : bench().card->content().checks)
        say(RecordCheck{check.id, true, {}});
    say(ProveSound{"test"});
    return *this;
}

BenchShift& BenchShift::readyBag(const std::string& bag)
{
    say(StartBag{{bag}, {400'000}, {"D1"}, MilliCelsius{22'000}});
    say(InspectBag{BagId{bag}, true});
    say(DrawDiluent{BagId{bag}, {}});
    return *this;
}

BenchShift& BenchShift::madeUp(const std::string& bag, double start)
{
    at(start);
    say(TakeReading{{"hand"}, MilliCelsius{28'000}});
    readyBag(bag);
    say(TakeOut{{{0, {"serotype 3"}, {"K1"}}, {0, {"serotype 1"}, {"R1"}}}});
    at(start + 5);
    say(moved(Step::Bath));
    at(start + 82);
    say(moved(Step::Opened));
    at(start + 87);
    say(moved(Step::Diluent));
    at(start + 100);
    say(moved(Step::Rinsed));
    say(moved(Step::Bagged));
    at(start + 115);
    say(MixBag{BagId{bag}});
    return *this;
}

BenchShift& BenchShift::at(double seconds)
{
    const auto target = std::chrono::hours(1) + Micros(std::llround(seconds * 1e6));
    while (station.nextChange() && *station.nextChange() <= target) {
        clock.runTo(*station.nextChange());
        station.tick();
    }
    clock.runTo(target);
    return *this;
}

Taken BenchShift::say(const Intent& intent)
{
    const auto taken = attempt(intent);
    EXPECT_TRUE(taken) << nameOf(intent) << " refused: " << nameOf(taken.error().code) << " "
                       << taken.error().detail;
    return taken.value_or(Taken{});
}

Result<Taken, Refusal> BenchShift::attempt(const Intent& intent, const std::string& place)
{
    const PlaceId where{place.empty() ? "place " + std::to_string(++m_places) : place};
    return station.handle(
        intent, TapInput{.place = where, .at = clock.now(), .byReceipt = false, .id = {}});
}

RefusalCode BenchShift::refused(const Intent& intent)
{
    const auto taken = attempt(intent);
    EXPECT_FALSE(taken) << nameOf(intent) << " was taken";
    return taken ? RefusalCode{} : taken.error().code;
}

std::vector<std::string> BenchShift::kindsFrom(Seq seq) const
{
    std::vector<std::string> kinds;
    for (const Event& event : recorder.events) {
        const bool alarm = kindOf(event.fact).starts_with("alarm.");
        if (event.seq >= seq && !alarm)
            kinds.emplace_back(kindOf(event.fact));
    }
    return kinds;
}

std::string BenchShift::text(double seconds) const
{
    return toRfc3339(kStart + Millis(std::llround(seconds * 1e3)));
}

TakeOut out(std::initializer_list<int> numbers)
{
    TakeOut taken;
    for (const int no : numbers)
        taken.ampoules.push_back({no, {}, {}});
    return taken;
}

MoveOn moved(Step step, std::initializer_list<int> numbers)
{
    return {.step = step, .ampoules = numbers, .bag = {}};
}

}  // namespace bathside::test
