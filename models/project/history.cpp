// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/history.h"

#include "models/project/words.h"

namespace cutwater::project {

namespace {

constexpr WordTable<4> kCommonCauseWords = {"beta", "mgl", "alpha", "alpha-staggered"};
constexpr WordTable<3> kStatusWords = {"not-found", "probable", "confirmed"};
constexpr WordTable<3> kStateWords = {"draft", "issued", "closed"};

} // namespace

std::string_view word(CommonCauseKind kind) {
    return wordOf(kCommonCauseWords, kind);
}
std::string_view word(CauseStatus status) {
    return wordOf(kStatusWords, status);
}
std::string_view word(AssessmentState state) {
    return wordOf(kStateWords, state);
}

std::optional<CommonCauseKind> commonCauseKindFromWord(std::string_view word) {
    return valueOf<CommonCauseKind>(kCommonCauseWords, word);
}
std::optional<CauseStatus> causeStatusFromWord(std::string_view word) {
    return valueOf<CauseStatus>(kStatusWords, word);
}
std::optional<AssessmentState> assessmentStateFromWord(std::string_view word) {
    return valueOf<AssessmentState>(kStateWords, word);
}

} // namespace cutwater::project
