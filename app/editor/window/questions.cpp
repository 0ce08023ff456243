// SPDX-License-Identifier: GPL-3.0-or-later
// The dialogs of the file desk.
#include "app/editor/window/file_desk.h"

#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>

namespace cutwater::editor {

namespace {

QString filter() {
    return FileDesk::tr("Cutwater projects (*.cutwater);;All files (*)");
}

} // namespace

Questions standardQuestions() {
    Questions questions;
    questions.whatToOpen = [](QWidget* window, const QString& folder) {
        return QFileDialog::getOpenFileName(window, FileDesk::tr("Open a project"), folder,
                                            filter());
    };
    questions.whereToSave = [](QWidget* window, const QString& proposed) {
        return QFileDialog::getSaveFileName(window, FileDesk::tr("Save the project"), proposed,
                                            filter());
    };
    questions.unsaved = [](QWidget* window, const QString& name) {
        QMessageBox box(QMessageBox::Question, FileDesk::tr("Not saved"),
                        FileDesk::tr("%1 has changes that are not saved.").arg(name),
                        QMessageBox::NoButton, window);
        const auto* save = box.addButton(FileDesk::tr("Save"), QMessageBox::AcceptRole);
        const auto* discard =
            box.addButton(FileDesk::tr("Do not save"), QMessageBox::DestructiveRole);
        box.setEscapeButton(box.addButton(FileDesk::tr("Stay here"), QMessageBox::RejectRole));
        box.exec();
        if (box.clickedButton() == save) return Leaving::save;
        return box.clickedButton() == discard ? Leaving::discard : Leaving::stay;
    };
    return questions;
}

} // namespace cutwater::editor
