// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/problems_dock.h"

#include "app/editor/window/problems_list.h"

#include <QAction>
#include <QSettings>
#include <QStyle>
#include <QToolButton>

namespace cutwater::editor {

ProblemsDock::ProblemsDock(ProblemsList* list, QSettings& settings, QWidget* parent)
    : QDockWidget(tr("Problems"), parent), m_list(list), m_settings(settings),
      m_counter(new QToolButton(this)),
      m_wanted(settings.value("window/problems", false).toBool()) {
    setObjectName("problemsDock");
    setWidget(list);
    m_counter->setObjectName("problemsCounter");
    m_counter->setAutoRaise(true);
    m_counter->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_counter->setToolTip(tr("Shows or hides the list of problems"));
    connect(m_counter, &QToolButton::clicked, this, [this] {
        want(!isVisible());
        if (isVisible()) m_list->setFocus();
    });
    // triggered(): by the user; toggled() comes also when we hide an empty list.
    connect(toggleViewAction(), &QAction::triggered, this, &ProblemsDock::want);
    connect(m_list, &ProblemsList::counted, this, &ProblemsDock::take);
    setVisible(false);
    take(0, 0);
}

void ProblemsDock::want(bool wanted) {
    m_wanted = wanted;
    m_settings.setValue("window/problems", wanted);
    setVisible(wanted); // also where it is empty: it was asked for
}

void ProblemsDock::look() {
    show();
    raise();
    m_list->setFocus();
}

void ProblemsDock::settle() {
    setVisible(m_wanted && m_count > 0);
}

void ProblemsDock::take(int errors, int warnings) {
    const int before = m_count;
    m_count = errors + warnings;
    const QString count = m_count == 0  ? tr("No problems")
                          : errors == 0 ? tr("%n warning(s)", nullptr, warnings)
                          : warnings == 0
                              ? tr("%n error(s)", nullptr, errors)
                              : tr("%1, %2").arg(tr("%n error(s)", nullptr, errors),
                                                 tr("%n warning(s)", nullptr, warnings));
    m_counter->setText(count);
    m_counter->setIcon(m_count == 0
                           ? QIcon()
                           : style()->standardIcon(errors > 0 ? QStyle::SP_MessageBoxCritical
                                                              : QStyle::SP_MessageBoxWarning));
    setWindowTitle(tr("Problems: %1").arg(count));
    // It goes when the last one is mended and comes with the first, where it is wanted; between
    // that, what the user did to it stays.
    if (before > 0 && m_count == 0)
        hide();
    else if (before == 0 && m_count > 0 && m_wanted)
        show();
}

} // namespace cutwater::editor
