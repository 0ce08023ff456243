// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/uncertainty.h"

#include "models/logic/sweep.h"
#include "models/reliability/uncertainty_random.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <set>
#include <thread>

namespace cutwater::reliability {

namespace {

static_assert(kSideBySide == logic::ProbabilitySweep::kSamples);

constexpr std::size_t kNone = static_cast<std::size_t>(-1);
constexpr std::size_t kChunk = 64 * kSideBySide; // samples that a thread takes at a time
// A draw may be too small for a double; times and rates of exactly 0 are not what is meant.
constexpr double kLeast = 1e-300;

} // namespace

UncertainTops::UncertainTops(const project::Project& project, const project::Index& index,
                             std::optional<double> mission)
    : m_project(project), m_inputs(project, index, mission) {}

project::Problems UncertainTops::take(std::size_t event, std::size_t& number) {
    const auto taken = m_inputs.addEvent(event);
    if (!taken) return taken.problems();
    number = *taken;
    return {};
}

project::Problems UncertainTops::add(const logic::Solution& solution, TopVariables variables) {
    Top top{solution, std::move(variables), {}, {}, {}};
    project::Problems problems;
    const std::vector<std::uint32_t> relevant = solution.relevantVariables();
    const auto collect = [&](std::size_t event, std::size_t& number) {
        const auto more = take(event, number);
        problems.insert(problems.end(), more.begin(), more.end());
    };
    if (top.variables.groups().empty()) {
        top.eventOf.assign(top.variables.count(), kNone);
        for (const std::uint32_t variable : relevant)
            collect(top.variables.events(variable).front(), top.eventOf[variable]);
    } else {
        for (const std::size_t event : top.variables.eventsOf(relevant)) {
            top.events.emplace_back(event, kNone);
            collect(event, top.events.back().second);
        }
        for (const std::size_t group : top.variables.groups())
            top.firstFactor.push_back(m_inputs.addFactors(m_project.commonCauses[group]));
    }
    m_tops.push_back(std::move(top));
    return problems;
}

// What one thread needs, kept from block to block.
class SampleWorker {
public:
    SampleWorker(const UncertainTops& tops, const UncertaintyWish& wish, Samples& samples)
        : m_tops(tops), m_wish(wish), m_samples(samples), m_inputs(tops.m_inputs.inputs()),
          m_draws(m_inputs.size() * kSideBySide),
          m_events(tops.m_inputs.eventCount() * kSideBySide),
          m_factors(tops.m_inputs.factorCount() * kSideBySide), m_cut(m_inputs.size()) {
        for (const auto& top : tops.m_tops) {
            m_sweeps.emplace_back(top.solution);
            m_q.emplace_back(top.variables.count() * kSideBySide);
            m_weights.emplace_back();
            if (!top.variables.groups().empty())
                m_weights.back().emplace(tops.m_project, top.variables.causes(), wish.rule);
        }
        m_ofEvent.assign(tops.m_project.events.size(), 0.0);
        if (wish.drawing == Drawing::plain) return;
        const auto size = static_cast<std::uint32_t>(wish.samples / kBatches);
        for (const UncertainInput& input : m_inputs)
            for (std::uint32_t batch = 0; batch < kBatches; ++batch)
                m_strata.emplace_back(wish.seed, input.number, batch, size);
    }

    void block(std::size_t first) {
        drawInputs(first);
        m_tops.m_inputs.events(m_draws, m_events);
        m_tops.m_inputs.factors(m_draws, m_factors);
        const std::size_t count = std::min(kSideBySide, m_wish.samples - first);
        for (std::size_t t = 0; t < m_tops.m_tops.size(); ++t) {
            std::vector<double>& q = m_q[t];
            if (m_weights[t])
                expand(t);
            else
                for (std::size_t variable = 0; variable < m_tops.m_tops[t].eventOf.size();
                     ++variable) {
                    const std::size_t event = m_tops.m_tops[t].eventOf[variable];
                    if (event == kNone) continue;
                    std::copy_n(m_events.begin() + static_cast<std::ptrdiff_t>(event * kSideBySide),
                                kSideBySide,
                                q.begin() + static_cast<std::ptrdiff_t>(variable * kSideBySide));
                }
            std::array<double, kSideBySide> top{};
            m_sweeps[t](q, top);
            std::copy_n(top.begin(), count,
                        m_samples.ofTop[t].begin() + static_cast<std::ptrdiff_t>(first));
        }
    }

