// Any bytes are a manifest or a fault; a manifest reads back to itself.

#include <cstdlib>
#include <string_view>

#include "core/record/manifest.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace bathside;
    const auto manifest = manifestFrom({reinterpret_cast<const char*>(data), size});
    if (manifest && manifestFrom(manifestText(*manifest)) != *manifest)
        std::abort();
    return 0;
}
