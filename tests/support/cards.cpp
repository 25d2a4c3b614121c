#include "tests/support/cards.h"

#include <cstdlib>
#include <fstream>
#include <iostream>

#include <nlohmann/json.hpp>

#include "core/card/read.h"

namespace bathside::test {
namespace {

nlohmann::json defaultDocument()
{
    std::ifstream file(BATHSIDE_DEFAULT_CARD);
    return nlohmann::json::parse(file);
}

std::shared_ptr<const Card> cardOrEnd(const nlohmann::json& document)
{
    auto card = cardFrom(document.dump());
    if (!card) {
        std::cerr << "no card: " << card.error().key << ": " << card.error().expected << '\n';
        std::abort();
    }
    return std::make_shared<const Card>(*std::move(card));
}

}  // namespace

std::shared_ptr<const Card> defaultCard()
{
    static const auto card = cardOrEnd(defaultDocument());
    return card;
}

std::shared_ptr<const Card> cardWith(std::string_view patch)
{
    nlohmann::json document = defaultDocument();
    document.merge_patch(nlohmann::json::parse(patch));
    return cardOrEnd(document);
}

}  // namespace bathside::test
