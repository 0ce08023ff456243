// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong, where, and how to mend it; and Outcome, which is a value or the problems that
// prevented it.
#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace cutwater::project {

enum class Severity { error, warning };

struct Problem {
    Severity severity = Severity::error;
    std::string what;   // one clause, no full stop: "gate G4 has no inputs"
    std::string remedy; // one imperative clause, no full stop: "add an input or delete the gate"
    std::string where;  // the element in words ("gate G4"), or empty where only the file is known
    int line = 0;       // 1 and up; 0 where no line is known
    bool operator==(const Problem&) const = default;
};

using Problems = std::vector<Problem>;

// "FILE:LINE: error: WHAT; REMEDY." `file` may be empty; the line is left out where it is 0. One
// line: control characters in what was quoted become blanks.
std::string toSentence(const Problem& problem, const std::string& file = {});

bool hasErrors(const Problems& problems);

// A value, or at least one problem.
template <typename T>
class Outcome {
public:
    Outcome(T value) : m_content(std::move(value)) {}
    Outcome(Problem problem) : m_content(Problems{std::move(problem)}) {}
    Outcome(Problems problems) : m_content(std::move(problems)) {
        assert(!std::get<Problems>(m_content).empty());
    }

    explicit operator bool() const { return std::holds_alternative<T>(m_content); }
    T& operator*() { return std::get<T>(m_content); }
    const T& operator*() const { return std::get<T>(m_content); }
    T* operator->() { return &std::get<T>(m_content); }
    const T* operator->() const { return &std::get<T>(m_content); }
    const Problems& problems() const { return std::get<Problems>(m_content); }

private:
    std::variant<T, Problems> m_content;
};

} // namespace cutwater::project
