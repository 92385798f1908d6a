// What a branch does at a voltage, and the bus of a few: each row by hand from Kirchhoff's laws.
#include "battery/bus_solver.hpp"

#include <array>

namespace {

using namespace battery;

// 12.5 V; takes over 10 mohm from 0.1 V above, beyond 20 A over 5 mohm; 50 A at most.
Branch charged() {
    return {.rested = 12.5,
            .giving = 0.0,
            .taking = 100.0,
            .most_in = 50.0,
            .gap = 0.1,
            .knee = 20.0,
            .fast = 200.0};
}

// 12.6 V + 20 A x 10 mohm = 12.8 V at the knee, + 30 A x 5 mohm = 12.95 V where it is held.
TEST(bus_solver, a_branch_takes_more_steeply_beyond_its_knee_and_no_more_than_its_most) {
    Branch branch = charged();
    struct Row {
        double node;
        Flowing flowing;
        double current;
    };
    for (const Row& row : {Row{12.4, Flowing::nothing, 0.0},
                           {12.55, Flowing::nothing, 0.0},
                           {12.7, Flowing::taking, -10.0},
                           {12.85, Flowing::taking_fast, -30.0},
                           {13.5, Flowing::held, -50.0}}) {
        branch.flowing = branch.flowing_at(row.node);
        EXPECT_EQ(branch.flowing, row.flowing) << row.node;
        EXPECT_NEAR(branch.current_at(row.node), row.current, 1e-9) << row.node;
    }
    EXPECT_NEAR(branch.node_at(20.0), 12.8, 1e-12);
    EXPECT_NEAR(branch.node_at(50.0), 12.95, 1e-12);
}

// A source of 13.2 V behind 10 mohm on it, held at 12.85 V: it gives 35 A, of which 30 go into the
// branch and 5 to whatever holds the voltage.
TEST(bus_solver, a_voltage_held_takes_what_the_others_leave) {
    std::array branches{Branch{.rested = 13.2, .giving = 100.0}, charged()};
    const BusPoint point = bus_at_voltage(branches, 12.85, 0.0);
    EXPECT_NEAR(branches[0].current_at(point.node), 35.0, 1e-9);
    EXPECT_NEAR(branches[1].current_at(point.node), -30.0, 1e-9);
    EXPECT_NEAR(point.current, 5.0, 1e-9);
}

// 660 W offered to the branch alone, which takes 50 A: the bus goes to 13.2 V. Behind 2 mohm that
// it shares the node is 0.1 V lower.
TEST(bus_solver, power_offered_to_who_takes_its_most_lifts_the_bus) {
    std::array branches{charged()};
    const BusPoint point = bus_at_power(branches, -660.0, 0.002);
    EXPECT_TRUE(point.possible);
    EXPECT_NEAR(point.current, -50.0, 1e-9);
    EXPECT_NEAR(point.voltage, 13.2, 1e-9);
    EXPECT_NEAR(point.node, 13.1, 1e-9);
}

// 13.2 V over 10 mohm beside 12.0 V over 10 mohm that may not be charged: down to 12.0 V the first
// alone gives, 12.0 V x 120 A = 1,440 W there. Below, both: 25.2 V / 2 over 5 mohm at most gives
// 12.6 V squared / (4 x 5 mohm) = 7,938 W, at 6.3 V.
TEST(bus_solver, the_largest_power_is_that_of_all_who_give_there) {
    std::array branches{Branch{.rested = 13.2, .giving = 100.0},
                        Branch{.rested = 12.0, .giving = 100.0}};
    const BusPoint at_the_turn = bus_at_power(branches, 1440.0, 0.0);
    EXPECT_NEAR(at_the_turn.voltage, 12.0, 1e-9);
    const BusPoint most = bus_at_power(branches, 1e5, 0.0);
    EXPECT_FALSE(most.possible);
    EXPECT_NEAR(most.voltage, 6.3, 1e-9);
    EXPECT_NEAR(most.voltage * most.current, 7938.0, 1e-6);
}

}  // namespace
