// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/exchange/import_dialog.h"

#include "app/editor/session/session.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QStyle>
#include <QVBoxLayout>

namespace cutwater::editor {

namespace {

constexpr std::size_t kMostProblems = 200;

QLabel* words(const QString& text, QWidget* parent) {
    auto* const label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

} // namespace

ImportDialog::ImportDialog(const Incoming& incoming, const project::Project& current,
                           QWidget* parent)
    : QDialog(parent), m_new(new QRadioButton(tr("As a &new project"), this)),
      m_here(new QRadioButton(tr("&Into this project"), this)) {
    setObjectName("importDialog");
    const QString name = QFileInfo(incoming.path).fileName();
    setWindowTitle(tr("Import %1").arg(name));
    auto* const column = new QVBoxLayout(this);
    if (incoming.project)
        column->addWidget(words(
            tr("%1 has: %2.")
                .arg(name, IncomingWords::counts(*incoming.project).join(QStringLiteral(", "))),
            this));
    else
        column->addWidget(words(tr("%1 cannot be imported. Nothing was changed.").arg(name), this));
    auto* const list = new QListWidget(this);
    list->setObjectName("importProblems");
    list->setAccessibleName(tr("What is wrong in the file"));
    list->setWordWrap(true);
    std::size_t shown = 0;
    for (const project::Problem& problem : incoming.problems) {
        if (++shown > kMostProblems) {
            list->addItem(tr("And %1 more.").arg(incoming.problems.size() - kMostProblems));
            break;
        }
        const QString text = problem.line > 0
                                 ? tr("Line %1: %2").arg(problem.line).arg(sentence(problem))
                                 : sentence(problem);
        list->addItem(
            new QListWidgetItem(style()->standardIcon(problem.severity == project::Severity::error
                                                          ? QStyle::SP_MessageBoxCritical
                                                          : QStyle::SP_MessageBoxWarning),
                                text));
    }
    list->setVisible(!incoming.problems.empty());
    column->addWidget(list, 1);
    auto* const buttons = new QDialogButtonBox(this);
    if (incoming.project) {
        m_new->setObjectName("importNew");
        m_here->setObjectName("importHere");
        column->addWidget(m_new);
        column->addWidget(m_here);
        column->addWidget(words(
            incoming.merged ? tr("Into this project: %1. It can be undone.")
                                  .arg(IncomingWords::changes(current, incoming.merged->project)
                                           .join(QStringLiteral(", ")))
                            : tr("It cannot go into this project: %1").arg(incoming.whyNotMerged),
            this));
        m_here->setEnabled(incoming.merged.has_value());
        (incoming.merged ? m_here : m_new)->setChecked(true);
        auto* const take = buttons->addButton(tr("Import"), QDialogButtonBox::AcceptRole);
        take->setDefault(true);
    } else {
        m_new->hide();
        m_here->hide();
    }
    buttons->addButton(incoming.project ? tr("Cancel") : tr("Close"), QDialogButtonBox::RejectRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 74, fontMetrics().height() * 18);
}

Into ImportDialog::choice() const {
    if (result() != Accepted) return Into::nowhere;
    return m_here->isChecked() ? Into::thisProject : Into::newProject;
}

} // namespace cutwater::editor
