#include "ui/models/lanes.h"

#include <algorithm>
#include <array>

#include "ui/models/urgent.h"

namespace bathside::ui {
namespace {

using Places = std::array<const Ampoule*, PullDraft::kMost>;

Seq outOf(const Ampoule& ampoule)
{
    const auto& out = ampoule.when(Step::Out);
    return out ? out->seq : 0;
}

/// The event that ended it; none while it is open.
std::optional<Seq> endOf(const Ampoule& ampoule)
{
    if (ampoule.lost)
        return ampoule.lost->moment.seq;
    if (ampoule.bag && ampoule.when(Step::Bagged))
        return ampoule.when(Step::Bagged)->seq;
    return std::nullopt;
}

bool hadEndedBefore(const Ampoule& ampoule, Seq seq)
{
    const auto end = endOf(ampoule);
    return end && *end < seq;
}

Places placesOf(const Pull& pull)
{
    Places places{};
    for (const Ampoule& ampoule : pull.ampoules) {
        auto place = std::find(places.begin(), places.end(), nullptr);
        if (place == places.end()) {
            place = std::find_if(places.begin(), places.end(), [&](const Ampoule* other) {
                return hadEndedBefore(*other, outOf(ampoule));
            });
        }
        if (place == places.end()) {
            place = std::find_if(places.begin(), places.end(),
                                 [](const Ampoule* other) { return !other->isOpen(); });
        }
        if (place != places.end())
            *place = &ampoule;
    }
    return places;
}

Lane laneOf(const Bench& bench, const Ampoule& ampoule, const Alarms& due, const Stamp& now)
{
    Lane lane;
    lane.kind = ampoule.lost  ? Lane::Kind::Lost
                : ampoule.bag ? Lane::Kind::InBag
                              : Lane::Kind::Running;
    lane.ampoule = ampoule.ref;
    lane.component = ampoule.component;
    lane.lot = ampoule.lot;
    lane.reached = ampoule.reached();
    lane.next = nextStep(ampoule);
    lane.countdown = countdown(bench, ampoule, now);
    lane.level = worstFor(due, subjectOf(ampoule.ref));
    if (ampoule.lost)
        lane.lost = ampoule.lost->why;
    lane.bag = ampoule.bag;
    return lane;
}

}  // namespace

const Pull* pullInHand(const Bench& bench, const Stamp& now)
{
    if (const Pull* open = bench.openPull())
        return open;
    if (bench.pulls.empty() || !inCriticalWindow(bench, now))
        return nullptr;
    return &bench.pulls.back();
}

std::vector<Lane> lanes(const Bench& bench, const PullDraft& draft, const Alarms& due,
                        const Stamp& now)
{
    std::vector<Lane> shown(PullDraft::kMost);
    if (const Pull* pull = pullInHand(bench, now)) {
        const Places places = placesOf(*pull);
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (places[i])
                shown[i] = laneOf(bench, *places[i], due, now);
        }
    }
    std::size_t planned = 0;
    for (Lane& lane : shown) {
        if (lane.kind != Lane::Kind::Free || planned >= draft.ampoules().size())
            continue;
        const AmpouleTaken& ampoule = draft.ampoules()[planned];
        lane = {.kind = Lane::Kind::Planned,
                .planned = planned,
                .ampoule = {},
                .component = ampoule.component,
                .lot = ampoule.lot,
                .reached = {},
                .next = Step::Out,
                .countdown = {},
                .level = {},
                .lost = {},
                .bag = {}};
        ++planned;
    }
    return shown;
}

int ampoulesWithoutLane(const Bench& bench, const Stamp& now)
{
    const Pull* pull = pullInHand(bench, now);
    if (!pull)
        return 0;
    const Places places = placesOf(*pull);
    return static_cast<int>(
        std::count_if(pull->ampoules.begin(), pull->ampoules.end(), [&](const Ampoule& ampoule) {
            return ampoule.isOpen() &&
                   std::find(places.begin(), places.end(), &ampoule) == places.end();
        }));
}

}  // namespace bathside::ui
