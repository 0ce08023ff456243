// SPDX-License-Identifier: GPL-3.0-or-later
// The closed forms of event_model.h. Each is written so that no two nearly equal numbers are
// subtracted: a probability of 1e-300 keeps its digits.
#include "models/reliability/event_model.h"

#include <cmath>

namespace cutwater::reliability {

namespace {

// 1 - (1 - exp(-x)) / x = x/2 - x^2/6 + x^3/24 - ...
double meanOfExponential(double x) {
    if (x < 0.5) {
        double term = x / 2;
        double sum = term;
        for (int n = 2; n < 20; ++n) {
            term *= -x / (n + 1);
            sum += term;
        }
        return sum;
    }
    return std::isinf(x) ? 1.0 : (x + std::expm1(-x)) / x;
}

} // namespace

double missionUnreliability(double rate, double time) {
    if (rate == 0 || time == 0) return 0;
    return -std::expm1(-rate * time);
}

double repairableUnavailability(double rate, double repair, double time) {
    if (rate == 0 || time == 0) return 0;
    const double sum = rate + 1 / repair;
    return rate / sum * (std::isinf(time) ? 1.0 : -std::expm1(-sum * time));
}

double testedMeanUnavailability(double rate, double interval) {
    return meanOfExponential(rate * interval);
}

double testedCycleUnavailability(const TestedPart& part) {
    const double found = part.rate * part.coverage;
    const double failed = missionUnreliability(found, part.interval);
    const double repairing = failed * part.repair;
    const double down = part.interval * testedMeanUnavailability(found, part.interval) +
                        part.testDuration + repairing;
    const double cycle = down / (part.interval + part.testDuration + repairing);
    const double unfound =
        part.coverage < 1 ? testedMeanUnavailability(part.rate * (1 - part.coverage), part.lifetime)
                          : 0.0;
    return cycle + unfound - cycle * unfound;
}

double weibullUnreliability(double shape, double scale, double location, double time) {
    const double age = time - location;
    return age <= 0 ? 0.0 : -std::expm1(-std::pow(age / scale, shape));
}

} // namespace cutwater::reliability
