#include "ui/bench/bag_places.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "core/bench/next.h"
#include "ui/models/urgent.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct BagPlaceText {
    Q_DECLARE_TR_FUNCTIONS(BagPlaceText)
};

bool wasDownBefore(const Bag* bag, const Bag& next)
{
    return !bag || (bag->down && bag->down->moment.seq < next.started.seq);
}

/// Where a bag is that hangs nowhere.
QString standing(const Bag& bag)
{
    if (bag.line)
        return {};
    return bag.mixed ? BagPlaceText::tr("not hung") : BagPlaceText::tr("making up");
}

QString swirlText(const Bag& bag, const Stamp& now)
{
    const auto left = swirlLeft(bag, now);
    if (!left)
        return {};
    if (*left <= Micros::zero())
        return BagPlaceText::tr("swirl now");
    //: On a narrow tile: when the bag has to be swirled next; %1 is "8 min" or "45 s".
    return BagPlaceText::tr("swirl: %1").arg(ageText(*left));
}

const Ampoule* readyForBag(const Bench& bench)
{
    const Pull* pull = bench.openPull();
    if (!pull)
        return nullptr;
    const auto ready = std::ranges::find_if(pull->ampoules, [](const Ampoule& ampoule) {
        return ampoule.isOpen() && ampoule.reached() >= Step::Diluent;
    });
    return ready == pull->ampoules.end() ? nullptr : &*ready;
}

}  // namespace

std::vector<const Bag*> bagPlaces(const Bench& bench)
{
    std::vector<const Bag*> places;
    for (const Bag& bag : bench.bags) {
        const auto free = std::ranges::find_if(
            places, [&](const Bag* other) { return wasDownBefore(other, bag); });
        if (free == places.end())
            places.push_back(&bag);
        else
            *free = &bag;
    }
    for (const Bag*& place : places) {
        if (!place->isOpen())
            place = nullptr;
    }
    return places;
}

BagState bagState(const Bag& bag, const Alarms& due, const Stamp& now)
{
    BagState state;
    state.name = idText(bag.id);
    state.line = bag.line ? subjectText(subjectOf(*bag.line)) : QString();
    const auto level = worstFor(due, subjectOf(bag.id));
    state.role = bag.held() ? Role::Limit : bag.firstDiluent ? roleOf(level) : Role::Neutral;
    if (level)
        state.level = wordOf(*level);
    if (bag.held()) {
        //: On a bag's tile; %1 is why ("leak").
        state.left = BagPlaceText::tr("ON HOLD: %1").arg(wordOf(bag.held()->why));
        return state;
    }
    state.next = bag.line ? swirlText(bag, now) : standing(bag);
    const auto left = bagLeft(bag, now);
    if (!left) {
        state.left = std::exchange(state.next, {});
        return state;
    }
    state.left = left->time > Micros::zero() ? ageText(left->time) : u'+' + ageText(-left->time);
    const auto& limit = bag.card->limit(LimitName::InUse).time;
    const auto whole = static_cast<double>(limit.at->count());
    state.used =
        1.0 - static_cast<double>(std::chrono::duration_cast<Millis>(left->time).count()) / whole;
    if (limit.headsUp)
        state.headsUp = static_cast<double>(limit.headsUp->count()) / whole;
    return state;
}

std::optional<Intent> deedInWindow(const StationModel& model, const Bag& bag)
{
    const Bench& bench = model.bench();
    const auto beingMadeUp = std::ranges::count_if(bench.bags, &Bag::isBeingMadeUp);
    const Ampoule* ready = readyForBag(bench);
    if (bag.isBeingMadeUp() && beingMadeUp > 1 && ready)
        return MoveOn{Step::Bagged, {ready->ref.no}, bag.id};
    if (levelFor(model.alarms(), LimitName::Swirl, subjectOf(bag.id)))
        return SwirlBag{bag.id};
    return std::nullopt;
}

}  // namespace bathside::ui
