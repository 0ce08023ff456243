// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/result_view.h"

#include "app/editor/analyses/plot_chart.h"
#include "app/editor/analyses/plot_page.h"
#include "app/editor/analyses/table_page.h"
#include "app/editor/answers/answer_delegate.h"
#include "app/editor/answers/answer_model.h"
#include "app/editor/answers/own_words.h"
#include "app/results/render.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QMessageBox>
#include <QPushButton>
#include <QSaveFile>
#include <QScrollBar>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <array>

namespace cutwater::editor {
namespace {

constexpr std::size_t kTextWidth = 120;
constexpr int kNotesHeight = 130; // pixels, to begin with

class NotesList : public QListView {
public:
    using QListView::QListView;

protected:
    void resizeEvent(QResizeEvent* event) override {
        QListView::resizeEvent(event);
        scheduleDelayedItemsLayout(); // lines break elsewhere
    }
};

LineKind lineKind(sdk::NoteKind kind) {
    switch (kind) {
    case sdk::NoteKind::warning: return LineKind::warning;
    case sdk::NoteKind::caution: return LineKind::caution;
    case sdk::NoteKind::assumption: return LineKind::assumption;
    case sdk::NoteKind::method: return LineKind::remark;
    }
    return LineKind::remark;
}

} // namespace

ResultView::ResultView(std::shared_ptr<const sdk::Result> result, const QString& caption,
                       QWidget* parent)
    : QWidget(parent), m_result(std::move(result)), m_caption(caption),
      m_notes(new NotesList(this)), m_summary(new QLabel(this)), m_chooser(new QComboBox(this)),
      m_stack(new QStackedWidget(this)) {
    auto* const title = new QLabel(inOwnWords(m_result->title), this);
    title->setObjectName("resultTitle");
    title->setTextFormat(Qt::PlainText);
    title->setWordWrap(true);
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    auto* const how = new QLabel(m_caption, this);
    how->setObjectName("resultCaption");
    how->setTextFormat(Qt::PlainText);
    how->setWordWrap(true);
    m_summary->setObjectName("noteSummary");
    m_summary->setWordWrap(true);

    m_notes->setObjectName("notes");
    m_notes->setAccessibleName(tr("Warnings, cautions and assumptions of the result"));
    m_notes->setItemDelegate(new AnswerDelegate(m_notes));
    m_notes->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_notes->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    fillNotes();

    m_chooser->setObjectName("chooser");
    m_chooser->setAccessibleName(tr("Table or plot that is shown"));
    m_chooser->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_chooser->setMinimumContentsLength(16);
    fillChooser();
    auto* const text = new QPushButton(tr("Copy text"), this);
    auto* const csv = new QPushButton(tr("Copy CSV"), this);
    text->setToolTip(tr("Copies everything: tables, plots as numbers, and notes"));
    csv->setToolTip(text->toolTip());
    auto* const file = new QPushButton(tr("Save..."), this);
    file->setToolTip(tr("Saves everything as text or as CSV"));
    auto* const report = new QPushButton(tr("Send to report"), this);
    report->setObjectName("sendToReport");
    report->setToolTip(tr("Puts this result, with its notes and parameters, into the report"));
    connect(report, &QPushButton::clicked, this, &ResultView::reportWished);
    connect(file, &QPushButton::clicked, this, &ResultView::askWhere);
    connect(text, &QPushButton::clicked, this,
            [this] { QApplication::clipboard()->setText(asText()); });
    connect(csv, &QPushButton::clicked, this,
            [this] { QApplication::clipboard()->setText(asCsv()); });
    connect(m_chooser, &QComboBox::currentIndexChanged, this, &ResultView::showItem);
    const auto step = [this](const QKeySequence& keys, int by) {
        auto* const shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, [this, by] {
            const int next = m_chooser->currentIndex() + by;
            if (next >= 0 && next < m_chooser->count()) m_chooser->setCurrentIndex(next);
        });
    };
    step(QKeySequence(Qt::CTRL | Qt::Key_PageDown), 1);
    step(QKeySequence(Qt::CTRL | Qt::Key_PageUp), -1);

    auto* const below = new QWidget(this);
    auto* const bar = new QHBoxLayout; // below the chooser: beside it there is no room for both
    bar->addWidget(text);
    bar->addWidget(csv);
    bar->addWidget(file);
    bar->addWidget(report);
    bar->addStretch(1);
    auto* const belowLayout = new QVBoxLayout(below);
    belowLayout->setContentsMargins(0, 0, 0, 0);
    belowLayout->addWidget(m_chooser);
    belowLayout->addLayout(bar);
    belowLayout->addWidget(m_stack, 1);
    auto* const splitter = new QSplitter(Qt::Vertical, this);
    splitter->addWidget(m_notes);
    splitter->addWidget(below);
    splitter->setStretchFactor(1, 1);
    splitter->setCollapsible(0, false);
    splitter->setSizes({kNotesHeight, 4 * kNotesHeight});
    m_notes->setMinimumHeight(50);
    m_notes->setVisible(!m_result->notes.empty());

