#include "core/bath/probe_source.h"

#include <algorithm>
#include <cmath>

#include "core/trail/json_text.h"

namespace bathside {

enum class SourceKind : std::uint8_t { Hand, OneWire, Serial, OutOfUse };

template <>
struct Names<SourceKind> {
    static constexpr std::array<std::string_view, 4> all{"hand", "one-wire", "serial",
                                                         "out of use"};
};

namespace {

constexpr std::size_t kLongestDevice = 40;
constexpr std::size_t kLongestPort = 200;
constexpr double kPerCoefficient = 1e18;
constexpr double kRoom = 25;  // °C, at which a thermistor is named by its resistance

OneWire oneWireIn(JsonObject& object)
{
    OneWire source{object.text("device", kLongestDevice)};
    // The name becomes part of a path.
    if (source.device.find_first_of("/.") != std::string::npos)
        object.refuse("device", "a name as the kernel gives it, e.g. 28-0000075f2b1c");
    return source;
}

double coefficientIn(JsonObject& object, std::string_view key)
{
    constexpr WholeRange kRange{-kLargestCoefficient, kLargestCoefficient, "1e-18"};
    // The quotient of two exact numbers is the double nearest to the decimal.
    return static_cast<double>(object.whole(key, kRange)) / kPerCoefficient;
}

Thermistor thermistorIn(JsonObject object)
{
    Thermistor element;
    element.a = coefficientIn(object, "a");
    element.b = coefficientIn(object, "b");
    element.c = coefficientIn(object, "c");
    if (!ohmOf(element, kRoom))
        object.refuse("a", "coefficients by which resistance falls as temperature rises");
    object.noOthers();
    return element;
}

SerialLine serialIn(JsonObject& object)
{
    SerialLine source;
    source.port = object.text("port", kLongestPort);
    if (!source.port.starts_with('/'))
        object.refuse("port", "a path from the root, e.g. /dev/ttyUSB0");
    source.baud = static_cast<int>(object.whole("baud", {kBauds.front(), kBauds.back(), "baud"}));
    if (std::ranges::find(kBauds, source.baud) == kBauds.end())
        object.refuse("baud", "a usual speed, e.g. 9600");
    source.pattern = object.text("pattern", LinePattern::kLongest);
    source.decimal = object.word<DecimalSign>("decimal");
    source.shows = object.word<LineUnit>("shows");
    if (source.shows == LineUnit::Ntc)
        source.ntc = thermistorIn(object.object("ntc"));
    if (!LinePattern::from(source.pattern, source.decimal))
        object.refuse("pattern", "a line with one # where the number stands");
    return source;
}

void append(std::string& out, std::string_view key, std::string_view text)
{
    if (out.size() > 1)
        out += ',';
    appendJsonString(out, key);
    out += ':';
    appendJsonString(out, text);
}

std::string thermistorText(const Thermistor& element)
{
    const auto whole = [](double value) { return std::llround(value * kPerCoefficient); };
    std::string out = "{\"a\":";
    appendNumber(out, whole(element.a));
    appendNumber(out += ",\"b\":", whole(element.b));
    appendNumber(out += ",\"c\":", whole(element.c));
    return out + "}";
}

// Keys in their canonical order.
std::string fieldsOf(const ByHand&) { return R"({"kind":"hand")"; }
std::string fieldsOf(const OutOfUse&) { return R"({"kind":"out of use")"; }

std::string fieldsOf(const OneWire& source)
{
    std::string out = "{";
    append(out, "device", source.device);
    append(out, "kind", nameOf(SourceKind::OneWire));
    return out;
}

std::string fieldsOf(const SerialLine& source)
{
    std::string out = "{\"baud\":";
    appendNumber(out, source.baud);
    append(out, "decimal", nameOf(source.decimal));
    append(out, "kind", nameOf(SourceKind::Serial));
    if (source.ntc)
        out += ",\"ntc\":" + thermistorText(*source.ntc);
    append(out, "pattern", source.pattern);
    append(out, "port", source.port);
    append(out, "shows", nameOf(source.shows));
    return out;
}

}  // namespace

LineMeaning meaningOf(const SerialLine& line)
{
    switch (line.shows) {
        case LineUnit::Celsius:
            return {};
        case LineUnit::Pt100:
            return Platinum{100};
        case LineUnit::Pt1000:
            return Platinum{1000};
        case LineUnit::Ntc:
            return line.ntc.value_or(Thermistor{});
    }
    return {};
}

ProbeSource sourceIn(JsonObject object)
{
    ProbeSource source;
    switch (object.word<SourceKind>("kind")) {
        case SourceKind::Hand:
            break;
        case SourceKind::OneWire:
            source = oneWireIn(object);
            break;
        case SourceKind::Serial:
            source = serialIn(object);
            break;
        case SourceKind::OutOfUse:
            source = OutOfUse{};
            break;
    }
    object.noOthers();
    return source;
}

std::string documentOf(const ProbeSource& source)
{
    return std::visit([](const auto& which) { return fieldsOf(which); }, source) + "}";
}

}  // namespace bathside
