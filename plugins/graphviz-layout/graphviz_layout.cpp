// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/graphviz-layout/graphviz_layout.h"

#include "plugins/graphviz-layout/placement.h"

namespace cutwater::graphviz {

sdk::Answer<sdk::LayoutGraph> GraphvizLayout::place(const sdk::LayoutGraph& graph,
                                                    const sdk::Values& values,
                                                    const sdk::Job& job) const {
    return graphviz::place(graph, values, job);
}

} // namespace cutwater::graphviz
