// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/uncertainty/wish.h"

#include <algorithm>
#include <limits>
#include <thread>

namespace cutwater::uncertainty_plugin {
namespace {

constexpr std::int64_t kFewestSamples = 100, kMostSamples = 10'000'000, kMostThreads = 256;

sdk::Parameter whole(const char* name, std::int64_t standard, std::int64_t low, std::int64_t high,
                     const char* sentence) {
    sdk::Parameter parameter;
    parameter.name = name;
    parameter.type = sdk::ParameterType::integer;
    parameter.minimum = static_cast<double>(low);
    parameter.maximum = static_cast<double>(high);
    parameter.standard = standard;
    parameter.sentence = sentence;
    return parameter;
}

} // namespace

std::vector<sdk::Parameter> wishParameters() {
    sdk::Parameter method;
    method.name = "method";
    method.type = sdk::ParameterType::choice;
    method.choices = {"monte-carlo", "latin-hypercube"};
    method.standard = std::string("monte-carlo");
    method.sentence = "monte-carlo draws every sample by itself; latin-hypercube spreads the draws "
                      "of each number evenly, in ten batches";
    return {whole("samples", 100'000, kFewestSamples, kMostSamples,
                  "how often all uncertain numbers are drawn"),
            whole("seed", 1, 0, std::numeric_limits<std::int32_t>::max(),
                  "where the random numbers begin: the same seed gives the same answer"),
            method,
            whole("threads", 0, 0, kMostThreads,
                  "threads that work side by side, 0: as many as the computer has; the answer is "
                  "the same for any number")};
}

Wish wishOf(const sdk::Values& values) {
    Wish wish;
    reliability::UncertaintyWish& drawing = wish.drawing;
    drawing.samples = static_cast<std::size_t>(values.integer("samples").value_or(100'000));
    drawing.seed = static_cast<std::uint64_t>(values.integer("seed").value_or(1));
    if (values.text("method") == "latin-hypercube") {
        drawing.drawing = reliability::Drawing::stratified;
        drawing.samples = (drawing.samples + reliability::kBatches - 1) / reliability::kBatches *
                          reliability::kBatches;
    }
    const auto threads = static_cast<unsigned>(values.integer("threads").value_or(0));
    drawing.threads = threads > 0 ? threads : std::max(1u, std::thread::hardware_concurrency());
    wish.commonCauses = values.flag("common-cause");
    return wish;
}

} // namespace cutwater::uncertainty_plugin
