// SPDX-License-Identifier: GPL-3.0-or-later
// Judge: what the parts of validate() share. Private to the folder.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace cutwater::project {

// Of what a problem speaks. Put into words only where there is a problem.
struct Place {
    std::string_view kind; // "gate"
    std::string_view id;   // may be empty
    int line = 0;
    std::string_view part = {}; // "rate"; empty for the whole

    std::string words() const; // "gate G4", "rate of failure mode ET-1.fouled"
    Place with(std::string_view newPart, int newLine) const {
        return {kind, id, newLine > 0 ? newLine : line, newPart};
    }
};

enum class Target { component, mode, event, node, top, parameter };

enum class Range { any, chance, notNegative, positive };

class Judge {
public:
    explicit Judge(const Project& p) : project(p), index(p) {}

    void error(const Place& place, std::string what, std::string remedy);
    void warn(const Place& place, std::string what, std::string remedy);

    // The form of an id; `first` is the one with that id that comes first in the file.
    void id(const Place& place, const Id& id, bool isFirst, int firstLine);
    // For kinds that no index holds: one map per kind.
    using Seen = std::unordered_map<std::string_view, int>; // id -> line
    void id(const Place& place, const Id& id, Seen& seen);

    // True where it exists.
    bool exists(Target target, std::string_view id) const;
    bool reference(Target target, const Id& id, const Place& place);
    void references(Target target, const std::vector<Reference>& references, const Place& owner,
                    std::string_view part);

    void number(const std::optional<double>& value, const Place& place, Range range);
    void rating(const std::optional<int>& value, const Place& place);
    void date(const std::string& text, const Place& place); // empty is allowed
    void source(const SourceNote& note, const Place& place);
    // `dimensions` empty: any.
    void quantity(const Quantity& quantity, const Place& place,
                  const std::vector<Dimension>& dimensions, Range range);
    void model(const FailureModel& model, const Place& owner);

    const Project& project;
    const Index index;
    Problems problems;

private:
    bool value(double value, const Place& place, Range range);
    bool unit(const Quantity& quantity, const Place& place,
              const std::vector<Dimension>& dimensions);
    void distribution(const Quantity& quantity, const Place& place, Range range);
    void clock(const FailureModel& model, const Assignment& number, const Quantity& resolved,
               const Place& place);
    std::string_view nearest(Target target, std::string_view id);

    std::array<std::vector<std::string_view>, 6> m_candidates; // by target, made when first needed
    std::size_t m_comparisonsLeft = 2'000'000; // so that many wrong references stay linear
};

// The parts, in the order of the file.
void judgeProject(Judge& judge); // its own facts and the parameters
void judgePlant(Judge& judge);
void judgeTrees(Judge& judge);
void judgeHistory(Judge& judge);
void judgeWorksheet(Judge& judge); // scales, shares, actions, the risk matrix

} // namespace cutwater::project
