// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QSettings>
#include <QTranslator>

namespace cutwater::editor {

namespace {
const QString kKey = QStringLiteral("window/language");
}

QList<QPair<QString, QString>> languages() {
    return {{QStringLiteral("en"), QStringLiteral("English")},
            {QStringLiteral("de"), QStringLiteral("Deutsch")}};
}

QString chosenLanguage(const QSettings& settings) {
    const QString code = settings.value(kKey).toString();
    for (const auto& [known, name] : languages())
        if (code == known) return code;
    return {};
}

void chooseLanguage(QSettings& settings, const QString& code) {
    if (code.isEmpty())
        settings.remove(kKey);
    else
        settings.setValue(kKey, code);
}

QString systemLanguage() {
    // The languages for texts, in the order of liking; the first that we have.
    for (const QString& wish : QLocale::system().uiLanguages())
        for (const auto& [code, name] : languages())
            if (wish.section('-', 0, 0) == code) return code;
    return QStringLiteral("en");
}

void installLanguage(const QString& code) {
    const QString language = code.isEmpty() ? systemLanguage() : code;
    auto* const program = QCoreApplication::instance();
    // The last one is asked first: ours before those of the toolkit.
    for (const QString& file : {QLibraryInfo::path(QLibraryInfo::TranslationsPath) +
                                    QStringLiteral("/qtbase_") + language,
                                QStringLiteral(":/i18n/cutwater_") + language}) {
        auto* const translator = new QTranslator(program);
        if (translator->load(file))
            QCoreApplication::installTranslator(translator);
        else
            delete translator;
    }
}

} // namespace cutwater::editor
