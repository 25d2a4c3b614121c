#pragma once

// What the charts over time are drawn of: one value for each movement of the hands, each pull and
// each weighed dose, with who, where and which lot, and the card's limits that hold for it.
//
// Folded from whole shifts by the same `evolve` as everything else, so corrections count. Ampoules
// that went together, by the same taps, are one value: else nothing would scatter between them, and
// every limit that comes from the scatter would be too narrow. (Spec: checks, review charts.)

#include <array>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/bench/state.h"
#include "core/facts/names.h"

namespace bathside {

enum class ChartSeries : std::uint8_t {
    OutToBath,      // s, out of cryogen → in bath
    BathToDiluent,  // s, in bath → in diluent
    BathAtPull,     // °C, when the first ampoule of a pull went in
    DoseError,      // %, of the mean from the dose that is set
    DoseSpread,     // %, from shot to shot
};
inline constexpr std::size_t kChartSeries = 5;

template <>
struct Names<ChartSeries> {
    static constexpr std::array<std::string_view, kChartSeries> all{
        "out to bath", "bath to diluent", "bath at pull", "dose error", "dose spread"};
};

struct ChartPoint {
    ChartSeries series{};
    std::optional<double> value;  // none: it was not timed, read or measured
    WallTime at{};
    Seq seq = 0;                // of the event that ended it
    int pull = 0;               // within its shift; 0: it is of a line
    std::vector<int> ampoules;  // of the pull, by number
    LineId line;
    PersonId person;  // on duty then
    StationId bench;
    std::set<LotId> lots;
    std::optional<double> lower, upper;  // of the card; of several components the narrowest
};

class ChartFold {
public:
    /// What went before and gives no points: cards, probes, the last start.
    void begin(const Event& event);
    void take(const Event& event, const StationId& bench);
    /// By seq, once nothing more comes.
    [[nodiscard]] std::vector<ChartPoint> finish();

private:
    void endShift();

    State m_state;
    StationId m_bench;
    std::vector<ChartPoint> m_points;
};

}  // namespace bathside
