// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/skeleton.h"

#include "models/project/nearest.h"
#include "models/worksheet/coverage.h"

#include <algorithm>
#include <cctype>
#include <fmt/format.h>
#include <map>
#include <unordered_map>
#include <unordered_set>

namespace cutwater::worksheet {

namespace {

using project::Component;
using project::GateKind;
using project::Id;
using project::Problem;
using project::Severity;

constexpr std::size_t kMostGates = 2000;
constexpr std::size_t kDeepest = 100; // of a plant breakdown

std::string nameOf(const Component& component) {
    if (!component.name.empty() && !component.tag.empty() && component.name != component.tag)
        return component.tag + " " + component.name;
    return !component.name.empty()  ? component.name
           : !component.tag.empty() ? component.tag
                                    : component.id;
}

class Maker {
public:
    Maker(const project::Project& project, const project::Index& index)
        : m_project(project), m_index(index), m_modesOf(project.components.size()) {
        for (std::size_t i = 0; i < project.modes.size(); ++i)
            if (const Component* component = index.component(project.modes[i].component))
                m_modesOf[position(*component)].push_back(i);
        for (const project::Event& event : project.events)
            if (!event.mode.empty() && event.kind != project::EventKind::house &&
                event.kind != project::EventKind::conditioning)
                m_eventOfMode.try_emplace(event.mode, event.id);
        for (std::size_t i = 0; i < project.connections.size(); ++i) {
            const project::Connection& connection = project.connections[i];
            if (connection.path == project::SupplyPath::feed)
                m_feeds[connection.to][connection.medium].push_back(i);
        }
    }

    project::Outcome<Skeleton> make(const std::string& effect) {
        m_skeleton.effect = effect;
        std::vector<std::size_t> members;
        const std::string wanted = plainEffect(effect);
        std::vector<std::string_view> known;
        for (std::size_t i = 0; i < m_project.modes.size(); ++i) {
            const auto& mode = m_project.modes[i];
            if (!mode.endEffect.empty()) known.push_back(mode.endEffect);
            if (!wanted.empty() && plainEffect(mode.endEffect) == wanted) members.push_back(i);
        }
        if (members.empty()) {
            const std::string_view near = project::nearestWord(effect, known);
            return Problem{Severity::error,
                           fmt::format("no failure mode has the end effect \"{:.100}\"", effect),
                           near.empty() ? "take one that `cutwater coverage FILE` lists"
                                        : fmt::format("write \"{}\"", near),
                           "worksheet", 0};
        }
        m_skeleton.effect = m_project.modes[members.front()].endEffect;
        build(members);
        if (m_skeleton.proposals.size() > kMostGates)
            return Problem{
                Severity::error,
                fmt::format("the end effect \"{:.60}\" would need {} gates, more than {}", effect,
                            m_skeleton.proposals.size(), kMostGates),
                "split it into several end effects", "worksheet", 0};
        return std::move(m_skeleton);
    }

private:
    std::size_t position(const Component& component) const {
        return static_cast<std::size_t>(&component - m_project.components.data());
    }

    // The groups: the parts of the plant two levels below what all members have in common.
    void build(const std::vector<std::size_t>& members) {
        std::map<std::size_t, std::vector<std::size_t>> byGroup; // component -> modes
        std::vector<std::size_t> loose;
        for (const std::size_t mode : members) {
            const Component* component = m_index.component(m_project.modes[mode].component);
            if (component)
                byGroup[position(*groupOf(*component))].push_back(mode);
            else
                loose.push_back(mode);
        }
        const std::size_t top = add(GateKind::orGate, freeTop(), m_skeleton.effect,
                                    fmt::format("Any of the {} failure modes whose end effect is "
                                                "this one is enough, so says the worksheet.",
                                                members.size()));
        for (const std::size_t mode : loose)
            input(top, eventOf(mode));
        for (const auto& [group, modes] : byGroup) {
            std::vector<std::size_t> components; // of the group that fail or are supplied
            std::size_t into = top;
            if (byGroup.size() > 1) {
                const Component& part = m_project.components[group];
                into = add(GateKind::orGate, part.id, nameOf(part) + " fails",
                           fmt::format("{} failure mode{} of {} and its parts.", modes.size(),
                                       modes.size() == 1 ? "" : "s", nameOf(part)));
                input(top, gate(into).id);
            }
            for (const std::size_t mode : modes) {
                input(into, eventOf(mode));
                const Component* component = m_index.component(m_project.modes[mode].component);
                if (std::find(components.begin(), components.end(), position(*component)) ==
                    components.end())
                    components.push_back(position(*component));
            }
            for (const std::size_t component : components)
                m_supplied.emplace_back(component, into);
        }
        addSupplies();
        for (std::size_t at = 0; at < m_skeleton.proposals.size(); ++at)
            if (gate(at).inputs.empty()) input(at, undeveloped(gate(at)));
        m_skeleton.top.name = m_skeleton.effect;
        m_skeleton.top.endEffects = {m_skeleton.effect};
        m_skeleton.top.node.id = m_skeleton.proposals.front().gate.id;
        m_skeleton.top.operatingMode = m_project.operatingMode;
        m_skeleton.top.id = freeTop();
    }

