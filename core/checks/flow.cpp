#include "core/checks/flow.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace bathside {
namespace {

constexpr double kHour = 3'600;  // s

struct Sum {
    double seconds = 0;
    double birds = 0;
};

Sum sumOf(std::span<const FlowPiece> pieces)
{
    Sum sum;
    for (const FlowPiece& piece : pieces) {
        sum.seconds += piece.seconds;
        sum.birds += piece.birds;
    }
    return sum;
}

Interval poissonInterval(double birds, double confidence)
{
    const double upper = upperTail(confidence);
    const double low = birds == 0 ? 0 : chiSquareQuantile(1 - upper, 2 * birds) / 2;
    return {low, chiSquareQuantile(upper, 2 * birds + 2) / 2};
}

/// Half the width of the quasi-Poisson interval, in birds; 0 with one piece.
double halfWidth(std::span<const FlowPiece> pieces, const Sum& sum, double confidence)
{
    if (pieces.size() < 2 || sum.birds == 0)
        return 0;
    double squares = 0;
    for (const FlowPiece& piece : pieces) {
        const double expected = sum.birds * piece.seconds / sum.seconds;
        squares += std::pow(piece.birds - expected, 2) / expected;
    }
    const auto degrees = static_cast<double>(pieces.size() - 1);
    return studentQuantile(upperTail(confidence), degrees) *
           std::sqrt(squares / degrees * sum.birds);
}

}  // namespace

Flow measuredFlow(std::span<const FlowPiece> pieces, double confidence)
{
    assert(!pieces.empty());
    const Sum sum = sumOf(pieces);
    const Interval exact = poissonInterval(sum.birds, confidence);
    const double half = halfWidth(pieces, sum, confidence);
    const double perHour = kHour / sum.seconds;
    return {sum.birds * perHour,
            {std::max(std::min(exact.low, sum.birds - half), 0.0) * perHour,
             std::max(exact.high, sum.birds + half) * perHour}};
}

std::optional<EmptyIn> emptyIn(const Flow& flow, int birds)
{
    if (flow.perHour <= 0)
        return std::nullopt;
    const auto at = [&](double perHour) { return birds / perHour * kHour; };
    EmptyIn empty{at(flow.perHour), at(flow.interval.high), std::nullopt};
    if (flow.interval.low > 0)
        empty.latest = at(flow.interval.low);
    return empty;
}

}  // namespace bathside
