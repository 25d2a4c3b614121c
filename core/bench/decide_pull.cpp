// Rows of `decide`: the critical steps, ampoule by ampoule.

#include <algorithm>
#include <set>

#include "core/bench/decide_rows.h"
#include "core/bench/lots.h"

namespace bathside::rows {
namespace {

const Pull* lastPull(const Bench& bench)
{
    return bench.pulls.empty() ? nullptr : &bench.pulls.back();
}

const Ampoule* numbered(const Pull& pull, int no)
{
    const auto found =
        std::ranges::find(pull.ampoules, no, [](const Ampoule& a) { return a.ref.no; });
    return found == pull.ampoules.end() ? nullptr : &*found;
}

// --- out of cryogen
// ----------------------------------------------------------------------------------

class Taking {
public:
    explicit Taking(const Context& now) : m_now(now), m_open(now.bench.openPull())
    {
        m_pull = m_open ? m_open->no : static_cast<int>(now.bench.pulls.size()) + 1;
        if (m_open) {
            for (const Ampoule& ampoule : m_open->ampoules)
                m_used.insert(ampoule.ref.no);
        }
    }

    Decision take(const std::vector<AmpouleTaken>& taken)
    {
        std::vector<Fact> said;
        for (const AmpouleTaken& one : taken) {
            const int no = one.no > 0 ? one.no : nextFree();
            const AmpouleRef ref{m_pull, no};
            if (one.no < 0)
                return refuse(RefusalCode::NoSuchAmpoule, subjectOf(ref));
            if (!m_used.insert(no).second)
                return refuse(RefusalCode::AmpouleExists, subjectOf(ref));
            const ComponentId component =
                one.component.empty() ? missingComponent() : one.component;
            if (const auto bad = unfit(m_now.bench.stores, ampoulesOf(component, one.lot));
                bad && !m_open && !one.lot.empty())
                return failure(*bad);
            said.emplace_back(AmpouleOut{
                ref, component, one.lot.empty() ? expectedLot(m_now.bench, component) : one.lot});
        }
        return said;
    }

private:
    [[nodiscard]] int nextFree() const { return m_used.empty() ? 1 : *m_used.rbegin() + 1; }

    /// The recipe's first part that neither the bag being made up nor the open pull has.
    [[nodiscard]] ComponentId missingComponent() const
    {
        const auto& recipe = m_now.card().recipe;
        const Bag* bag = m_now.bench.bagBeingMadeUp();
        const auto there = [&](const Component& part) {
            return std::ranges::any_of(m_now.bench.pulls, [&](const Pull& pull) {
                return std::ranges::any_of(pull.ampoules, [&](const Ampoule& ampoule) {
                    const bool forThisBag = ampoule.isOpen() || (bag && ampoule.bag == bag->id);
                    return forThisBag && ampoule.component == part.id;
                });
            });
        };
        const auto missing = std::ranges::find_if_not(recipe, there);
        return missing == recipe.end() ? recipe.front().id : missing->id;
    }

