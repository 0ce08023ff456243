// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/table_page.h"

#include "app/editor/analyses/result_model.h"
#include "app/results/cell_text.h"
#include "app/results/render.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

#include <set>

namespace cutwater::editor {
namespace {

constexpr int kWidest = 300;      // pixels of a column to begin with
constexpr int kRowsFitted = 200;  // more rows are one line high: fitting takes its time
constexpr int kFilterPause = 150; // ms
constexpr std::size_t kTextWidth = 120;

} // namespace

TablePage::TablePage(std::shared_ptr<const sdk::Result> result, std::size_t table, QWidget* parent)
    : QWidget(parent), m_model(new ResultModel(std::move(result), table, this)),
      m_filter(new ResultFilter(m_model, this)), m_words(new QLineEdit(this)),
      m_count(new QLabel(this)), m_view(new QTableView(this)) {
    m_words->setObjectName("filter");
    m_words->setPlaceholderText(tr("Show only rows with these words"));
    m_words->setAccessibleName(tr("Filter of the table"));
    m_words->setClearButtonEnabled(true);
    m_count->setObjectName("rowCount");
    m_view->setObjectName("table-" + QString::fromStdString(m_model->table().id));
    m_view->setAccessibleName(QString::fromStdString(m_model->table().title));
    m_view->setModel(m_filter);
    m_view->setSortingEnabled(true);
    m_view->sortByColumn(-1, Qt::AscendingOrder); // as the analysis ordered them
    m_view->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_view->setAlternatingRowColors(true);
    m_view->setTabKeyNavigation(false);
    m_view->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->horizontalHeader()->setResizeContentsPrecision(100);
    m_view->verticalHeader()->hide();
    m_view->resizeColumnsToContents();
    for (int column = 0; column < m_model->columnCount(); ++column)
        if (m_view->columnWidth(column) > kWidest) m_view->setColumnWidth(column, kWidest);
    fitRows();
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) { choose(now); });
    connect(m_view, &QTableView::clicked, this, &TablePage::choose);
    connect(m_filter, &ResultFilter::layoutChanged, this, &TablePage::fitRows);
    connect(m_view->horizontalHeader(), &QHeaderView::sectionResized, this, &TablePage::fitRows);

    m_pause.setSingleShot(true);
    m_pause.setInterval(kFilterPause);
    connect(&m_pause, &QTimer::timeout, this, &TablePage::filter);
    connect(m_words, &QLineEdit::textChanged, this, [this] { m_pause.start(); });
    connect(m_words, &QLineEdit::returnPressed, this, &TablePage::filter);

    auto* const bar = new QHBoxLayout;
    bar->addWidget(m_words, 1);
    bar->addWidget(m_count);
    auto* const layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(bar);
    layout->addWidget(m_view, 1);
    if (!m_model->table().remark.empty()) {
        auto* const remark = new QLabel(QString::fromStdString(m_model->table().remark), this);
        remark->setWordWrap(true);
        remark->setTextFormat(Qt::PlainText);
        layout->addWidget(remark);
    }
    makeActions();
    filter();
}

void TablePage::makeActions() {
    const auto add = [this](const QString& text, const QKeySequence& keys, auto call) {
        auto* const action = new QAction(text, m_view);
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WidgetShortcut);
        connect(action, &QAction::triggered, this, call);
        m_view->addAction(action);
    };
    m_view->setContextMenuPolicy(Qt::ActionsContextMenu);
    add(tr("Copy as text"), QKeySequence::Copy,
        [this] { QApplication::clipboard()->setText(asText()); });
    add(tr("Copy as CSV"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C),
        [this] { QApplication::clipboard()->setText(asCsv()); });
    add(tr("Order of the analysis"), {}, [this] {
        m_view->sortByColumn(-1, Qt::AscendingOrder);
        m_filter->sort(-1);
    });
}

void TablePage::choose(const QModelIndex& index) {
    if (!index.isValid()) return;
    const int row = m_filter->mapToSource(index).row();
    // What the row says: the cells that are words, the first few.
    QStringList words;
    for (int column = 0; column < m_model->columnCount() && words.size() < 3; ++column) {
        const auto& facts = m_model->table().columns[static_cast<std::size_t>(column)];
        const QString text = m_model->index(row, column).data().toString();
        if (!results::isNumeric(facts) && !text.isEmpty()) words.push_back(text);
    }
    emit rowChosen(m_model->nodes(row),
                   QString::fromStdString(m_model->table().title) + ": " + words.join(", "));
}

void TablePage::filter() {
    m_pause.stop();
    m_filter->setWords(m_words->text());
    const int shown = m_filter->rowCount(), all = m_model->rowCount();
    m_count->setText(shown != all ? tr("%1 of %2 rows").arg(shown).arg(all)
                     : all == 1   ? tr("1 row")
                                  : tr("%1 rows").arg(all));
    fitRows();
}

void TablePage::fitRows() {
    if (m_filter->rowCount() <= kRowsFitted) m_view->resizeRowsToContents();
}

sdk::Table TablePage::picked() const {
    sdk::Table table = m_filter->shown();
    std::set<int> rows;
    for (const QModelIndex& index : m_view->selectionModel()->selectedRows())
        rows.insert(index.row());
    if (rows.size() < 2) return table;
    std::vector<std::vector<sdk::Cell>> some;
    for (const int row : rows)
        some.push_back(std::move(table.rows[static_cast<std::size_t>(row)]));
    table.rows = std::move(some);
    return table;
}

QString TablePage::asText() const {
    sdk::Result result;
    result.tables.push_back(picked());
    return QString::fromStdString(results::renderText(result, kTextWidth)).trimmed() + '\n';
}

QString TablePage::asCsv() const {
    sdk::Result result;
    result.tables.push_back(picked());
    return QString::fromStdString(results::renderCsv(result, true));
}

} // namespace cutwater::editor
