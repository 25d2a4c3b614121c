#include "core/facts/stock.h"

#include <algorithm>
#include <vector>

namespace bathside {
namespace {

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

/// The parts of a place, in small letters and without the blanks around them.
std::vector<std::string> partsOf(std::string_view place)
{
    std::vector<std::string> parts(1);
    for (const char c : place) {
        if (c == '/' || c == ',')
            parts.emplace_back();
        else if (c != ' ' || !parts.back().empty())
            parts.back() += lower(c);
    }
    for (std::string& part : parts)
        part.erase(part.find_last_not_of(' ') + 1);
    std::erase(parts, "");
    return parts;
}

}  // namespace

Stock ampoulesOf(const ComponentId& component, const LotId& lot)
{
    return {.kind = StockKind::Ampoule, .item = component.text, .lot = lot, .volume = {}};
}

Stock diluentOf(MicroLitres volume, const LotId& lot)
{
    return {.kind = StockKind::Diluent, .item = {}, .lot = lot, .volume = volume};
}

std::string placeText(const std::string& vessel, const std::string& canister,
                      const std::string& cane)
{
    std::string place;
    for (const std::string* part : {&vessel, &canister, &cane}) {
        if (!part->empty())
            place += (place.empty() ? "" : " / ") + *part;
    }
    return place;
}

bool liesIn(std::string_view inner, std::string_view outer)
{
    const auto within = partsOf(inner);
    const auto around = partsOf(outer);
    return !around.empty() && around.size() <= within.size() &&
           std::equal(around.begin(), around.end(), within.begin());
}

}  // namespace bathside
