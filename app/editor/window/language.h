// SPDX-License-Identifier: GPL-3.0-or-later
// The language of the editor: that of the system where there is a translation, or a chosen one.
// Texts are made once, so that a choice counts from the next start.
#pragma once

#include <QList>
#include <QPair>
#include <QString>

class QSettings;

namespace cutwater::editor {

// Code and own name of each language that there is: "de", "Deutsch". English needs no translation.
QList<QPair<QString, QString>> languages();

// "": as the system; else a code of languages().
QString chosenLanguage(const QSettings& settings);
void chooseLanguage(QSettings& settings, const QString& code);

// Before the first text is made. A code without a translation leaves the program in English.
// Dates and numbers of the program's own stay as the system has them.
void installLanguage(const QString& code);
// What installLanguage("") takes.
QString systemLanguage();

} // namespace cutwater::editor
