// Rows of `decide`: the lines, as the bench hears of them.

#include "core/bench/decide_rows.h"
#include "core/checks/check_limits.h"
#include "core/checks/injector_case.h"
#include "core/trail/canonical.h"

namespace bathside::rows {
namespace {

/// The line that is meant: the one named (a new name is a new line), or the only one there is.
Result<LineId, Refusal> lineMeant(const Context& now, const std::optional<LineId>& named)
{
    if (!now.bench.shiftIsOpen())
        return refuse(RefusalCode::ShiftNotOpen);
    if (named && !named->empty())
        return *named;
    if (now.bench.lines.size() != 1)
        return refuse(RefusalCode::WhichLine);
    return now.bench.lines.begin()->first;
}

const Line* known(const Context& now, const LineId& id)
{
    const auto found = now.bench.lines.find(id);
    return found == now.bench.lines.end() ? nullptr : &found->second;
}

/// What the card says of a dose check cannot be said otherwise by whoever measures.
bool isHeldToCard(const Context& now, const DoseLimits& limits)
{
    const Card* card = now.bench.card.get();
    return !doseRulesOn(card) || limits == doseLimitsOn(card);
}

CoverageLimits limitsFor(const Context& now, const CheckBirds& meant)
{
    CoverageLimits limits = coverageLimitsOn(now.bench.card.get());
    if (!birdRulesOn(now.bench.card.get()))
        limits.targetPerMille = meant.targetPerMille.value_or(limits.targetPerMille);
    return limits;
}

bool isPossible(const CoverageLimits& limits)
{
    return limits.targetPerMille >= 500 && limits.targetPerMille <= 999;
}

}  // namespace

Decision on(const Context& now, const CountBirds& meant)
{
    constexpr std::int64_t kMost = 10'000'000;  // a shift's birds have seven digits at most
    const auto line = lineMeant(now, meant.line);
    if (!line)
        return failure(line.error());
    if (meant.total < 0 || meant.total > kMost)
        return refuse(RefusalCode::OutOfRange, subjectOf(*line), "birds");
    const Line* before = known(now, *line);
    if (before && meant.total < before->birds)
        return refuse(RefusalCode::CountGoesBack, subjectOf(*line), std::to_string(before->birds));
    return facts(BirdsCounted{*line, meant.total});
}

Decision on(const Context& now, const ChangeNeedle& meant)
{
    const auto line = lineMeant(now, meant.line);
    if (!line)
        return failure(line.error());
    return facts(NeedleChanged{*line});
}

Decision on(const Context& now, const StopLine& meant)
{
    const auto line = lineMeant(now, meant.line);
    if (!line)
        return failure(line.error());
    if (const Line* before = known(now, *line); before && before->stopped)
        return refuse(RefusalCode::LineStopped, subjectOf(*line));
    return facts(LineStopped{*line});
}

Decision on(const Context& now, const GoLine& meant)
{
    const auto line = lineMeant(now, meant.line);
    if (!line)
        return failure(line.error());
    if (const Line* before = known(now, *line); before && !before->stopped)
        return refuse(RefusalCode::LineGoing, subjectOf(*line));
    return facts(LineGoing{*line});
}

Decision on(const Context& now, const CheckDose& meant)
{
    const auto line = lineMeant(now, meant.line);
    if (!line)
        return failure(line.error());
    if (!meant.measured)
        return facts(DoseChecked{*line, meant.ok});
    const auto check = injectorCaseFrom(*meant.measured);
    if (!check)
        return refuse(RefusalCode::BadDocument, subjectOf(*line), check.error().key);
    if (!isHeldToCard(now, check->limits))
        return refuse(RefusalCode::BadDocument, subjectOf(*line), "limits");
    const bool ok = judged(*check).verdict == DoseVerdict::Good;
    return facts(DoseChecked{*line, ok, Document{canonicalised(*meant.measured).value_or("{}")}});
}

Decision on(const Context& now, const CheckBirds& meant)
{
    constexpr std::int64_t kMost = 10'000;  // looked at, at once
    const auto line = lineMeant(now, meant.line);
    if (!line)
        return failure(line.error());
    if (meant.looked < 1 || meant.looked > kMost)
        return refuse(RefusalCode::OutOfRange, subjectOf(*line), "birds");
    if (meant.good < 0 || meant.good > meant.looked)
        return refuse(RefusalCode::OutOfRange, subjectOf(*line), "birds");
    const CoverageLimits limits = limitsFor(now, meant);
    if (!isPossible(limits))
        return refuse(RefusalCode::OutOfRange, subjectOf(*line), "target");
    return facts(BirdsChecked{*line, meant.looked, meant.good, limits.targetPerMille,
                              limits.confidencePerMille});
}

}  // namespace bathside::rows
