#include "ui/print/bag_label.h"

#include <algorithm>

#include "core/day/ampoule_doses.h"
#include "core/scan/own_code.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

using Components = std::vector<BagLabel::Component>;

BagLabel::Component& componentOf(Components& components, const ComponentId& id)
{
    const auto found = std::ranges::find(components, id, &BagLabel::Component::id);
    if (found != components.end())
        return *found;
    return components.emplace_back(BagLabel::Component{id, {}, 0, 0});
}

void add(Components& components, const Ampoule& ampoule, const DosesOf& dosesOf)
{
    BagLabel::Component& component = componentOf(components, ampoule.component);
    ++component.ampoules;
    if (std::ranges::find(component.lots, ampoule.lot) == component.lots.end())
        component.lots.push_back(ampoule.lot);
    const auto doses = dosesOf(ampoule.component, ampoule.lot);
    component.doses =
        component.doses && doses ? std::optional(*component.doses + *doses) : std::nullopt;
}

Components componentsOf(const Bench& bench, const BagId& bag, const DosesOf& dosesOf)
{
    Components components;
    for (const Pull& pull : bench.pulls)
        for (const Ampoule& ampoule : pull.ampoules)
            if (ampoule.bag == bag)
                add(components, ampoule, dosesOf);
    return components;
}

std::optional<std::int64_t> leastOf(const Components& components)
{
    std::optional<std::int64_t> least;
    for (const BagLabel::Component& component : components) {
        if (!component.doses)
            return std::nullopt;
        least = std::min(least.value_or(*component.doses), *component.doses);
    }
    return least;
}

PersonId preparerOf(const State& state, const Moment& mixed)
{
    const Event* event = eventAt(state, mixed.seq);
    if (event != nullptr && event->person)
        return event->person->id;
    return state.bench.onDuty ? state.bench.onDuty->id : PersonId{};
}

}  // namespace

std::optional<BagLabel> bagLabel(const State& state, const BagId& id, const DosesOf& dosesOf)
{
    const Bag* bag = state.bench.bag(id);
    if (bag == nullptr || !bag->mixed || !bag->firstDiluent || !state.bench.shift)
        return std::nullopt;
    const auto limit = bag->card->limit(LimitName::InUse).time.at;
    if (!limit)
        return std::nullopt;
    BagLabel label;
    label.bag = id;
    label.volume = bag->volume;
    label.components = componentsOf(state.bench, id, dosesOf);
    label.doses = leastOf(label.components);
    label.mixed = bag->mixed->at.wall;
    label.useBy = bag->firstDiluent->at.wall + *limit;
    label.preparer = preparerOf(state, *bag->mixed);
    label.zone = state.bench.shift->zone;
    label.rehearsal = state.bench.rehearsal;
    return label;
}

std::optional<BagLabel> bagLabel(const State& state, const BagId& id)
{
    const Bag* bag = state.bench.bag(id);
    if (bag == nullptr)
        return std::nullopt;
    return bagLabel(state, id, [&](const ComponentId& component, const LotId& lot) {
        const PlanRules& rules = bag->card->content().plan;
        return std::optional(ampouleDoses(state.bench.stores, rules, component, lot));
    });
}

std::string codeOf(const BagLabel& label)
{
    return textOf(BagCode{label.bag, localDay(label.mixed, label.zone)});
}

}  // namespace bathside::ui
