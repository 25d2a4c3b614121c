#include "core/record/bag_content.h"

namespace bathside {

std::string BagContent::text() const
{
    std::string out;
    for (const auto& [lot, count] : lots)
        out.append(out.empty() ? "" : ", ")
            .append(std::to_string(count) + " × " + lot.first.text + " " + lot.second.text);
    return out;
}

BagContent contentOf(const Bench& bench, const BagId& bag)
{
    BagContent content;
    for (const Pull& pull : bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules) {
            if (ampoule.bag != bag)
                continue;
            ++content.ampoules;
            ++content.lots[{ampoule.component, ampoule.lot}];
        }
    }
    return content;
}

}  // namespace bathside
