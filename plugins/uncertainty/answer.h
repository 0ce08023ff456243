// SPDX-License-Identifier: GPL-3.0-or-later
// Summaries of samples as tables, curves and notes.
#pragma once

#include "models/reliability/uncertainty_statistics.h"
#include "plugins/sdk/tree/target.h"
#include "plugins/uncertainty/wish.h"

namespace cutwater::uncertainty_plugin {

struct TopAnswer {
    sdk::tree::Target target;
    double point = 0; // with the point values of all numbers
    reliability::SampleSummary summary;
};

sdk::Table topTable(const std::vector<TopAnswer>& tops);
// How sure each figure is, one row per figure.
sdk::Table confidenceTable(const std::vector<TopAnswer>& tops);
// The numbers that were drawn, with their own distributions.
sdk::Table inputTable(const project::Project& project, const reliability::UncertainInputs& inputs,
                      const reliability::Samples& samples, std::size_t count);
// How the simulation was run, so that anybody can run it again.
sdk::Table runTable(const Wish& wish, std::size_t inputs);

void addCurves(std::vector<sdk::Series>& series, const sdk::tree::Target& target,
               const std::vector<double>& samples, reliability::Drawing drawing);
void addNotes(std::vector<sdk::Note>& notes, const std::vector<TopAnswer>& tops,
              const reliability::UncertainInputs& inputs, const reliability::Samples& samples,
              const Wish& wish);

} // namespace cutwater::uncertainty_plugin
