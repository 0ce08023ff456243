// SPDX-License-Identifier: GPL-3.0-or-later
// SheetCautionsDialog: the standing cautions, which nobody can take away, and below them those of
// the project, which can be added and changed.
#pragma once

#include "models/project/project.h"

#include <QDialog>

class QPlainTextEdit;

namespace cutwater::editor {

class SheetCautionsDialog : public QDialog {
    Q_OBJECT
public:
    SheetCautionsDialog(const project::Project& project, QWidget* parent);
    std::vector<std::string> own() const; // one a line

private:
    QPlainTextEdit* m_own;
};

QStringList standingCautions();

} // namespace cutwater::editor
