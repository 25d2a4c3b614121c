#include "core/record/chart_points.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/checks/injector_case.h"

namespace bathside {
namespace {

double thousandths(std::int64_t count) { return static_cast<double>(count) / 1'000; }

/// One of the steps that the card limits.
struct TimedStep {
    ChartSeries series{};
    Step from{}, to{};
    LimitName limit{};
};
constexpr std::array kTimedSteps{
    TimedStep{ChartSeries::OutToBath, Step::Out, Step::Bath, LimitName::Exposure},
    TimedStep{ChartSeries::BathToDiluent, Step::Bath, Step::Diluent, LimitName::Thaw}};

/// A step of ampoules that went together.
struct Movement {
    Stamp from, to;
    ChartPoint point;
};

std::optional<double> secondsOf(const Moment& from, const Moment& to)
{
    const Elapsed time = elapsed(from.at, to.at);
    if (!from.timed || !to.timed || !time.certain)
        return std::nullopt;
    return thousandths(std::chrono::floor<Millis>(time.time).count());
}

/// One shift, read from its opening to where its journal ends.
class ShiftReading {
public:
    ShiftReading(const State& state, const StationId& bench)
        : m_state(state), m_station(bench), m_bench(state.opening)
    {
    }

    std::vector<ChartPoint> points() &&
    {
        for (const auto& event : m_state.journal) {
            look(*event);
            m_bench = evolve(std::move(m_bench), *event);
        }
        for (const Pull& pull : m_bench.pulls) {
            for (const TimedStep& step : kTimedSteps)
                addSteps(pull, step);
            addBath(pull);
        }
        std::ranges::stable_sort(m_points, {}, &ChartPoint::seq);
        return std::move(m_points);
    }

private:
    /// What only the bench just before an event can tell.
    void look(const Event& event)
    {
        if (const auto* bath = std::get_if<AmpouleInBath>(&event.fact))
            lookAtBath(event, *bath);
        if (const auto* dose = std::get_if<DoseChecked>(&event.fact))
            addDose(event, *dose);
    }

    void lookAtBath(const Event& event, const AmpouleInBath& fact)
    {
        const auto [place, isFirst] = m_baths.try_emplace(fact.ampoule.pull);
        if (!isFirst)
            return;
        place->second = pointAt(event, ChartSeries::BathAtPull);
        const bool isKnown = fact.timed && bathVerdict(m_bench, event.at);
        const auto reading = isKnown ? m_bench.lastGoodReading() : std::nullopt;
        if (reading && reading->fact.corrected)
            place->second.value = thousandths(reading->fact.corrected->count);
    }

    void addDose(const Event& event, const DoseChecked& fact)
    {
        ChartPoint error = pointAt(event, ChartSeries::DoseError);
        ChartPoint spread = pointAt(event, ChartSeries::DoseSpread);
        error.line = spread.line = fact.line;
        error.lots = spread.lots = lotsOn(fact.line);
        const auto check = fact.measured
                               ? injectorCaseFrom(fact.measured->text)
                               : Result<InjectorCase, DocumentFault>(failure(DocumentFault{}));
        if (check) {
            error.value = check->errors.systematicPercent;
            error.lower = -check->limits.systematicPercent;
            error.upper = check->limits.systematicPercent;
            spread.value = check->errors.randomPercent;
            spread.upper = check->limits.randomPercent;
        }
        m_points.push_back(std::move(error));
        m_points.push_back(std::move(spread));
    }

    [[nodiscard]] ChartPoint pointAt(const Event& event, ChartSeries series) const
    {
        ChartPoint point;
        point.series = series;
        point.at = event.at.wall;
        point.seq = event.seq;
        point.bench = m_station;
        if (event.person)
            point.person = event.person->id;
        return point;
    }

    /// In the bag that hangs there.
    [[nodiscard]] std::set<LotId> lotsOn(const LineId& line) const
    {
        std::set<LotId> lots;
        const Bag* bag = m_bench.bagOn(line);
        for (const Pull& pull : m_bench.pulls) {
            for (const Ampoule& ampoule : pull.ampoules) {
                if (bag && ampoule.bag == bag->id)
                    lots.insert(ampoule.lot);
            }
        }
        return lots;
    }

    void addSteps(const Pull& pull, const TimedStep& step)
    {
        std::vector<Movement> movements;
        for (const Ampoule& ampoule : pull.ampoules) {
            const auto& from = ampoule.when(step.from);
            const auto& to = ampoule.when(step.to);
            const Event* end = from && to ? eventAt(m_state, to->seq) : nullptr;
            if (!end)
                continue;
            const auto same = std::ranges::find_if(movements, [&](const Movement& other) {
                return other.from == from->at && other.to == to->at;
            });
            if (same != movements.end()) {
                addTo(same->point, ampoule, step.limit);
                continue;
            }
            ChartPoint point = pointAt(*end, step.series);
            point.pull = pull.no;
            point.value = secondsOf(*from, *to);
            addTo(point, ampoule, step.limit);
            movements.push_back({from->at, to->at, std::move(point)});
        }
        for (Movement& movement : movements)
            m_points.push_back(std::move(movement.point));
    }

    void addTo(ChartPoint& point, const Ampoule& ampoule, LimitName limit) const
    {
        point.ampoules.push_back(ampoule.ref.no);
        point.lots.insert(ampoule.lot);
        const Card* card = cardOf(m_bench, ampoule);
        const auto at = card ? card->timesFor(limit, ampoule.component).at : std::nullopt;
        if (!at)
            return;
        const double upper = thousandths(at->count());
        point.upper = std::min(point.upper.value_or(upper), upper);
    }

    void addBath(const Pull& pull)
    {
        const auto found = m_baths.find(pull.no);
        if (found == m_baths.end())
            return;
        ChartPoint point = std::move(found->second);
        point.pull = pull.no;
        for (const Ampoule& ampoule : pull.ampoules) {
            point.ampoules.push_back(ampoule.ref.no);
            point.lots.insert(ampoule.lot);
        }
        if (const Card* card = cardOf(m_bench, pull.ampoules.front())) {
            const BathRules& rules = card->content().bath;
            point.lower = thousandths((rules.target - rules.tolerance).count);
            point.upper = thousandths((rules.target + rules.tolerance).count);
        }
        m_points.push_back(std::move(point));
    }

    const State& m_state;
    const StationId& m_station;
    Bench m_bench;
    std::map<int, ChartPoint> m_baths;  // by pull, limits still to come
    std::vector<ChartPoint> m_points;
};

}  // namespace

void ChartFold::begin(const Event& event) { m_state = evolve(std::move(m_state), event); }

void ChartFold::take(const Event& event, const StationId& bench)
{
    if (std::holds_alternative<ShiftOpened>(event.fact)) {
        endShift();
        m_bench = bench;
    }
    m_state = evolve(std::move(m_state), event);
}

std::vector<ChartPoint> ChartFold::finish()
{
    endShift();
    return std::move(m_points);
}

void ChartFold::endShift()
{
    if (m_state.bench.shift)
        std::ranges::move(ShiftReading(m_state, m_bench).points(), std::back_inserter(m_points));
}

}  // namespace bathside
