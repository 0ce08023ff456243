// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/plan.h"

#include <algorithm>

namespace cutwater::drawing {
namespace {

// How far a subtree reaches to both sides of its root's middle, row by row.
struct Outline {
    std::vector<double> left, right;
    double width() const {
        return *std::max_element(right.begin(), right.end()) -
               *std::min_element(left.begin(), left.end());
    }
    std::size_t rows() const { return left.size(); }
};

Outline leaf(double width) {
    return {{-width / 2}, {width / 2}};
}

class Cutter {
public:
    Cutter(Unfolded tree, const PlanSizes& sizes)
        : m_items(std::move(tree.items)), m_sizes(sizes), m_outlines(m_items.size()),
          m_count(m_items.size(), 1) {
        // Children come after their parents: backwards is from the bottom up.
        for (std::size_t i = m_items.size(); i-- > 0;)
            settle(i);
    }

    std::vector<Item> take() { return std::move(m_items); }

private:
    bool isGate(std::size_t i) const {
        return m_items[i].role != ItemRole::reference && !m_items[i].children.empty();
    }

    const Outline& shown(std::size_t i) const { return m_items[i].cut ? m_box : m_outlines[i]; }

    // The subtree below a root of width `own` with these children.
    Outline join(double own, const std::vector<std::size_t>& children) const {
        Outline all; // relative to the first child's middle
        double last = 0;
        for (const std::size_t child : children) {
            const Outline& next = shown(child);
            double shift = 0;
            for (std::size_t row = 0; row < std::min(all.rows(), next.rows()); ++row)
                shift = std::max(shift, all.right[row] + m_sizes.nodeGap - next.left[row]);
            for (std::size_t row = 0; row < next.rows(); ++row) {
                if (row < all.rows()) {
                    all.left[row] = std::min(all.left[row], shift + next.left[row]);
                    all.right[row] = std::max(all.right[row], shift + next.right[row]);
                } else {
                    all.left.push_back(shift + next.left[row]);
                    all.right.push_back(shift + next.right[row]);
                }
            }
            last = shift;
        }
        Outline result = leaf(own);
        for (std::size_t row = 0; row < all.rows(); ++row) {
            result.left.push_back(all.left[row] - last / 2);
            result.right.push_back(all.right[row] - last / 2);
        }
        return result;
    }

    double heightOf(std::size_t rows) const {
        return static_cast<double>(rows) * (m_sizes.boxHeight + m_sizes.rowGap) - m_sizes.rowGap;
    }

    bool fits(const Outline& outline) const {
        return outline.rows() <= 2 || heightOf(outline.rows()) <= m_sizes.roomHeight
                   ? outline.width() <= m_sizes.roomWidth
                   : false;
    }

    Outline outlineOf(std::size_t i) const {
        return join(widthOf(m_items[i], m_sizes), m_items[i].children);
    }

    void settle(std::size_t i) {
        m_outlines[i] = leaf(widthOf(m_items[i], m_sizes));
        if (!isGate(i)) return;
        for (const std::size_t child : m_items[i].children)
            cutIfTooHigh(child);
        Outline outline = outlineOf(i);
        while (!fits(outline)) {
            const std::size_t victim = choose(i);
            if (victim == kNoItem) {
                continueElsewhere(i);
                outline = outlineOf(i);
                break;
            }
            m_items[victim].cut = true;
            outline = outlineOf(i);
        }
        m_outlines[i] = std::move(outline);
        for (const std::size_t child : m_items[i].children)
            m_count[i] += m_items[child].cut ? 1 : m_count[child];
    }

    void cutIfTooHigh(std::size_t child) {
        const std::size_t rows = m_outlines[child].rows() + 1;
        if (rows > 2 && isGate(child) && heightOf(rows) > m_sizes.roomHeight)
            m_items[child].cut = true;
    }

    // The smallest child whose removal is enough; where none is, the largest; kNoItem where no
    // child is left that gets narrower.
    std::size_t choose(std::size_t i) {
        std::size_t largest = kNoItem, enough = kNoItem;
        std::vector<std::size_t> candidates;
        for (const std::size_t child : m_items[i].children) {
            if (!isGate(child) || m_items[child].cut) continue;
            candidates.push_back(child);
            if (largest == kNoItem || m_outlines[child].width() > m_outlines[largest].width())
                largest = child;
        }
        constexpr std::size_t kMany = 40; // trying each of more would take long
        if (candidates.size() > kMany) return largest;
        for (const std::size_t child : candidates) {
            m_items[child].cut = true;
            if (fits(outlineOf(i)) && (enough == kNoItem || m_count[child] < m_count[enough]))
                enough = child;
            m_items[child].cut = false;
        }
        return enough != kNoItem ? enough : largest;
    }

