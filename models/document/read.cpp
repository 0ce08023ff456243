// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/document.h"

#include "models/document/facts_library.h"
#include "models/document/facts_project.h"
#include "models/document/library_file.h"
#include "models/document/numbers.h"
#include "models/document/reader.h"
#include "models/document/scan.h"

#include <cstring>
#include <fmt/format.h>

namespace cutwater::document {

namespace {

project::Problem problem(std::string what, std::string remedy, int line = 0) {
    return {project::Severity::error, std::move(what), std::move(remedy), {}, line};
}

// What the outermost element is called, and what a file with another one is told.
struct Root {
    const char* name;
    const char* what;
    const char* remedy;
};

constexpr Root kProjectRoot{"cutwater", "a Cutwater project",
                            "open a file that starts with <cutwater>"};
constexpr Root kLibraryRoot{"cutwater-library", "a Cutwater library",
                            "open a file that starts with <cutwater-library>"};

// Reads "MAJOR.MINOR"; a problem where it is not one or too new.
std::optional<project::Problem> judgeVersion(ReaderState& state, pugi::xml_node root,
                                             const Root& expected) {
    const int line = state.lineOf(root);
    const pugi::xml_attribute attribute = root.attribute("version");
    if (!attribute)
        return problem("the file does not say which version of the format it has",
                       fmt::format("write <{} version=\"{}.{}\">", expected.name, kMajorVersion,
                                   kMinorVersion),
                       line);
    const std::string_view version = attribute.value();
    const std::size_t dot = version.find('.');
    int major = 0, minor = 0;
    const bool plain = version.find_first_not_of("0123456789.") == std::string_view::npos;
    if (!plain || dot == std::string_view::npos ||
        readWhole(version.substr(0, dot), major) != NumberFault::none ||
        readWhole(version.substr(dot + 1), minor) != NumberFault::none || major < 1)
        return problem(fmt::format("\"{:.20}\" is not a version of the format", version),
                       fmt::format("write version=\"{}.{}\"", kMajorVersion, kMinorVersion), line);
    if (major > kMajorVersion)
        return problem(
            fmt::format("the file is of version {}, which is newer than this program's {}.{}",
                        version, kMajorVersion, kMinorVersion),
            "open it with a newer Cutwater", line);
    state.newer = minor > kMinorVersion;
    state.fileVersion = version;
    return std::nullopt;
}

template <typename Value>
std::optional<project::Problems> parseInto(const std::string& text, const Root& expected,
                                           Value& value) {
    const auto stop = [](project::Problem found) {
        return std::optional(project::Problems{std::move(found)});
    };
    std::string_view source = text;
    if (source.substr(0, 3) == "\xEF\xBB\xBF") source.remove_prefix(3);
    if (source.size() > kMaxFileBytes)
        return stop(problem(fmt::format("the text is longer than {} MB", kMaxFileBytes >> 20),
                            "split the project"));
    if (auto fault = scanDocument(source)) return stop(*fault);

    // The parser works in place; `source` stays whole for what is kept word for word.
    std::vector<char> buffer(source.begin(), source.end());
    pugi::xml_document document;
    const pugi::xml_parse_result result = document.load_buffer_inplace(
        buffer.data(), buffer.size(), pugi::parse_default | pugi::parse_ws_pcdata_single,
        pugi::encoding_utf8);
    ReaderState state(source);
    if (!result)
        return stop(problem(fmt::format("the file is not well formed ({})", result.description()),
                            "mend it, or take another copy",
                            state.lines.lineOf(static_cast<std::size_t>(result.offset))));

    const pugi::xml_node root = document.document_element();
    if (std::strcmp(root.name(), expected.name) != 0)
        return stop(problem(fmt::format("this is not {}: its outermost element is <{}>",
                                        expected.what, root.name()),
                            expected.remedy, state.lineOf(root)));
    if (auto fault = judgeVersion(state, root, expected)) return stop(*fault);
    {
        Reader reader(state, root);
        describe(reader, value);
        reader.finish(&value.kept);
    }
    project::Problems problems = state.takeProblems();
    if (problems.empty()) return std::nullopt;
    return problems;
}

} // namespace

project::Outcome<Loaded> parse(const std::string& text) {
    Loaded loaded;
    if (auto problems = parseInto(text, kProjectRoot, loaded.project)) return *problems;
    return loaded;
}

project::Outcome<library::Library> parseLibrary(const std::string& text) {
    library::Library loaded;
    if (auto problems = parseInto(text, kLibraryRoot, loaded)) return *problems;
    return loaded;
}

} // namespace cutwater::document
