#include "starting/direct_current.hpp"

namespace {

using namespace starting;
using testing::HasSubstr;
using units::ampere;
using units::exactly;
using units::ohm;
using units::second;
using units::volt;
using units::watt;

scenario::Load winch(double pull_share) {
    return {.name = "winch",
            .from = scenario::Outlet::twelve_volt,
            .motor = scenario::Motor{.kind = scenario::MotorKind::direct_current,
                                     .full_load_current = 480.0 * ampere,
                                     .pull = units::Share(pull_share)}};
}

// [Winch sheets]: a 9,000 lb winch draws 250 A at 4,000 lb and 480 A at its rated pull.
TEST(start_direct_current, a_winch_draws_by_its_pull_for_as_long_as_it_pulls) {
    const auto found = direct_motor(winch(4000.0 / 9000.0), "load[0]", {}, 12.0 * volt);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->starting.likely / ampere, 250.0, 0.01 * 250.0);
    EXPECT_GT(found->time, 10.0 * second);
    ASSERT_FALSE(found->assumptions.empty());
    EXPECT_THAT(found->assumptions.front().text, HasSubstr("stuck, the winch draws 576 A"));
}

TEST(start_direct_current, more_than_the_rated_pull_is_refused_at_its_key) {
    const auto found = direct_motor(winch(1.2), "load[0]", {}, 12.0 * volt);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().front().where, "load[0].motor.pull");
}

TEST(start_direct_current, a_motor_of_which_nothing_is_known_is_refused_at_its_key) {
    auto load = winch(0.5);
    load.motor->full_load_current.reset();
    const auto found = direct_motor(load, "load[0]", {}, 12.0 * volt);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().front().where, "load[0].motor.full_load_current");
    EXPECT_THAT(found.error().front().found, HasSubstr("nothing says how much current"));
}

// A heavy pull lasts longer than a protection waits, so a pulse of a second does not help.
TEST(start_direct_current, a_heavy_pull_is_more_than_one_pack_lets_through) {
    const auto found = direct_motor(winch(0.8), "load[0]", {}, 12.0 * volt);
    ASSERT_TRUE(found);
    const DirectSource one{.branches = {{.name = "pack",
                                         .emf = 13.2 * volt,
                                         .path = exactly(0.005 * ohm),
                                         .count = 1,
                                         .limits = {.continuous = 100.0 * ampere,
                                                    .pulse = {{500.0 * ampere, 1.0 * second}}}}}};
    const auto judged = judge(draw_of(found->starting, found->time, {}, nullptr), nullptr, one);
    EXPECT_EQ(judged.verdict, StartVerdict::will_not_start);
    EXPECT_EQ(judged.binding, Constraint::pack_current);
}

}  // namespace
