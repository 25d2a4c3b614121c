#include "core/bath/probe.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace bathside {
namespace {

// Far below any thermometer, far above the noise of adding decimals in binary.
constexpr double kNoise = 1e-9;

struct Correction {
    double value = 0;     // °C, to be added
    double expanded = 0;  // °C, U of the certificate here
    bool isBeyond = false;
};

Correction at(const CalibrationPoint& point, bool isBeyond)
{
    return {point.reference - point.indicated, point.expanded, isBeyond};
}

Correction between(const CalibrationPoint& low, const CalibrationPoint& high, double indicated)
{
    const double share = (indicated - low.indicated) / (high.indicated - low.indicated);
    const Correction from = at(low, false);
    const Correction to = at(high, false);
    return {std::lerp(from.value, to.value, share), std::lerp(from.expanded, to.expanded, share),
            false};
}

Correction correctionFor(const std::vector<CalibrationPoint>& points, double indicated)
{
    if (points.empty())
        return {};
    if (indicated <= points.front().indicated)
        return at(points.front(), indicated < points.front().indicated);
    if (indicated >= points.back().indicated)
        return at(points.back(), indicated > points.back().indicated);
    const auto high = std::ranges::upper_bound(points, indicated, {}, &CalibrationPoint::indicated);
    return between(*std::prev(high), *high, indicated);
}

/// JCGM 100: standard uncertainties in quadrature; a rectangle's is its half-width / √3
/// (resolution: half of a step).
double standardUncertainty(const Probe& probe, double expandedOfCertificate, double stability)
{
    const double certificate = expandedOfCertificate / 2;
    const double resolution = probe.resolution / (2 * std::numbers::sqrt3);
    const double drift = probe.drift / std::numbers::sqrt3;
    return std::sqrt(certificate * certificate + resolution * resolution + drift * drift +
                     stability * stability);
}

/// The normal probability beyond z standard deviations.
double beyond(double z) { return std::erfc(z / std::numbers::sqrt2) / 2; }

/// The probability that a normal variable of mean `mean` lies in [low, high]; each tail from its
/// own side.
double probabilityWithin(double mean, double u, double low, double high)
{
    if (u <= 0)
        return low - kNoise <= mean && mean <= high + kNoise ? 1 : 0;
    const double below = (mean - low) / u;
    const double above = (high - mean) / u;
    if (below < 0)
        return beyond(-below) - beyond(above);
    if (above < 0)
        return beyond(-above) - beyond(below);
    return 1 - beyond(below) - beyond(above);
}

Verdict verdictOf(double corrected, double guardBand, const Tolerance& tolerance)
{
    const double low = tolerance.target - tolerance.tolerance;
    const double high = tolerance.target + tolerance.tolerance;
    if (corrected < low - guardBand - kNoise || corrected > high + guardBand + kNoise)
        return Verdict::Outside;
    if (corrected >= low + guardBand - kNoise && corrected <= high - guardBand + kNoise)
        return Verdict::Inside;
    return Verdict::Undecided;
}

}  // namespace

Judged judged(const Probe& probe, const Tolerance& tolerance, double indicated,
              std::chrono::sys_days on, double stability)
{
    const Correction correction = correctionFor(probe.points, indicated);
    const double u = standardUncertainty(probe, correction.expanded, stability);
    Judged result;
    result.corrected = indicated + correction.value;
    result.expanded = 2 * u;
    result.conformity =
        probabilityWithin(result.corrected, u, tolerance.target - tolerance.tolerance,
                          tolerance.target + tolerance.tolerance);
    const double guardBand = tolerance.guard * result.expanded;
    result.verdict = verdictOf(result.corrected, guardBand, tolerance);
    if (correction.isBeyond)
        result.warnings.push_back(ReadingWarning::BeyondRange);
    if (probe.due && on > *probe.due)
        result.warnings.push_back(ReadingWarning::Overdue);
    if (probe.points.empty())
        result.warnings.push_back(ReadingWarning::NotCalibrated);
    if (guardBand > tolerance.tolerance + kNoise)
        result.warnings.push_back(ReadingWarning::CannotDecide);
    if (probe.points.empty() && result.verdict == Verdict::Inside)
        result.verdict = Verdict::Undecided;
    return result;
}

Judged judgedAgain(const Probe& probe, const Tolerance& tolerance, double indicated,
                   std::chrono::sys_days on, double expanded)
{
    const double own = judged(probe, tolerance, indicated, on, 0).expanded;
    const double beyond = std::sqrt(std::max(0.0, expanded * expanded - own * own)) / 2;
    return judged(probe, tolerance, indicated, on, beyond);
}

}  // namespace bathside
