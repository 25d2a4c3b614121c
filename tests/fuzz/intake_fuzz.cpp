// Any bytes are a delivery or its faults; what is taken may be received, and once only.

#include <cstdlib>
#include <string_view>

#include "core/stores/intake.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace bathside;
    const std::string_view text{reinterpret_cast<const char*>(data), size};
    const Intake found = intakeFrom(text, {}, {});
    Stores stores;
    for (const IntakeLine& line : found.taken) {
        if (faultOf(line.received, stores))
            std::abort();
        Event event;
        event.fact = line.received;
        evolve(stores, event);
    }
    if (found.taken.size() <= kReceiptsKept && !intakeFrom(text, stores, {}).taken.empty())
        std::abort();
    return 0;
}
