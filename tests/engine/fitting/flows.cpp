#include "fitting/flows.hpp"

#include <gtest/gtest.h>

namespace {

using namespace units;
using fitting::OhmSpan;

// A source of 12 V behind 3 ohm gives a load of R ohm most power where R is 3 ohm as well: the
// maximum power theorem. Within 1 to 12 ohm it gives least at 12: 12²·12/15² W against 12²·1/4² W.
TEST(flows, the_largest_may_lie_between_the_ends) {
    const OhmSpan span{1.0 * ohm, 12.0 * ohm};
    const auto power = [](Resistance load) {
        const double ohms = load / ohm;
        return 144.0 * ohms / ((ohms + 3.0) * (ohms + 3.0)) * ampere;
    };
    EXPECT_NEAR(fitting::extreme_in(span, true, power) / ohm, 3.0, 1e-6);
    EXPECT_NEAR(fitting::extreme_in(span, false, power) / ohm, 12.0, 1e-6);
}

fitting::BuildUnit two_packs(double milliohms, double limit) {
    fitting::BuildUnit unit;
    fitting::PackKind kind;
    kind.count = 2;
    kind.emf = 13.0 * volt;
    kind.flow = milliohms * 1e-3 * ohm;
    kind.model.current_limit = limit * ampere;
    unit.packs = {kind};
    unit.count = 2;
    return unit;
}

TEST(flows, spans_go_from_the_stiffest_to_the_softest) {
    auto soft = two_packs(20.0, 100.0);
    soft.main_path = 1e-3 * ohm;
    auto stiff = two_packs(8.0, 100.0);
    stiff.main_path = 2e-3 * ohm;
    const auto spans = fitting::flow_spans({two_packs(10.0, 100.0), soft, stiff});
    ASSERT_EQ(spans.packs.size(), 1U);
    EXPECT_EQ(spans.packs[0].low, stiff.packs[0].flow);
    EXPECT_EQ(spans.packs[0].high, soft.packs[0].flow);
    EXPECT_EQ(spans.main.low, Resistance{});
    EXPECT_EQ(spans.main.high, stiff.main_path);
}

// Two packs of 13 V and 10 mohm share 2·I·(13 V - 10 mohm·I): of 2000 W each gives 82.1 A, of
// 3000 W 128 A. Beyond a protection of 100 A one opens, and the other, with all of it, too.
TEST(flows, a_pack_that_opens_takes_the_other_with_it) {
    const auto unit = two_packs(10.0, 100.0);
    const auto spans = fitting::flow_spans({unit});
    const auto at = [&](double watts) {
        const wiring::Feed feed{.sources = {}, .main = {}, .drawn = watts * watt, .branches = {}};
        return fitting::cascade_within(spans, {.worst = unit,
                                               .best = unit,
                                               .most = feed,
                                               .least = feed,
                                               .lowest_cutoff = 10.5 * volt,
                                               .highest_cutoff = 10.5 * volt});
    };
    EXPECT_FALSE(at(2000.0).may);
    EXPECT_TRUE(at(3000.0).may);
    EXPECT_TRUE(at(3000.0).surely);
}

}  // namespace
