#include "battery/cell/cold_lock.hpp"

#include <gtest/gtest.h>

#include "battery/advance.hpp"
#include "battery/pack_model.hpp"

namespace {

using namespace battery;
using namespace units;
using scenario::Chemistry;

scenario::Pack pack_of(Chemistry chemistry) {
    scenario::Pack pack{.name = "main", .chemistry = chemistry};
    pack.capacity = 100.0 * ampere_hour;
    return pack;
}

// What is let out at a rate, as a part of the charge.
double out(Chemistry chemistry, double degrees, double rate) {
    const Charge rated = 100.0 * ampere_hour;
    return 1.0 - cold_lock(chemistry, celsius(degrees), rated).at(rate * per_hour * rated).value();
}

Duration lasts(const PackModel& model, Current current) {
    const auto arrangement = arranged(model, Resistance{}, {.removed_above = 1e9 * coulomb});
    return advance(prepare(arrangement), model.at_start, current, 100.0 * hour).time;
}

PackModel made(Chemistry chemistry, double degrees) {
    scenario::Assumptions untold;
    return pack_model(pack_of(chemistry), "pack[0]", celsius(degrees), untold).value();
}

// Worked by hand from f = 1 - (1 - f0) i/0.33 with f0 0.85, 0.80 and 0.55 at 5, 0 and -20 degC,
// which lie between the guarantees of [LiFePO4 series manuals] and what single cells gave.
TEST(cold_lock, lithium_is_locked_in_proportion_to_the_rate) {
    EXPECT_NEAR(out(Chemistry::lifepo4, 5.0, 0.03), 0.986, 5e-4);
    EXPECT_NEAR(out(Chemistry::lifepo4, 5.0, 0.1), 0.955, 5e-4);
    EXPECT_NEAR(out(Chemistry::lifepo4, 5.0, 0.33), 0.85, 5e-4);
    EXPECT_NEAR(out(Chemistry::lifepo4, 0.0, 0.03), 0.982, 5e-4);
    EXPECT_NEAR(out(Chemistry::lifepo4, -20.0, 0.03), 0.959, 5e-4);
    EXPECT_NEAR(out(Chemistry::lifepo4, -20.0, 0.1), 0.864, 5e-4);
    EXPECT_NEAR(out(Chemistry::lifepo4, -20.0, 2.0), 1.0 - 1.5 * 0.45, 5e-4);
    EXPECT_FALSE(cold_lock(Chemistry::lifepo4, celsius(25.0), 100.0 * ampere_hour).by_rate());
}

// By hand: 1 - (0.006 + 0.004 ln(i/0.1)/ln(3.3)) (25 - T), its end points from [Lead-acid support page] and memory.
TEST(cold_lock, gel_gives_less_to_a_fast_draw) {
    EXPECT_NEAR(out(Chemistry::gel, 0.0, 0.05), 0.85, 5e-4);
    EXPECT_NEAR(out(Chemistry::gel, 0.0, 0.2), 0.792, 3e-3);
    EXPECT_NEAR(out(Chemistry::gel, 0.0, 0.6), 0.75, 5e-4);
    EXPECT_NEAR(out(Chemistry::gel, -10.0, 0.05), 0.79, 5e-4);
    EXPECT_NEAR(out(Chemistry::gel, -10.0, 0.2), 0.709, 4e-3);
    EXPECT_NEAR(out(Chemistry::gel, -10.0, 0.6), 0.65, 5e-4);
}

// [AGM temperature table], by how long the discharge takes.
TEST(cold_lock, agm_has_a_row_for_each_length_of_a_discharge) {
    EXPECT_NEAR(out(Chemistry::agm, 0.0, 0.3), 0.84, 1e-9);
    EXPECT_NEAR(out(Chemistry::agm, 0.0, 1.0), 0.82, 1e-9);
    EXPECT_NEAR(out(Chemistry::agm, 0.0, 2.0), 0.80, 1e-9);
    EXPECT_NEAR(out(Chemistry::agm, 15.0, 1.0), 0.93, 1e-9);
}

// 60 A on 100 Ah of gel: 0.733 of the time at 0 degC and 0.629 at -10 degC, a closed form of the
// two wells integrated outside this program; not 0.838 and 0.775, which its slow rows give.
TEST(cold_lock, a_fast_draw_on_cold_gel_ends_as_early_as_it_does) {
    const auto warm = lasts(made(Chemistry::gel, 25.0), 60.0 * ampere);
    EXPECT_NEAR(lasts(made(Chemistry::gel, 0.0), 60.0 * ampere) / warm, 0.733, 0.003);
    EXPECT_NEAR(lasts(made(Chemistry::gel, -10.0), 60.0 * ampere) / warm, 0.629, 0.003);
}

// Locked at one current, free at a lower one; and by a power as by the current it comes to.
TEST(cold_lock, a_gentler_draw_gets_what_a_harder_one_left) {
    const PackModel model = made(Chemistry::lifepo4, -10.0);
    const auto arrangement = arranged(model, Resistance{}, {.removed_above = 1e9 * coulomb});
    const Prepared pack = prepare(arrangement);
    const auto hard = advance(pack, model.at_start, 400.0 * watt, 100.0 * hour);
    EXPECT_EQ(hard.ending, Ending::available_well_empty);
    EXPECT_EQ(advance(pack, hard.wells, 400.0 * watt, 1.0 * hour).time, Duration{});
    const double left = 1.0 - hard.wells.removed / model.capacity;
    EXPECT_NEAR(left, model.locked.at(hard.current).value(), 1e-6);
    const auto gentle = advance(pack, hard.wells, 40.0 * watt, 100.0 * hour);
    EXPECT_GT(gentle.time, 1.0 * hour);
    EXPECT_LT(1.0 - gentle.wells.removed / model.capacity, left);
}

}  // namespace
