// SPDX-License-Identifier: GPL-3.0-or-later
// A proposed common cause becomes a group with a factor that somebody answers for.
#include "models/worksheet/accept_cause.h"
#include "tests/models/worksheet/boilers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater::worksheet {

using namespace project;
using ::testing::HasSubstr;

namespace {

CauseTerms terms(double beta, const char* document) {
    CauseTerms made;
    made.beta.value = beta;
    made.beta.source.document = document;
    return made;
}

std::vector<CauseProposal> proposals(const Project& p) {
    return proposeCauses(p, Index(p)).proposals;
}

std::string wrong(const Project& p, const CauseProposal& proposal, const CauseTerms& with) {
    const auto made = acceptCause(p, proposal, with);
    return made ? "" : toSentence(made.problems().front());
}

} // namespace

TEST(AcceptCause, MakesASoundGroupWithTheReason) {
    const Project p = test::boilers();
    const auto all = proposals(p);
    const auto made = acceptCause(p, all[0], terms(0.1, "the log"));
    ASSERT_TRUE(made);
    ASSERT_EQ(made->commonCauses.size(), 1u);
    const CommonCauseGroup& group = made->commonCauses[0];
    EXPECT_EQ(group.name, "same location: pump room");
    EXPECT_EQ(group.id, "ccf-pump-room");
    EXPECT_EQ(group.reason, all[0].reason);
    ASSERT_EQ(group.members.size(), 2u);
    EXPECT_EQ(group.members[0].id, p.events[0].id);
    EXPECT_EQ(group.factors[0].value, 0.1);
    EXPECT_FALSE(hasErrors(validate(*made)));
    EXPECT_EQ(proposals(*made)[0].groups, std::vector<Id>{"ccf-pump-room"});
}

TEST(AcceptCause, NeedsAFactorInRangeAndASource) {
    const Project p = test::boilers();
    const auto all = proposals(p);
    EXPECT_THAT(wrong(p, all[0], terms(0, "the log")), HasSubstr("beta factor is 0"));
    EXPECT_THAT(wrong(p, all[0], terms(1.5, "the log")), HasSubstr("1.5"));
    EXPECT_THAT(wrong(p, all[0], terms(0.1, "")), HasSubstr("where the beta factor comes from"));
    EXPECT_EQ(wrong(p, all[0], terms(1, "the log")), "");
}

TEST(AcceptCause, NoSecondGroupOfTheSameEventsAndNoStaleProposal) {
    const Project p = test::boilers();
    const auto all = proposals(p);
    const auto made = acceptCause(p, all[0], terms(0.1, "the log"));
    // The two pumps share the room and the type: the same two events.
    EXPECT_THAT(wrong(*made, all[1], terms(0.1, "the log")),
                HasSubstr("has these 2 events already"));
    Project later = p;
    later.events.clear();
    EXPECT_THAT(wrong(later, all[0], terms(0.1, "the log")), HasSubstr("has changed since"));
}

} // namespace cutwater::worksheet
