#pragma once

// A quantity known at some points and straight between them: a property of matter, a vessel's
// table.
//
// At least one point, by rising x. Beyond the ends the end's value holds; whoever must not go there
// asks `first` and `last`. Exact up to rounding.

#include <vector>

namespace bathside {

class Piecewise {
public:
    struct Point {
        double x = 0;
        double y = 0;
    };

    /// Asserts that x rises strictly.
    explicit Piecewise(std::vector<Point> points);

    [[nodiscard]] double at(double x) const;
    /// ∫ y dx between two places, signed.
    [[nodiscard]] double integral(double from, double to) const;

    [[nodiscard]] const Point& first() const { return m_points.front(); }
    [[nodiscard]] const Point& last() const { return m_points.back(); }

private:
    /// ∫ y dx from the first point to `x`.
    [[nodiscard]] double integralTo(double x) const;

    std::vector<Point> m_points;
    std::vector<double> m_areas;  // up to each point
};

}  // namespace bathside
