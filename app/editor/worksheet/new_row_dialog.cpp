// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/new_row_dialog.h"

#include "app/editor/worksheet/cell_delegate.h"
#include "models/worksheet/typing.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>

namespace cutwater::editor {

SheetRowDialog::SheetRowDialog(const SheetData& sheet, const QString& component, QWidget* parent)
    : QDialog(parent), m_data(sheet),
      m_component(new CellChoiceField(choicesFor(CellEditor::component, sheet), true, this)),
      m_parent(new CellChoiceField(choicesFor(CellEditor::component, sheet), true, this)),
      m_name(new QLineEdit(this)), m_words(new QLabel(this)),
      m_buttons(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this)) {
    setObjectName("newRow");
    setWindowTitle(tr("New row"));
    m_component->setObjectName("component");
    m_component->setCellText(component);
    m_parent->setObjectName("parent");
    m_parent->setCellText(QString());
    m_name->setObjectName("mode");
    m_name->setPlaceholderText(tr("such as: leaks"));
    m_words->setWordWrap(true);
    m_words->setMinimumHeight(m_words->fontMetrics().lineSpacing() * 2);
    auto* layout = new QFormLayout(this);
    layout->addRow(tr("&Component:"), m_component);
    layout->addRow(tr("&Part of:"), m_parent);
    layout->addRow(tr("&Failure mode:"), m_name);
    layout->addRow(m_words);
    layout->addRow(m_buttons);
    connect(m_component, &QComboBox::editTextChanged, this, &SheetRowDialog::look);
    connect(m_parent, &QComboBox::editTextChanged, this, &SheetRowDialog::look);
    connect(m_name, &QLineEdit::textChanged, this, &SheetRowDialog::look);
    connect(m_buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    resize(480, sizeHint().height());
    if (!component.isEmpty()) m_name->setFocus();
    look();
}

project::Id SheetRowDialog::component() const {
    const auto meant =
        worksheet::componentMeant(*m_data.snapshot, m_component->cellText().toStdString());
    return meant ? *meant : project::Id();
}

QString SheetRowDialog::newTag() const {
    return m_component->cellText().trimmed();
}

project::Id SheetRowDialog::parentOfNew() const {
    const auto meant =
        worksheet::componentMeant(*m_data.snapshot, m_parent->cellText().toStdString());
    return meant ? *meant : project::Id();
}

QString SheetRowDialog::name() const {
    return m_name->text().trimmed();
}

void SheetRowDialog::look() {
    const bool known = !component().empty();
    m_parent->setEnabled(!known && !newTag().isEmpty());
    const bool noParent = !m_parent->cellText().trimmed().isEmpty() && parentOfNew().empty();
    if (newTag().isEmpty())
        m_words->setText(tr("Choose the component that fails, or type the tag of a new one."));
    else if (!known && noParent)
        m_words->setText(tr("! The plant has no component %1 that the new one could be part of.")
                             .arg(m_parent->cellText().trimmed()));
    else if (!known)
        m_words->setText(
            tr("+ %1 is not in the plant yet: it is made together with the row.").arg(newTag()));
    else
        m_words->setText(name().isEmpty() ? tr("Type what fails.") : QString());
    m_buttons->button(QDialogButtonBox::Ok)
        ->setEnabled(!newTag().isEmpty() && !name().isEmpty() && (known || !noParent));
}

} // namespace cutwater::editor
