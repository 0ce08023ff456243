// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/report/report_page.h"

#include "app/editor/answers/own_words.h"

#include "app/paper/report_content.h"

#include <QAction>
#include <QCheckBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QPrintDialog>
#include <QPrinter>
#include <QProgressBar>
#include <QPushButton>
#include <QSaveFile>
#include <QSplitter>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace cutwater::editor {

namespace {

QPushButton* button(QWidget* parent, const char* name, const QString& text, const QString& tip) {
    auto* const made = new QPushButton(text, parent);
    made->setObjectName(QLatin1String(name));
    made->setToolTip(tip);
    return made;
}

} // namespace

ReportPage::ReportPage(sdk::Host& host, QWidget* parent)
    : QWidget(parent), m_list(new ReportList(this)), m_run(new ReportRun(host, this)) {
    setObjectName("reportPage");
    whereToSave = [](QWidget* window, const QString& filter) {
        return QFileDialog::getSaveFileName(window, tr("Save the report"), tr("report.html"),
                                            filter);
    };
    auto* const split = new QSplitter(this);
    split->addWidget(makeLeft());
    split->addWidget(makeRight());
    split->setStretchFactor(1, 1);
    split->setSizes({360, 640});
    auto* const layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 6);
    layout->addWidget(split);

    for (const sdk::PluginFacts& facts : host.plugins())
        for (const std::string& id : paper::standardAnalyses())
            if (facts.kind == sdk::PluginKind::analysis && facts.id == id)
                m_standard->setProperty(id.c_str(), inOwnWords(facts.title));
    connect(m_standard, &QPushButton::clicked, this, [this] {
        for (const std::string& id : paper::standardAnalyses()) {
            const QVariant title = m_standard->property(id.c_str());
            if (!title.isValid()) continue;
            ReportItem item;
            item.analysis = id;
            item.method = title.toString();
            m_list->add(std::move(item));
        }
    });
    m_standard->click();
    m_view->setCurrentIndex(m_list->index(0));
    connect(m_list, &ReportList::changed, this, &ReportPage::updateButtons);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &ReportPage::showChosen);
    connect(m_run, &ReportRun::made, this, &ReportPage::take);
    connect(m_run, &ReportRun::runningChanged, this, &ReportPage::updateButtons);
    connect(m_run, &ReportRun::progressed, this, [this](double share, const QString& doing) {
        m_progress->setRange(0, 100);
        m_progress->setValue(static_cast<int>(100 * share));
        say(tr("Working: %1").arg(doing));
    });
    showChosen();
}

QWidget* ReportPage::makeLeft() {
    auto* const left = new QWidget(this);
    auto* const words = new QLabel(tr("What goes into the report, from top to bottom. \"Send to "
                                      "report\" on a result brings it "
                                      "here. The list is kept until the editor is closed; it is "
                                      "not part of the project file."),
                                   left);
    words->setWordWrap(true);
    m_view = new QListView(left);
    m_view->setObjectName("reportItems");
    m_view->setAccessibleName(tr("Contents of the report"));
    m_view->setModel(m_list);
    m_view->setWordWrap(true);
    m_up = button(left, "reportUp", tr("Up"), tr("Moves it up (Alt+Up)"));
    m_down = button(left, "reportDown", tr("Down"), tr("Moves it down (Alt+Down)"));
    m_remove = button(left, "reportRemove", tr("Remove"), tr("Takes it out of the list (Delete)"));
    m_standard = button(left, "reportStandard", tr("Add the usual"),
                        tr("Probability of the top events, single failures, cut sets"));
    connect(m_up, &QPushButton::clicked, this, [this] { m_list->move(chosen(), -1); });
    connect(m_down, &QPushButton::clicked, this, [this] { m_list->move(chosen(), 1); });
    connect(m_remove, &QPushButton::clicked, this, [this] { m_list->remove(chosen()); });
    // In the list only: the outline uses the same keys for the same things.
    const auto key = [this](const QKeySequence& keys, QPushButton* same) {
        auto* const action = new QAction(this);
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WidgetShortcut);
        m_view->addAction(action);
        connect(action, &QAction::triggered, same, &QPushButton::click);
    };
    key(QKeySequence(Qt::ALT | Qt::Key_Up), m_up);
    key(QKeySequence(Qt::ALT | Qt::Key_Down), m_down);
    key(QKeySequence::Delete, m_remove);
    m_title = new QLineEdit(left);
    m_title->setObjectName("reportTitle");
    auto* const titleWords = new QLabel(tr("Its &heading"), left);
    titleWords->setBuddy(m_title);
    m_comment = new QPlainTextEdit(left);
    m_comment->setObjectName("reportComment");
    m_comment->setTabChangesFocus(true);
    m_comment->setPlaceholderText(tr("What the reader should see in it. It stands above the "
                                     "result."));
    auto* const commentWords = new QLabel(tr("&Comment"), left);
    commentWords->setBuddy(m_comment);
    connect(m_title, &QLineEdit::textEdited, this,
            [this](const QString& text) { m_list->setTitle(chosen(), text); });
    connect(m_comment, &QPlainTextEdit::textChanged, this,
            [this] { m_list->setComment(chosen(), m_comment->toPlainText()); });
    m_drawings = new QCheckBox(tr("With the &drawn trees"), left);
    m_drawings->setObjectName("reportDrawings");
    m_drawings->setChecked(true);

    auto* const grid = new QGridLayout(left);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->addWidget(words, 0, 0, 1, 4);
    grid->addWidget(m_view, 1, 0, 1, 4);
    grid->addWidget(m_up, 2, 0);
    grid->addWidget(m_down, 2, 1);
    grid->addWidget(m_remove, 2, 2);
    grid->addWidget(titleWords, 3, 0, 1, 4);
    grid->addWidget(m_title, 4, 0, 1, 4);
    grid->addWidget(commentWords, 5, 0, 1, 4);
    grid->addWidget(m_comment, 6, 0, 1, 4);
    grid->addWidget(m_drawings, 7, 0, 1, 4);
    grid->addWidget(m_standard, 8, 0, 1, 4);
    grid->setRowStretch(1, 3);
    grid->setRowStretch(6, 2);
    return left;
}

