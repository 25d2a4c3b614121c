// The verbs of checks and the cryogen vessel.

#include "core/replay/verbs.h"

namespace bathside {
namespace {

Statement doseCheck(JsonObject& entry)
{
    CheckDose check{.line = lineIn(entry), .ok = true, .measured = {}};
    if (entry.has("measured"))
        check.measured = entry.document("measured");
    else if (entry.has("ok"))
        check.ok = entry.flag("ok");
    return Intent(check);
}

Statement birdsCheck(JsonObject& entry)
{
    constexpr WholeRange kBirds{0, 1'000'000, "birds"};
    CheckBirds check{.line = lineIn(entry)};
    check.looked = entry.whole("looked", kBirds);
    check.good = entry.whole("good", kBirds);
    check.targetPerMille = entry.wholeIfAny("target_per_mille", {500, 999, "per mille"});
    return Intent(check);
}

Statement vessel(JsonObject& entry)
{
    const VesselId id{entry.text("vessel", kShortText)};
    return Intent(DescribeVessel{id, entry.document("description")});
}

Statement dip(JsonObject& entry)
{
    DipVessel read{.vessel = {entry.text("vessel", kShortText)}};
    read.millimetres = entry.whole("level_mm", {0, 5'000, "mm"});
    read.filled = entry.has("filled") && entry.flag("filled");
    return Intent(read);
}

}  // namespace

std::optional<LineId> lineIn(JsonObject& entry)
{
    return entry.has("line") ? std::optional(LineId{entry.text("line", kShortText)}) : std::nullopt;
}

void addCheckVerbs(Verbs& verbs)
{
    verbs["dose-check"] = doseCheck;
    verbs["birds-check"] = birdsCheck;
    verbs["vessel"] = vessel;
    verbs["dip"] = dip;
}

}  // namespace bathside
