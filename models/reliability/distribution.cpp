// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/distribution.h"

#include <algorithm>
#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/gamma.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/special_functions/erf.hpp>
#include <cassert>
#include <cmath>
#include <numbers>

namespace cutwater::reliability {

namespace {

// Extreme shapes may leave the range of a double: then 0 or infinity is the answer, not an
// exception.
using Quiet = boost::math::policies::policy<
    boost::math::policies::overflow_error<boost::math::policies::ignore_error>,
    boost::math::policies::underflow_error<boost::math::policies::ignore_error>,
    boost::math::policies::denorm_error<boost::math::policies::ignore_error>,
    boost::math::policies::evaluation_error<boost::math::policies::ignore_error>,
    boost::math::policies::promote_double<false>>;
using BoostGamma = boost::math::gamma_distribution<double, Quiet>;
using BoostBeta = boost::math::beta_distribution<double, Quiet>;

constexpr double kTiny = 1e-280; // below it the first term of the series is all there is

double gammaLog(double x) {
    int sign = 0;
    return lgamma_r(x, &sign); // not std::lgamma, which writes to a global variable
}

// ln x of the gamma percentile for rate 1. z: the standard normal with the same percentage.
double gammaLogQuantile(double shape, double z) {
    const BoostGamma gamma(shape);
    const double x = z < 0 ? boost::math::quantile(gamma, normalBelow(z))
                           : boost::math::quantile(boost::math::complement(gamma, normalAbove(z)));
    if (x > kTiny) return std::log(x);
    return (std::log(normalBelow(z)) + gammaLog(shape + 1)) / shape; // P = x^shape / Gamma(shape+1)
}

// ln(x / (1-x)) of the beta percentile.
double betaLogOdds(double alpha, double beta, double z) {
    const BoostBeta low(alpha, beta), high(beta, alpha);
    const double below = normalBelow(z), above = normalAbove(z);
    const auto percentile = [](const BoostBeta& of, double p, double q) {
        return p < q ? boost::math::quantile(of, p)
                     : boost::math::quantile(boost::math::complement(of, q));
    };
    const double x = percentile(low, below, above), y = percentile(high, above, below);
    const double logBeta = gammaLog(alpha) + gammaLog(beta) - gammaLog(alpha + beta);
    const double logX =
        x > kTiny ? std::log(x) : (std::log(below) + logBeta + std::log(alpha)) / alpha;
    const double logY =
        y > kTiny ? std::log(y) : (std::log(above) + logBeta + std::log(beta)) / beta;
    return logX - logY;
}

double logDensity(double z) {
    return -z * z / 2 - std::log(2 * std::numbers::pi) / 2;
}

double logOnePlusExp(double x) {
    return x > 0 ? x + std::log1p(std::exp(-x)) : std::log1p(std::exp(x));
}

double triangular(const project::Triangular& d, double u) {
    const double width = d.high - d.low, left = (d.mode - d.low) / width;
    if (u < left) return d.low + std::sqrt(u * width * (d.mode - d.low));
    return d.high - std::sqrt((1 - u) * width * (d.high - d.mode));
}

} // namespace

double normalQuantile(double p) {
    assert(p > 0 && p < 1);
    const double q = p - 0.5;
    const auto ratio = [](double r, const std::array<double, 8>& up,
                          const std::array<double, 7>& down) {
        double above = up[7], below = down[6];
        for (int i = 6; i >= 0; --i)
            above = above * r + up[static_cast<std::size_t>(i)];
        for (int i = 5; i >= 0; --i)
            below = below * r + down[static_cast<std::size_t>(i)];
        return above / (below * r + 1);
    };
    if (std::abs(q) <= 0.425) {
        static constexpr std::array<double, 8> a{3.3871328727963666080e0, 1.3314166789178437745e2,
                                                 1.9715909503065514427e3, 1.3731693765509461125e4,
                                                 4.5921953931549871457e4, 6.7265770927008700853e4,
                                                 3.3430575583588128105e4, 2.5090809287301226727e3};
        static constexpr std::array<double, 7> b{4.2313330701600911252e1, 6.8718700749205790830e2,
                                                 5.3941960214247511077e3, 2.1213794301586595867e4,
                                                 3.9307895800092710610e4, 2.8729085735721942674e4,
                                                 5.2264952788528545610e3};
        return q * ratio(0.180625 - q * q, a, b);
    }
    const double r = std::sqrt(-std::log(q < 0 ? p : 1 - p));
    double z = 0;
    if (r <= 5) {
        static constexpr std::array<double, 8> c{
            1.42343711074968357734e0,  4.63033784615654529590e0, 5.76949722146069140550e0,
            3.64784832476320460504e0,  1.27045825245236838258e0, 2.41780725177450611770e-1,
            2.27238449892691845833e-2, 7.74545014278341407640e-4};
        static constexpr std::array<double, 7> d{
            2.05319162663775882187e0,  1.67638483018380384940e0,  6.89767334985100004550e-1,
            1.48103976427480074590e-1, 1.51986665636164571966e-2, 5.47593808499534494600e-4,
            1.05075007164441684324e-9};
        z = ratio(r - 1.6, c, d);
    } else {
        static constexpr std::array<double, 8> e{
            6.65790464350110377720e0,  5.46378491116411436990e0,  1.78482653991729133580e0,
            2.96560571828504891230e-1, 2.65321895265761230930e-2, 1.24266094738807843860e-3,
            2.71155556874348757815e-5, 2.01033439929228813265e-7};
        static constexpr std::array<double, 7> f{
            5.99832206555887937690e-1, 1.36929880922735805310e-1, 1.48753612908506148525e-2,
            7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7,
            2.04426310338993978564e-15};
        z = ratio(r - 5, e, f);
    }
    return q < 0 ? -z : z;
}

double studentQuantile(double p, double freedom) {
    return boost::math::quantile(boost::math::students_t_distribution<double, Quiet>(freedom), p);
}

double normalBelow(double x) {
    return std::erfc(-x / std::numbers::sqrt2) / 2;
}

double normalAbove(double x) {
    return std::erfc(x / std::numbers::sqrt2) / 2;
}

double lognormalSigma(const project::Lognormal& distribution) {
    return std::log(distribution.errorFactor) / kZ95;
}

double quantile(const project::Distribution& distribution, double p) {
    if (const auto* d = std::get_if<project::Lognormal>(&distribution))
        return d->median * std::exp(lognormalSigma(*d) * normalQuantile(p));
    if (const auto* d = std::get_if<project::Gamma>(&distribution))
        return std::exp(gammaLogQuantile(d->shape, normalQuantile(p))) / d->rate;
    if (const auto* d = std::get_if<project::Beta>(&distribution)) {
        const double odds = betaLogOdds(d->alpha, d->beta, normalQuantile(p));
        return std::exp(odds - logOnePlusExp(odds));
    }
    if (const auto* d = std::get_if<project::Uniform>(&distribution))
        return d->low + p * (d->high - d->low);
    if (const auto* d = std::get_if<project::Triangular>(&distribution)) return triangular(*d, p);
    assert(!"no distribution");
    return 0;
}

double mean(const project::Distribution& distribution) {
    if (const auto* d = std::get_if<project::Lognormal>(&distribution)) {
        const double sigma = lognormalSigma(*d);
        return d->median * std::exp(sigma * sigma / 2);
    }
    if (const auto* d = std::get_if<project::Gamma>(&distribution)) return d->shape / d->rate;
    if (const auto* d = std::get_if<project::Beta>(&distribution))
        return d->alpha / (d->alpha + d->beta);
    if (const auto* d = std::get_if<project::Uniform>(&distribution)) return (d->low + d->high) / 2;
    if (const auto* d = std::get_if<project::Triangular>(&distribution))
        return (d->low + d->mode + d->high) / 3;
    assert(!"no distribution");
    return 0;
}

double standardDeviation(const project::Distribution& distribution) {
    if (const auto* d = std::get_if<project::Lognormal>(&distribution)) {
        const double sigma = lognormalSigma(*d);
        return mean(distribution) * std::sqrt(std::expm1(sigma * sigma));
    }
    if (const auto* d = std::get_if<project::Gamma>(&distribution))
        return std::sqrt(d->shape) / d->rate;
    if (const auto* d = std::get_if<project::Beta>(&distribution)) {
        const double sum = d->alpha + d->beta;
        return std::sqrt(d->alpha * d->beta / (sum + 1)) / sum;
    }
    if (const auto* d = std::get_if<project::Uniform>(&distribution))
        return (d->high - d->low) / std::sqrt(12.0);
    if (const auto* d = std::get_if<project::Triangular>(&distribution)) {
        const double a = d->mode - d->low, b = d->high - d->mode;
        return std::sqrt((a * a + a * b + b * b) / 18);
    }
    assert(!"no distribution");
    return 0;
}

// Values and slopes at equal steps of z; between them the cubic that has both (Hermite). The error
// goes with the fourth power of the step.
struct Sampler::Table {
    static constexpr double kLast = 8.3; // u of uniform() stays within 8.21
    static constexpr std::size_t kSteps = 664;
    static constexpr double kStep = 2 * kLast / kSteps;
    struct Knot {
        double value, slope; // slope times kStep
    };
    std::vector<Knot> knots;

