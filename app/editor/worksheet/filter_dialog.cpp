// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/filter_dialog.h"

#include <QCollator>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHash>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace cutwater::editor {

namespace {

constexpr int kMostValues = 1000; // beyond nobody looks for one in a list

std::optional<double> numberIn(const QLineEdit* field) {
    if (!field) return std::nullopt;
    bool good = false;
    const double value = QLocale::c().toDouble(field->text().trimmed().replace(',', '.'), &good);
    return good ? std::optional(value) : std::nullopt;
}

} // namespace

SheetFilterDialog::SheetFilterDialog(const SheetData& sheet, const EffectFigures& figures,
                                     int place, const ColumnFilter& filter, QWidget* parent)
    : QDialog(parent), m_contains(new QLineEdit(this)), m_values(new QListWidget(this)) {
    const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(place)];
    setObjectName("worksheetFilter");
    setWindowTitle(tr("Filter: %1").arg(column.title));
    auto* form = new QFormLayout;
    m_contains->setText(filter.contains);
    m_contains->setClearButtonEnabled(true);
    m_contains->setObjectName("contains");
    form->addRow(tr("&Text holds:"), m_contains);
    if (column.kind != worksheet::ColumnKind::text) {
        m_least = new QLineEdit(this);
        m_most = new QLineEdit(this);
        m_least->setObjectName("least");
        m_most->setObjectName("most");
        if (filter.least) m_least->setText(QString::number(*filter.least, 'g', 12));
        if (filter.most) m_most->setText(QString::number(*filter.most, 'g', 12));
        form->addRow(tr("At &least:"), m_least);
        form->addRow(tr("At &most:"), m_most);
    }
    m_values->setObjectName("values");
    m_values->setAccessibleName(tr("Values that are shown"));
    QHash<QString, int> counts;
    for (std::size_t row = 0; row < sheet.rows(); ++row)
        ++counts[sheet.text(row, place, figures)];
    QStringList texts = counts.keys();
    QCollator collator;
    collator.setNumericMode(true);
    std::sort(texts.begin(), texts.end(), collator);
    const bool tooMany = texts.size() > kMostValues;
    if (tooMany) texts.clear();
    for (const QString& text : texts) {
        const QString words = text.isEmpty() ? tr("(empty)") : QString(text).replace(u'\n', u' ');
        auto* item = new QListWidgetItem(tr("%1  (%2)").arg(words).arg(counts[text]), m_values);
        item->setData(Qt::UserRole, text);
        item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
        item->setCheckState(!filter.values || filter.values->contains(text) ? Qt::Checked
                                                                            : Qt::Unchecked);
    }
    auto* all = new QPushButton(tr("Tick &all"), this);
    auto* none = new QPushButton(tr("Tick &none"), this);
    connect(all, &QPushButton::clicked, this, [this] { tickAll(true); });
    connect(none, &QPushButton::clicked, this, [this] { tickAll(false); });
    connect(m_contains, &QLineEdit::textChanged, this, &SheetFilterDialog::narrow);
    auto* ticks = new QHBoxLayout;
    ticks->addWidget(all);
    ticks->addWidget(none);
    ticks->addStretch();
    auto* buttons = new QDialogButtonBox(
        QDialogButtonBox::Ok | QDialogButtonBox::Cancel | QDialogButtonBox::Reset, this);
    QPushButton* reset = buttons->button(QDialogButtonBox::Reset);
    reset->setText(tr("&Every row"));
    connect(reset, &QPushButton::clicked, this, [this] {
        m_contains->clear();
        for (QLineEdit* field : {m_least, m_most})
            if (field) field->clear();
        tickAll(true);
        accept();
    });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    if (tooMany) {
        m_values->hide();
        auto* words = new QLabel(tr("There are too many different values for a list: type a part "
                                    "of the text."),
                                 this);
        words->setWordWrap(true);
        layout->addWidget(words);
    } else {
        layout->addLayout(ticks);
        layout->addWidget(m_values, 1);
    }
    layout->addWidget(buttons);
    narrow();
    resize(420, 460);
}

void SheetFilterDialog::narrow() {
    for (int row = 0; row < m_values->count(); ++row) {
        QListWidgetItem* item = m_values->item(row);
        item->setHidden(
            !item->data(Qt::UserRole).toString().contains(m_contains->text(), Qt::CaseInsensitive));
    }
}

void SheetFilterDialog::tickAll(bool ticked) {
    for (int row = 0; row < m_values->count(); ++row)
        m_values->item(row)->setCheckState(ticked ? Qt::Checked : Qt::Unchecked);
}

ColumnFilter SheetFilterDialog::filter() const {
    ColumnFilter filter;
    filter.contains = m_contains->text();
    filter.least = numberIn(m_least);
    filter.most = numberIn(m_most);
    QSet<QString> ticked;
    for (int row = 0; row < m_values->count(); ++row)
        if (m_values->item(row)->checkState() == Qt::Checked)
            ticked.insert(m_values->item(row)->data(Qt::UserRole).toString());
    if (ticked.size() != m_values->count()) filter.values = ticked;
    return filter;
}

} // namespace cutwater::editor
