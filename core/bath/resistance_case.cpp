#include "core/bath/resistance_case.h"

#include <nlohmann/json.hpp>

#include "core/card/strict_json.h"

namespace bathside {

enum class ElementKind : std::uint8_t { Pt100, Pt1000, Ntc };

template <>
struct Names<ElementKind> {
    static constexpr std::array<std::string_view, 3> all{"pt100", "pt1000", "ntc"};
};

namespace {

constexpr NumberRange kOhms{0, 1e9, "Ω"};
constexpr NumberRange kRange{-100, 300, "°C"};

ThermistorPoint pointFrom(JsonObject& object)
{
    const ThermistorPoint point{object.number("c", kRange), object.number("ohm", kOhms)};
    object.noOthers();
    return point;
}

Thermistor fromPoints(JsonObject& root)
{
    std::array<ThermistorPoint, 3> points{};
    auto objects = root.objects("points", points.size(), points.size());
    for (std::size_t i = 0; i < objects.size(); ++i)
        points.at(i) = pointFrom(objects[i]);
    const auto element = thermistorFrom(points);
    if (!element)
        root.refuse("points", "three points whose resistance falls as temperature rises");
    return element.value_or(Thermistor{});
}

Thermistor fromCoefficients(JsonObject& root)
{
    Thermistor element;
    element.a = root.number("a", {-1, 1, "1/K"});
    element.b = root.number("b", {-1, 1, "1/K"});
    element.c = root.number("c", {-1, 1, "1/K"});
    element.lowest = root.numberIfAny("lowest_c", kRange).value_or(element.lowest);
    element.highest = root.numberIfAny("highest_c", kRange).value_or(element.highest);
    if (element.lowest >= element.highest)
        root.refuse("highest_c", "more than lowest_c");
    return element;
}

ResistanceElement elementFrom(JsonObject& root)
{
    switch (root.word<ElementKind>("element")) {
        case ElementKind::Pt100:
            return Platinum{100};
        case ElementKind::Pt1000:
            return Platinum{1000};
        case ElementKind::Ntc:
            return root.has("points") ? fromPoints(root) : fromCoefficients(root);
    }
    return Platinum{};
}

}  // namespace

Result<ResistanceCase, DocumentFault> resistanceCaseFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    ResistanceCase found{elementFrom(root), root.number("ohm", kOhms)};
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return found;
}

std::string toJson(const Result<double, ReadingFault>& reading)
{
    if (reading)
        return nlohmann::ordered_json{{"celsius", *reading}}.dump();
    return nlohmann::ordered_json{{"fault", nameOf(reading.error())}}.dump();
}

}  // namespace bathside
