#include "core/trail/json_text.h"

#include <array>
#include <charconv>

#include "core/base/hex.h"

namespace bathside {
namespace {

constexpr auto kPlain = [] {
    std::array<bool, 256> plain{};
    for (std::size_t i = 0; i < plain.size(); ++i)
        plain[i] = isPlainInJson(static_cast<char>(i));
    return plain;
}();

bool isTail(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

void appendEscaped(std::string& out, char c)
{
    switch (c) {
        case '"':
            out += "\\\"";
            return;
        case '\\':
            out += "\\\\";
            return;
        case '\b':
            out += "\\b";
            return;
        case '\t':
            out += "\\t";
            return;
        case '\n':
            out += "\\n";
            return;
        case '\f':
            out += "\\f";
            return;
        case '\r':
            out += "\\r";
            return;
        default:
            break;
    }
    const auto byte = static_cast<unsigned char>(c);
    out += "\\u00";
    out += kHexDigits[byte >> 4U];
    out += kHexDigits[byte & 15U];
}

}  // namespace

std::size_t plainLength(std::string_view text)
{
    std::size_t length = 0;
    while (length < text.size() && kPlain[static_cast<unsigned char>(text[length])])
        ++length;
    return length;
}

std::size_t utf8Length(std::string_view text)
{
    if (text.empty())
        return 0;
    const auto lead = static_cast<unsigned char>(text[0]);
    if (lead < 0x80)
        return 1;
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || text.size() < length)
        return 0;
    const auto second = static_cast<unsigned char>(text[1]);
    const bool overlong = (lead == 0xE0 && second < 0xA0) || (lead == 0xF0 && second < 0x90);
    const bool noScalar = (lead == 0xED && second > 0x9F) || (lead == 0xF4 && second > 0x8F);
    if (overlong || noScalar)
        return 0;
    for (std::size_t i = 1; i < length; ++i) {
        if (!isTail(text[i]))
            return 0;
    }
    return length;
}

bool isUtf8(std::string_view text)
{
    while (true) {
        text.remove_prefix(plainLength(text));
        if (text.empty())
            return true;
        const std::size_t length = utf8Length(text);
        if (length == 0)
            return false;
        text.remove_prefix(length);
    }
}

void appendJsonString(std::string& out, std::string_view text)
{
    out += '"';
    while (!text.empty()) {
        const std::size_t plain = plainLength(text);
        out.append(text.substr(0, plain));
        text.remove_prefix(plain);
        if (text.empty())
            break;
        const std::size_t length = utf8Length(text);
        if (length == 1)
            appendEscaped(out, text[0]);
        else
            out.append(length == 0 ? std::string_view("\xEF\xBF\xBD") : text.substr(0, length));
        text.remove_prefix(length == 0 ? 1 : length);
    }
    out += '"';
}

void appendNumber(std::string& out, std::int64_t value)
{
    std::array<char, 24> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value).ptr;
    out.append(digits.data(), end);
}

}  // namespace bathside
