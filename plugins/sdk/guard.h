// SPDX-License-Identifier: GPL-3.0-or-later
// guarded(): calls into a plug-in so that nothing it throws gets out. The faces call plug-ins
// through here only.
#pragma once

#include "plugins/sdk/host.h"

#include <exception>
#include <new>
#include <utility>

namespace cutwater::sdk {

// The problem for an exception: names the plug-in and its file, and repeats what it said.
project::Problem thrownBy(const PluginFacts& facts, const std::string& what);
project::Problem outOfMemoryIn(const PluginFacts& facts);
// An answer that contradicts itself (finished without content, failed without a reason) is mended
// into a failed one with a sentence.
project::Problem contradictionOf(const PluginFacts& facts, const std::string& what);

template <typename T, typename Call>
Answer<T> guarded(const PluginFacts& facts, Call&& call) {
    Answer<T> answer;
    try {
        answer = std::forward<Call>(call)();
    } catch (const std::bad_alloc&) {
        return Answer<T>::stopped(Ending::overLimit, outOfMemoryIn(facts));
    } catch (const std::exception& error) {
        return Answer<T>::failed({thrownBy(facts, error.what())});
    } catch (...) {
        return Answer<T>::failed({thrownBy(facts, {})});
    }
    if (answer.ending == Ending::finished && !answer.content)
        return Answer<T>::failed({contradictionOf(facts, "finished without an answer")});
    if (answer.ending != Ending::finished && answer.problems.empty())
        answer.problems.push_back(contradictionOf(facts, "stopped without saying why"));
    return answer;
}

// The declared parameters, or a problem where the plug-in throws or declares nonsense (two of one
// name, a name that cannot be typed, a choice without choices, a standard of the wrong type).
project::Outcome<std::vector<Parameter>>
parametersOf(const Analysis& analysis, const PluginFacts& facts, const project::Project* project);

} // namespace cutwater::sdk
