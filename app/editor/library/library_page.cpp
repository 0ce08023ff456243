// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/library/library_page.h"

#include "app/editor/library/news_page.h"
#include "app/editor/library/type_model.h"
#include "app/editor/library/type_words.h"
#include "app/editor/plant/component_box.h"
#include "models/library/take.h"
#include "models/project/edits/plant.h"

#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>
#include <QTextBrowser>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace cutwater::editor {

LibraryPage::LibraryPage(Session& session, Shelf& shelf, QWidget* parent)
    : QWidget(parent), m_session(session), m_shelf(shelf), m_types(new TypeModel(this)),
      m_news(new NewsPage(session, shelf, this)), m_tabs(new QTabWidget(this)) {
    setObjectName("libraryPage");
    whichFile = [this] {
        return QFileDialog::getOpenFileName(this, tr("Add a library"), {},
                                            tr("Libraries (*.cutlib)"));
    };
    m_tabs->setDocumentMode(true);
    m_tabs->setObjectName("libraryTabs");
    m_tabs->addTab(makeTypes(), tr("Types"));
    m_tabs->addTab(m_news, tr("Moved on"));
    m_tabs->addTab(makeFiles(), tr("Files"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_tabs);
    connect(&m_shelf, &Shelf::changed, this, &LibraryPage::showContent);
    connect(&m_session, &Session::projectChanged, this, [this] {
        if (!isVisible()) return;
        m_parent->offer(*m_session.project(), {});
        m_parent->show(m_parentComponent);
    });
    connect(m_news, &NewsPage::counted, this, [this](int components) {
        m_tabs->setTabText(1,
                           components > 0 ? tr("Moved on (%1)").arg(components) : tr("Moved on"));
    });
    setParentComponent({});
    showType();
}

QWidget* LibraryPage::makeTypes() {
    m_filter = new QLineEdit;
    m_filter->setObjectName("typeFilter");
    m_filter->setAccessibleName(tr("Find a type"));
    m_filter->setPlaceholderText(tr("find: type, group, function, failure mode"));
    m_filter->setClearButtonEnabled(true);
    m_table = new QTableView;
    m_table->setObjectName("types");
    m_table->setAccessibleName(tr("Component types"));
    m_table->setModel(m_types);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(TypeModel::nameColumn, QHeaderView::Stretch);
    m_text = new QTextBrowser;
    m_text->setObjectName("typeText");
    m_text->setAccessibleName(tr("The type and how it fails"));
    m_parent = new ComponentBox;
    m_parent->setObjectName("parent");
    m_parent->setAccessibleName(tr("The component that it is part of"));
    m_parent->lineEdit()->setPlaceholderText(tr("at the top of the plant"));
    m_tag = new QLineEdit;
    m_tag->setObjectName("newTag");
    m_tag->setAccessibleName(tr("Tag of the new component"));
    m_tag->setPlaceholderText(tr("as on the drawing: SV-1"));
    m_name = new QLineEdit;
    m_name->setObjectName("newName");
    m_name->setAccessibleName(tr("Name of the new component"));
    m_take = new QPushButton(tr("Take into the plant"));
    m_take->setObjectName("take");

    auto* left = new QWidget;
    auto* list = new QVBoxLayout(left);
    list->setContentsMargins(0, 4, 0, 0);
    list->addWidget(m_filter);
    list->addWidget(m_table, 1);
    auto* right = new QWidget;
    auto* form = new QGridLayout(right);
    const auto label = [&](int row, int column, const QString& text, QWidget* buddy) {
        auto* made = new QLabel(text);
        made->setBuddy(buddy);
        form->addWidget(made, row, column);
    };
    form->addWidget(m_text, 0, 0, 1, 4);
    label(1, 0, tr("&Part of"), m_parent);
    form->addWidget(m_parent, 1, 1, 1, 3);
    label(2, 0, tr("&Tag"), m_tag);
    form->addWidget(m_tag, 2, 1);
    label(2, 2, tr("&Name"), m_name);
    form->addWidget(m_name, 2, 3);
    form->addWidget(m_take, 3, 1, 1, 3);
    form->setRowStretch(0, 1);
    form->setColumnStretch(1, 1);
    form->setColumnStretch(3, 2);
    auto* split = new QSplitter;
    split->setChildrenCollapsible(false);
    split->addWidget(left);
    split->addWidget(right);
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 1);
    split->setSizes({360, 310}); // the list has four columns, the text wraps
    connect(m_filter, &QLineEdit::textChanged, this, [this](const QString& words) {
        m_types->setFilter(words.trimmed());
        if (m_types->rowCount() > 0) m_table->setCurrentIndex(m_types->index(0, 0));
        showType();
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &LibraryPage::showType);
    connect(m_take, &QPushButton::clicked, this, &LibraryPage::take);
    connect(m_tag, &QLineEdit::returnPressed, this, &LibraryPage::take);
    return split;
}

QWidget* LibraryPage::makeFiles() {
    auto* page = new QWidget;
    m_files = new QTreeWidget;
    m_files->setObjectName("libraryFiles");
    m_files->setAccessibleName(tr("Library files"));
    m_files->setHeaderLabels({tr("Library"), tr("Types"), tr("File")});
    m_files->setRootIsDecorated(false);
    m_files->setWordWrap(true);
    m_files->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    auto* words = new QLabel(tr("Files of your own come before those of the program: a library of "
                                "the same id takes its place."));
    words->setWordWrap(true);
    auto* add = new QPushButton(tr("Add a file ..."));
    add->setObjectName("addFile");
    auto* remove = new QPushButton(tr("Remove from the list"));
    remove->setObjectName("removeFile");
    auto* again = new QPushButton(tr("Read again"));
    again->setObjectName("readAgain");
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(add);
    buttons->addWidget(remove);
    buttons->addWidget(again);
    buttons->addStretch();
    auto* layout = new QVBoxLayout(page);
    layout->addWidget(words);
    layout->addWidget(m_files, 1);
    layout->addLayout(buttons);
    connect(add, &QPushButton::clicked, this, [this] {
        if (const QString path = whichFile(); !path.isEmpty()) m_shelf.add(path);
    });
    const auto showRemove = [this, remove] {
        const QTreeWidgetItem* item = m_files->currentItem();
        remove->setEnabled(item && item->data(0, Qt::UserRole + 1).toBool());
    };
    connect(m_files, &QTreeWidget::currentItemChanged, this, showRemove);
    connect(remove, &QPushButton::clicked, this, [this] {
        const QTreeWidgetItem* item = m_files->currentItem();
        if (item && item->data(0, Qt::UserRole + 1).toBool())
            m_shelf.remove(item->data(0, Qt::UserRole).toString());
    });
    connect(again, &QPushButton::clicked, &m_shelf, &Shelf::read);
    showRemove();
    return page;
}

void LibraryPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_parent->offer(*m_session.project(), {});
    m_parent->show(m_parentComponent);
    if (m_read) return;
    m_read = true;
    m_shelf.read();
}

