#include "fitting/ways.hpp"

#include "support/wiring_builds.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using fitting::Verdict;
using testing::HasSubstr;

// 17 A for hours ask for a fuse of 25 A where 18 AWG of 105 degC carries 20 A, and its 20 ft drop
// more than a tenth: what would fit keeps the drop's limit as well as the fuse's.
TEST(ways, what_would_fit_keeps_every_limit) {
    const auto build = branch_of({fuse(20, "blade"), dc_switch(40), wire(AmericanGauge{18}, 20.0)});
    auto draws = drawing(17.0);
    draws.direct = draws.circuits[0].at_bus;
    const auto fit = fitted(build, draws);
    EXPECT_EQ(worst(fit, "C8", "lamps"), Verdict::may_not);
    const auto ways = fitting::ways_out(build, draws, fit);
    ASSERT_FALSE(ways.empty());
    // 1.28 V/17 A are 75.3 mohm for 40 ft and its contacts: 12 AWG of vehicle cable has 89 mohm
    // (1.98 ohm/kft by [NEC tables], 11 % less metal), 10 AWG (1.24) has 55.
    EXPECT_THAT(ways[0].change, HasSubstr("10 AWG wire instead of 18 AWG"));
}

// 6 A for hours ask for 7.5 A, the next fuse; a switch with a tenth to spare is one of 10 A.
TEST(ways, a_stronger_switch_where_no_fuse_fits) {
    const auto build = branch_of({fuse(10, "blade"), dc_switch(5), wire(AmericanGauge{16}, 3.0)});
    const auto ways = fitting::ways_out(build, drawing(6.0), fitted(build, drawing(6.0)));
    ASSERT_FALSE(ways.empty());
    EXPECT_THAT(ways.front().change, HasSubstr("a switch rated"));
    EXPECT_THAT(ways.front().change, HasSubstr("instead of 5 A"));
}

}  // namespace
