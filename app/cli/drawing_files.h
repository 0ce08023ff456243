// SPDX-License-Identifier: GPL-3.0-or-later
// Drawn sheets as files: which there are, what they are called, and how they are written.
#pragma once

#include "app/cli/command.h"
#include "app/drawing/diagram.h"

#include <string>
#include <vector>

namespace cutwater::cli {

enum class DrawingType { svg, pdf, png };

struct DrawingFile {
    std::string path; // empty: standard output
    std::string top;
    std::vector<const drawing::Sheet*> sheets; // one, but for PDF
};

// "x.svg" becomes "x-T1-2.svg" where several tops and several sheets are drawn; characters of an id
// that have a meaning in paths become '_'.
std::vector<DrawingFile> drawingFiles(const std::string& output, DrawingType type,
                                      const std::vector<drawing::Diagram>& diagrams);

// Writes them, each one so that either the old or the whole new file is there, and says each name
// on `out`. Returns an exit code; stops at the first that cannot be written.
int writeDrawings(const std::vector<DrawingFile>& files, DrawingType type, int dpi,
                  const std::string& title, Context& context);

} // namespace cutwater::cli
