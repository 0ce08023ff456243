// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/risk_placement.h"

namespace cutwater::worksheet {

namespace {

void place(RiskItem& item, const project::RiskMatrix& matrix) {
    item.severityIndex = severityIndex(matrix, item.severity);
    if (item.perYear) item.frequencyIndex = indexOf(matrix.frequencies, *item.perYear);
    if (!item.severityIndex || !item.frequencyIndex) return;
    item.riskIndex = *item.severityIndex + item.frequencyIndex->index;
    if (const project::RiskBand* band = bandOf(matrix, *item.riskIndex)) item.band = band->word;
}

} // namespace

std::vector<const RiskItem*> RiskPicture::at(int frequency, int severity) const {
    std::vector<const RiskItem*> found;
    for (const RiskItem& item : items)
        if (item.riskIndex && item.frequencyIndex->index == frequency &&
            *item.severityIndex == severity)
            found.push_back(&item);
    return found;
}

RiskPicture placeRisks(const project::Project& project, const project::Index& index,
                       const RiskWish& wish) {
    RiskPicture picture;
    picture.matrix = matrixOf(project);
    if (wish.tops)
        for (std::size_t i = 0; i < project.tops.size(); ++i) {
            const project::TopEvent& top = project.tops[i];
            if (wish.progress)
                wish.progress(static_cast<double>(i) / static_cast<double>(project.tops.size()),
                              top.id);
            const TopFigures figures = topFiguresOf(project, index, top, wish.limits);
            if (figures.cancelled) {
                picture.cancelled = true;
                return picture;
            }
            picture.groups.insert(figures.groups.begin(), figures.groups.end());
            RiskItem& item = picture.items.emplace_back();
            item.isTop = true;
            item.position = i;
            item.id = top.id;
            item.name = top.name;
            item.severity = top.severity;
            item.perYear = figures.perYear;
            item.how = figures.how + (figures.lowerBound ? " (a lower bound)" : "");
            place(item, picture.matrix);
        }
    if (!wish.modes) return picture;
    const FrequencyBook book(project, index);
    for (std::size_t i = 0; i < project.modes.size(); ++i) {
        const project::FailureMode& mode = project.modes[i];
        const project::Component* component = index.component(mode.component);
        const Frequency frequency = book.of(mode);
        RiskItem& item = picture.items.emplace_back();
        item.position = i;
        item.id = mode.id;
        item.name =
            component ? (component->tag.empty() ? component->id : component->tag) + ": " + mode.name
                      : mode.name;
        item.severity = mode.severity;
        item.perYear = frequency.perYear;
        item.how = frequency.how;
        place(item, picture.matrix);
    }
    return picture;
}

} // namespace cutwater::worksheet
