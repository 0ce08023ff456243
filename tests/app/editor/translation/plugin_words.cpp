// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/translation/plugin_words.h"

#include "app/paper/report_content.h"
#include "plugins/sdk/guard.h"

#include <algorithm>
#include <cctype>

namespace cutwater::test {

namespace {

// What is made of ids, dates and numbers of the project is nothing for a dictionary.
bool isWord(const std::string& text) {
    bool letter = false;
    for (const char c : text) {
        if (std::isdigit(static_cast<unsigned char>(c)) || c == '"') return false;
        letter |= std::isalpha(static_cast<unsigned char>(c)) != 0;
    }
    return letter;
}

} // namespace

std::set<std::string> pluginWords(sdk::Host& host, const project::Project& whole) {
    // One tree is enough to see every table, and all of them take a minute.
    project::Project demo = whole;
    demo.tops.resize(std::min<std::size_t>(demo.tops.size(), 1));
    std::set<std::string> words;
    const auto take = [&](const std::string& text) {
        if (isWord(text)) words.insert(text);
    };
    std::set<std::string> ids;
    for (const project::TopEvent& top : demo.tops)
        ids.insert(top.id);
    for (const sdk::PluginFacts& facts : host.plugins()) {
        if (facts.kind == sdk::PluginKind::layout) continue;
        take(facts.title);
        words.insert(facts.summary);
        if (facts.kind != sdk::PluginKind::analysis) continue;
        const sdk::Analysis* const analysis = host.analysis(facts.id);
        if (!analysis) continue;
        const auto parameters = sdk::parametersOf(*analysis, facts, &demo);
        if (!parameters) continue;
        for (const sdk::Parameter& parameter : *parameters) {
            take(parameter.name);
            if (!parameter.sentence.empty()) words.insert(parameter.sentence);
        }
        sdk::Values given = paper::standardValues(*parameters, demo);
        for (const sdk::Parameter& parameter : *parameters) {
            if (parameter.name == "samples") given.set("samples", std::int64_t{200});
            if (parameter.type == sdk::ParameterType::topEvent && parameter.name == "top")
                given.set("top", demo.tops.front().id);
        }
        const auto part = paper::computePart(*analysis, facts, demo, given, {});
        if (!part.content) continue;
        const sdk::Result& result = part.content->result;
        take(result.title);
        for (const sdk::Table& table : result.tables) {
            take(table.title);
            for (const sdk::Column& column : table.columns)
                if (!ids.count(column.title)) take(column.title);
        }
        for (const sdk::Series& series : result.series) {
            take(series.xTitle);
            take(series.yTitle);
        }
    }
    return words;
}

std::string asSource(const std::set<std::string>& words) {
    std::string text = "// SPDX-License-Identifier: GPL-3.0-or-later\n"
                       "// Words of the plug-ins, for the translators. Made by "
                       "share/scripts/translate; not built.\n"
                       "#include <QtGlobal>\n\n"
                       "// clang-format off\n"
                       "[[maybe_unused]] static const char* const kPluginWords[] = {\n";
    for (const std::string& word : words) {
        std::string quoted;
        for (const char c : word) {
            if (c == '"' || c == '\\') quoted += '\\';
            quoted += c;
        }
        text += "    QT_TRANSLATE_NOOP(\"Plugins\", \"" + quoted + "\"),\n";
    }
    return text + "};\n// clang-format on\n";
}

} // namespace cutwater::test
