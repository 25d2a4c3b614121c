#include "core/card/strict_json.h"

#include <algorithm>
#include <utility>

#include <nlohmann/json.hpp>

#include "core/card/json_words.h"
#include "core/card/repeated_key.h"
#include "core/trail/canonical.h"

namespace bathside {

using nlohmann::json;

struct StrictJson::Parsed {
    std::string canonical;
    json value;
    std::optional<DocumentFault> fault;

    void note(DocumentFault found)
    {
        if (!fault)
            fault = std::move(found);
    }
};

namespace {

constexpr std::size_t kLargest = 1024 * 1024;

/// Of the byte that the parser had just read.
std::string place(std::string_view text, std::size_t position)
{
    const std::string_view before = text.substr(0, std::max<std::size_t>(position, 1) - 1);
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const std::size_t start =
        before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    return "line " + std::to_string(line) + ", column " +
           std::to_string(1 + characters(before.substr(start)));
}

std::string joined(std::string_view path, std::string_view key)
{
    return path.empty() ? std::string(key) : std::string(path) + "." + std::string(key);
}

DocumentFault faultOf(std::string_view text, const JsonFault& fault)
{
    switch (fault.kind) {
        case JsonFault::Kind::NotJson:
            return {"", "a fault at " + place(text, fault.position), "JSON in UTF-8"};
        case JsonFault::Kind::RepeatedKey:
            return {pathOfRepeatedKey(text), "the key a second time", "each key once"};
        case JsonFault::Kind::TooDeep:
            return {"", "more than " + std::to_string(kDeepestJson) + " levels",
                    "at most " + std::to_string(kDeepestJson) + " levels of lists and objects"};
    }
    return {};
}

}  // namespace

StrictJson::StrictJson(std::string_view text) : m_parsed(std::make_unique<Parsed>())
{
    if (text.size() > kLargest) {
        m_parsed->note({"", std::to_string(text.size()) + " bytes",
                        "at most " + std::to_string(kLargest) + " bytes"});
        return;
    }
    auto canonical = canonicalised(text);
    if (!canonical) {
        m_parsed->note(faultOf(text, canonical.error()));
        return;
    }
    m_parsed->canonical = std::move(*canonical);
    m_parsed->value = json::parse(m_parsed->canonical);
}

StrictJson::~StrictJson() = default;

JsonObject StrictJson::root()
{
    if (!m_parsed->value.is_object())
        m_parsed->note({"", shown(m_parsed->value), "an object"});
    return {*m_parsed, m_parsed->value.is_object() ? &m_parsed->value : nullptr, ""};
}

const std::optional<DocumentFault>& StrictJson::fault() const { return m_parsed->fault; }

const std::string& StrictJson::canonical() const { return m_parsed->canonical; }

JsonObject::JsonObject(StrictJson::Parsed& document, const json* node, std::string path)
    : m_document(&document), m_node(node), m_path(std::move(path))
{
}

std::string JsonObject::pathOf(std::string_view key) const { return joined(m_path, key); }

bool JsonObject::has(std::string_view key) const
{
    return m_node != nullptr && m_node->find(key) != m_node->end();
}

const json* JsonObject::find(std::string_view key)
{
    m_asked.emplace(key);
    if (!has(key))
        return nullptr;
    return &*m_node->find(key);
}

const json* JsonObject::need(std::string_view key, const std::string& expected)
{
    const json* value = find(key);
    if (value == nullptr && m_node != nullptr)
        m_document->note({pathOf(key), "nothing", expected});
    return value;
}

std::int64_t JsonObject::whole(std::string_view key, const WholeRange& range)
{
    need(key, rangeText(range));
    return wholeIfAny(key, range).value_or(range.from);
}

std::optional<std::int64_t> JsonObject::wholeIfAny(std::string_view key, const WholeRange& range)
{
    const json* value = find(key);
    if (value == nullptr)
        return std::nullopt;
    if (!isWithin(*value, range)) {
        refuse(key, rangeText(range));
        return std::nullopt;
    }
    return value->get<std::int64_t>();
}

double JsonObject::number(std::string_view key, const NumberRange& range)
{
    need(key, rangeText(range));
    return numberIfAny(key, range).value_or(range.from);
}

std::optional<double> JsonObject::numberIfAny(std::string_view key, const NumberRange& range)
{
    const json* value = find(key);
    if (value == nullptr)
        return std::nullopt;
    if (!isWithin(*value, range)) {
        refuse(key, rangeText(range));
        return std::nullopt;
    }
    return value->get<double>();
}

bool JsonObject::flag(std::string_view key)
{
    const json* value = need(key, "true or false");
    if (value == nullptr)
        return false;
    if (!value->is_boolean())
        refuse(key, "true or false");
    return value->is_boolean() && value->get<bool>();
}

std::string JsonObject::text(std::string_view key, std::size_t longest)
{
    const json* value = need(key, textRule(longest));
    if (value == nullptr)
        return {};
    if (!isPlainText(*value, longest)) {
        refuse(key, textRule(longest));
        return {};
    }
    return value->get<std::string>();
}

std::optional<std::string> JsonObject::textIfAny(std::string_view key, std::size_t longest)
{
    return find(key) == nullptr ? std::nullopt : std::optional(text(key, longest));
}

std::string JsonObject::scalar(std::string_view key, std::size_t longest)
{
    const json* value = need(key, "text, a number, true or false");
    if (value == nullptr)
        return {};
    if (value->is_string())
        return text(key, longest);
    if (value->is_number() || value->is_boolean())
        return value->dump();
    m_document->note({pathOf(key), shown(*value), "text, a number, true or false"});
    return {};
}

bool JsonObject::listsObjects(std::string_view key) const
{
    if (!has(key))
        return false;
    const json& value = *m_node->find(key);
    return value.is_array() && !value.empty() && value.front().is_object();
}

std::string JsonObject::document(std::string_view key)
{
    const json* value = need(key, "an object");
    if (value != nullptr && !value->is_object())
        m_document->note({pathOf(key), shown(*value), "an object"});
    return value == nullptr ? std::string() : canonicalised(value->dump()).value_or("");
}

std::string JsonObject::textOf(std::string_view key) const
{
    return has(key) ? m_node->find(key)->dump() : std::string();
}

JsonObject JsonObject::object(std::string_view key)
{
    need(key, "an object");
    return objectIfAny(key).value_or(JsonObject(*m_document, nullptr, pathOf(key)));
}

std::optional<JsonObject> JsonObject::objectIfAny(std::string_view key)
{
    const json* value = find(key);
    if (value == nullptr)
        return std::nullopt;
    if (!value->is_object())
        refuse(key, "an object");
    return JsonObject(*m_document, value->is_object() ? value : nullptr, pathOf(key));
}

const json* JsonObject::list(std::string_view key, std::size_t fewest, std::size_t most,
                             std::string_view of)
{
    const std::string expected = "a list of " + std::to_string(fewest) + " to " +
                                 std::to_string(most) + " " + std::string(of);
    const json* value = need(key, expected);
    if (value == nullptr)
        return nullptr;
    if (value->is_array() && fewest <= value->size() && value->size() <= most)
        return value;
    refuse(key, expected);
    return nullptr;
}

std::vector<JsonObject> JsonObject::objects(std::string_view key, std::size_t fewest,
                                            std::size_t most)
{
    std::vector<JsonObject> all;
    const json* values = list(key, fewest, most, "objects");
    for (std::size_t i = 0; values != nullptr && i < values->size(); ++i) {
        const json& value = (*values)[i];
        const std::string path = pathOf(key) + "[" + std::to_string(i) + "]";
        if (!value.is_object())
            m_document->note({path, shown(value), "an object"});
        all.push_back(JsonObject(*m_document, value.is_object() ? &value : nullptr, path));
    }
    return all;
}

std::vector<JsonObject> JsonObject::objectsIfAny(std::string_view key, std::size_t most)
{
    return find(key) == nullptr ? std::vector<JsonObject>() : objects(key, 0, most);
}

void JsonObject::eachOf(const json* values, std::string_view key, const std::string& expected,
                        const std::function<bool(const json&)>& take)
{
    for (std::size_t i = 0; values != nullptr && i < values->size(); ++i)
        if (const json& value = (*values)[i]; !take(value))
            m_document->note({pathOf(key) + "[" + std::to_string(i) + "]", shown(value), expected});
}

std::vector<std::int64_t> JsonObject::wholes(std::string_view key, std::size_t most,
                                             const WholeRange& each)
{
    std::vector<std::int64_t> all;
    eachOf(list(key, 1, most, "whole numbers"), key, rangeText(each), [&](const json& value) {
        if (isWithin(value, each))
            all.push_back(value.get<std::int64_t>());
        return isWithin(value, each);
    });
    return all;
}

std::vector<double> JsonObject::numbers(std::string_view key, std::size_t fewest, std::size_t most,
                                        const NumberRange& each)
{
    std::vector<double> all;
    eachOf(list(key, fewest, most, "numbers"), key, rangeText(each), [&](const json& value) {
        if (isWithin(value, each))
            all.push_back(value.get<double>());
        return isWithin(value, each);
    });
    return all;
}

std::vector<std::string> JsonObject::texts(std::string_view key, std::size_t most,
                                           std::size_t longest)
{
    std::vector<std::string> all;
    eachOf(list(key, 1, most, "texts"), key, textRule(longest), [&](const json& value) {
        if (isPlainText(value, longest))
            all.push_back(value.get<std::string>());
        return isPlainText(value, longest);
    });
    return all;
}

std::string JsonObject::wordOf(std::string_view key, const std::vector<std::string_view>& words)
{
    std::string expected = "one of";
    for (const std::string_view word : words)
        expected += (word == words.front() ? " \"" : ", \"") + std::string(word) + "\"";
    const json* value = need(key, expected);
    if (value == nullptr)
        return {};
    const std::string found = value->is_string() ? value->get<std::string>() : std::string();
    if (std::ranges::find(words, found) == words.end())
        refuse(key, expected);
    return found;
}

void JsonObject::refuse(std::string_view key, std::string expected)
{
    if (m_node == nullptr)
        return;
    const json* value = find(key);
    m_document->note(
        {pathOf(key), value == nullptr ? "nothing" : shown(*value), std::move(expected)});
}

void JsonObject::noOthers()
{
    if (m_node == nullptr)
        return;
    for (const auto& [key, value] : m_node->items()) {
        if (m_asked.contains(key))
            continue;
        std::string known = "none but";
        for (const std::string& asked : m_asked)
            known += (asked == *m_asked.begin() ? " " : ", ") + asked;
        m_document->note({pathOf(shortened(key)), "an unknown key", known});
        return;
    }
}

}  // namespace bathside
