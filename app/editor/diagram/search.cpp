// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/search.h"

#include <QString>
#include <QStringList>

#include <algorithm>

namespace cutwater::editor {
namespace {

QString wordsOf(const Tree& tree, const drawing::Item& item) {
    std::string all = item.node + '\n' + (item.gate ? item.gate->name : item.event->name);
    if (item.event)
        if (const project::FailureMode* mode = tree.index.mode(item.event->mode)) {
            all += '\n' + mode->name;
            if (const project::Component* part = tree.index.component(mode->component))
                all += '\n' + part->tag + '\n' + part->name;
        }
    return QString::fromStdString(all);
}

} // namespace

std::vector<project::Id> findNodes(const Tree& tree, const std::string& text) {
    const QString whole = QString::fromStdString(text).simplified();
    const QStringList words = whole.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<project::Id> found;
    if (words.isEmpty()) return found;
    // Items stand in the order in which they were unfolded; a reader goes down and to the right.
    std::vector<std::size_t> open{0};
    while (!open.empty()) {
        const drawing::Item& item = tree.item(open.back());
        open.pop_back();
        open.insert(open.end(), item.children.rbegin(), item.children.rend());
        if (item.condition != drawing::kNoItem) open.push_back(item.condition);
        if (item.role != drawing::ItemRole::itself) continue;
        const QString all = wordsOf(tree, item);
        const bool hit = std::all_of(words.begin(), words.end(), [&](const QString& word) {
            return all.contains(word, Qt::CaseInsensitive);
        });
        if (hit) found.push_back(item.node);
    }
    std::stable_partition(found.begin(), found.end(), [&](const project::Id& id) {
        return QString::fromStdString(id).compare(whole, Qt::CaseInsensitive) == 0;
    });
    return found;
}

} // namespace cutwater::editor
