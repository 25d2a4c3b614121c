// Rows of `decide`: a bag, from its start to its end.

#include <algorithm>

#include "core/bench/decide_rows.h"

namespace bathside::rows {
namespace {

const Check* openBlockingCheck(const Context& now)
{
    for (const Check& check : now.card().checks) {
        const auto state = now.bench.checks.find(check.id);
        const bool done = state != now.bench.checks.end() &&
                          (state->second.ok || !state->second.overridden.empty());
        if (check.blocking && !done)
            return &check;
    }
    return nullptr;
}

bool isInAnyBag(const Context& now, const Bag& bag)
{
    return std::ranges::any_of(now.bench.pulls, [&](const Pull& pull) {
        return std::ranges::any_of(pull.ampoules,
                                   [&](const Ampoule& ampoule) { return ampoule.bag == bag.id; });
    });
}

/// Today's bag on hold, also one that is down: who takes a bag off its line does not decide on it.
Result<BagId, Refusal> heldBag(const Bench& bench, const std::optional<BagId>& named)
{
    if (named) {
        const Bag* bag = bench.bag(*named);
        if (!bag)
            return refuse(RefusalCode::NoSuchBag, subjectOf(*named));
        return bag->held() ? Result<BagId, Refusal>(*named)
                           : refuse(RefusalCode::BagNotHeld, subjectOf(*named));
    }
    const auto isHeld = [](const Bag& bag) { return bag.held() != nullptr; };
    const auto only = std::ranges::find_if(bench.bags, isHeld);
    return std::ranges::count_if(bench.bags, isHeld) == 1 ? Result<BagId, Refusal>(only->id)
                                                          : refuse(RefusalCode::WhichBag);
}

/// The one whose hold a shift before left, where that is pointed at.
Result<BagId, Refusal> bagToRelease(const Bench& bench, const ReleaseBag& meant)
{
    if (!meant.of)
        return heldBag(bench, meant.bag);
    const auto found = bench.reviews.holds.find(*meant.of);
    if (found == bench.reviews.holds.end())
        return refuse(RefusalCode::BagNotHeld, meant.bag ? subjectOf(*meant.bag) : Subject{});
    return found->second.fact.bag;
}

}  // namespace

Decision on(const Context& now, const StartBag& meant)
{
    if (!now.bench.card)
        return refuse(RefusalCode::NoCard);
    if (!now.bench.shiftIsOpen())
        return refuse(RefusalCode::ShiftNotOpen);
    if (meant.bag.empty())
        return refuse(RefusalCode::WhichBag);
    if (now.bench.bag(meant.bag))
        return refuse(RefusalCode::BagExists, subjectOf(meant.bag));
    if (meant.volume.count <= 0)
        return refuse(RefusalCode::OutOfRange, subjectOf(meant.bag), "volume");
    if (const Check* check = openBlockingCheck(now))
        return refuse(RefusalCode::CheckStillOpen, {}, check->id.text);
    if (const auto no = unfit(now.bench.stores, diluentOf(meant.volume, meant.diluentLot));
        no && !now.bench.openPull())
        return failure(*no);
    return facts(BagStarted{meant.bag, meant.volume, meant.diluentLot, meant.temperature});
}

Decision on(const Context& now, const InspectBag& meant)
{
    const auto bag =
        bagMeant(now.bench, meant.bag, [](const Bag& b) { return !b.inspected && !b.held(); });
    if (!bag)
        return failure(bag.error());
    if ((*bag)->inspected)
        return refuse(RefusalCode::AlreadyInspected, subjectOf((*bag)->id));
    if (meant.ok)
        return facts(BagInspected{(*bag)->id, true});
    return facts(BagInspected{(*bag)->id, false}, BagHeld{(*bag)->id, HoldReason::Inspection, {}});
}

Decision on(const Context& now, const DrawDiluent& meant)
{
    const auto bag =
        bagMeant(now.bench, meant.bag, [](const Bag& b) { return b.isBeingMadeUp() && !b.drawn; });
    if (!bag)
        return failure(bag.error());
    const Subject subject = subjectOf((*bag)->id);
    if ((*bag)->held())
        return refuse(RefusalCode::BagIsHeld, subject);
    if (!(*bag)->inspected)
        return refuse(RefusalCode::BagNotInspected, subject);
    if ((*bag)->drawn)
        return refuse(RefusalCode::AlreadyDrawn, subject);
    const MicroLitres volume = meant.volume.value_or(now.card().diluentDrawn);
    const bool fitsSyringe = volume.count > 0 && volume <= now.card().syringe;
    if (!fitsSyringe)
        return refuse(RefusalCode::OutOfRange, subject, "syringe");
    return facts(DiluentDrawn{(*bag)->id, volume});
}

Decision on(const Context& now, const MixBag& meant)
{
    const auto bag = bagMeant(now.bench, meant.bag,
                              [](const Bag& b) { return b.isBeingMadeUp() && b.firstDiluent; });
    if (!bag)
        return failure(bag.error());
    const Subject subject = subjectOf((*bag)->id);
    if ((*bag)->held())
        return refuse(RefusalCode::BagIsHeld, subject);
    if ((*bag)->mixed)
        return refuse(RefusalCode::BagAlreadyMixed, subject);
    if (!isInAnyBag(now, **bag))
        return refuse(RefusalCode::BagIsEmpty, subject);
    return facts(BagMixed{(*bag)->id});
}

Decision on(const Context& now, const HangBag& meant)
{
    const auto bag = bagMeant(now.bench, meant.bag,
                              [](const Bag& b) { return b.mixed && !b.line && !b.held(); });
    if (!bag)
        return failure(bag.error());
    const Subject subject = subjectOf((*bag)->id);
    if (meant.line.empty())
        return refuse(RefusalCode::WhichLine, subject);
    if ((*bag)->held())
        return refuse(RefusalCode::BagIsHeld, subject);
    if (!(*bag)->mixed)
        return refuse(RefusalCode::BagNotMixed, subject);
    if ((*bag)->line == meant.line)
        return refuse(RefusalCode::AlreadyThere, subject, meant.line.text);
    if (const Bag* other = now.bench.bagOn(meant.line))
        return refuse(RefusalCode::LineHasBag, subjectOf(meant.line), other->id.text);
    return facts(BagHung{(*bag)->id, meant.line});
}

Decision on(const Context& now, const SwirlBag& meant)
{
    const auto bag =
        bagMeant(now.bench, meant.bag, [](const Bag& b) { return b.mixed.has_value(); });
    if (!bag)
        return failure(bag.error());
    if (!(*bag)->mixed)
        return refuse(RefusalCode::BagNotMixed, subjectOf((*bag)->id));
    return facts(BagSwirled{(*bag)->id});
}

Decision on(const Context& now, const HoldBag& meant)
{
    const auto bag = bagMeant(now.bench, meant.bag, [](const Bag& b) { return !b.held(); });
    if (!bag)
        return failure(bag.error());
    if ((*bag)->held())
        return refuse(RefusalCode::BagIsHeld, subjectOf((*bag)->id));
    const auto words = meant.words.empty() ? std::nullopt : std::optional(meant.words);
    return facts(BagHeld{(*bag)->id, meant.why, words});
}

Decision on(const Context& now, const ReleaseBag& meant)
{
    const auto bag = bagToRelease(now.bench, meant);
    if (!bag)
        return failure(bag.error());
    if (meant.by.empty())
        return refuse(RefusalCode::NoPerson);
    if (meant.why.empty())
        return refuse(RefusalCode::ReasonMissing);
    if (const auto no = unprovenJudge(now.bench, meant.by))
        return failure(*no);
    return facts(BagReleased{*bag, meant.by, meant.why, meant.of});
}

Decision on(const Context& now, const TakeBagDown& meant)
{
    const auto bag = bagMeant(now.bench, meant.bag, [](const Bag&) { return true; });
    if (!bag)
        return failure(bag.error());
    const MicroLitres most = (*bag)->volume + now.card().syringe;
    if (meant.left.count < 0 || meant.left > most)
        return refuse(RefusalCode::OutOfRange, subjectOf((*bag)->id), "left");
    if (meant.by) {
        if (const auto no = unprovenJudge(now.bench, *meant.by))
            return failure(*no);
    }
    return facts(BagDown{(*bag)->id, meant.why, meant.left});
}

}  // namespace bathside::rows
