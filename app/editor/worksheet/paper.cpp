// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/paper.h"

#include "app/editor/worksheet/cautions_dialog.h"
#include "app/editor/worksheet/paper_measures.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace cutwater::editor {

namespace paper {

QString paperText(const PaperOrder& order, int row, int column) {
    const worksheet::Cell cell =
        order.data->cell(static_cast<std::size_t>(row), column, order.figures);
    if (const auto* number = std::get_if<double>(&cell)) return shownNumber(*number);
    // Several texts in one cell: one a line.
    return QString::fromStdString(worksheet::toText(cell))
        .replace(QStringLiteral(" | "), QStringLiteral("\n"));
}

} // namespace paper

namespace {

using namespace paper;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::Paper)
};

QString utf8(const std::string& text) {
    return QString::fromStdString(text);
}

class Printer {
public:
    Printer(QPainter& painter, const PaperOrder& order, double width, double height, int pages)
        : m_painter(painter), m_order(order), m_width(width), m_height(height), m_pages(pages) {}

    void page(const PaperPage& page, int number) {
        top();
        if (page.words.isEmpty())
            table(page);
        else
            words(page.words);
        foot(number);
    }

private:
    void use(double points, bool bold, bool italic = false) {
        m_font = hundredOf(m_order.font);
        m_font.setBold(bold);
        m_font.setItalic(italic);
        m_points = points;
    }

    // Answers whether all of it was drawn.
    bool text(const QRectF& place, Qt::Alignment flags, const QString& text) {
        const Qt::Alignment side = flags & Qt::AlignHorizontal_Mask;
        const double tall = textHeight(m_font, m_points, text, place.width());
        const double down =
            flags & Qt::AlignVCenter ? std::max((place.height() - tall) / 2, 0.0) : 0.0;
        m_painter.save();
        m_painter.setClipRect(place.adjusted(-1, -1, 1, 1));
        m_painter.translate(place.left(), place.top() + down);
        m_painter.scale(m_points / 100, m_points / 100);
        textHeight(m_font, m_points, text, place.width(), &m_painter, side);
        m_painter.restore();
        return tall <= place.height() + 0.5;
    }

    void top() {
        const project::Project& project = *m_order.data->snapshot;
        use(kTitle, true);
        QStringList title{project.name.empty() ? Words::tr("FMEA worksheet") : utf8(project.name)};
        if (!project.plant.empty()) title.append(utf8(project.plant));
        text({0, 0, m_width * 0.66, 15}, Qt::AlignLeft, title.join(QStringLiteral(" \u2013 ")));
        use(kText, false);
        QStringList right;
        if (!project.revision.empty())
            right.append(Words::tr("Revision %1").arg(utf8(project.revision)));
        if (!project.date.empty()) right.append(Words::tr("Date %1").arg(utf8(project.date)));
        right.append(Words::tr("Printed %1").arg(m_order.today.toString(Qt::ISODate)));
        text({m_width * 0.66, 2, m_width * 0.34, 13}, Qt::AlignRight,
             right.join(QStringLiteral("   ")));
        const QString mode = project.operatingMode.empty()
                                 ? Words::tr("! The operating mode is not stated.")
                                 : Words::tr("Operating mode: %1").arg(utf8(project.operatingMode));
        use(kText, true);
        text({0, 16, m_width, 11}, Qt::AlignLeft, mode);
        use(kText, false);
        int rows = 0;
        for (const PaperLine& line : m_order.lines)
            rows += line.row >= 0;
        const int all = static_cast<int>(m_order.data->rows());
        QString count = Words::tr("%1 of %2 rows").arg(rows).arg(all);
        if (!m_order.filter.isEmpty())
            count = Words::tr("%1 of %2 rows. Filter: %3").arg(rows).arg(all).arg(m_order.filter);
        text({0, 28, m_width, 11}, Qt::AlignLeft, count);
    }

