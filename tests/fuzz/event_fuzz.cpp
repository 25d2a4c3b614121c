// A kind, a line end and any bytes: a fact or a fault that names something; a fact is written as
// the very bytes it was read from.

#include <cstdlib>
#include <string_view>

#include "core/facts/codec.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace bathside;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto end = text.find('\n');
    const std::string_view payload = end == std::string_view::npos ? "" : text.substr(end + 1);
    const auto fact = factFrom(text.substr(0, end), payload);
    if (fact ? payloadOf(*fact) != payload || kindOf(*fact) != text.substr(0, end)
             : fact.error().expected.empty())
        std::abort();
    return 0;
}