void LibraryPage::showContent() {
    const TypeModel::Row row = m_types->rowAt(m_table->currentIndex());
    const project::Id library = row.library ? row.library->id : project::Id();
    const project::Id type = row.type ? row.type->id : project::Id();
    m_types->setContent(m_shelf.content());
    QModelIndex again = m_types->find(library, type);
    if (!again.isValid() && m_types->rowCount() > 0) again = m_types->index(0, 0);
    m_table->setCurrentIndex(again);
    showType();
    showFiles();
}

void LibraryPage::showType() {
    const TypeModel::Row row = m_types->rowAt(m_table->currentIndex());
    m_take->setEnabled(row.type);
    if (row.type) {
        m_text->setHtml(typeAsHtml(*row.library, *row.type));
        m_name->setPlaceholderText(QString::fromStdString(row.type->name));
    } else if (m_shelf.content()->libraries.empty()) {
        m_text->setPlainText(m_shelf.isReading()
                                 ? tr("The libraries are being read.")
                                 : tr("There is no library. Add a file of your own on the page "
                                      "Files, or install the program whole."));
    } else {
        m_text->setPlainText(tr("Nothing fits. Delete words above."));
    }
}

void LibraryPage::showFiles() {
    m_files->clear();
    for (const ShelfFile& file : m_shelf.content()->files) {
        auto* item = new QTreeWidgetItem(
            m_files, {file.wrong.isEmpty() ? file.name : tr("Not used: %1").arg(file.wrong),
                      file.wrong.isEmpty() ? QString::number(file.types) : QString(), file.path});
        item->setToolTip(0, item->text(0));
        item->setData(0, Qt::UserRole, file.path);
        item->setData(0, Qt::UserRole + 1, file.own);
        if (!file.own) item->setToolTip(2, tr("It came with the program."));
    }
}

void LibraryPage::setParentComponent(const project::Id& component) {
    m_parentComponent = component;
    if (isVisible()) m_parent->show(component);
}

void LibraryPage::take() {
    const TypeModel::Row row = m_types->rowAt(m_table->currentIndex());
    if (!row.type) return;
    library::TakeWish wish;
    wish.tag = m_tag->text().trimmed().toStdString();
    wish.name = m_name->text().trimmed().toStdString();
    wish.parent = m_parent->component();
    if (wish.tag.empty()) {
        m_tag->setFocus();
        return emit sentence(tr("Type the tag of the new component first, as on the drawing."));
    }
    if (wish.parent.empty() && !m_parent->currentText().trimmed().isEmpty())
        return emit sentence(
            tr("There is no component %1 that it could be part of.").arg(m_parent->currentText()));
    wish.id = project::edits::proposedPartId(*m_session.project(), wish.tag, wish.name);
    // The content of the shelf may be read anew while the edit is kept for undo: copies.
    const library::Library source{
        row.library->id, row.library->name, {}, row.library->revision, {*row.type}, {}, {}, 0};
    const bool made = m_session.apply([&](const project::Project& p) -> project::edits::Result {
        auto result = library::take(p, source, source.types.front(), wish);
        if (!result) return result.problems();
        return project::edits::Changed{std::move(*result),
                                       QT_TRANSLATE_NOOP("Edits", "Take %1 from the library"),
                                       wish.tag,
                                       {}};
    });
    if (!made) return;
    m_tag->clear();
    m_name->clear();
    emit sentence(tr("%1 is in the plant. Give its failure modes their end effect, severity and "
                     "test interval.")
                      .arg(QString::fromStdString(wish.tag)));
    emit taken(wish.id);
}

} // namespace cutwater::editor
