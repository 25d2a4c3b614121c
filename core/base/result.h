#pragma once

// How an expected failure travels: by value, with a typed reason.
//
// `Result<T, E>` holds a `T` or an `E`. `E` is an enum class or a small struct of facts, never a
// sentence for people: words live in ui/text, where they are translated. A broken precondition is
// not a Result; it is an assertion.

#include <expected>
#include <utility>

namespace bathside {

template <typename T, typename E>
using Result = std::expected<T, E>;

template <typename E>
[[nodiscard]] constexpr std::unexpected<E> failure(E reason)
{
    return std::unexpected<E>(std::move(reason));
}

}  // namespace bathside
