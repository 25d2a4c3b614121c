#include "core/base/quantiles.h"

#include <cassert>

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

namespace bathside {
namespace {

template <typename Distribution>
double quantileOf(const Distribution& distribution, double p)
{
    assert(p > 0 && p < 1);
    return boost::math::quantile(distribution, p);
}

}  // namespace

double normalQuantile(double p) { return quantileOf(boost::math::normal(), p); }

double studentQuantile(double p, double degrees)
{
    return quantileOf(boost::math::students_t(degrees), p);
}

double betaQuantile(double p, double a, double b)
{
    return quantileOf(boost::math::beta_distribution<>(a, b), p);
}

double chiSquareQuantile(double p, double degrees)
{
    return quantileOf(boost::math::chi_squared(degrees), p);
}

}  // namespace bathside
