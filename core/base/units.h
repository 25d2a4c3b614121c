#pragma once

// Quantities in whole small units, as the trail stores them.

#include <compare>
#include <cstdint>

namespace bathside {

template <typename Tag>
struct Quantity {
    std::int64_t count = 0;

    friend constexpr auto operator<=>(const Quantity&, const Quantity&) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.count + b.count}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.count - b.count}; }
};

using MicroLitres = Quantity<struct MicroLitreTag>;
using MilliCelsius = Quantity<struct MilliCelsiusTag>;  // a temperature or a difference of two

}  // namespace bathside
