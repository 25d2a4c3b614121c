#include "ui/sound/burst.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <span>
#include <utility>

namespace bathside::ui {

namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

// What a pulse is made of. `edge` is the share of the pulse spent rising, and again falling.
struct Timbre {
    std::span<const double> harmonicsDb;  // against the fundamental, which is the first
    double edge = 0.0;
    double peak = 0.0;
};

// Within 15 dB of the fundamental, five of them: at the highest pitch used (720 Hz) the fifth is at
// 3600 Hz, so at least four harmonics lie in 300 to 4000 Hz (IEC 60601-1-8, table 4, as quoted in
// trade pages).
constexpr double kAlarmHarmonics[] = {0.0, -2.0, -3.0, -5.0, -7.0};
constexpr double kPlainHarmonics[] = {0.0};
constexpr double kBuzzHarmonics[] = {0.0, -3.0, -6.0};

// Rise 10 to 40 % of the pulse (table 4, from memory). 15 % keeps lengths and gaps within their
// ranges whether they are counted between the feet or between the half heights of the edges.
constexpr Timbre kAlarm{kAlarmHarmonics, 0.15, 0.8};
constexpr Timbre kClick{kPlainHarmonics, 0.10, 0.45};
constexpr Timbre kRefusal{kBuzzHarmonics, 0.10, 0.6};

std::size_t samplesIn(Micros time)
{
    return static_cast<std::size_t>(time.count() * kSampleRate / 1'000'000);
}

// Raised cosine from 0 to 1 over the edge, 1 between, and back.
double envelope(double position, double edge)
{
    const double nearest = std::min(position, 1.0 - position);
    if (nearest >= edge)
        return 1.0;
    return 0.5 - 0.5 * std::cos(std::numbers::pi * nearest / edge);
}

// Phases after Schroeder (k² π / n) keep the crest low, so that more of it is heard at the same
// peak.
void addHarmonic(std::vector<double>& raw, double pitchHz, std::size_t number, double db,
                 double count)
{
    const double k = static_cast<double>(number);
    const double phase = -std::numbers::pi * k * (k - 1.0) / count;
    const double step = 2.0 * std::numbers::pi * k * pitchHz / kSampleRate;
    const double amplitude = std::pow(10.0, db / 20.0);
    for (std::size_t i = 0; i < raw.size(); ++i)
        raw[i] += amplitude * std::sin(step * static_cast<double>(i) + phase);
}

std::vector<float> pulseSamples(const Pulse& pulse, const Timbre& timbre)
{
    std::vector<double> raw(samplesIn(pulse.length));
    const double count = static_cast<double>(timbre.harmonicsDb.size());
    for (std::size_t i = 0; i < timbre.harmonicsDb.size(); ++i)
        addHarmonic(raw, pulse.pitchHz, i + 1, timbre.harmonicsDb[i], count);
    double highest = 0.0;
    for (std::size_t i = 0; i < raw.size(); ++i) {
        raw[i] *= envelope(static_cast<double>(i) / static_cast<double>(raw.size()), timbre.edge);
        highest = std::max(highest, std::abs(raw[i]));
    }
    std::vector<float> samples(raw.size());
    std::ranges::transform(raw, samples.begin(), [&](double value) {
        return static_cast<float>(value / highest * timbre.peak);
    });
    return samples;
}

Burst synthesise(std::vector<Pulse> pulses, const Timbre& timbre, Micros pause = {})
{
    Burst burst{.pulses = std::move(pulses), .samples = {}, .repeatAfter = {}};
    burst.samples.resize(samplesIn(burst.length()));
    std::vector<float> one;
    const Pulse* made = nullptr;
    for (const Pulse& pulse : burst.pulses) {
        if (!made || made->length != pulse.length || made->pitchHz != pulse.pitchHz)
            one = pulseSamples(pulse, timbre);
        made = &pulse;
        std::ranges::copy(
            one, burst.samples.begin() + static_cast<std::ptrdiff_t>(samplesIn(pulse.start)));
    }
    if (pause > Micros{})
        burst.repeatAfter = burst.length() + pause;
    return burst;
}

std::vector<Pulse> pulsesAt(std::initializer_list<milliseconds> starts, milliseconds length,
                            double pitchHz)
{
    std::vector<Pulse> pulses;
    for (const milliseconds start : starts)
        pulses.push_back({start, length, pitchHz});
    return pulses;
}

// Pulse counts, lengths, gaps and pauses: IEC 60601-1-8, table 3 (from memory). The pitches are our
// own.
constexpr double kHeadsUpHz = 330.0;
constexpr double kLimitHz = 500.0;
constexpr double kOverrunHz = 720.0;

}  // namespace

Burst burstOf(Level level)
{
    using namespace std::chrono_literals;
    switch (level) {
        case Level::HeadsUp:
            return synthesise(pulsesAt({0ms, 360ms}, 180ms, kHeadsUpHz), kAlarm, seconds{20});
        case Level::Limit:
            return synthesise(pulsesAt({0ms, 400ms, 800ms}, 200ms, kLimitHz), kAlarm, seconds{5});
        case Level::Overrun:
            // x, x, 2x + td, x, then the long gap and the same five once more; x = 100 ms, td = 150
            // ms.
            return synthesise(pulsesAt({0ms, 250ms, 500ms, 1000ms, 1250ms, 2000ms, 2250ms, 2500ms,
                                        3000ms, 3250ms},
                                       150ms, kOverrunHz),
                              kAlarm, seconds{3});
    }
    return {};
}

Burst burstOf(Cue cue)
{
    using namespace std::chrono_literals;
    switch (cue) {
        case Cue::Click:
            return synthesise({{0ms, 25ms, 1200.0}}, kClick);
        case Cue::Refusal:
            return synthesise({{0ms, 90ms, 220.0}, {110ms, 140ms, 165.0}}, kRefusal);
        case Cue::Test:
            return synthesise(
                {{0ms, 250ms, kHeadsUpHz}, {400ms, 250ms, kLimitHz}, {800ms, 250ms, kOverrunHz}},
                kAlarm);
    }
    return {};
}

SoundBook::SoundBook()
{
    for (const Level level : {Level::HeadsUp, Level::Limit, Level::Overrun})
        m_levels.push_back(std::make_shared<const Burst>(burstOf(level)));
    for (const Cue cue : {Cue::Click, Cue::Refusal, Cue::Test})
        m_cues.push_back(std::make_shared<const Burst>(burstOf(cue)));
}

std::shared_ptr<const Burst> SoundBook::of(Level level) const
{
    return m_levels.at(static_cast<std::size_t>(level));
}

std::shared_ptr<const Burst> SoundBook::of(Cue cue) const
{
    return m_cues.at(static_cast<std::size_t>(cue));
}

}  // namespace bathside::ui
