#include "estimate/stretches.hpp"

#include "battery/cell/percent.hpp"
#include "outage/ready.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

// Steps at 0, 2 and 5 h seen from 3 h on: the one of 2 h holds from the start, the next after 2 h.
TEST(stretches, steps_begin_anew_at_a_moment) {
    const std::vector<demand::DemandStep> steps{{.direct = 1.0 * watt},
                                                {.from = 2.0 * hour, .direct = 2.0 * watt},
                                                {.from = 5.0 * hour, .direct = 3.0 * watt}};
    const auto later = estimate::from_then_on(steps, 3.0 * hour);
    ASSERT_EQ(later.size(), 2U);
    EXPECT_EQ(later[0].from, Duration{});
    EXPECT_EQ(later[0].direct, 2.0 * watt);
    EXPECT_EQ(later[1].from, 2.0 * hour);
    EXPECT_EQ(estimate::from_then_on(steps, 5.0 * hour).front().direct, 3.0 * watt);
}

// Two packs of 8 + 2 mohm and one of 3 + 2 mohm: 200 + 200 S is 2.5 mohm; inside 250 + 333.3 S is
// 1.714 mohm.
TEST(stretches, ways_lie_side_by_side) {
    const auto kind = [](int count, double milliohms) {
        battery::PackModel model;
        model.inner = 1e-3 * milliohms * ohm;
        model.lead = 2e-3 * ohm;
        return outage::PackKind{.model = std::make_shared<const battery::PackModel>(model),
                                .count = count};
    };
    const auto ways = estimate::ways_of({kind(2, 8.0), kind(1, 3.0)});
    EXPECT_NEAR(ways.all / ohm, 2.5e-3, 1e-9);
    EXPECT_NEAR(ways.inside / ohm, 1e-3 * 12.0 / 7.0, 1e-9);
    EXPECT_EQ(estimate::ways_of({}).all, Resistance{});
}

// Of 100 Ah rated 40 % are left: 60 Ah are removed, and the wells stand level.
TEST(stretches, a_charge_that_is_told_is_a_rested_one) {
    battery::PackModel model;
    model.capacity = 100.0 * ampere_hour;
    const outage::PackKind kind{.model = std::make_shared<const battery::PackModel>(model)};
    const auto made = estimate::with_charge(kind, StateOfCharge(0.4));
    EXPECT_NEAR(made.model->at_start.removed / ampere_hour, 60.0, 1e-9);
    EXPECT_EQ(made.model->at_start.head_difference, Charge{});
    EXPECT_EQ(estimate::with_charge(kind, std::nullopt).model, kind.model);
}

}  // namespace
