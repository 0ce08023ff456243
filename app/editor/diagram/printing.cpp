// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/paint.h"
#include "app/editor/diagram/export_dialog.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPrinter>

#include <algorithm>

namespace cutwater::editor {

bool printSheets(const ExportOrder& order, const sdk::Layout& layout, QPrinter& printer,
                 QString& sentence) {
    struct Words {
        Q_DECLARE_TR_FUNCTIONS(cutwater::editor::Printing)
    };
    const sdk::Answer<std::vector<drawing::Picture>> pictures =
        exportPictures(order, layout, sdk::Job{});
    if (!pictures.content) {
        sentence = QString::fromStdString(project::toSentence(pictures.problems.front()));
        return false;
    }
    printer.setFullPage(true);
    QPainter painter;
    int from = std::max(printer.fromPage(), 1);
    int to = printer.toPage() > 0 ? printer.toPage() : static_cast<int>(pictures.content->size());
    to = std::min(to, static_cast<int>(pictures.content->size()));
    for (int page = from; page <= to; ++page) {
        const drawing::Picture& picture = (*pictures.content)[static_cast<std::size_t>(page - 1)];
        printer.setPageOrientation(picture.width > picture.height ? QPageLayout::Landscape
                                                                  : QPageLayout::Portrait);
        const bool ready = page == from ? painter.begin(&printer) : printer.newPage();
        if (!ready) {
            sentence = Words::tr("The printer takes no sheets: look at its state and paper.");
            return false;
        }
        // In full size: the sheet was made for this paper. A printer's own margins cut nothing but
        // paper, for the border stands inside them.
        drawing::paint(painter, picture, printer.resolution() / 72.0);
    }
    painter.end();
    sentence = Words::tr("Sheets %1 to %2 went to the printer").arg(from).arg(to);
    return true;
}

} // namespace cutwater::editor
