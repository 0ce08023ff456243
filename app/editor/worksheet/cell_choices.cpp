// SPDX-License-Identifier: GPL-3.0-or-later
// What the lists of cells offer: levels of the project's scales with their words.
#include "app/editor/worksheet/cell_delegate.h"

#include <QCoreApplication>

namespace cutwater::editor {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::CellChoices)
};

QString utf8(const std::string& text) {
    return QString::fromStdString(text);
}

// The worst first: nobody looks for the best one in a hurry.
CellChoiceField::Choices levels(const std::vector<project::RatingLevel>& scale) {
    CellChoiceField::Choices choices;
    for (auto level = scale.rbegin(); level != scale.rend(); ++level) {
        if (!level->rating) continue;
        const QString number = QString::number(*level->rating);
        QString words = QStringLiteral("%1  %2").arg(number, utf8(level->word));
        if (!level->meaning.empty()) words += QStringLiteral(": ") + utf8(level->meaning);
        if (level->limit) words += Words::tr(" (up to %1 a year)").arg(shownNumber(*level->limit));
        choices.emplace_back(number, words);
    }
    return choices;
}

QString words(project::ActionState state) {
    switch (state) {
    case project::ActionState::open: return Words::tr("open: nobody began yet");
    case project::ActionState::underWay: return Words::tr("under-way: begun");
    case project::ActionState::done: return Words::tr("done: but not yet shown to help");
    case project::ActionState::proved: return Words::tr("proved: shown to help");
    case project::ActionState::dropped: return Words::tr("dropped: with the reason beside it");
    }
    return {};
}

} // namespace

CellChoiceField::Choices choicesFor(CellEditor editor, const SheetData& data) {
    CellChoiceField::Choices choices;
    switch (editor) {
    case CellEditor::component:
        for (const project::Component& component : data.snapshot->components) {
            const QString tag = utf8(component.tag.empty() ? component.id : component.tag);
            choices.emplace_back(tag, component.name.empty() ? tag
                                                             : QStringLiteral("%1  %2").arg(
                                                                   tag, utf8(component.name)));
        }
        break;
    case CellEditor::severity:
        for (auto level = data.sheet.matrix.severities.rbegin();
             level != data.sheet.matrix.severities.rend(); ++level)
            choices.emplace_back(
                utf8(level->word),
                level->meaning.empty()
                    ? utf8(level->word)
                    : QStringLiteral("%1: %2").arg(utf8(level->word), utf8(level->meaning)));
        break;
    case CellEditor::severityRating: return levels(data.sheet.scales.severity);
    case CellEditor::occurrenceRating: return levels(data.sheet.scales.occurrence);
    case CellEditor::detectionRating: return levels(data.sheet.scales.detection);
    case CellEditor::yesNo:
        choices.emplace_back(QStringLiteral("yes"), Words::tr("yes: nobody sees it"));
        choices.emplace_back(QStringLiteral("no"), Words::tr("no: it shows at once"));
        break;
    case CellEditor::states:
        for (const auto state : {project::ActionState::open, project::ActionState::underWay,
                                 project::ActionState::done, project::ActionState::proved,
                                 project::ActionState::dropped})
            choices.emplace_back(QString::fromStdString(std::string(word(state))), words(state));
        break;
    default: break;
    }
    return choices;
}

} // namespace cutwater::editor
