// SPDX-License-Identifier: GPL-3.0-or-later
// Words of plug-ins in the language of the window: titles, names of parameters, columns. The
// plug-ins know no language; what has no translation is shown as it came.
#pragma once

#include <QCoreApplication>
#include <QString>

#include <string>

namespace cutwater::editor {

inline QString inOwnWords(const std::string& words) {
    // An empty text would be answered with the header of the translation.
    return words.empty() ? QString() : QCoreApplication::translate("Plugins", words.c_str());
}

// "Title [unit]"; the unit is the same everywhere.
inline QString inOwnWords(const std::string& words, const std::string& unit) {
    return unit.empty()
               ? inOwnWords(words)
               : QStringLiteral("%1 [%2]").arg(inOwnWords(words), QString::fromStdString(unit));
}

} // namespace cutwater::editor
