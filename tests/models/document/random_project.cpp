// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/models/document/random_project.h"

#include <cmath>
#include <limits>
#include <random>

namespace cutwater::test {

using namespace project;

namespace {

class Chance {
public:
    Chance(std::uint32_t seed, bool kept) : m_random(seed), m_kept(kept) {}

    int below(int end) { return static_cast<int>(m_random() % static_cast<std::uint32_t>(end)); }
    bool coin() { return below(2) == 0; }

    std::string text() {
        static const char* const pieces[] = {
            "",          "a", " ",    "\n", "\r", "\t",     "\"",           "'",     "&",
            "<",         ">", "]]>",  "ü",  "🔥",  "\u2028", "\xEF\xBF\xBD", "&amp;", "<!--",
            "carbon on", "0", "\r\n", "  ", "%s", "{}",     "é\u0301"};
        std::string text;
        for (int i = below(6); i > 0; --i)
            text += pieces[below(static_cast<int>(std::size(pieces)))];
        return text;
    }
    std::vector<std::string> texts() {
        std::vector<std::string> all;
        for (int i = below(3); i > 0; --i)
            all.push_back(text());
        return all;
    }
    double number() {
        static const double special[] = {0.0,
                                         0.1,
                                         1e-300,
                                         1e300,
                                         std::numeric_limits<double>::max(),
                                         std::numeric_limits<double>::min(),
                                         std::numeric_limits<double>::denorm_min(),
                                         -1.0,
                                         3e-07,
                                         1.0 / 3};
        if (coin()) return special[below(static_cast<int>(std::size(special)))];
        return std::ldexp(static_cast<double>(m_random()) / 3, below(400) - 200);
    }
    std::optional<double> maybeNumber() { return coin() ? std::optional(number()) : std::nullopt; }
    std::optional<int> maybeInt() {
        return coin() ? std::optional(static_cast<int>(m_random())) : std::nullopt;
    }
    Id id() { return "id-" + std::to_string(m_random()); }
    Id maybeId() { return coin() ? id() : Id(); }
    Reference reference() { return {id(), {}}; }
    std::vector<Reference> references() {
        std::vector<Reference> all;
        for (int i = below(4); i > 0; --i)
            all.push_back(reference());
        return all;
    }
    Kept kept() {
        Kept kept;
        if (!m_kept) return kept;
        if (below(3) == 0) kept.attributes.emplace_back("x-new", text());
        if (below(3) == 0)
            kept.elements.push_back("<x-thing a=\"1\">\n  <x-deep>é &amp;</x-deep>\r\n</x-thing>");
        return kept;
    }
    SourceNote source() {
        SourceNote note;
        if (coin()) note = {text(), text(), text(), text(), text(), kept()};
        return note;
    }
    Distribution distribution() {
        switch (below(6)) {
        case 1: return Lognormal{number(), number()};
        case 2: return Gamma{number(), number()};
        case 3: return Beta{number(), number()};
        case 4: return Uniform{number(), number()};
        case 5: return Triangular{number(), number(), number()};
        default: return {};
        }
    }
    Quantity quantity() {
        Quantity q;
        q.value = number();
        q.unit = static_cast<Unit>(below(static_cast<int>(allUnits().size())));
        q.uncertainty = distribution();
        q.source = source();
        q.parameter = below(4) == 0 ? id() : Id();
        q.kept = kept();
        return q;
    }
    Action action() {
        return {text(), text(), text(), static_cast<ActionState>(below(5)),
                text(), text(), {},     kept()};
    }
    std::vector<RatingLevel> scale() {
        std::vector<RatingLevel> all;
        for (int i = below(3); i > 0; --i)
            all.push_back({maybeInt(), text(), text(), maybeNumber(), {}, kept()});
        return all;
    }
    std::vector<RiskLevel> levels() {
        std::vector<RiskLevel> all;
        for (int i = below(3); i > 0; --i)
            all.push_back({maybeInt(), text(), text(), maybeNumber(), {}, kept()});
        return all;
    }
    FailureModel model() {
        FailureModel model;
        if (below(4) == 0) return model;
        model.kind = static_cast<ModelKind>(below(static_cast<int>(allModels().size())));
        model.clock = static_cast<Clock>(below(static_cast<int>(allClocks().size())));
        for (const RoleFacts& role : allRoles())
            if (below(5) == 0) model.set(role.role, quantity());
        model.lastTest = text();
        model.kept = kept();
        return model;
    }

private:
    std::mt19937 m_random;
    bool m_kept;
};

} // namespace

Project randomProject(std::uint32_t seed, int size, bool withKept) {
    Chance c(seed, withKept);
    Project p;
    p.name = c.text();
    p.plant = c.text();
    p.description = c.text();
    p.revision = c.text();
    p.date = c.text();
    p.preparedBy = c.text();
    p.checkedBy = c.text();
    p.operatingMode = c.text();
    p.rules = c.texts();
    p.assumptions = c.texts();
    p.cautions = c.texts();
    const auto some = [&] { return c.below(size + 1); };
    for (int i = some(); i > 0; --i)
        p.parameters.push_back({c.id(), c.text(), c.quantity(), {}, c.kept()});
    for (int i = some(); i > 0; --i)
        p.components.push_back(
            {c.id(),
             c.text(),
             c.text(),
             c.text(),
             c.text(),
             c.text(),
             c.maybeId(),
             c.references(),
             c.coin() ? std::optional(c.quantity()) : std::nullopt,
             c.coin() ? std::optional(LibraryOrigin{c.id(), c.id(), c.text(), c.kept()})
                      : std::nullopt,
             c.text(),
             {},
             c.kept()});
    for (int i = some(); i > 0; --i) {
        FailureMode m;
        m.id = c.id();
        m.component = c.maybeId();
        m.causes = c.texts();
        for (std::string* text :
             {&m.name, &m.localEffect, &m.nextEffect, &m.endEffect, &m.detection, &m.compensation,
              &m.provedBy, &m.provedOn, &m.severity, &m.operatingMode, &m.libraryMode, &m.remark})
            *text = c.text();
        m.dormant = c.coin();
        m.model = c.model();
        m.kept = c.kept();
        m.severityAfter = c.maybeInt();
        m.occurrenceAfter = c.maybeInt();
        m.detectionAfter = c.maybeInt();
        if (c.coin()) m.ratio = c.quantity();
        if (c.coin()) m.effectChance = c.quantity();
        for (int k = c.below(3); k > 0; --k)
            m.actions.push_back(c.action());
        m.severityRating = c.maybeInt();
        m.occurrenceRating = c.maybeInt();
        m.detectionRating = c.maybeInt();
        for (int k = c.below(3); k > 0; --k)
            m.checks.push_back({c.text(), c.maybeNumber(), c.text(), {}, c.kept()});
        p.modes.push_back(std::move(m));
    }
    for (int i = some(); i > 0; --i) {
        Connection k{c.id(),
                     c.text(),
                     c.text(),
                     c.coin() ? SupplyPath::feed : SupplyPath::back,
                     c.maybeId(),
                     c.maybeId(),
                     c.references(),
                     {},
                     {},
                     c.kept()};
        if (c.coin()) k.capacity = c.quantity();
        p.connections.push_back(std::move(k));
    }
    for (int i = some(); i > 0; --i)
        p.events.push_back({c.id(),
                            c.text(),
                            static_cast<EventKind>(c.below(4)),
                            c.maybeId(),
                            c.model(),
                            c.coin(),
                            c.text(),
                            {},
                            c.kept()});
    for (int i = some(); i > 0; --i)
        p.gates.push_back({c.id(),
                           c.text(),
                           static_cast<GateKind>(c.below(7)),
                           c.maybeInt(),
                           c.references(),
                           {c.maybeId(), {}},
                           c.text(),
                           {},
                           c.kept()});
    for (int i = some(); i > 0; --i)
        p.tops.push_back({c.id(),
                          c.text(),
                          {c.maybeId(), {}},
                          c.text(),
                          c.text(),
                          c.texts(),
                          c.coin() ? std::optional(c.quantity()) : std::nullopt,
                          c.text(),
                          {},
                          c.kept()});
    for (int i = some(); i > 0; --i) {
        CommonCauseGroup g{c.id(), c.text(),       static_cast<CommonCauseKind>(c.below(4)),
                           {},     c.references(), c.text(),
                           {},     c.kept()};
        for (int k = c.below(4); k > 0; --k)
            g.factors.push_back(c.quantity());
        p.commonCauses.push_back(std::move(g));
    }
    for (int i = some(); i > 0; --i)
        p.exposures.push_back({c.maybeId(),
                               c.text(),
                               c.text(),
                               c.maybeNumber(),
                               c.maybeNumber(),
                               c.maybeNumber(),
                               c.source(),
                               {},
                               c.kept()});
    for (int i = some(); i > 0; --i)
        p.log.push_back(
            {c.id(),          c.text(),        c.text(),   c.text(),
             c.maybeNumber(), c.maybeNumber(), c.text(),   c.maybeId(),
             c.maybeId(),     c.text(),        c.text(),   c.text(),
             c.maybeId(),     c.maybeNumber(), c.text(),   static_cast<CauseStatus>(c.below(3)),
             c.text(),        c.text(),        c.source(), {},
             c.kept()});
    for (int i = some(); i > 0; --i) {
        Assessment a{c.id(),   c.text(), static_cast<AssessmentState>(c.below(3)),
                     {},       {},       c.texts(),
                     c.text(), c.text(), c.text(),
                     {},       c.kept()};
        for (int k = c.below(3); k > 0; --k)
            a.forced.push_back({c.reference(), c.coin(), c.kept()});
        if (c.coin()) a.duration = c.quantity();
        p.assessments.push_back(std::move(a));
    }
    if (c.coin()) p.worksheet.operatingTime = c.quantity();
    p.worksheet.severityScale = c.scale();
    p.worksheet.occurrenceScale = c.scale();
    p.worksheet.detectionScale = c.scale();
    if (c.coin()) {
        RiskMatrix& matrix = p.worksheet.matrix;
        matrix.name = c.text();
        matrix.frequencies = c.levels();
        matrix.severities = c.levels();
        for (int k = c.below(3); k > 0; --k)
            matrix.bands.push_back({c.maybeInt(), c.text(), c.text(), {}, c.kept()});
        matrix.source = c.source();
        matrix.kept = c.kept();
    }
    if (withKept) {
        p.newerMinorVersion = 2 + c.below(9);
        p.kept = c.kept();
        for (const char* section : {"project", "parameters", "events", "assessments"})
            if (const Kept kept = c.kept(); !kept.empty())
                p.keptInSections.emplace_back(section, kept);
    }
    return p;
}

} // namespace cutwater::test
