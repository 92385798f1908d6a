#include "outage/clock/chargers.hpp"

#include <algorithm>

#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/set_aside.hpp"

namespace {

using namespace units;

scenario::Scenario with(const std::string& more, const std::string& chemistry = "lifepo4") {
    const auto read = scenario::read_scenario(R"(format = 1
title = "Charging"
[outage]
starts = 2026-06-19T07:00:00
lasts = "2 d"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = ")" + chemistry + R"("
capacity = "100 Ah"
charge = "20 %"
[[load]]
name = "lamp"
from = "12V"
power = "10 W"
)" + more,
                                              "charging.toml", {});
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    return read->scenario;
}

const std::string generator = R"([[charger]]
name = "garden charger"
kind = "generator"
current = "20 A"
hours = ["09:00-12:00"]
efficiency = "85 %"
power_factor = "0.65"
generator_rating = "800 W"
)";

bool says(const scenario::Findings& findings, scenario::Severity severity, std::string_view words) {
    return std::ranges::any_of(findings, [&](const scenario::Finding& finding) {
        return finding.severity == severity &&
               in_english(finding.text).find(words) != std::string::npos;
    });
}

// 600 W beside the charger's 514 VA: more than 800 VA, and nothing of it out of the packs.
TEST(chargers, a_load_on_the_generator_counts_there_and_not_in_the_packs) {
    auto scenario = with(generator + R"([[load]]
name = "deep freezer"
from = "generator"
power = "600 W"
)");
    scenario::set_aside(scenario);
    const auto plan = outage::plan_outage(scenario);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->loads.size(), 1U);
    EXPECT_TRUE(says(plan->findings, scenario::Severity::note, "deep freezer on the generator"));
    EXPECT_TRUE(
        says(plan->findings, scenario::Severity::caution, "deep freezer beside the charger"));
    scenario.chargers.clear();
    const auto without = outage::plan_outage(scenario);
    ASSERT_TRUE(without);
    EXPECT_TRUE(says(without->findings, scenario::Severity::caution, "says when"));
}

TEST(chargers, a_generator_fills_the_packs_in_its_hours) {
    const auto plan = outage::plan_outage(with(generator));
    ASSERT_TRUE(plan);
    const auto& ledger = plan->likely.ledger;
    // 20 A for two mornings of 3 h, at 13.196 V of a pack half charged and over its 12 mohm
    EXPECT_NEAR(ledger.charger_offered / watt_hour, 20.0 * (13.196 + 20.0 * 0.012) * 6.0, 3.0);
    EXPECT_GT(ledger.stored_at_end, ledger.stored_at_start);
    EXPECT_LT(ledger.relative_residual, 1e-9);
    EXPECT_NEAR((ledger.charger_taken + ledger.charger_unused) / joule,
                ledger.charger_offered / joule, 1e-6 * (ledger.charger_offered / joule));
}

TEST(chargers, the_wall_is_silent_in_an_outage) {
    const auto plan = outage::plan_outage(
        with("[[charger]]\nname = \"garage\"\nkind = \"wall\"\ncurrent = \"20 A\"\n"));
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->likely.ledger.charger_offered, Energy{});
    EXPECT_TRUE(says(plan->findings, scenario::Severity::note, "wall gives nothing"));
}

// 20 A x 14.4 V/0.85 = 339 W, at a power factor of 0.65 521 VA: within 800, beyond 400.
TEST(chargers, a_generator_too_small_for_its_charger_is_a_stop) {
    EXPECT_FALSE(says(outage::plan_outage(with(generator))->findings, scenario::Severity::stop,
                      "generator"));
    auto small = with(generator);
    small.chargers[0].generator_rating = units::ApparentPower(400.0 * watt);
    EXPECT_TRUE(
        says(outage::plan_outage(small)->findings, scenario::Severity::stop, "generator gives"));
}

// With 11 A x 120 V = 1320 VA beside it, 800 are too few.
TEST(chargers, a_motor_start_beside_the_charger_is_a_caution) {
    auto made = with(generator);
    made.loads.push_back({.name = "refrigerator",
                          .from = scenario::Outlet::twelve_volt,
                          .draw = scenario::StatedPower{50.0 * watt},
                          .motor = scenario::Motor{.locked_rotor_current = 11.0 * ampere}});
    EXPECT_TRUE(says(outage::plan_outage(made)->findings, scenario::Severity::caution,
                     "start of refrigerator"));
}

// One well, 100 Ah, coulombic 0.995: 60 Ah at a steady 264 W, about 13.25 V and 19.8 A, take 3 h;
// lead slows down near the end.
TEST(chargers, the_time_to_a_charge_is_told) {
    const auto ready = outage::make_ready(with(generator));
    ASSERT_TRUE(ready);
    const auto& unit = ready->units[static_cast<std::size_t>(outage::End::likely)];
    const auto most =
        outage::time_to_charge(unit, 264.0 * watt, StateOfCharge(0.2), StateOfCharge(0.8));
    ASSERT_TRUE(most);
    EXPECT_NEAR(*most / hour, 60.0 / 0.995 / (264.0 / 13.4), 0.1);
    const auto lead = outage::make_ready(with(generator, "agm"));
    const auto& lead_unit = lead->units[static_cast<std::size_t>(outage::End::likely)];
    const auto first =
        outage::time_to_charge(lead_unit, 264.0 * watt, StateOfCharge(0.2), StateOfCharge(0.6));
    const auto last =
        outage::time_to_charge(lead_unit, 264.0 * watt, StateOfCharge(0.6), StateOfCharge(0.99));
    ASSERT_TRUE(first && last);
    EXPECT_GT(*last, 1.5 * *first);
}

TEST(chargers, cold_lithium_takes_nothing_from_a_generator) {
    auto cold = with(generator);
    cold.outage.battery_temperature = celsius(-5.0);
    const auto plan = outage::plan_outage(cold);
    ASSERT_TRUE(plan);
    EXPECT_LE(plan->likely.ledger.stored_at_end, plan->likely.ledger.stored_at_start);
    EXPECT_TRUE(says(plan->findings, scenario::Severity::caution, "does not bring"));
}

TEST(chargers, steps_keep_their_loads_and_gain_the_charger) {
    const std::vector<demand::DemandStep> steps{{.direct = 5.0 * watt},
                                                {.from = 2.0 * hour, .direct = 9.0 * watt}};
    outage::ChargerRuns charger{.offers = 100.0 * watt, .on = {{1.0 * hour, 3.0 * hour}}};
    const auto merged = outage::with_chargers(steps, {charger});
    ASSERT_EQ(merged.size(), 4U);
    EXPECT_EQ(merged[1].charger, 100.0 * watt);
    EXPECT_EQ(merged[1].direct, 5.0 * watt);
    EXPECT_EQ(merged[2].direct, 9.0 * watt);
    EXPECT_EQ(merged[3].charger, Power{});
}

}  // namespace
