// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/risk/live_risks.h"

#include "models/project/index.h"

namespace cutwater::editor {

namespace {

constexpr std::size_t kMemory = std::size_t{512} << 20;

} // namespace

Background::Task riskTask(bool commonCauses) {
    return [commonCauses](const Snapshot& project, const std::stop_token& stop,
                          const Background::Tell& tell) {
        worksheet::RiskWish wish;
        wish.limits = {kMemory, stop, commonCauses};
        wish.progress = tell;
        auto answer = std::make_shared<RiskAnswer>();
        answer->project = project;
        answer->picture = worksheet::placeRisks(*project, project::Index(*project), wish);
        if (answer->picture.cancelled) answer.reset();
        return std::shared_ptr<const void>(answer);
    };
}

} // namespace cutwater::editor
