// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/answer_panel.h"

#include "app/editor/answers/answer_delegate.h"
#include "app/editor/answers/answer_model.h"
#include "app/editor/answers/figure_words.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace cutwater::editor {
namespace {

using State = LiveAnswers::State;
using Ending = LiveAnswer::Ending;

constexpr int kSlow = 1000; // ms: a run that takes longer shows how far it is

// Breaks its lines at the width of the view, also when that changes.
class WrappingList : public QListView {
public:
    using QListView::QListView;

protected:
    void resizeEvent(QResizeEvent* event) override {
        QListView::resizeEvent(event);
        scheduleDelayedItemsLayout();
    }
};

QLabel* words(QWidget* parent, const char* name) {
    auto* const label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

} // namespace

AnswerPanel::AnswerPanel(Selection* selection, QWidget* parent)
    : QWidget(parent), m_selection(selection), m_answers(new LiveAnswers(this)),
      m_model(new AnswerModel(this)), m_top(words(this, "answerTop")),
      m_figure(words(this, "answerFigure")), m_meaning(words(this, "answerMeaning")),
      m_counted(words(this, "answerCounted")), m_change(words(this, "answerChange")),
      m_state(words(this, "answerState")), m_button(new QPushButton(this)),
      m_progress(new QProgressBar(this)), m_list(new WrappingList(this)) {
    QFont bold = font();
    bold.setBold(true);
    m_top->setFont(bold);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.8);
    m_figure->setFont(large);
    m_figure->setAccessibleName(tr("Probability of the top event"));
    m_state->setAccessibleName(tr("State of the answer"));
    m_state->setFrameShape(QFrame::StyledPanel);
    m_state->setMargin(3);

    m_button->setObjectName("answerButton");
    m_progress->setObjectName("answerProgress");
    m_progress->setTextVisible(false);
    m_progress->setMaximumHeight(6);
    m_progress->setAccessibleName(tr("Progress of the analysis"));
    for (QWidget* const widget :
         {static_cast<QWidget*>(m_button), static_cast<QWidget*>(m_progress)}) {
        QSizePolicy policy = widget->sizePolicy();
        policy.setRetainSizeWhenHidden(widget == m_progress); // so that nothing jumps
        widget->setSizePolicy(policy);
        widget->hide();
    }
    connect(m_button, &QPushButton::clicked, this, [this] {
        if (m_answers->state() == State::waiting)
            m_answers->cancel();
        else
            m_answers->again();
    });

    m_list->setObjectName("answerLines");
    m_list->setAccessibleName(tr("Single failures, cut sets and warnings of the top event"));
    m_list->setModel(m_model);
    m_list->setItemDelegate(new AnswerDelegate(m_list));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &AnswerPanel::markLine);
    connect(m_list, &QListView::clicked, this, &AnswerPanel::markLine);
    connect(m_list, &QListView::activated, this, &AnswerPanel::markLine);

    auto* const state = new QHBoxLayout;
    state->addWidget(m_state, 1);
    state->addWidget(m_button);
    auto* const layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 6);
    layout->setSpacing(4);
    for (QWidget* const widget : {m_top, m_figure, m_meaning, m_counted, m_change})
        layout->addWidget(widget);
    layout->addLayout(state);
    layout->addWidget(m_progress);
    layout->addWidget(m_list, 1);

    m_slow.setSingleShot(true);
    m_slow.setInterval(kSlow);
    connect(&m_slow, &QTimer::timeout, this, [this] { showSlow(true); });
    connect(m_answers, &LiveAnswers::stateChanged, this, &AnswerPanel::showState);
    connect(m_answers, &LiveAnswers::answered, this, &AnswerPanel::showAnswer);
    connect(m_answers, &LiveAnswers::progressed, this, [this](double share) {
        m_progress->setRange(0, 1000);
        m_progress->setValue(static_cast<int>(1000 * share));
    });
    connect(m_selection, &Selection::topChanged, this, &AnswerPanel::ask);
    connect(m_selection, &Selection::marksChanged, this, &AnswerPanel::followMarks);
    makeActions();
    showAnswer();
}

AnswerPanel::~AnswerPanel() = default;

void AnswerPanel::makeActions() {
    const auto add = [this](const QString& text, const QKeySequence& keys, auto call) {
        auto* const action = new QAction(text, m_list);
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WidgetShortcut);
        connect(action, &QAction::triggered, this, call);
        m_list->addAction(action);
    };
    m_list->setContextMenuPolicy(Qt::ActionsContextMenu);
    add(tr("Copy line"), QKeySequence::Copy, [this] { copy(false); });
    add(tr("Copy everything"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C),
        [this] { copy(true); });
    add(tr("Clear the marks in the tree"), QKeySequence(Qt::Key_Escape),
        [this] { m_selection->clearMarks(); });
}

void AnswerPanel::setProject(std::shared_ptr<const project::Project> project) {
    m_project = std::move(project);
    ask();
}

void AnswerPanel::ask() {
    if (!m_project) return;
    m_answers->ask(m_project, m_selection->top());
    showState();
}

