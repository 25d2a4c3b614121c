#include "core/bath/recorded_source.h"

#include <charconv>
#include <cmath>
#include <utility>

#include "core/base/rfc3339.h"
#include "core/bath/line_text.h"
#include "core/bath/w1_text.h"
#include "core/card/strict_json.h"

namespace bathside {
namespace {

using Value = std::variant<MilliCelsius, ReadingFault>;

constexpr double kLongestSeconds = 31.0 * 24 * 60 * 60;
constexpr NumberRange kIndicated{-273.15, 1000, "°C"};

std::optional<double> numberIn(std::string_view text, double from, double to)
{
    double number = 0;
    const auto [end, error] =
        std::from_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed);
    const bool isWhole = error == std::errc() && end == text.data() + text.size();
    return isWhole && number >= from && number <= to ? std::optional(number) : std::nullopt;
}

MilliCelsius milli(double celsius) { return {std::llround(celsius * 1000)}; }

// A line before it is known when the recording starts.
struct Line {
    Micros after{};                // of a plain line: since the start
    std::optional<WallTime> wall;  // of a JSON line
    Value value;
};

using LineOr = Result<Line, RecordingFault>;

LineOr plainLine(std::string_view text)
{
    const auto gap = text.find_first_of(kAround);
    const auto seconds = numberIn(text.substr(0, gap), 0, kLongestSeconds);
    if (!seconds || gap == std::string_view::npos)
        return failure(RecordingFault{0, std::string(text), "seconds since the start and a value"});
    Line line;
    line.after = Micros(std::llround(*seconds * 1e6));
    const std::string_view value = trimmed(text.substr(gap));
    if (const auto number = numberIn(value, kIndicated.from, kIndicated.to))
        line.value = milli(*number);
    else if (const auto fault = named<ReadingFault>(value))
        line.value = *fault;
    else
        return failure(RecordingFault{0, std::string(value), "a temperature in °C or a fault"});
    return line;
}

// A sensor's text stands as the list of its lines.
Value valueIn(JsonObject& object)
{
    if (object.has("fault"))
        return object.word<ReadingFault>("fault");
    if (!object.has("w1"))
        return milli(object.number("indicated_c", kIndicated));
    std::string lines;
    for (const std::string& line : object.texts("w1", 2, 200))
        lines += line + "\n";
    return readW1(lines);
}

LineOr jsonLine(std::string_view text)
{
    StrictJson json(text);
    JsonObject object = json.root();
    Line line;
    line.wall = fromRfc3339(object.text("t", 40));
    if (!line.wall)
        object.refuse("t", "an RFC 3339 instant with its offset");
    line.value = valueIn(object);
    object.noOthers();
    if (const auto& fault = json.fault())
        return failure(RecordingFault{0, fault->key + ": " + fault->found, fault->expected});
    return line;
}

}  // namespace

RecordedSource::RecordedSource(std::vector<RawReading> readings) : m_readings(std::move(readings))
{
}

Result<std::unique_ptr<RecordedSource>, RecordingFault> RecordedSource::from(
    std::string_view recording, const ProbeId& probe, const Stamp& start)
{
    std::vector<RawReading> readings;
    std::optional<WallTime> first;
    for (std::size_t number = 1; !recording.empty(); ++number) {
        const std::string_view text = trimmed(recording.substr(0, recording.find('\n')));
        recording.remove_prefix(std::min(recording.find('\n'), recording.size() - 1) + 1);
        if (text.empty() || text.front() == '#')
            continue;
        auto line = text.front() == '{' ? jsonLine(text) : plainLine(text);
        if (!line)
            return failure(RecordingFault{number, line.error().found, line.error().expected});
        if (line->wall && !first)
            first = line->wall;
        const Micros after = line->wall ? Micros(*line->wall - *first) : line->after;
        const Stamp at = shifted(start, after);
        if (at < start || (!readings.empty() && at.boot < readings.back().at.boot))
            return failure(
                RecordingFault{number, std::string(text), "an instant not before the last"});
        readings.push_back({probe, at, line->value});
    }
    return std::unique_ptr<RecordedSource>(new RecordedSource(std::move(readings)));
}

std::optional<RawReading> RecordedSource::poll(const Stamp& now)
{
    if (m_next == m_readings.size() || m_readings[m_next].at.boot > now.boot)
        return std::nullopt;
    return m_readings[m_next++];
}

}  // namespace bathside
