// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown where there is no tree yet: how to begin.
#pragma once

#include "app/editor/window/file_desk.h"

#include <QWidget>

class QVBoxLayout;

namespace cutwater::editor {

class WelcomePage : public QWidget {
    Q_OBJECT
public:
    explicit WelcomePage(FileDesk& desk, QWidget* parent = nullptr);

signals:
    void typingWished(); // start with the keyboard in the outline

private:
    void showRecent();

    FileDesk& m_desk;
    QVBoxLayout* m_recent;
};

} // namespace cutwater::editor
