// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/worksheet_page.h"

#include "app/editor/worksheet/cautions_dialog.h"
#include "models/worksheet/scales.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace cutwater::editor {

SheetQuestions standardSheetQuestions() {
    SheetQuestions questions;
    questions.run = [](QDialog& dialog) { return dialog.exec() == QDialog::Accepted; };
    questions.agree = [](QWidget* parent, const QString& question) {
        return QMessageBox::question(parent, WorksheetPage::tr("Worksheet"), question,
                                     QMessageBox::Ok | QMessageBox::Cancel) == QMessageBox::Ok;
    };
    questions.whereToSave = [](QWidget* parent, const QString& proposed, const QString& filter) {
        return QFileDialog::getSaveFileName(parent, WorksheetPage::tr("Write the worksheet"),
                                            proposed, filter);
    };
    return questions;
}

WorksheetPage::WorksheetPage(Session& session, Selection& selection, sdk::Host& host,
                             QWidget* parent)
    : QWidget(parent), m_session(session), m_selection(selection), m_host(host),
      m_grid(new GridModel(this)), m_view(new GridView(*m_grid, this)),
      m_report(new SheetReportStrip(this)), m_find(new SheetFindBar(this)),
      m_effects(new EffectWorker(this)), m_choice(loadChoice(m_settings)) {
    setObjectName("worksheetPage");
    makeActions();
    m_empty = new QLabel(this);
    m_empty->setObjectName("worksheetEmpty");
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setMargin(24);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 6);
    layout->setSpacing(4);
    layout->addWidget(makeTools());
    layout->addWidget(makeFilter());
    layout->addWidget(makeFacts());
    layout->addWidget(m_report);
    layout->addWidget(makeWork());
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_view, 1);
    layout->addWidget(m_find);
    layout->addWidget(makeFoot());
    setFocusProxy(m_view);

    m_grid->typing = [this](const QModelIndex& index, const QString& text) {
        return typeCell(index, text);
    };
    connect(m_grid, &GridModel::typingRefused, this,
            [this](const QString& sentence) { m_report->tell(sentence, true); });
    connect(m_grid, &GridModel::orderChanged, this, &WorksheetPage::showState);
    connect(m_view, &GridView::clearWished, this, &WorksheetPage::clearCells);
    connect(m_view, &GridView::sortWished, this, &WorksheetPage::sortBy);
    connect(m_view, &GridView::columnsMoved, this, &WorksheetPage::moveColumn);
    connect(m_view, &GridView::columnResized, this, [this](int section, int width) {
        m_choice.widths[m_grid->shownColumns()[static_cast<std::size_t>(section)]] = width;
        saveColumns();
    });
    connect(m_view, &GridView::headingMenuWished, this, [this](int section, QPoint where) {
        QMenu menu;
        fillHeadingMenu(menu, section);
        menu.exec(where);
    });
    m_view->setContextMenuPolicy(Qt::CustomContextMenu);
    for (QTableView* table : {static_cast<QTableView*>(m_view), m_view->frozenView()}) {
        table->setContextMenuPolicy(Qt::CustomContextMenu);
        connect(table, &QWidget::customContextMenuRequested, this, [this, table](QPoint where) {
            QMenu menu;
            for (const char* name :
                 {"sheet.copy", "sheet.cut", "sheet.paste", "", "sheet.fill-down",
                  "sheet.fill-same", "", "sheet.new-row", "sheet.duplicate", "sheet.remove"})
                *name ? menu.addAction(action(name)) : void(menu.addSeparator());
            menu.exec(table->viewport()->mapToGlobal(where));
        });
    }
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &WorksheetPage::showCell);
    connect(m_view->selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] {
        if (!m_telling) m_tell.start();
        if (m_find->isVisible() && m_find->scope() != SearchScope::all) countFound();
    });
    connect(m_report, &SheetReportStrip::rowWished, this,
            [this](const project::Id& id, const QString& title) {
                for (const SheetColumn& column : sheetColumns())
                    if (column.title == title) return showRow(id, column.id);
                showRow(id);
            });
    connect(m_grid, &QAbstractItemModel::modelReset, this, &WorksheetPage::showCell);
    connect(m_find, &SheetFindBar::changed, this, &WorksheetPage::countFound);
    connect(m_find, &SheetFindBar::nextWished, this, &WorksheetPage::goToNext);
    connect(m_find, &SheetFindBar::replaceAllWished, this, &WorksheetPage::replaceAll);
    connect(m_find, &SheetFindBar::closed, this, [this] { m_view->setFocus(); });
    connect(m_effects, &EffectWorker::done, m_grid, &GridModel::setFigures);
    connect(m_effects, &EffectWorker::workingChanged, this, &WorksheetPage::showState);
    m_tell.setSingleShot(true);
    m_tell.setInterval(120);
    connect(&m_tell, &QTimer::timeout, this, &WorksheetPage::tellSelection);
    m_narrow.setSingleShot(true);
    m_narrow.setInterval(200);
    connect(&m_narrow, &QTimer::timeout, this, [this] {
        Arrangement wanted = m_grid->arrangement();
        wanted.words = m_filter->text();
        arrange(wanted);
    });
    connect(&m_session, &Session::projectChanged, this, &WorksheetPage::follow);
    connect(&m_session, &Session::replaced, this, [this] { m_report->putAway(); });
    connect(&m_session, &Session::refused, this, [this](const QString& sentence) {
        if (isVisible()) m_report->tell(sentence, true);
    });
    connect(&m_selection, &Selection::selectionChanged, this, &WorksheetPage::followSelection);
    takeColumns();
    follow();
}

