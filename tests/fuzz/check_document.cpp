// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/check_document.h"

#include "models/document/document.h"

namespace cutwater::fuzz {

namespace {

std::string complaintAbout(const project::Problems& problems) {
    for (const project::Problem& problem : problems) {
        const std::string sentence = toSentence(problem, "a");
        if (problem.what.empty() || sentence.find('\n') != std::string::npos)
            return "a problem is not one sentence: " + sentence;
    }
    return {};
}

} // namespace

std::string complaintAbout(const std::string& bytes) {
    const auto loaded = document::parse(bytes);
    if (!loaded) return complaintAbout(loaded.problems());
    if (auto complaint = complaintAbout(project::validate(loaded->project)); !complaint.empty())
        return complaint;
    const auto written = document::write(loaded->project);
    if (!written) return "what was read cannot be written: " + toSentence(written.problems()[0]);
    const auto again = document::parse(*written);
    if (!again) return "what was written cannot be read: " + toSentence(again.problems()[0]);
    if (!(again->project == loaded->project)) return "a round trip changes the project";
    const auto twice = document::write(again->project);
    if (!twice || *twice != *written) return "a second round trip changes the text";
    return {};
}

} // namespace cutwater::fuzz
