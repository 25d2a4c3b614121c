#include "core/record/cases.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace bathside {
namespace {

constexpr std::int64_t kThousand = 1000;

bool isOfAShiftBefore(const Bench& bench, Seq seq)
{
    return bench.shift && seq < bench.shift->opened.seq;
}

/// The bag of this shift that a deviation is about.
std::optional<BagId> bagOf(const Bench& bench, const DeviationOnRecord& deviation)
{
    const auto& bag = deviation.fact.bag;
    const bool isHere = bag && !isCarried(bench, deviation) && bench.bag(*bag);
    return isHere ? bag : std::nullopt;
}

std::int64_t shareOf(const Bench& bench, const DeviationOnRecord& deviation)
{
    const auto limit = limitOf(bench, deviation);
    const std::int64_t over = deviation.fact.over;
    return limit && *limit > 0 ? over * kThousand / *limit : over;
}

ReviewCase caseOf(const Bench& bench, const DeviationOnRecord& deviation)
{
    const Card* card = cardOf(bench, deviation);
    ReviewCase made{.deviation = deviation,
                    .hold = {},
                    .bag = bagOf(bench, deviation),
                    .birds = {},
                    .isCarried = isCarried(bench, deviation),
                    .isOpen = deviation.isOpen(),
                    .severity = card ? card->limit(deviation.fact.limit).severity : Severity::Major,
                    .share = shareOf(bench, deviation)};
    if (made.bag)
        made.birds = birdsServed(bench, *made.bag);
    return made;
}

ReviewCase caseOf(const Bench& bench, const HoldOnRecord& hold)
{
    ReviewCase made{.deviation = {},
                    .hold = hold,
                    .bag = {},
                    .birds = {},
                    .isCarried = isOfAShiftBefore(bench, hold.seq),
                    .severity = Severity::Critical};
    if (made.isCarried)
        return made;
    made.bag = hold.fact.bag;
    made.birds = birdsServed(bench, *made.bag);
    return made;
}

bool isWorse(const ReviewCase& a, const ReviewCase& b)
{
    const auto rank = [](const ReviewCase& one) {
        return std::tuple(!one.isOpen, one.deviation.has_value(), -static_cast<int>(one.severity),
                          -one.share, one.seq());
    };
    return rank(a) < rank(b);
}

std::optional<std::int64_t> countOf(std::optional<Millis> time)
{
    return time ? std::optional(time->count()) : std::nullopt;
}

}  // namespace

std::vector<ReviewCase> reviewCases(const Bench& bench)
{
    std::vector<ReviewCase> cases;
    for (const auto& [seq, hold] : bench.reviews.holds)
        cases.push_back(caseOf(bench, hold));
    for (const auto& [seq, deviation] : bench.reviews.deviations) {
        if (!deviation.isKept)
            cases.push_back(caseOf(bench, deviation));
    }
    std::ranges::stable_sort(cases, isWorse);
    return cases;
}

std::optional<std::int64_t> birdsServed(const Bench& bench, const BagId& id)
{
    const Bag* bag = bench.bag(id);
    const auto line = bag && bag->line ? bench.lines.find(*bag->line) : bench.lines.end();
    if (line == bench.lines.end())
        return std::nullopt;
    std::int64_t total = line->second.birds;
    if (bag->down) {
        total = bag->hungAtBirds;
        for (const BirdCount& count : line->second.counts) {
            if (count.at <= bag->down->moment.at.wall)
                total = std::max(total, count.total);
        }
    }
    return std::max<std::int64_t>(0, total - bag->hungAtBirds);
}

std::vector<Disposition> dispositionsFor(const Bag& bag)
{
    if (bag.isOpen())
        return {Disposition::Use, Disposition::UseWithNote, Disposition::Discard};
    if (!bag.hung)
        return {Disposition::Discard};
    const bool isLeft = bag.down->why == DownReason::Discarded || bag.down->left.count > 0;
    if (!isLeft)
        return {Disposition::Use, Disposition::UseWithNote};
    return {Disposition::Use, Disposition::UseWithNote, Disposition::Discard};
}

bool isCarried(const Bench& bench, const DeviationOnRecord& deviation)
{
    return isOfAShiftBefore(bench, deviation.seq);
}

const Card* cardOf(const Bench& bench, const DeviationOnRecord& deviation)
{
    const auto id = bagOf(bench, deviation);
    const Bag* bag = id ? bench.bag(*id) : nullptr;
    return bag && bag->card ? bag->card.get() : bench.card.get();
}

std::optional<std::int64_t> limitOf(const Bench& bench, const DeviationOnRecord& deviation)
{
    const DeviationFound& fact = deviation.fact;
    const Card* card = cardOf(bench, deviation);
    if (!card)
        return std::nullopt;
    switch (fact.limit) {
        case LimitName::Exposure:
        case LimitName::Thaw: {
            const bool isHere = !isCarried(bench, deviation);
            const Ampoule* ampoule = isHere ? bench.ampoule(ampouleOf(fact.subject)) : nullptr;
            return countOf(
                card->timesFor(fact.limit, ampoule ? ampoule->component : ComponentId{}).at);
        }
        case LimitName::BathAtPull:
            return card->content().bath.tolerance.count;
        case LimitName::Diluent:
            return (card->content().diluentHigh - card->content().diluentLow).count;
        case LimitName::Needle:
            return card->limit(fact.limit).birds.at;
        case LimitName::DoseCheck:
        case LimitName::Reading:
            return std::nullopt;
        case LimitName::InUse:
        case LimitName::BathBetweenPulls:
        case LimitName::Swirl:
        case LimitName::NextPull:
            return countOf(card->limit(fact.limit).time.at);
    }
    std::unreachable();
}

}  // namespace bathside
