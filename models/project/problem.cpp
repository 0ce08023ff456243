// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/problem.h"

#include <algorithm>

namespace cutwater::project {

std::string toSentence(const Problem& problem, const std::string& file) {
    std::string sentence = file;
    if (problem.line > 0) {
        if (!sentence.empty())
            sentence += ':';
        else
            sentence += "line ";
        sentence += std::to_string(problem.line);
    }
    if (!sentence.empty()) sentence += ": ";
    sentence += problem.severity == Severity::error ? "error: " : "warning: ";
    sentence += problem.what;
    if (!problem.remedy.empty()) sentence += "; " + problem.remedy;
    sentence += '.';
    // What was quoted from a file may hold line breaks; a sentence is one line.
    std::replace_if(
        sentence.begin(), sentence.end(), [](unsigned char c) { return c < 0x20 || c == 0x7F; },
        ' ');
    return sentence;
}

bool hasErrors(const Problems& problems) {
    return std::any_of(problems.begin(), problems.end(),
                       [](const Problem& problem) { return problem.severity == Severity::error; });
}

} // namespace cutwater::project
