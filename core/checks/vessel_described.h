#pragma once

// A vessel as it is described by hand, figure by figure, and the document that the trail keeps of
// it (vessel_log.h).
//
// Whole numbers in small units, as they are typed.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/units.h"

namespace bathside {

struct VesselDescription {
    struct Row {
        std::int64_t millimetres = 0;
        std::int64_t decilitres = 0;
    };
    struct Room {
        std::int64_t cubicMetres = 0;
        std::int64_t tenthsOfAirChange = 0;  // an hour
    };

    std::string name;
    std::vector<Row> dipstick;
    std::int64_t minimumDecilitres = 0;
    MicroLitres usualPerDay{};
    std::optional<Room> room;
};

[[nodiscard]] std::string documentOf(const VesselDescription& vessel);

}  // namespace bathside
