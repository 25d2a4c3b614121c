#include "core/bath/thaw_model.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

#include "core/bath/heat_matter.h"

namespace bathside {
namespace {

// Borosilicate glass 3.3 (ISO 3585), from memory; its heat capacity stands in heat_matter.h.
constexpr double kGlassDensity = 2'230;     // kg/m³
constexpr double kGlassConductivity = 1.2;  // W/(m K)
constexpr int kGlassRings = 3;
constexpr double kStability = 0.8;   // of the longest step that cannot swing
constexpr double kPointEvery = 0.5;  // s

/// A medium's rows spread evenly over its enthalpy, so that looking one up takes no search.
class StateTable {
public:
    struct State {
        double celsius = 0;
        double conductivity = 0;
        double ice = 0;
        double perKelvin = 0;  // J/(kg K) here
    };

    explicit StateTable(const ThawMedium& medium)
        : m_from(medium.rows.front().enthalpy),
          m_step((medium.rows.back().enthalpy - m_from) / kCells)
    {
        std::size_t row = 0;
        for (int i = 0; i <= kCells; ++i) {
            const double enthalpy = m_from + i * m_step;
            while (row + 2 < medium.rows.size() && medium.rows[row + 1].enthalpy < enthalpy)
                ++row;
            m_states.push_back(between(medium.rows[row], medium.rows[row + 1], enthalpy));
        }
    }

    [[nodiscard]] State at(double enthalpy) const
    {
        const double place = std::clamp((enthalpy - m_from) / m_step, 0.0, kCells - 1e-6);
        const auto cell = static_cast<std::size_t>(place);
        const double part = place - static_cast<double>(cell);
        const State& a = m_states[cell];
        const State& b = m_states[cell + 1];
        const double rise = b.celsius - a.celsius;
        return {a.celsius + part * rise, a.conductivity + part * (b.conductivity - a.conductivity),
                a.ice + part * (b.ice - a.ice), m_step / rise};
    }

    [[nodiscard]] double enthalpyAt(double celsius) const
    {
        const auto after = std::ranges::upper_bound(m_states, celsius, {}, &State::celsius);
        const auto cell = std::clamp<std::ptrdiff_t>(after - m_states.begin(), 1, kCells) - 1;
        const State& a = m_states[static_cast<std::size_t>(cell)];
        const State& b = m_states[static_cast<std::size_t>(cell) + 1];
        return m_from + m_step * (static_cast<double>(cell) +
                                  (celsius - a.celsius) / (b.celsius - a.celsius));
    }

private:
    static constexpr int kCells = 8192;

    static State between(const ThawRow& a, const ThawRow& b, double enthalpy)
    {
        const double part = (enthalpy - a.enthalpy) / (b.enthalpy - a.enthalpy);
        return {a.celsius + part * (b.celsius - a.celsius),
                a.conductivity + part * (b.conductivity - a.conductivity),
                a.ice + part * (b.ice - a.ice), 0};
    }

    double m_from;
    double m_step;
    std::vector<State> m_states;
};

double ringArea(double inner, double outer)
{
    return std::numbers::pi * (outer * outer - inner * inner);
}

// All per metre of length: rings of equal thickness, the contents' from the centre out, then the
// glass's.
class Cylinder {
public:
    explicit Cylinder(const ThawSetting& setting)
        : m_setting(setting),
          m_table(setting.contents),
          m_radius(setting.shape.diameter / 2 - setting.shape.wall),
          m_rings(static_cast<std::size_t>(setting.rings))
    {
        assert(m_radius > 0 && m_rings > 1);
        layRings(setting.rings, 0, m_radius, setting.contents.density);
        if (setting.shape.wall > 0)
            layRings(kGlassRings, m_radius, setting.shape.wall, kGlassDensity);
        fillWith(setting.start);
        lookUp();
        m_iceAtStart = iceNow();
        m_heatAtStart = heatNow();
    }

    [[nodiscard]] double iceShare() const { return m_iceAtStart > 0 ? iceNow() / m_iceAtStart : 0; }
    [[nodiscard]] double heatIn() const { return m_heatIn; }
    [[nodiscard]] double heatKept() const { return heatNow() - m_heatAtStart; }
    [[nodiscard]] double centre() const { return m_states.front().celsius; }
    [[nodiscard]] double mean() const
    {
        double heat = 0;
        double mass = 0;
        for (std::size_t i = 0; i < m_rings; ++i) {
            heat += m_mass[i] * m_enthalpy[i];
            mass += m_mass[i];
        }
        return m_table.at(heat / mass).celsius;
    }

    /// One step of `longest` s at most; returns how long it was.
    double step(double longest)
    {
        conduct();
        const double dt = std::min(longest, stableStep());
        m_heatIn += dt * m_flow.back();
        for (std::size_t i = 0; i < m_mass.size(); ++i)
            m_enthalpy[i] += dt * (m_flow[i + 1] - m_flow[i]) / m_mass[i];
        lookUp();
        return dt;
    }

private:
    struct Ring {
        double inner = 0;
        double outer = 0;
    };

    void layRings(int count, double inner, double thickness, double density)
    {
        for (int i = 0; i < count; ++i) {
            const Ring ring{inner + thickness * i / count, inner + thickness * (i + 1) / count};
            m_ring.push_back(ring);
            m_mass.push_back(density * ringArea(ring.inner, ring.outer));
        }
    }

