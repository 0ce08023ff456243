// SPDX-License-Identifier: GPL-3.0-or-later
// WorksheetPage: tables and paper.
#include "app/editor/worksheet/cautions_dialog.h"
#include "app/editor/worksheet/export_dialog.h"
#include "app/editor/worksheet/import_dialog.h"
#include "app/editor/worksheet/worksheet_page.h"
#include "models/project/edits/facts.h"

#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QPdfWriter>
#include <QPointer>
#include <QPrintDialog>
#include <QPrinter>
#include <QProgressBar>
#include <QSaveFile>
#include <QThreadPool>

#include <algorithm>

namespace cutwater::editor {

namespace {

constexpr const char* kImport = QT_TRANSLATE_NOOP("Edits", "Import %1");
constexpr double kMargin = 10; // of the paper, mm

QString rowCount(int rows) {
    return rows == 1 ? WorksheetPage::tr("1 row") : WorksheetPage::tr("%1 rows").arg(rows);
}

} // namespace

void WorksheetPage::importTable() {
    TableImportDialog dialog(m_session.project(), this);
    if (!questions.run(dialog) || !dialog.import()) return;
    const auto import = dialog.import();
    const Snapshot seen = m_session.project();
    const QString rows = rowCount(static_cast<int>(import->taken()));
    const worksheet::ImportWish wish = dialog.wish();
    std::vector<NotTaken> notTaken;
    if (!apply([&](const project::Project& project) -> project::edits::Result {
            auto now = worksheet::importRows(project, dialog.text(), wish);
            if (!now) return now.problems();
            for (const worksheet::ImportRow& row : now->rows)
                if (!row.taken)
                    notTaken.push_back({row.mode,
                                        tr("line %1").arg(row.line),
                                        {},
                                        {},
                                        QString::fromStdString(row.why)});
            return project::edits::Changed{
                std::move(now->project), kImport, rows.toStdString(), {}};
        }))
        return;
    if (notTaken.empty()) {
        m_report->putAway();
        emit said(tr("Imported: %1.").arg(rows));
    } else {
        const QString refused = rowCount(static_cast<int>(notTaken.size()));
        m_report->tell(tr("Imported: %1. Not taken: %2.").arg(rows, refused), std::move(notTaken));
    }
}

void WorksheetPage::askExport() {
    const int seen = static_cast<int>(m_grid->shownRows().size());
    const int all = static_cast<int>(m_grid->sheet().rows());
    SheetExportDialog dialog(seen, m_grid->columnCount(), all, this);
    if (!questions.run(dialog)) return;
    const QString base = QFileInfo(m_session.path()).completeBaseName();
    const QString proposed =
        QStringLiteral("%1.%2").arg(base.isEmpty() ? tr("worksheet") : base, dialog.suffix());
    const QString path = questions.whereToSave(this, proposed, dialog.filter());
    if (!path.isEmpty()) exportTo(path, dialog.suffix(), dialog.everything());
}

void WorksheetPage::exportTo(const QString& path, const QString& suffix, bool everything) {
    const auto tell = [this](bool good, const QString& sentence) {
        good ? m_report->putAway() : m_report->tell(sentence, true);
        emit said(sentence);
        emit exported(good, sentence);
    };
    sdk::Exchange* exchange = m_host.exchange(("worksheet-" + suffix).toStdString());
    if (!exchange)
        return tell(false, tr("The part of the program that writes %1 files is not installed: look "
                              "at Analyses, Plug-ins.")
                               .arg(suffix));
    sdk::Values values;
    QStringList left; // columns that the file cannot have
    if (!everything) {
        std::string columns, rows;
        for (const int place : m_grid->shownColumns()) {
            const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(place)];
            if (column.column)
                columns += std::string(column.id) + ",";
            else
                left.append(column.title);
        }
        for (const std::size_t row : m_grid->shownRows())
            rows += m_grid->sheet().id(row) + "\n";
        if (rows.empty() || columns.empty())
            return tell(false, tr("There is nothing to write: no row or column is seen."));
        values.set("columns", columns);
        values.set("rows", rows);
    }
    emit said(tr("Writing %1 ...").arg(path));
    QPointer<WorksheetPage> self(this);
    QThreadPool::globalInstance()->start(
        [self, tell, path, exchange, values, left, project = m_session.project()] {
            const sdk::Answer<std::string> answer = exchange->write(*project, values, {});
            bool good = answer.content.has_value();
            QString words;
            if (good) {
                QSaveFile file(path);
                good = file.open(QIODevice::WriteOnly) &&
                       file.write(answer.content->data(), qint64(answer.content->size())) >= 0 &&
                       file.commit();
                words = good ? tr("The worksheet is written to %1.").arg(path)
                             : tr("%1 cannot be written: %2.").arg(path, file.errorString());
                if (good && !left.isEmpty())
                    words += QLatin1Char(' ') + tr("Without the columns that trees make: %1.")
                                                    .arg(left.join(QStringLiteral(", ")));
            } else {
                words = answer.problems.empty() ? tr("The worksheet could not be written.")
                                                : sentence(answer.problems.front());
            }
            QMetaObject::invokeMethod(QCoreApplication::instance(), [self, tell, good, words] {
                if (self) tell(good, words);
            });
        });
}

