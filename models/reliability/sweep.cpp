// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/sweep.h"

#include <algorithm>
#include <cmath>

namespace cutwater::reliability {

namespace {

constexpr int kGoldenSteps = 24; // narrows to 1e-5 of two grid steps
constexpr int kHalvings = 24;

class Sweeper {
public:
    Sweeper(const SweepWish& wish, const std::function<std::optional<double>(double)>& figure)
        : m_wish(wish), m_figure(figure) {}

    std::optional<SweepFigures> run() {
        const std::size_t steps = std::max<std::size_t>(m_wish.steps, 2);
        for (std::size_t i = 0; i < steps && !m_stopped; ++i) {
            const double share = static_cast<double>(i) / static_cast<double>(steps - 1);
            const double x = i == 0 ? m_wish.from : i == steps - 1 ? m_wish.to : numberAt(share);
            m_result.points.push_back({x, at(x)});
        }
        if (!m_stopped) findLowest();
        if (!m_stopped && m_wish.limit) findWithin();
        if (m_stopped) return {};
        return std::move(m_result);
    }

private:
    double numberAt(double share) const {
        if (m_wish.logarithmic) return m_wish.from * std::pow(m_wish.to / m_wish.from, share);
        return m_wish.from + (m_wish.to - m_wish.from) * share;
    }

    double at(double x) {
        if (m_stopped) return 0;
        const auto value = m_figure(x);
        m_stopped = !value;
        return value.value_or(0);
    }

    void findLowest() {
        const auto& points = m_result.points;
        const auto best =
            std::min_element(points.begin(), points.end(),
                             [](const SweepPoint& a, const SweepPoint& b) { return a.y < b.y; });
        m_result.lowest = *best;
        m_result.lowestAtEnd = best == points.begin() || best + 1 == points.end();
        if (m_result.lowestAtEnd) return;
        double low = (best - 1)->x, high = (best + 1)->x;
        const double ratio = (std::sqrt(5.0) - 1) / 2;
        SweepPoint a{high - ratio * (high - low), 0}, b{low + ratio * (high - low), 0};
        a.y = at(a.x);
        b.y = at(b.x);
        for (int i = 0; i < kGoldenSteps && !m_stopped; ++i) {
            if (a.y < b.y) {
                high = b.x;
                b = a;
                a.x = high - ratio * (high - low);
                a.y = at(a.x);
            } else {
                low = a.x;
                a = b;
                b.x = low + ratio * (high - low);
                b.y = at(b.x);
            }
        }
        for (const SweepPoint& point : {a, b})
            if (point.y < m_result.lowest.y) m_result.lowest = point;
    }

    void findWithin() {
        std::vector<SweepPoint> points = m_result.points;
        if (!m_wish.largest) std::reverse(points.begin(), points.end());
        // The last one within the limit; behind it, if there is one, the first that is not.
        std::size_t last = points.size();
        for (std::size_t i = 0; i < points.size(); ++i)
            if (points[i].y <= *m_wish.limit) last = i;
        if (last == points.size()) {
            // The dip between the grid points may reach below the limit.
            if (m_result.lowest.y <= *m_wish.limit) m_result.within = m_result.lowest;
            return;
        }
        m_result.within = points[last];
        m_result.withinAtEnd = last + 1 == points.size();
        if (m_result.withinAtEnd) return;
        SweepPoint inside = points[last], outside = points[last + 1];
        for (int i = 0; i < kHalvings && !m_stopped; ++i) {
            SweepPoint middle{(inside.x + outside.x) / 2, 0};
            middle.y = at(middle.x);
            (middle.y <= *m_wish.limit ? inside : outside) = middle;
        }
        m_result.within = inside;
    }

    const SweepWish& m_wish;
    const std::function<std::optional<double>(double)>& m_figure;
    SweepFigures m_result;
    bool m_stopped = false;
};

} // namespace

std::optional<SweepFigures> sweep(const SweepWish& wish,
                                  const std::function<std::optional<double>(double)>& figure) {
    return Sweeper(wish, figure).run();
}

} // namespace cutwater::reliability
