#include "outage/plan.hpp"

#include <algorithm>

#include "outage/ready.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

// A load of so many watts on the 12 V bus, so that no inverter counts.
outage::Ready ready_for(const std::string& starts, const char* lasts, const char* power,
                        const std::string& more = "") {
    const auto read = scenario::read_scenario(R"(format = 1
title = "Plan"
[outage]
starts = )" + starts + "\nlasts = \"" + lasts +
                                                  R"("
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
usable = "90 %"
resistance = "0.01 mohm"
lead_resistance = "0.01 mohm"
[[load]]
name = "heater"
from = "12V"
converter_efficiency = "100 %"
power = ")" + power + "\"\n" + more,
                                              "plan.toml");
    return outage::make_ready(read.value().scenario).value();
}

// 110 W over 48 h are 5,280 Wh. A pack gives 90 Ah at 13.0 to 13.4 V, 1,170 to 1,206 Wh: four hold
// 4,824 Wh at most, five 5,850 Wh at least.
TEST(plan, the_fewest_packs_that_survive_are_found_by_halving) {
    const auto ready = ready_for("2026-01-14T18:00:00", "48 h", "110 W");
    const auto more = outage::lasts_with_more_packs(ready, 16);
    ASSERT_FALSE(more.empty());
    EXPECT_EQ(more.back().packs, 5);
    EXPECT_TRUE(more.back().survives);
    for (const auto& fewer : more)
        if (fewer.packs < 5) EXPECT_FALSE(fewer.survives) << fewer.packs;
    // two are not enough, and no more are tried
    const auto one_more = outage::lasts_with_more_packs(ready, 1);
    ASSERT_EQ(one_more.size(), 1U);
    EXPECT_EQ(one_more.front().packs, 2);
    EXPECT_NEAR(one_more.front().lasts / hour, 2.0 * 1188.0 / 110.0, 0.4);
}

// The same 1,170 to 1,206 Wh are what may be used; at 110 W they last 10.6 to 11 h.
TEST(plan, a_pack_lasts_as_long_as_its_usable_charge) {
    const auto plan = outage::plan_outage(ready_for("2026-01-14T18:00:00", "48 h", "110 W"));
    EXPECT_GT(plan.usable_at_start / watt_hour, 1170.0);
    EXPECT_LT(plan.usable_at_start / watt_hour, 1206.0);
    EXPECT_NEAR(plan.likely.lasts / hour, plan.usable_at_start / (110.0 * watt_hour), 0.05);
    EXPECT_FALSE(plan.likely.survives);
    EXPECT_EQ(plan.packs, 1);
    ASSERT_EQ(plan.bank_names.size(), 1U);
    EXPECT_EQ(plan.bank_names[0], "main");
}

bool tells_summer_time(const std::string& starts) {
    const auto plan = outage::plan_outage(ready_for(starts, "2 h", "10 W"));
    return std::ranges::any_of(plan.findings, [](const scenario::Finding& finding) {
        return finding.where == "outage.starts";
    });
}

// [tz database]: in the United States from the second Sunday of March, 8 to 14 March, to the first
// of November, 1 to 7 November.
TEST(plan, summer_time_is_told_where_clocks_may_show_it) {
    EXPECT_FALSE(tells_summer_time("2026-03-07T12:00:00"));
    EXPECT_TRUE(tells_summer_time("2026-03-08T12:00:00"));
    EXPECT_TRUE(tells_summer_time("2026-07-01T12:00:00"));
    EXPECT_TRUE(tells_summer_time("2026-11-07T12:00:00"));
    EXPECT_FALSE(tells_summer_time("2026-11-08T12:00:00"));
    EXPECT_FALSE(tells_summer_time("2026-01-14T12:00:00"));
}

}  // namespace