    double at(double z) const {
        const double place = std::clamp((z + kLast) / kStep, 0.0, static_cast<double>(kSteps));
        const auto i = std::min(static_cast<std::size_t>(place), kSteps - 1);
        const double t = place - static_cast<double>(i);
        const Knot &a = knots[i], &b = knots[i + 1];
        const double step = b.value - a.value;
        return a.value + t * (a.slope + t * (3 * step - 2 * a.slope - b.slope +
                                             t * (a.slope + b.slope - 2 * step)));
    }
};

Sampler::Sampler(const project::Distribution& distribution) {
    if (const auto* lognormal = std::get_if<project::Lognormal>(&distribution)) {
        m_kind = Kind::lognormal;
        m_a = std::log(lognormal->median);
        m_b = lognormalSigma(*lognormal);
    } else if (const auto* uniform = std::get_if<project::Uniform>(&distribution)) {
        m_a = uniform->low;
        m_b = uniform->high - uniform->low;
    } else if (const auto* triangle = std::get_if<project::Triangular>(&distribution)) {
        m_kind = Kind::triangular;
        m_a = triangle->low;
        m_b = triangle->mode;
        m_c = triangle->high;
    } else if (const auto* gamma = std::get_if<project::Gamma>(&distribution)) {
        m_kind = Kind::logTable;
        m_a = std::log(gamma->rate);
        auto table = std::make_shared<Table>();
        for (std::size_t i = 0; i <= Table::kSteps; ++i) {
            const double z = static_cast<double>(i) * Table::kStep - Table::kLast;
            const double logX = gammaLogQuantile(gamma->shape, z);
            // x f(x) = x^shape exp(-x) / Gamma(shape); d ln x / dz = density(z) / (x f(x))
            const double slope = std::exp(logDensity(z) - gamma->shape * logX + std::exp(logX) +
                                          gammaLog(gamma->shape));
            table->knots.push_back({logX, slope * Table::kStep});
        }
        m_table = std::move(table);
    } else if (const auto* beta = std::get_if<project::Beta>(&distribution)) {
        m_kind = Kind::oddsTable;
        const double logBeta =
            gammaLog(beta->alpha) + gammaLog(beta->beta) - gammaLog(beta->alpha + beta->beta);
        auto table = std::make_shared<Table>();
        for (std::size_t i = 0; i <= Table::kSteps; ++i) {
            const double z = static_cast<double>(i) * Table::kStep - Table::kLast;
            const double odds = betaLogOdds(beta->alpha, beta->beta, z);
            const double logX = odds - logOnePlusExp(odds), logY = -logOnePlusExp(odds);
            // d odds / dz = density(z) / (f(x) x (1-x))
            const double slope =
                std::exp(logDensity(z) - beta->alpha * logX - beta->beta * logY + logBeta);
            table->knots.push_back({odds, slope * Table::kStep});
        }
        m_table = std::move(table);
    } else {
        assert(!"no distribution");
    }
}

double Sampler::operator()(double u) const {
    switch (m_kind) {
    case Kind::lognormal: return std::exp(m_a + m_b * normalQuantile(u));
    case Kind::uniform: return m_a + m_b * u;
    case Kind::triangular: return triangular({m_a, m_b, m_c}, u);
    case Kind::logTable: return std::exp(m_table->at(normalQuantile(u)) - m_a);
    case Kind::oddsTable: {
        const double odds = m_table->at(normalQuantile(u));
        return std::exp(odds - logOnePlusExp(odds));
    }
    }
    return 0;
}

} // namespace cutwater::reliability