    void table(const PaperPage& page) {
        const double y = kTop;
        m_painter.setPen(QPen(Qt::black, 0.8));
        m_painter.fillRect(QRectF(0, y, m_width, kHeading), QColor(0xe2, 0xe6, 0xea));
        for (std::size_t i = 0; i < page.columns.size(); ++i) {
            const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(page.columns[i])];
            use(kHead, true, !column.isTyped());
            text(inside(page, i, y, kHeading), Qt::AlignLeft | Qt::AlignVCenter, column.title);
        }
        double bottom = y + kHeading;
        for (const PaperPage::Line& line : page.lines) {
            const double top = y + kHeading + line.top;
            bottom = top + line.height;
            if (line.line.row < 0) {
                m_painter.fillRect(QRectF(0, top, m_width, line.height), QColor(0xee, 0xf0, 0xf2));
                use(kHead, true);
                text({kPad, top, m_width - 2 * kPad, line.height}, Qt::AlignLeft | Qt::AlignVCenter,
                     line.line.heading);
            } else {
                cells(page, line, top);
            }
            m_painter.setPen(QPen(QColor(0x90, 0x98, 0xa0), 0.4));
            m_painter.drawLine(QPointF(0, bottom), QPointF(m_width, bottom));
            m_painter.setPen(QPen(Qt::black, 0.8));
        }
        m_painter.setPen(QPen(QColor(0x90, 0x98, 0xa0), 0.4));
        for (const double left : page.lefts)
            m_painter.drawLine(QPointF(left, y), QPointF(left, bottom));
        m_painter.setPen(QPen(Qt::black, 0.8));
        m_painter.drawLine(QPointF(0, y + kHeading), QPointF(m_width, y + kHeading));
    }

    static QRectF inside(const PaperPage& page, std::size_t column, double top, double height) {
        return {page.lefts[column] + kPad, top + kPad,
                page.lefts[column + 1] - page.lefts[column] - 2 * kPad, height - 2 * kPad};
    }

    void cells(const PaperPage& page, const PaperPage::Line& line, double top) {
        for (std::size_t i = 0; i < page.columns.size(); ++i) {
            const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(page.columns[i])];
            const QString words = paperText(m_order, line.line.row, page.columns[i]);
            if (words.isEmpty()) continue;
            const QRectF place = inside(page, i, top, line.height);
            use(kText, false, !column.isTyped());
            const bool number = column.kind != worksheet::ColumnKind::text;
            if (text(place, number ? Qt::AlignRight : Qt::AlignLeft, words)) continue;
            use(kText, true); // taller than a page: said, not left out in silence
            const QRectF end(place.left(), place.bottom() - 10, place.width(), 10);
            m_painter.fillRect(end, Qt::white);
            text(end, Qt::AlignRight, Words::tr("... cut"));
        }
    }

    void words(const QStringList& sentences) {
        double y = kTop;
        const QFont hundred = hundredOf(m_order.font);
        for (const QString& sentence : sentences) {
            const double tall = textHeight(hundred, kWords, sentence, m_width);
            use(kWords, false);
            text({0, y, m_width, tall + 4}, Qt::AlignLeft, sentence);
            y += tall + kWords * 0.6;
        }
    }

    void foot(int number) {
        const double y = m_height - kFoot + 6;
        m_painter.drawLine(QPointF(0, y), QPointF(m_width, y));
        use(kText, true);
        text(
            {0, y + 3, m_width * 0.84, 17}, Qt::AlignLeft,
            Words::tr("! %1 All cautions stand on the last page.").arg(standingCautions().front()));
        use(kText, false);
        text({m_width * 0.84, y + 3, m_width * 0.16, 12}, Qt::AlignRight,
             Words::tr("Page %1 of %2").arg(number).arg(m_pages));
    }

    QPainter& m_painter;
    const PaperOrder& m_order;
    double m_width, m_height;
    int m_pages;
    QFont m_font;
    double m_points = 1;
};

} // namespace

bool paintPaper(QPagedPaintDevice& device, const PaperOrder& order,
                const std::function<void(double)>& progress, std::stop_token stop) {
    QPainter painter;
    if (!painter.begin(&device)) return false;
    const double scale = painter.device()->logicalDpiX() / 72.0;
    const double width = painter.device()->width() / scale;
    const double height = painter.device()->height() / scale;
    constexpr double half = 0.5; // laying out takes about as long as drawing
    const auto tell = [&](double from, double share) {
        if (progress) progress(from + half * share);
    };
    const std::vector<PaperPage> pages = layOut(
        order, width, height - kTop - kHeading - kFoot, [&](double share) { tell(0, share); },
        stop);
    painter.scale(scale, scale);
    Printer printer(painter, order, width, height, static_cast<int>(pages.size()));
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (stop.stop_requested()) return false;
        if (i > 0 && !device.newPage()) return false;
        printer.page(pages[i], static_cast<int>(i) + 1);
        tell(half, static_cast<double>(i + 1) / static_cast<double>(pages.size()));
    }
    return painter.end();
}

} // namespace cutwater::editor
