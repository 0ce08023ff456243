// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/library/type_words.h"

#include "app/editor/details/quantity_row.h"
#include "app/editor/outline/node_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace cutwater::editor {

namespace {

QString text(const std::string& words) {
    return QString::fromStdString(words).toHtmlEscaped();
}

// What a reader has to know of the number before he uses it; empty where the source was read.
QString trust(const project::SourceNote& source) {
    if (source.tag == "seen" || source.tag == "derived") return {};
    if (source.tag == "from memory")
        return QCoreApplication::translate("TypeWords",
                                           "from memory: to be checked against the source");
    if (source.tag.empty())
        return QCoreApplication::translate("TypeWords", "nothing says where it comes from");
    return QCoreApplication::translate("Models", source.tag.c_str());
}

QString sourceWords(const project::SourceNote& source) {
    QStringList parts;
    for (const std::string* part : {&source.document, &source.edition, &source.place})
        if (!part->empty()) parts << text(*part);
    QString words = parts.join(QStringLiteral(", "));
    if (!source.remark.empty()) words += QStringLiteral(" <i>(%1)</i>").arg(text(source.remark));
    return words;
}

void add(QString& html, const QString& what, const std::string& words) {
    if (!words.empty()) html += QStringLiteral("<br><b>%1</b> %2").arg(what, text(words));
}

} // namespace

QString numbersAsHtml(const project::FailureModel& model) {
    QString html = words(model.kind).toHtmlEscaped();
    if (model.clock != project::Clock::unstated)
        html += QStringLiteral(", ") + words(model.clock).toHtmlEscaped();
    for (const project::Assignment& number : model.numbers) {
        const project::Quantity& quantity = number.quantity;
        html += QStringLiteral("<br>%1: <b>%2 %3</b>")
                    .arg(words(number.role), numberWords(quantity.value),
                         QString::fromStdString(std::string(project::facts(quantity.unit).words)));
        if (const auto* spread = std::get_if<project::Lognormal>(&quantity.uncertainty))
            html += QCoreApplication::translate("TypeWords", ", error factor %1")
                        .arg(numberWords(spread->errorFactor));
        if (const QString source = sourceWords(quantity.source); !source.isEmpty())
            html += QStringLiteral("; ") + source;
        // A sign and words, not a colour alone.
        if (const QString doubt = trust(quantity.source); !doubt.isEmpty())
            html += QStringLiteral(" <b>&#9888; %1</b>").arg(doubt.toHtmlEscaped());
    }
    return html;
}

QString typeAsHtml(const library::Library& library, const library::ComponentType& type) {
    QString html = QStringLiteral("<h2>%1</h2>").arg(text(type.name));
    html += QCoreApplication::translate("TypeWords", "Library %1, type %2, revision %3")
                .arg(text(library.name.empty() ? library.id : library.name), text(type.id),
                     text(type.revision));
    add(html, QCoreApplication::translate("TypeWords", "Function:"), type.function);
    add(html, QCoreApplication::translate("TypeWords", "Remark:"), type.remark);
    for (const library::Mode& mode : type.modes) {
        const project::FailureMode& facts = mode.facts;
        html += QStringLiteral("<h3>%1</h3>").arg(text(facts.name));
        QString block;
        for (const std::string& cause : facts.causes)
            add(block, QCoreApplication::translate("TypeWords", "Cause:"), cause);
        add(block, QCoreApplication::translate("TypeWords", "Effect:"), facts.localEffect);
        add(block, QCoreApplication::translate("TypeWords", "On the next level:"),
            facts.nextEffect);
        add(block, QCoreApplication::translate("TypeWords", "Noticed by:"), facts.detection);
        add(block, QCoreApplication::translate("TypeWords", "Made up for by:"), facts.compensation);
        if (facts.dormant)
            block += QStringLiteral("<br><b>%1</b>")
                         .arg(QCoreApplication::translate(
                             "TypeWords", "Dormant: nobody sees it until a test or a demand"));
        html += block.mid(4); // without the first line break
        for (const project::Check& check : facts.checks) {
            html += QStringLiteral("<br><b>%1</b> %2")
                        .arg(check.minutes
                                 ? QCoreApplication::translate("TypeWords", "Look at (%1 min):")
                                       .arg(*check.minutes)
                                 : QCoreApplication::translate("TypeWords", "Look at:"),
                             text(check.look));
            if (!check.tells.empty())
                html += QStringLiteral("<br>&nbsp;&nbsp;&rarr; ") + text(check.tells);
        }
        html += QStringLiteral("<br>");
        if (mode.noRate.empty())
            html += numbersAsHtml(facts.model);
        else
            html +=
                QStringLiteral("<b>%1</b> %2")
                    .arg(QCoreApplication::translate("TypeWords", "No rate:"), text(mode.noRate));
        add(html, QCoreApplication::translate("TypeWords", "Remark:"), facts.remark);
    }
    return html;
}

} // namespace cutwater::editor
