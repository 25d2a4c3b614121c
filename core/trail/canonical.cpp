#include "core/trail/canonical.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/trail/json_text.h"
#include "core/trail/utf16_order.h"

namespace bathside {
namespace {

// Writes values as the parser meets them; an object's members are put in order when it closes.
class Writer final : public nlohmann::json_sax<nlohmann::json> {
public:
    bool null() override { return value("null"); }
    bool boolean(bool yes) override { return value(yes ? "true" : "false"); }
    bool number_integer(number_integer_t number) override
    {
        return value(ecmaNumber(static_cast<double>(number)));
    }
    bool number_unsigned(number_unsigned_t number) override
    {
        return value(ecmaNumber(static_cast<double>(number)));
    }
    bool number_float(number_float_t number, const string_t& /*text*/) override
    {
        return value(ecmaNumber(number));
    }
    bool string(string_t& text) override { return value(quoted(text)); }
    bool binary(binary_t& /*bytes*/) override { return false; }

    bool start_object(std::size_t /*size*/) override { return open(true); }
    bool start_array(std::size_t /*size*/) override { return open(false); }
    bool key(string_t& name) override
    {
        m_open.back().members.push_back({name, {}});
        return true;
    }
    bool end_object() override
    {
        auto& members = m_open.back().members;
        std::sort(members.begin(), members.end(),
                  [](const Member& a, const Member& b) { return utf16Less(a.key, b.key); });
        for (std::size_t i = 1; i < members.size(); ++i) {
            if (members[i].key == members[i - 1].key)
                return refuse({JsonFault::Kind::RepeatedKey, 0, members[i].key});
        }
        return close('{', '}');
    }
    bool end_array() override { return close('[', ']'); }

    bool parse_error(std::size_t position, const std::string& token,
                     const nlohmann::json::exception& /*error*/) override
    {
        return refuse({JsonFault::Kind::NotJson, position, token});
    }

    [[nodiscard]] std::string& text() { return m_text; }
    [[nodiscard]] JsonFault& fault() { return m_fault; }

private:
    struct Member {
        std::string key;
        std::string text;
    };
    struct Level {
        bool isObject = false;
        std::vector<Member> members;  // of an array: without keys
    };

    static std::string quoted(std::string_view text)
    {
        std::string out;
        appendJsonString(out, text);
        return out;
    }

    bool open(bool isObject)
    {
        if (m_open.size() == kDeepestJson)
            return refuse({JsonFault::Kind::TooDeep, 0, isObject ? "{" : "["});
        m_open.push_back({isObject, {}});
        return true;
    }

    bool close(char front, char back)
    {
        std::string text(1, front);
        for (const Member& member : m_open.back().members) {
            if (text.size() > 1)
                text += ',';
            if (m_open.back().isObject)
                text.append(quoted(member.key)).append(1, ':');
            text += member.text;
        }
        text += back;
        m_open.pop_back();
        return value(std::move(text));
    }

    bool value(std::string text)
    {
        if (m_open.empty())
            m_text = std::move(text);
        else if (m_open.back().isObject)
            m_open.back().members.back().text = std::move(text);
        else
            m_open.back().members.push_back({{}, std::move(text)});
        return true;
    }

    bool refuse(JsonFault fault)
    {
        m_fault = std::move(fault);
        return false;
    }

    std::vector<Level> m_open;
    std::string m_text;
    JsonFault m_fault;
};

// The shortest digits that name a double, and where its point stands: 0.digits × 10^point.
struct Digits {
    std::string digits;
    int point = 0;
};

Digits shortest(double value)
{
    std::array<char, 32> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                   std::chars_format::scientific)
                         .ptr;
    const std::string_view text(buffer.data(), static_cast<std::size_t>(end - buffer.data()));
    const std::size_t e = text.find('e');
    const std::size_t exponent = text[e + 1] == '+' ? e + 2 : e + 1;
    Digits found;
    std::from_chars(text.data() + exponent, text.data() + text.size(), found.point);
    ++found.point;
    for (const char c : text.substr(0, e)) {
        if (c != '.')
            found.digits += c;
    }
    return found;
}

std::string withExponent(const Digits& number)
{
    std::string text = number.digits.substr(0, 1);
    if (number.digits.size() > 1)
        text.append(".").append(number.digits, 1);
    const int exponent = number.point - 1;
    return text + (exponent < 0 ? "e-" : "e+") + std::to_string(std::abs(exponent));
}

}  // namespace

std::string ecmaNumber(double value)
{
    if (value == 0)
        return "0";
    if (value < 0)
        return "-" + ecmaNumber(-value);
    const Digits number = shortest(value);
    const int count = static_cast<int>(number.digits.size());
    if (number.point > 21 || number.point <= -6)
        return withExponent(number);
    if (number.point <= 0)
        return "0." + std::string(static_cast<std::size_t>(-number.point), '0') + number.digits;
    if (number.point >= count)
        return number.digits + std::string(static_cast<std::size_t>(number.point - count), '0');
    const auto whole = static_cast<std::size_t>(number.point);
    return number.digits.substr(0, whole) + "." + number.digits.substr(whole);
}

Result<std::string, JsonFault> canonicalised(std::string_view json)
{
    if (json.starts_with(
            "\xEF\xBB\xBF"))  // the parser would skip it; RFC 8259 lets no one write it
        return failure(JsonFault{JsonFault::Kind::NotJson, 0, "byte order mark"});
    Writer writer;
    if (!nlohmann::json::sax_parse(json.begin(), json.end(), &writer))
        return failure(std::move(writer.fault()));
    return std::move(writer.text());
}

}  // namespace bathside
