// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/library/take.h"

#include <fmt/format.h>
#include <set>
#include <unordered_map>

namespace cutwater::library {

namespace {

using project::FailureMode;

std::string inWords(const project::Distribution& distribution) {
    if (const auto* d = std::get_if<project::Lognormal>(&distribution))
        return fmt::format("lognormal median {} EF {}", d->median, d->errorFactor);
    if (const auto* d = std::get_if<project::Gamma>(&distribution))
        return fmt::format("gamma shape {} rate {}", d->shape, d->rate);
    if (const auto* d = std::get_if<project::Beta>(&distribution))
        return fmt::format("beta {} {}", d->alpha, d->beta);
    if (const auto* d = std::get_if<project::Uniform>(&distribution))
        return fmt::format("uniform {} to {}", d->low, d->high);
    if (const auto* d = std::get_if<project::Triangular>(&distribution))
        return fmt::format("triangular {} {} {}", d->low, d->mode, d->high);
    return {};
}

std::string inWords(const std::vector<project::Check>& checks) {
    std::vector<std::string> all;
    for (const project::Check& check : checks)
        all.push_back(check.minutes
                          ? fmt::format("{} ({} min): {}", check.look, *check.minutes, check.tells)
                          : fmt::format("{}: {}", check.look, check.tells));
    return fmt::format("{}", fmt::join(all, "; "));
}

class Comparison {
public:
    Comparison(const project::Project& project, const std::vector<Library>& libraries)
        : m_project(project) {
        for (const Library& library : libraries)
            m_libraries.try_emplace(library.id, &library);
        for (const FailureMode& mode : project.modes)
            m_modesOf[mode.component].push_back(&mode);
    }

    std::vector<News> run() {
        for (std::size_t i = 0; i < m_project.components.size(); ++i)
            if (m_project.components[i].origin) component(i, *m_project.components[i].origin);
        return std::move(m_news);
    }

private:
    void component(std::size_t position, const project::LibraryOrigin& origin) {
        const auto library = m_libraries.find(origin.library);
        if (library == m_libraries.end()) {
            m_news.push_back({NewsKind::libraryMissing, position, {}, {}, origin.library, {}});
            return;
        }
        const ComponentType* type = findType(*library->second, origin.type);
        if (!type) {
            m_news.push_back({NewsKind::typeGone, position, {}, {}, origin.type, {}});
            return;
        }
        if (type->revision == origin.revision) return;
        m_news.push_back({NewsKind::revision, position, {}, {}, origin.revision, type->revision});
        std::set<std::string_view> here;
        for (const FailureMode* mode : m_modesOf[m_project.components[position].id]) {
            if (mode->libraryMode.empty()) continue;
            here.insert(mode->libraryMode);
            const Mode* there = findMode(*type, mode->libraryMode);
            if (!there)
                m_news.push_back({NewsKind::modeGone, position, mode->id, {}, mode->name, {}});
            else
                compare(position, *mode, *there);
        }
        for (const Mode& mode : type->modes)
            if (!here.contains(mode.facts.id))
                m_news.push_back(
                    {NewsKind::modeAdded, position, mode.facts.id, {}, {}, mode.facts.name});
    }

    void compare(std::size_t position, const FailureMode& here, const Mode& there) {
        const auto differs = [&](const char* fact, const std::string& a, const std::string& b) {
            if (a != b) m_news.push_back({NewsKind::differs, position, here.id, fact, a, b});
        };
        const FailureMode& facts = there.facts;
        differs("name", here.name, facts.name);
        differs("causes", fmt::format("{}", fmt::join(here.causes, "; ")),
                fmt::format("{}", fmt::join(facts.causes, "; ")));
        differs("local effect", here.localEffect, facts.localEffect);
        differs("detection", here.detection, facts.detection);
        differs("checks", inWords(here.checks), inWords(facts.checks));
        differs("dormant", here.dormant ? "yes" : "no", facts.dormant ? "yes" : "no");
        if (!(here.model == facts.model))
            differs("failure model", library::inWords(here.model), library::inWords(facts.model));
    }

    const project::Project& m_project;
    std::unordered_map<std::string_view, const Library*> m_libraries;
    std::unordered_map<std::string_view, std::vector<const FailureMode*>> m_modesOf;
    std::vector<News> m_news;
};

} // namespace

std::string inWords(const project::FailureModel& model) {
    if (model.kind == project::ModelKind::none) return "none";
    std::string words(project::facts(model.kind).word);
    for (const project::Assignment& number : model.numbers) {
        const project::Quantity& quantity = number.quantity;
        words += fmt::format(", {} ", project::facts(number.role).word);
        words += !quantity.parameter.empty()
                     ? "as parameter " + quantity.parameter
                     : fmt::format("{} {}", quantity.value, project::facts(quantity.unit).symbol);
        if (const std::string spread = inWords(quantity.uncertainty); !spread.empty())
            words += ", " + spread;
        if (!quantity.source.document.empty())
            words += fmt::format(" ({}{}{})", quantity.source.document,
                                 quantity.source.tag.empty() ? "" : ", ", quantity.source.tag);
    }
    return words;
}

std::vector<News> newsOf(const project::Project& project, const std::vector<Library>& libraries) {
    return Comparison(project, libraries).run();
}

} // namespace cutwater::library
