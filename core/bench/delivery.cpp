#include "core/bench/delivery.h"

namespace bathside {

Intake intakeFor(const Bench& bench, std::string_view csv)
{
    std::vector<ComponentId> components;
    if (bench.card) {
        for (const Component& part : bench.card->content().recipe)
            components.push_back(part.id);
    }
    return intakeFrom(csv, bench.stores, components);
}

Receive deliveryOf(const Intake& intake)
{
    Receive delivery;
    for (const IntakeLine& line : intake.taken)
        delivery.lines.push_back(line.received);
    return delivery;
}

}  // namespace bathside
