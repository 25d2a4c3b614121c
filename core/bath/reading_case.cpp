#include "core/bath/reading_case.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/base/rfc3339.h"
#include "core/bath/probe_reader.h"

namespace bathside {
namespace {

/// The day on the calendar of the offset that the text names.
std::chrono::sys_days localDay(JsonObject& object, std::string_view key)
{
    const std::string text = object.text(key, 40);
    const auto day = fromRfc3339(text) ? dayFrom(text.substr(0, 10)) : std::nullopt;
    if (!day)
        object.refuse(key, "an RFC 3339 instant with its offset, from the year 1900 on");
    return day.value_or(std::chrono::sys_days());
}

}  // namespace

Result<ReadingCase, DocumentFault> readingCaseFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    ReadingCase reading;
    reading.tolerance.target = root.number("target_c", kCelsius);
    reading.tolerance.tolerance = root.number("tolerance_c", {0, 100, "°C"});
    if (reading.tolerance.tolerance <= 0)
        root.refuse("tolerance_c", "a number above 0 and at most 100 °C");
    reading.tolerance.guard = root.number("guard", {0, 10, ""});
    reading.indicated = root.number("indicated_c", kCelsius);
    reading.on = localDay(root, "at");
    reading.stability = root.number("stability_c", {0, 100, "°C"});
    reading.probe = probeIn(root.object("probe"));
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return reading;
}

Judged judged(const ReadingCase& reading)
{
    return judged(reading.probe, reading.tolerance, reading.indicated, reading.on,
                  reading.stability);
}

std::string toJson(const Judged& judged)
{
    auto warnings = nlohmann::ordered_json::array();
    for (const ReadingWarning warning : judged.warnings)
        if (warning != ReadingWarning::CannotDecide)
            warnings.push_back(nameOf(warning));
    const bool canDecide =
        std::ranges::find(judged.warnings, ReadingWarning::CannotDecide) == judged.warnings.end();
    return nlohmann::ordered_json{{"corrected_c", judged.corrected},
                                  {"expanded_u_c", judged.expanded},
                                  {"verdict", nameOf(judged.verdict)},
                                  {"conformity", judged.conformity},
                                  {"warnings", warnings},
                                  {"can_decide", canDecide}}
        .dump();
}

}  // namespace bathside
