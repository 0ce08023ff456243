// SPDX-License-Identifier: GPL-3.0-or-later
// engine_table: measures the engine beside BuDDy on every family and prints one table. Ends with 1
// where any answer differs from any other, with 2 where it was called wrongly.
#include "models/logic/keep_memory.h"
#include "tests/bench/table.h"

#include <fmt/format.h>

#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <set>

using namespace bench;

namespace {

constexpr const char* kHelp =
    R"(usage: engine_table [options]

  --family NAME     only this family (plant, large, votes, modules, chains, mixed, meshed); may repeat
  --only NAME       only the instance of this name; may repeat
  --list            names of the instances, events and gates, without measuring
  --limit SECONDS   processor time allowed for one run (20)
  --memory MB       memory allowed for one run (2048)
  --runs N          the median of so many (3)
  --largest SIZE    leave out the members of a series above this size
  --threads N       ours with so many threads (1)
  --sift            BuDDy's automatic reordering too
  --thorough        stock tables for BuDDy even where ample ones gave no answer
  --no-buddy        ours alone
  --no-counts       do not count sets with BuDDy
  --text FILE       write the table there too, after every line
  --markdown FILE   the same as Markdown
  --json FILE       all that was measured
)";

struct Options {
    std::set<std::string> families, names;
    MeasureWish wish;
    double largest = 0;
    bool list = false;
    std::string text, markdown, json;
};

[[noreturn]] void wrongCall(const std::string& why) {
    fmt::print(stderr, "engine_table: {}\n{}", why, kHelp);
    std::exit(2);
}

double number(const std::string& option, const std::string& text, double lowest) {
    char* end = nullptr;
    const double value = std::strtod(text.c_str(), &end);
    if (text.empty() || *end != 0 || !(value >= lowest && value <= 1e9))
        wrongCall(fmt::format("{} needs a number from {:g} on, not '{}'", option, lowest, text));
    return value;
}

bool familyExists(const std::string& name) {
    for (const Recipe& recipe : allRecipes())
        if (word(recipe.family) == name) return true;
    return false;
}

Options read(int count, char** words) {
    Options options;
    for (int i = 1; i < count; ++i) {
        const std::string option = words[i];
        const auto value = [&]() -> std::string {
            if (i + 1 >= count) wrongCall(option + " needs a value");
            return words[++i];
        };
        if (option == "--help") {
            fmt::print("{}", kHelp);
            std::exit(0);
        } else if (option == "--family") {
            const std::string name = value();
            if (!familyExists(name)) wrongCall("there is no family '" + name + "'");
            options.families.insert(name);
        } else if (option == "--only") {
            const std::string name = value();
            if (!findRecipe(name)) wrongCall("there is no instance '" + name + "'; see --list");
            options.names.insert(name);
        } else if (option == "--list") {
            options.list = true;
        } else if (option == "--limit") {
            options.wish.limits.seconds = number(option, value(), 1);
        } else if (option == "--memory") {
            options.wish.limits.memoryBytes = static_cast<std::size_t>(number(option, value(), 16))
                                              << 20;
        } else if (option == "--runs") {
            options.wish.runs = static_cast<int>(number(option, value(), 1));
        } else if (option == "--threads") {
            options.wish.threads = static_cast<unsigned>(number(option, value(), 1));
        } else if (option == "--largest") {
            options.largest = number(option, value(), 1);
        } else if (option == "--sift") {
            options.wish.sift = true;
        } else if (option == "--thorough") {
            options.wish.thorough = true;
        } else if (option == "--no-buddy") {
            options.wish.buddy = false;
        } else if (option == "--no-counts") {
            options.wish.countWithBuddy = false;
        } else if (option == "--text") {
            options.text = value();
        } else if (option == "--markdown") {
            options.markdown = value();
        } else if (option == "--json") {
            options.json = value();
        } else {
            wrongCall("there is no option '" + option + "'");
        }
    }
    return options;
}

bool wanted(const Recipe& recipe, const Options& options) {
    if (options.largest > 0 && recipe.size > options.largest) return false;
    if (options.families.empty() && options.names.empty()) return true;
    return options.families.contains(word(recipe.family)) || options.names.contains(recipe.name);
}

std::string processorName() {
    std::ifstream info("/proc/cpuinfo");
    std::string line;
    int processors = 0;
    std::string name = "unknown processor";
    while (std::getline(info, line)) {
        if (line.starts_with("processor")) ++processors;
        if (line.starts_with("model name")) name = line.substr(line.find(':') + 2);
    }
    return fmt::format("{}, {} processors", name, processors);
}

std::string now() {
    const std::time_t time = std::time(nullptr);
    char text[32];
    std::strftime(text, sizeof text, "%Y-%m-%d %H:%M UTC", std::gmtime(&time));
    return text;
}

void writeFile(const std::string& path, const std::string& text) {
    if (path.empty()) return;
    std::ofstream file(path);
    file << text;
    if (!file.flush()) wrongCall("cannot write to " + path);
}

} // namespace

int main(int count, char** words) {
    cutwater::logic::keepMemory();
    const Options options = read(count, words);
#ifdef __OPTIMIZE__
    const std::string build = "g++ " __VERSION__ ", optimised";
#else
    const std::string build = "g++ " __VERSION__ ", NOT optimised";
#endif
    const Conditions conditions{processorName(), build, now(), options.wish};
    std::vector<Row> rows;
    bool right = true;
    for (const Recipe& recipe : allRecipes()) {
        if (!wanted(recipe, options)) continue;
        const Instance instance = recipe.make();
        if (options.list) {
            const Census size = census(instance);
            fmt::print("{:<8} {:<22} {:>8} events {:>8} gates {:>7} shared gates {:>7} shared "
                       "events, depth {}\n",
                       word(recipe.family), recipe.name, size.events, size.gates, size.sharedGates,
                       size.sharedEvents, size.depth);
            continue;
        }
        Row row;
        row.recipe = &recipe;
        row.measured = measure(instance, recipe.known.coherent, options.wish);
        check(row, instance);
        right &= row.wrong.empty();
        fmt::print(stderr, "{}\n", recipe.name);
        rows.push_back(std::move(row));
        writeFile(options.text, asText(rows, conditions));
        writeFile(options.markdown, asMarkdown(rows, conditions));
        writeFile(options.json, asJson(rows, conditions));
    }
    if (!options.list) fmt::print("{}", asText(rows, conditions));
    return right ? 0 : 1;
}
