// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers of a project that are known with a distribution, each once, and what the
// probabilities of events are for a draw of all of them. Two events that name the same parameter,
// or the same failure mode, use the same draw: the state-of-knowledge correlation (Apostolakis and
// Kaplan, 1981, from memory).
#pragma once

#include "models/project/index.h"
#include "models/reliability/distribution.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cutwater::reliability {

// Samples that are drawn and worked on side by side.
constexpr std::size_t kSideBySide = 16;

struct UncertainInput {
    // Its place among all numbers of the project: the draws of an input do not depend on what else
    // is asked about.
    std::uint32_t number = 0;
    std::string name; // "parameter fuse-opens", "rate of F7.open"
    const project::Quantity* quantity = nullptr;
    double factor = 1;               // to hours, per hour, or the plain number
    bool atMostOne = false;          // used as a probability, a coverage or a share
    std::vector<std::size_t> events; // positions in project.events that use it
    Sampler sampler;
};

class UncertainInputs {
public:
    UncertainInputs(const project::Project& project, const project::Index& index,
                    std::optional<double> mission);

    // Takes the event in and answers its number here; the same event again has the same number.
    // Problems: those of probabilityOf().
    project::Outcome<std::size_t> addEvent(std::size_t position);
    // Takes a group's factors in: factor i of it is number (answer + i) of factors.
    std::size_t addFactors(const project::CommonCauseGroup& group);

    const std::vector<UncertainInput>& inputs() const { return m_inputs; }
    std::size_t eventCount() const { return m_events.size(); }
    std::size_t factorCount() const { return m_factors.size(); }

    // draws[i * kSideBySide + s]: input i in its base unit, sample s. q and factors likewise.
    void events(std::span<const double> draws, std::span<double> q) const;
    void factors(std::span<const double> draws, std::span<double> values) const;

private:
    struct Operand {
        double constant = 0;
        std::optional<std::size_t> input;
        bool turnOver = false; // a mean time to failure, used as a rate
        bool given = false;
        double at(std::span<const double> draws, std::size_t sample) const {
            const double value = input ? draws[*input * kSideBySide + sample] : constant;
            return turnOver ? 1 / value : value;
        }
    };
    // The numbers of one failure model, by what the formulas call them.
    struct Model {
        project::ModelKind kind = project::ModelKind::none;
        std::optional<double> fixed; // no uncertain number: always this
        Operand probability, rate, mission, repair, interval, testDuration, coverage, shape, scale,
            location;
    };

    Operand operand(const project::Quantity& quantity, const std::string& name, bool atMostOne,
                    std::optional<std::size_t> event);
    Model modelOf(const project::Event& event, std::size_t position, double fixed);
    static double evaluate(const Model& model, std::span<const double> draws, std::size_t sample);

    const project::Project& m_project;
    const project::Index& m_index;
    std::optional<double> m_mission;
    std::map<const project::Quantity*, std::uint32_t> m_numbers; // of all quantities
    std::map<const project::Quantity*, std::size_t> m_inputOf;
    std::map<std::size_t, std::size_t> m_eventOf; // by position
    std::vector<UncertainInput> m_inputs;
    std::vector<Model> m_events;
    std::vector<Operand> m_factors;
};

} // namespace cutwater::reliability