    const std::vector<std::uint64_t>& cut() const { return m_cut; }

private:
    double percentage(std::size_t input, std::size_t sample) const {
        const double u = uniform(m_wish.seed, m_inputs[input].number, sample);
        if (m_wish.drawing == Drawing::plain) return u;
        const std::size_t size = m_wish.samples / kBatches;
        const std::size_t batch = sample / size;
        if (batch >= kBatches) return u; // beyond the last sample: thrown away
        const std::uint32_t stratum =
            m_strata[input * kBatches + batch](static_cast<std::uint32_t>(sample - batch * size));
        // Rounding must not make it 0 or 1.
        return std::clamp((stratum + u) / static_cast<double>(size), 0x1p-54, 1 - 0x1p-53);
    }

    void drawInputs(std::size_t first) {
        for (std::size_t i = 0; i < m_inputs.size(); ++i) {
            const UncertainInput& input = m_inputs[i];
            for (std::size_t s = 0; s < kSideBySide; ++s) {
                double value = input.sampler(percentage(i, first + s)) * input.factor;
                if (input.atMostOne && value > 1) {
                    value = 1;
                    if (first + s < m_wish.samples) ++m_cut[i];
                }
                m_draws[i * kSideBySide + s] = std::max(value, kLeast);
            }
        }
    }

    // Common causes, sample by sample.
    void expand(std::size_t t) {
        const auto& top = m_tops.m_tops[t];
        const auto& groups = top.variables.groups();
        m_shares.resize(groups.size());
        m_cause.resize(top.variables.count());
        for (std::size_t s = 0; s < kSideBySide; ++s) {
            for (const auto& [event, number] : top.events)
                m_ofEvent[event] = m_events[number * kSideBySide + s];
            for (std::size_t g = 0; g < groups.size(); ++g) {
                const auto& group = m_tops.m_project.commonCauses[groups[g]];
                m_groupFactors.clear();
                for (std::size_t i = 0; i < group.factors.size(); ++i)
                    m_groupFactors.push_back(m_factors[(top.firstFactor[g] + i) * kSideBySide + s]);
                m_shares[g] = commonCauseShares(group.kind, m_groupFactors, group.members.size());
            }
            m_weights[t]->fill(m_shares, m_ofEvent, m_cause);
            for (std::size_t variable = 0; variable < m_cause.size(); ++variable)
                m_q[t][variable * kSideBySide + s] = m_cause[variable];
        }
    }

    const UncertainTops& m_tops;
    const UncertaintyWish& m_wish;
    Samples& m_samples;
    const std::vector<UncertainInput>& m_inputs;
    std::vector<double> m_draws, m_events, m_factors, m_ofEvent, m_cause, m_groupFactors;
    std::vector<std::uint64_t> m_cut;
    std::vector<logic::ProbabilitySweep> m_sweeps;
    std::vector<std::vector<double>> m_q, m_shares;
    std::vector<std::optional<CauseProbabilities>> m_weights;
    std::vector<Permutation> m_strata;
};

std::optional<Samples> UncertainTops::draw(const UncertaintyWish& wish) const {
    Samples samples;
    samples.ofTop.assign(m_tops.size(), std::vector<double>(wish.samples));
    samples.cut.assign(m_inputs.inputs().size(), 0);
    const std::size_t chunks = (wish.samples + kChunk - 1) / kChunk;
    std::atomic<std::size_t> next{0}, done{0};
    std::mutex mutex; // progress, the counts, the exception
    std::exception_ptr thrown;
    const auto work = [&] {
        try {
            SampleWorker worker(*this, wish, samples);
            for (std::size_t chunk = next++; chunk < chunks; chunk = next++) {
                if (wish.stop.stop_requested()) return;
                const std::size_t end = std::min(wish.samples, (chunk + 1) * kChunk);
                for (std::size_t first = chunk * kChunk; first < end; first += kSideBySide)
                    worker.block(first);
                const std::size_t finished = ++done;
                if (!wish.progress) continue;
                const std::lock_guard lock(mutex);
                wish.progress(static_cast<double>(finished) / static_cast<double>(chunks));
            }
            const std::lock_guard lock(mutex);
            for (std::size_t i = 0; i < samples.cut.size(); ++i)
                samples.cut[i] += worker.cut()[i];
        } catch (...) {
            next = chunks;
            const std::lock_guard lock(mutex);
            if (!thrown) thrown = std::current_exception();
        }
    };
    {
        std::vector<std::jthread> threads;
        for (unsigned i = 1; i < std::min<std::size_t>(std::max(wish.threads, 1u), chunks); ++i)
            threads.emplace_back(work);
        work();
    }
    if (thrown) std::rethrow_exception(thrown);
    if (done < chunks) return {};
    return samples;
}

} // namespace cutwater::reliability
