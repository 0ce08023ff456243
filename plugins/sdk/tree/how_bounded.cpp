// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/how_bounded.h"

#include <fmt/format.h>

namespace cutwater::sdk::tree {

std::string howBounded(const logic::Bounds& bounds) {
    switch (bounds.method) {
    case logic::BoundsMethod::exact: return "its topmost part is solved, others are bounded";
    case logic::BoundsMethod::cases:
        return fmt::format("{} cases of its shared events were told apart, and in each of them the "
                           "functions below the top were taken one by one and in pairs",
                           bounds.cases);
    case logic::BoundsMethod::cutOff: break;
    }
    return fmt::format("sets less probable than {:.0e} were left out, and all that was left out "
                       "together happens with at most {:.3g}",
                       bounds.cutOff, bounds.dropped);
}

} // namespace cutwater::sdk::tree
