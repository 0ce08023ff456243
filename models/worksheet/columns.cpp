// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/columns.h"

#include "models/worksheet/column_texts.h"

#include <fmt/format.h>

namespace cutwater::worksheet {

namespace {

using project::FailureMode;
using Write = std::function<std::optional<std::string>(const std::string&, FailureMode&)>;
using Read = std::function<Cell(const Sheet&, const Row&)>;
using Aliases = std::vector<std::string_view>;

Cell cellOf(const std::string& text) {
    return text.empty() ? Cell() : Cell(text);
}
template <typename T>
Cell cellOf(const std::optional<T>& value) {
    if (!value) return {};
    if constexpr (std::is_integral_v<T>)
        return static_cast<std::int64_t>(*value);
    else
        return *value;
}

Column text(std::string_view id, std::string_view title, std::string FailureMode::*member,
            Aliases aliases = {}) {
    return {id,
            title,
            ColumnKind::text,
            {},
            std::move(aliases),
            [member](const Sheet&, const Row& row) { return cellOf(row.facts->*member); },
            [member](const std::string& typed, FailureMode& mode) -> std::optional<std::string> {
                mode.*member = typed;
                return {};
            }};
}

Column date(std::string_view id, std::string_view title, std::string FailureMode::*member) {
    Column column = text(id, title, member);
    column.write = [member](const std::string& typed, FailureMode& mode) {
        return writeDate(typed, mode.*member);
    };
    return column;
}

Column rating(std::string_view id, std::string_view title, std::optional<int> FailureMode::*member,
              Aliases aliases = {}) {
    return {id,
            title,
            ColumnKind::whole,
            {},
            std::move(aliases),
            [member](const Sheet&, const Row& row) { return cellOf(row.facts->*member); },
            [member](const std::string& typed, FailureMode& mode) {
                return writeRating(typed, mode.*member);
            }};
}

Column share(std::string_view id, std::string_view title,
             std::optional<project::Quantity> FailureMode::*member, Aliases aliases = {}) {
    return {id,
            title,
            ColumnKind::number,
            {},
            std::move(aliases),
            [member](const Sheet&, const Row& row) {
                const auto& quantity = row.facts->*member;
                if (!quantity) return Cell();
                if (!quantity->parameter.empty()) return Cell(kSharedNumber + quantity->parameter);
                return Cell(quantity->value);
            },
            [member](const std::string& typed, FailureMode& mode) {
                return writeShare(typed, mode.*member);
            }};
}

Column worked(std::string_view id, std::string_view title, ColumnKind kind, Read read,
              std::string_view unit = {}) {
    return {id, title, kind, unit, {}, std::move(read), {}};
}

Column listed(std::string_view id, std::string_view title, Aliases aliases, Read read,
              Write write) {
    return {id, title, ColumnKind::text, {}, std::move(aliases), std::move(read), std::move(write)};
}

// One field of all actions of a mode, side by side.
Column ofActions(std::string_view id, std::string_view title, Aliases aliases,
                 std::string project::Action::*member, bool isDate) {
    return listed(
        id, title, std::move(aliases),
        [member](const Sheet&, const Row& row) {
            std::vector<std::string> all;
            for (const project::Action& action : row.facts->actions)
                all.push_back(action.*member);
            return cellOf(joined(all));
        },
        [member, isDate](const std::string& typed,
                         FailureMode& mode) -> std::optional<std::string> {
            // Without its words an action is none.
            if (member == &project::Action::what && trimmed(typed).empty()) {
                mode.actions.clear();
                return {};
            }
            return writeActions(typed, mode,
                                [&](const std::string& part,
                                    project::Action& action) -> std::optional<std::string> {
                                    if (isDate) return writeDate(part, action.*member);
                                    action.*member = part;
                                    return {};
                                });
        });
}

std::vector<Column> rowColumns() {
    return {
        worked("id", "Row", ColumnKind::text,
               [](const Sheet&, const Row& row) { return cellOf(row.facts->id); }),
        listed("component", "Component", {"item", "tag", "equipment"},
               [](const Sheet&, const Row& row) {
                   if (!row.component) return cellOf(row.facts->component);
                   return cellOf(row.component->tag.empty() ? row.component->id
                                                            : row.component->tag);
               },
               {}),
        worked("place", "Where it sits", ColumnKind::text,
               [](const Sheet&, const Row& row) { return cellOf(row.place); }),
        worked("function", "Function", ColumnKind::text,
               [](const Sheet&, const Row& row) {
                   return row.component ? cellOf(row.component->function) : Cell();
               }),
        worked("location", "Location", ColumnKind::text,
               [](const Sheet&, const Row& row) {
                   return row.component ? cellOf(row.component->location) : Cell();
               }),
        worked("supplied-by", "Supplied by", ColumnKind::text,
               [](const Sheet&, const Row& row) {
                   std::vector<std::string> ids;
                   if (row.component)
                       for (const project::Reference& supplier : row.component->suppliedBy)
                           ids.push_back(supplier.id);
                   return cellOf(joined(ids));
               }),
        text("operating-mode", "Operating mode", &FailureMode::operatingMode),
        text("mode", "Failure mode", &FailureMode::name, {"failure", "potential failure mode"}),
        listed(
            "causes", "Causes", {"cause", "failure cause", "potential causes"},
            [](const Sheet&, const Row& row) { return cellOf(joined(row.facts->causes)); },
            [](const std::string& typed, FailureMode& mode) -> std::optional<std::string> {
                mode.causes = split(typed);
                return {};
            }),
        text("local-effect", "Local effect", &FailureMode::localEffect,
             {"effect", "local effects"}),
        text("next-effect", "Next higher effect", &FailureMode::nextEffect,
             {"next effect", "next level effect"}),
        text("end-effect", "End effect", &FailureMode::endEffect,
             {"final effect", "effect on plant"}),
        text("detection", "Detected by", &FailureMode::detection,
             {"detection method", "how detected", "how it is noticed"}),
        text("compensation", "Compensating provision", &FailureMode::compensation,
             {"compensating provisions", "compensation", "safeguards"}),
        text("proved-by", "Proved by", &FailureMode::provedBy, {"test"}),
        date("proved-on", "Proved on", &FailureMode::provedOn),
        listed(
            "dormant", "Dormant", {"hidden"},
            [](const Sheet&, const Row& row) {
                return row.dormant ? Cell(std::string("yes")) : Cell();
            },
            [](const std::string& typed, FailureMode& mode) {
                return writeTruth(typed, mode.dormant);
            }),
        text("severity", "Severity", &FailureMode::severity, {"severity category", "category"}),
    };
}

// When a dormant failure is looked for: facts of the failure model.
void addTests(std::vector<Column>& all) {
    Column interval = listed(
        "test-interval", "Tested every", {},
        [](const Sheet&, const Row& row) {
            const project::Quantity* every = row.facts->model.find(project::Role::interval);
            return every ? cellOf(toWords(*every)) : Cell();
        },
        [](const std::string& typed, FailureMode& mode) {
            return writeInterval(typed, mode.model);
        });
    interval.ofModel = true;
    Column last = listed(
        "last-test", "Last test", {},
        [](const Sheet&, const Row& row) { return cellOf(row.facts->model.lastTest); },
        [](const std::string& typed, FailureMode& mode) -> std::optional<std::string> {
            if (mode.model.kind != project::ModelKind::tested && !trimmed(typed).empty())
                return kNoTests;
            return writeDate(typed, mode.model.lastTest);
        });
    last.ofModel = true;
    all.push_back(std::move(interval));
    all.push_back(std::move(last));
    all.push_back(worked("next-test", "Next test", ColumnKind::text,
                         [](const Sheet&, const Row& row) { return cellOf(row.nextTest); }));
}

void addRatings(std::vector<Column>& all) {
    all.push_back(rating("severity-rating", "S", &FailureMode::severityRating, {"sev"}));
    all.push_back(
        rating("occurrence-rating", "O", &FailureMode::occurrenceRating, {"occ", "occurrence"}));
    all.push_back(rating("detection-rating", "D", &FailureMode::detectionRating, {"det"}));
    all.push_back(worked("rpn", "RPN", ColumnKind::whole,
                         [](const Sheet&, const Row& row) { return cellOf(row.rpn); }));
    all.push_back(
        worked("computed-occurrence", "O by frequency", ColumnKind::whole,
               [](const Sheet&, const Row& row) { return cellOf(row.computedOccurrence); }));
    all.push_back(worked(
        "frequency", "Frequency", ColumnKind::number,
        [](const Sheet&, const Row& row) { return cellOf(row.frequency.perYear); }, "/y"));
    all.push_back(worked("frequency-how", "From", ColumnKind::text,
                         [](const Sheet&, const Row& row) { return cellOf(row.frequency.how); }));
    all.push_back(share("effect-chance", "beta", &FailureMode::effectChance, {"\xCE\xB2"}));
    all.push_back(share("mode-ratio", "alpha", &FailureMode::ratio, {"\xCE\xB1"}));
    all.push_back(worked("criticality", "Cm", ColumnKind::number, [](const Sheet&, const Row& row) {
        return cellOf(row.criticality.number);
    }));
    all.push_back(worked("item-criticality", "Cr", ColumnKind::number,
                         [](const Sheet&, const Row& row) { return cellOf(row.itemCriticality); }));
    all.push_back(worked("level", "Level", ColumnKind::text, [](const Sheet&, const Row& row) {
        return row.criticality.level == ' ' ? Cell() : Cell(std::string(1, row.criticality.level));
    }));
    const auto index = [&](std::string_view id, std::string_view title, auto read) {
        all.push_back(worked(id, title, ColumnKind::whole, read));
    };
    index("frequency-index", "FI", [](const Sheet&, const Row& row) {
        return row.frequencyIndex ? cellOf(std::optional(row.frequencyIndex->index)) : Cell();
    });
    index("severity-index", "SI",
          [](const Sheet&, const Row& row) { return cellOf(row.severityIndex); });
    index("risk-index", "RI", [](const Sheet&, const Row& row) { return cellOf(row.riskIndex); });
}

void addActions(std::vector<Column>& all) {
    using project::Action;
    all.push_back(ofActions("action", "Recommended action",
                            {"recommended actions", "actions", "recommendation"}, &Action::what,
                            false));
    all.push_back(ofActions("owner", "Owner", {"responsible", "who"}, &Action::owner, false));
    all.push_back(ofActions("due", "Due", {"due date", "target date"}, &Action::due, true));
    all.push_back(listed(
        "state", "State", {"status"},
        [](const Sheet&, const Row& row) {
            std::vector<std::string> states;
            for (const Action& action : row.facts->actions)
                states.emplace_back(word(action.state));
            return cellOf(joined(states));
        },
        [](const std::string& typed, FailureMode& mode) {
            return writeActions(typed, mode, [](const std::string& part, Action& action) {
                return writeState(part, action.state);
            });
        }));
    all.push_back(ofActions("done-on", "Done on", {}, &Action::doneOn, true));
    all.push_back(ofActions("proof", "How it was proved", {}, &Action::proof, false));
    all.push_back(rating("severity-after", "S after", &FailureMode::severityAfter));
    all.push_back(rating("occurrence-after", "O after", &FailureMode::occurrenceAfter));
    all.push_back(rating("detection-after", "D after", &FailureMode::detectionAfter));
    all.push_back(worked("rpn-after", "RPN after", ColumnKind::whole,
                         [](const Sheet&, const Row& row) { return cellOf(row.rpnAfter); }));
    all.push_back(text("remark", "Remark", &FailureMode::remark, {"remarks", "notes", "comment"}));
    all.push_back(worked("gaps", "Missing", ColumnKind::text, [](const Sheet&, const Row& row) {
        return cellOf(fmt::format("{}", fmt::join(gapsOf(row), "; ")));
    }));
}

} // namespace

const std::vector<Column>& columns() {
    static const std::vector<Column> all = [] {
        std::vector<Column> made = rowColumns();
        const auto severity = std::prev(made.end());
        Column last = std::move(*severity);
        made.erase(severity);
        addTests(made);
        made.push_back(std::move(last));
        addRatings(made);
        addActions(made);
        return made;
    }();
    return all;
}

const Column* findColumn(std::string_view id) {
    for (const Column& column : columns())
        if (column.id == id) return &column;
    return nullptr;
}

std::string toText(const Cell& cell) {
    if (const auto* text = std::get_if<std::string>(&cell)) return *text;
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) return fmt::format("{}", *whole);
    if (const auto* number = std::get_if<double>(&cell)) return fmt::format("{}", *number);
    return {};
}

} // namespace cutwater::worksheet