QWidget* ReportPage::makeRight() {
    auto* const right = new QWidget(this);
    m_previewButton = button(right, "reportPreview", tr("&Preview"),
                             tr("Makes the report as it is now and shows it below"));
    m_exportButton = button(right, "reportExport", tr("&Save as ..."),
                            tr("One page for browsers, PDF, or text for office programs"));
    m_printButton = button(right, "reportPrint", tr("P&rint ..."), tr("Prints the report"));
    m_cancel = button(right, "reportCancel", tr("Cancel"), tr("Stops what is being made"));
    m_progress = new QProgressBar(right);
    m_progress->setMaximumHeight(6);
    m_progress->setTextVisible(false);
    m_progress->setAccessibleName(tr("Progress of the report"));
    m_state = new QLabel(right);
    m_state->setObjectName("reportState");
    m_state->setWordWrap(true);
    m_preview = new QTextBrowser(right);
    m_preview->setObjectName("reportSheet");
    m_preview->setAccessibleName(tr("Preview of the report"));
    m_preview->setOpenLinks(false);
    // Paper is white in any look.
    QPalette paper = m_preview->palette();
    paper.setColor(QPalette::Base, Qt::white);
    paper.setColor(QPalette::Text, Qt::black);
    m_preview->setPalette(paper);
    connect(m_previewButton, &QPushButton::clicked, this, &ReportPage::preview);
    connect(m_printButton, &QPushButton::clicked, this, &ReportPage::print);
    connect(m_cancel, &QPushButton::clicked, this, [this] {
        m_run->cancel();
        say(tr("Cancelled."));
        emit finished(false, tr("Cancelled."));
    });
    connect(m_exportButton, &QPushButton::clicked, this, [this] {
        QStringList filters;
        for (const auto& [type, suffix] : m_run->types())
            filters << QStringLiteral("*.%1 (*.%1)").arg(QString::fromStdString(suffix));
        const QString path = whereToSave(this, filters.join(QStringLiteral(";;")));
        if (!path.isEmpty()) exportTo(path);
    });
    auto* const bar = new QHBoxLayout;
    bar->addWidget(m_previewButton);
    bar->addWidget(m_exportButton);
    bar->addWidget(m_printButton);
    bar->addStretch(1);
    bar->addWidget(m_cancel);
    auto* const column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(bar);
    column->addWidget(m_progress);
    column->addWidget(m_state);
    column->addWidget(m_preview, 1);
    return right;
}

int ReportPage::chosen() const {
    return m_view->currentIndex().isValid() ? m_view->currentIndex().row() : -1;
}

void ReportPage::setProject(std::shared_ptr<const project::Project> project, const QString& file) {
    m_project = std::move(project);
    m_file = file;
    m_list->setProject(m_project);
    updateButtons();
}

