// The writing half of codec.h.

#include <algorithm>
#include <type_traits>
#include <utility>

#include "core/base/day.h"
#include "core/base/rfc3339.h"
#include "core/facts/codec.h"
#include "core/trail/json_text.h"
#include "core/trail/whole_json.h"

namespace bathside {
namespace {

// One overload for each type a member can have.

void write(std::string& out, bool value) { out += value ? "true" : "false"; }
void write(std::string& out, std::int64_t value) { appendNumber(out, value); }
void write(std::string& out, int value) { appendNumber(out, value); }
void write(std::string& out, const std::string& value) { appendJsonString(out, value); }
void write(std::string& out, Millis value) { appendNumber(out, value.count()); }
void write(std::string& out, WallTime value) { appendJsonString(out, toRfc3339(value)); }
void write(std::string& out, std::chrono::sys_days day) { appendJsonString(out, toText(day)); }
void write(std::string& out, const Subject& value) { appendJsonString(out, toText(value)); }

template <typename Tag>
void write(std::string& out, const Id<Tag>& value)
{
    appendJsonString(out, value.text);
}

template <typename Tag>
void write(std::string& out, Quantity<Tag> value)
{
    appendNumber(out, value.count);
}

template <typename E>
requires std::is_enum_v<E>
void write(std::string& out, E value) { appendJsonString(out, nameOf(value)); }

void write(std::string& out, const Document& value)
{
    if (isPayload(value.text))
        out += value.text;
    else
        appendJsonString(out, value.text);
}

void write(std::string& out, const DaySpan& span)
{
    out += '[';
    write(out, span.from);
    out += ',';
    write(out, span.to);
    out += ']';
}

void write(std::string& out, const UnprovenBirds& line)
{
    out += '[';
    write(out, line.line);
    out += ',';
    write(out, line.birds);
    out += ']';
}

template <typename T>
void write(std::string& out, const std::vector<T>& values)
{
    out += '[';
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (i > 0)
            out += ',';
        write(out, values[i]);
    }
    out += ']';
}

// A fact's members by name; all names are ASCII, so that the order of bytes is that of RFC 8785.
class Members {
public:
    template <typename T>
    void operator()(std::string_view name, const T& value)
    {
        std::string text;
        write(text, value);
        m_members.emplace_back(name, std::move(text));
    }

    template <typename T>
    void operator()(std::string_view name, const std::optional<T>& value)
    {
        if (value)
            (*this)(name, *value);
    }

    std::string text()
    {
        std::sort(m_members.begin(), m_members.end());
        std::string out = "{";
        for (const auto& [name, value] : m_members) {
            if (out.size() > 1)
                out += ',';
            appendJsonString(out, name);
            out.append(1, ':').append(value);
        }
        return out + "}";
    }

private:
    std::vector<std::pair<std::string_view, std::string>> m_members;
};

}  // namespace

std::string_view kindOf(const Fact& fact)
{
    return std::visit([](const auto& one) { return std::remove_cvref_t<decltype(one)>::kKind; },
                      fact);
}

std::string payloadOf(const Fact& fact)
{
    return std::visit(
        [](const auto& one) {
            Members members;
            std::remove_cvref_t<decltype(one)>::members(one, members);
            return members.text();
        },
        fact);
}

}  // namespace bathside
