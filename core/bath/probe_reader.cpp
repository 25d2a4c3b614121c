#include "core/bath/probe_reader.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/trail/json_text.h"

namespace bathside {
namespace {

using std::chrono::sys_days;

constexpr NumberRange kSpread{0, 100, "°C"};
constexpr std::size_t kMostPoints = 50;
constexpr double kMicros = 1e6;

// The same quantity in °C as a decimal, or as whole µ°C.
enum class Form : std::uint8_t { Celsius, MicroCelsius };

double quantity(JsonObject& object, Form form, const std::string& key, const NumberRange& range)
{
    if (form == Form::Celsius)
        return object.number(key + "_c", range);
    const WholeRange whole{std::llround(range.from * kMicros), std::llround(range.to * kMicros),
                           "µ°C"};
    return static_cast<double>(object.whole(key + "_uc", whole)) / kMicros;
}

CalibrationPoint pointFrom(JsonObject& object, Form form)
{
    CalibrationPoint point;
    point.indicated = quantity(object, form, "indicated", kCelsius);
    point.reference = quantity(object, form, "reference", kCelsius);
    point.expanded = quantity(object, form, form == Form::Celsius ? "u" : "expanded", kSpread);
    object.noOthers();
    return point;
}

std::vector<CalibrationPoint> pointsFrom(JsonObject& object, Form form)
{
    std::vector<CalibrationPoint> points;
    for (JsonObject& point : object.objects("points", 0, kMostPoints))
        points.push_back(pointFrom(point, form));
    std::ranges::sort(points, {}, &CalibrationPoint::indicated);
    const auto micros = [](const CalibrationPoint& point) {
        return std::llround(point.indicated * kMicros);
    };
    if (std::ranges::adjacent_find(points, {}, micros) != points.end())
        object.refuse("points", "each indicated value once");
    return points;
}

std::optional<sys_days> dayIn(JsonObject& object, std::string_view key)
{
    const auto day = dayFrom(object.text(key, 80));
    if (!day)
        object.refuse(key, "a day, YYYY-MM-DD");
    return day;
}

void appendText(std::string& out, std::string_view key, std::string_view text)
{
    if (text.empty())
        return;
    appendJsonString(out, key);
    out += ':';
    appendJsonString(out, text);
    out += ',';
}

void appendMicros(std::string& out, std::string_view key, double celsius)
{
    appendJsonString(out, key);
    out += ':';
    appendNumber(out, std::llround(celsius * kMicros));
}

std::string pointsText(const std::vector<CalibrationPoint>& points)
{
    std::string out = "[";
    for (const CalibrationPoint& point : points) {
        out += out.size() > 1 ? ",{" : "{";
        appendMicros(out, "expanded_uc", point.expanded);
        appendMicros(out += ',', "indicated_uc", point.indicated);
        appendMicros(out += ',', "reference_uc", point.reference);
        out += '}';
    }
    return out + "]";
}

}  // namespace

Probe probeIn(JsonObject object)
{
    const Form form = object.has("resolution_uc") ? Form::MicroCelsius : Form::Celsius;
    Probe probe;
    probe.id = {object.textIfAny("id", 80).value_or("")};
    probe.name = object.textIfAny("name", 80).value_or("");
    probe.certificate = object.textIfAny("certificate", 80).value_or("");
    probe.resolution = quantity(object, form, "resolution", kSpread);
    probe.drift = quantity(object, form, "drift", kSpread);
    probe.points = pointsFrom(object, form);
    if (object.has("calibrated"))
        probe.calibrated = dayIn(object, "calibrated");
    if (object.has("due") || !probe.points.empty())
        probe.due = dayIn(object, "due");
    if (probe.calibrated && probe.due && *probe.due < *probe.calibrated)
        object.refuse("due", "a day not before calibrated");
    probe.inBath = object.has("in_bath") && object.flag("in_bath");
    if (auto source = object.objectIfAny("source"))
        probe.source = sourceIn(*source);
    object.noOthers();
    return probe;
}

Result<Probe, ProbeFault> probeFrom(std::string_view document)
{
    StrictJson json(document);
    Probe probe = probeIn(json.root());
    if (json.fault())
        return failure(*json.fault());
    return probe;
}

// Keys in their canonical order.
std::string documentOf(const Probe& probe)
{
    std::string out = "{";
    appendText(out, "calibrated", probe.calibrated ? toText(*probe.calibrated) : std::string());
    appendText(out, "certificate", probe.certificate);
    appendMicros(out, "drift_uc", probe.drift);
    out += ',';
    appendText(out, "due", probe.due ? toText(*probe.due) : std::string());
    appendText(out, "id", probe.id.text);
    if (probe.inBath)
        out += "\"in_bath\":true,";
    appendText(out, "name", probe.name);
    out += "\"points\":" + pointsText(probe.points) + ",";
    appendMicros(out, "resolution_uc", probe.resolution);
    if (!std::holds_alternative<ByHand>(probe.source))
        out += ",\"source\":" + documentOf(probe.source);
    return out + "}";
}

}  // namespace bathside
