#pragma once

// Names of things: text that cannot be mixed up with other text.
//
// Ids come from people (initials, lines), labels (lots, bags) or the program (taps). They are
// compared byte by byte and never parsed.

#include <compare>
#include <cstdint>
#include <string>

namespace bathside {

template <typename Tag>
struct Id {
    std::string text;

    [[nodiscard]] bool empty() const noexcept { return text.empty(); }
    friend auto operator<=>(const Id&, const Id&) = default;
};

using BagId = Id<struct BagTag>;
using CheckId = Id<struct CheckTag>;
using ComponentId = Id<struct ComponentTag>;  // one part of the recipe, by its trade name
using LineId = Id<struct LineTag>;
using LotId = Id<struct LotTag>;
using PersonId = Id<struct PersonTag>;  // initials
using ProbeId = Id<struct ProbeTag>;
using StationId = Id<struct StationTag>;
using VesselId = Id<struct VesselTag>;
using TapId = Id<struct TapTag>;      // made before the commit; one for all events of one tap
using PlaceId = Id<struct PlaceTag>;  // where on the screen (or in a script) a tap landed
using CardHash = Id<struct CardTag>;  // SHA-256 of the card's canonical text, 64 hex digits

/// Place of an event in the trail: 1, 2, 3 … without a gap. 0 means none.
using Seq = std::int64_t;

/// An ampoule by its pull (numbered within the shift) and its number within the pull, both from 1.
struct AmpouleRef {
    int pull = 0;
    int no = 0;

    friend auto operator<=>(const AmpouleRef&, const AmpouleRef&) = default;
};

}  // namespace bathside
