#include "core/trail/utf16_order.h"

#include <algorithm>

namespace bathside {
namespace {

// U+E000 … U+FFFF begin with the bytes EE and EF, all beyond with F0 … F4: the former go last.
unsigned weight(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return byte == 0xEE || byte == 0xEF ? byte + 0x10U : byte;
}

}  // namespace

bool utf16Less(std::string_view a, std::string_view b)
{
    return std::lexicographical_compare(a.begin(), a.end(), b.begin(), b.end(),
                                        [](char x, char y) { return weight(x) < weight(y); });
}

}  // namespace bathside
