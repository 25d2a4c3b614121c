#include "core/card/compare.h"

#include <map>

#include <nlohmann/json.hpp>

namespace bathside {
namespace {

using nlohmann::json;
using Leaves = std::map<std::string, std::string>;

// Depth is bounded: a card's document has passed `cardFrom`.
void collect(const json& value, const std::string& path, Leaves& leaves)
{
    if (!value.is_structured()) {
        leaves[path] = value.dump();
        return;
    }
    for (const auto& [key, part] : value.items()) {
        const std::string inner = value.is_array() ? "[" + key + "]"
                                  : path.empty()   ? key
                                                   : "." + key;
        collect(part, path + inner, leaves);
    }
}

Leaves leavesOf(const Card& card)
{
    Leaves leaves;
    collect(json::parse(card.document()), "", leaves);
    return leaves;
}

std::optional<std::string> at(const Leaves& leaves, const std::string& key)
{
    const auto found = leaves.find(key);
    return found == leaves.end() ? std::nullopt : std::optional(found->second);
}

}  // namespace

std::vector<CardDifference> differences(const Card& before, const Card& after)
{
    const Leaves old = leavesOf(before);
    const Leaves now = leavesOf(after);
    Leaves keys = old;
    keys.insert(now.begin(), now.end());
    std::vector<CardDifference> all;
    for (const auto& [key, value] : keys)
        if (at(old, key) != at(now, key))
            all.push_back({key, at(old, key), at(now, key)});
    return all;
}

}  // namespace bathside
