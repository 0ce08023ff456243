// SPDX-License-Identifier: GPL-3.0-or-later
// The four things a plug-in can be. Each interface has a versioned IID: a change that breaks
// plug-ins makes a new number, and the host then refuses the old ones by name instead of crashing
// in them.
#pragma once

#include "models/project/project.h"
#include "plugins/sdk/job.h"
#include "plugins/sdk/parameter.h"
#include "plugins/sdk/result.h"

#include <QtPlugin>

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace cutwater::sdk {

// What a plug-in hands back: content only where it finished; problems say why it did not.
template <typename T>
struct Answer {
    Ending ending = Ending::finished;
    std::optional<T> content;
    project::Problems problems;

    static Answer of(T content) { return {Ending::finished, std::move(content), {}}; }
    static Answer failed(project::Problems problems) {
        return {Ending::failed, {}, std::move(problems)};
    }
    static Answer stopped(Ending ending, project::Problem problem) {
        return {ending, {}, {std::move(problem)}};
    }
};

// Computes something from a project. run() is called from any thread, on a project that validate()
// found no errors in; it may be called several times at once and keeps no state.
class Analysis {
public:
    virtual ~Analysis() = default;
    virtual std::vector<Parameter>
    parameters(const project::Project* project) const = 0; // null: in general
    virtual Answer<Result> run(const project::Project& project, const Values& values,
                               const Job& job) const = 0;
};

// Reads and writes a foreign format.
class Exchange {
public:
    virtual ~Exchange() = default;
    virtual std::vector<std::string> suffixes() const = 0; // without the dot
    virtual bool canRead() const = 0;
    virtual bool canWrite() const = 0;
    virtual Answer<project::Project> read(const std::string& bytes, const Values& values,
                                          const Job& job) const = 0;
    virtual Answer<std::string> write(const project::Project& project, const Values& values,
                                      const Job& job) const = 0;
};

// Places boxes and routes lines between them. Lengths in points (1/72 inch), y downwards.
struct Point {
    double x = 0, y = 0;
    bool operator==(const Point&) const = default;
};
struct LayoutNode {
    std::string id;
    double width = 0, height = 0; // of the box, given
    Point centre;                 // answered
};
struct LayoutEdge {
    std::size_t parent = 0, child = 0; // positions in `nodes`; the child is drawn below
    int order = 0;                     // among the inputs of the parent, left to right
    std::vector<Point> route;          // answered: from parent to child
};
struct LayoutGraph {
    std::vector<LayoutNode> nodes;
    std::vector<LayoutEdge> edges;
    double width = 0, height = 0; // answered
};

class Layout {
public:
    virtual ~Layout() = default;
    virtual Answer<LayoutGraph> place(const LayoutGraph& graph, const Values& values,
                                      const Job& job) const = 0;
};

// Makes a paper from a project and what was computed and drawn for it.
struct Document {
    std::string mediaType; // "text/html", "application/pdf"
    std::string bytes;
};

// A result as it stands in a report.
struct ReportPart {
    Result result;
    std::string title;  // for people
    std::string method; // what answered: "probability, version 0.1.0"
    std::vector<std::pair<std::string, std::string>> parameters; // name and value as it was given
    std::string comment;                                         // of the user; paragraphs
    std::string stale; // not empty: a sentence that the project has changed since
};
// A sheet of a drawn tree.
struct ReportDrawing {
    std::string title;
    std::string svg;
    double width = 0, height = 0; // points
};
struct ReportContent {
    std::vector<ReportPart> parts; // in their order
    std::vector<ReportDrawing> drawings;
    std::string file; // the project's, as it shall be named in the report
    std::string date; // of the report, ISO 8601
};

class Report {
public:
    virtual ~Report() = default;
    // The media types that make() can write, and their suffixes without the dot.
    virtual std::vector<std::pair<std::string, std::string>> types() const = 0;
    virtual std::vector<Parameter> parameters(const project::Project* project) const = 0;
    // From any thread, on a project that validate() may have found errors in: the report says so.
    virtual Answer<Document> make(const project::Project& project, const ReportContent& content,
                                  const std::string& mediaType, const Values& values,
                                  const Job& job) const = 0;
};

} // namespace cutwater::sdk

#define CUTWATER_ANALYSIS_IID "cutwater.Analysis/1"
#define CUTWATER_EXCHANGE_IID "cutwater.Exchange/1"
#define CUTWATER_LAYOUT_IID "cutwater.Layout/1"
#define CUTWATER_REPORT_IID "cutwater.Report/2"

Q_DECLARE_INTERFACE(cutwater::sdk::Analysis, CUTWATER_ANALYSIS_IID)
Q_DECLARE_INTERFACE(cutwater::sdk::Exchange, CUTWATER_EXCHANGE_IID)
Q_DECLARE_INTERFACE(cutwater::sdk::Layout, CUTWATER_LAYOUT_IID)
Q_DECLARE_INTERFACE(cutwater::sdk::Report, CUTWATER_REPORT_IID)
