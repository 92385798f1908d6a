#include "starting/packs.hpp"

#include "engine/starting/made_start.hpp"

namespace {

using namespace made_start;

TEST(packs, a_thin_cable_is_told_when_no_number_of_packs_helps) {
    const auto side = side_of(three_kilowatts());
    const std::vector<StartingMotor> motors{pump(side, 40.0)};
    auto source = packs(2);
    source.shared = 0.012 * ohm;
    const auto needed = packs_needed(
        source, [&](const DirectSource& with) { return judge_start(motors, {}, side, with); });
    EXPECT_FALSE(needed.surely);
    EXPECT_EQ(needed.at_best, StartVerdict::will_not_start);
    EXPECT_TRUE(is_on_the_battery_side(needed.because));
}

// N >= (r_pack + r_branch)/(R_max - r_main) with R_max = V (E - V)/P, V at which the use is 0.9.
TEST(packs, the_number_of_packs_agrees_with_the_closed_form) {
    const auto side = side_of(three_kilowatts());
    const std::vector<StartingMotor> motors{pump(side, 40.0)};
    auto source = packs(1);
    source.branches.front().limits = {};
    const auto judge_behind = [&](const DirectSource& with) {
        return judge_start(motors, {}, side, with);
    };
    const auto needed = packs_needed(source, judge_behind);
    const double emf = 13.2;
    const double lowest = emf - 0.9 * (emf - 10.5);
    const double power = judge_behind(source).draw.direct_power.high / watt;
    const double most = lowest * (emf - lowest) / power;
    ASSERT_TRUE(needed.surely);
    EXPECT_EQ(*needed.surely, static_cast<int>(std::ceil(0.005 / (most - 0.001))));
}

// The verdict turns at 12.345 V; it is found to a millivolt, on the side where it still holds.
TEST(packs, the_lowest_voltage_for_a_verdict_is_found_to_a_millivolt) {
    const auto verdict_at = [](units::Voltage at) {
        return at < 12.345 * volt ? StartVerdict::marginal : StartVerdict::starts;
    };
    const auto found =
        lowest_voltage_for(StartVerdict::starts, verdict_at, 10.0 * volt, 13.2 * volt);
    ASSERT_TRUE(found);
    EXPECT_GE(*found / volt, 12.345);
    EXPECT_LE(*found / volt, 12.346);
    EXPECT_EQ(lowest_voltage_for(StartVerdict::marginal, verdict_at, 10.0 * volt, 13.2 * volt),
              10.0 * volt);
    EXPECT_FALSE(lowest_voltage_for(StartVerdict::starts, verdict_at, 10.0 * volt, 12.0 * volt));
}

TEST(packs, as_many_as_are_wanted_and_all_at_one_voltage) {
    const auto five = with_last(packs(2), 5);
    EXPECT_EQ(packs_of(five), 5);
    EXPECT_EQ(standing_at(five, 12.5 * volt).branches.front().emf, 12.5 * volt);
}

}  // namespace
