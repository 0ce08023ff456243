// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/take_command.h"

#include "app/cli/delivery.h"
#include "app/cli/libraries.h"
#include "models/library/take.h"

#include <fmt/format.h>

#include <ostream>

namespace cutwater::cli {
namespace {

int run(const Call& call, Context& context) {
    const auto project = readProject(call.operands[0], context);
    if (!project) return kFileHasErrors;
    const auto libraries = readLibraries(call, context);
    if (!libraries) return kFileHasErrors;
    const FoundType found = findType(*libraries, call.operands[1]);
    if (!found.type) return usageError(unknownType(*libraries, call.operands[1]), context);
    library::TakeWish wish;
    wish.id = call.operands[2];
    wish.tag = call.values.text("tag").value_or("");
    wish.name = call.values.text("name").value_or("");
    wish.location = call.values.text("location").value_or("");
    wish.parent = call.values.text("parent").value_or("");
    const auto made = library::take(*project, *found.library, *found.type, wish);
    if (!made) return usageError(made.problems(), context);
    const int code = deliverProject(*made, context);
    if (code == kFine && !context.globals.quiet)
        context.err << fmt::format("{} is taken from {}, revision {}, with {} failure modes. Give "
                                   "them their end effect, severity and test interval.\n",
                                   wish.id, found.library->id, found.type->revision,
                                   found.type->modes.size());
    return code;
}

sdk::Parameter text(const char* name, const char* sentence) {
    sdk::Parameter parameter;
    parameter.name = name;
    parameter.sentence = sentence;
    return parameter;
}

} // namespace

Command takeCommand() {
    Command command;
    command.name = "take";
    command.summary = "take a component type from a library into a project";
    command.operands = "FILE TYPE ID";
    command.details =
        "Writes the project with a new component ID of the type, and its failure modes "
        "ID.MODE, to --output (or to standard output). The component remembers the "
        "library, the type and its revision: see `cutwater library-news`.";
    command.options = {
        text("tag", "as on the drawing; the id where it is not given"),
        text("name", "the type's name where it is not given"), text("location", "where it sits"),
        text("parent", "id of the component that it is part of"), libraryParameter()};
    command.minOperands = command.maxOperands = 3;
    command.run = run;
    return command;
}

} // namespace cutwater::cli
