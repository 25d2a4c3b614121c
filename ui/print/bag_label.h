#pragma once

// What a bag's label says, from the state of the bench.

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/bench/state.h"

namespace bathside::ui {

struct BagLabel {
    struct Component {
        ComponentId id;
        std::vector<LotId> lots;  // more than one only where somebody erred
        int ampoules = 0;
        std::optional<std::int64_t> doses;  // none: not known for one of them
        friend bool operator==(const Component&, const Component&) = default;
    };

    BagId bag;
    MicroLitres volume;
    std::vector<Component> components;  // in the order in which they came into the bag
    std::optional<std::int64_t> doses;  // what the bag can give: the least of its components
    WallTime mixed{};
    WallTime useBy{};
    PersonId preparer;  // who said that it was mixed
    std::string zone;   // of the shift
    bool rehearsal = false;
    friend bool operator==(const BagLabel&, const BagLabel&) = default;
};

/// Doses in one ampoule of that lot; none: not known.
using DosesOf = std::function<std::optional<std::int64_t>(const ComponentId&, const LotId&)>;

/// None: there is no such bag, it is not mixed, or its card sets no limit of use.
[[nodiscard]] std::optional<BagLabel> bagLabel(const State& state, const BagId& bag,
                                               const DosesOf& dosesOf);
/// With the doses of the lots in the stores, else of the bag's card (core/day/ampoule_doses.h).
[[nodiscard]] std::optional<BagLabel> bagLabel(const State& state, const BagId& bag);

/// The label's code (core/scan/own_code.h), with the local day on which the bag was mixed.
[[nodiscard]] std::string codeOf(const BagLabel& label);

}  // namespace bathside::ui
