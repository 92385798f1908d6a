#include "answers/outage/bank_findings.hpp"

#include "support/made_plan.hpp"

namespace {

using namespace answers;
using outage::Event;
using outage::EventKind;
using scenario::Severity;
using testing::HasSubstr;
using units::ampere;
using units::hour;
using units::minute;

std::vector<PinnedFinding> told(std::vector<Event> events) {
    auto plan = made::lasting_plan();
    plan.bank_names = {"main", "expansion"};
    plan.likely.events = std::move(events);
    return bank_findings(made::scenario(), plan);
}

TEST(bank_findings, a_pack_that_comes_back_is_told_to_do_so) {
    const auto found = told({{.at = 3.0 * hour, .kind = EventKind::one_empty, .pack = 1},
                             {.at = 5.0 * hour, .kind = EventKind::one_back, .pack = 1},
                             {.at = 8.0 * hour, .kind = EventKind::one_empty, .pack = 1}});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_THAT(found.front().finding.text,
                HasSubstr("Pack expansion is empty; then pack expansion gives again at "));
    EXPECT_THAT(found.front().finding.text, HasSubstr("; then pack expansion is empty at "));
    EXPECT_EQ(found.front().finding.severity, Severity::caution);
}

TEST(bank_findings, what_goes_on_for_ever_is_cut_short_and_says_so) {
    std::vector<Event> events;
    for (int i = 0; i < 10; ++i) {
        events.push_back({.at = (2.0 * i + 1.0) * hour, .kind = EventKind::one_empty, .pack = 1});
        events.push_back({.at = (2.0 * i + 2.0) * hour, .kind = EventKind::one_back, .pack = 1});
    }
    EXPECT_THAT(told(events).front().finding.text, HasSubstr("; and so on; the others go on."));
}

TEST(bank_findings, packs_that_end_within_half_an_hour_of_all_are_no_news) {
    EXPECT_TRUE(told({{.at = 3.0 * hour, .kind = EventKind::one_empty, .pack = 0},
                      {.at = 3.0 * hour + 29.0 * minute, .kind = EventKind::packs_empty}})
                    .empty());
    EXPECT_EQ(told({{.at = 3.0 * hour, .kind = EventKind::one_empty, .pack = 0},
                    {.at = 3.0 * hour + 31.0 * minute, .kind = EventKind::packs_empty}})
                  .size(),
              1U);
    // what opens on current is always told, and is a stop
    const auto found = told({{.at = 3.0 * hour,
                              .kind = EventKind::one_fuse_opens,
                              .current = -60.0 * ampere,
                              .pack = 1},
                             {.at = 3.0 * hour, .kind = EventKind::packs_empty}});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().finding.severity, Severity::stop);
    EXPECT_THAT(found.front().finding.text,
                HasSubstr("The fuse of pack expansion opens on 60 A of charge"));
    // dropping a load would not help
    EXPECT_THAT(found.front().finding.mend, HasSubstr("Charge with less at a time"));
}

}  // namespace
