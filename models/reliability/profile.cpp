// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/profile.h"

#include "models/reliability/event_model.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace cutwater::reliability {

namespace {

// Two times that differ by less are the same moment; the rounding of k * interval is far below.
double slack(double time) {
    return 1e-12 * std::max(1.0, time);
}

// How many whole periods are over at `time`, and what is left of it. At the end of a period the
// side says whether it is over.
struct Phase {
    double number = 0; // of whole periods that are over
    double rest = 0;   // 0..period
};

Phase phaseOf(double time, double period, Side side) {
    const double ratio = time / period;
    const double tiny = slack(time) / period;
    double number = side == Side::after ? std::floor(ratio + tiny) : std::ceil(ratio - tiny) - 1;
    number = std::max(number, 0.0);
    return {number, std::clamp(time - number * period, 0.0, period)};
}

double local(double time, double renewal, Side side) {
    return renewal > 0 ? phaseOf(time, renewal, side).rest : time;
}

// Between two tests a part works, has failed unseen, or is under repair (what the last test found).
// Of those under repair at the beginning, the share that works after `time`: repaired and not
// failed again, mu (exp(-rate s) - exp(-mu s)) / (mu - rate).
double repairedAndWorking(double rate, double repair, double time) {
    const double mu = 1 / repair;
    const double gap = mu - rate;
    if (std::abs(gap) * time < 1e-9) return mu * time * std::exp(-rate * time);
    return mu * std::exp(-rate * time) * -std::expm1(-gap * time) / gap;
}

// Chance of being down, a time after the end of a test that left the share `inRepair` under repair.
double downAfterTest(double rate, double repair, double inRepair, double time) {
    const double failed = -std::expm1(-rate * time);
    if (inRepair == 0) return failed;
    return (1 - inRepair) * failed + inRepair * (1 - repairedAndWorking(rate, repair, time));
}

// The share of a tested part that the tests can find: q and the share under repair.
struct TestedState {
    double down = 0, inRepair = 0;
    bool inTest = false;
};

TestedState testedState(const EventProfile& part, double time, Side side) {
    const double rate = part.rate * part.coverage;
    const double sinceFirst = time - part.firstTest;
    const bool before = side == Side::after ? sinceFirst < -slack(time) : sinceFirst <= slack(time);
    if (before) return {-std::expm1(-rate * time), 0, false};
    const Phase phase = phaseOf(std::max(sinceFirst, 0.0), part.interval, side);
    // What the test number k found is carried on: down before the next one = alpha + beta times it.
    double inRepair = 0;
    if (part.repair > 0) {
        const double free = part.interval - part.testDuration;
        const double alpha = -std::expm1(-rate * free);
        const double beta = 1 - alpha - repairedAndWorking(rate, part.repair, free);
        const double inTheEnd = alpha / (1 - beta);
        const double first = -std::expm1(-rate * part.firstTest);
        inRepair = inTheEnd + std::pow(beta, phase.number) * (first - inTheEnd);
    }
    const double sinceEnd = phase.rest - part.testDuration;
    const bool inTest = part.testDuration > 0 &&
                        (side == Side::after ? sinceEnd < -slack(time) : sinceEnd <= slack(time));
    if (inTest) return {1, 0, true};
    const double since = std::max(sinceEnd, 0.0);
    return {downAfterTest(rate, part.repair, inRepair, since),
            inRepair > 0 ? inRepair * std::exp(-since / part.repair) : 0.0, false};
}

// What no test finds, since the last overhaul.
double unfound(const EventProfile& part, double time, Side side) {
    if (part.coverage >= 1) return 0;
    return missionUnreliability(part.rate * (1 - part.coverage), local(time, part.renewal, side));
}

EventMoment testedAt(const EventProfile& part, double time, Side side) {
    const TestedState state = testedState(part, time, side);
    if (state.inTest) return {1, 0, 0};
    const double hidden = unfound(part, time, side);
    const double q = state.down + hidden - state.down * hidden;
    const double mended = part.repair > 0 ? state.inRepair / part.repair * (1 - hidden) : 0.0;
    return {q, part.rate * (1 - q), mended};
}

EventMoment weibullAt(const EventProfile& part, double time) {
    const double q = weibullUnreliability(part.shape, part.scale, part.location, time);
    const double age = (time - part.location) / part.scale;
    // At age 0 and a shape below 1 the density is infinite: nobody integrates that very point.
    if (age < 0 || (age == 0 && part.shape != 1)) return {q, 0, 0};
    return {q, part.shape / part.scale * std::pow(age, part.shape - 1) * (1 - q), 0};
}

EventMoment repairableAt(const EventProfile& part, double time) {
    const double forEver = std::numeric_limits<double>::infinity();
    const double q = repairableUnavailability(part.rate, part.repair, part.steady ? forEver : time);
    return {q, part.rate * (1 - q), q / part.repair};
}

} // namespace

