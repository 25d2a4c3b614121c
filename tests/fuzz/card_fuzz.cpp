// Any bytes are a card or a fault with words; a card reads back to itself.

#include <cstdlib>
#include <string_view>

#include "core/card/read.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace bathside;
    const auto card = cardFrom({reinterpret_cast<const char*>(data), size});
    if (!card) {
        if (card.error().found.empty() || card.error().expected.empty())
            std::abort();
        return 0;
    }
    const auto again = cardFrom(card->document());
    if (!again || again->hash() != card->hash() || again->content() != card->content())
        std::abort();
    return 0;
}
