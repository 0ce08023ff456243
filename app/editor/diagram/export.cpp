// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/export.h"

#include "app/editor/diagram/gate_figures.h"

#include "app/drawing/paint.h"
#include "app/drawing/svg.h"
#include "app/editor/diagram/marked_path.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QSaveFile>

#include <exception>

namespace cutwater::editor {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::Export)
};

using Pictures = std::vector<drawing::Picture>;

ExportReport refused(const project::Problems& problems) {
    return {false, QString::fromStdString(project::toSentence(problems.front())), {}};
}

QString numbered(const QString& path, std::size_t number) {
    const QFileInfo file(path);
    return file.path() + QLatin1Char('/') + file.completeBaseName() +
           QStringLiteral("-%1.").arg(number) + file.suffix();
}

bool write(const QString& path, const std::string& bytes, QString& why) {
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) &&
        file.write(bytes.data(), static_cast<qint64>(bytes.size())) ==
            static_cast<qint64>(bytes.size()) &&
        file.commit())
        return true;
    why =
        Words::tr("%1 cannot be written: %2. Choose another place.").arg(path, file.errorString());
    return false;
}

} // namespace

std::optional<FileType> fileTypeOf(const QString& path) {
    const QString end = QFileInfo(path).suffix().toLower();
    if (end == QLatin1String("pdf")) return FileType::pdf;
    if (end == QLatin1String("svg")) return FileType::svg;
    if (end == QLatin1String("png")) return FileType::png;
    return std::nullopt;
}

sdk::Answer<Pictures> exportPictures(const ExportOrder& order, const sdk::Layout& layout,
                                     const sdk::Job& job) {
    const project::Outcome<drawing::Lettering> lettering = drawing::findLettering();
    if (!lettering) return sdk::Answer<Pictures>::failed(lettering.problems());
    drawing::Wishes wishes;
    wishes.paper = order.paper;
    wishes.orientation = order.orientation;
    wishes.maxSheets = 2000;
    const project::Index index(*order.project);
    Captions captions = captionsFor(*order.project, index, order.captions);
    if (order.captions == CaptionKind::gates)
        if (const auto tree = makeTree(order.project, order.top.id)) {
            GateFigures gates;
            gates.begin(*tree);
            while (!gates.goOn(std::chrono::seconds(1), job.stop) && !job.stop.stop_requested()) {
            }
            captions.words.insert(gates.words().begin(), gates.words().end());
        }
    wishes.values = std::move(captions.words);
    wishes.valuesRemark = std::move(captions.remark);
    if (!order.marked.empty()) {
        const auto tree = makeTree(order.project, order.top.id);
        wishes.marked = tree ? markedPath(**tree, order.marked).nodes : order.marked;
    }
    sdk::Answer<drawing::Diagram> diagram =
        drawing::draw(*order.project, order.top, wishes, *lettering, layout, job);
    if (!diagram.content) return {diagram.ending, std::nullopt, diagram.problems};
    Pictures pictures;
    for (drawing::Sheet& sheet : diagram.content->sheets)
        if (order.onlySheet == 0 || sheet.number == order.onlySheet)
            pictures.push_back(std::move(sheet.picture));
    return sdk::Answer<Pictures>::of(std::move(pictures));
}

ExportReport exportFiles(const ExportOrder& order, const sdk::Layout& layout, const sdk::Job& job) {
    const std::optional<FileType> type = fileTypeOf(order.path);
    if (!type) return {false, Words::tr("The name must end in .pdf, .svg or .png."), {}};
    const sdk::Answer<Pictures> pictures = exportPictures(order, layout, job);
    if (!pictures.content) return refused(pictures.problems);
    ExportReport report;
    QString why;
    if (*type == FileType::pdf) {
        const project::Outcome<std::string> bytes =
            drawing::toPdf(*pictures.content, order.project->name);
        if (!bytes) return refused(bytes.problems());
        if (!write(order.path, *bytes, why)) return {false, why, {}};
        report.files.push_back(order.path);
    } else {
        const std::size_t count = pictures.content->size();
        for (std::size_t i = 0; i < count; ++i) {
            if (job.stop.stop_requested())
                return {false, Words::tr("The export was cancelled."), report.files};
            const drawing::Picture& picture = (*pictures.content)[i];
            const project::Outcome<std::string> bytes =
                *type == FileType::svg ? project::Outcome<std::string>(drawing::toSvg(picture))
                                       : drawing::toPng(picture, order.dpi);
            if (!bytes) return refused(bytes.problems());
            const QString path = count == 1 ? order.path : numbered(order.path, i + 1);
            if (!write(path, *bytes, why)) return {false, why, report.files};
            report.files.push_back(path);
        }
    }
    report.done = true;
    const std::size_t sheets = pictures.content->size();
    report.sentence =
        sheets == 1
            ? Words::tr("One sheet written to %1").arg(report.files.front())
            : Words::tr("%1 sheets written to %2")
                  .arg(sheets)
                  .arg(report.files.size() == 1 ? report.files.front()
                                                : Words::tr("%1 and on").arg(report.files.front()));
    return report;
}

ExportTask::ExportTask(ExportOrder order, const sdk::Layout& layout, QObject* parent)
    : QObject(parent), m_thread([this, order = std::move(order), &layout](std::stop_token stop) {
          sdk::Job job;
          job.stop = stop;
          int last = -1;
          job.progress = [&](double share, const std::string&) {
              const int percent = static_cast<int>(share * 90);
              if (percent == last) return;
              last = percent;
              QMetaObject::invokeMethod(
                  this, [this, percent] { emit progressed(percent); }, Qt::QueuedConnection);
          };
          ExportReport report;
          try {
              report = exportFiles(order, layout, job);
          } catch (const std::exception& error) {
              report.sentence =
                  Words::tr("The export failed: %1").arg(QString::fromUtf8(error.what()));
          }
          QMetaObject::invokeMethod(
              this, [this, report] { emit finished(report); }, Qt::QueuedConnection);
      }) {}

ExportTask::~ExportTask() {
    m_thread.request_stop();
    m_thread.join();
}

void ExportTask::cancel() {
    m_thread.request_stop();
}

} // namespace cutwater::editor
