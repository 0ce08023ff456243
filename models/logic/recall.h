// SPDX-License-Identifier: GPL-3.0-or-later
// Recall: what was solved before, so that a tree that has changed in one place is solved again only
// there.
#pragma once

#include <cstddef>
#include <memory>

namespace cutwater::logic {

struct RecallData;

// Kept by whoever solves the same tree again and again (an editor); give it to solve() in the
// Limits. Modules are found again by their structure, not by their names. What the last two solves
// did not use is dropped when it holds more than `maxBytes`. Safe to use from several threads.
class Recall {
public:
    explicit Recall(std::size_t maxBytes = std::size_t{256} << 20);
    ~Recall();
    Recall(const Recall&) = delete;
    Recall& operator=(const Recall&) = delete;

    std::size_t bytes() const;

private:
    friend RecallData& dataOf(Recall& recall);
    std::unique_ptr<RecallData> m_data;
};

} // namespace cutwater::logic
