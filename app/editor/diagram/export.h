// SPDX-License-Identifier: GPL-3.0-or-later
// Export: the printed sheets of a tree as files, made in a thread of its own.
#pragma once

#include "app/drawing/diagram.h"
#include "app/editor/diagram/captions.h"

#include <QObject>
#include <QString>

#include <memory>
#include <thread>

namespace cutwater::editor {

enum class FileType { pdf, svg, png };

// By the end of the name; none of the three: empty.
std::optional<FileType> fileTypeOf(const QString& path);

struct ExportOrder {
    std::shared_ptr<const project::Project> project;
    project::TopEvent top;
    drawing::Paper paper = drawing::Paper::a4;
    drawing::Orientation orientation = drawing::Orientation::automatic;
    CaptionKind captions = CaptionKind::none;
    std::set<project::Id> marked;
    int onlySheet = 0; // 0: all
    int dpi = 200;
    QString path; // SVG and PNG of several sheets: NAME-1.svg, NAME-2.svg ...
};

struct ExportReport {
    bool done = false;
    QString sentence; // what was written, or why not
    std::vector<QString> files;
};

// The sheets as pictures. Any thread that has fonts.
sdk::Answer<std::vector<drawing::Picture>>
exportPictures(const ExportOrder& order, const sdk::Layout& layout, const sdk::Job& job);

// Writes the files; each appears whole or not at all.
ExportReport exportFiles(const ExportOrder& order, const sdk::Layout& layout, const sdk::Job& job);

class ExportTask : public QObject {
    Q_OBJECT
public:
    // Starts at once. The destructor cancels and waits.
    ExportTask(ExportOrder order, const sdk::Layout& layout, QObject* parent = nullptr);
    ~ExportTask() override;
    void cancel();

signals:
    void progressed(int percent);
    void finished(const cutwater::editor::ExportReport& report);

private:
    std::jthread m_thread;
};

} // namespace cutwater::editor
