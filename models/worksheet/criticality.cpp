// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/criticality.h"

#include <fmt/format.h>
#include <map>

namespace cutwater::worksheet {

double criticalityNumber(double beta, double alpha, double lambdaP, double t) {
    return beta * alpha * lambdaP * t;
}

OperatingTime operatingTimeOf(const project::Project& project, const project::Index& index) {
    if (!project.worksheet.operatingTime) return {};
    const project::Quantity* time = index.resolved(*project.worksheet.operatingTime);
    return time ? OperatingTime{inBaseUnits(*time), true} : OperatingTime{};
}

std::vector<Criticality> criticalitiesOf(const project::Project& project,
                                         const project::Index& index, const FrequencyBook& book) {
    const OperatingTime time = operatingTimeOf(project, index);
    std::vector<Criticality> all;
    all.reserve(project.modes.size());
    std::unordered_map<std::string_view, double> sums; // of what is expected, by component
    for (const project::FailureMode& mode : project.modes) {
        Criticality& one = all.emplace_back();
        if (mode.effectChance)
            if (const project::Quantity* beta = index.resolved(*mode.effectChance)) {
                one.beta = beta->value;
                one.betaGiven = true;
            }
        if (mode.ratio)
            if (const project::Quantity* alpha = index.resolved(*mode.ratio)) {
                one.alpha = alpha->value;
                one.alphaGiven = true;
            }
        const Frequency frequency = book.of(mode);
        one.how = frequency.how;
        if (!frequency.perYear) continue;
        // alpha lambda_p t, whatever clock lambda_p runs on.
        one.expected = *frequency.perYear * time.hours / kHoursPerYear;
        one.number = one.beta * *one.expected;
        sums[mode.component] += *one.expected;
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        const double sum = sums[project.modes[i].component];
        if (!all[i].alpha && all[i].expected && sum > 0) all[i].alpha = *all[i].expected / sum;
        if (all[i].alpha) all[i].level = criticalityLevel(*all[i].alpha);
    }
    return all;
}

std::vector<ItemCriticality> itemCriticalities(const project::Project& project,
                                               const project::Index& index,
                                               const std::vector<Criticality>& modes) {
    std::map<std::pair<std::size_t, std::string>, ItemCriticality> items;
    std::map<std::size_t, double> totals;
    for (std::size_t i = 0; i < project.modes.size(); ++i) {
        const project::Component* component = index.component(project.modes[i].component);
        if (!component) continue;
        const auto position = static_cast<std::size_t>(component - project.components.data());
        ItemCriticality& item = items[{position, project.modes[i].severity}];
        item.component = position;
        item.severity = project.modes[i].severity;
        ++item.modes;
        if (!modes[i].number) {
            ++item.without;
            continue;
        }
        item.number += *modes[i].number;
        totals[position] += *modes[i].number;
    }
    std::vector<ItemCriticality> all;
    for (auto& [key, item] : items) {
        if (const double total = totals[key.first]; total > 0) item.share = item.number / total;
        all.push_back(std::move(item));
    }
    return all;
}

char criticalityLevel(double share) {
    if (share > 0.20) return 'A';
    if (share > 0.10) return 'B';
    if (share > 0.01) return 'C';
    return share > 0.001 ? 'D' : 'E';
}

} // namespace cutwater::worksheet
