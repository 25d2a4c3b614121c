#pragma once

// What in the stores is meant: ampoules of one lot, diluent bags of one lot and volume, or a
// consumable. Where it stands is text in parts from the outside in, joined by " / " ("vessel 1 /
// canister 2 / cane 5"); a comma parts it, too, and capitals do not count. (Spec: the job, 2.2.)

#include <compare>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/ids.h"
#include "core/base/units.h"
#include "core/facts/words.h"

namespace bathside {

struct Stock {
    StockKind kind{};
    std::string item;  // an ampoule's component, a consumable's name; empty for diluent
    LotId lot;         // may be empty for a consumable
    std::optional<MicroLitres> volume;  // diluent only: of a full bag

    friend auto operator<=>(const Stock&, const Stock&) = default;

    template <typename Self, typename See>
    static void members(Self& self, See&& see)
    {
        see("kind", self.kind);
        see("item", self.item);
        see("lot", self.lot);
        see("volume_ul", self.volume);
    }
};

[[nodiscard]] Stock ampoulesOf(const ComponentId& component, const LotId& lot);
[[nodiscard]] Stock diluentOf(MicroLitres volume, const LotId& lot);

/// The parts joined, empty ones left out.
[[nodiscard]] std::string placeText(const std::string& vessel, const std::string& canister,
                                    const std::string& cane);
/// Whether `inner` is `outer` or lies in it; nothing lies in a place without a name.
[[nodiscard]] bool liesIn(std::string_view inner, std::string_view outer);

}  // namespace bathside