WorksheetPage::~WorksheetPage() {
    m_stop.request_stop();
    m_session.disconnect(this);
    m_selection.disconnect(this);
}

QAction* WorksheetPage::action(const char* name) const {
    const auto found = m_actions.find(QLatin1String(name));
    return found == m_actions.end() ? nullptr : found->second;
}

QWidget* WorksheetPage::makeTools() {
    auto* tools = new QWidget(this);
    auto* line = new QHBoxLayout(tools);
    line->setContentsMargins(0, 0, 0, 0);
    const auto button = [&](const char* name) {
        auto* made = new QToolButton(tools);
        made->setDefaultAction(action(name));
        made->setToolButtonStyle(Qt::ToolButtonTextOnly);
        line->addWidget(made);
    };
    button("sheet.new-row");
    auto* sets = new QLabel(tr("Col&umns:"), tools);
    m_sets = new QComboBox(tools);
    m_sets->setObjectName("columnSets");
    sets->setBuddy(m_sets);
    for (const ColumnSet& set : columnSets())
        m_sets->addItem(set.title, set.id);
    m_sets->addItem(tr("A choice of one's own"), QString());
    connect(m_sets, &QComboBox::activated, this, [this] {
        const ColumnSet* set = columnSet(m_sets->currentData().toString());
        if (!set) return chooseColumns();
        ColumnChoice choice = m_choice;
        choice.set = set->id;
        choice.shown = set->columns;
        setColumns(choice);
    });
    line->addWidget(sets);
    line->addWidget(m_sets);
    auto* groups = new QLabel(tr("&Group by:"), tools);
    m_groups = new QComboBox(tools);
    m_groups->setObjectName("groupBy");
    groups->setBuddy(m_groups);
    m_groups->addItems(
        {tr("nothing"), tr("component"), tr("end effect"), tr("severity"), tr("location")});
    connect(m_groups, &QComboBox::activated, this, [this](int choice) {
        Arrangement wanted = m_grid->arrangement();
        wanted.group = static_cast<GroupBy>(choice);
        arrange(wanted);
    });
    line->addWidget(groups);
    line->addWidget(m_groups);
    m_dormant = new QCheckBox(tr("D&ormant only"), tools);
    m_dormant->setObjectName("dormantOnly");
    m_dormant->setToolTip(tr("Only failures that nobody sees until a test or a demand"));
    connect(m_dormant, &QCheckBox::clicked, this, [this](bool only) {
        m_dormantBySet = false;
        Arrangement wanted = m_grid->arrangement();
        wanted.dormantOnly = only;
        arrange(wanted);
    });
    for (QComboBox* box : {m_sets, m_groups}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(10);
    }
    line->addWidget(m_dormant);
    line->addStretch(1);
    auto* more = new QToolButton(tools);
    more->setText(tr("Table"));
    more->setToolTip(tr("Import, export, print, find, sort, columns"));
    more->setPopupMode(QToolButton::InstantPopup);
    auto* menu = new QMenu(more);
    for (QAction* each : m_menu)
        each ? menu->addAction(each) : void(menu->addSeparator());
    more->setMenu(menu);
    line->addWidget(more);
    return tools;
}

