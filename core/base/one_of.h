#pragma once

// A value of one of many types whose construction is compiled once, not in every file that makes
// one.

#include <array>
#include <cstddef>
#include <type_traits>
#include <utility>
#include <variant>

namespace bathside {

/// Where T stands among the types of a variant; as many as it has where it is none of them.
template <typename T, typename Variant>
inline constexpr std::size_t kPlaceIn = 0;
template <typename T, typename... Ts>
inline constexpr std::size_t kPlaceIn<T, std::variant<Ts...>> = [] {
    std::size_t place = 0;
    static_cast<void>(((std::is_same_v<T, Ts> || (++place, false)) || ...));
    return place;
}();

template <typename T, typename Variant>
concept OneOf = kPlaceIn<T, Variant> < std::variant_size_v<Variant>;

/// The variant that takes over `value`, which is of the type at `place`.
template <typename... Ts>
[[nodiscard]] std::variant<Ts...> takenFrom(void* value, std::size_t place,
                                            std::type_identity<std::variant<Ts...>>)
{
    using Any = std::variant<Ts...>;
    static constexpr std::array<Any (*)(void*), sizeof...(Ts)> kTake{[](void* from) {
        return Any(std::in_place_type<Ts>, std::move(*static_cast<Ts*>(from)));
    }...};
    return kTake.at(place)(value);
}

}  // namespace bathside
