// Any bytes are a temperature that the sensor can measure, or a fault.

#include <cstdlib>
#include <string_view>

#include "core/bath/w1_text.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace bathside;
    const auto read = readW1({reinterpret_cast<const char*>(data), size});
    if (const auto* value = std::get_if<MilliCelsius>(&read))
        if (value->count < -55'000 || value->count > 125'000 || value->count == 85'000)
            std::abort();
    return 0;
}
