// Rows of `decide`: the cryogen vessel.

#include "core/bench/decide_rows.h"
#include "core/trail/canonical.h"

namespace bathside::rows {

Decision on(const Context&, const DescribeVessel& meant)
{
    if (meant.vessel.empty())
        return refuse(RefusalCode::NoSuchVessel);
    if (const auto vessel = vesselFrom(meant.document); !vessel)
        return refuse(RefusalCode::BadDocument, {}, vessel.error().key);
    return facts(VesselDescribed{meant.vessel, {canonicalised(meant.document).value_or("{}")}});
}

Decision on(const Context& now, const DipVessel& meant)
{
    const auto found = now.bench.vessels.find(meant.vessel);
    if (found == now.bench.vessels.end() || !found->second.vessel)
        return refuse(RefusalCode::NoSuchVessel);
    const auto& dipstick = found->second.vessel->dipstick;
    if (!dipstick.litresAt(static_cast<double>(meant.millimetres)))
        return refuse(RefusalCode::OutOfRange, {}, "mm of the dipstick's table");
    return facts(VesselDipped{meant.vessel, meant.millimetres, meant.filled});
}

}  // namespace bathside::rows
