// SPDX-License-Identifier: GPL-3.0-or-later
// What the outline, the details and screen readers call events and gates.
#pragma once

#include "models/project/project.h"

#include <QString>

namespace cutwater::editor {

QString words(project::GateKind kind);          // "or"
QString words(project::EventKind kind);         // "undeveloped"
QString meaning(project::GateKind kind);        // "one input is enough"
QString meaning(project::EventKind kind);       // "a failure that is looked at no further"
QString kindWords(const project::Gate& gate);   // "or", "2 of 3"
QString kindWords(const project::Event& event); // "basic", "house, true"
QString nameOf(const project::Gate& gate);      // its text, else its id
QString nameOf(const project::Event& event);
QString modelWords(const project::FailureModel& model); // "tested: 1e-06 /h, 1 wk"; empty: none
// 0.000001 -> "1e-06": as short as it can be read back.
QString numberWords(double value);

} // namespace cutwater::editor
