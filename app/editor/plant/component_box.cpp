// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/component_box.h"

#include "app/editor/plant/plant_words.h"

#include <QCompleter>
#include <QLineEdit>
#include <QSignalBlocker>

namespace cutwater::editor {

ComponentBox::ComponentBox(QWidget* parent) : QComboBox(parent) {
    setEditable(true);
    setInsertPolicy(NoInsert);
    setSizeAdjustPolicy(AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(18);
    completer()->setFilterMode(Qt::MatchContains);
    completer()->setCompletionMode(QCompleter::PopupCompletion);
    completer()->setCaseSensitivity(Qt::CaseInsensitive);
    lineEdit()->setPlaceholderText(tr("choose a component"));
}

void ComponentBox::offer(const project::Project& project, const project::Id& without) {
    const QSignalBlocker quiet(this);
    clear();
    for (const project::Component& each : project.components)
        if (each.id != without) addItem(wordsOf(each), QString::fromStdString(each.id));
    setCurrentIndex(-1);
    setEditText({});
}

void ComponentBox::show(const project::Id& component) {
    setCurrentIndex(findData(QString::fromStdString(component)));
    if (currentIndex() < 0) setEditText({});
}

project::Id ComponentBox::component() const {
    const QString text = currentText().trimmed();
    if (currentIndex() >= 0 && itemText(currentIndex()) == text)
        return currentData().toString().toStdString();
    for (int i = 0; i < count(); ++i)
        if (itemText(i).compare(text, Qt::CaseInsensitive) == 0 || itemData(i).toString() == text ||
            itemText(i).section(' ', 0, 0).compare(text, Qt::CaseInsensitive) == 0)
            return itemData(i).toString().toStdString();
    return {};
}

} // namespace cutwater::editor
