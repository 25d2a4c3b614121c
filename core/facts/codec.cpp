#include "core/facts/codec.h"

#include <algorithm>
#include <array>
#include <limits>
#include <type_traits>
#include <utility>

#include <nlohmann/json.hpp>

#include "core/base/day.h"
#include "core/base/rfc3339.h"
#include "core/trail/canonical.h"
#include "core/trail/whole_json.h"

namespace bathside {
namespace {

using Json = nlohmann::json;

// Each overload says what it expected, or nothing when it found it ---

using Expected = const char*;
constexpr Expected kFound = nullptr;

Expected read(const Json& json, bool& value)
{
    if (!json.is_boolean())
        return "true or false";
    value = json.get<bool>();
    return kFound;
}

Expected read(const Json& json, std::int64_t& value)
{
    if (!json.is_number_integer())  // isPayload has seen to the range
        return "a whole number";
    value = json.get<std::int64_t>();
    return kFound;
}

Expected read(const Json& json, int& value)
{
    std::int64_t wide = 0;
    if (read(json, wide) || !std::in_range<int>(wide))
        return "a whole number of 32 bits";
    value = static_cast<int>(wide);
    return kFound;
}

Expected read(const Json& json, std::string& value)
{
    if (!json.is_string())
        return "a text";
    value = json.get<std::string>();
    return kFound;
}

Expected read(const Json& json, Millis& value)
{
    std::int64_t count = 0;
    if (read(json, count))
        return "a whole number of ms";
    value = Millis(count);
    return kFound;
}

Expected read(const Json& json, WallTime& value)
{
    const auto at =
        json.is_string() ? fromRfc3339(json.get_ref<const std::string&>()) : std::nullopt;
    if (!at || toRfc3339(*at) != json.get_ref<const std::string&>())
        return "an instant like 2026-03-05T06:10:00.000Z";
    value = *at;
    return kFound;
}

Expected read(const Json& json, std::chrono::sys_days& value)
{
    const auto day = json.is_string() ? dayFrom(json.get_ref<const std::string&>()) : std::nullopt;
    value = day.value_or(value);
    return day ? kFound : "a day like 2026-03-05";
}

Expected read(const Json& json, Subject& value)
{
    if (json.is_string())
        value = subjectFromText(json.get_ref<const std::string&>());
    if (!json.is_string() || toText(value) != json.get_ref<const std::string&>())
        return "a subject like ampoule:3/2";
    return kFound;
}

template <typename Tag>
Expected read(const Json& json, Id<Tag>& value)
{
    return read(json, value.text);
}

template <typename Tag>
Expected read(const Json& json, Quantity<Tag>& value)
{
    return read(json, value.count);
}

template <typename E>
requires std::is_enum_v<E> Expected read(const Json& json, E& value)
{
    const auto found =
        json.is_string() ? named<E>(json.get_ref<const std::string&>()) : std::nullopt;
    if (!found)
        return "a word of the trail's";
    value = *found;
    return kFound;
}

Expected read(const Json& json, Document& value)
{
    const bool asText = json.is_string();
    if (!asText && !json.is_object())
        return "a document";
    const auto text = canonicalised(asText ? json.get_ref<const std::string&>() : json.dump());
    value.text = asText ? json.get<std::string>() : text.value_or("");
    const bool isObject = text && text->starts_with('{') && *text == value.text;
    return isObject && isPayload(value.text) != asText ? kFound : "a document";
}

Expected read(const Json& json, std::vector<Seq>& values)
{
    if (!json.is_array())
        return "a list of whole numbers";
    for (const Json& item : json) {
        if (read(item, values.emplace_back()))
            return "a list of whole numbers";
    }
    return kFound;
}

Expected read(const Json& json, std::vector<DaySpan>& values)
{
    constexpr Expected kSpans = "a list of pairs of whole numbers of ms";
    if (!json.is_array())
        return kSpans;
    for (const Json& item : json) {
        DaySpan& span = values.emplace_back();
        if (!item.is_array() || item.size() != 2 || read(item[0], span.from) ||
            read(item[1], span.to))
            return kSpans;
    }
    return kFound;
}

Expected read(const Json& json, std::vector<UnprovenBirds>& values)
{
    constexpr Expected kPairs = "a list of pairs of a line and a whole number of birds";
    if (!json.is_array())
        return kPairs;
    for (const Json& item : json) {
        UnprovenBirds& line = values.emplace_back();
        if (!item.is_array() || item.size() != 2 || read(item[0], line.line) ||
            read(item[1], line.birds))
            return kPairs;
    }
    return kFound;
}

// Fills a fact's members from an object; remembers the first that is not as expected.
class Filler {
public:
    explicit Filler(const Json& object) : m_object(object) {}

    template <typename T>
    void operator()(std::string_view name, T& value)
    {
        if (m_object.contains(name))
            fill(name, value);
        else
            blame(name, "to be there");
    }

    template <typename T>
    void operator()(std::string_view name, std::optional<T>& value)
    {
        if (m_object.contains(name))
            fill(name, value.emplace());
    }

    [[nodiscard]] std::optional<PayloadFault> fault() const
    {
        if (m_fault)
            return m_fault;
        for (const auto& [name, value] : m_object.items()) {
            if (std::find(m_known.begin(), m_known.end(), name) == m_known.end())
                return PayloadFault{name, "no such member"};
        }
        return std::nullopt;
    }

private:
    template <typename T>
    void fill(std::string_view name, T& value)
    {
        m_known.push_back(name);
        if (const Expected expected = read(m_object[name], value))
            blame(name, expected);
    }

    void blame(std::string_view name, Expected expected)
    {
        if (!m_fault)
            m_fault = PayloadFault{std::string(name), expected};
    }

    const Json& m_object;
    std::vector<std::string_view> m_known;
    std::optional<PayloadFault> m_fault;
};

using Reading = Result<Fact, PayloadFault>;

template <typename T>
Reading factOf(const Json& object)
{
    T fact{};
    Filler filler(object);
    T::members(fact, filler);
    if (auto fault = filler.fault())
        return failure(std::move(*fault));
    return Fact(std::move(fact));
}

struct Kind {
    std::string_view name;
    Reading (*read)(const Json&);
};

template <std::size_t... I>
constexpr auto kindsOf(std::index_sequence<I...>)
{
    return std::array{Kind{std::variant_alternative_t<I, AnyFact>::kKind,
                           &factOf<std::variant_alternative_t<I, AnyFact>>}...};
}

constexpr auto kKinds = kindsOf(std::make_index_sequence<std::variant_size_v<AnyFact>>());

}  // namespace

Result<Fact, PayloadFault> factFrom(std::string_view kind, std::string_view payload)
{
    const auto known =
        std::find_if(kKinds.begin(), kKinds.end(), [&](const Kind& k) { return k.name == kind; });
    if (known == kKinds.end())
        return failure(PayloadFault{std::string(kind), "a known kind"});
    if (!isPayload(payload))
        return failure(PayloadFault{"payload", "a canonical JSON object of whole numbers"});
    return known->read(Json::parse(payload));
}

}  // namespace bathside
