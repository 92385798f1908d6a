#include "abreast/segments.hpp"

#include "by_hand.hpp"

namespace {

using namespace units;
using by_hand::draws;

battery::Prepared pack(const battery::Kinetics& kinetics) {
    return battery::prepare({.kinetics = kinetics, .open_circuit = &by_hand::straight()});
}

TEST(segments, are_cut_where_a_load_switches_and_where_the_light_changes) {
    const outage::Unit unit{.bank = by_hand::pack_of(100.0 * ampere_hour, 0.01 * ohm)};
    const std::vector demand{draws(30.0 * watt), draws(50.0 * watt, 1.0 * hour)};
    const std::vector<Duration> sun{{}, 0.5 * hour, 2.0 * hour};
    const auto made =
        abreast::segments(unit, demand, sun, 3.0 * hour, pack(unit.bank.setup.kinetics));
    EXPECT_TRUE(made.lasts);
    EXPECT_EQ(made.horizon, 3.0 * hour);
    struct Wanted {
        double begins, ends, taken;
        int sun_step;
    };
    const std::vector<Wanted> wanted{{0.0, 1800.0, 30.0, 0},
                                     {1800.0, 3600.0, 30.0, 1},
                                     {3600.0, 7200.0, 50.0, 1},
                                     {7200.0, 10800.0, 50.0, 2}};
    ASSERT_EQ(made.all.size(), wanted.size());
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        EXPECT_EQ(made.all[i].begins, wanted[i].begins) << i;
        EXPECT_EQ(made.all[i].ends, wanted[i].ends) << i;
        EXPECT_EQ(made.all[i].time, wanted[i].ends - wanted[i].begins) << i;
        EXPECT_EQ(made.all[i].taken, wanted[i].taken) << i;
        EXPECT_EQ(made.all[i].sun_step, wanted[i].sun_step) << i;
        EXPECT_EQ(made.all[i].cut_off, 10.5) << i;
        EXPECT_FALSE(made.all[i].through_inverter) << i;
    }
}

// Half of 100 Ah in either well, a rate of one an hour, half an hour: x = 0.5, so that by hand
//   left   e^-0.5                      = 0.6065307
//   once   (1 - 0.6065307) / 0.5       = 0.7869387
//   twice  (1 - 0.7869387) / 0.5       = 0.4261226
// and an ampere lowers the mean fill of the available well by
//   1800 s (0.5 + (1 - c)/c 0.4261226) / 360,000 C = 0.004630613.
TEST(segments, know_what_an_ampere_does_to_the_available_well) {
    const outage::Unit unit{.bank = by_hand::pack_of(100.0 * ampere_hour, 0.01 * ohm)};
    const std::vector demand{draws(30.0 * watt)};
    const auto made = abreast::segments(
        unit, demand, {}, 0.5 * hour,
        pack({.total = 100.0 * ampere_hour, .available = Share(0.5), .rate = 1.0 / hour}));
    ASSERT_EQ(made.all.size(), 1U);
    EXPECT_NEAR(made.all[0].decayed.left, 0.6065307, 1e-7);
    EXPECT_NEAR(made.all[0].decayed.once, 0.7869387, 1e-7);
    EXPECT_NEAR(made.all[0].decayed.twice, 0.4261226, 1e-7);
    EXPECT_NEAR(made.all[0].fill_per_ampere, 0.004630613, 1e-9);
}

TEST(segments, end_where_the_inverter_is_asked_for_more_than_it_carries) {
    outage::Unit unit{.bank = by_hand::pack_of(100.0 * ampere_hour, 0.01 * ohm)};
    unit.inverter = inverter::Model{.continuous = 300.0 * watt,
                                    .continuous_apparent = 300.0 * volt_ampere,
                                    .losses = {.idle = 10.0 * watt, .rating = 300.0 * watt},
                                    .cutoff_voltage = 10.5 * volt};
    const std::vector<demand::DemandStep> demand{
        {.ac = 100.0 * watt, .inverter_on = true},
        {.from = 2.0 * hour, .ac = 301.0 * watt, .inverter_on = true}};
    const auto made =
        abreast::segments(unit, demand, {}, 5.0 * hour, pack(unit.bank.setup.kinetics));
    EXPECT_FALSE(made.lasts);
    EXPECT_EQ(made.horizon, 2.0 * hour);
    ASSERT_EQ(made.all.size(), 1U);
    EXPECT_DOUBLE_EQ(made.all[0].taken, 110.0);  // no losses but 10 W of idling
}

}  // namespace
