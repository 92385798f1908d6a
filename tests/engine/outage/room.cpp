#include "outage/room.hpp"

#include "outage/clock/banks.hpp"
#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

scenario::Scenario january(const std::string& outage, const std::string& chemistry = "lifepo4") {
    const std::string text = R"(format = 1
title = "A cold hall"
[outage]
starts = 2026-01-14T18:00:00
lasts = "3 d"
)" + outage + R"(
[place]
name = "Minneapolis MN"
[[pack]]
name = "main"
chemistry = ")" + chemistry +
                             R"("
capacity = "100 Ah"
charge = "60 %"
[[panel]]
count = 3
power = "100 W"
placement = "fixed"
tilt = "60 deg"
[[load]]
name = "lamp"
from = "12V"
power = "15 W"
)";
    const auto read = scenario::read_scenario(text, "room.toml", {});
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    return read->scenario;
}

std::optional<outage::PackWarmth> warmth_of(const std::string& outage) {
    scenario::Assumptions assumptions;
    return outage::warmth_of_packs(january(outage), "", assumptions);
}

TEST(room, a_battery_temperature_that_is_given_wins) {
    EXPECT_FALSE(warmth_of("battery_temperature = \"5 degC\"\nbattery_follows_room = true"));
    EXPECT_FALSE(warmth_of(""));
}

TEST(room, a_heated_room_keeps_the_packs_and_another_cools_half_way_to_the_air_outside) {
    const auto heated = warmth_of("battery_follows_room = true\nroom_temperature = \"17 degC\"");
    ASSERT_TRUE(heated);
    EXPECT_NEAR(in_celsius(heated->mean), 17.0, 1e-9);
    const auto cold = warmth_of("battery_follows_room = true");
    ASSERT_TRUE(cold);
    ASSERT_EQ(cold->days.size(), 4u);
    // January at Minneapolis: -11.4 degC, places.csv; 6, 24, 24 and 18 h of the outage's 72
    const double half_way = 0.5 * (18.0 - 11.4);
    const auto left = [](double hours) { return std::exp(-hours / 16.6); };
    const auto mean_between = [&](double from, double to) {
        return half_way + (18.0 - half_way) * 16.6 * (left(from) - left(to)) / (to - from);
    };
    EXPECT_NEAR(in_celsius(cold->days[0]), mean_between(0.0, 6.0), 0.01);
    EXPECT_NEAR(in_celsius(cold->days[1]), mean_between(6.0, 30.0), 0.01);
    EXPECT_NEAR(in_celsius(cold->days[3]), mean_between(54.0, 72.0), 0.01);
    EXPECT_NEAR(in_celsius(cold->mean), mean_between(0.0, 72.0), 0.01);
}

// Questions of one moment know one temperature: the coldest day's, or the mean of what is left.
TEST(room, a_question_of_one_moment_takes_the_coldest_day_or_the_days_left) {
    const auto scenario = january("battery_follows_room = true");
    const auto warmth = warmth_of("battery_follows_room = true");
    scenario::Assumptions told;
    const auto coldest = outage::at_the_coldest(scenario, "", told);
    ASSERT_TRUE(coldest.outage.battery_temperature);
    EXPECT_NEAR(in_celsius(*coldest.outage.battery_temperature), in_celsius(warmth->days.back()),
                1e-9);
    EXPECT_FALSE(told.empty());
    const auto left =
        outage::at_the_mean_from(scenario.outage.starts + 40.0 * hour, scenario, "", told);
    EXPECT_NEAR(in_celsius(*left.outage.battery_temperature),
                0.5 * (in_celsius(warmth->days[2]) + in_celsius(warmth->days[3])), 1e-9);
    told.clear();
    const auto given = january("battery_temperature = \"5 degC\"\nbattery_follows_room = true");
    EXPECT_EQ(outage::at_the_coldest(given, "", told).outage.battery_temperature, celsius(5.0));
    EXPECT_TRUE(told.empty());
    EXPECT_EQ(outage::plan_outage(scenario)->coldest, coldest.outage.battery_temperature);
}

TEST(room, a_day_on_which_no_battery_works_is_refused) {
    const auto scenario = january("battery_temperature = \"5 degC\"");
    const auto built = unit::built(
        scenario,
        {.packs = celsius(5.0), .days = {{{}, celsius(5.0)}, {1.0 * day, celsius(-90.0)}}});
    ASSERT_FALSE(built);
    ASSERT_EQ(built.error().size(), 1U);
    EXPECT_EQ(built.error().front().where, "outage.battery_temperature");
}

TEST(room, the_answer_tells_how_much_can_be_drawn_on_the_coldest_and_the_warmest_day) {
    const auto plan = outage::plan_outage(january("battery_follows_room = true"));
    ASSERT_TRUE(plan);
    EXPECT_TRUE(std::ranges::any_of(plan->assumptions, [](const auto& one) {
        return one.where == "pack[0].chemistry" &&
               in_english(one.text).find("by the day's warmth") != std::string::npos;
    }));
}

TEST(room, lithium_packs_in_a_cold_room_take_no_charge_and_the_loads_still_get_the_sun) {
    const auto plan =
        outage::plan_outage(january("battery_follows_room = true\nroom_temperature = \"-4 degC\""));
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->likely.ledger.sun_stored, Energy{});
    EXPECT_GT(plan->likely.ledger.sun_used, Energy{});
    EXPECT_LE(std::abs(plan->likely.ledger.relative_residual), 1e-9);
    const bool told = std::any_of(
        plan->findings.begin(), plan->findings.end(),
        [](const auto& finding) { return finding.where == "outage.battery_follows_room"; });
    EXPECT_TRUE(told);
}

TEST(room, lead_packs_are_charged_in_the_cold) {
    EXPECT_GT(outage::plan_outage(
                  january("battery_follows_room = true\nroom_temperature = \"-4 degC\"", "agm"))
                  ->likely.ledger.sun_stored,
              Energy{});
}

// On some days only: the ledger stays whole and what may not be stored is counted as not taken.
TEST(room, days_that_are_too_cold_are_gated_one_by_one) {
    auto ready = outage::make_ready(january("battery_temperature = \"5 degC\""));
    ASSERT_TRUE(ready);
    const auto open = outage::run(*ready, outage::End::likely);
    auto& unit = ready->units[static_cast<std::size_t>(outage::End::likely)];
    outage::BankOfDay mild{.inner = unit.bank.setup.inner,
                           .reachable = unit.bank.setup.reachable,
                           .charging = unit.bank.setup.charging,
                           .current_limit = unit.bank.current_limit};
    auto cold = mild;
    cold.charging.allowed = false;
    // all but the first morning
    unit.days = {{.from = {}, .banks = {mild}}, {.from = 1.0 * day, .banks = {cold}}};
    const auto gated = outage::run(*ready, outage::End::likely);
    EXPECT_LT(gated.ledger.sun_stored, open.ledger.sun_stored);
    EXPECT_GT(gated.ledger.sun_stored, Energy{});
    EXPECT_GT(gated.ledger.sun_unused, open.ledger.sun_unused);
    EXPECT_LE(std::abs(gated.ledger.relative_residual), 1e-9);
}

}  // namespace
