// SPDX-License-Identifier: GPL-3.0-or-later
// The file as a whole: its sections, and the facts of the project itself; see facts_values.h.
#pragma once

#include "models/document/facts_history.h"
#include "models/document/facts_plant.h"
#include "models/document/facts_tree.h"

namespace cutwater::document {

template <typename Io>
void describe(Io& io, Of<Io, project::Project>& project) {
    io.version(project.newerMinorVersion);
    auto& kept = project.keptInSections;
    io.section("project", kept, [&](auto& section) {
        section.fact("name", project.name);
        section.fact("plant", project.plant);
        section.fact("description", project.description);
        section.fact("revision", project.revision);
        section.fact("date", project.date);
        section.fact("prepared-by", project.preparedBy);
        section.fact("checked-by", project.checkedBy);
        section.fact("operating-mode", project.operatingMode);
        section.facts("rule", project.rules);
        section.facts("assumption", project.assumptions);
        section.facts("caution", project.cautions);
    });
    const auto list = [&](const char* sectionName, const char* name, auto& values) {
        io.section(sectionName, kept, [&](auto& section) { section.elements(name, values); });
    };
    list("parameters", "parameter", project.parameters);
    list("components", "component", project.components);
    list("modes", "mode", project.modes);
    list("connections", "connection", project.connections);
    list("events", "event", project.events);
    list("gates", "gate", project.gates);
    list("top-events", "top-event", project.tops);
    list("common-causes", "common-cause", project.commonCauses);
    list("exposures", "exposure", project.exposures);
    list("log", "entry", project.log);
    list("assessments", "assessment", project.assessments);
    io.section("worksheet", kept, [&](auto& section) {
        auto& worksheet = project.worksheet;
        section.element("operating-time", worksheet.operatingTime);
        section.elements("severity-step", worksheet.severityScale);
        section.elements("occurrence-step", worksheet.occurrenceScale);
        section.elements("detection-step", worksheet.detectionScale);
        section.element("risk-matrix", worksheet.matrix);
    });
}

} // namespace cutwater::document
