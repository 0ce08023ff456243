// SPDX-License-Identifier: GPL-3.0-or-later
// SerialLayout: one layout at a time, whoever asks. A layout library may keep state of the process;
// pages and exports come from different threads.
#pragma once

#include "plugins/sdk/interfaces.h"

#include <mutex>

namespace cutwater::editor {

class SerialLayout : public sdk::Layout {
public:
    explicit SerialLayout(const sdk::Layout& layout) : m_layout(layout) {}

    sdk::Answer<sdk::LayoutGraph> place(const sdk::LayoutGraph& graph, const sdk::Values& values,
                                        const sdk::Job& job) const override {
        const std::lock_guard lock(m_mutex);
        return m_layout.place(graph, values, job);
    }

private:
    const sdk::Layout& m_layout;
    mutable std::mutex m_mutex;
};

} // namespace cutwater::editor
