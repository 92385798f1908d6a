// One percent in and out: what a file gives, what a meter reads, what the clock holds.
#include <cmath>

#include "battery/advance.hpp"
#include "battery/cell/chemistry.hpp"
#include "battery/pack_model.hpp"

namespace {

using namespace battery;
using namespace units;
using scenario::Chemistry;

constexpr Chemistry all[] = {Chemistry::flooded, Chemistry::agm, Chemistry::gel,
                             Chemistry::lifepo4};

PackModel model_of(Chemistry chemistry, double charge) {
    scenario::Pack pack;
    pack.chemistry = chemistry;
    pack.capacity = 100.0 * ampere_hour;
    pack.charge = StateOfCharge(charge);
    pack.rated_over = 20.0 * hour;
    scenario::Assumptions taken;
    return pack_model(pack, "pack[0]", celsius(25.0), taken).value();
}

// Worked by hand from the two-well equations for a discharge over 20 h, five digits: total of both
// wells over the rated charge, fill of both at 80, 50, 20 and 0 % left, and the volts at 0 % and
// with both wells empty (the makers' tables, and straight on along their last two rows).
TEST(published_percent, of_the_wells_that_are_taken_for_each_chemistry) {
    const struct {
        Chemistry chemistry;
        double ratio, fills[4], lowest, at_nothing, at_lowest;
    } rows[] = {
        {Chemistry::flooded, 1.094684, {.81730, .54325, .26920, .08649}, -.0947, 11.358, 11.216},
        {Chemistry::agm, 1.066123, {.81240, .53101, .24962, .06202}, -.0661, 11.700, 11.601},
        {Chemistry::gel, 1.058727, {.81109, .52773, .24438, .05547}, -.0587, 11.600, 11.483},
        {Chemistry::lifepo4, 1.0, {.8, .5, .2, .0}, 0.0, 8.0408, 8.0408}};
    for (const auto& row : rows) {
        const PackModel model = model_of(row.chemistry, 1.0);
        const auto name = defaults_of(row.chemistry).name;
        EXPECT_NEAR(model.kinetics.total / model.capacity, row.ratio, 0.6e-6) << name;
        const double charges[] = {0.8, 0.5, 0.2, 0.0};
        for (int i = 0; i < 4; ++i)
            EXPECT_NEAR(
                fill_with(model.kinetics, model.capacity, StateOfCharge(charges[i])).value(),
                row.fills[i], 0.6e-5)
                << name;
        EXPECT_NEAR(lowest_charge(model.kinetics, model.capacity).value(), row.lowest, 0.6e-4);
        EXPECT_NEAR(
            model.at_rest.voltage(fill_with(model.kinetics, model.capacity, StateOfCharge(0.0))) /
                volt,
            row.at_nothing, 0.6e-3)
            << name;
        EXPECT_NEAR(model.at_rest.voltage(StateOfCharge(0.0)) / volt, row.at_lowest, 0.6e-3)
            << name;
    }
}

// 1 mW for an hour takes 1e-4 Ah.
TEST(published_percent, half_full_is_half_full_after_an_hour_of_next_to_nothing) {
    for (const Chemistry chemistry : all) {
        const PackModel model = model_of(chemistry, 0.5);
        const Advanced run = advance(prepare(arranged(model, Resistance{}, {})), model.at_start,
                                     0.001 * watt, 1.0 * hour);
        EXPECT_NEAR(charge_left(model.capacity, run.wells).value(), 0.5, 1e-6)
            << defaults_of(chemistry).name;
    }
}

// The voltages of the makers' tables at each tenth.
TEST(published_percent, a_pack_rests_at_the_voltage_of_its_table) {
    for (const Chemistry chemistry : all)
        for (int tenth = 0; tenth <= 10; ++tenth) {
            const PackModel model = model_of(chemistry, 0.1 * tenth);
            EXPECT_NEAR(
                model.at_rest.voltage(available_fill(model.kinetics, model.at_start)) / volt,
                open_circuit_of(chemistry).voltage(StateOfCharge(0.1 * tenth)) / volt, 1e-11);
        }
}

}  // namespace
