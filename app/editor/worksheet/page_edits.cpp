// SPDX-License-Identifier: GPL-3.0-or-later
// WorksheetPage: what changes the project.
#include "app/editor/worksheet/cell_clipboard.h"
#include "app/editor/worksheet/new_row_dialog.h"
#include "app/editor/worksheet/worksheet_page.h"
#include "models/project/edits/rows.h"

#include <QApplication>
#include <QClipboard>

#include <algorithm>
#include <set>

namespace cutwater::editor {

namespace {

// Names for undo; the session translates them.
constexpr const char* kType = QT_TRANSLATE_NOOP("Edits", "Type %1");
constexpr const char* kClear = QT_TRANSLATE_NOOP("Edits", "Clear %1");
constexpr const char* kCut = QT_TRANSLATE_NOOP("Edits", "Cut %1");
constexpr const char* kPaste = QT_TRANSLATE_NOOP("Edits", "Paste into %1");
constexpr const char* kFillDown = QT_TRANSLATE_NOOP("Edits", "Fill down %1");
constexpr const char* kFill = QT_TRANSLATE_NOOP("Edits", "Fill %1");
[[maybe_unused]] constexpr const char* kRowNames[] = {QT_TRANSLATE_NOOP("Edits", "New row %1"),
                                                      QT_TRANSLATE_NOOP("Edits", "Duplicate %1"),
                                                      QT_TRANSLATE_NOOP("Edits", "Remove %1")};

constexpr qsizetype kQuoted = 60; // characters of a text in a sentence

QString cellCount(int cells) {
    return cells == 1 ? WorksheetPage::tr("1 cell") : WorksheetPage::tr("%1 cells").arg(cells);
}

QString quoted(QString text) {
    text.replace(u'\n', u' ');
    return text.size() > kQuoted ? text.left(kQuoted) + QStringLiteral("...") : text;
}

} // namespace

// Others look at the nodes that an edit touched; rows are no nodes.
bool WorksheetPage::apply(const Edit& edit, std::vector<project::Id>* touched) {
    return m_session.apply([&](const project::Project& project) {
        project::edits::Result result = edit(project);
        if (result) {
            if (touched) *touched = result->touched;
            result->touched.clear();
        }
        return result;
    });
}

WorksheetPage::Done WorksheetPage::run(CellPlan plan, const char* doing, const QString& about) {
    Done done;
    done.notTaken = std::move(plan.notTaken);
    worksheet::Typing typing;
    apply([&](const project::Project& project) -> project::edits::Result {
        typing = worksheet::typeInto(project, project::Index(project), plan.cells);
        const QString what = about.isEmpty() ? cellCount(static_cast<int>(typing.cells)) : about;
        return project::edits::changeRows(project, std::move(typing.changed), doing,
                                          what.toStdString());
    });
    done.cells = typing.cells;
    const SheetData& sheet = m_grid->sheet();
    for (const worksheet::RefusedCell& refused : typing.refused) {
        const worksheet::TypedCell& cell = plan.cells[refused.cell];
        const int row = sheet.rowOf(cell.mode), column = sheetColumn(cell.column);
        done.notTaken.push_back({cell.mode,
                                 row < 0 ? QString::fromStdString(cell.mode)
                                         : rowWords(sheet, static_cast<std::size_t>(row)),
                                 sheetColumns()[static_cast<std::size_t>(column)].title,
                                 QString::fromStdString(cell.text),
                                 QString::fromStdString(refused.why)});
    }
    return done;
}

void WorksheetPage::report(const Done& done) {
    const int cells = static_cast<int>(done.cells);
    const int refused = static_cast<int>(done.notTaken.size());
    if (refused == 0) {
        m_report->putAway();
        emit said(tr("Changed: %1.").arg(cellCount(cells)));
        return;
    }
    m_report->tell(tr("Changed: %1. Not taken: %2.").arg(cellCount(cells), cellCount(refused)),
                   done.notTaken);
}

QString WorksheetPage::typeCell(const QModelIndex& index, const QString& text) {
    const SheetColumn& column = m_grid->columnAt(index.column());
    const project::Id mode = m_grid->idAt(index.row());
    CellPlan plan;
    plan.cells.push_back({mode, column.id, text.toStdString()});
    const auto row = static_cast<std::size_t>(m_grid->rowAt(index.row()));
    const QString about =
        QStringLiteral("%1, %2").arg(rowWords(m_grid->sheet(), row), column.title);
    const Done done = run(std::move(plan), kType, about);
    if (!done.notTaken.empty())
        return text.isEmpty() ? tr("%1 %2.").arg(column.title, done.notTaken.front().why)
                              : tr("%1: \"%2\" %3.")
                                    .arg(column.title, quoted(text), done.notTaken.front().why);
    m_report->putAway();
    return {};
}

void WorksheetPage::copy() {
    const GridView::Block block = m_view->block();
    if (block.empty()) return;
    std::vector<bool> isText;
    for (const int section : block.sections)
        isText.push_back(m_grid->columnAt(section).kind == worksheet::ColumnKind::text);
    QApplication::clipboard()->setMimeData(
        cellsToMime(textsOf(*m_grid, block.lines, block.sections), isText));
    emit said(tr("Copied: %1.")
                  .arg(cellCount(static_cast<int>(block.lines.size() * block.sections.size()))));
}

void WorksheetPage::cut() {
    const GridView::Block block = m_view->block();
    if (block.empty()) return;
    copy();
    QModelIndexList cells;
    for (const int line : block.lines)
        for (const int section : block.sections)
            cells.push_back(m_grid->index(line, section));
    report(run(planSame(*m_grid, cells, {}), kCut));
}

void WorksheetPage::paste(bool asCsv) {
    const QMimeData* sheet = QApplication::clipboard()->mimeData();
    const TextBlock block = sheet ? cellsFromMime(*sheet, asCsv) : TextBlock();
    if (block.empty()) {
        m_report->tell(asCsv ? tr("The clipboard holds no text with commas: copy some first.")
                             : tr("The clipboard holds no cells and no text: copy some first."),
                       true);
        return;
    }
    const GridView::Block to = m_view->block();
    if (to.empty()) {
        m_report->tell(tr("Choose the cell where the pasted cells shall begin."), true);
        return;
    }
    report(run(planPaste(*m_grid, block, to.lines, to.sections), kPaste));
}

void WorksheetPage::fillDown() {
    const GridView::Block block = m_view->block();
    if (block.empty()) return;
    report(run(planFillDown(*m_grid, block.lines, block.sections), kFillDown));
}

void WorksheetPage::fillSame() {
    const QModelIndex from = m_view->currentIndex();
    if (!from.isValid() || m_grid->isGroup(from.row())) return;
    report(
        run(planSame(*m_grid, m_view->chosenCells(), from.data(Qt::EditRole).toString()), kFill));
}

void WorksheetPage::clearCells() {
    QModelIndexList cells = m_view->chosenCells();
    // What is worked out is not cleared, and nobody expects it.
    cells.removeIf(
        [](const QModelIndex& cell) { return !cell.data(GridModel::typedRole).toBool(); });
    if (cells.isEmpty()) {
        m_report->tell(tr("These cells cannot be cleared: they are worked out, or belong to the "
                          "plant page."),
                       true);
        return;
    }
    report(run(planSame(*m_grid, cells, {}), kClear));
}

std::vector<project::Id> WorksheetPage::chosenRows() const {
    std::vector<project::Id> rows;
    for (const int line : m_view->block().lines)
        rows.push_back(m_grid->idAt(line));
    return rows;
}

void WorksheetPage::goToNew(const std::vector<project::Id>& touched) {
    std::vector<int> lines;
    for (const project::Id& id : touched)
        if (const int line = m_grid->lineOf(id); line >= 0) lines.push_back(line);
    m_report->putAway();
    m_view->setFocus();
    if (lines.size() == 1)
        showRow(touched.front(), "mode");
    else
        m_view->selectLines(lines);
}

void WorksheetPage::newRow() {
    const SheetData& sheet = m_grid->sheet();
    const QModelIndex now = m_view->currentIndex();
    const bool onRow = now.isValid() && !m_grid->isGroup(now.row());
    const QString proposed = onRow ? sheet.text(static_cast<std::size_t>(m_grid->rowAt(now.row())),
                                                sheetColumn("component"), {})
                                   : QString();
    const project::Id after = onRow ? m_grid->idAt(now.row()) : project::Id();
    const auto keep = m_grid->data(); // the dialog looks into it
    SheetRowDialog dialog(*keep, proposed, this);
    if (!questions.run(dialog)) return;
    const project::Id component = dialog.component();
    const std::string name = dialog.name().toStdString(), tag = dialog.newTag().toStdString();
    const project::Id parent = dialog.parentOfNew();
    std::vector<project::Id> touched;
    if (apply(
            [&](const project::Project& project) {
                return component.empty()
                           ? project::edits::addRowOfNewComponent(project, tag, parent, name, after)
                           : project::edits::addRow(project, component, name, after);
            },
            &touched))
        goToNew(touched);
}

void WorksheetPage::duplicateRows() {
    const std::vector<project::Id> rows = chosenRows();
    if (rows.empty()) return;
    std::vector<project::Id> touched;
    if (apply(
            [&](const project::Project& project) {
                return project::edits::duplicateRows(project, rows);
            },
            &touched))
        goToNew(touched);
}

void WorksheetPage::removeRows() {
    const std::vector<project::Id> rows = chosenRows();
    if (rows.empty()) return;
    const SheetData& sheet = m_grid->sheet();
    std::set<project::Id> trees;
    for (const project::Id& id : rows) {
        const worksheet::Row& row = sheet.row(static_cast<std::size_t>(sheet.rowOf(id)));
        for (const std::size_t top : row.tops)
            trees.insert(sheet.snapshot->tops[top].id);
    }
    const int count = static_cast<int>(rows.size());
    QString question =
        count == 1 ? tr("Remove the row \"%1\"?")
                         .arg(rowWords(sheet, static_cast<std::size_t>(sheet.rowOf(rows.front()))))
                   : tr("Remove %1 rows?").arg(count);
    if (!trees.empty()) {
        QStringList names;
        for (const project::Id& id : trees)
            names.append(QString::fromStdString(id));
        question +=
            QStringLiteral("\n\n") +
            tr("Used in the trees %1. The events stay there, with name and figures, but without a "
               "row.")
                .arg(names.join(QStringLiteral(", ")));
    }
    if (!questions.agree(this, question)) return;
    const int line = m_view->currentIndex().row();
    if (!apply([&](const project::Project& project) {
            return project::edits::removeRows(project, rows);
        }))
        return;
    m_report->putAway();
    if (m_grid->rowCount() > 0)
        m_view->goTo(m_grid->index(std::clamp(line, 0, m_grid->rowCount() - 1),
                                   std::max(m_view->currentIndex().column(), 0)));
}

} // namespace cutwater::editor
