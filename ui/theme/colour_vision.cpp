#include "ui/theme/colour_vision.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bathside::ui {
namespace {

using Vec = std::array<double, 3>;
using Matrix = std::array<Vec, 3>;

double dot(const Vec& a, const Vec& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }
Vec times(const Matrix& m, const Vec& v) { return {dot(m[0], v), dot(m[1], v), dot(m[2], v)}; }

double linear(int channel)
{
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

int encoded(double linear)
{
    const double c = std::clamp(linear, 0.0, 1.0);
    const double s = c <= 0.0031308 ? 12.92 * c : 1.055 * std::pow(c, 1 / 2.4) - 0.055;
    return static_cast<int>(std::lround(255 * s));
}

Vec linear(const QColor& colour)
{
    return {linear(colour.red()), linear(colour.green()), linear(colour.blue())};
}

// clang-format off
// One plane each (Viénot 1999).
constexpr Matrix kProtan{{{0.11238, 0.88762, 0.0}, {0.11238, 0.88762, 0.0}, {0.00401, -0.00401, 1.0}}};
constexpr Matrix kDeutan{{{0.29275, 0.70725, 0.0}, {0.29275, 0.70725, 0.0}, {-0.02234, 0.02234, 1.0}}};
// Two half-planes, told apart by the side of the plane through grey (Brettel 1997).
constexpr Vec kTritanPlane{0.03901, -0.02788, -0.01113};
constexpr Matrix kTritanOne{{{1.01277, 0.13548, -0.14826}, {-0.01243, 0.86812, 0.14431}, {0.07589, 0.80500, 0.11911}}};
constexpr Matrix kTritanTwo{{{0.93678, 0.18979, -0.12657}, {0.06154, 0.81526, 0.12320}, {-0.37562, 1.12767, 0.24796}}};
// sRGB to XYZ, D65 (IEC 61966-2-1).
constexpr Matrix kXyz{{{0.4124564, 0.3575761, 0.1804375}, {0.2126729, 0.7151522, 0.0721750}, {0.0193339, 0.1191920, 0.9503041}}};
// clang-format on

Vec dichromat(Vision vision, const Vec& rgb)
{
    switch (vision) {
        case Vision::Full:
            return rgb;
        case Vision::Protanopia:
            return times(kProtan, rgb);
        case Vision::Deuteranopia:
            return times(kDeutan, rgb);
        case Vision::Tritanopia:
            return times(dot(kTritanPlane, rgb) >= 0 ? kTritanOne : kTritanTwo, rgb);
    }
    Q_UNREACHABLE();
}

double lightness(double t)
{
    return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116;
}

Vec lab(const QColor& colour)
{
    const Vec xyz = times(kXyz, linear(colour));
    const double x = lightness(xyz[0] / 0.95047), y = lightness(xyz[1]),
                 z = lightness(xyz[2] / 1.08883);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

}  // namespace

QColor seenWith(Vision vision, const QColor& colour)
{
    const Vec seen = dichromat(vision, linear(colour));
    return {encoded(seen[0]), encoded(seen[1]), encoded(seen[2])};
}

double colourDistance(const QColor& a, const QColor& b)
{
    const Vec p = lab(a), q = lab(b);
    return std::hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

}  // namespace bathside::ui
