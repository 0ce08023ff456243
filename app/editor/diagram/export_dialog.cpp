// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/export_dialog.h"

#include "app/drawing/paint.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

namespace cutwater::editor {

ExportDialog::ExportDialog(drawing::Paper paper, drawing::Orientation orientation,
                           CaptionKind captions, bool hasSheet, QWidget* parent)
    : QDialog(parent), m_path(new QLineEdit), m_remark(new QLabel), m_paper(new QComboBox),
      m_orientation(new QComboBox), m_captions(new QComboBox), m_onlyThis(new QCheckBox),
      m_dpi(new QSpinBox) {
    setWindowTitle(tr("Export the diagram"));
    auto* form = new QFormLayout(this);
    auto* line = new QHBoxLayout;
    auto* choose = new QPushButton(tr("Choose..."));
    m_path->setMinimumWidth(280);
    m_path->setPlaceholderText(tr("name.pdf, name.svg or name.png"));
    line->addWidget(m_path, 1);
    line->addWidget(choose);
    form->addRow(tr("&File"), line);
    m_path->setAccessibleName(tr("File"));
    m_paper->addItems({QStringLiteral("A4"), QStringLiteral("A3")});
    m_paper->setCurrentIndex(paper == drawing::Paper::a3 ? 1 : 0);
    form->addRow(tr("&Paper"), m_paper);
    m_orientation->addItems({tr("the one that needs fewer sheets"), tr("upright"), tr("across")});
    m_orientation->setCurrentIndex(static_cast<int>(orientation));
    form->addRow(tr("&Orientation"), m_orientation);
    m_captions->addItems(
        {tr("nothing"), tr("tags"), tr("probabilities"), tr("probabilities, gates too")});
    m_captions->setCurrentIndex(static_cast<int>(captions));
    form->addRow(tr("&Under the events"), m_captions);
    m_dpi->setRange(drawing::kMinDpi, drawing::kMaxDpi);
    m_dpi->setValue(200);
    m_dpi->setSuffix(tr(" dpi"));
    form->addRow(tr("&Resolution of a PNG"), m_dpi);
    m_onlyThis->setText(tr("&Only the sheet that is shown"));
    m_onlyThis->setEnabled(hasSheet);
    form->addRow(m_onlyThis);
    m_remark->setWordWrap(true);
    form->addRow(m_remark);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_write = buttons->addButton(tr("Write"), QDialogButtonBox::AcceptRole);
    form->addRow(buttons);
    connect(choose, &QPushButton::clicked, this, &ExportDialog::browse);
    connect(m_path, &QLineEdit::textChanged, this, &ExportDialog::check);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    check();
}

void ExportDialog::browse() {
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Export the diagram"), m_path->text(),
                                     tr("Drawings (*.pdf *.svg *.png);;PDF, all sheets in one file "
                                        "(*.pdf);;SVG, a file for each "
                                        "sheet (*.svg);;PNG, a file for each sheet (*.png)"));
    if (!path.isEmpty()) m_path->setText(path);
}

void ExportDialog::check() {
    const std::optional<FileType> type = fileTypeOf(path());
    m_write->setEnabled(type.has_value());
    m_dpi->setEnabled(type == FileType::png);
    if (path().isEmpty())
        m_remark->setText(tr("The end of the name says what is written."));
    else if (!type)
        m_remark->setText(tr("The name must end in .pdf, .svg or .png."));
    else if (*type == FileType::pdf)
        m_remark->setText(tr("All sheets go into one file."));
    else
        m_remark->setText(tr("Several sheets become name-1, name-2 and so on."));
}

QString ExportDialog::path() const {
    return m_path->text().trimmed();
}

drawing::Paper ExportDialog::paper() const {
    return m_paper->currentIndex() == 1 ? drawing::Paper::a3 : drawing::Paper::a4;
}

drawing::Orientation ExportDialog::orientation() const {
    return static_cast<drawing::Orientation>(m_orientation->currentIndex());
}

CaptionKind ExportDialog::captions() const {
    return static_cast<CaptionKind>(m_captions->currentIndex());
}

bool ExportDialog::onlyThisSheet() const {
    return m_onlyThis->isEnabled() && m_onlyThis->isChecked();
}

int ExportDialog::dpi() const {
    return m_dpi->value();
}

} // namespace cutwater::editor
