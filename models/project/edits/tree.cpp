// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/tree.h"

#include <algorithm>
#include <cctype>
#include <fmt/format.h>

namespace cutwater::project::edits {

namespace {

constexpr std::size_t kLongestWords = 60; // of a name in a sentence
constexpr std::size_t kLongestSlug = 48;

std::string shortened(std::string text) {
    if (text.size() <= kLongestWords) return text;
    std::size_t end = kLongestWords;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
        --end; // never within a character
    return text.substr(0, end) + "...";
}

} // namespace

Tree::Tree(const Project& from) : project(from) {
    indexAll();
}

void Tree::indexAll() {
    m_nodes.clear();
    m_nodes.reserve(project.events.size() + project.gates.size());
    for (std::size_t i = 0; i < project.events.size(); ++i)
        m_nodes.emplace(project.events[i].id, static_cast<std::int64_t>(i));
    for (std::size_t i = 0; i < project.gates.size(); ++i)
        m_nodes.emplace(project.gates[i].id, -1 - static_cast<std::int64_t>(i));
}

Event* Tree::event(std::string_view id) {
    const auto found = m_nodes.find(std::string(id));
    if (found == m_nodes.end() || found->second < 0) return nullptr;
    return &project.events[static_cast<std::size_t>(found->second)];
}

Gate* Tree::gate(std::string_view id) {
    const auto found = m_nodes.find(std::string(id));
    if (found == m_nodes.end() || found->second >= 0) return nullptr;
    return &project.gates[static_cast<std::size_t>(-1 - found->second)];
}

TopEvent* Tree::top(std::string_view id) {
    const auto found = std::find_if(project.tops.begin(), project.tops.end(),
                                    [&](const TopEvent& each) { return each.id == id; });
    return found == project.tops.end() ? nullptr : &*found;
}

void Tree::addEvent(Event made) {
    m_nodes.emplace(made.id, static_cast<std::int64_t>(project.events.size()));
    project.events.push_back(std::move(made));
}

void Tree::addGate(Gate made) {
    m_nodes.emplace(made.id, -1 - static_cast<std::int64_t>(project.gates.size()));
    project.gates.push_back(std::move(made));
}

void Tree::replaceEvent(const Id& id, Gate made) {
    std::erase_if(project.events, [&](const Event& each) { return each.id == id; });
    project.gates.push_back(std::move(made));
    indexAll();
}

void Tree::replaceGate(const Id& id, Event made) {
    std::erase_if(project.gates, [&](const Gate& each) { return each.id == id; });
    project.events.push_back(std::move(made));
    indexAll();
}

std::string Tree::name(std::string_view id) {
    const Event* e = event(id);
    const Gate* g = e ? nullptr : gate(id);
    const std::string& text = e ? e->name : g ? g->name : std::string();
    return shortened(text.empty() ? std::string(id) : text);
}

std::string Tree::words(std::string_view id) {
    return "\"" + name(id) + "\"";
}

Id Tree::newNodeId(std::string_view from) {
    return uniqueId(slug(from), [this](const Id& id) { return m_nodes.contains(id); });
}

Id Tree::newTopId() {
    for (std::size_t number = project.tops.size() + 1;; ++number)
        if (const Id id = "T" + std::to_string(number); !top(id)) return id;
}

bool Tree::reaches(const Id& above, const Id& below) {
    if (above == below) return true;
    std::unordered_set<std::string_view> seen;
    std::vector<std::string_view> left{above};
    while (!left.empty()) {
        const std::string_view id = left.back();
        left.pop_back();
        const Gate* at = gate(id);
        if (!at) continue;
        const auto visit = [&](const Id& next) {
            if (!next.empty() && seen.insert(next).second) left.push_back(next);
        };
        for (const Reference& input : at->inputs)
            visit(input.id);
        visit(at->condition.id);
        if (seen.contains(below)) return true;
    }
    return false;
}

Changed Tree::done(std::string doing, std::string about, std::vector<Id> touched) {
    return {std::move(project), std::move(doing), std::move(about), std::move(touched)};
}

Problem refuse(std::string what, std::string remedy) {
    return {Severity::error, std::move(what), std::move(remedy), {}, 0};
}

Problem noSuchNode(std::string_view id) {
    return refuse(fmt::format("there is no event or gate {}", id), "choose one that is there");
}

Id slug(std::string_view words) {
    Id id;
    for (const char character : words) {
        const auto byte = static_cast<unsigned char>(character);
        if (byte < 128 && std::isalnum(byte))
            id += static_cast<char>(std::tolower(byte));
        else if (!id.empty() && id.back() != '-')
            id += '-';
        if (id.size() >= kLongestSlug) break;
    }
    while (!id.empty() && id.back() == '-')
        id.pop_back();
    return id.empty() ? "node" : id;
}

std::unordered_map<std::string_view, int> countUses(const Project& project) {
    std::unordered_map<std::string_view, int> uses;
    uses.reserve(project.events.size() + project.gates.size());
    for (const Gate& gate : project.gates) {
        for (const Reference& input : gate.inputs)
            ++uses[input.id];
        if (!gate.condition.id.empty()) ++uses[gate.condition.id];
    }
    for (const TopEvent& top : project.tops)
        ++uses[top.node.id];
    return uses;
}

void eraseUnused(Project& project, std::vector<Id> candidates) {
    auto uses = countUses(project);
    std::unordered_map<std::string_view, const Gate*> gates;
    for (const Gate& gate : project.gates)
        gates.emplace(gate.id, &gate);
    std::unordered_set<std::string> gone;
    std::vector<std::string_view> left(candidates.begin(), candidates.end());
    while (!left.empty()) {
        const std::string_view id = left.back();
        left.pop_back();
        if (uses[id] > 0 || !gone.insert(std::string(id)).second) continue;
        const auto gate = gates.find(id);
        if (gate == gates.end()) continue;
        const auto release = [&](const Id& input) {
            if (--uses[input] <= 0) left.push_back(input);
        };
        for (const Reference& input : gate->second->inputs)
            release(input.id);
        if (!gate->second->condition.id.empty()) release(gate->second->condition.id);
    }
    const auto isGone = [&](const auto& each) { return gone.contains(each.id); };
    const auto refersToGone = [&](const Reference& each) { return gone.contains(each.id); };
    std::erase_if(project.events, isGone);
    std::erase_if(project.gates, isGone);
    // What was only said about them goes with them.
    for (CommonCauseGroup& group : project.commonCauses)
        std::erase_if(group.members, refersToGone);
    for (Assessment& assessment : project.assessments)
        std::erase_if(assessment.forced,
                      [&](const ForcedEvent& each) { return refersToGone(each.event); });
}

} // namespace cutwater::project::edits
