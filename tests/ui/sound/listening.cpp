#include "tests/ui/sound/listening.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace bathside::test {

namespace {

constexpr double kWindow = 0.004;  // seconds: over one period of the lowest pitch
constexpr double kBridge = 0.030;

std::vector<double> envelopeOf(std::span<const float> samples, std::size_t window)
{
    std::vector<double> envelope(samples.size());
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const std::size_t from = i < window ? 0 : i - window;
        const std::size_t to = std::min(samples.size(), i + window);
        if (i % (window / 8) != 0 && i > 0) {
            envelope[i] = envelope[i - 1];
            continue;
        }
        for (std::size_t k = from; k < to; ++k)
            envelope[i] = std::max(envelope[i], static_cast<double>(std::abs(samples[k])));
    }
    return envelope;
}

}  // namespace

std::vector<Heard> pulsesIn(std::span<const float> samples, double rate)
{
    std::vector<Heard> pulses;
    if (samples.empty())
        return pulses;
    // The envelope looks half a window ahead and behind: what that widens is taken off again.
    const auto window = static_cast<std::size_t>(kWindow * rate / 2.0);
    const std::vector<double> envelope = envelopeOf(samples, window);
    const double half = *std::ranges::max_element(envelope) / 2.0;
    if (half <= 0.0)
        return pulses;
    for (std::size_t i = 0; i < envelope.size(); ++i) {
        if (envelope[i] < half)
            continue;
        const double at = static_cast<double>(i) / rate;
        if (pulses.empty() || at - pulses.back().end > kBridge)
            pulses.push_back({at, at, 0.0});
        pulses.back().end = at;
        pulses.back().loudest = std::max(pulses.back().loudest, envelope[i]);
    }
    for (Heard& pulse : pulses) {
        pulse.start += kWindow / 2.0;
        pulse.end -= kWindow / 2.0;
    }
    return pulses;
}

double levelAt(std::span<const float> samples, double rate, double hz)
{
    const double n = static_cast<double>(samples.size());
    const double coefficient = 2.0 * std::cos(2.0 * std::numbers::pi * hz / rate);
    double before = 0.0;
    double last = 0.0;
    double weight = 0.0;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double hann =
            0.5 - 0.5 * std::cos(2.0 * std::numbers::pi * (static_cast<double>(i) + 0.5) / n);
        weight += hann;
        const double next = static_cast<double>(samples[i]) * hann + coefficient * last - before;
        before = last;
        last = next;
    }
    const double power = last * last + before * before - coefficient * last * before;
    return 20.0 * std::log10(std::max(1e-9, 2.0 * std::sqrt(std::max(0.0, power)) / weight));
}

double pitchIn(std::span<const float> samples, double rate, double from, double to)
{
    double best = from;
    double highest = -1e9;
    for (double hz = from; hz <= to; hz += 1.0) {
        const double level = levelAt(samples, rate, hz);
        if (level > highest) {
            highest = level;
            best = hz;
        }
    }
    return best;
}

std::span<const float> middleOf(std::span<const float> samples, double rate, const Heard& pulse)
{
    const double quarter = (pulse.end - pulse.start) / 5.0;
    const auto from = static_cast<std::size_t>((pulse.start + quarter) * rate);
    const auto to = static_cast<std::size_t>((pulse.end - quarter) * rate);
    return samples.subspan(from, to - from);
}

}  // namespace bathside::test