    auto* const layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(title);
    layout->addWidget(how);
    layout->addWidget(m_summary);
    layout->addWidget(splitter, 1);
    showItem(0);
}

void ResultView::fillNotes() {
    std::vector<AnswerLine> lines;
    std::array<int, 4> counts{};
    // What may be wrong first, then what is assumed; a caution is never below the fold alone: the
    // line above counts them.
    for (const auto kind : {sdk::NoteKind::warning, sdk::NoteKind::assumption,
                            sdk::NoteKind::caution, sdk::NoteKind::method})
        for (const sdk::Note& note : m_result->notes) {
            if (note.kind != kind) continue;
            ++counts[static_cast<std::size_t>(kind)];
            const LineKind line = lineKind(kind);
            lines.push_back({line,
                             AnswerLines::word(line) + ": " + QString::fromStdString(note.sentence),
                             {},
                             {}});
        }
    auto* const model = new AnswerModel(m_notes);
    model->show(std::move(lines));
    m_notes->setModel(model);
    const auto count = [&](sdk::NoteKind kind) { return counts[static_cast<std::size_t>(kind)]; };
    QStringList parts;
    if (m_result->exactness == sdk::Exactness::bounded)
        parts.push_back(
            tr("\u26A0 Not everything here is exact; the notes say what, and by how much"));
    if (const int n = count(sdk::NoteKind::warning))
        parts.push_back(n == 1 ? tr("\u26A0 1 warning") : tr("\u26A0 %1 warnings").arg(n));
    if (const int n = count(sdk::NoteKind::assumption))
        parts.push_back(n == 1 ? tr("\u2192 1 assumption") : tr("\u2192 %1 assumptions").arg(n));
    if (const int n = count(sdk::NoteKind::caution))
        parts.push_back(n == 1 ? tr("! 1 caution") : tr("! %1 cautions").arg(n));
    m_summary->setText(parts.join("   "));
    m_summary->setVisible(!parts.isEmpty());
}

void ResultView::fillChooser() {
    for (std::size_t i = 0; i < m_result->tables.size(); ++i) {
        m_chooser->addItem(tr("Table: %1").arg(inOwnWords(m_result->tables[i].title)));
        m_makers.emplace_back([this, i]() -> QWidget* {
            auto* const page = new TablePage(m_result, i, m_stack);
            connect(page, &TablePage::rowChosen, this, &ResultView::nodesChosen);
            return page;
        });
    }
    for (const std::vector<std::size_t>& group : chartGroups(m_result->series)) {
        std::vector<const sdk::Series*> series;
        for (const std::size_t i : group)
            series.push_back(&m_result->series[i]);
        m_chooser->addItem(tr("Plot: %1").arg(plotTitle(series)));
        m_makers.emplace_back([this, group]() -> QWidget* {
            auto* const page = new PlotPage(m_result, group, m_stack);
            connect(page, &PlotPage::labelChosen, this, [this](const QString& label) {
                emit nodesChosen({label.toStdString()}, label);
            });
            return page;
        });
    }
    m_pages.assign(m_makers.size(), nullptr);
}

void ResultView::showItem(int item) {
    if (item < 0 || static_cast<std::size_t>(item) >= m_makers.size()) return;
    QWidget*& page = m_pages[static_cast<std::size_t>(item)];
    if (!page) {
        page = m_makers[static_cast<std::size_t>(item)]();
        m_stack->addWidget(page);
    }
    m_stack->setCurrentWidget(page);
}

QWidget* ResultView::page() const {
    return m_stack->currentWidget();
}

QString ResultView::save(const QString& path) const {
    const bool csv = path.endsWith(".csv", Qt::CaseInsensitive);
    const QByteArray bytes = (csv ? asCsv() : asText()).toUtf8();
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit())
        return {};
    return tr("%1 cannot be written (%2); choose another place.").arg(path, file.errorString());
}

void ResultView::askWhere() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save result"), "result.csv",
                                                      tr("Tables (*.csv);;Text (*.txt)"));
    if (path.isEmpty()) return;
    const QString mistake = save(path);
    if (!mistake.isEmpty()) QMessageBox::warning(this, tr("Save result"), mistake);
}

QString ResultView::asText() const {
    return QString::fromStdString(results::renderText(*m_result, kTextWidth));
}

QString ResultView::asCsv() const {
    return QString::fromStdString(results::renderCsv(*m_result, false));
}

} // namespace cutwater::editor
