// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/report_strip.h"

#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace cutwater::editor {

SheetReportStrip::SheetReportStrip(QWidget* parent)
    : QFrame(parent), m_mark(new QLabel(this)), m_sentence(new QLabel(this)),
      m_show(new QPushButton(tr("Which &cells"), this)),
      m_copy(new QPushButton(tr("Cop&y the list"), this)), m_list(new QTableWidget(0, 4, this)) {
    setObjectName("worksheetReport");
    setFrameShape(QFrame::StyledPanel);
    m_sentence->setWordWrap(true);
    m_sentence->setTextFormat(Qt::PlainText);
    m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_sentence->setObjectName("reportSentence");
    QFont bold = font();
    bold.setBold(true);
    m_mark->setFont(bold);
    m_show->setCheckable(true);
    auto* away = new QPushButton(tr("Put &away"), this);
    m_list->setObjectName("reportList");
    m_list->setAccessibleName(tr("Cells that were not taken"));
    m_list->setHorizontalHeaderLabels({tr("Row"), tr("Column"), tr("Text"), tr("Why not")});
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_list->verticalHeader()->hide();
    m_list->verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + 6);
    m_list->horizontalHeader()->setStretchLastSection(true);
    m_list->setMaximumHeight(180);
    connect(m_show, &QPushButton::toggled, this, &SheetReportStrip::showList);
    connect(m_copy, &QPushButton::clicked, this,
            [this] { QApplication::clipboard()->setText(asText()); });
    connect(away, &QPushButton::clicked, this, &SheetReportStrip::putAway);
    const auto go = [this](int row) {
        if (row < 0 || row >= static_cast<int>(m_notTaken.size())) return;
        const NotTaken& cell = m_notTaken[static_cast<std::size_t>(row)];
        if (!cell.mode.empty()) emit rowWished(cell.mode, cell.column);
    };
    connect(m_list, &QTableWidget::cellActivated, this, [go](int row, int) { go(row); });
    connect(m_list, &QTableWidget::cellClicked, this, [go](int row, int) { go(row); });
    auto* line = new QHBoxLayout;
    line->addWidget(m_mark);
    line->addWidget(m_sentence, 1);
    line->addWidget(m_show);
    line->addWidget(m_copy);
    line->addWidget(away);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 4, 6, 4);
    layout->addLayout(line);
    layout->addWidget(m_list);
    hide();
}

QString SheetReportStrip::sentence() const {
    return isHidden() ? QString() : m_sentence->text();
}

void SheetReportStrip::tell(const QString& sentence, bool bad) {
    m_notTaken.clear();
    m_mark->setText(bad ? QStringLiteral("!") : QString());
    m_mark->setVisible(bad);
    m_sentence->setText(sentence);
    m_show->setChecked(false);
    m_show->hide();
    m_copy->hide();
    m_list->hide();
    show();
    QAccessibleEvent told(m_sentence, QAccessible::Alert);
    QAccessible::updateAccessibility(&told);
}

void SheetReportStrip::tell(const QString& sentence, std::vector<NotTaken> notTaken) {
    tell(sentence, !notTaken.empty());
    m_notTaken = std::move(notTaken);
    if (m_notTaken.empty()) return;
    m_show->show();
    m_copy->show();
    m_show->setChecked(true);
}

void SheetReportStrip::putAway() {
    m_notTaken.clear();
    hide();
}

void SheetReportStrip::showList(bool shown) {
    m_list->setVisible(shown && !m_notTaken.empty());
    if (!shown) return;
    constexpr std::size_t most = 1000; // that anybody reads; all of them can be copied
    const std::size_t count = std::min(m_notTaken.size(), most);
    m_list->setRowCount(static_cast<int>(count));
    for (std::size_t i = 0; i < count; ++i) {
        const NotTaken& cell = m_notTaken[i];
        const QString texts[] = {cell.row, cell.column, cell.text, cell.why};
        for (int column = 0; column < 4; ++column) {
            auto* item = new QTableWidgetItem(QString(texts[column]).replace(u'\n', u' '));
            item->setToolTip(texts[column]);
            m_list->setItem(static_cast<int>(i), column, item);
        }
    }
    for (int column = 0; column < 3; ++column)
        m_list->resizeColumnToContents(column);
    for (int column = 0; column < 3; ++column)
        m_list->setColumnWidth(column, std::min(m_list->columnWidth(column), 260));
}

QString SheetReportStrip::asText() const {
    const auto plain = [](QString text) { return text.replace(u'\n', u' ').replace(u'\t', u' '); };
    QString all =
        QStringList{tr("Row"), tr("Column"), tr("Text"), tr("Why not")}.join(u'\t') + u'\n';
    for (const NotTaken& cell : m_notTaken)
        all += QStringList{plain(cell.row), plain(cell.column), plain(cell.text), cell.why}.join(
                   u'\t') +
               u'\n';
    return all;
}

} // namespace cutwater::editor
