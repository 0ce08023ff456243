// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/library/news_page.h"

#include "app/editor/plant/plant_words.h"
#include "models/library/accept.h"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace cutwater::editor {

using library::News;
using library::NewsKind;

namespace {

QString text(const std::string& words) {
    return QString::fromStdString(words);
}

// The words of models/library/compare.cpp.
QString factWords(const std::string& fact) {
    if (fact == "name") return NewsPage::tr("name");
    if (fact == "causes") return NewsPage::tr("causes");
    if (fact == "local effect") return NewsPage::tr("local effect");
    if (fact == "detection") return NewsPage::tr("detection");
    if (fact == "checks") return NewsPage::tr("checks");
    if (fact == "dormant") return NewsPage::tr("dormant");
    if (fact == "failure model") return NewsPage::tr("failure model");
    return text(fact);
}

bool canBeAccepted(NewsKind kind) {
    return kind != NewsKind::libraryMissing && kind != NewsKind::typeGone;
}

} // namespace

NewsPage::NewsPage(Session& session, Shelf& shelf, QWidget* parent)
    : QWidget(parent), m_session(session), m_shelf(shelf), m_tree(new QTreeWidget(this)),
      m_words(new QLabel(this)),
      m_accept(new QPushButton(tr("Accept what is ticked, for this component"), this)) {
    m_words->setObjectName("newsWords");
    m_words->setWordWrap(true);
    m_tree->setObjectName("news");
    m_tree->setAccessibleName(tr("Where the library has moved on"));
    m_tree->setHeaderLabels({tr("What"), tr("In the project"), tr("In the library")});
    m_tree->setWordWrap(true);
    m_tree->header()->setSectionResizeMode(QHeaderView::Stretch);
    m_accept->setObjectName("acceptNews");
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_words);
    layout->addWidget(m_tree, 1);
    layout->addWidget(m_accept);
    connect(&m_session, &Session::projectChanged, this, &NewsPage::look);
    connect(&m_shelf, &Shelf::changed, this, &NewsPage::look);
    connect(m_accept, &QPushButton::clicked, this, &NewsPage::acceptCurrent);
    connect(m_tree, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        m_accept->setEnabled(item != nullptr && item->data(0, Qt::UserRole + 1).toBool());
    });
    look();
}

void NewsPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    look();
}

QString NewsPage::wordsOf(const News& news) const {
    switch (news.kind) {
    case NewsKind::libraryMissing:
        return tr("The library %1 is not at hand; add its file.").arg(text(news.here));
    case NewsKind::typeGone:
        return tr("The library no longer has the type %1.").arg(text(news.here));
    case NewsKind::revision: return tr("Revision");
    case NewsKind::modeAdded: return tr("One more failure mode");
    case NewsKind::modeGone:
        return tr("The library no longer has this failure mode; it stays here");
    case NewsKind::differs: return tr("%1: %2").arg(text(news.mode), factWords(news.fact));
    }
    return {};
}

void NewsPage::look() {
    // Before the libraries are read every one of them would be missing.
    const auto content = m_shelf.content();
    m_tree->clear();
    m_news.clear();
    std::size_t from = 0;
    const Snapshot project = m_session.project();
    for (const auto& component : project->components)
        from += component.origin.has_value();
    if (!content->files.empty()) m_news = library::newsOf(*project, content->libraries);
    QTreeWidgetItem* above = nullptr;
    std::size_t current = 0;
    int components = 0;
    for (std::size_t i = 0; i < m_news.size(); ++i) {
        const News& news = m_news[i];
        const bool can = canBeAccepted(news.kind);
        if (!above || news.component != current) {
            current = news.component;
            ++components;
            const auto& part = project->components[current];
            above = new QTreeWidgetItem(m_tree, {editor::wordsOf(part)});
            above->setData(0, Qt::UserRole, text(part.id));
            above->setData(0, Qt::UserRole + 1, can);
        }
        auto* item = new QTreeWidgetItem(above, {wordsOf(news), text(news.here), text(news.there)});
        item->setData(0, Qt::UserRole, text(project->components[current].id));
        item->setData(0, Qt::UserRole + 1, can);
        item->setData(0, Qt::UserRole + 2, static_cast<qulonglong>(i));
        for (int column = 0; column < 3; ++column)
            item->setToolTip(column, item->text(column));
        if (can && news.kind != NewsKind::revision) item->setCheckState(0, Qt::Checked);
    }
    m_tree->expandAll();
    if (m_tree->topLevelItemCount() > 0) m_tree->setCurrentItem(m_tree->topLevelItem(0));
    m_accept->setEnabled(m_tree->currentItem() &&
                         m_tree->currentItem()->data(0, Qt::UserRole + 1).toBool());
    if (content->files.empty())
        m_words->setText(tr("The libraries are read when this page is first shown."));
    else if (m_news.empty())
        m_words->setText(
            tr("Components that came from a library: %1. None of them has moved on.").arg(from));
    else
        m_words->setText(
            tr("Components that came from a library: %1; with news: %2. Nothing is changed by "
               "itself. What you do not tick stays as it is and counts as changed on purpose.")
                .arg(from)
                .arg(components));
    emit counted(components);
}

void NewsPage::acceptCurrent() {
    QTreeWidgetItem* item = m_tree->currentItem();
    if (!item) return;
    if (item->parent()) item = item->parent();
    const project::Id component = item->data(0, Qt::UserRole).toString().toStdString();
    std::vector<News> accepted;
    for (int i = 0; i < item->childCount(); ++i)
        if (item->child(i)->checkState(0) == Qt::Checked)
            accepted.push_back(m_news[static_cast<std::size_t>(
                item->child(i)->data(0, Qt::UserRole + 2).toULongLong())]);
    const auto content = m_shelf.content();
    const QString name = item->text(0);
    m_session.apply([&](const project::Project& p) -> project::edits::Result {
        auto result = library::acceptNews(p, content->libraries, component, accepted);
        if (!result) return result.problems();
        return project::edits::Changed{
            std::move(*result),
            QT_TRANSLATE_NOOP("Edits", "Accept the library's news for %1"),
            name.toStdString(),
            {}};
    });
}

} // namespace cutwater::editor
