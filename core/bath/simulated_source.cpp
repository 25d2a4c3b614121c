#include "core/bath/simulated_source.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace bathside {
namespace {

constexpr double kStep = 0.0625;  // °C: what a 12-bit sensor shows

double inSeconds(Micros time) { return std::chrono::duration<double>(time).count(); }

}  // namespace

SimulatedSource::SimulatedSource(const SimulatedBath& bath, ProbeId probe, const Stamp& start)
    : m_bath(bath), m_probe(std::move(probe)), m_start(start)
{
}

std::optional<RawReading> SimulatedSource::poll(const Stamp& now)
{
    const Stamp at = shifted(m_start, m_next * Micros(m_bath.every));
    if (at.boot > now.boot)
        return std::nullopt;
    ++m_next;
    const double shown = std::round(waterAt(at) / kStep) * kStep;
    return RawReading{m_probe, at, MilliCelsius{std::llround(shown * 1000)}};
}

void SimulatedSource::dip(const Stamp& at, double depth) { m_dips.push_back({at, depth}); }

double SimulatedSource::waterAt(const Stamp& at) const
{
    const double turns = inSeconds(elapsed(m_start, at).time) / inSeconds(m_bath.period);
    double water = m_bath.level + m_bath.drift * std::sin(2 * std::numbers::pi * turns);
    for (const Dip& dip : m_dips)
        if (dip.at.boot <= at.boot)
            water -= dip.depth *
                     std::exp(-inSeconds(elapsed(dip.at, at).time) / inSeconds(m_bath.recovery));
    return water;
}

}  // namespace bathside
