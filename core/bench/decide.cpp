#include "core/bench/decide.h"

#include <algorithm>
#include <map>

#include "core/bench/decide_rows.h"
#include "core/bench/judge.h"

namespace bathside {
namespace {

/// The same tap again: by its id, or on the same place within the card's lock.
bool isRepeat(const State& state, const Tap& tap)
{
    constexpr std::size_t kLookBack = 64;
    const auto& journal = state.journal;
    const auto from = journal.size() > kLookBack ? journal.end() - kLookBack : journal.begin();
    const bool sameId = !tap.id.empty() && std::any_of(from, journal.end(), [&](const auto& event) {
        return event->tap == tap.id;
    });
    if (sameId)
        return true;
    const auto last = state.bench.lastTapAt.find(tap.place);
    if (tap.place.empty() || last == state.bench.lastTapAt.end() || !state.bench.card)
        return false;
    const Elapsed since = elapsed(last->second, tap.at);
    return since.certain && since.time < state.bench.card->content().sameTap;
}

bool isMending(const Intent& intent)
{
    return std::holds_alternative<Correct>(intent) || std::holds_alternative<TakeBack>(intent) ||
           std::holds_alternative<Answer>(intent);
}

bool mixesLots(const Bench& bench, const BagId& bag)
{
    std::map<ComponentId, LotId> lots;
    for (const Pull& pull : bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules) {
            if (ampoule.bag != bag)
                continue;
            const auto [known, isFirst] = lots.emplace(ampoule.component, ampoule.lot);
            if (!isFirst && known->second != ampoule.lot)
                return true;
        }
    }
    return false;
}

/// How much of what is in the bag was of a lot that might not be used.
std::ptrdiff_t unfitIn(const Bench& bench, const Bag& bag)
{
    const Bag* known = bench.bag(bag.id);
    std::ptrdiff_t count = known && known->lotStanding != LotStanding::Fit ? 1 : 0;
    for (const Pull& pull : bench.pulls) {
        count += std::ranges::count_if(pull.ampoules, [&](const Ampoule& ampoule) {
            return ampoule.bag == bag.id && ampoule.lotStanding != LotStanding::Fit;
        });
    }
    return count;
}

class Consequences {
public:
    Consequences(const State& before, const Tap& tap, std::vector<Fact> said)
        : m_before(before), m_state(before), m_tap(tap)
    {
        for (Fact& fact : said)
            add(std::move(fact));
    }

    /// One bag never mixes two lots of a component: from when it does, it is on hold.
    void holdMixedLots()
    {
        for (const Bag& bag : std::vector(m_state.bench.bags)) {
            const bool isNew =
                mixesLots(m_state.bench, bag.id) && !mixesLots(m_before.bench, bag.id);
            if (bag.isOpen() && !bag.held() && isNew)
                add(BagHeld{bag.id, HoldReason::WrongLot, {}});
        }
    }

    /// A corrected lot holds every bag that has it.
    void holdCorrectedLots(const std::vector<Seq>& corrected)
    {
        for (const Seq seq : corrected) {
            const Event* event = eventAt(m_state, seq);
            const auto* out = event ? std::get_if<AmpouleOut>(&event->fact) : nullptr;
            const auto* started = event ? std::get_if<BagStarted>(&event->fact) : nullptr;
            const Ampoule* ampoule = out ? m_state.bench.ampoule(out->ampoule) : nullptr;
            const auto id = started   ? std::optional(started->bag)
                            : ampoule ? ampoule->bag
                                      : std::nullopt;
            const Bag* bag = id ? m_state.bench.bag(*id) : nullptr;
            if (bag && !bag->held())
                add(BagHeld{*id, HoldReason::WrongLot, {}});
        }
    }

    /// What no shift lead allowed holds the bag that it goes into.
    void holdUnfitLots()
    {
        for (const Bag& bag : std::vector(m_state.bench.bags)) {
            const bool isNew = unfitIn(m_state.bench, bag) > unfitIn(m_before.bench, bag);
            if (bag.isOpen() && !bag.held() && isNew)
                add(BagHeld{bag.id, HoldReason::LotNotFit, {}});
        }
    }

    /// Deviations that are not on record yet, and those that have grown; after a mending, whatever
    /// the record has otherwise.
    void judge(bool mending)
    {
        auto standing = m_state.bench.judgements;
        for (const Finding& found : findings(Bench(m_state.bench))) {
            const auto known = standing.find(found.key);
            const bool isNew = known == standing.end();
            if (isNew && !mending)
                add(DeviationFound{found.key.first, found.key.second, found.bag, found.over,
                                   found.from});
            else if (isNew || known->second.over < found.over ||
                     (mending && known->second.over != found.over))
                add(Rejudged{found.key.first, found.key.second, found.bag, found.over, found.from});
            if (!isNew)
                standing.erase(known);
        }
        if (!mending)
            return;
        for (const auto& [key, judgement] : standing)
            add(Rejudged{key.first, key.second, judgement.bag, std::nullopt, {judgement.seq}});
    }

    [[nodiscard]] std::vector<Fact> facts() && { return std::move(m_facts); }

private:
    void add(Fact fact)
    {
        m_state = evolve(std::move(m_state), Event{.seq = m_state.bench.lastSeq + 1,
                                                   .at = m_tap.at,
                                                   .byReceipt = m_tap.byReceipt,
                                                   .person = {},
                                                   .tap = m_tap.id,
                                                   .place = m_tap.place,
                                                   .card = {},
                                                   .fact = fact});
        m_facts.push_back(std::move(fact));
    }

    const State& m_before;
    State m_state;
    const Tap& m_tap;
    std::vector<Fact> m_facts;
};

std::vector<Seq> correctedLots(const std::vector<Fact>& said)
{
    std::vector<Seq> seqs;
    for (const Fact& fact : said) {
        if (const auto* corrected = std::get_if<FactCorrected>(&fact);
            corrected && corrected->field == "lot")
            seqs.push_back(corrected->seq);
    }
    return seqs;
}

}  // namespace

Decision decide(const State& state, const Intent& intent, const Tap& tap)
{
    if (isRepeat(state, tap))
        return std::vector<Fact>{};
    const rows::Context context{state, state.bench, tap};
    auto said = std::visit([&](const auto& meant) { return rows::on(context, meant); }, intent);
    if (!said || said->empty())
        return said;

    const auto lots = correctedLots(*said);
    Consequences consequences(state, tap, std::move(*said));
    consequences.judge(isMending(intent));
    consequences.holdMixedLots();
    consequences.holdUnfitLots();
    consequences.holdCorrectedLots(lots);
    return std::move(consequences).facts();
}

}  // namespace bathside
