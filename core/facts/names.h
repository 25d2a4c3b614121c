#pragma once

// The word an enumerator has in the trail, on cards and in scripts. Words once released never
// change.
//
// `Names<E>::all` lists them in the order of the enumerators, which count from 0 without a gap.

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace bathside {

template <typename E>
struct Names;

template <typename E>
[[nodiscard]] constexpr std::string_view nameOf(E value)
{
    return Names<E>::all.at(static_cast<std::size_t>(value));
}

template <typename E>
[[nodiscard]] constexpr std::optional<E> named(std::string_view name)
{
    const auto& all = Names<E>::all;
    const auto found = std::find(all.begin(), all.end(), name);
    if (found == all.end())
        return std::nullopt;
    return static_cast<E>(found - all.begin());
}

}  // namespace bathside
