#pragma once

// The table behind `decide`: one row an intent. A row says what was said, or why not; what follows
// from it (implied holds, deviations, rejudgements) is added by `decide` for all of them alike.

#include "core/bench/decide.h"

namespace bathside::rows {

struct Context {
    const State& state;
    const Bench& bench;
    const Tap& tap;

    [[nodiscard]] const Card::Content& card() const { return bench.card->content(); }
};

// clang-format off
Decision on(const Context&, const OpenShift&);      Decision on(const Context&, const CloseShift&);
Decision on(const Context&, const TakeDuty&);       Decision on(const Context&, const RecordCheck&);
Decision on(const Context&, const OverrideCheck&);  Decision on(const Context&, const MakeNote&);
Decision on(const Context&, const TakeReading&);    Decision on(const Context&, const ChangeWater&);
Decision on(const Context&, const PlanPull&);

// decide_scan.cpp
Decision on(const Context&, const Scan&);

Decision on(const Context&, const StartBag&);       Decision on(const Context&, const InspectBag&);
Decision on(const Context&, const DrawDiluent&);    Decision on(const Context&, const MixBag&);
Decision on(const Context&, const HangBag&);        Decision on(const Context&, const SwirlBag&);
Decision on(const Context&, const HoldBag&);        Decision on(const Context&, const ReleaseBag&);
Decision on(const Context&, const TakeBagDown&);

Decision on(const Context&, const TakeOut&);        Decision on(const Context&, const MoveOn&);
Decision on(const Context&, const LoseAmpoule&);    Decision on(const Context&, const ExposeCane&);

Decision on(const Context&, const CountBirds&);     Decision on(const Context&, const ChangeNeedle&);
Decision on(const Context&, const StopLine&);       Decision on(const Context&, const GoLine&);
Decision on(const Context&, const CheckDose&);      Decision on(const Context&, const CheckBirds&);

Decision on(const Context&, const PlanLine&);

// decide_people.cpp
Decision on(const Context&, const ListPerson&);     Decision on(const Context&, const SetPin&);
Decision on(const Context&, const RefusePin&);      Decision on(const Context&, const Sign&);
Decision on(const Context&, const ReviewDeviation&);
Decision on(const Context&, const CommentNote&);    Decision on(const Context&, const ApproveCard&);
Decision on(const Context&, const ChooseBaseline&);

// decide_vessel.cpp
Decision on(const Context&, const DescribeVessel&); Decision on(const Context&, const DipVessel&);

Decision on(const Context&, const Receive&);        Decision on(const Context&, const MoveStock&);
Decision on(const Context&, const CountStock&);     Decision on(const Context&, const DiscardStock&);
Decision on(const Context&, const QuarantineLot&);  Decision on(const Context&, const ReleaseLot&);
Decision on(const Context&, const AllowLot&);       Decision on(const Context&, const ChooseLot&);

Decision on(const Context&, const TakeBack&);       Decision on(const Context&, const Correct&);
Decision on(const Context&, const Answer&);

Decision on(const Context&, const HearAlarm&);      Decision on(const Context&, const RaiseAlarm&);
Decision on(const Context&, const NoteSounded&);    Decision on(const Context&, const EndAlarm&);
Decision on(const Context&, const AdoptCard&);      Decision on(const Context&, const DescribeProbe&);
Decision on(const Context&, const StartStation&);   Decision on(const Context&, const StopStation&);
Decision on(const Context&, const NoteClockStep&);  Decision on(const Context&, const ProveSound&);
Decision on(const Context&, const LoseSound&);      Decision on(const Context&, const FindSound&);
Decision on(const Context&, const NoteStoreFailure&);
Decision on(const Context&, const NoteStoreRecovery&);
Decision on(const Context&, const NoteSealed&);     Decision on(const Context&, const NoteWitness&);
Decision on(const Context&, const NoteBackup&);     Decision on(const Context&, const NoteContinued&);
// clang-format on

[[nodiscard]] inline std::unexpected<Refusal> refuse(RefusalCode code, Subject subject = {},
                                                     std::string detail = {})
{
    return failure(Refusal{code, std::move(subject), std::move(detail)});
}

/// Why that person may not do that; nothing when they may.
[[nodiscard]] std::optional<Refusal> unentitled(const Bench& bench, const PersonId& person,
                                                Act act);

/// Why that person's word does not judge: where people are listed, they have to be proven, too.
[[nodiscard]] std::optional<Refusal> unprovenJudge(const Bench& bench, const PersonId& person);

/// Why a lot may not be used in this shift; nothing when it may.
[[nodiscard]] std::optional<Refusal> unfit(const Stores& stores, const Stock& of);

template <typename... F>
[[nodiscard]] Decision facts(F&&... fact)
{
    return std::vector<Fact>{Fact(std::forward<F>(fact))...};
}

/// The open bag that is meant: the one named, or the only one for which `fits`.
template <typename Fits>
[[nodiscard]] Result<const Bag*, Refusal> bagMeant(const Bench& bench,
                                                   const std::optional<BagId>& named, Fits fits)
{
    if (named) {
        const Bag* bag = bench.bag(*named);
        if (!bag)
            return refuse(RefusalCode::NoSuchBag, subjectOf(*named));
        return bag->isOpen() ? Result<const Bag*, Refusal>(bag)
                             : refuse(RefusalCode::BagIsDown, subjectOf(*named));
    }
    const Bag* only = nullptr;
    for (const Bag& bag : bench.bags) {
        if (!bag.isOpen() || !fits(bag))
            continue;
        if (only)
            return refuse(RefusalCode::WhichBag);
        only = &bag;
    }
    return only ? Result<const Bag*, Refusal>(only) : refuse(RefusalCode::WhichBag);
}

}  // namespace bathside::rows
