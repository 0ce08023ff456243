// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/graphviz-layout/routes.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace cutwater::graphviz {
namespace {

constexpr double kNear = 2;        // points: closer lines look like one
constexpr double kPortPitch = 7;   // points between the lines that enter one box
constexpr double kSnap = 3;        // a bend smaller than this is drawn straight
constexpr double kBarGap = 4;      // points between two bars in one lane
constexpr std::size_t kMany = 600; // more bars in a channel are not compared pair by pair

// The bar of one upper slot in a channel.
struct Bar {
    double stem = 0;          // x of the line down from the upper slot
    double low = 0, high = 0; // its ends
    std::vector<double> ports;
    bool straight() const { return high - low < 0.01; }
    bool meets(const Bar& other) const {
        return low <= other.high + kBarGap && other.low <= high + kBarGap;
    }
};

// Every parent of a box gets its own way in, in the order of the parents, so that no two bars seem
// connected.
void choosePorts(const Layers& layers, const std::vector<double>& x, Channel& channel) {
    channel.port.resize(channel.segments.size());
    std::map<std::size_t, std::vector<std::size_t>> into; // lower slot -> places in the channel
    std::map<std::size_t, int> outOf;
    for (std::size_t i = 0; i < channel.segments.size(); ++i) {
        into[layers.segments[channel.segments[i]].lower].push_back(i);
        ++outOf[layers.segments[channel.segments[i]].upper];
    }
    for (auto& [lower, places] : into) {
        const auto upperOf = [&](std::size_t i) {
            return layers.segments[channel.segments[i]].upper;
        };
        std::stable_sort(places.begin(), places.end(), [&](std::size_t a, std::size_t b) {
            return x[upperOf(a)] < x[upperOf(b)];
        });
        const double count = static_cast<double>(places.size());
        const double pitch = std::min(kPortPitch, layers.width[lower] / (count + 1));
        for (std::size_t i = 0; i < places.size(); ++i)
            channel.port[places[i]] = x[lower] + (static_cast<double>(i) - (count - 1) / 2) * pitch;
        const std::size_t upper = upperOf(places.front());
        if (places.size() == 1 && outOf[upper] == 1 && lower < layers.boxes &&
            std::abs(x[upper] - x[lower]) <= kSnap)
            channel.port[places.front()] = x[upper];
    }
}

// Crossings that come of putting `upper` over `lower`.
int crossings(const Bar& upper, const Bar& lower) {
    int count = lower.stem > upper.low && lower.stem < upper.high ? 1 : 0;
    for (const double port : upper.ports)
        if (port > lower.low && port < lower.high) ++count;
    return count;
}

struct Before { // a bar that shall lie above another one
    std::size_t upper = 0, lower = 0;
    bool must = false;
};

std::vector<Before> orderRules(const std::vector<Bar>& bars) {
    std::vector<Before> rules;
    // A stem that comes down where another bar's line goes on down must end above that bar.
    std::vector<std::pair<double, std::size_t>> stems;
    for (std::size_t i = 0; i < bars.size(); ++i)
        stems.emplace_back(bars[i].stem, i);
    std::sort(stems.begin(), stems.end());
    for (std::size_t i = 0; i < bars.size(); ++i)
        for (const double port : bars[i].ports) {
            auto at = std::lower_bound(stems.begin(), stems.end(),
                                       std::make_pair(port - kNear, std::size_t{0}));
            for (; at != stems.end() && at->first <= port + kNear; ++at)
                if (at->second != i) rules.push_back({at->second, i, true});
        }
    if (bars.size() > kMany) return rules;
    for (std::size_t a = 0; a < bars.size(); ++a)
        for (std::size_t b = a + 1; b < bars.size(); ++b) {
            if (bars[a].straight() || bars[b].straight() || !bars[a].meets(bars[b])) continue;
            const int ab = crossings(bars[a], bars[b]), ba = crossings(bars[b], bars[a]);
            if (ab < ba) rules.push_back({a, b, false});
            if (ba < ab) rules.push_back({b, a, false});
        }
    return rules;
}

// The bars from top to bottom. Where the rules run in a circle, the bar with the least against it
// goes first, and the musts that this breaks are handed back.
std::vector<std::size_t> inOrder(std::size_t count, const std::vector<Before>& rules,
                                 std::vector<Before>& broken) {
    std::vector<std::vector<std::size_t>> below(count); // rules by upper bar
    std::vector<int> against(count, 0);
    constexpr int kMust = 10000;
    for (std::size_t r = 0; r < rules.size(); ++r) {
        below[rules[r].upper].push_back(r);
        against[rules[r].lower] += rules[r].must ? kMust : 1;
    }
    std::vector<std::size_t> order, free;
    std::vector<bool> done(count, false);
    for (std::size_t i = 0; i < count; ++i)
        if (against[i] == 0) free.push_back(i);
    std::size_t next = 0;
    while (order.size() < count) {
        std::size_t bar = count;
        if (next < free.size()) {
            bar = free[next++];
        } else {
            for (std::size_t i = 0; i < count; ++i)
                if (!done[i] && (bar == count || against[i] < against[bar])) bar = i;
            for (const Before& rule : rules)
                if (rule.must && rule.lower == bar && !done[rule.upper]) broken.push_back(rule);
        }
        if (done[bar]) continue;
        done[bar] = true;
        order.push_back(bar);
        for (const std::size_t r : below[bar]) {
            int& left = against[rules[r].lower];
            left -= rules[r].must ? kMust : 1;
            if (left == 0 && !done[rules[r].lower]) free.push_back(rules[r].lower);
        }
    }
    return order;
}

std::vector<int> lanesOf(const std::vector<Bar>& bars, const std::vector<std::size_t>& order,
                         const std::vector<Before>& rules) {
    std::vector<std::vector<std::size_t>> above(bars.size());
    for (const Before& rule : rules)
        above[rule.lower].push_back(rule.upper);
    std::vector<int> lane(bars.size(), -1);
    std::vector<std::vector<std::size_t>> taken;
    for (const std::size_t bar : order) {
        if (bars[bar].straight()) continue;
        std::size_t at = 0;
        for (const std::size_t upper : above[bar])
            at = std::max(at, static_cast<std::size_t>(lane[upper] + 1));
        const auto isFree = [&](std::size_t l) {
            return l >= taken.size() ||
                   std::none_of(taken[l].begin(), taken[l].end(),
                                [&](std::size_t other) { return bars[bar].meets(bars[other]); });
        };
        while (!isFree(at))
            ++at;
        if (at >= taken.size()) taken.resize(at + 1);
        taken[at].push_back(bar);
        lane[bar] = static_cast<int>(at);
    }
    return lane;
}

std::vector<Bar> barsOf(const Layers& layers, const std::vector<double>& x, const Channel& channel,
                        std::vector<std::size_t>& barOf) {
    std::vector<Bar> bars;
    std::map<std::size_t, std::size_t> known;
    barOf.assign(channel.segments.size(), 0);
    for (std::size_t i = 0; i < channel.segments.size(); ++i) {
        const std::size_t upper = layers.segments[channel.segments[i]].upper;
        const auto [at, isNew] = known.try_emplace(upper, bars.size());
        if (isNew) bars.push_back({x[upper], x[upper], x[upper], {}});
        Bar& bar = bars[at->second];
        barOf[i] = at->second;
        bar.ports.push_back(channel.port[i]);
        bar.low = std::min(bar.low, channel.port[i]);
        bar.high = std::max(bar.high, channel.port[i]);
    }
    return bars;
}

// Moves stops a little aside in `x` where that is needed.
void planLanes(const Layers& layers, std::vector<double>& x, Channel& channel) {
    std::vector<std::size_t> barOf, order;
    std::vector<Bar> bars;
    std::vector<Before> rules;
    // Where two bars each must lie above the other one, one of them enters its box a little aside.
    for (int attempt = 0; attempt < 8; ++attempt) {
        bars = barsOf(layers, x, channel, barOf);
        rules = orderRules(bars);
        std::vector<Before> broken;
        order = inOrder(bars.size(), rules, broken);
        if (broken.empty()) break;
        for (std::size_t i = 0; i < channel.segments.size(); ++i)
            for (const Before& rule : broken)
                if (barOf[i] == rule.lower &&
                    std::abs(channel.port[i] - bars[rule.upper].stem) <= kNear) {
                    const std::size_t lower = layers.segments[channel.segments[i]].lower;
                    channel.port[i] += kNear + 1;
                    if (lower >= layers.boxes) x[lower] = channel.port[i];
                    break;
                }
    }
    std::vector<std::size_t> position(bars.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        position[order[i]] = i;
    std::erase_if(rules,
                  [&](const Before& rule) { return position[rule.upper] > position[rule.lower]; });
    const std::vector<int> lane = lanesOf(bars, order, rules);
    channel.lane.clear();
    for (const std::size_t bar : barOf) {
        channel.lane.push_back(lane[bar]);
        channel.lanes = std::max(channel.lanes, lane[bar] + 1);
    }
}

} // namespace

std::vector<Channel> planChannels(const Layers& layers, std::vector<double> x) {
    std::vector<Channel> channels(layers.rows > 0 ? static_cast<std::size_t>(layers.rows) - 1 : 0);
    for (std::size_t s = 0; s < layers.segments.size(); ++s)
        channels[static_cast<std::size_t>(layers.row[layers.segments[s].upper])].segments.push_back(
            s);
    for (Channel& channel : channels) {
        choosePorts(layers, x, channel);
        planLanes(layers, x, channel);
    }
    return channels;
}

} // namespace cutwater::graphviz