void AnswerPanel::showAnswer() {
    const auto answer = m_answers->answer();
    std::vector<AnswerLine> lines;
    if (answer) lines = AnswerLines::of(*answer);
    // The line that somebody looks at stays where it is, also where it has another place now.
    const QModelIndex before = m_list->currentIndex();
    const int scrolled = m_list->verticalScrollBar()->value();
    std::optional<AnswerLine> looked;
    if (before.isValid()) looked = m_model->line(before.row());
    m_marking = true; // what is current now was not clicked
    m_model->show(std::move(lines));
    const int row = looked ? m_model->find(*looked) : -1;
    if (row >= 0)
        m_list->setCurrentIndex(m_model->index(row));
    else
        m_list->selectionModel()->clear();
    m_marking = false;
    m_list->verticalScrollBar()->setValue(scrolled);
    showState();
}

void AnswerPanel::showFigure() {
    const auto answer = m_answers->answer();
    const auto before = m_answers->before();
    const bool asked = m_answers->state() != State::empty;
    if (!answer || answer->ending == Ending::noTop) {
        m_top->setText(answer || !asked ? tr("No top event")
                                        : tr("The first answer is on its way"));
        m_figure->clear();
        m_meaning->setText(answer || !asked
                               ? tr("Build a tree and make its first gate a top event: how "
                                    "probable it is and what alone brings it about stands here.")
                               : QString());
        m_change->clear();
    } else {
        m_top->setText(
            QString::fromStdString(answer->topName.empty() || answer->topName == answer->top
                                       ? answer->top
                                       : answer->top + " " + answer->topName));
        if (answer->figure) {
            m_figure->setText(FigureWords::figure(*answer->figure));
            m_meaning->setText(tr("%1; %2").arg(FigureWords::oneIn(*answer->figure),
                                                QString::fromStdString(answer->figure->words)));
            m_change->setText(before && before->figure
                                  ? FigureWords::change(*before->figure, *answer->figure)
                                  : QString());
        } else {
            m_figure->setText(tr("No figure"));
            m_meaning->setText(answer->ending == Ending::errors
                                   ? tr("The tree has an error; it is said below.")
                                   : tr("The warnings below say why."));
            m_change->setText(
                before && before->figure
                    ? tr("the last one was %1").arg(FigureWords::figure(*before->figure))
                    : QString());
        }
    }
    m_counted->setText(answer && (answer->figure || answer->setsKnown)
                           ? AnswerLines::counted(*answer)
                           : QString());
    for (QLabel* const label : {m_figure, m_meaning, m_counted, m_change})
        label->setVisible(!label->text().isEmpty());
    const bool stale = answer && m_answers->isStale();
    QFont font = m_figure->font();
    font.setItalic(stale);
    m_figure->setFont(font);
    if (stale && answer->figure)
        m_figure->setText(tr("%1 (stale)").arg(FigureWords::figure(*answer->figure)));
}

void AnswerPanel::showState() {
    const auto answer = m_answers->answer();
    const bool waiting = m_answers->state() == State::waiting;
    QString words;
    switch (m_answers->state()) {
    case State::empty: words = tr("\u2013 Nothing to answer yet"); break;
    case State::waiting:
        words = answer ? tr("\u27F3 Stale: being computed anew") : tr("\u27F3 Being computed");
        break;
    case State::current:
        words = !answer || answer->ending == Ending::noTop ? tr("\u2013 Nothing to answer yet")
                : answer->ending == Ending::errors ? tr("\u2716 No answer: the tree has an error")
                                                   : tr("\u2714 Current");
        break;
    case State::cancelled:
        words = answer ? tr("\u26A0 Stale: computing was cancelled") : tr("\u26A0 Cancelled");
        break;
    }
    m_state->setText(words);
    if (waiting && !m_slow.isActive() && m_progress->isHidden()) m_slow.start();
    if (!waiting) {
        m_slow.stop();
        showSlow(false);
    }
    if (m_answers->state() == State::cancelled) {
        m_button->setText(tr("Compute"));
        m_button->show();
    }
    showFigure();
}

void AnswerPanel::showSlow(bool slow) {
    m_progress->setRange(0, 0); // not known yet
    m_progress->setVisible(slow);
    m_button->setText(tr("Cancel"));
    m_button->setVisible(slow);
}

void AnswerPanel::markLine(const QModelIndex& index) {
    if (m_marking || !index.isValid()) return;
    const AnswerLine& line = m_model->line(index.row());
    if (line.nodes.empty()) return;
    const std::vector<std::string> nodes = line.nodes; // the signals may bring new lines
    m_marking = true;
    m_selection->mark({nodes.begin(), nodes.end()}, line.reason);
    if (nodes.size() == 1) m_selection->select(nodes);
    m_marking = false;
}

void AnswerPanel::followMarks() {
    if (m_marking) return;
    m_list->selectionModel()->clear(); // another view has marked something else
}

void AnswerPanel::copy(bool everything) {
    const auto answer = m_answers->answer();
    if (!answer) return;
    const QModelIndex current = m_list->currentIndex();
    if (everything || !current.isValid())
        QApplication::clipboard()->setText(AnswerLines::asText(*answer));
    else
        QApplication::clipboard()->setText(current.data().toString());
}

} // namespace cutwater::editor
