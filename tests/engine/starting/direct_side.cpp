#include "starting/direct_side.hpp"

#include "engine/starting/made_start.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace made_start;

TEST(direct_side, packs_that_differ_carry_each_by_its_own_voltage_and_resistance) {
    DirectSource source{
        .branches = {{.name = "new", .emf = 13.2 * volt, .path = exactly(0.004 * ohm), .count = 1},
                     {.name = "old", .emf = 12.9 * volt, .path = exactly(0.012 * ohm), .count = 2}},
        .shared = 0.001 * ohm,
        .imbalance = Imbalance(1.0)};
    const auto behind = equivalent(source, End::likely);
    const auto point = at_power(behind, 1500.0 * watt);
    const auto one = of_one_pack(source, source.branches[0], End::likely, point.bus);
    const auto other = of_one_pack(source, source.branches[1], End::likely, point.bus);
    EXPECT_NEAR((one + 2.0 * other) / ampere, point.current / ampere, 1e-9);
    EXPECT_NEAR(point.voltage * point.current / watt, 1500.0, 1e-6);
    EXPECT_GT(one, 3.0 * other);
}

TEST(direct_side, the_protection_of_a_pack_lets_more_through_for_a_short_time) {
    const TimedLimits stated{
        .continuous = 100.0 * ampere,
        .pulse = {{200.0 * ampere, 5.0 * second}, {400.0 * ampere, 3.0 * second}}};
    EXPECT_NEAR(*allowed_for(stated, 1.0 * second).low / ampere, 400.0, 1e-9);
    EXPECT_NEAR(*allowed_for(stated, 4.0 * second).low / ampere, 200.0, 1e-9);
    EXPECT_NEAR(*allowed_for(stated, 10.0 * second).low / ampere, 100.0, 1e-9);
    const TimedLimits silent{.continuous = 100.0 * ampere};
    EXPECT_NEAR(*allowed_for(silent, 0.3 * second).low / ampere, 100.0, 1e-9);
    EXPECT_NEAR(*allowed_for(silent, 0.3 * second).high / ampere, 300.0, 1e-9);
    EXPECT_NEAR(*allowed_for(silent, 2.0 * second).high / ampere, 100.0, 1e-9);
    EXPECT_FALSE(allowed_for({}, 1.0 * second).low);
}

// By hand: 12 V behind 10 milliohm. 1,000 W settles at V = (12 + sqrt(144 - 40))/2 = 11.099 V and
// 90.1 A; the most is 144/0.04 = 3,600 W, at 6 V and 600 A.
TEST(direct_side, a_power_settles_at_the_higher_of_two_voltages) {
    const Equivalent source{.emf = 12.0 * volt, .branches = 0.004 * ohm, .shared = 0.006 * ohm};
    const auto point = at_power(source, 1000.0 * watt);
    EXPECT_TRUE(point.possible);
    EXPECT_NEAR(point.voltage / volt, 11.0990, 1e-4);
    EXPECT_NEAR(point.current / ampere, 90.0981, 1e-3);
    EXPECT_NEAR(point.bus / volt, 12.0 - 0.004 * 90.0981, 1e-4);
    EXPECT_NEAR(point.at_most / watt, 3600.0, 1e-6);
    const auto beyond = at_power(source, 3700.0 * watt);
    EXPECT_FALSE(beyond.possible);
    EXPECT_NEAR(beyond.voltage / volt, 6.0, 1e-6);
    EXPECT_NEAR(beyond.current / ampere, 600.0, 1e-6);
}

// Two branches of 10 and 20 milliohm at 13 and 12 V: (13/10 + 12/20)/(1/10 + 1/20) = 12.667 V
// behind 6.667 milliohm.
TEST(direct_side, branches_in_parallel_are_one_source) {
    const DirectSource source{
        .branches = {{.name = "a", .emf = 13.0 * volt, .path = exactly(0.010 * ohm), .count = 1},
                     {.name = "b", .emf = 12.0 * volt, .path = exactly(0.020 * ohm), .count = 1}}};
    const auto one = equivalent(source, End::likely);
    EXPECT_NEAR(one.emf / volt, 12.6667, 1e-4);
    EXPECT_NEAR(one.branches / ohm, 0.0066667, 1e-7);
    EXPECT_EQ(packs_of(source), 2);
}

units::Result<Bank> bank(const std::string& packs) {
    const auto read = scenario::read_scenario(
        "format = 1\n[outage]\nstarts = 2026-01-14T18:00:00\nlasts = \"1 d\"\n" + packs, "");
    EXPECT_TRUE(read) << (read ? "" : print(read.error().front()));
    const auto built = unit::built(read->scenario, {.packs = units::celsius(25.0)});
    EXPECT_TRUE(built);
    return bank_of(*built, std::nullopt);
}

// 100 Ah at half and 3 of 100 Ah full: 350 of 400 Ah.
TEST(direct_side, the_charge_of_a_bank_is_that_of_all_packs_together) {
    const auto found = bank(
        "[[pack]]\nname = \"a\"\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\ncharge = \"50 "
        "%\"\n"
        "[[pack]]\nname = \"b\"\ncount = 3\ncharge = \"100 %\"\n");
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->charge.value(), 0.875, 0.002);
    EXPECT_EQ(packs_of(found->source), 4);
}

TEST(direct_side, packs_of_two_chemistries_are_refused_at_the_second) {
    const auto found = bank(
        "[[pack]]\nname = \"a\"\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\n"
        "[[pack]]\nname = \"b\"\nchemistry = \"agm\"\ncapacity = \"100 Ah\"\n");
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().front().where, "pack[1].chemistry");
}

}  // namespace