// A line of its own: beside the choices of columns and groups a narrow window has no room for
// words.
QWidget* WorksheetPage::makeFilter() {
    auto* tools = new QWidget(this);
    auto* line = new QHBoxLayout(tools);
    line->setContentsMargins(0, 0, 0, 0);
    m_filter = new QLineEdit(tools);
    m_filter->setObjectName("filterText");
    m_filter->setPlaceholderText(tr("Show rows that hold ..."));
    m_filter->setAccessibleName(tr("Show rows that hold these words"));
    m_filter->setClearButtonEnabled(true);
    connect(m_filter, &QLineEdit::textChanged, &m_narrow, qOverload<>(&QTimer::start));
    m_count = new QLabel(tools);
    m_count->setObjectName("rowCount");
    m_count->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    line->addWidget(m_filter, 1);
    line->addWidget(m_count);
    return tools;
}

QWidget* WorksheetPage::makeFacts() {
    auto* facts = new QWidget(this);
    auto* line = new QHBoxLayout(facts);
    line->setContentsMargins(0, 0, 0, 0);
    auto* mode = new QLabel(tr("Operating &mode of the worksheet:"), facts);
    m_mode = new QLineEdit(facts);
    m_mode->setObjectName("operatingMode");
    m_mode->setPlaceholderText(tr("not stated: a surveyor will ask"));
    m_mode->setMinimumWidth(140);
    mode->setBuddy(m_mode);
    connect(m_mode, &QLineEdit::editingFinished, this, &WorksheetPage::editMode);
    m_rpn = new QLabel(facts);
    m_rpn->setObjectName("rpnWarning");
    m_rpn->setText(
        tr("! RPN multiplies ranks: it is no measure of risk. Look at the severity first."));
    m_rpn->setWordWrap(true); // in a narrow window on two lines, rather than a wide window
    m_rpn->setMinimumWidth(200);
    m_rpn->setToolTip(QLatin1String(worksheet::kRpnWarning));
    line->addWidget(mode);
    line->addWidget(m_mode, 2);
    line->addWidget(m_rpn, 2);
    return facts;
}

QWidget* WorksheetPage::makeWork() {
    m_work = new QWidget(this);
    m_work->setObjectName("worksheetWork");
    m_progress = new QProgressBar(m_work);
    m_progress->setRange(0, 100);
    auto* cancel = new QDialogButtonBox(QDialogButtonBox::Cancel, m_work);
    connect(cancel, &QDialogButtonBox::rejected, this, &WorksheetPage::cancelPdf);
    auto* line = new QHBoxLayout(m_work);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(m_progress, 1);
    line->addWidget(cancel);
    m_work->hide();
    return m_work;
}

QWidget* WorksheetPage::makeFoot() {
    auto* foot = new QWidget(this);
    auto* grid = new QGridLayout(foot);
    grid->setContentsMargins(0, 0, 0, 0);
    m_cellTitle = new QLabel(foot);
    m_cellTitle->setObjectName("cellTitle");
    m_cellTitle->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_cellTitle->setWordWrap(true);
    m_cellTitle->setFixedWidth(fontMetrics().averageCharWidth() * 26);
    m_cell = new QPlainTextEdit(foot);
    m_cell->setObjectName("cellText");
    m_cell->setReadOnly(true);
    m_cell->setTabChangesFocus(true);
    m_cell->setAccessibleName(tr("The whole text of the cell"));
    m_cell->setFixedHeight(fontMetrics().lineSpacing() * 3 + 12);
    grid->addWidget(m_cellTitle, 0, 0);
    grid->addWidget(m_cell, 0, 1, 1, 2);
    m_caution = new QLabel(foot);
    m_caution->setObjectName("standingCaution");
    m_caution->setWordWrap(true);
    QFont bold = font();
    bold.setBold(true);
    m_caution->setFont(bold);
    auto* all = new QPushButton(tr("All &cautions ..."), foot);
    connect(all, &QPushButton::clicked, this, &WorksheetPage::askCautions);
    grid->addWidget(m_caution, 1, 0, 1, 2);
    grid->addWidget(all, 1, 2);
    grid->setColumnStretch(1, 1);
    return foot;
}

} // namespace cutwater::editor
