// Rows of `decide`: the shift, who is on duty, the set-up checks, the bath, words.

#include <algorithm>
#include <cmath>

#include "core/bath/card_heat.h"
#include "core/bench/card_in_force.h"
#include "core/bench/decide_rows.h"
#include "core/bench/dose.h"
#include "core/stores/carry.h"

namespace bathside::rows {
namespace {

const Check* checkOf(const Context& now, const CheckId& id)
{
    const auto& checks = now.card().checks;
    const auto found = std::ranges::find(checks, id, &Check::id);
    return found == checks.end() ? nullptr : &*found;
}

/// Why the set-up cannot be spoken of now; nothing when it can.
std::optional<Refusal> noShift(const Context& now)
{
    if (!now.bench.card)
        return Refusal{RefusalCode::NoCard, {}, {}};
    if (!now.bench.shiftIsOpen())
        return Refusal{RefusalCode::ShiftNotOpen, {}, {}};
    return std::nullopt;
}

Probe probeOf(const Bench& bench, const ProbeId& id)
{
    const auto found = bench.probes.find(id);
    return found == bench.probes.end() ? Probe{.id = id,
                                               .name = {},
                                               .certificate = {},
                                               .calibrated = {},
                                               .due = {},
                                               .points = {}}
                                       : *found->second;
}

/// Raw values of one thermometer are compared with its own.
std::optional<TakenReading> lastGoodOf(const Bench& bench, const ProbeId& probe)
{
    const auto found =
        std::ranges::find(bench.readings.rbegin(), bench.readings.rend(), probe,
                          [](const TakenReading& reading) { return reading.fact.probe; });
    return found == bench.readings.rend() ? std::nullopt : std::optional(*found);
}

MilliCelsius thousandths(double celsius) { return {std::llround(celsius * 1000)}; }

ReadingTaken judgedReading(const Context& now, const ProbeId& probe, MilliCelsius raw)
{
    const auto& rules = now.card().bath;
    const auto last = lastGoodOf(now.bench, probe);
    if (const auto fault = implausible(rules, raw, last, now.tap.at))
        return {.probe = probe,
                .raw = raw,
                .corrected = {},
                .expanded = {},
                .verdict = {},
                .fault = fault};
    const Judged result =
        judged(probeOf(now.bench, probe), toleranceOf(rules), static_cast<double>(raw.count) / 1000,
               now.bench.dayAt(now.tap.at.wall), stability(now.bench.readings, probe, now.tap.at));
    return {.probe = probe,
            .raw = raw,
            .corrected = thousandths(result.corrected),
            .expanded = thousandths(result.expanded),
            .verdict = result.verdict,
            .fault = {}};
}

}  // namespace

Decision on(const Context& now, const OpenShift& meant)
{
    if (!now.bench.card)
        return refuse(RefusalCode::NoCard);
    if (now.bench.shiftIsOpen())
        return refuse(RefusalCode::ShiftAlreadyOpen);
    if (meant.person.empty())
        return refuse(RefusalCode::NoPerson);
    if (const auto no = unentitled(now.bench, meant.person, Act::WorkAtBench))
        return failure(*no);
    const auto day = meant.day.value_or(std::chrono::floor<std::chrono::days>(now.tap.at.wall));
    std::vector<Fact> said{ShiftOpened{meant.zone, cardOfNextBag(now.bench)->hash(), meant.day,
                                       unprovenBirds(now.bench)}};
    if (auto balance = carried(now.bench.stores, day))
        said.emplace_back(StoreCarried{std::move(*balance)});
    if (auto open = carriedFrom(now.bench.reviews))
        said.emplace_back(ReviewCarried{std::move(*open)});
    said.emplace_back(DutyTaken{meant.person});
    return said;
}

Decision on(const Context& now, const CloseShift&)
{
    if (const auto no = noShift(now))
        return failure(*no);
    ShiftClosed counts;
    for (const Pull& pull : now.bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules) {
            if (ampoule.isOpen())
                return refuse(RefusalCode::AmpouleStillOpen, subjectOf(ampoule.ref));
            ++counts.out;
            ++(ampoule.bag ? counts.bagged : counts.lost);
        }
    }
    for (const Bag& bag : now.bench.bags) {
        if (bag.isOpen())
            return refuse(RefusalCode::BagStillOpen, subjectOf(bag.id));
        ++counts.bags;
    }
    return facts(counts);
}

Decision on(const Context& now, const TakeDuty& meant)
{
    if (const auto no = noShift(now))
        return failure(*no);
    if (meant.person.empty())
        return refuse(RefusalCode::NoPerson);
    if (const auto no = unentitled(now.bench, meant.person, Act::WorkAtBench))
        return failure(*no);
    return facts(DutyTaken{meant.person});
}

Decision on(const Context& now, const RecordCheck& meant)
{
    if (const auto no = noShift(now))
        return failure(*no);
    if (!checkOf(now, meant.check))
        return refuse(RefusalCode::UnknownCheck, {}, meant.check.text);
    const CheckRecorded recorded{meant.check, meant.ok, meant.value};
    if (meant.check == kAlarmHeard && meant.ok && (!now.bench.soundProven || now.bench.soundLost))
        return facts(recorded, SoundProven{meant.value.value_or("")});
    return facts(recorded);
}

Decision on(const Context& now, const OverrideCheck& meant)
{
    if (const auto no = noShift(now))
        return failure(*no);
    if (!checkOf(now, meant.check))
        return refuse(RefusalCode::UnknownCheck, {}, meant.check.text);
    if (meant.why.empty())
        return refuse(RefusalCode::ReasonMissing);
    return facts(CheckOverridden{meant.check, meant.why});
}

Decision on(const Context& now, const TakeReading& meant)
{
    if (!now.bench.card)
        return refuse(RefusalCode::NoCard);
    if (const auto* fault = std::get_if<ReadingFault>(&meant.value))
        return facts(ReadingTaken{.probe = meant.probe,
                                  .raw = {},
                                  .corrected = {},
                                  .expanded = {},
                                  .verdict = {},
                                  .fault = *fault});
    return facts(judgedReading(now, meant.probe, std::get<MilliCelsius>(meant.value)));
}

Decision on(const Context& now, const ChangeWater& meant)
{
    if (const auto no = noShift(now))
        return failure(*no);
    return facts(BathChanged{meant.why});
}

Decision on(const Context& now, const PlanPull& meant)
{
    if (const auto no = noShift(now))
        return failure(*no);
    return facts(PullPlanned{meant.start});
}

Decision on(const Context&, const MakeNote& meant)
{
    if (meant.text.empty())
        return refuse(RefusalCode::ReasonMissing);
    return facts(NoteMade{meant.text});
}

}  // namespace bathside::rows
