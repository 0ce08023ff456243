// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/session/recent_files.h"

#include <QFileInfo>

namespace cutwater::editor {

namespace {

constexpr const char* kKey = "files/recent";

} // namespace

QStringList recentFiles(QSettings& settings) {
    QStringList there;
    for (const QString& path : settings.value(kKey).toStringList())
        if (QFileInfo::exists(path)) there.push_back(path);
    return there;
}

void noteRecent(QSettings& settings, const QString& path) {
    QStringList all = settings.value(kKey).toStringList();
    const QString whole = QFileInfo(path).absoluteFilePath();
    all.removeAll(whole);
    all.prepend(whole);
    settings.setValue(kKey, all.mid(0, kMostRecent));
}

} // namespace cutwater::editor
