// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/paper-report/pages.h"

#include "plugins/paper-report/svg_painter.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgRenderer>
#include <QTextDocument>
#include <QTextDocumentWriter>
#include <QUrl>

#include <fmt/format.h>

namespace cutwater::paper_report {
namespace {

using Answer = sdk::Answer<std::string>;

constexpr const char* kPaperStyle = R"(
body { font-family: "DejaVu Sans", sans-serif; font-size: 8.5pt; color: #000000; }
h1 { font-size: 16pt; } h2 { font-size: 12pt; } h3 { font-size: 9.5pt; }
table.data { font-size: 7pt; border-color: #888888; border-style: solid; border-collapse: collapse; }
th { background-color: #e6eaed; }
p.warning { background-color: #fbf0cf; font-weight: bold; }
p.notice { background-color: #e6eaed; }
p.remark { font-size: 7.5pt; color: #333333; }
p.comment { font-style: italic; }
)";

constexpr const char* kBrowserStyle = R"(
@page { size: A4; margin: 18mm 16mm; }
body { font-family: "DejaVu Sans", Arial, sans-serif; font-size: 10pt; line-height: 1.4; color: #111;
       background: #fff; max-width: 190mm; margin: 0 auto; padding: 6mm; }
h1 { font-size: 18pt; } h2 { font-size: 13pt; margin-top: 2em; border-bottom: 1px solid #888; }
h3 { font-size: 10.5pt; margin-bottom: .4em; } h1, h2, h3 { break-after: avoid; }
table { border-collapse: collapse; } table.data { font-size: 8pt; margin-bottom: .6em; }
table.data th, table.data td { border: 1px solid #888; padding: .25em .5em; vertical-align: top;
       overflow-wrap: anywhere; }
table.data th { background: #e6eaed; text-align: left; } .number { text-align: right !important; white-space: nowrap; }
table.facts th { text-align: left; padding-right: 2em; vertical-align: top; font-weight: bold; }
thead { display: table-header-group; } tr { break-inside: avoid; }
p.notice { border: 1.5px solid #111; padding: .7em; } p.remark { font-size: 8.5pt; color: #333; }
p.warning { border-left: 5px solid #a15c00; background: #fbf0cf; padding: .5em .7em; }
p.warning::before { content: "\26A0\00A0"; } p.comment { font-style: italic; }
.plot svg { width: 100%; height: auto; } figure.sheet { margin: 0 0 1em; break-inside: avoid; break-before: page; }
figure.sheet svg { width: 100%; height: auto; max-height: 250mm; } figcaption { font-size: 8.5pt; }
@media print { body { padding: 0; max-width: none; } }
)";

Answer cancelled() {
    project::Problem problem;
    problem.what = "cancelled while the report was written";
    problem.remedy = "start it again when there is time";
    return Answer::stopped(sdk::Ending::cancelled, problem);
}

// Without a font every letter would be a box, and without a screen there are no fonts.
std::optional<project::Problem> lacking() {
    project::Problem problem;
    if (!qobject_cast<QGuiApplication*>(QCoreApplication::instance())) {
        problem.what = "this program cannot draw letters";
        problem.remedy = "write the report as HTML, or use `cutwater report`";
        return problem;
    }
    if (!QFontDatabase::families().isEmpty()) return {};
    problem.what = "no font is installed";
    problem.remedy = "install one, for example fonts-dejavu-core";
    return problem;
}

QImage image(const std::string& svg, double width, double height, double scale) {
    const QByteArray bytes = QByteArray::fromStdString(svg);
    QImage picture(qMax(1, qRound(width * scale)), qMax(1, qRound(height * scale)),
                   QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    QSvgRenderer(bytes).render(&painter);
    return picture;
}

void fill(QTextDocument& text, const std::string& body, const std::vector<NamedPicture>& pictures) {
    text.setDefaultStyleSheet(QString::fromUtf8(kPaperStyle));
    text.setDefaultFont(QFont(QStringLiteral("DejaVu Sans"), 9));
    for (const NamedPicture& picture : pictures)
        text.addResource(QTextDocument::ImageResource, QUrl(QString::fromStdString(picture.name)),
                         image(picture.svg, picture.width, picture.height, 3));
    text.setHtml(QStringLiteral("<body>") + QString::fromStdString(body) +
                 QStringLiteral("</body>"));
}

} // namespace

std::string browserPage(const std::string& title, const std::string& body) {
    return fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width\">\n"
        "<title>{}</title>\n<style>{}</style>\n</head>\n<body>\n{}</body>\n</html>\n",
        escaped(title), kBrowserStyle, body);
}

Answer pdfPages(const Order& order, const std::string& title, const std::string& body,
                const std::vector<NamedPicture>& pictures) {
    if (auto problem = lacking()) return Answer::failed({*problem});
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setTitle(QString::fromStdString(title));
        writer.setCreator(QStringLiteral("Cutwater"));
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setPageMargins(QMarginsF(16, 15, 16, 15), QPageLayout::Millimeter);
        writer.setResolution(72 * 8); // points, finely divided
        constexpr double kFine = 8;
        const QSizeF page = writer.pageLayout().paintRect(QPageLayout::Point).size();
        constexpr double kFootHeight = 22;
        QTextDocument text;
        fill(text, body, pictures);
        // Points of the paper, whatever the screen is.
        QImage ruler(1, 1, QImage::Format_RGB32);
        ruler.setDotsPerMeterX(qRound(72 / 0.0254));
        ruler.setDotsPerMeterY(qRound(72 / 0.0254));
        text.documentLayout()->setPaintDevice(&ruler);
        text.setPageSize(QSizeF(page.width(), page.height() - kFootHeight));
        text.setDocumentMargin(0);
        const int sheets = text.pageCount();
        const int all = sheets + static_cast<int>(order.content.drawings.size());
        QPainter painter(&writer);
        const auto foot = [&](int number, const QString& left, QSizeF room) {
            QFont small(QStringLiteral("DejaVu Sans"));
            small.setPixelSize(8);
            painter.setFont(small);
            painter.setPen(Qt::black);
            const QRectF strip(0, room.height() - 12, room.width(), 12);
            painter.drawText(
                strip, Qt::AlignLeft | Qt::AlignVCenter,
                QFontMetrics(small).elidedText(left, Qt::ElideRight, qRound(room.width() * 0.8)));
            painter.drawText(strip, Qt::AlignRight | Qt::AlignVCenter,
                             QStringLiteral("%1 / %2").arg(number).arg(all));
        };
        painter.scale(kFine, kFine);
        for (int i = 0; i < sheets; ++i) {
            if (order.job.stop.stop_requested()) return cancelled();
            if (i > 0) writer.newPage();
            const QRectF part(0, i * text.pageSize().height(), page.width(),
                              text.pageSize().height());
            painter.save();
            painter.translate(0, -part.top());
            painter.setClipRect(part);
            QAbstractTextDocumentLayout::PaintContext context;
            context.palette.setColor(QPalette::Text, Qt::black);
            context.clip = part;
            text.documentLayout()->draw(&painter, context);
            painter.restore();
            foot(i + 1, QString::fromStdString(title), page);
            if (order.job.progress) order.job.progress(0.5 + 0.4 * i / all, "writing pages");
        }
        int number = sheets;
        for (const sdk::ReportDrawing& drawing : order.content.drawings) {
            if (order.job.stop.stop_requested()) return cancelled();
            writer.setPageMargins(QMarginsF(0, 0, 0, 0));
            writer.setPageSize(QPageSize(QSizeF(drawing.width, drawing.height), QPageSize::Point,
                                         {}, QPageSize::ExactMatch));
            writer.setPageOrientation(QPageLayout::Portrait);
            writer.newPage();
            const QByteArray svg = QByteArray::fromStdString(drawing.svg);
            painter.save();
            if (!paintDrawing(painter, svg))
                QSvgRenderer(svg).render(&painter, QRectF(0, 0, drawing.width, drawing.height));
            painter.restore();
            painter.save();
            painter.translate(drawing.width - 60, 0);
            foot(++number, {}, QSizeF(48, drawing.height - 4));
            painter.restore();
        }
    }
    return Answer::of(buffer.data().toStdString());
}

Answer odtText(const Order& order, const std::string& title, const std::string& body,
               const std::vector<NamedPicture>& pictures) {
    if (auto problem = lacking()) return Answer::failed({*problem});
    std::vector<NamedPicture> all = pictures;
    std::string whole = body;
    constexpr double kWide = 480, kHigh = 640; // points that a page has room for
    for (const sdk::ReportDrawing& drawing : order.content.drawings) {
        if (order.job.stop.stop_requested()) return cancelled();
        const double scale = std::min({1.0, kWide / drawing.width, kHigh / drawing.height});
        const std::string name = fmt::format("sheet:{}", all.size());
        all.push_back({name, drawing.svg, drawing.width * scale, drawing.height * scale});
        whole += fmt::format("<p><img src=\"{}\" width=\"{:.0f}\" height=\"{:.0f}\"></p>\n", name,
                             drawing.width * scale, drawing.height * scale);
        whole += paragraph(drawing.title, "remark");
    }
    QTextDocument text;
    text.setMetaInformation(QTextDocument::DocumentTitle, QString::fromStdString(title));
    fill(text, whole, all);
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QTextDocumentWriter writer(&buffer, "odf");
    if (!writer.write(&text)) {
        project::Problem problem;
        problem.what = "the report could not be written as OpenDocument text";
        problem.remedy = "write it as HTML or PDF";
        return Answer::failed({problem});
    }
    return Answer::of(buffer.data().toStdString());
}

} // namespace cutwater::paper_report
