#pragma once

// How much of a long search a test makes.

namespace bathside::test {

/// All of it where the build is optimised; a tenth under the sanitizers, which slow it twentyfold.
/// Label such a test `whole`: it then runs both ways.
template <typename Count>
[[nodiscard]] constexpr Count share(Count whole)
{
#ifdef BATHSIDE_SANITIZED
    return whole / 10;
#else
    return whole;
#endif
}

}  // namespace bathside::test
