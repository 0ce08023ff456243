// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/plant_words.h"

#include "app/editor/outline/clipboard.h"
#include "models/document/document.h"
#include "models/project/edits/plant_copy.h"
#include "models/project/index.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <map>

namespace cutwater::editor {

namespace {

// The events that the failure modes are, as a part of a tree.
project::Project asEvents(project::Project fragment) {
    fragment.connections.clear();
    for (const project::FailureMode& mode : fragment.modes) {
        project::Event event;
        event.id = mode.id;
        event.name = mode.name;
        for (const project::Component& part : fragment.components)
            if (part.id == mode.component)
                event.name = project::edits::partWords(part) + ": " + mode.name;
        event.mode = mode.id;
        project::TopEvent top;
        top.id = "T" + std::to_string(fragment.tops.size() + 1);
        top.node.id = event.id;
        fragment.events.push_back(std::move(event));
        fragment.tops.push_back(std::move(top));
    }
    return fragment;
}

QString toLines(const project::Project& fragment) {
    std::map<project::Id, std::vector<const project::Component*>> parts;
    for (const project::Component& each : fragment.components)
        parts[each.parent].push_back(&each);
    struct Line {
        const project::Component* part;
        int depth;
    };
    std::vector<Line> left;
    const auto open = [&](const project::Id& id, int depth) {
        auto& below = parts[id];
        for (auto part = below.rbegin(); part != below.rend(); ++part)
            left.push_back({*part, depth});
    };
    open({}, 0);
    QString text;
    while (!left.empty()) {
        const Line line = left.back();
        left.pop_back();
        text += QString(line.depth, '\t') + wordsOf(*line.part) + '\n';
        for (const project::FailureMode& mode : fragment.modes)
            if (mode.component == line.part->id)
                text += QString(line.depth + 1, '\t') + "- " + wordsOf(mode) + '\n';
        open(line.part->id, line.depth + 1);
    }
    return text;
}

} // namespace

QString wordsOf(const project::Component& component) {
    return QString::fromStdString(project::edits::partWords(component));
}

QString wordsOf(const project::FailureMode& mode) {
    return QString::fromStdString(mode.name.empty() ? mode.id : mode.name);
}

QString wordsOf(const project::TopEvent& top) {
    return QString::fromStdString(top.name.empty() ? top.id : top.id + " " + top.name);
}

QString lossQuestion(const project::edits::Loss& loss) {
    const bool more = loss.components > 1 || (loss.components == 0 && loss.modes > 1);
    if (!loss.anything() && !more && (loss.components == 0 || loss.modes == 0)) return {};
    QStringList lines{
        QCoreApplication::translate("PlantWords", "This deletes components: %1, failure modes: %2.")
            .arg(loss.components)
            .arg(loss.modes)};
    if (loss.connections + loss.exposures > 0)
        lines << QCoreApplication::translate(
                     "PlantWords",
                     "With them go connections of the supply: %1, counts of running hours: %2.")
                     .arg(loss.connections)
                     .arg(loss.exposures);
    if (!loss.events.empty())
        lines << QCoreApplication::translate(
                     "PlantWords",
                     "Events of the trees that keep text and numbers, but are no row of the "
                     "worksheet any more: %1.")
                     .arg(loss.events.size());
    if (loss.supplied > 0)
        lines << QCoreApplication::translate("PlantWords",
                                             "Other components that lose a supplier: %1.")
                     .arg(loss.supplied);
    if (loss.logEntries > 0)
        lines << QCoreApplication::translate(
                     "PlantWords",
                     "Entries of the log that will note in the remark what they were about: %1.")
                     .arg(loss.logEntries);
    return lines.join('\n');
}

std::unique_ptr<QMimeData> partsToMime(const project::Project& project,
                                       const std::vector<project::Id>& ids) {
    const auto fragment = project::edits::copyParts(project, ids);
    if (!fragment) return nullptr;
    const auto text = document::write(*fragment);
    if (!text) return nullptr;
    const project::Index index(project);
    const bool modesOnly = std::none_of(ids.begin(), ids.end(), [&](const project::Id& id) {
        return index.component(id) != nullptr;
    });
    auto data = std::make_unique<QMimeData>();
    data->setData(kPlantType,
                  (modesOnly ? "modes\n" : "parts\n") + QByteArray::fromStdString(*text));
    if (modesOnly) {
        if (const auto tree = document::write(asEvents(*fragment)))
            data->setData(kFragmentType, QByteArray::fromStdString(*tree));
    }
    data->setText(toLines(*fragment));
    return data;
}

std::optional<PastedParts> partsFromMime(const QMimeData& data) {
    if (data.hasFormat(kPlantType)) {
        const QByteArray bytes = data.data(kPlantType);
        const qsizetype line = bytes.indexOf('\n');
        if (auto loaded = document::parse(bytes.mid(line + 1).toStdString()))
            return PastedParts{std::move(loaded->project), bytes.startsWith("modes")};
    }
    if (!data.hasText()) return std::nullopt;
    project::Project fragment = project::edits::partsFromLines(data.text().toStdString());
    if (fragment.components.empty()) return std::nullopt;
    return PastedParts{std::move(fragment), false};
}

} // namespace cutwater::editor
