#pragma once

// A thermometer in a bath that is not there, for rehearsal: steady, drifting slowly, with the dips
// that cold ampoules make. The same instants give the same readings.

#include <cstdint>
#include <vector>

#include "core/bath/source.h"

namespace bathside {

struct SimulatedBath {
    double level = 28.0;       // °C, around which it drifts
    double drift = 0.08;       // °C, either way
    Millis period{1'200'000};  // of the drift
    Millis every{10'000};      // one reading
    Millis recovery{60'000};   // time constant of a dip
};

class SimulatedSource final : public ReadingSource {
public:
    SimulatedSource(const SimulatedBath& bath, ProbeId probe, const Stamp& start);

    /// The next reading due by `now`; after a long pause the ones between come one by one.
    [[nodiscard]] std::optional<RawReading> poll(const Stamp& now) override;

    /// Something cold goes in at `at`: `depth` °C, which fades with the bath's recovery.
    void dip(const Stamp& at, double depth);

private:
    struct Dip {
        Stamp at;
        double depth = 0;
    };

    [[nodiscard]] double waterAt(const Stamp& at) const;

    SimulatedBath m_bath;
    ProbeId m_probe;
    Stamp m_start;
    std::int64_t m_next = 0;  // readings since the start
    std::vector<Dip> m_dips;
};

}  // namespace bathside
