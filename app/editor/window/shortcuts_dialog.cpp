// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/shortcuts_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeySequenceEdit>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace cutwater::editor {

ShortcutsDialog::ShortcutsDialog(Commands& commands, QWidget* parent)
    : QDialog(parent), m_commands(commands), m_filter(new QLineEdit(this)),
      m_list(new QTreeWidget(this)), m_keys(new QKeySequenceEdit(this)),
      m_sentence(new QLabel(this)) {
    setObjectName("shortcuts");
    setWindowTitle(tr("Keys"));
    resize(620, 520);
    m_filter->setPlaceholderText(tr("find a command"));
    m_filter->setAccessibleName(tr("Find a command"));
    m_filter->setClearButtonEnabled(true);
    m_list->setHeaderLabels({tr("Command"), tr("Keys")});
    m_list->setRootIsDecorated(false);
    m_list->setAccessibleName(tr("Commands"));
    m_list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_keys->setAccessibleName(tr("Keys of the command"));
    m_sentence->setWordWrap(true);
    auto* none = new QPushButton(tr("No keys"), this);
    auto* line = new QHBoxLayout;
    line->addWidget(new QLabel(tr("New keys:"), this));
    line->addWidget(m_keys, 1);
    line->addWidget(none);
    auto* buttons =
        new QDialogButtonBox(QDialogButtonBox::Close | QDialogButtonBox::RestoreDefaults, this);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_filter);
    layout->addWidget(m_list);
    layout->addLayout(line);
    layout->addWidget(m_sentence);
    layout->addWidget(buttons);

    connect(m_filter, &QLineEdit::textChanged, this, &ShortcutsDialog::fill);
    connect(m_list, &QTreeWidget::currentItemChanged, this, &ShortcutsDialog::showCurrent);
    connect(m_keys, &QKeySequenceEdit::editingFinished, this, &ShortcutsDialog::take);
    connect(none, &QPushButton::clicked, this, [this] {
        m_keys->clear();
        take();
    });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(buttons->button(QDialogButtonBox::RestoreDefaults), &QPushButton::clicked, this,
            [this] {
                m_commands.resetKeys();
                fill();
            });
    fill();
}

QAction* ShortcutsDialog::current() const {
    const QTreeWidgetItem* item = m_list->currentItem();
    const Command* command =
        item ? m_commands.find(item->data(0, Qt::UserRole).toString()) : nullptr;
    return command ? command->action : nullptr;
}

void ShortcutsDialog::fill() {
    const QAction* before = current();
    const QString name = before ? before->objectName() : QString();
    m_list->clear();
    for (const Command& command : m_commands.all()) {
        const QString text =
            QStringLiteral("%1: %2").arg(command.group, command.action->text().remove('&'));
        if (!text.contains(m_filter->text(), Qt::CaseInsensitive)) continue;
        auto* item = new QTreeWidgetItem(
            m_list, {text, command.action->shortcut().toString(QKeySequence::NativeText)});
        item->setData(0, Qt::UserRole, command.action->objectName());
        item->setIcon(0, command.action->icon());
        if (command.action->objectName() == name) m_list->setCurrentItem(item);
    }
    showCurrent();
}

void ShortcutsDialog::showCurrent() {
    const QAction* action = current();
    m_keys->setEnabled(action);
    m_keys->setKeySequence(action ? action->shortcut() : QKeySequence());
    m_sentence->clear();
}

void ShortcutsDialog::take() {
    QAction* action = current();
    const QKeySequence keys = m_keys->keySequence();
    if (!action || action->shortcut() == keys) return;
    if (const Command* other = m_commands.clash(keys, action)) {
        m_sentence->setText(
            tr("%1 are the keys of \"%2\"; take them away there first.")
                .arg(keys.toString(QKeySequence::NativeText), other->action->text().remove('&')));
        return;
    }
    m_commands.setKeys(action, keys);
    m_sentence->clear();
    fill();
}

} // namespace cutwater::editor
