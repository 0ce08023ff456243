// SPDX-License-Identifier: GPL-3.0-or-later
// The panel: files and paper.
#include "app/drawing/paint.h"
#include "app/editor/diagram/export.h"
#include "app/editor/diagram/export_dialog.h"
#include "app/editor/diagram/panel.h"

#include <QLabel>
#include <QPageLayout>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QProgressDialog>

namespace cutwater::editor {
namespace {

project::TopEvent topOf(const project::Project& project, const project::Id& id) {
    const project::Index index(project);
    if (const project::TopEvent* top = index.top(id)) return *top;
    project::TopEvent made;
    made.id = id;
    made.node.id = id;
    if (const project::Gate* gate = index.gate(id)) made.name = gate->name;
    return made;
}

} // namespace

void DiagramPanel::exportTo(const QString& path, bool onlyThisSheet, int dpi) {
    if (!m_layout || topToShow().empty()) {
        emit exported(false, tr("There is no tree to export."));
        return;
    }
    ExportOrder order;
    order.project = m_session.project();
    order.top = topOf(*order.project, topToShow());
    order.paper = m_paper;
    order.orientation = m_orientation;
    order.captions = m_captions;
    order.marked = m_selection.marked();
    order.dpi = dpi;
    order.path = path;
    if (onlyThisSheet && m_kind == ViewKind::sheets) order.onlySheet = m_sheet + 1;
    m_export = std::make_unique<ExportTask>(std::move(order), *m_layout);
    connect(m_export.get(), &ExportTask::finished, this,
            [this](const ExportReport& report) { emit exported(report.done, report.sentence); });
}

void DiagramPanel::askExport() {
    ExportDialog dialog(m_paper, m_orientation, m_captions, m_kind == ViewKind::sheets, this);
    if (dialog.exec() != QDialog::Accepted) return;
    setPaper(dialog.paper(), dialog.orientation());
    setCaptions(dialog.captions());
    exportTo(dialog.path(), dialog.onlyThisSheet(), dialog.dpi());
    if (!m_export) return;
    auto* progress = new QProgressDialog(tr("Drawing the sheets"), tr("Cancel"), 0, 100, this);
    progress->setAttribute(Qt::WA_DeleteOnClose);
    progress->setMinimumDuration(700);
    connect(m_export.get(), &ExportTask::progressed, progress, &QProgressDialog::setValue);
    connect(m_export.get(), &ExportTask::finished, progress, &QProgressDialog::close);
    connect(progress, &QProgressDialog::canceled, m_export.get(), &ExportTask::cancel);
}

void DiagramPanel::askPrint() {
    if (!m_layout || topToShow().empty()) return;
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(m_paper == drawing::Paper::a4 ? QPageSize::A4 : QPageSize::A3));
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    ExportOrder order;
    order.project = m_session.project();
    order.top = topOf(*order.project, topToShow());
    order.paper = printer.pageLayout().pageSize().id() == QPageSize::A3 ? drawing::Paper::a3
                                                                        : drawing::Paper::a4;
    order.orientation = m_orientation;
    order.captions = m_captions;
    order.marked = m_selection.marked();
    QString why;
    const bool printed = printSheets(order, *m_layout, printer, why);
    emit exported(printed, why);
}

} // namespace cutwater::editor