QString WorksheetPage::filterWords() const {
    const Arrangement& arrangement = m_grid->arrangement();
    QStringList words;
    if (arrangement.dormantOnly) words.append(tr("dormant only"));
    if (!arrangement.words.trimmed().isEmpty())
        words.append(tr("rows that hold \"%1\"").arg(arrangement.words.trimmed()));
    for (const auto& [place, filter] : arrangement.filters)
        words.append(tr("by %1").arg(sheetColumns()[static_cast<std::size_t>(place)].title));
    return words.join(QStringLiteral("; "));
}

PaperOrder WorksheetPage::paperOrder() const {
    PaperOrder order;
    order.data = m_grid->data();
    order.figures = m_grid->figures();
    order.columns = m_grid->shownColumns();
    order.frozen = std::min(m_choice.frozen, 3);
    order.filter = filterWords();
    order.today = QDate::currentDate();
    order.font = font();
    for (int line = 0; line < m_grid->rowCount(); ++line)
        order.lines.push_back(
            m_grid->isGroup(line)
                ? PaperLine{-1, m_grid->index(line, 0).data(GridModel::groupRole).toString()}
                : PaperLine{m_grid->rowAt(line), {}});
    return order;
}

void WorksheetPage::askPdf() {
    SheetPaperDialog dialog(this);
    if (!questions.run(dialog)) return;
    const QString base = QFileInfo(m_session.path()).completeBaseName();
    const QString path = questions.whereToSave(
        this, (base.isEmpty() ? tr("worksheet") : base) + QStringLiteral(".pdf"),
        tr("PDF (*.pdf)"));
    if (!path.isEmpty()) writePdf(path, dialog.a3());
}

void WorksheetPage::writePdf(const QString& path, bool a3) {
    emit said(tr("Writing %1 ...").arg(path));
    m_stop.request_stop(); // an earlier one
    m_stop = std::stop_source();
    m_progress->setValue(0);
    m_work->show();
    QPointer<WorksheetPage> self(this);
    const auto tell = [self](double share) {
        const int percent = static_cast<int>(share * 100);
        QMetaObject::invokeMethod(QCoreApplication::instance(), [self, percent] {
            if (self) self->m_progress->setValue(percent);
        });
    };
    QThreadPool::globalInstance()->start(
        [self, tell, path, a3, stop = m_stop.get_token(), order = paperOrder()] {
            bool good = false;
            QSaveFile file(path); // an old paper stays whole until the new one is
            if (file.open(QIODevice::WriteOnly)) {
                {
                    QPdfWriter writer(&file);
                    writer.setTitle(QString::fromStdString(order.data->snapshot->name));
                    writer.setResolution(1200);
                    writer.setPageLayout(QPageLayout(
                        QPageSize(a3 ? QPageSize::A3 : QPageSize::A4), QPageLayout::Landscape,
                        QMarginsF(kMargin, kMargin, kMargin, kMargin), QPageLayout::Millimeter));
                    good = paintPaper(writer, order, tell, stop);
                }
                good = good && file.commit();
            }
            QString words = good ? tr("The worksheet is written to %1.").arg(path)
                                 : tr("%1 cannot be written: %2.").arg(path, file.errorString());
            if (stop.stop_requested()) words.clear();
            QMetaObject::invokeMethod(QCoreApplication::instance(), [self, stop, good, words] {
                if (!self) return;
                if (stop == self->m_stop.get_token()) self->m_work->hide();
                if (!good && !words.isEmpty()) self->m_report->tell(words, true);
                emit self->said(words);
                emit self->exported(good, words);
            });
        });
}

void WorksheetPage::print() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageLayout(QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Landscape,
                                      QMarginsF(kMargin, kMargin, kMargin, kMargin),
                                      QPageLayout::Millimeter));
    QPrintDialog dialog(&printer, this);
    dialog.setOption(QAbstractPrintDialog::PrintPageRange, false);
    if (!questions.run(dialog)) return;
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    const bool good = paintPaper(printer, paperOrder());
    QGuiApplication::restoreOverrideCursor();
    if (good)
        emit said(tr("The worksheet went to the printer."));
    else
        m_report->tell(tr("The printer takes no sheets: look at its state and paper."), true);
}

void WorksheetPage::askCautions() {
    SheetCautionsDialog dialog(*m_session.project(), this);
    if (!questions.run(dialog)) return;
    const std::vector<std::string> own = dialog.own();
    if (own == m_session.project()->cautions) return;
    apply([&](const project::Project& project) {
        project::Project facts = project;
        facts.cautions = own;
        return project::edits::setProjectFacts(project, facts);
    });
}

} // namespace cutwater::editor
