// SPDX-License-Identifier: GPL-3.0-or-later
// ImportDialog: what is in the file, what is wrong with it, and where it shall go.
#pragma once

#include "app/editor/exchange/incoming.h"

#include <QDialog>

class QRadioButton;

namespace cutwater::editor {

enum class Into { nowhere, newProject, thisProject };

class ImportDialog : public QDialog {
    Q_OBJECT
public:
    ImportDialog(const Incoming& incoming, const project::Project& current, QWidget* parent);

    Into choice() const;

private:
    QRadioButton* m_new;
    QRadioButton* m_here;
};

} // namespace cutwater::editor
