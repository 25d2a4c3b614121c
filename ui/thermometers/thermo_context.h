#pragma once

// What the questions about a thermometer need: the bench's, what is plugged in, and what has been
// typed of a calibration and is not said yet. The page owns it.

#include <functional>
#include <map>
#include <optional>

#include "core/bath/probe.h"
#include "ui/bench/bench_context.h"
#include "ui/models/live_probes.h"

namespace bathside::ui {

struct ThermoContext {
    BenchContext& bench;
    const LiveProbes& live;
    std::function<void(const QString& why)> refuse;       // a slip, in its own words
    std::function<void(const ProbeId& probe)> described;  // it is what is looked at from now on
    std::function<std::string()> balancePort;             // empty: it has none
    std::optional<Probe> calibration{};                   // typed, not saved yet
    std::map<ProbeId, Probe> setAside{};                  // the same of other thermometers

    /// Something of its calibration is typed and not saved.
    [[nodiscard]] bool isHalfTyped(const ProbeId& id) const
    {
        return (calibration && calibration->id == id) || setAside.contains(id);
    }
    /// Says what the thermometer is; what is asked stays open when it was refused.
    void describe(const Probe& probe, const AnswerTap& tap) const
    {
        const ProbeId id = probe.id;
        if (!bench.model.say(DescribeProbe{id, documentOf(probe)}, tap.inputMs, tap.place))
            return;
        bench.asker.close();
        described(id);
    }
};

}  // namespace bathside::ui
