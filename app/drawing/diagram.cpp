// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/diagram.h"

#include "app/drawing/labels.h"
#include "app/drawing/plan.h"
#include "app/drawing/sheet_drawing.h"
#include "app/drawing/sheet_frame.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::drawing {
namespace {

using sdk::Answer;

project::Problem problem(std::string what, std::string remedy) {
    project::Problem result;
    result.what = std::move(what);
    result.remedy = std::move(remedy);
    return result;
}

struct PaperSize {
    double width, height;
};

PaperSize paperSize(Paper paper, bool landscape) {
    constexpr double kPointsPerMm = 72 / 25.4;
    const double shortSide = (paper == Paper::a4 ? 210 : 297) * kPointsPerMm;
    const double longSide = (paper == Paper::a4 ? 297 : 420) * kPointsPerMm;
    return landscape ? PaperSize{longSide, shortSide} : PaperSize{shortSide, longSide};
}

FrameWords frameWords(const project::Project& project, const project::TopEvent& top) {
    FrameWords words;
    words.topEvent = top.name.empty() ? top.id : top.id + "  " + top.name;
    const std::string& mode = top.operatingMode.empty() ? project.operatingMode : top.operatingMode;
    if (!mode.empty()) words.topRemark = "state: " + mode;
    words.project = project.name;
    words.plant = project.plant == project.name ? "" : project.plant;
    words.revision = project.revision;
    words.date = project.date;
    words.preparedBy = project.preparedBy;
    words.checkedBy = project.checkedBy;
    words.cautions = project.cautions;
    return words;
}

// Every symbol that any sheet may show: the frame leaves room for its legend.
FrameLegend wholeLegend(const Unfolded& tree, const Wishes& wishes) {
    FrameLegend legend;
    for (const Item& item : tree.items)
        legend.symbols.insert(item.gate ? symbolOf(item.gate->kind) : symbolOf(item.event->kind));
    legend.symbols.insert(SymbolKind::transferIn);
    legend.symbols.insert(SymbolKind::transferOut);
    legend.marked = !wishes.marked.empty();
    legend.valuesRemark = wishes.valuesRemark;
    return legend;
}

// One way to put the tree on paper, before anything is drawn.
struct Draft {
    PaperSize paper{};
    SheetFrame frame;
    PlanSizes sizes;
    Plan plan;
};

class Maker {
public:
    Maker(const project::Project& project, const project::Index& index,
          const project::TopEvent& top, const Wishes& wishes, const Lettering& lettering)
        : m_index(index), m_wishes(wishes), m_lettering(lettering),
          m_words(frameWords(project, top)) {}

    Draft draft(const Unfolded& tree, std::size_t lines, bool landscape, double share) const {
        const PaperSize paper = paperSize(m_wishes.paper, landscape);
        Draft result{paper,
                     SheetFrame(paper.width, paper.height, m_words, wholeLegend(tree, m_wishes),
                                m_lettering),
                     {},
                     {}};
        result.sizes.boxWidth = kBoxWidth;
        result.sizes.boxHeight = boxHeight(textHeight(std::max<std::size_t>(lines, 2)), false);
        result.sizes.roomWidth = share * result.frame.room().width / kSmallestScale;
        result.sizes.roomHeight = result.frame.room().height / kSmallestScale;
        result.plan = planSheets(tree, result.sizes);
        return result;
    }

    Draft bestDraft(const Unfolded& tree, std::size_t lines, double share) const {
        if (m_wishes.orientation != Orientation::automatic)
            return draft(tree, lines, m_wishes.orientation == Orientation::landscape, share);
        Draft wide = draft(tree, lines, true, share), high = draft(tree, lines, false, share);
        return high.plan.sheets.size() < wide.plan.sheets.size() ? std::move(high)
                                                                 : std::move(wide);
    }

    std::vector<Label> labels(const std::vector<Item>& items) const {
        std::vector<Label> result;
        for (const Item& item : items)
            result.push_back(labelOf(item, m_index, m_lettering));
        return result;
    }

    // Empty content and no problem: a sheet came out too wide, the draft must be cut smaller.
    Answer<std::vector<Sheet>> drawAll(const Draft& draft, const sdk::Layout& layout,
                                       const sdk::Job& job, bool lastTry) const {
        const std::vector<Label> all = labels(draft.plan.items);
        SheetSet set{
            m_index,           m_wishes,           m_lettering, draft.plan, all, draft.sizes,
            draft.paper.width, draft.paper.height, draft.frame, m_words,    {},  {}};
        set.words.sheets = static_cast<int>(draft.plan.sheets.size());
        crossReference(set);
        std::vector<Sheet> sheets;
        for (std::size_t s = 0; s < draft.plan.sheets.size(); ++s) {
            if (job.progress)
                job.progress(static_cast<double>(s) / static_cast<double>(draft.plan.sheets.size()),
                             fmt::format("drawing sheet {}", s + 1));
            if (job.stop.stop_requested())
                return Answer<std::vector<Sheet>>::stopped(
                    sdk::Ending::cancelled, problem("the drawing was cancelled", "start it again"));
            Answer<PlacedSheet> placed = placeSheet(set, s, layout, job);
            if (!placed.content) return {placed.ending, std::nullopt, placed.problems};
            if (placed.content->scale < kSmallestScale - 1e-9) {
                if (!lastTry) return {};
                return Answer<std::vector<Sheet>>::failed(
                    {problem("the layout plug-in places the boxes too far apart for this paper",
                             "take a larger paper or another layout plug-in")});
            }
            sheets.push_back(drawSheet(set, s, *placed.content));
        }
        return Answer<std::vector<Sheet>>::of(std::move(sheets));
    }

private:
    const project::Index& m_index;
    const Wishes& m_wishes;
    const Lettering& m_lettering;
    FrameWords m_words;
};

} // namespace

Answer<Diagram> draw(const project::Project& project, const project::TopEvent& top,
                     const Wishes& wishes, const Lettering& lettering, const sdk::Layout& layout,
                     const sdk::Job& job) {
    const project::Index index(project);
    const project::Outcome<Unfolded> tree = unfold(index, top.node.id);
    if (!tree) {
        Answer<Diagram> answer = Answer<Diagram>::failed(tree.problems());
        if (index.gate(top.node.id) && answer.problems[0].where.empty())
            answer.ending = sdk::Ending::overLimit;
        return answer;
    }
    const Maker maker(project, index, top, wishes, lettering);
    std::size_t lines = 2;
    for (const Label& label : maker.labels(tree->items))
        lines = std::max(lines, label.lines());

    constexpr int kTries = 10;
    double share = 1;
    for (int attempt = 1; attempt <= kTries; ++attempt, share *= 0.95) {
        const Draft draft = maker.bestDraft(*tree, lines, share);
        if (draft.plan.sheets.size() > wishes.maxSheets)
            return Answer<Diagram>::stopped(
                sdk::Ending::overLimit,
                problem(fmt::format("the tree of {} needs {} sheets, more than {}", top.id,
                                    draft.plan.sheets.size(), wishes.maxSheets),
                        "draw a part of it (name a lower gate as the top), take a larger paper, or "
                        "allow more sheets"));
        Answer<std::vector<Sheet>> sheets = maker.drawAll(draft, layout, job, attempt == kTries);
        if (!sheets.content && sheets.problems.empty()) continue;
        if (!sheets.content) return {sheets.ending, std::nullopt, sheets.problems};
        return Answer<Diagram>::of({top.id, std::move(*sheets.content)});
    }
    return {};
}

} // namespace cutwater::drawing
