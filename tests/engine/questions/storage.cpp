#include "questions/storage.hpp"

#include "file_of.hpp"

namespace {

using namespace std::chrono_literals;
using questions::StorageAsked;
using testing::HasSubstr;

const std::string put_away =
    "[storage]\nsince = 2025-01-14\ndrain = \"0 mA\"\nself_discharge_per_month = \"2 %\"\n"
    "temperature = \"25 degC\"\n";

units::LocalTime on(std::chrono::year_month_day date) {
    return units::local_time(date, 0.0 * units::hour);
}

// A year is 12 months of 730.5 h less six hours: exp(-0.02 x 12) = 78.7 % is left of what was full,
// where a month takes 2 % of what there is.
TEST(storage_question, of_no_day_is_of_the_day_the_outage_starts) {
    const auto read = file_of::text(file_of::outage("1 d") + file_of::a_pack + put_away);
    const auto found = questions::find(read, StorageAsked{}, {});
    ASSERT_TRUE(found);
    EXPECT_EQ(found->stored.on, read.scenario.outage.starts);
    EXPECT_NEAR(found->stored.charge_now.value(), 0.787, 0.003);
    EXPECT_EQ(found->stored.charge_now, found->stored.charge_switch_open);
}

TEST(storage_question, of_a_day_is_of_that_day) {
    const auto read = file_of::text(file_of::outage("1 d") + file_of::a_pack + put_away);
    const auto at_once = questions::find(read, StorageAsked{.on = on(2025y / 1 / 14)}, {});
    ASSERT_TRUE(at_once);
    EXPECT_NEAR(at_once->stored.charge_now.value(), 1.0, 1e-9);
    const auto before = questions::find(read, StorageAsked{.on = on(2025y / 1 / 13)}, {});
    ASSERT_FALSE(before);
    EXPECT_THAT(before.error().front().found, HasSubstr("before it was put away"));
}

TEST(storage_question, a_file_that_says_nothing_of_storage_is_told_what_to_add) {
    const auto refused = questions::find(file_of::text(file_of::outage("1 d") + file_of::a_pack),
                                         StorageAsked{}, {});
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().remedy, HasSubstr("[storage]"));
}

}  // namespace
