// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/export_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QRadioButton>
#include <QVBoxLayout>

namespace cutwater::editor {

namespace {

QDialogButtonBox* buttonsFor(QDialog* dialog) {
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, dialog);
    QObject::connect(buttons, &QDialogButtonBox::accepted, dialog, &QDialog::accept);
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::reject);
    return buttons;
}

} // namespace

SheetExportDialog::SheetExportDialog(int rows, int columns, int allRows, QWidget* parent)
    : QDialog(parent), m_format(new QComboBox(this)),
      m_seen(
          new QRadioButton(tr("What is &seen: %1 rows, %2 columns").arg(rows).arg(columns), this)),
      m_all(new QRadioButton(tr("&Everything: %1 rows, all columns").arg(allRows), this)) {
    setObjectName("worksheetExport");
    setWindowTitle(tr("Export the worksheet"));
    m_format->setObjectName("format");
    m_format->addItem(tr("Workbook for spreadsheets (xlsx)"), QStringLiteral("xlsx"));
    m_format->addItem(tr("Text with commas (csv)"), QStringLiteral("csv"));
    m_format->addItem(tr("Text with tabs (tsv)"), QStringLiteral("tsv"));
    m_seen->setObjectName("seen");
    m_all->setObjectName("everything");
    m_seen->setChecked(true);
    auto* words = new QLabel(tr("Text that a spreadsheet would run as a formula is written so that "
                                "it does not; the import takes it back as it was."),
                             this);
    words->setWordWrap(true);
    auto* form = new QFormLayout;
    form->addRow(tr("&Format:"), m_format);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    layout->addWidget(m_seen);
    layout->addWidget(m_all);
    layout->addWidget(words);
    layout->addWidget(buttonsFor(this));
    resize(420, sizeHint().height());
}

QString SheetExportDialog::suffix() const {
    return m_format->currentData().toString();
}

QString SheetExportDialog::filter() const {
    return QStringLiteral("%1 (*.%2)")
        .arg(m_format->currentText().section(u'(', 0, 0).trimmed(), suffix());
}

bool SheetExportDialog::everything() const {
    return m_all->isChecked();
}

SheetPaperDialog::SheetPaperDialog(QWidget* parent) : QDialog(parent), m_size(new QComboBox(this)) {
    setObjectName("worksheetPaper");
    setWindowTitle(tr("The worksheet on paper"));
    m_size->setObjectName("size");
    m_size->addItems({tr("A4, across"), tr("A3, across")});
    auto* words = new QLabel(tr("Rows and columns as they are seen. Columns that do not fit go on "
                                "further sheets, with the first columns repeated."),
                             this);
    words->setWordWrap(true);
    auto* form = new QFormLayout;
    form->addRow(tr("&Paper:"), m_size);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    layout->addWidget(words);
    layout->addWidget(buttonsFor(this));
    resize(380, sizeHint().height());
}

bool SheetPaperDialog::a3() const {
    return m_size->currentIndex() == 1;
}

} // namespace cutwater::editor