    // All children are single boxes now, and still too many for a row. An and or an or gate goes on
    // one row lower, as a gate of the same kind among its inputs, which means the same; where the
    // sheet ends, and for any other gate, it goes on on another sheet.
    void continueElsewhere(std::size_t i) {
        const std::vector<std::size_t> all = m_items[i].children;
        const project::GateKind kind = m_items[i].gate->kind;
        const bool mayNest =
            kind == project::GateKind::andGate || kind == project::GateKind::orGate;
        std::vector<std::size_t> owners{i};
        std::size_t next = 0, rows = 2;
        while (true) {
            const std::size_t owner = owners.back();
            std::vector<std::size_t> here = nextRow(all, next);
            for (const std::size_t child : here)
                m_items[child].parent = owner;
            if (next < all.size()) {
                ++rows;
                const bool nests = mayNest && heightOf(rows) <= m_sizes.roomHeight;
                if (!nests) rows = 2;
                const std::size_t more = addContinuation(owner, !nests);
                // In the middle, so that its own inputs stand under the whole row.
                const auto place = nests
                                       ? here.begin() + static_cast<std::ptrdiff_t>(here.size() / 2)
                                       : here.end();
                here.insert(place, more);
                owners.push_back(more);
            }
            m_items[owner].children = std::move(here);
            if (owners.back() == owner) break;
        }
        for (std::size_t o = owners.size(); o-- > 1;) // from the bottom up
            m_outlines[owners[o]] = outlineOf(owners[o]);
    }

    // What fits beside a box for the rest.
    std::vector<std::size_t> nextRow(const std::vector<std::size_t>& all, std::size_t& next) const {
        std::vector<std::size_t> here;
        double used = 0;
        for (; next < all.size(); ++next) {
            const double after =
                used + shown(all[next]).width() + (here.empty() ? 0 : m_sizes.nodeGap);
            const double rest = next + 1 < all.size() ? m_sizes.boxWidth + m_sizes.nodeGap : 0;
            if (!here.empty() && after + rest > m_sizes.roomWidth) break;
            used = after;
            here.push_back(all[next]);
        }
        return here;
    }

    std::size_t addContinuation(std::size_t owner, bool onItsOwnSheet) {
        Item more;
        more.role = ItemRole::continuation;
        more.node = m_items[owner].node;
        more.gate = m_items[owner].gate;
        more.parent = owner;
        more.cut = onItsOwnSheet;
        m_items.push_back(std::move(more));
        m_outlines.push_back(m_box);
        m_count.push_back(1);
        return m_items.size() - 1;
    }

    std::vector<Item> m_items;
    PlanSizes m_sizes;
    std::vector<Outline> m_outlines;
    std::vector<std::size_t> m_count; // boxes of the subtree on its sheet
    Outline m_box = leaf(m_sizes.boxWidth);
};

} // namespace

double widthOf(const Item& item, const PlanSizes& sizes) {
    // A condition stands at the right; the left is kept free as well, so that lines end in the
    // middle.
    const bool wide = item.condition != kNoItem && item.role == ItemRole::itself;
    return wide ? 3 * sizes.boxWidth + 2 * sizes.besideGap : sizes.boxWidth;
}

Plan planSheets(Unfolded tree, PlanSizes sizes) {
    sizes.roomWidth = std::max(sizes.roomWidth, 3 * sizes.boxWidth + 2 * sizes.besideGap);
    Plan plan;
    plan.items = Cutter(std::move(tree), sizes).take();
    plan.sheetOf.assign(plan.items.size(), kNoItem);
    std::vector<std::size_t> roots{0};
    for (std::size_t s = 0; s < roots.size(); ++s) {
        PlannedSheet sheet;
        sheet.root = roots[s];
        std::vector<std::size_t> open{sheet.root};
        while (!open.empty()) {
            const std::size_t at = open.back();
            open.pop_back();
            const Item& item = plan.items[at];
            const bool moved = item.cut && at != sheet.root;
            const bool transfer = moved || item.role == ItemRole::reference;
            sheet.boxes.push_back({at, transfer});
            if (moved) roots.push_back(at);
            if (transfer) continue;
            plan.sheetOf[at] = s;
            open.insert(open.end(), item.children.rbegin(), item.children.rend());
            if (item.condition != kNoItem) open.push_back(item.condition);
        }
        plan.sheets.push_back(std::move(sheet));
    }
    return plan;
}

} // namespace cutwater::drawing
