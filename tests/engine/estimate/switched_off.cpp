#include "estimate/ahead/switched_off.hpp"

#include "support/three_packs.hpp"

namespace {

using namespace units;
using namespace three_packs;

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);

TEST(switched_off, where_nothing_was_off_it_is_the_plan_itself) {
    const auto ready = ready_of(with(""));
    EXPECT_EQ(estimate::without_what_was_off(ready, {{}, {}, {}}, {}), ready);
    EXPECT_EQ(estimate::without_what_was_off(ready, {}, {}), ready);
}

// The blower of 30 W is off from 2 to 5 h by the story and from 4 to 6 h besides: 4 h, which leaves
// 56 of 60 h. Its 30 W are missing on AC at 3 h and there at 7 h.
TEST(switched_off, what_both_say_counts_once) {
    const auto ready = ready_of(with(""));
    const auto made = estimate::without_what_was_off(ready, {{}, {{2.0 * hour, 5.0 * hour}}, {}},
                                                     {{}, {{4.0 * hour, 6.0 * hour}}, {}});
    const auto& blower = made->demand.loads[1];
    ASSERT_EQ(blower.strands.size(), 1U);
    EXPECT_NEAR(demand::total(blower.strands[0].on) / hour, 56.0, 1e-9);
    EXPECT_NEAR(demand::total(blower.may_run) / hour, 56.0, 1e-9);
    const auto ac_at = [](const outage::Ready& of, Duration when) {
        Power now{};
        for (const auto& step : of.steps[likely])
            if (step.from <= when) now = step.ac;
        return now;
    };
    EXPECT_NEAR((ac_at(*ready, 3.0 * hour) - ac_at(*made, 3.0 * hour)) / watt, 30.0, 1e-9);
    EXPECT_NEAR((ac_at(*ready, 7.0 * hour) - ac_at(*made, 7.0 * hour)) / watt, 0.0, 1e-9);
}

}  // namespace
