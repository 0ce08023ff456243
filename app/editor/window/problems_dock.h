// SPDX-License-Identifier: GPL-3.0-or-later
// ProblemsDock: the list of problems as a dock that takes no room while it is empty. Whether it is
// wanted is the user's word, kept with the settings; the counter in the status bar is always there.
#pragma once

#include <QDockWidget>

class QSettings;
class QToolButton;

namespace cutwater::editor {

class ProblemsList;

class ProblemsDock : public QDockWidget {
    Q_OBJECT
public:
    ProblemsDock(ProblemsList* list, QSettings& settings, QWidget* parent);

    // Says how many there are; pressed, it shows the list, pressed again it hides it.
    QToolButton* counter() const { return m_counter; }
    // Shows the list and gives it the keyboard.
    void look();
    bool isWanted() const { return m_wanted; }
    // After the window's state was restored, which knows nothing of what is empty.
    void settle();

private:
    void want(bool wanted);
    void take(int errors, int warnings);

    ProblemsList* m_list;
    QSettings& m_settings;
    QToolButton* m_counter;
    bool m_wanted;
    int m_count = 0;
};

} // namespace cutwater::editor