    // The part right below the top of the breakdown that the component belongs to.
    const Component* groupOf(const Component& component) const {
        const Component* part = &component;
        for (std::size_t depth = 0; depth < kDeepest; ++depth) {
            const Component* parent = m_index.component(part->parent);
            if (!parent || parent->parent.empty()) return parent ? part : part;
            part = parent;
        }
        return part;
    }

    // Walks up the supplies of what can fail, one component after another: no recursion, and a
    // circle ends where it comes round.
    void addSupplies() {
        for (std::size_t next = 0; next < m_supplied.size(); ++next) {
            if (m_skeleton.proposals.size() > kMostGates) return;
            const auto [component, into] = m_supplied[next];
            const Component& load = m_project.components[component];
            std::vector<const Component*> suppliers;
            for (const project::Reference& source : load.suppliedBy)
                if (const Component* supplier = m_index.component(source.id))
                    suppliers.push_back(supplier);
            addFeeds(load, into);
            if (suppliers.empty()) continue;
            if (suppliers.size() > 1 && alike(suppliers))
                addRedundant(load, suppliers, into);
            else
                for (const Component* supplier : suppliers)
                    addLost(*supplier, into);
        }
    }

    // A medium that arrives over two feeds or more, as the network of connections has it.
    void addFeeds(const Component& load, std::size_t into) {
        const auto found = m_feeds.find(load.id);
        if (found == m_feeds.end()) return;
        for (const auto& [medium, feeds] : found->second) {
            if (feeds.size() < 2) continue;
            const std::string key = load.id + '\n' + medium;
            if (const auto made = m_supplyGate.find(key); made != m_supplyGate.end()) {
                input(into, gate(made->second).id);
                continue;
            }
            const std::size_t all = add(
                GateKind::andGate, load.id + "-feeds",
                fmt::format("{} without {}", nameOf(load), medium),
                fmt::format("{} arrives at {} over {} feeds: each is taken as enough alone. Look "
                            "whether it is so, and what they share.",
                            medium, nameOf(load), feeds.size()),
                false);
            m_supplyGate[key] = all;
            input(into, gate(all).id);
            for (const std::size_t feed : feeds)
                addFeed(m_project.connections[feed], all);
        }
    }

    void addFeed(const project::Connection& feed, std::size_t into) {
        const std::size_t leg =
            add(GateKind::orGate, feed.id + "-lost",
                "no supply over " + (feed.name.empty() ? feed.id : feed.name),
                fmt::format("The source or something on the way fails; all failure modes of what "
                            "the feed runs through are taken to end it. Take out those that do "
                            "not."),
                false);
        input(into, gate(leg).id);
        for (const project::Reference& device : feed.through)
            if (const Component* component = m_index.component(device.id))
                for (const std::size_t mode : m_modesOf[position(*component)])
                    input(leg, eventOf(mode));
        if (const Component* source = m_index.component(feed.from)) addLost(*source, leg);
    }

    static bool alike(const std::vector<const Component*>& suppliers) {
        std::unordered_set<std::string_view> types;
        for (const Component* supplier : suppliers)
            types.insert(supplier->type);
        return types.size() == 1 || suppliers.size() > types.size();
    }

    void addRedundant(const Component& load, const std::vector<const Component*>& suppliers,
                      std::size_t into) {
        const auto [found, isNew] = m_supplyGate.try_emplace(load.id, 0);
        if (isNew) {
            std::vector<std::string> names;
            for (const Component* supplier : suppliers)
                names.push_back(nameOf(*supplier));
            found->second =
                add(GateKind::andGate, load.id + "-supply", nameOf(load) + " without supply",
                    fmt::format("{} is supplied by {}: taken as each enough alone. Look whether it "
                                "is so, and what they share.",
                                nameOf(load), fmt::join(names, ", ")),
                    false);
            const std::size_t both = found->second;
            for (const Component* supplier : suppliers)
                addLost(*supplier, both);
        }
        input(into, gate(m_supplyGate[load.id]).id);
    }

