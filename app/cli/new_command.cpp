// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/new_command.h"

#include "app/cli/delivery.h"
#include "app/results/display_text.h"
#include "models/document/document.h"

#include <fcntl.h>
#include <unistd.h>

#include <fmt/format.h>

#include <cerrno>
#include <cstring>
#include <ostream>

namespace cutwater::cli {

using results::printable;
namespace {

project::Component component(const char* id, const char* name, const char* parent) {
    project::Component made;
    made.id = id;
    made.tag = id;
    made.name = name;
    made.parent = parent;
    return made;
}

project::FailureMode mode(const char* id, const char* componentId, const char* name,
                          const char* detection, const char* look) {
    project::FailureMode made;
    made.id = id;
    made.component = componentId;
    made.name = name;
    made.detection = detection;
    project::Check check;
    check.look = look;
    made.checks.push_back(check);
    return made;
}

project::Event event(const char* id, const char* name, const char* modeId) {
    project::Event made;
    made.id = id;
    made.name = name;
    made.mode = modeId;
    return made;
}

project::Gate gate(const char* id, const char* name, project::GateKind kind,
                   std::initializer_list<const char*> inputs) {
    project::Gate made;
    made.id = id;
    made.name = name;
    made.kind = kind;
    for (const char* input : inputs)
        made.inputs.push_back({input, {}});
    return made;
}

// Never over a file that is there, even one that appears at this moment.
int writeNew(const std::string& path, const std::string& text, Context& context) {
    const auto complain = [&](const std::string& what, const char* remedy) {
        context.err << fmt::format("{}: error: {}; {}.\n", printable(path), what, remedy);
        return kFileHasErrors;
    };
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (file < 0 && errno == EEXIST)
        return complain("there is a file of this name, and it was not touched",
                        "choose another name");
    if (file < 0)
        return complain(fmt::format("the file cannot be made ({})", std::strerror(errno)),
                        "choose a folder where you may write");
    std::size_t done = 0;
    bool good = true;
    while (good && done < text.size()) {
        const ssize_t got = ::write(file, text.data() + done, text.size() - done);
        if (got < 0 && errno == EINTR) continue;
        good = got > 0;
        if (good) done += static_cast<std::size_t>(got);
    }
    good = good && ::fsync(file) == 0;
    good = ::close(file) == 0 && good;
    if (good) return kFine;
    ::unlink(path.c_str());
    return complain("the file cannot be written", "make room on the disk");
}

int run(const Call& call, Context& context) {
    const std::string& path = call.operands.front();
    if (path == "-") return usageError("new needs the name of a file", context);
    const auto text =
        document::write(firstProject(call.values.text("name").value_or("New project")));
    if (!text) return reportEnding(sdk::Ending::failed, text.problems(), {}, context);
    const int code = writeNew(path, *text, context);
    if (code == kFine && !context.globals.quiet)
        context.err << fmt::format("{} is made. Try: cutwater single-failures {}\n",
                                   printable(path), printable(path));
    return code;
}

} // namespace

project::Project firstProject(const std::string& name) {
    using project::GateKind;
    project::Project made;
    made.name = name;
    made.description = "A start: replace the parts by those of your plant. Numbers are left out on "
                       "purpose: give each one with its source.";
    made.components = {component("MACHINE", "the machine", ""),
                       component("PUMP-A", "pump A", "MACHINE"),
                       component("PUMP-B", "pump B, standby", "MACHINE"),
                       component("PANEL", "control panel", "MACHINE")};
    made.modes = {
        mode("PUMP-A.stops", "PUMP-A", "stops while running", "low-pressure alarm",
             "motor current and breaker of pump A"),
        mode("PUMP-B.no-start", "PUMP-B", "does not start when asked", "nobody sees it",
             "start pump B by hand and watch the pressure"),
        mode("PANEL.no-power", "PANEL", "has no power", "all lamps out", "fuse and supply lamp"),
    };
    made.modes[1].dormant = true;
    made.events = {event("pump-a-stops", "pump A stops", "PUMP-A.stops"),
                   event("pump-b-no-start", "pump B does not start", "PUMP-B.no-start"),
                   event("panel-no-power", "control panel without power", "PANEL.no-power")};
    made.gates = {
        gate("machine-stops", "the machine stops", GateKind::orGate, {"no-flow", "panel-no-power"}),
        gate("no-flow", "no flow from either pump", GateKind::andGate,
             {"pump-a-stops", "pump-b-no-start"})};
    project::TopEvent top;
    top.id = "T1";
    top.name = "The machine stops";
    top.node.id = "machine-stops";
    made.tops = {top};
    return made;
}

Command newCommand() {
    Command command;
    command.name = "new";
    command.summary = "make a small project file to start from";
    command.operands = "FILE";
    command.details = "The file must not be there yet: nothing is ever overwritten.";
    sdk::Parameter name;
    name.name = "name";
    name.standard = sdk::Value(std::string("New project"));
    name.sentence = "name of the project";
    command.options = {name};
    command.run = run;
    return command;
}

} // namespace cutwater::cli