EventMoment EventProfile::at(double time, Side side) const {
    switch (kind) {
    case Kind::constant: return {probability, 0, 0};
    case Kind::initiating: return {0, rate, 0};
    case Kind::failing: {
        const double q = missionUnreliability(rate, local(time, renewal, side));
        return {q, rate * (1 - q), 0};
    }
    case Kind::repairable: return repairableAt(*this, local(time, renewal, side));
    case Kind::weibull: return weibullAt(*this, local(time, renewal, side));
    case Kind::tested: return testedAt(*this, time, side);
    }
    return {};
}

double EventProfile::unreliability(double time) const {
    switch (kind) {
    case Kind::constant: return probability;
    case Kind::weibull: {
        if (renewal <= 0) return weibullUnreliability(shape, scale, location, time);
        const Phase phase = phaseOf(time, renewal, Side::before);
        const double whole = weibullUnreliability(shape, scale, location, renewal);
        const double rest = weibullUnreliability(shape, scale, location, phase.rest);
        return -std::expm1(phase.number * std::log1p(-whole) + std::log1p(-rest));
    }
    case Kind::failing:
    case Kind::repairable:
    case Kind::tested:
    case Kind::initiating: return missionUnreliability(rate, time);
    }
    return 0;
}

namespace {

void addMultiples(std::vector<double>& times, double first, double period, double end) {
    for (double k = 0; first + k * period < end; ++k)
        if (first + k * period > 0) times.push_back(first + k * period);
}

// A density that is infinite at its beginning, or not smooth there, is cut into pieces that get
// shorter towards it.
void addWeibullStart(const EventProfile& part, std::vector<double>& times, double begin,
                     double end) {
    const double start = begin + part.location;
    if (start > 0 && start < end) times.push_back(start);
    if (part.shape == std::floor(part.shape)) return;
    double step = part.renewal > 0 ? part.renewal : end;
    for (int i = 0; i < 40; ++i) {
        step /= 4;
        if (start + step < end && start + step > start) times.push_back(start + step);
    }
}

} // namespace

std::vector<double> EventProfile::breakpoints(double end) const {
    std::vector<double> times;
    if (kind == Kind::tested) {
        addMultiples(times, firstTest, interval, end);
        if (testDuration > 0) addMultiples(times, firstTest + testDuration, interval, end);
        if (coverage < 1 && renewal > 0) addMultiples(times, renewal, renewal, end);
    } else if (kind != Kind::constant && kind != Kind::initiating && renewal > 0) {
        addMultiples(times, renewal, renewal, end);
    }
    if (kind == Kind::weibull) {
        addWeibullStart(*this, times, 0, end);
        if (renewal > 0)
            for (double begin = renewal; begin < end; begin += renewal)
                addWeibullStart(*this, times, begin, end);
    }
    std::sort(times.begin(), times.end());
    return times;
}

double EventProfile::breakpointCount(double end) const {
    double count = renewal > 0 ? end / renewal : 0;
    if (kind == Kind::tested) count += 2 * (end / interval + 1);
    if (kind == Kind::weibull) count = 42 * (count + 1);
    return count;
}

bool EventProfile::neverRecovers() const {
    switch (kind) {
    case Kind::constant: return true;
    case Kind::failing:
    case Kind::weibull: return renewal <= 0;
    case Kind::repairable:
    case Kind::tested:
    case Kind::initiating: return false;
    }
    return false;
}

double EventProfile::sinceTest(double time, Side side) const {
    if (kind != Kind::tested) return local(time, renewal, side);
    if (time < firstTest - slack(time) || (side == Side::before && time <= firstTest + slack(time)))
        return time;
    return phaseOf(std::max(time - firstTest, 0.0), interval, side).rest - testDuration;
}

} // namespace cutwater::reliability
