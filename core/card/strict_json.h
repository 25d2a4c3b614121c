#pragma once

// Reads a JSON document strictly: what is not asked for, missing, repeated or out of range is a
// fault.
//
// The first fault is kept and names its key by path; whatever is read after it is harmless and
// worthless, so a reader is written straight down and asks for the fault once, at its end. A
// `StrictJson` must outlive the objects it hands out. For documents of people: at most 1 MiB, 64
// deep.

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "core/card/fault.h"
#include "core/facts/names.h"

namespace bathside {

struct WholeRange {
    std::int64_t from = 0;
    std::int64_t to = 0;
    std::string_view unit;  // may be empty
};

struct NumberRange {
    double from = 0;
    double to = 0;
    std::string_view unit;
};

class JsonObject;

class StrictJson {
public:
    explicit StrictJson(std::string_view text);
    ~StrictJson();
    StrictJson(const StrictJson&) = delete;
    StrictJson& operator=(const StrictJson&) = delete;

    [[nodiscard]] JsonObject root();
    [[nodiscard]] const std::optional<DocumentFault>& fault() const;
    [[nodiscard]] const std::string& canonical() const;  // RFC 8785; empty when it is not JSON

private:
    friend class JsonObject;
    struct Parsed;
    std::unique_ptr<Parsed> m_parsed;
};

class JsonObject {
public:
    [[nodiscard]] bool has(std::string_view key) const;

    std::int64_t whole(std::string_view key, const WholeRange& range);
    std::optional<std::int64_t> wholeIfAny(std::string_view key, const WholeRange& range);
    double number(std::string_view key, const NumberRange& range);
    std::optional<double> numberIfAny(std::string_view key, const NumberRange& range);
    bool flag(std::string_view key);
    /// 1 to `longest` characters, none of them a control character.
    std::string text(std::string_view key, std::size_t longest);
    std::optional<std::string> textIfAny(std::string_view key, std::size_t longest);

    JsonObject object(std::string_view key);
    std::optional<JsonObject> objectIfAny(std::string_view key);
    std::vector<JsonObject> objects(std::string_view key, std::size_t fewest, std::size_t most);
    /// None where the key is missing.
    std::vector<JsonObject> objectsIfAny(std::string_view key, std::size_t most);
    std::vector<std::int64_t> wholes(std::string_view key, std::size_t most,
                                     const WholeRange& each);
    std::vector<double> numbers(std::string_view key, std::size_t fewest, std::size_t most,
                                const NumberRange& each);
    std::vector<std::string> texts(std::string_view key, std::size_t most, std::size_t longest);

    /// A text, a number or true/false, as text.
    std::string scalar(std::string_view key, std::size_t longest);
    /// Whether a list stands there whose first element is an object.
    [[nodiscard]] bool listsObjects(std::string_view key) const;

    /// The object at `key` as its canonical text, for another reader.
    std::string document(std::string_view key);
    /// Whatever stands at `key`, as JSON; asks for nothing.
    [[nodiscard]] std::string textOf(std::string_view key) const;

    /// One of the words of an enum.
    template <typename E>
    E word(std::string_view key)
    {
        const auto value = named<E>(wordOf(key, {Names<E>::all.begin(), Names<E>::all.end()}));
        return value.value_or(E{});
    }

    /// What stands at `key` breaks a rule that only the reader knows.
    void refuse(std::string_view key, std::string expected);

    /// No key may be left that nobody asked for.
    void noOthers();

private:
    friend class StrictJson;
    JsonObject(StrictJson::Parsed& document, const nlohmann::json* node, std::string path);

    const nlohmann::json* find(std::string_view key);
    const nlohmann::json* need(std::string_view key, const std::string& expected);
    const nlohmann::json* list(std::string_view key, std::size_t fewest, std::size_t most,
                               std::string_view of);
    void eachOf(const nlohmann::json* values, std::string_view key, const std::string& expected,
                const std::function<bool(const nlohmann::json&)>& take);
    std::string wordOf(std::string_view key, const std::vector<std::string_view>& words);
    [[nodiscard]] std::string pathOf(std::string_view key) const;

    StrictJson::Parsed* m_document;
    const nlohmann::json* m_node;  // none: it was missing, which is the document's fault already
    std::string m_path;
    std::set<std::string, std::less<>> m_asked;
};

}  // namespace bathside
