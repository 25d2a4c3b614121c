#include "core/base/piecewise.h"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <utility>

namespace bathside {

Piecewise::Piecewise(std::vector<Point> points) : m_points(std::move(points)), m_areas{0}
{
    assert(!m_points.empty());
    for (std::size_t i = 1; i < m_points.size(); ++i) {
        const Point& a = m_points[i - 1];
        const Point& b = m_points[i];
        assert(a.x < b.x);
        m_areas.push_back(m_areas.back() + (b.x - a.x) * (a.y + b.y) / 2);
    }
}

double Piecewise::at(double x) const
{
    if (x <= first().x)
        return first().y;
    if (x >= last().x)
        return last().y;
    const auto after = std::ranges::upper_bound(m_points, x, {}, &Point::x);
    const Point& a = *std::prev(after);
    return a.y + (x - a.x) * (after->y - a.y) / (after->x - a.x);
}

double Piecewise::integralTo(double x) const
{
    if (x <= first().x)
        return (x - first().x) * first().y;
    const auto after = std::ranges::upper_bound(m_points, x, {}, &Point::x);
    const auto index = static_cast<std::size_t>(std::distance(m_points.begin(), after)) - 1;
    return m_areas[index] + (x - m_points[index].x) * (m_points[index].y + at(x)) / 2;
}

double Piecewise::integral(double from, double to) const
{
    return integralTo(to) - integralTo(from);
}

}  // namespace bathside
