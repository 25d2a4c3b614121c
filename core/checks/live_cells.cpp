#include "core/checks/live_cells.h"

#include <cmath>

namespace bathside {
namespace {

std::optional<Interval> shareAfter(double hours, const std::optional<LossRate>& loss)
{
    if (hours == 0)
        return Interval{1, 1};
    if (!loss || loss->source.empty())
        return std::nullopt;
    return Interval{std::exp2(-hours / loss->halfLife.low),
                    std::exp2(-hours / loss->halfLife.high)};
}

}  // namespace

std::optional<Interval> shareLeft(const LiveCells& cells)
{
    const auto bath = shareAfter(cells.bathHours, cells.bathLoss);
    const auto bag = shareAfter(cells.bagHours, cells.bagLoss);
    if (!bath || !bag)
        return std::nullopt;
    return Interval{bath->low * bag->low, bath->high * bag->high};
}

std::optional<Interval> perDose(const LiveCells& cells)
{
    const auto share = shareLeft(cells);
    if (!share)
        return std::nullopt;
    const double doses = cells.dosesIn / cells.dosesOut;
    return Interval{cells.titre.low * doses * share->low, cells.titre.high * doses * share->high};
}

CellsVerdict judged(const Interval& band, double minimum)
{
    if (band.low >= minimum)
        return CellsVerdict::Above;
    return band.high < minimum ? CellsVerdict::Below : CellsVerdict::Undecided;
}

}  // namespace bathside
