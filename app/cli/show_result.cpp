// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/show_result.h"

#include "app/cli/delivery.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <string_view>

namespace cutwater::cli {

using results::renderCsv;
using results::renderJson;
using results::renderText;
namespace {

constexpr std::size_t kUsualWidth = 100;

std::size_t textWidth(const Globals& globals) {
    if (globals.width > 0) return static_cast<std::size_t>(globals.width);
    if (!globals.output.empty()) return kUsualWidth;
    if (const char* columns = std::getenv("COLUMNS")) {
        const std::string_view text(columns);
        std::size_t width = 0;
        const auto end = text.data() + text.size();
        if (std::from_chars(text.data(), end, width).ptr == end && width >= 20 && width <= 10000)
            return width;
    }
    winsize size{};
    if (isatty(STDOUT_FILENO) == 1 && ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 &&
        size.ws_col >= 20)
        return size.ws_col;
    return kUsualWidth;
}

// Empty where the table is there; everything else is then taken out, but never the cautions.
std::string keepOnly(const std::string& id, sdk::Result& result) {
    std::vector<std::string> ids;
    for (const sdk::Table& table : result.tables)
        ids.push_back(table.id);
    if (std::find(ids.begin(), ids.end(), id) == ids.end()) {
        const std::string near = sdk::nearest(id, ids);
        if (!near.empty()) return fmt::format("there is no table '{}'; did you mean {}?", id, near);
        return fmt::format("there is no table '{}'; there are {}", id, fmt::join(ids, ", "));
    }
    std::erase_if(result.tables, [&](const sdk::Table& table) { return table.id != id; });
    std::erase_if(result.marks, [&](const sdk::Mark& mark) { return mark.table != id; });
    result.series.clear();
    return {};
}

} // namespace

int showResult(sdk::Result result, const results::Origin& origin, Context& context) {
    const Globals& globals = context.globals;
    if (!globals.table.empty())
        if (const std::string mistake = keepOnly(globals.table, result); !mistake.empty())
            return usageError(mistake, context);
    switch (globals.format) {
    case Format::json: return deliver(renderJson(result, origin), context);
    case Format::csv: return deliver(renderCsv(result, !globals.table.empty()), context);
    case Format::text: break;
    }
    return deliver(renderText(result, textWidth(globals)), context);
}

} // namespace cutwater::cli
