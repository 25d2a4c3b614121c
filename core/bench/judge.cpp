#include "core/bench/judge.h"

#include <algorithm>
#include <cmath>

namespace bathside {
namespace {

bool isLimit(const Card& card, LimitName name) { return card.limit(name).sort == Sort::Limit; }

/// By how many ms the stretch passed `at`; none: the limit was kept. A stretch across a start whose
/// clock could not be trusted counts as passed.
std::optional<std::int64_t> passed(const Bench& bench, const Moment& from, const Moment& to,
                                   std::optional<Millis> at)
{
    if (!at)
        return std::nullopt;
    const Elapsed run = elapsed(from.at, to.at);
    const bool untrusted = !run.certain && (bench.untrusted.contains(from.at.bootId) ||
                                            bench.untrusted.contains(to.at.bootId));
    if (untrusted)
        return 0;
    const auto over = std::chrono::floor<Millis>(run.time - *at);
    return run.time >= *at ? std::optional(over.count()) : std::nullopt;
}

class Court {
public:
    explicit Court(const Bench& bench) : m_bench(bench) {}

    std::vector<Finding> findings() &&
    {
        for (const Pull& pull : m_bench.pulls) {
            for (const Ampoule& ampoule : pull.ampoules)
                judge(ampoule);
            judge(pull);
        }
        for (const Bag& bag : m_bench.bags)
            judge(bag);
        for (const auto& [id, line] : m_bench.lines)
            judge(line);
        for (const auto& [probe, gap] : m_bench.overdue)
            find(LimitName::Reading, {SubjectKind::Bath, probe.text}, {}, gap.amount, {gap.from});
        return std::move(m_found);
    }

private:
    void find(LimitName limit, Subject subject, std::optional<BagId> bag, std::int64_t over,
              std::vector<Seq> from)
    {
        m_found.push_back({{limit, std::move(subject)}, std::move(bag), over, std::move(from)});
    }

    void judge(const Ampoule& ampoule)
    {
        const Card* card = cardOf(m_bench, ampoule);
        const auto& out = ampoule.when(Step::Out);
        const auto& bath = ampoule.when(Step::Bath);
        const auto& diluent = ampoule.when(Step::Diluent);
        if (!card || !out || !bath)
            return;
        judge(*card, ampoule, LimitName::Exposure, *out, *bath);
        // an untimed *in bath* may have been as early as *out of cryogen*
        if (diluent)
            judge(*card, ampoule, LimitName::Thaw, bath->timed ? *bath : *out, *diluent);
    }

    void judge(const Card& card, const Ampoule& ampoule, LimitName limit, const Moment& from,
               const Moment& to)
    {
        const auto over = passed(m_bench, from, to, card.timesFor(limit, ampoule.component).at);
        if (over && isLimit(card, limit))
            find(limit, subjectOf(ampoule.ref), bagOf(ampoule), *over, {from.seq, to.seq});
    }

    std::optional<BagId> bagOf(const Ampoule& ampoule) const
    {
        if (ampoule.bag || ampoule.lost)
            return ampoule.bag;
        const Bag* bag = m_bench.bagBeingMadeUp();
        return bag ? std::optional(bag->id) : std::nullopt;
    }

    void judge(const Pull& pull)
    {
        const Card* card = pull.ampoules.empty() ? nullptr : cardOf(m_bench, pull.ampoules.front());
        const bool outside = pull.bath && pull.bath->verdict == Verdict::Outside;
        if (card && outside && isLimit(*card, LimitName::BathAtPull))
            find(LimitName::BathAtPull, subjectOfPull(pull.no), bagOf(pull.ampoules.front()),
                 pull.bath->over, {pull.bath->reading});
    }

    void judge(const Bag& bag)
    {
        if (!bag.card)
            return;
        judgeDiluent(bag);
        const auto& times = bag.card->limit(LimitName::InUse).time;
        if (bag.firstDiluent && bag.down && isLimit(*bag.card, LimitName::InUse)) {
            const auto over = passed(m_bench, *bag.firstDiluent, bag.down->moment, times.at);
            if (over)
                find(LimitName::InUse, subjectOf(bag.id), bag.id, *over,
                     {bag.firstDiluent->seq, bag.down->moment.seq});
        }
        const auto& swirl = bag.card->limit(LimitName::Swirl);
        const auto& gap = bag.longestSwirlGap;
        if (gap && swirl.sort == Sort::Limit && swirl.time.at &&
            gap->amount >= swirl.time.at->count())
            find(LimitName::Swirl, subjectOf(bag.id), bag.id, gap->amount - swirl.time.at->count(),
                 {gap->from, gap->to});
    }

    void judgeDiluent(const Bag& bag)
    {
        if (!bag.temperature || !isLimit(*bag.card, LimitName::Diluent))
            return;
        const auto& content = bag.card->content();
        const auto over =
            std::max(content.diluentLow - *bag.temperature, *bag.temperature - content.diluentHigh);
        if (over.count > 0)
            find(LimitName::Diluent, subjectOf(bag.id), bag.id, over.count, {bag.started.seq});
    }

    void judge(const Line& line)
    {
        if (line.failedDose)  // whatever the card says of its being due
            find(LimitName::DoseCheck, subjectOf(line.id), {}, line.failedDose->amount,
                 {line.failedDose->from, line.failedDose->to});
        if (!m_bench.card)
            return;
        const auto& needle = m_bench.card->limit(LimitName::Needle);
        const auto& gap = line.longestNeedleGap;
        if (gap && needle.sort == Sort::Limit && needle.birds.at && gap->amount >= *needle.birds.at)
            find(LimitName::Needle, subjectOf(line.id), {}, gap->amount - *needle.birds.at,
                 {gap->from, gap->to});
    }

    const Bench& m_bench;
    std::vector<Finding> m_found;
};

}  // namespace

std::vector<Finding> findings(const Bench& bench) { return Court(bench).findings(); }

}  // namespace bathside
