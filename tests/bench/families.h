// SPDX-License-Identifier: GPL-3.0-or-later
// Families: the formulas on which the engine is measured. The same from run to run and from machine
// to machine: seeds stand in the table, numbers come from bench/random.h.
#pragma once

#include "models/logic/formula.h"

#include <cstdint>
#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace bench {

using cutwater::logic::Formula;
using cutwater::logic::Literal;
using cutwater::logic::Op;

struct Instance {
    Formula formula;
    Literal top;
    std::vector<double> q; // by variable, 0 < q < 1
};

enum class Family { plant = 1, large, votes, modules, chains, mixed, meshed };

// What is known of an instance before anybody solves it.
struct Known {
    double minSets = 0, maxSets = 0; // the range that the family promises; 0, 0: none
    std::string exactSets;           // a closed form, in decimal; empty where there is none
    bool coherent = true;
};

struct Recipe {
    Family family;
    std::string name; // unique
    Known known;
    // Sub-series over which the growth with `size` is measured; empty: none.
    std::string series;
    double size = 0;
    std::function<Instance()> make;
};

// All of them, small ones first within a family.
const std::vector<Recipe>& allRecipes();
const Recipe* findRecipe(const std::string& name); // null where there is none

std::string word(Family family); // "plant", "large", ...

// What can be counted without solving. Only what the top depends on.
struct Census {
    std::uint32_t events = 0, gates = 0;
    std::uint32_t sharedGates = 0;  // gates with more than one parent
    std::uint32_t sharedEvents = 0; // events with more than one parent
    std::uint32_t depth = 0;        // gates on the longest way down
};
Census census(const Instance& instance);

// Same nodes, same order, same probabilities.
bool same(const Instance& a, const Instance& b);

// --- the generators, one file each; parameters are in the table of families.cpp

struct PlantPlan {
    std::uint64_t seed = 1;
    std::uint32_t functions = 3;  // each must work
    std::uint32_t trains = 2;     // of each function
    std::uint32_t needed = 1;     // trains needed for the function to work
    std::uint32_t components = 4; // of each train
    std::uint32_t modes = 2;      // basic events of a component
    std::uint32_t lines = 2;      // how often each support system is there
    double supported = 0.5;       // share of the components that need a support system
    double reuse = 0;             // share of the components that the train has in common with the
                                  // same train of the function before
};
Instance plant(const PlantPlan& plan);

// `gates` gates over `events` events, and of all references to a gate or an event the share
// `sharing` to one that is already in use somewhere, anywhere in the tree. Precondition: events >
// gates.
Instance tangle(std::uint64_t seed, std::uint32_t events, std::uint32_t gates, double sharing);
// The same, but what is used again lies in the same subtree, at most `reach` gates up and one more
// down.
Instance neighbours(std::uint64_t seed, std::uint32_t events, std::uint32_t gates, double sharing,
                    std::uint32_t reach);

Instance vote(std::uint32_t k, std::uint32_t n);
Instance nestedVote(std::uint32_t k, std::uint32_t n, std::uint32_t innerK, std::uint32_t innerN);
// k of n votes, vote i over the events i, i+1, ..., i+width-1 of a ring of n events.
Instance ringOfVotes(std::uint32_t k, std::uint32_t n, std::uint32_t innerK, std::uint32_t width);

// A boiler of 60 events, its supplies shared inside; bits of `variant` change its structure a
// little. `copies` of them below an or (k = 1) or below a vote of k.
Instance boilers(std::uint32_t copies, std::uint32_t k, bool varied);

// e1 or (e2 and (e3 or ...)); `pool` > 0: the events are these, over and over again.
Instance chain(std::uint32_t depth, std::uint32_t pool);
// The same with every event used again `distance` gates further down.
Instance echoingChain(std::uint32_t depth, std::uint32_t distance);
// Two rails with a rung at every step: each gate of a step sees both gates of the next step.
Instance ladder(std::uint32_t depth, bool repeats);

Instance mixed(std::uint64_t seed, std::uint32_t events, double reuse);

// Edges of an n x n grid of nodes fail; the top event is that no way is left from one corner to the
// opposite one. One-way edges lead right and down.
Instance oneWayGrid(std::uint32_t n);
Instance twoWayGrid(std::uint32_t n);

} // namespace bench
