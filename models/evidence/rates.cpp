// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/evidence/rates.h"

#include "models/evidence/distributions.h"

#include <cassert>

namespace cutwater::evidence {

double rateUpperBound(std::size_t count, double exposure, double confidence) {
    assert(exposure > 0 && confidence > 0 && confidence < 1);
    return chiSquareQuantile(confidence, 2 * static_cast<double>(count) + 2) / (2 * exposure);
}

double rateLowerBound(std::size_t count, double exposure, double confidence) {
    assert(exposure > 0 && confidence > 0 && confidence < 1);
    if (count == 0) return 0;
    return chiSquareQuantile(1 - confidence, 2 * static_cast<double>(count)) / (2 * exposure);
}

Estimate countedRate(std::size_t count, double exposure, double coverage) {
    const double confidence = (1 + coverage) / 2;
    return {static_cast<double>(count) / exposure, rateLowerBound(count, exposure, confidence),
            rateUpperBound(count, exposure, confidence)};
}

Estimate jeffreysRate(std::size_t count, double exposure, double coverage) {
    assert(exposure > 0 && coverage > 0 && coverage < 1);
    const double shape = static_cast<double>(count) + 0.5;
    const double side = (1 - coverage) / 2;
    return {shape / exposure, gammaQuantile(side, shape) / exposure,
            gammaQuantile(1 - side, shape) / exposure};
}

Estimate jeffreysProbability(std::size_t failures, std::size_t demands, double coverage) {
    assert(demands > 0 && failures <= demands && coverage > 0 && coverage < 1);
    const double a = static_cast<double>(failures) + 0.5;
    const double b = static_cast<double>(demands - failures) + 0.5;
    const double side = (1 - coverage) / 2;
    return {a / (a + b), betaQuantile(side, a, b), betaQuantile(1 - side, a, b)};
}

double chanceOfSuchAnIncrease(std::size_t before, double exposureBefore, std::size_t after,
                              double exposureAfter) {
    assert(exposureBefore > 0 && exposureAfter > 0);
    return binomialTail(static_cast<unsigned>(after), static_cast<unsigned>(before + after),
                        exposureAfter / (exposureBefore + exposureAfter));
}

} // namespace cutwater::evidence
