#pragma once

// How bad it is: three levels, told apart by rhythm, pitch, shape, word and colour (spec of
// alarms).

#include <cstddef>
#include <cstdint>

namespace bathside {

enum class Level : std::uint8_t {
    HeadsUp,  // a limit is near
    Limit,    // it is passed now
    Overrun,  // it was passed and still nobody acted; repeats until somebody does
};

[[nodiscard]] constexpr std::size_t indexOf(Level level) { return static_cast<std::size_t>(level); }

}  // namespace bathside
