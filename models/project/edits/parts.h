// SPDX-License-Identifier: GPL-3.0-or-later
// Components and failure modes found by id: what the edits of the plant share. Private to the
// folder. Ids of components and of modes are two name spaces; where one list may hold both, a
// component is meant first.
#pragma once

#include "models/project/edits/changed.h"

#include <functional>
#include <set>
#include <string_view>

namespace cutwater::project::edits {

using IdSet = std::set<Id, std::less<>>;

Component* findPart(Project& project, std::string_view id);
FailureMode* findMode(Project& project, std::string_view id);
const Component* findPart(const Project& project, std::string_view id);
const FailureMode* findMode(const Project& project, std::string_view id);

struct Chosen {
    IdSet components, modes;
};
// The ids sorted by what they are, with all that stands below. No recursion; a circle is gone
// round once.
Chosen withAllBelow(const Project& project, const std::vector<Id>& ids);

Id newPartId(const Project& project, const std::string& tag, const std::string& name);
Id newModeId(const Project& project, const Id& component, const std::string& name);

Problem noSuchPart(std::string_view id);
Problem noSuchMode(std::string_view id);
// In quotes, for sentences.
std::string quoted(const Component& component);
std::string quoted(const FailureMode& mode);

} // namespace cutwater::project::edits
