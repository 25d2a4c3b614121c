#include "core/trail/whole_json.h"

#include <array>
#include <charconv>

#include "core/base/hex.h"
#include "core/trail/canonical.h"
#include "core/trail/json_text.h"
#include "core/trail/utf16_order.h"

namespace bathside {
namespace {

// The escapes RFC 8785 writes: two-character ones where JSON has them, else \u00 and two digits.
std::size_t escapeLength(std::string_view text)
{
    if (text.size() < 2)
        return 0;
    if (std::string_view("\"\\btnfr").find(text[1]) != std::string_view::npos)
        return 2;
    if (text.size() < 6 || !text.starts_with("\\u00") || (text[4] != '0' && text[4] != '1'))
        return 0;
    const bool hasShortForm =
        text[4] == '0' && std::string_view("89acd").find(text[5]) != std::string_view::npos;
    return kHexDigits.find(text[5]) == std::string_view::npos || hasShortForm ? 0 : 6;
}

char escapedBy(std::string_view escape)
{
    switch (escape[1]) {
        case 'b':
            return '\b';
        case 't':
            return '\t';
        case 'n':
            return '\n';
        case 'f':
            return '\f';
        case 'r':
            return '\r';
        case 'u':
            break;
        default:
            return escape[1];
    }
    unsigned code = 0;
    std::from_chars(escape.data() + 4, escape.data() + 6, code, 16);
    return static_cast<char>(code);
}

class WholeReader {
public:
    explicit WholeReader(std::string_view text) : m_text(text) {}

    [[nodiscard]] std::size_t read() const { return m_at; }

    bool value(std::size_t depth)
    {
        switch (peek()) {
            case '{':
                return object(depth);
            case '[':
                return array(depth);
            case '"':
                return string();
            case 't':
                return word("true");
            case 'f':
                return word("false");
            case 'n':
                return word("null");
            default:
                return number();
        }
    }

private:
    [[nodiscard]] char peek() const { return m_at < m_text.size() ? m_text[m_at] : '\0'; }
    [[nodiscard]] std::string_view rest() const { return m_text.substr(m_at); }

    bool take(char c)
    {
        if (peek() != c)
            return false;
        ++m_at;
        return true;
    }

    bool word(std::string_view expected)
    {
        if (!rest().starts_with(expected))
            return false;
        m_at += expected.size();
        return true;
    }

    bool string()
    {
        const std::size_t length = jsonStringLength(rest());
        m_at += length;
        return length != 0;
    }

    bool number()
    {
        std::int64_t number = 0;
        const char* const begin = m_text.data() + m_at;
        const auto read = std::from_chars(begin, m_text.data() + m_text.size(), number);
        if (read.ec != std::errc{} || number > kLargestWhole || number < -kLargestWhole)
            return false;
        std::array<char, 24> digits{};
        const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
        const std::string_view written(begin, static_cast<std::size_t>(read.ptr - begin));
        if (written !=
            std::string_view(digits.data(), static_cast<std::size_t>(end - digits.data())))
            return false;  // a leading zero or -0
        m_at += written.size();
        return peek() != '.' && peek() != 'e' && peek() != 'E';
    }

    bool array(std::size_t depth)
    {
        ++m_at;
        if (depth == kDeepestJson)
            return false;
        if (take(']'))
            return true;
        do {
            if (!value(depth + 1))
                return false;
        } while (take(','));
        return take(']');
    }

    bool object(std::size_t depth)
    {
        ++m_at;
        if (depth == kDeepestJson)
            return false;
        if (take('}'))
            return true;
        std::string_view before;
        do {
            const std::string_view key = rest().substr(0, jsonStringLength(rest()));
            m_at += key.size();
            if (key.empty() || (!before.empty() && !ordered(before, key)) || !take(':') ||
                !value(depth + 1))
                return false;
            before = key;
        } while (take(','));
        return take('}');
    }

    static bool ordered(std::string_view before, std::string_view key)
    {
        const bool escaped =
            before.find('\\') != std::string_view::npos || key.find('\\') != std::string_view::npos;
        if (escaped)
            return utf16Less(unquoted(before), unquoted(key));
        return utf16Less(before.substr(1, before.size() - 2), key.substr(1, key.size() - 2));
    }

    std::string_view m_text;
    std::size_t m_at = 0;
};

}  // namespace

std::size_t jsonStringLength(std::string_view text)
{
    if (!text.starts_with('"'))
        return 0;
    std::size_t at = 1;
    while (true) {
        at += plainLength(text.substr(at));
        if (at == text.size())
            return 0;
        if (text[at] == '"')
            return at + 1;
        const std::string_view rest = text.substr(at);
        const auto byte = static_cast<unsigned char>(text[at]);
        const std::size_t length = byte == '\\'  ? escapeLength(rest)
                                   : byte < 0x80 ? 0
                                                 : utf8Length(rest);
        if (length == 0)
            return 0;
        at += length;
    }
}

std::string unquoted(std::string_view quoted)
{
    std::string text;
    quoted = quoted.substr(1, quoted.size() - 2);
    while (!quoted.empty()) {
        const std::size_t plain = std::min(quoted.find('\\'), quoted.size());
        text.append(quoted.substr(0, plain));
        quoted.remove_prefix(plain);
        if (quoted.empty())
            break;
        text += escapedBy(quoted);
        quoted.remove_prefix(escapeLength(quoted));
    }
    return text;
}

std::size_t wholeLength(std::string_view text)
{
    WholeReader reader(text);
    return reader.value(0) ? reader.read() : 0;
}

bool isWhole(std::string_view text) { return !text.empty() && wholeLength(text) == text.size(); }

bool isPayload(std::string_view text) { return text.starts_with('{') && isWhole(text); }

}  // namespace bathside
