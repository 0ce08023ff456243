// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/exchange/incoming.h"

#include "app/editor/session/session.h"
#include "models/project/edits/fragment.h"
#include "models/worksheet/import.h"
#include "models/worksheet/sheet_text.h"
#include "plugins/sdk/guard.h"

#include <QFileInfo>
#include <QtGlobal>

namespace cutwater::editor {

namespace edits = project::edits;
using project::Project;

namespace {

// For lupdate; undo names are translated where they are shown.
[[maybe_unused]] const char* const kDoing = QT_TRANSLATE_NOOP("Edits", "Import %1");

project::Problem problem(std::string what, std::string remedy) {
    project::Problem made;
    made.what = std::move(what);
    made.remedy = std::move(remedy);
    return made;
}

} // namespace

edits::Result mergeInto(const Project& current, const Project& incoming, const std::string& name) {
    edits::Changed changed;
    if (!incoming.tops.empty()) {
        edits::Result pasted = edits::paste(current, incoming, {});
        if (!pasted) return pasted;
        changed = std::move(*pasted);
    } else if (!incoming.modes.empty()) {
        worksheet::ImportWish wish;
        wish.makeComponents = true;
        wish.separator = ',';
        auto rows = worksheet::importRows(current, worksheet::sheetAsText(incoming, ','), wish);
        if (!rows) return rows.problems();
        for (const worksheet::ImportRow& row : rows->rows)
            if (!row.taken)
                return problem("row " + std::to_string(row.line) + ": " + row.why,
                               "mend it in the file, or import it as a new project");
        changed.project = std::move(rows->project);
    } else {
        return problem("there is neither a tree nor a row of the worksheet in it",
                       "choose another file");
    }
    changed.doing = kDoing;
    changed.about = name;
    return changed;
}

Incoming readIncoming(const QString& path, const std::string& bytes, const sdk::Exchange& exchange,
                      const sdk::PluginFacts& facts, const Project& current, const sdk::Job& job) {
    Incoming incoming;
    incoming.path = path;
    auto answer = sdk::guarded<Project>(facts, [&] { return exchange.read(bytes, {}, job); });
    if (job.stop.stop_requested() || answer.ending == sdk::Ending::cancelled) {
        incoming.cancelled = true;
        return incoming;
    }
    incoming.problems = std::move(answer.problems);
    if (!answer.content) return incoming;
    for (project::Problem& found : project::validate(*answer.content))
        incoming.problems.push_back(std::move(found));
    incoming.project = std::make_shared<const Project>(std::move(*answer.content));
    auto merged = mergeInto(current, *incoming.project, QFileInfo(path).fileName().toStdString());
    if (merged)
        incoming.merged = std::move(*merged);
    else
        incoming.whyNotMerged = sentence(merged.problems().front());
    return incoming;
}

QStringList IncomingWords::counts(const Project& project) {
    QStringList words;
    const auto add = [&](std::size_t count, const QString& text) {
        if (count > 0) words << text;
    };
    const auto n = [](std::size_t count) { return static_cast<int>(count); };
    add(project.tops.size(), tr("%n top event(s)", nullptr, n(project.tops.size())));
    add(project.gates.size(), tr("%n gate(s)", nullptr, n(project.gates.size())));
    add(project.events.size(), tr("%n event(s)", nullptr, n(project.events.size())));
    add(project.components.size(), tr("%n component(s)", nullptr, n(project.components.size())));
    add(project.modes.size(), tr("%n failure mode(s)", nullptr, n(project.modes.size())));
    add(project.log.size(), tr("%n log entry(ies)", nullptr, n(project.log.size())));
    if (words.isEmpty()) words << tr("nothing");
    return words;
}

QStringList IncomingWords::changes(const Project& before, const Project& after) {
    QStringList words;
    const auto add = [&](std::size_t was, std::size_t is, auto text) {
        if (is > was) words << text(static_cast<int>(is - was));
    };
    add(before.tops.size(), after.tops.size(),
        [](int n) { return tr("%n new top event(s)", nullptr, n); });
    add(before.gates.size(), after.gates.size(),
        [](int n) { return tr("%n new gate(s)", nullptr, n); });
    add(before.events.size(), after.events.size(),
        [](int n) { return tr("%n new event(s)", nullptr, n); });
    add(before.components.size(), after.components.size(),
        [](int n) { return tr("%n new component(s)", nullptr, n); });
    add(before.modes.size(), after.modes.size(),
        [](int n) { return tr("%n new failure mode(s)", nullptr, n); });
    std::size_t changed = 0;
    for (std::size_t i = 0; i < std::min(before.modes.size(), after.modes.size()); ++i)
        if (!(before.modes[i] == after.modes[i])) ++changed;
    if (changed > 0) words << tr("%n failure mode(s) changed", nullptr, static_cast<int>(changed));
    if (words.isEmpty()) words << tr("nothing changes");
    return words;
}

} // namespace cutwater::editor
