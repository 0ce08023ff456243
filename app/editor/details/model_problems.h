// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with one failure model, said beside its form.
#pragma once

#include "models/project/failure_model.h"

#include <QString>

#include <vector>

namespace cutwater::editor {

// The sentences of validate(), one a line, without the place; empty: nothing is wrong.
QString problemsOf(const project::FailureModel& model,
                   const std::vector<project::Parameter>& parameters);

} // namespace cutwater::editor
