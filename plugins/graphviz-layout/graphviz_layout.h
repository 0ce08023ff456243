// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plugins/sdk/interfaces.h"

#include <QObject>

namespace cutwater::graphviz {

class GraphvizLayout : public QObject, public sdk::Layout {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID CUTWATER_LAYOUT_IID FILE "graphviz-layout.json")
    Q_INTERFACES(cutwater::sdk::Layout)

public:
    sdk::Answer<sdk::LayoutGraph> place(const sdk::LayoutGraph& graph, const sdk::Values& values,
                                        const sdk::Job& job) const override;
};

} // namespace cutwater::graphviz
