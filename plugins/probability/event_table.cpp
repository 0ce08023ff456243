// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/probability/event_table.h"

#include <fmt/format.h>

#include <set>

namespace cutwater::probability_plugin {
namespace {

using sdk::Cell;
using sdk::ColumnType;

std::string sourceText(const project::SourceNote& source) {
    std::vector<std::string> parts;
    for (const std::string* part : {&source.document, &source.edition, &source.place})
        if (!part->empty()) parts.push_back(*part);
    std::string text = fmt::format("{}", fmt::join(parts, ", "));
    if (!source.tag.empty() && source.tag != source.document)
        text += fmt::format("{}[{}]", text.empty() ? "" : " ", source.tag);
    return text;
}

} // namespace

std::string sourcesOf(const project::Index& index, const project::FailureModel& model) {
    std::vector<std::string> texts;
    std::set<std::string> different;
    for (const project::Assignment& number : model.numbers) {
        const project::Quantity* const quantity = index.resolved(number.quantity);
        // A number that names a shared one may still say why it does.
        const project::SourceNote& source =
            quantity && number.quantity.source.empty() ? quantity->source : number.quantity.source;
        std::string text = sourceText(source);
        if (text.empty()) continue;
        different.insert(text);
        texts.push_back(fmt::format("{}: {}", project::facts(number.role).word, text));
    }
    if (different.empty()) return "no source given";
    if (different.size() == 1) return *different.begin();
    return fmt::format("{}", fmt::join(texts, "; "));
}

sdk::Table eventTable(const project::Project& project, const project::Index& index,
                      const sdk::tree::FigureBook& book) {
    sdk::Table table{"events",
                     "The numbers that went in",
                     {{"event", "Event", ColumnType::reference, ""},
                      {"name", "Name", ColumnType::text, ""},
                      {"probability", "Probability", ColumnType::probability, ""},
                      {"how", "How it was found", ColumnType::text, ""},
                      {"clock", "Clock", ColumnType::text, ""},
                      {"source", "Source", ColumnType::text, ""}}};
    for (const std::size_t position : book.events()) {
        const project::Event& event = project.events[position];
        const project::FailureModel* const model = index.modelOf(event);
        const reliability::EventProbability* const found = book.find(position);
        const bool clocked = model && model->clock != project::Clock::unstated;
        table.rows.push_back(
            {event.id, sdk::tree::readableName(index, event), found ? Cell(found->value) : Cell(),
             found ? Cell(found->how) : Cell(),
             clocked ? Cell(std::string(project::facts(model->clock).word)) : Cell(),
             model ? Cell(sourcesOf(index, *model)) : Cell()});
    }
    return table;
}

} // namespace cutwater::probability_plugin
