// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/drawing_files.h"

#include "app/cli/delivery.h"
#include "app/drawing/paint.h"
#include "app/drawing/svg.h"
#include "app/results/display_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>
#include <set>

namespace cutwater::cli {

using results::printable;
namespace {

std::string forPath(const std::string& id) {
    std::string result = id;
    for (char& c : result)
        if (c == '/' || c == ':' || c == '\\') c = '_';
    return result;
}

project::Outcome<std::string> bytesOf(const DrawingFile& file, DrawingType type, int dpi,
                                      const std::string& title) {
    if (type == DrawingType::svg) return drawing::toSvg(file.sheets.front()->picture);
    if (type == DrawingType::png) return drawing::toPng(file.sheets.front()->picture, dpi);
    std::vector<drawing::Picture> pictures;
    for (const drawing::Sheet* sheet : file.sheets)
        pictures.push_back(sheet->picture);
    return drawing::toPdf(pictures, title.empty() ? file.top : title + ", " + file.top);
}

} // namespace

std::vector<DrawingFile> drawingFiles(const std::string& output, DrawingType type,
                                      const std::vector<drawing::Diagram>& diagrams) {
    const std::size_t slash = output.rfind('/');
    const std::size_t dot = output.rfind('.');
    const std::size_t nameStart = slash == std::string::npos ? 0 : slash + 1;
    const bool hasSuffix = dot != std::string::npos && dot > nameStart;
    const std::string stem = hasSuffix ? output.substr(0, dot) : output;
    const std::string suffix = hasSuffix ? output.substr(dot) : std::string();
    std::vector<DrawingFile> files;
    std::set<std::string> taken;
    for (const drawing::Diagram& diagram : diagrams) {
        std::string name = stem;
        if (diagrams.size() > 1) {
            name += "-" + forPath(diagram.top);
            // "a:b" and "a/b" are two tops with one name for a file.
            const std::string first = name;
            for (int n = 2; !taken.insert(name).second; ++n)
                name = fmt::format("{}_{}", first, n);
        }
        const bool onePerSheet = type != DrawingType::pdf;
        DrawingFile all{output.empty() ? "" : name + suffix, diagram.top, {}};
        for (const drawing::Sheet& sheet : diagram.sheets) {
            all.sheets.push_back(&sheet);
            if (!onePerSheet) continue;
            DrawingFile one{all.path, diagram.top, {&sheet}};
            if (!output.empty() && diagram.sheets.size() > 1)
                one.path = fmt::format("{}-{}{}", name, sheet.number, suffix);
            files.push_back(std::move(one));
        }
        if (!onePerSheet) files.push_back(std::move(all));
    }
    return files;
}

int writeDrawings(const std::vector<DrawingFile>& files, DrawingType type, int dpi,
                  const std::string& title, Context& context) {
    for (const DrawingFile& file : files) {
        const project::Outcome<std::string> bytes = bytesOf(file, type, dpi, title);
        if (!bytes) return reportEnding(sdk::Ending::failed, bytes.problems(), file.path, context);
        Globals globals = context.globals;
        globals.output = file.path;
        Context writing{context.host, globals, context.stop, context.out, context.err};
        if (const int code = deliver(*bytes, writing); code != kFine) return code;
        if (!file.path.empty() && !context.globals.quiet)
            context.out << printable(file.path) << std::endl;
    }
    return kFine;
}

} // namespace cutwater::cli