    // "The supply from this component is lost": its failure modes and, further on, its own supply.
    void addLost(const Component& supplier, std::size_t into) {
        const auto [found, isNew] = m_lostGate.try_emplace(supplier.id, 0);
        if (isNew) {
            const auto& modes = m_modesOf[position(supplier)];
            found->second =
                add(GateKind::orGate, supplier.id + "-lost", "no supply from " + nameOf(supplier),
                    modes.empty() ? fmt::format("{} has no failure mode in the worksheet: how can "
                                                "it fail?",
                                                nameOf(supplier))
                                  : fmt::format("Every failure mode of {} ({}) is taken to end its "
                                                "supply. Take out those that do not.",
                                                nameOf(supplier), modes.size()),
                    false);
            const std::size_t lost = found->second;
            for (const std::size_t mode : modes)
                input(lost, eventOf(mode));
            m_supplied.emplace_back(position(supplier), lost);
        }
        const std::size_t lost = m_lostGate[supplier.id];
        // A circle of supplies: what comes round would make a gate its own input.
        if (lost == into || isBelow(into, lost)) {
            m_skeleton.remarks.push_back(
                fmt::format("The supplies of {} come round in a circle, which was cut open.",
                            nameOf(supplier)));
            return;
        }
        input(into, gate(lost).id);
    }

    bool isBelow(std::size_t node, std::size_t above) const {
        std::vector<std::size_t> left{above};
        std::unordered_set<std::size_t> seen{above};
        while (!left.empty()) {
            const std::size_t at = left.back();
            left.pop_back();
            if (at == node) return true;
            for (const auto& reference : m_skeleton.proposals[at].gate.inputs)
                if (const auto found = m_gateOf.find(reference.id);
                    found != m_gateOf.end() && seen.insert(found->second).second)
                    left.push_back(found->second);
        }
        return false;
    }

    std::size_t add(GateKind kind, const std::string& stem, std::string name, std::string reason,
                    bool certain = true) {
        Proposal proposal;
        proposal.id = fmt::format("P{}", m_skeleton.proposals.size() + 1);
        proposal.gate.kind = kind;
        proposal.gate.id = freeNode("G-" + stem);
        proposal.gate.name = std::move(name);
        proposal.reason = std::move(reason);
        proposal.certain = certain;
        m_gateOf[proposal.gate.id] = m_skeleton.proposals.size();
        m_skeleton.proposals.push_back(std::move(proposal));
        return m_skeleton.proposals.size() - 1;
    }

    project::Gate& gate(std::size_t at) { return m_skeleton.proposals[at].gate; }

    void input(std::size_t at, const Id& id) {
        auto& inputs = gate(at).inputs;
        const bool there = std::any_of(inputs.begin(), inputs.end(),
                                       [&](const auto& one) { return one.id == id; });
        if (!there) inputs.push_back({id, {}});
    }

    Id eventOf(std::size_t position) {
        const project::FailureMode& mode = m_project.modes[position];
        const auto found = m_eventOfMode.find(mode.id);
        if (found != m_eventOfMode.end()) return found->second;
        project::Event event;
        event.id = freeNode(mode.id);
        event.mode = mode.id;
        const Component* component = m_index.component(mode.component);
        event.name = component ? nameOf(*component) + ": " + mode.name : mode.name;
        m_eventOfMode[mode.id] = event.id;
        m_skeleton.events.push_back(event);
        return event.id;
    }

    // What the worksheet does not say stays to be developed.
    Id undeveloped(const project::Gate& of) {
        project::Event event;
        event.id = freeNode(of.id + "-unknown");
        event.kind = project::EventKind::undeveloped;
        event.name = of.name + ": the worksheet says nothing";
        m_skeleton.events.push_back(event);
        return event.id;
    }

    Id freeNode(const std::string& wanted) {
        const std::string stem = wanted.substr(0, 110);
        std::string id = stem;
        for (int n = 2; m_index.event(id) || m_index.gate(id) || !m_takenNodes.insert(id).second;
             ++n)
            id = fmt::format("{}-{}", stem, n);
        return id;
    }

    Id freeTop() const {
        for (std::size_t n = m_project.tops.size() + 1;; ++n)
            if (Id id = fmt::format("T{}", n); !m_index.top(id)) return id;
    }

    const project::Project& m_project;
    const project::Index& m_index;
    std::vector<std::vector<std::size_t>> m_modesOf; // by component
    std::unordered_map<std::string, Id> m_eventOfMode;
    std::unordered_map<std::string, std::map<std::string, std::vector<std::size_t>>> m_feeds;
    std::unordered_map<std::string, std::size_t> m_gateOf, m_supplyGate, m_lostGate;
    std::unordered_set<std::string> m_takenNodes;
    std::vector<std::pair<std::size_t, std::size_t>> m_supplied; // component, gate above
    Skeleton m_skeleton;
};

} // namespace

project::Outcome<Skeleton> proposeTree(const project::Project& project, const project::Index& index,
                                       const std::string& effect) {
    return Maker(project, index).make(effect);
}

} // namespace cutwater::worksheet
