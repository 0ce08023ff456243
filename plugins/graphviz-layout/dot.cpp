// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/graphviz-layout/dot.h"

#include <fmt/format.h>

#include <cgraph.h>
#include <gvc.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <mutex>
#include <numeric>
#include <string>

#ifdef __SANITIZE_ADDRESS__
#include <sanitizer/lsan_interface.h>
#endif

namespace cutwater::graphviz {
namespace {

using project::Outcome;
using project::Problem;

// Graphviz keeps its state in globals: one layout at a time in the whole process.
std::mutex theGraphvizMutex;
std::string theMessages; // guarded by the mutex; a C callback has nowhere else to write to

int collectMessage(char* text) {
    if (theMessages.size() < 400) theMessages += text;
    return 0;
}

// While it lives, Graphviz' messages come to us and not to the terminal.
class MessagesCaught {
public:
    MessagesCaught() : m_before(agseterrf(collectMessage)) { theMessages.clear(); }
    ~MessagesCaught() { agseterrf(m_before); }
    MessagesCaught(const MessagesCaught&) = delete;
    MessagesCaught& operator=(const MessagesCaught&) = delete;

private:
    agusererrf m_before;
};

struct Closing {
    void operator()(Agraph_t* graph) const { agclose(graph); }
    void operator()(GVC_t* context) const { gvFreeContext(context); }
};

// One context for the whole process: opening one loses the text of Graphviz' list of plug-ins (3.7
// kB in 2.43), and would do so for each sheet. Call with the mutex held; null where it does not
// start.
GVC_t* theContext() {
#ifdef __SANITIZE_ADDRESS__
    const __lsan::ScopedDisabler notOurLoss;
#endif
    static const std::unique_ptr<GVC_t, Closing> context(gvContext());
    return context.get();
}

// Graphviz takes text that it may not change as `char*`.
void setAttribute(void* object, const char* name, const std::string& value) {
    agsafeset(object, const_cast<char*>(name), const_cast<char*>(value.c_str()),
              const_cast<char*>(""));
}

Problem failure(const std::string& what) {
    Problem problem;
    problem.what = what;
    std::string said = theMessages;
    std::replace(said.begin(), said.end(), '\n', ' ');
    while (!said.empty() && said.back() == ' ')
        said.pop_back();
    if (!said.empty()) problem.what += " (it says: " + said + ")";
    problem.remedy = "check that the package libgvc6 is installed whole";
    return problem;
}

std::vector<Agnode_t*> fill(Agraph_t* graph, const Layers& layers, double gap) {
    setAttribute(graph, "splines", "none"); // the lines are ours
    setAttribute(graph, "ordering", "out");
    setAttribute(graph, "nodesep", fmt::format("{:.4f}", gap / 72));
    setAttribute(graph, "ranksep", "0.3");
    agattr(graph, AGNODE, const_cast<char*>("shape"), const_cast<char*>("box"));
    agattr(graph, AGNODE, const_cast<char*>("fixedsize"), const_cast<char*>("true"));
    agattr(graph, AGNODE, const_cast<char*>("label"), const_cast<char*>(""));
    agattr(graph, AGNODE, const_cast<char*>("height"), const_cast<char*>("0.5"));
    agattr(graph, AGNODE, const_cast<char*>("width"), const_cast<char*>("1"));
    agattr(graph, AGEDGE, const_cast<char*>("weight"), const_cast<char*>("1"));
    std::vector<Agnode_t*> nodes;
    for (std::size_t i = 0; i < layers.row.size(); ++i) {
        const std::string name = fmt::format("n{}", i);
        nodes.push_back(agnode(graph, const_cast<char*>(name.c_str()), 1));
        setAttribute(nodes.back(), "width", fmt::format("{:.6f}", std::ceil(layers.width[i]) / 72));
    }
    for (const Segment& segment : layers.segments) {
        Agedge_t* edge = agedge(graph, nodes[segment.upper], nodes[segment.lower], nullptr, 1);
        // Long lines shall run straight down: the weights that dot gives its own stops.
        const int stops = (segment.upper >= layers.boxes) + (segment.lower >= layers.boxes);
        setAttribute(edge, "weight", stops == 2 ? "8" : stops == 1 ? "2" : "1");
    }
    return nodes;
}

// dot keeps boxes of a row apart; where it could not (it gives up silently on some graphs), we do.
void keepApart(const Layers& layers, double gap, std::vector<double>& x) {
    std::vector<std::vector<std::size_t>> rows(static_cast<std::size_t>(layers.rows));
    for (std::size_t i = 0; i < x.size(); ++i)
        rows[static_cast<std::size_t>(layers.row[i])].push_back(i);
    for (std::vector<std::size_t>& row : rows) {
        std::stable_sort(row.begin(), row.end(),
                         [&](std::size_t a, std::size_t b) { return x[a] < x[b]; });
        for (std::size_t i = 1; i < row.size(); ++i) {
            const double least =
                x[row[i - 1]] + layers.width[row[i - 1]] / 2 + layers.width[row[i]] / 2 + gap / 2;
            x[row[i]] = std::max(x[row[i]], least);
        }
    }
}

} // namespace

Outcome<std::vector<double>> placeInRows(const Layers& layers, double gap) {
    std::vector<double> x(layers.row.size(), 0);
    if (x.empty()) return x;
    {
        const std::lock_guard<std::mutex> lock(theGraphvizMutex);
        const MessagesCaught caught;
        GVC_t* const context = theContext();
        if (!context) return failure("Graphviz does not start");
        const std::unique_ptr<Agraph_t, Closing> graph(
            agopen(const_cast<char*>("sheet"), Agdirected, nullptr));
        if (!graph) return failure("Graphviz cannot open a graph");
        const std::vector<Agnode_t*> nodes = fill(graph.get(), layers, gap);
        const int ended = gvLayout(context, graph.get(), "dot");
        if (ended == 0)
            for (std::size_t i = 0; i < nodes.size(); ++i)
                x[i] = ND_coord(nodes[i]).x;
        gvFreeLayout(context, graph.get());
        if (ended != 0) return failure("Graphviz cannot lay out this graph");
    }
    for (const double value : x)
        if (!std::isfinite(value)) return failure("Graphviz answered no position");
    keepApart(layers, gap, x);
    double left = x[0];
    for (std::size_t i = 0; i < x.size(); ++i)
        left = std::min(left, x[i] - layers.width[i] / 2);
    for (double& value : x)
        value -= left;
    return x;
}

} // namespace cutwater::graphviz