    void fillWith(double celsius)
    {
        m_enthalpy.assign(m_mass.size(), kGlassHeat * celsius);
        std::fill_n(m_enthalpy.begin(), m_rings, m_table.enthalpyAt(celsius));
        m_states.resize(m_mass.size());
        m_conductance.assign(m_mass.size() + 1, 0);
        m_flow.assign(m_mass.size() + 1, 0);
    }

    void lookUp()
    {
        for (std::size_t i = 0; i < m_rings; ++i)
            m_states[i] = m_table.at(m_enthalpy[i]);
        for (std::size_t i = m_rings; i < m_states.size(); ++i)
            m_states[i] = {m_enthalpy[i] / kGlassHeat, kGlassConductivity, 0, kGlassHeat};
    }

    /// m K/W from the middle of ring `i` to a radius.
    [[nodiscard]] double resistance(std::size_t i, double radius) const
    {
        const double middle = (m_ring[i].inner + m_ring[i].outer) / 2;
        return std::abs(std::log(radius / middle)) /
               (2 * std::numbers::pi * m_states[i].conductivity);
    }

    [[nodiscard]] double filmResistance() const
    {
        const double outer = m_ring.back().outer;
        return 1 / (m_setting.film * 2 * std::numbers::pi * outer * surfaceShare(outer));
    }

    /// Side and bottom over the side alone.
    [[nodiscard]] double surfaceShare(double outer) const
    {
        if (m_setting.shape.fill <= 0)
            return 1;
        const double height = m_setting.shape.fill / ringArea(0, m_radius);
        return 1 + outer / (2 * height);
    }

    void conduct()
    {
        const std::size_t last = m_mass.size() - 1;
        for (std::size_t i = 0; i < last; ++i) {
            const double at = m_ring[i].outer;
            m_conductance[i + 1] = 1 / (resistance(i, at) + resistance(i + 1, at));
            m_flow[i + 1] = m_conductance[i + 1] * (m_states[i + 1].celsius - m_states[i].celsius);
        }
        m_conductance[last + 1] = 1 / (resistance(last, m_ring[last].outer) + filmResistance());
        m_flow[last + 1] = m_conductance[last + 1] * (m_setting.bath - m_states[last].celsius);
    }

    [[nodiscard]] double stableStep() const
    {
        double shortest = m_setting.longest;
        for (std::size_t i = 0; i < m_mass.size(); ++i)
            shortest = std::min(shortest, m_mass[i] * m_states[i].perKelvin /
                                              (m_conductance[i] + m_conductance[i + 1]));
        return kStability * shortest;
    }

    [[nodiscard]] double iceNow() const
    {
        double ice = 0;
        for (std::size_t i = 0; i < m_rings; ++i)
            ice += m_mass[i] * m_states[i].ice;
        return ice;
    }

    [[nodiscard]] double heatNow() const
    {
        double heat = 0;
        for (std::size_t i = 0; i < m_mass.size(); ++i)
            heat += m_mass[i] * m_enthalpy[i];
        return heat;
    }

    const ThawSetting& m_setting;
    StateTable m_table;
    double m_radius;
    std::size_t m_rings;
    std::vector<Ring> m_ring;
    std::vector<double> m_mass;      // kg/m
    std::vector<double> m_enthalpy;  // J/kg
    std::vector<StateTable::State> m_states;
    std::vector<double> m_conductance;  // W/(m K), [i] between ring i − 1 and ring i
    std::vector<double> m_flow;         // W/m inwards, likewise
    double m_iceAtStart = 0;
    double m_heatAtStart = 0;
    double m_heatIn = 0;
};

ThawPoint pointAt(const Cylinder& cylinder, double seconds)
{
    return {seconds, cylinder.iceShare(), cylinder.centre(), cylinder.mean()};
}

/// `isDone` sees the share of ice; between two steps the instant is on the straight line.
template <typename IsDone>
Thaw run(const ThawSetting& setting, double seconds, const IsDone& isDone)
{
    Cylinder cylinder(setting);
    Thaw thaw;
    double before = cylinder.iceShare();
    double now = 0;
    thaw.course.push_back(pointAt(cylinder, now));
    for (bool isLast = false; !isLast;) {
        const double dt = cylinder.step(seconds - now);
        const double ice = cylinder.iceShare();
        now += dt;
        if (!thaw.slush && ice <= setting.slushIce && before > setting.slushIce)
            thaw.slush = now - dt * (setting.slushIce - ice) / (before - ice);
        before = ice;
        isLast = now >= seconds || isDone(thaw);
        if (isLast || now >= thaw.course.back().seconds + kPointEvery)
            thaw.course.push_back(pointAt(cylinder, now));
    }
    thaw.heatIn = cylinder.heatIn();
    thaw.heatKept = cylinder.heatKept();
    return thaw;
}

}  // namespace

Thaw thawed(const ThawSetting& setting)
{
    return run(setting, setting.longest, [](const Thaw& thaw) { return thaw.slush.has_value(); });
}

Thaw warmedFor(const ThawSetting& setting, double seconds)
{
    return run(setting, seconds, [](const Thaw&) { return false; });
}

}  // namespace bathside
