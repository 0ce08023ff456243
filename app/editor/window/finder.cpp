// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/finder.h"

#include "app/editor/outline/node_words.h"
#include "models/project/index.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <unordered_map>

namespace cutwater::editor {

namespace {

constexpr std::size_t kMostShown = 60;

} // namespace

int fitness(const QString& text, const QStringList& words) {
    int sum = 1;
    for (const QString& word : words) {
        const qsizetype at = text.indexOf(word, 0, Qt::CaseInsensitive);
        if (at < 0) return 0;
        if (at == 0)
            sum += 30;
        else if (!text[at - 1].isLetterOrNumber())
            sum += 20; // where a word begins
        else
            sum += 5;
    }
    return sum;
}

Finder::Finder(Commands& commands, Session& session, Selection& selection, QWidget* parent)
    : QDialog(parent), m_commands(commands), m_session(session), m_selection(selection),
      m_line(new QLineEdit(this)), m_list(new QListWidget(this)) {
    setObjectName("finder");
    setWindowTitle(tr("Find"));
    resize(640, 420);
    m_line->setPlaceholderText(tr("a command, an event, a gate, a part of the plant ..."));
    m_line->setAccessibleName(tr("What to find"));
    m_line->setClearButtonEnabled(true);
    m_line->installEventFilter(this);
    m_list->setAccessibleName(tr("Found"));
    m_list->setUniformItemSizes(true);
    m_list->setTextElideMode(Qt::ElideMiddle);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_line);
    layout->addWidget(m_list);
    connect(m_line, &QLineEdit::textChanged, this, &Finder::find);
    connect(m_line, &QLineEdit::returnPressed, this, &Finder::go);
    connect(m_list, &QListWidget::itemActivated, this, &Finder::go);
    connect(m_list, &QListWidget::itemClicked, this, &Finder::go);
}

void Finder::begin() {
    collect();
    m_line->clear();
    find();
    m_line->setFocus();
    show();
    raise();
    activateWindow();
}

void Finder::collect() {
    m_entries.clear();
    for (const Command& command : m_commands.all()) {
        if (!command.action->isEnabled()) continue;
        const QString keys = command.action->shortcut().toString(QKeySequence::NativeText);
        m_entries.push_back({command.action->text().remove('&'),
                             keys.isEmpty() ? command.group : command.group + ", " + keys,
                             command.action,
                             {}});
    }
    const Snapshot project = m_session.project();
    const auto note = [](const QString& what, const project::Id& id) {
        return what + QStringLiteral(", ") + QString::fromStdString(id);
    };
    std::unordered_map<std::string_view, project::Id> eventOfMode;
    for (const auto& gate : project->gates)
        m_entries.push_back(
            {nameOf(gate), note(tr("%1 gate").arg(kindWords(gate)), gate.id), nullptr, gate.id});
    for (const auto& event : project->events) {
        eventOfMode.emplace(event.mode, event.id);
        m_entries.push_back({nameOf(event), note(tr("%1 event").arg(kindWords(event)), event.id),
                             nullptr, event.id});
    }
    // Parts of the plant lead to the events that are their failure modes.
    const project::Index index(*project);
    for (const auto& mode : project->modes) {
        const auto event = eventOfMode.find(mode.id);
        const project::Component* part = index.component(mode.component);
        if (event == eventOfMode.end() || !part) continue;
        m_entries.push_back(
            {QStringLiteral("%1 %2: %3")
                 .arg(QString::fromStdString(part->tag), QString::fromStdString(part->name),
                      QString::fromStdString(mode.name)),
             note(tr("failure mode"), mode.id), nullptr, event->second});
    }
}

void Finder::find() {
    const QStringList words = m_line->text().split(' ', Qt::SkipEmptyParts);
    std::vector<std::pair<int, std::size_t>> found; // less is better
    for (std::size_t i = 0; i < m_entries.size(); ++i) {
        const Entry& entry = m_entries[i];
        const int text = fitness(entry.text, words);
        const int fits = text > 0 ? text : fitness(entry.text + ' ' + entry.note, words) / 2;
        if (fits > 0) found.emplace_back(-fits, i);
    }
    const std::size_t shown = std::min(found.size(), kMostShown);
    std::partial_sort(found.begin(), found.begin() + static_cast<std::ptrdiff_t>(shown),
                      found.end());
    m_list->clear();
    for (std::size_t i = 0; i < shown; ++i) {
        const Entry& entry = m_entries[found[i].second];
        auto* item =
            new QListWidgetItem(QStringLiteral("%1   (%2)").arg(entry.text, entry.note), m_list);
        item->setData(Qt::UserRole, static_cast<qulonglong>(found[i].second));
        if (entry.command) item->setIcon(entry.command->icon());
    }
    if (shown == 0) {
        auto* item = new QListWidgetItem(tr("Nothing is called so."), m_list);
        item->setFlags(Qt::NoItemFlags);
    } else {
        m_list->setCurrentRow(0);
    }
}

void Finder::go() {
    const QListWidgetItem* item = m_list->currentItem();
    if (!item || !(item->flags() & Qt::ItemIsEnabled)) return;
    const Entry entry = m_entries[item->data(Qt::UserRole).toULongLong()];
    accept(); // first: the command may open something itself
    if (entry.command)
        entry.command->trigger();
    else
        m_selection.select({entry.node});
}

bool Finder::eventFilter(QObject* object, QEvent* event) {
    if (object == m_line && event->type() == QEvent::KeyPress) {
        switch (static_cast<QKeyEvent*>(event)->key()) {
        case Qt::Key_Up:
        case Qt::Key_Down:
        case Qt::Key_PageUp:
        case Qt::Key_PageDown: return QCoreApplication::sendEvent(m_list, event);
        default: break;
        }
    }
    return QDialog::eventFilter(object, event);
}

} // namespace cutwater::editor
