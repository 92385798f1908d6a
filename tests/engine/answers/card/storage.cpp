#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "answers/card/parts.hpp"
#include "support/made_card.hpp"

namespace {

using namespace answers;
using testing::ElementsAre;

scenario::Scenario stored_since(const char* date) {
    scenario::Scenario scenario;
    scenario.storage = scenario::Storage{.since = *units::read_local_time(date)};
    return scenario;
}

questions::CardFound topped_up_by(const char* date) {
    auto found = made::card();
    found.storage = questions::StorageFound{};
    found.storage->stored.top_up_by = *units::read_local_time(date);
    return found;
}

// 3 months and 20 days: every 3 months, on the last day where a month is shorter.
TEST(card_storage, the_dates_to_tick_come_before_the_pack_suffers) {
    const auto part = storage_part(stored_since("2026-08-31"), topped_up_by("2026-12-20T17:00"));
    ASSERT_EQ(part.ticks.size(), 8U);
    EXPECT_EQ(part.ticks[0], "2026-11-30");
    EXPECT_EQ(part.ticks[1], "2027-02-28");
}

// A look every half year, however long it keeps: 30 September and 30 March.
TEST(card_storage, what_keeps_for_years_is_looked_at_every_half_year) {
    const auto part = storage_part(stored_since("2026-03-30"), topped_up_by("2029-01-01"));
    EXPECT_EQ(part.ticks[0], "2026-09-30");
    EXPECT_EQ(part.ticks[1], "2027-03-30");
}

TEST(card_storage, without_an_answer_there_are_blanks_to_fill) {
    const auto part = storage_part({}, made::card());
    EXPECT_EQ(part.ticks, std::vector<words::Said>(5, "__________"));
}

}  // namespace
