// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/live_answer.h"

#include "app/editor/answers/live_sets.h"
#include "app/editor/answers/tree_part.h"
#include "models/logic/bounded.h"
#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/how_bounded.h"
#include "plugins/sdk/tree/tree_notes.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <set>

namespace cutwater::editor {
namespace {

using project::Problem;
using sdk::tree::FigureBook;
using sdk::tree::Figures;
using sdk::tree::Solved;
using Ending = LiveAnswer::Ending;

constexpr std::size_t kMostErrors = 50; // more do not help: mending one often mends many

Said said(const Problem& problem, const project::Project& project, const project::Index& index) {
    std::string sentence = problem.what;
    if (!problem.remedy.empty()) sentence += "; " + problem.remedy;
    return {sentence + ".", nodesOf(problem, project, index)};
}

// False where the tree has errors of its own.
bool judge(LiveAnswer& answer, const project::Project& project, const project::Index& index,
           const project::Id& node) {
    const project::Project part = treePart(project, node);
    const project::Problems own = project::validate(part);
    std::set<std::string> known;
    for (const Problem& problem : own) {
        if (problem.severity != project::Severity::error) continue;
        known.insert(problem.what);
        if (answer.errors.size() < kMostErrors)
            answer.errors.push_back(said(problem, project, index));
    }
    for (const Problem& problem : project::validate(project)) {
        if (problem.severity != project::Severity::error || known.contains(problem.what)) continue;
        if (answer.elsewhere.size() < kMostErrors)
            answer.elsewhere.push_back(said(problem, project, index));
    }
    return answer.errors.empty();
}

// What the chance is where all events have a number.
LiveFigure figureOf(const Solved& solved, const Figures& figures) {
    const double value = solved.solution.probability(figures.q).occurs;
    if (!solved.tree.hasPriorityAnd) return {value, value, true, "exact"};
    if (!solved.solution.coherent())
        return {value, value, false, "an estimate: the order of the failures was ignored"};
    return {0, value, false, "an upper bound: the order of the failures was ignored"};
}

void addLacking(LiveAnswer& answer, const project::Project& project, const Figures& figures) {
    if (figures.complete()) return;
    Said warning;
    const std::size_t count = figures.lacking.size();
    warning.sentence =
        fmt::format("No figure: {} no number. Give {} a failure model: {}.",
                    count == 1 ? "one event has" : fmt::format("{} events have", count),
                    count == 1 ? "it" : "them", sdk::tree::idList(project, figures.lacking));
    for (const std::size_t event : figures.lacking)
        warning.nodes.push_back(project.events[event].id);
    answer.warnings.push_back(std::move(warning));
}

// The standing notes of a tree analysis; warnings go to the warnings.
void addNotes(LiveAnswer& answer, const project::Project& project, const FigureBook& book,
              const std::vector<Solved>& solved) {
    std::vector<sdk::Note> notes;
    sdk::tree::addTreeNotes(notes, solved, sdk::tree::Side::fails);
    sdk::tree::addFigureNotes(notes, project, book);
    sdk::tree::addCautions(notes, sdk::tree::CautionScope::figures, project);
    for (sdk::Note& note : notes) {
        if (note.kind == sdk::NoteKind::warning)
            answer.warnings.push_back({std::move(note.sentence)});
        else
            answer.notes.push_back(std::move(note));
    }
}

// A tree that does not fit: a proven interval, and no sets.
void bound(LiveAnswer& answer, const project::Project& project, FigureBook& book,
           const sdk::tree::Unsolved& tree, const logic::Limits& limits, const LiveMeans& means) {
    const Figures figures = book.of(tree.variables);
    addLacking(answer, project, figures);
    answer.ending = Ending::tooLarge;
    answer.warnings.push_back(
        {"This tree is too large to be solved at once while you type: its cut sets are not "
         "counted here. The analyses solve it, given time and memory."});
    if (!figures.complete()) return;
    logic::BoundsWish wish;
    wish.seconds = means.boundSeconds;
    const logic::BoundsOutcome outcome =
        logic::boundTop(tree.formula(), tree.top(), figures.q, limits, wish);
    if (outcome.stop == logic::Stop::cancelled) {
        answer.ending = Ending::cancelled;
        return;
    }
    if (!outcome.bounds) return;
    answer.ending = Ending::answered;
    answer.figure = LiveFigure{outcome.bounds->lower, outcome.bounds->upper, false,
                               "proven: " + sdk::tree::howBounded(*outcome.bounds)};
    addNotes(answer, project, book, {});
}

// With the common causes; without them, and a warning, where a group is too large for that.
sdk::tree::Unsolved formulaWith(LiveAnswer& answer, const project::Project& project,
                                const project::Index& index, const sdk::tree::Target& target) {
    sdk::tree::Circumstances circumstances;
    circumstances.commonCauses = true;
    auto made = sdk::tree::formulaOf(project, index, target, circumstances);
    if (!made) {
        for (const Problem& problem : made.problems())
            answer.warnings.push_back(said(problem, project, index));
        circumstances.commonCauses = false;
        made = sdk::tree::formulaOf(project, index, target, circumstances);
    }
    for (const std::size_t group : made->variables.groups())
        answer.commonCauses.push_back(project.commonCauses[group].id);
    return std::move(*made);
}

void solve(LiveAnswer& answer, const project::Project& project, const project::Index& index,
           const sdk::tree::Target& target, const LiveMeans& means) {
    sdk::tree::Unsolved tree = formulaWith(answer, project, index, target);
    logic::Limits limits;
    limits.stop = means.stop;
    limits.memoryBytes = means.memoryBytes;
    limits.nodesPerModule = means.nodesPerModule;
    limits.recall = means.recall;
    limits.progress = means.progress;
    logic::SolveOutcome outcome = logic::solve(tree.formula(), tree.top(), limits);
    FigureBook book(project, index, {});
    if (!outcome.solution) {
        if (outcome.stop == logic::Stop::cancelled)
            answer.ending = Ending::cancelled;
        else
            bound(answer, project, book, tree, limits, means);
        return;
    }
    std::vector<Solved> solved;
    solved.push_back({std::move(tree), target, std::move(*outcome.solution)});
    const Figures figures = book.of(solved.front());
    addLacking(answer, project, figures);
    if (figures.complete()) answer.figure = figureOf(solved.front(), figures);
    if (!addSets(answer, project, index, solved.front(), figures, book, means.stop)) {
        answer.ending = Ending::cancelled;
        return;
    }
    addNotes(answer, project, book, solved);
    answer.ending = Ending::answered;
}

} // namespace

LiveAnswer computeLive(const project::Project& project, const std::string& top,
                       const LiveMeans& means) {
    const auto start = std::chrono::steady_clock::now();
    LiveAnswer answer;
    answer.top = top.empty() && !project.tops.empty() ? project.tops.front().id : top;
    const project::Index index(project);
    const auto targets = sdk::tree::targetsOf(project, index, answer.top);
    if (answer.top.empty() || !targets) {
        answer.ending = Ending::noTop;
        return answer;
    }
    const sdk::tree::Target& target = targets->front();
    answer.topName = target.name;
    answer.hasAssessments = !project.assessments.empty();
    if (judge(answer, project, index, target.node))
        solve(answer, project, index, target, means);
    else
        answer.ending = Ending::errors;
    if (means.stop.stop_requested()) answer.ending = Ending::cancelled;
    answer.seconds =
        std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    return answer;
}

} // namespace cutwater::editor
