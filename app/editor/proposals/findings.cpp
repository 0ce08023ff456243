// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/proposals/findings.h"

#include "models/project/index.h"

namespace cutwater::editor {

namespace {

constexpr std::size_t kMemory = std::size_t{512} << 20;

} // namespace

Background::Task findingsTask(const std::string& effect) {
    return [effect](const Snapshot& project, const std::stop_token& stop,
                    const Background::Tell& tell) -> std::shared_ptr<const void> {
        const project::Index index(*project);
        auto found = std::make_shared<Findings>();
        found->project = project;
        found->effect = effect;
        if (!effect.empty()) {
            auto skeleton = worksheet::proposeTree(*project, index, effect);
            if (skeleton)
                found->skeleton = std::make_shared<const worksheet::Skeleton>(std::move(*skeleton));
            else
                found->wrong = sentence(skeleton.problems().front());
        }
        if (stop.stop_requested()) return nullptr;
        found->causes = worksheet::proposeCauses(*project, index);
        if (stop.stop_requested()) return nullptr;
        found->coverage = worksheet::coverageOf(*project, index);
        std::size_t done = 0;
        for (const worksheet::EndEffect& each : found->coverage.effects) {
            tell(static_cast<double>(done++) / static_cast<double>(found->coverage.effects.size()),
                 each.text);
            for (const std::size_t top : each.answeredBy) {
                if (found->figures.contains(top)) continue;
                auto figures = worksheet::topFiguresOf(*project, index, project->tops[top],
                                                       {kMemory, stop, true});
                if (figures.cancelled || stop.stop_requested()) return nullptr;
                found->figures.emplace(top, std::move(figures));
            }
        }
        return found;
    };
}

} // namespace cutwater::editor
