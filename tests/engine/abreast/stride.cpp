#include "abreast/stride.hpp"

#include "by_hand.hpp"

#include "battery/advance.hpp"

namespace {

using namespace units;
using abreast::Width;
namespace detail = abreast::lanes_detail;

TEST(stride, every_processor_takes_two_lanes_and_more_only_after_that) {
    const auto widths = abreast::widths_here();
    ASSERT_FALSE(widths.empty());
    EXPECT_EQ(widths.front(), Width::two);
    EXPECT_TRUE(std::ranges::is_sorted(widths));
}

TEST(stride, knows_the_make_of_a_pack) {
    const auto build = [](Share available, battery::Charging charging) {
        return detail::build_of(battery::prepare({.kinetics = {.total = 100.0 * ampere_hour,
                                                               .available = available,
                                                               .rate = 1e-4 * hertz},
                                                  .open_circuit = &by_hand::straight(),
                                                  .inner = 0.01 * ohm,
                                                  .charging = std::move(charging)}));
    };
    EXPECT_EQ(build(Share(1.0), {.coulombic = Efficiency(0.99)}),
              (detail::Build{.two_wells = false, .one_efficiency = true, .resists = false}));
    EXPECT_EQ(build(Share(0.6), {.coulombic = Efficiency(0.99),
                                 .resistance = {.when_empty = 0.05 * ohm,
                                                .rated = 100.0 * ampere_hour,
                                                .knee = 10.0 * ampere}}),
              (detail::Build{.two_wells = true, .one_efficiency = true, .resists = true}));
}

// Sixty-four outages of five minutes, one pack each: 13 W and 13 W more from each to the next. The
// pack gives I = (E - sqrt(E^2 - 4 R P)) / (2 R) at the mean rested voltage of the time, to the
// first order E = 13.5 V - I t / (2 C) V; ten rounds of that find it to the last digits.
TEST(stride, draws_what_the_power_asks_for_at_every_width) {
    const auto bank = by_hand::pack_of(100.0 * ampere_hour, 0.010 * ohm);
    const auto pack = battery::prepare(bank.setup);
    for (const auto width : abreast::widths_here()) {
        auto state = std::make_unique<detail::State>();
        auto packs = std::make_unique<detail::OwnPacks>();
        detail::LaneWells from{};
        detail::LaneWells to{};
        packs->build = detail::build_of(pack);
        const auto at = battery::state_of(pack, 0.0, 0.0);
        const auto& piece = pack.open_circuit->piece(at.available_piece);
        for (std::size_t lane = 0; lane < 64; ++lane) {
            state->count[lane] = 1.0;
            state->resistance[lane] = pack.resistance;
            state->with_inverter.set(lane, pack);
            state->direct.set(lane, pack);
            state->sun[lane] = 0.0;
            packs->set(lane, pack);
            packs->taken[lane] = 13.0 * double(lane + 1);
            packs->charger[lane] = 0.0;
            from.removed[lane] = from.head[lane] = 0.0;
            from.available[lane] = at.available;
            state->at_zero[lane] = piece.at_zero;
            state->slope[lane] = piece.slope;
            state->tolerance[lane] = 1.0;
            state->available_low[lane] = state->bound_low[lane] = piece.low;
            state->available_high[lane] = state->bound_high[lane] = piece.high;
            state->coulombic[lane] = 1.0;
            state->least_removed[lane] = -1e300;
            state->most_removed[lane] = 1e300;
        }
        detail::own_stride(width, from, to, *state, state->direct, *packs,
                           {.time = 300.0, .alike = true, .decayed = battery::decay(0.0)}, 64,
                           false);
        for (std::size_t lane = 0; lane < 64; ++lane) {
            ASSERT_EQ(state->alone[lane], 0.0) << lane;
            double amperes = 0.0;
            for (int round = 0; round < 10; ++round) {
                const double rested = 13.5 - amperes * 300.0 / 2.0 / 360000.0;
                const double watts = 13.0 * double(lane + 1);
                amperes = (rested - std::sqrt(rested * rested - 4.0 * 0.010 * watts)) / 0.020;
            }
            EXPECT_NEAR(to.removed[lane], amperes * 300.0, 1e-9 * amperes * 300.0) << lane;
        }
    }
}

}  // namespace