    const Context& m_now;
    const Pull* m_open;
    int m_pull = 1;
    std::set<int> m_used;
};

// --- the steps after it
// --------------------------------------------------------------------------------

Fact stepFact(Step step, AmpouleRef ref, const BagId& bag, bool timed)
{
    switch (step) {
        case Step::Out:
        case Step::Bath:
            return AmpouleInBath{ref, timed};
        case Step::Opened:
            return AmpouleOpened{ref, timed};
        case Step::Diluent:
            return AmpouleInDiluent{ref, timed};
        case Step::Rinsed:
            return AmpouleRinsed{ref, timed};
        case Step::Bagged:
            return AmpouleBagged{ref, bag, timed};
    }
    std::unreachable();
}

/// How far it is, with *in diluent* and *rinsed* alike: both are ready for the bag.
int rank(const Ampoule& ampoule)
{
    return std::min(static_cast<int>(ampoule.reached()), static_cast<int>(Step::Diluent));
}

bool canGo(const Ampoule& ampoule, Step step)
{
    if (step == Step::Rinsed)
        return !ampoule.lost && !ampoule.when(Step::Rinsed);
    return ampoule.isOpen() && ampoule.reached() < step && !ampoule.when(step);
}

/// All that can go: those farthest on, so that a staggered ampoule is not carried along too early.
/// Open ones come before those in a bag already.
std::vector<const Ampoule*> allThatCan(const Pull& pull, Step step)
{
    const auto standing = [](const Ampoule& a) { return a.isOpen() ? 1 + rank(a) : 0; };
    int best = -1;
    for (const Ampoule& ampoule : pull.ampoules) {
        if (canGo(ampoule, step))
            best = std::max(best, standing(ampoule));
    }
    std::vector<const Ampoule*> going;
    for (const Ampoule& ampoule : pull.ampoules) {
        if (canGo(ampoule, step) && standing(ampoule) == best)
            going.push_back(&ampoule);
    }
    return going;
}

/// Why this one cannot go there; nothing when it can.
std::optional<Refusal> hindrance(const Pull& pull, int no, Step step)
{
    const Ampoule* ampoule = numbered(pull, no);
    const Subject subject = subjectOf(AmpouleRef{pull.no, no});
    if (!ampoule)
        return Refusal{RefusalCode::NoSuchAmpoule, subject, {}};
    if (canGo(*ampoule, step))
        return std::nullopt;
    if (ampoule->lost)
        return Refusal{RefusalCode::AmpouleIsLost, subject, {}};
    const bool inBag = ampoule->bag && step != Step::Rinsed;
    return Refusal{inBag ? RefusalCode::AmpouleInBag : RefusalCode::StepAlreadyDone, subject, {}};
}

Result<std::vector<const Ampoule*>, Refusal> ampoulesMeant(const Pull& pull, const MoveOn& meant)
{
    if (meant.ampoules.empty()) {
        auto all = allThatCan(pull, meant.step);
        if (all.empty())
            return refuse(RefusalCode::NoAmpoule, subjectOfPull(pull.no));
        return all;
    }
    std::vector<const Ampoule*> going;
    for (const int no : std::set<int>(meant.ampoules.begin(), meant.ampoules.end())) {
        if (const auto no_way = hindrance(pull, no, meant.step))
            return failure(*no_way);
        going.push_back(numbered(pull, no));
    }
    return going;
}

Result<BagId, Refusal> bagForAmpoules(const Bench& bench, const std::optional<BagId>& named)
{
    const Bag* bag = named ? bench.bag(*named) : bench.bagBeingMadeUp();
    if (!bag)
        return named ? refuse(RefusalCode::NoSuchBag, subjectOf(*named))
                     : refuse(RefusalCode::WhichBag);
    if (!bag->isOpen())
        return refuse(RefusalCode::BagIsDown, subjectOf(bag->id));
    if (bag->held())
        return refuse(RefusalCode::BagIsHeld, subjectOf(bag->id));
    return bag->id;
}

/// The steps missed between where it is and `step`, written before it as not timed. Rinsing is
/// never implied.
void addSteps(std::vector<Fact>& said, const Ampoule& ampoule, Step step, const BagId& bag)
{
    for (const Step missed : {Step::Bath, Step::Opened, Step::Diluent}) {
        if (missed < step && !ampoule.when(missed) && ampoule.reached() < missed)
            said.push_back(stepFact(missed, ampoule.ref, bag, false));
    }
    said.push_back(stepFact(step, ampoule.ref, bag, true));
}

}  // namespace

Decision on(const Context& now, const TakeOut& meant)
{
    if (!now.bench.card)
        return refuse(RefusalCode::NoCard);
    if (!now.bench.shiftIsOpen())
        return refuse(RefusalCode::ShiftNotOpen);
    if (meant.ampoules.empty())
        return refuse(RefusalCode::NoAmpoule);
    return Taking(now).take(meant.ampoules);
}

Decision on(const Context& now, const MoveOn& meant)
{
    const Pull* pull = meant.step == Step::Rinsed ? lastPull(now.bench) : now.bench.openPull();
    if (!pull)
        return refuse(RefusalCode::NoOpenPull);
    const auto going = ampoulesMeant(*pull, meant);
    if (!going)
        return failure(going.error());
    BagId bag;
    if (meant.step == Step::Bagged) {
        const auto into = bagForAmpoules(now.bench, meant.bag);
        if (!into)
            return failure(into.error());
        bag = *into;
    }
    std::vector<Fact> said;
    for (const Ampoule* ampoule : *going)
        addSteps(said, *ampoule, meant.step, bag);
    return said;
}

Decision on(const Context& now, const LoseAmpoule& meant)
{
    const Pull* pull = now.bench.openPull();
    if (!pull)
        return refuse(RefusalCode::NoOpenPull);
    const Subject subject = subjectOf(AmpouleRef{pull->no, meant.ampoule});
    const Ampoule* ampoule = numbered(*pull, meant.ampoule);
    if (!ampoule)
        return refuse(RefusalCode::NoSuchAmpoule, subject);
    if (ampoule->lost)
        return refuse(RefusalCode::AmpouleIsLost, subject);
    if (ampoule->bag)
        return refuse(RefusalCode::AmpouleInBag, subject);
    return facts(AmpouleLost{ampoule->ref, meant.why});
}

Decision on(const Context& now, const ExposeCane& meant)
{
    if (!now.bench.shiftIsOpen())
        return refuse(RefusalCode::ShiftNotOpen);
    if (meant.place.empty())
        return refuse(RefusalCode::BadValue, {}, "place");
    if (meant.time <= Millis::zero())
        return refuse(RefusalCode::OutOfRange, {}, "seconds");
    return facts(CaneExposed{meant.place, meant.time});
}

}  // namespace bathside::rows