void ReportPage::startAnew() {
    m_run->cancel();
    m_list->clear();
    m_standard->click();
    m_preview->clear();
    say({});
}

void ReportPage::showChosen() {
    const int row = chosen();
    const QSignalBlocker quiet(m_comment);
    m_title->setText(row < 0 ? QString() : m_list->item(row).shownTitle());
    m_comment->setPlainText(row < 0 ? QString() : m_list->item(row).comment);
    updateButtons();
}

void ReportPage::updateButtons() {
    const int row = chosen();
    const bool can = m_project && !m_run->types().empty() && !m_run->isRunning();
    m_title->setEnabled(row >= 0);
    m_comment->setEnabled(row >= 0);
    m_remove->setEnabled(row >= 0);
    m_up->setEnabled(row > 0);
    m_down->setEnabled(row >= 0 && row + 1 < m_list->rowCount());
    for (QPushButton* one : {m_previewButton, m_exportButton, m_printButton})
        one->setEnabled(can);
    m_cancel->setEnabled(m_run->isRunning());
    m_progress->setVisible(m_run->isRunning());
    if (m_run->types().empty()) say(tr("No report plug-in was found: install the program whole."));
}

void ReportPage::say(const QString& words) {
    m_state->setText(words);
    m_state->setVisible(!words.isEmpty());
}

void ReportPage::preview() {
    if (!m_run->types().empty()) make(Purpose::preview, m_run->types().front().first);
}

void ReportPage::exportTo(const QString& path) {
    const std::string suffix = QFileInfo(path).suffix().toLower().toStdString();
    for (const auto& [type, ending] : m_run->types())
        if (ending == suffix) {
            m_path = path;
            make(Purpose::file, type);
            return;
        }
    QStringList endings;
    for (const auto& [type, ending] : m_run->types())
        endings << QStringLiteral(".") + QString::fromStdString(ending);
    say(tr("The name must end in one of %1.").arg(endings.join(QStringLiteral(", "))));
    emit finished(false, m_state->text());
}

void ReportPage::print() {
    if (!m_run->types().empty()) make(Purpose::print, m_run->types().front().first);
}

void ReportPage::make(Purpose purpose, const std::string& mediaType) {
    if (!m_project) return;
    m_purpose = purpose;
    ReportOrder order;
    order.project = m_project;
    order.file = m_file;
    order.mediaType = mediaType;
    order.drawings = m_drawings->isChecked();
    order.asPictures = purpose != Purpose::file;
    for (const ReportItem& item : m_list->items())
        if (item.wanted) order.items.push_back(item);
    m_progress->setRange(0, 0);
    say(tr("The report is being made ..."));
    m_run->start(std::move(order));
}

void ReportPage::take(const std::shared_ptr<const ReportOutcome>& outcome) {
    if (outcome->ending != sdk::Ending::finished) {
        say(outcome->problems.empty()
                ? tr("There is no report.")
                : QString::fromStdString(project::toSentence(outcome->problems.front())));
        emit finished(false, m_state->text());
        return;
    }
    const QString left = outcome->left.isEmpty()
                             ? QString()
                             : tr("Not in it: %1").arg(outcome->left.join(QStringLiteral("; ")));
    if (m_purpose == Purpose::file) {
        QSaveFile file(m_path);
        const bool done = file.open(QIODevice::WriteOnly) &&
                          file.write(outcome->bytes) == outcome->bytes.size() && file.commit();
        const QString words = done ? tr("The report is in %1.").arg(m_path)
                                   : tr("%1 cannot be written (%2); choose another place.")
                                         .arg(m_path, file.errorString());
        say(left.isEmpty() ? words : words + QLatin1Char('\n') + left);
        emit finished(done, words);
        return;
    }
    for (std::size_t i = 0; i < outcome->pictures.size(); ++i)
        m_preview->document()->addResource(QTextDocument::ImageResource,
                                           QUrl(QStringLiteral("picture:%1").arg(i)),
                                           outcome->pictures[i]);
    m_preview->setHtml(QString::fromUtf8(outcome->bytes));
    m_preview->moveCursor(QTextCursor::Start);
    say(left);
    emit previewed();
    if (m_purpose == Purpose::print) printPreview();
}

void ReportPage::printPreview() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(QPageSize::A4));
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    m_preview->print(&printer);
    emit finished(true, tr("The report was sent to the printer."));
}

} // namespace cutwater::editor
