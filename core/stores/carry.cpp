#include "core/stores/carry.h"

#include <nlohmann/json.hpp>

#include "core/base/day.h"
#include "core/card/strict_json.h"
#include "core/trail/canonical.h"
#include "core/trail/whole_json.h"

namespace bathside {
namespace {

using Json = nlohmann::json;

constexpr std::size_t kMost = 100'000;
constexpr std::size_t kText = 1'000;
constexpr WholeRange kCount{-kLargestWhole, kLargestWhole, "pieces"};
constexpr WholeRange kPositive{1, kLargestWhole, ""};

bool isLeftBehind(const StockLot& lot, std::chrono::sys_days day)
{
    const bool expired = lot.expires && *lot.expires < day;
    return lot.balance() == 0 && expired && lot.quarantine.empty();
}

Json placesOf(const StockLot& lot)
{
    Json list = Json::array();
    for (const auto& [place, holding] : lot.places) {
        Json one{{"count", holding.count}};
        if (!place.empty())
            one["place"] = place;
        if (!holding.quarantine.empty())
            one["quarantine"] = holding.quarantine;
        if (holding.count != 0)
            list.push_back(std::move(one));
    }
    return list;
}

Json receiptsOf(const StockLot& lot)
{
    Json list = Json::array();
    for (const Receipt& receipt : lot.receipts) {
        Json one{{"count", receipt.count}};
        if (!receipt.place.empty())
            one["place"] = receipt.place;
        if (!receipt.delivery.empty())
            one["delivery"] = receipt.delivery;
        list.push_back(std::move(one));
    }
    return list;
}

Json jsonOf(const StockLot& lot)
{
    Json one{
        {"kind", nameOf(lot.of.kind)}, {"places", placesOf(lot)}, {"receipts", receiptsOf(lot)}};
    const auto text = [&](const char* key, const std::string& value) {
        if (!value.empty())
            one[key] = value;
    };
    text("item", lot.of.item);
    text("lot", lot.of.lot.text);
    text("quarantine", lot.quarantine);
    if (lot.of.volume)
        one["volume_ul"] = lot.of.volume->count;
    if (lot.doses)
        one["doses"] = *lot.doses;
    if (lot.expires)
        one["expires"] = toText(*lot.expires);
    if (lot.titre)
        one["titre_pfu"] = *lot.titre;
    return one;
}

std::string textIfAny(JsonObject& object, std::string_view key)
{
    return object.has(key) ? object.text(key, kText) : std::string();
}

StockLot lotFrom(JsonObject& object)
{
    StockLot lot;
    lot.of.kind = object.word<StockKind>("kind");
    lot.of.item = textIfAny(object, "item");
    lot.of.lot = {textIfAny(object, "lot")};
    if (const auto volume = object.wholeIfAny("volume_ul", kPositive))
        lot.of.volume = MicroLitres{*volume};
    lot.doses = object.wholeIfAny("doses", kPositive);
    lot.titre = object.wholeIfAny("titre_pfu", kPositive);
    lot.expires = dayFrom(textIfAny(object, "expires"));
    lot.quarantine = textIfAny(object, "quarantine");
    for (JsonObject& one : object.objects("places", 0, kMost))
        lot.places[textIfAny(one, "place")] = {.count = one.whole("count", kCount),
                                               .quarantine = textIfAny(one, "quarantine"),
                                               .counted = false};
    for (JsonObject& one : object.objects("receipts", 0, kMost))
        lot.receipts.push_back({.place = textIfAny(one, "place"),
                                .count = one.whole("count", kCount),
                                .delivery = textIfAny(one, "delivery")});
    lot.flow.opening = lot.balance();
    return lot;
}

}  // namespace

std::optional<Document> carried(const Stores& stores, std::chrono::sys_days day)
{
    Json lots = Json::array();
    for (const auto& [of, lot] : stores.lots) {
        if (!isLeftBehind(lot, day))
            lots.push_back(jsonOf(lot));
    }
    if (lots.empty())
        return std::nullopt;
    return Document{canonicalised(Json{{"lots", std::move(lots)}}.dump()).value_or("")};
}

std::map<Stock, StockLot> lotsFrom(const Document& document)
{
    std::map<Stock, StockLot> lots;
    StrictJson json(document.text);
    for (JsonObject& object : json.root().objects("lots", 1, kMost)) {
        StockLot lot = lotFrom(object);
        lots[lot.of] = std::move(lot);
    }
    return json.fault() ? std::map<Stock, StockLot>() : lots;
}

}  // namespace bathside
