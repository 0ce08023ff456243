// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/libraries.h"

#include "app/cli/delivery.h"
#include "models/document/library_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include <fmt/format.h>

#include <ostream>

namespace cutwater::cli {
namespace {

// In a build and in an installation the data stand in the same place beside the programs.
QString standardFolder() {
    return QDir(QCoreApplication::applicationDirPath())
        .absoluteFilePath("../share/cutwater/library");
}

std::vector<std::string> filesOf(const QString& path) {
    std::vector<std::string> files;
    if (!QFileInfo(path).isDir()) return {path.toStdString()};
    const QDir folder(path);
    for (const QString& name : folder.entryList({"*.cutlib"}, QDir::Files, QDir::Name))
        files.push_back(folder.filePath(name).toStdString());
    return files;
}

} // namespace

sdk::Parameter libraryParameter() {
    sdk::Parameter parameter;
    parameter.name = "library";
    parameter.sentence = "libraries of your own, files or folders, with commas between them; they "
                         "come before those of the installation";
    return parameter;
}

std::optional<std::vector<library::Library>> readLibraries(const Call& call, Context& context) {
    std::vector<std::string> files;
    const QString own = QString::fromStdString(call.values.text("library").value_or(""));
    for (const QString& path : own.split(',', Qt::SkipEmptyParts))
        for (std::string& file : filesOf(path.trimmed()))
            files.push_back(std::move(file));
    const QString standard = standardFolder();
    if (QFileInfo(standard).isDir())
        for (std::string& file : filesOf(standard))
            files.push_back(std::move(file));
    std::vector<library::Library> libraries;
    bool good = true;
    for (const std::string& file : files) {
        auto loaded = document::loadLibrary(file);
        if (!loaded) {
            printProblems(loaded.problems(), shownName(file), context.err, 20);
            good = false;
            continue;
        }
        if (!context.globals.quiet)
            printProblems(loaded->warnings, shownName(file), context.err, 20);
        libraries.push_back(std::move(loaded->library));
    }
    if (!good) return {};
    if (libraries.empty()) {
        context.err << "cutwater: there is no library; name one with --library, or install the "
                       "program whole.\n";
        return {};
    }
    return libraries;
}

FoundType findType(const std::vector<library::Library>& libraries, const std::string& wanted) {
    const std::size_t slash = wanted.find('/');
    for (const library::Library& one : libraries) {
        if (slash != std::string::npos && wanted.substr(0, slash) == one.id)
            if (const auto* type = library::findType(one, wanted.substr(slash + 1)))
                return {&one, type};
        if (const auto* type = library::findType(one, wanted)) return {&one, type};
    }
    for (const library::Library& one : libraries)
        for (const library::ComponentType& type : one.types)
            if (type.name == wanted) return {&one, &type};
    return {};
}

std::string unknownType(const std::vector<library::Library>& libraries, const std::string& wanted) {
    std::vector<std::string> known;
    for (const library::Library& one : libraries)
        for (const library::ComponentType& type : one.types)
            known.push_back(type.id);
    const std::string near = sdk::nearest(wanted, known);
    return near.empty()
               ? fmt::format("there is no component type '{}'; `cutwater library` lists "
                             "them",
                             wanted)
               : fmt::format("there is no component type '{}'; did you mean {}?", wanted, near);
}

} // namespace cutwater::cli
