#include "app/station/thermometers.h"

#include <set>
#include <utility>

#include "app/system/background_source.h"
#include "app/system/serial_ports.h"
#include "app/system/w1_bus.h"
#include "core/bath/silence.h"

namespace bathside::app {
namespace {

constexpr int kMostAtOnce = 200;  // readings of one driver in one poll, so that taps get through

std::map<ProbeId, ProbeSource> describedIn(const Bench& bench)
{
    std::map<ProbeId, ProbeSource> all;
    for (const auto& [id, probe] : bench.probes)
        all[id] = probe->source;
    return all;
}

std::map<std::string, ProbeId> oneWireOf(const std::map<ProbeId, ProbeSource>& described)
{
    std::map<std::string, ProbeId> all;
    for (const auto& [id, source] : described) {
        if (const auto* wire = std::get_if<OneWire>(&source))
            all[wire->device] = id;
    }
    return all;
}

/// What the bus gives, under the probes' own ids; thermometers that nobody described are left out.
std::vector<ProbeValue> readDescribed(W1Bus& bus, const std::map<std::string, ProbeId>& ids)
{
    std::vector<ProbeValue> values;
    for (ProbeValue& value : bus.readAll()) {
        if (const auto id = ids.find(value.probe.text); id != ids.end())
            values.push_back({id->second, value.value});
    }
    return values;
}

}  // namespace

Thermometers::Thermometers(Station& station, const Clock& clock, std::optional<ProbePlaces> places)
    : m_station(station), m_clock(clock), m_places(std::move(places))
{
    if (!m_places)
        return;
    connect(&m_timer, &QTimer::timeout, this, &Thermometers::poll);
    m_timer.start(kPoll);
}

std::vector<ProbeSource> Thermometers::pluggedIn() const
{
    std::vector<ProbeSource> all;
    if (!m_places)
        return all;
    for (const std::string& device : W1Bus(m_places->oneWire).thermometers())
        all.emplace_back(OneWire{device});
    for (const std::string& port : serialPorts(m_places->devices))
        all.emplace_back(SerialLine{.port = port, .pattern = {}});
    return all;
}

std::vector<RawReading> Thermometers::trace(const ProbeId& probe) const
{
    const auto found = m_traces.find(probe);
    if (found == m_traces.end())
        return {};
    return {found->second.begin(), found->second.end()};
}

std::optional<std::string> Thermometers::lastLine(const ProbeId& probe) const
{
    const auto found = m_lines.find(probe);
    return found == m_lines.end() ? std::nullopt : found->second->lastLine();
}

bool Thermometers::isSamePort(const std::string& one, const std::string& other) const
{
    return app::isSamePort(one, other);
}

void Thermometers::poll()
{
    follow();
    const auto takeAll = [this](ReadingSource& source) {
        for (int i = 0; i < kMostAtOnce; ++i) {
            const auto reading = source.poll(m_clock.now());
            if (!reading)
                return;
            take(*reading);
        }
    };
    if (m_oneWire)
        takeAll(*m_oneWire);
    for (const auto& [id, line] : m_lines)
        takeAll(*line);
    noteSilence();
}

void Thermometers::noteSilence()
{
    const Stamp now = m_clock.now();
    for (const auto& [probe, since] : m_listening) {
        if (isSilent(trace(probe), since, now))
            take({probe, now, ReadingFault::Empty});
    }
}

void Thermometers::follow()
{
    Described now = describedIn(m_station.bench());
    if (!m_places || now == m_described)
        return;
    const Described before = std::exchange(m_described, std::move(now));
    std::erase_if(m_traces, [&](const auto& kept) { return !m_described.contains(kept.first); });
    if (oneWireOf(before) != oneWireOf(m_described))
        startOneWire();
    for (const auto& [id, source] : m_described) {
        const auto known = before.find(id);
        if (known != before.end() && known->second == source)
            continue;
        listen(id, source);
    }
}

void Thermometers::listen(const ProbeId& probe, const ProbeSource& source)
{
    m_lines.erase(probe);
    m_listening.erase(probe);
    const auto* line = std::get_if<SerialLine>(&source);
    if (line)
        m_lines[probe] = lineOf(probe, *line);
    if (line || std::holds_alternative<OneWire>(source))
        m_listening[probe] = m_clock.now();
}

// The bus tells as lost what it knows and no longer finds: it knows the described ones from the
// start.
void Thermometers::startOneWire()
{
    m_oneWire.reset();
    const auto ids = oneWireOf(m_described);
    if (ids.empty())
        return;
    std::set<std::string> expected;
    for (const auto& [device, id] : ids)
        expected.insert(device);
    auto bus = std::make_shared<W1Bus>(m_places->oneWire, std::move(expected));
    m_oneWire = std::make_unique<BackgroundSource>(
        [bus = std::move(bus), ids] { return readDescribed(*bus, ids); }, kOneWireEvery, m_clock);
}

std::unique_ptr<SerialSource> Thermometers::lineOf(const ProbeId& probe,
                                                   const SerialLine& line) const
{
    auto pattern = LinePattern::from(line.pattern, line.decimal);
    SerialSetting setting{.port = line.port,
                          .baud = line.baud,
                          .pattern = *std::move(pattern),  // the document's reader has seen to it
                          .meaning = meaningOf(line)};
    return std::make_unique<SerialSource>(std::move(setting), probe);
}

void Thermometers::take(const RawReading& reading)
{
    auto& trace = m_traces[reading.probe];
    trace.push_back(reading);
    while (elapsed(trace.front().at, reading.at).time > kTrace)
        trace.pop_front();
    m_station.feed(reading);
    emit changed();
}

}  // namespace bathside::app
