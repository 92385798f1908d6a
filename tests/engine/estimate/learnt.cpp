#include "estimate/learnt.hpp"

#include <algorithm>
#include <cmath>

#include "support/three_packs.hpp"

namespace {

using namespace units;
using namespace three_packs;

TEST(learnt, a_file_without_a_log_teaches_nothing) {
    const auto scenario = with("");
    const auto found = estimate::learnt_of(scenario, "", ready_of(scenario), 1);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().front().where, "log");
}

// Guessed at 30 W; 0.81 kWh over 18 h are 45 W. The guess is several times as wide as the meter,
// so nearly all of the way: 43 to 45 W. Planned until then 18 h of (50.2 + 30 + 12 W), by
// the label's 440 kWh / 8,760 h; actually some 13 W more, 18 h of which are 0.23 to 0.28 kWh.
TEST(learnt, a_meter_offers_the_power_of_a_load_that_was_guessed) {
    const auto scenario = with(meter("blower", "0.81 kWh"));
    const auto found = estimate::learnt_of(scenario, "", ready_of(scenario), 1).value();
    EXPECT_EQ(found.readings, 1);
    EXPECT_EQ(found.until, *read_local_time(next_noon));
    const auto blower =
        std::ranges::find(found.values, "load.blower.power", &estimate::LearntValue::key);
    ASSERT_NE(blower, found.values.end());
    EXPECT_EQ(blower->of, "blower");
    EXPECT_EQ(blower->in_file.text(), "30 W");
    EXPECT_GT(blower->factor, 43.0 / 30.0);
    EXPECT_LT(blower->factor, 1.5);
    EXPECT_FALSE(found.contradicted);
    EXPECT_GT((found.actual - found.planned) / watt_hour, 200.0);
    EXPECT_LT((found.actual - found.planned) / watt_hour, 300.0);
}

}  // namespace
