#include "core/trail/boot_id.h"

#include "core/base/hex.h"

namespace bathside {
namespace {

constexpr std::size_t kLength = 36;

bool hyphenBefore(std::size_t byte) { return byte == 4 || byte == 6 || byte == 8 || byte == 10; }

}  // namespace

void appendText(std::string& out, const BootId& id)
{
    std::array<char, kLength> text{};
    std::size_t at = 0;
    for (std::size_t i = 0; i < id.size(); ++i) {
        if (hyphenBefore(i))
            text[at++] = '-';
        text[at++] = kHexDigits[id[i] >> 4U];
        text[at++] = kHexDigits[id[i] & 15U];
    }
    out.append(text.data(), text.size());
}

std::string toText(const BootId& id)
{
    std::string text;
    appendText(text, id);
    return text;
}

std::optional<BootId> bootIdFromText(std::string_view text)
{
    if (text.size() != kLength)
        return std::nullopt;
    BootId id{};
    for (std::size_t i = 0; i < id.size(); ++i) {
        if (hyphenBefore(i)) {
            if (text.front() != '-')
                return std::nullopt;
            text.remove_prefix(1);
        }
        const auto high = kHexDigits.find(text[0]);
        const auto low = kHexDigits.find(text[1]);
        if (high == std::string_view::npos || low == std::string_view::npos)
            return std::nullopt;
        id[i] = static_cast<std::uint8_t>(high * 16 + low);
        text.remove_prefix(2);
    }
    return id;
}

}  // namespace bathside
