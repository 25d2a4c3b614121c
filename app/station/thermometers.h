#pragma once

// The drivers of the probes that the state describes: started, stopped and polled, their readings
// fed to the station and the last minutes kept for set-up.
//
// What is read follows from the described sources alone: a probe that is described anew has its
// driver made anew, one out of use has none. A probe that is not there, or goes, is told as lost
// once and is read again as soon as it is back; one that falls silent (core/bath/silence.h) is told
// as giving no answer, once. UI thread; the one-wire bus, which is slow, is read
// on a thread of its own.

#include <QTimer>
#include <deque>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>

#include "app/system/serial_source.h"
#include "core/station/station.h"
#include "ui/models/live_probes.h"

namespace bathside::app {

/// Where the kernel shows them.
struct ProbePlaces {
    std::filesystem::path oneWire = "/sys/bus/w1/devices";
    std::filesystem::path devices = "/dev";
};

class Thermometers final : public ui::LiveProbes {
    Q_OBJECT

public:
    static constexpr Millis kPoll{250};
    static constexpr Millis kOneWireEvery{1'000};

    /// No places: nothing is ever read. Station and clock outlive this.
    Thermometers(Station& station, const Clock& clock, std::optional<ProbePlaces> places);

    [[nodiscard]] std::vector<ProbeSource> pluggedIn() const override;
    [[nodiscard]] std::vector<RawReading> trace(const ProbeId& probe) const override;
    [[nodiscard]] std::optional<std::string> lastLine(const ProbeId& probe) const override;
    [[nodiscard]] bool isSamePort(const std::string& one, const std::string& other) const override;

public slots:
    /// Makes the drivers what the state says, and takes what they have.
    void poll();

private:
    using Described = std::map<ProbeId, ProbeSource>;

    void follow();
    void listen(const ProbeId& probe, const ProbeSource& source);
    void noteSilence();
    void startOneWire();
    [[nodiscard]] std::unique_ptr<SerialSource> lineOf(const ProbeId& probe,
                                                       const SerialLine& line) const;
    void take(const RawReading& reading);

    Station& m_station;
    const Clock& m_clock;
    std::optional<ProbePlaces> m_places;
    Described m_described;
    std::map<ProbeId, std::unique_ptr<SerialSource>> m_lines;
    std::unique_ptr<ReadingSource> m_oneWire;
    std::map<ProbeId, std::deque<RawReading>> m_traces;
    std::map<ProbeId, Stamp> m_listening;  // since when, to each that is read
    QTimer m_timer;
};

}  // namespace bathside::app
