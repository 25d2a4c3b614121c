// What a start reads: the facts that outlive a shift, then the last shift.

#include <algorithm>
#include <array>

#include "core/station/station.h"

namespace bathside {
namespace {

/// Of which events it changes something; none: it is no amendment.
std::vector<Seq> amendedBy(const Fact& fact)
{
    if (const auto* takenBack = std::get_if<FactTakenBack>(&fact))
        return takenBack->seqs;
    const auto* corrected = std::get_if<FactCorrected>(&fact);
    return corrected ? std::vector{corrected->seq} : std::vector<Seq>{};
}

constexpr std::array<std::pair<std::string_view, int>, 5> kOften{{
    {StationStarted::kKind, 1},
    {BackupMade::kKind, 1},
    {RecordSigned::kKind, 200},  // and PINs that were wrong: for the wait after them
    {PinRefused::kKind, 200},
    {VesselDipped::kKind, 400},  // half a year of two vessels
}};

/// Most amendments are of facts that nobody carries, and each costs a fold.
bool concerns(const State& state, const Event& event)
{
    const auto seqs = amendedBy(event.fact);
    return seqs.empty() ||
           std::ranges::any_of(seqs, [&](Seq seq) { return eventAt(state, seq) != nullptr; });
}

}  // namespace

State restored(const std::vector<Event>& carried, const std::vector<Event>& since)
{
    State state;
    for (const Event& event : carried) {
        if (concerns(state, event))
            state = evolve(std::move(state), event);
    }
    for (const Event& event : since)
        state = evolve(std::move(state), event);
    return state;
}

const std::vector<std::string>& carriedKinds()
{
    static const std::vector<std::string> kinds{
        std::string(CardAdopted::kKind),    std::string(ProbeDescribed::kKind),
        std::string(CardApproved::kKind),   std::string(PersonListed::kKind),
        std::string(PinSet::kKind),         std::string(PinRefused::kKind),
        std::string(RecordSigned::kKind),   std::string(VesselDescribed::kKind),
        std::string(VesselDipped::kKind),   std::string(BackupMade::kKind),
        std::string(BaselineChosen::kKind), std::string(FactTakenBack::kKind),
        std::string(FactCorrected::kKind)};
    return kinds;
}

std::optional<int> latestThatMatter(std::string_view kind)
{
    const auto often = std::ranges::find(kOften, kind, [](const auto& one) { return one.first; });
    return often == kOften.end() ? std::nullopt : std::optional(often->second);
}

}  // namespace bathside
