// SPDX-License-Identifier: GPL-3.0-or-later
// The only file that includes Boost.Math: it is slow to compile.
#include "models/evidence/distributions.h"

#include <boost/math/policies/policy.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>

namespace cutwater::evidence {

namespace {

// Without promotion to long double: half the code, and digits enough.
using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
constexpr Policy kPolicy;

} // namespace

double chiSquareQuantile(double p, double freedom) {
    return 2 * boost::math::gamma_p_inv(freedom / 2, p, kPolicy);
}

double chiSquareTail(double x, double freedom) {
    return boost::math::gamma_q(freedom / 2, x / 2, kPolicy);
}

double chiSquareBelow(double x, double freedom) {
    return boost::math::gamma_p(freedom / 2, x / 2, kPolicy);
}

double gammaQuantile(double p, double shape) {
    return boost::math::gamma_p_inv(shape, p, kPolicy);
}

double betaQuantile(double p, double a, double b) {
    return boost::math::ibeta_inv(a, b, p, kPolicy);
}

double binomialTail(unsigned count, unsigned trials, double p) {
    if (count == 0) return 1;
    if (count > trials) return 0;
    return boost::math::ibeta(static_cast<double>(count), static_cast<double>(trials - count) + 1,
                              p, kPolicy);
}

double normalTail(double z) {
    return 0.5 * std::erfc(z / std::sqrt(2.0));
}

} // namespace cutwater::evidence
