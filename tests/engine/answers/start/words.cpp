#include "answers/start/words.hpp"

#include <gtest/gtest.h>

namespace {

using namespace answers;
using namespace units;
using starting::Constraint;
using starting::StartVerdict;
using starting::Utilised;

starting::Judgement bound_by(Constraint constraint, double low, double high) {
    starting::Judgement judged{.binding = constraint};
    judged.used = {{constraint, spanning(Utilised(low), Utilised(low), Utilised(high))}};
    return judged;
}

// 4.32 kVA of 4 kVA are 108 %, 3.84 kVA of it 96 %.
TEST(start_words, a_surge_is_told_against_what_the_inverter_has) {
    auto judged = bound_by(Constraint::surge_power, 0.96, 1.08);
    judged.draw.apparent = {ApparentPower(3840.0 * watt), ApparentPower(4000.0 * watt),
                            ApparentPower(4320.0 * watt)};
    judged.draw.surge = {ApparentPower(4000.0 * watt), ApparentPower(4000.0 * watt),
                         ApparentPower(4000.0 * watt)};
    EXPECT_EQ(reason_of(judged, std::nullopt, {}),
              "it asks 3.84 to 4.32 kVA of the inverter, whose surge is 4 kVA (96 to 108 % of the "
              "limit)");
}

TEST(start_words, a_voltage_that_collapses_is_not_told_as_a_number_it_holds) {
    auto judged = bound_by(Constraint::low_voltage, 1.0, 2.0);
    judged.voltage = {11.2 * volt, 10.4 * volt, 9.0 * volt};
    starting::InverterSide inverter;
    inverter.cutoff = {10.5 * volt, 10.5 * volt, 10.5 * volt};
    EXPECT_EQ(reason_of(judged, inverter, {}),
              "the voltage at the inverter falls to 9 to 11.2 V, and it switches off at 10.5 V");
    judged.collapses = true;
    EXPECT_EQ(reason_of(judged, inverter, {}),
              "the voltage at the inverter stays at 11.2 V at best, or collapses, and it switches "
              "off at 10.5 V");
}

TEST(start_words, packs_are_counted_beside_those_that_are_there) {
    EXPECT_EQ(packs_in_words({.surely = 4}, 2), "two more packs (4 in all) make it start");
    EXPECT_EQ(packs_in_words({.surely = 3}, 2), "one more pack (3 in all) makes it start");
    EXPECT_EQ(packs_in_words({.surely = 2}, 2), "");
}

TEST(start_words, where_packs_do_not_help_the_limit_is_named) {
    EXPECT_EQ(
        packs_in_words({.because = Constraint::fuse, .at_best = StartVerdict::will_not_start}, 2),
        "more packs do not help: a fuse is the limit");
    EXPECT_EQ(
        packs_in_words({.because = Constraint::surge_power, .at_best = StartVerdict::marginal}, 2),
        "more packs do not make it sure: the inverter is the limit");
    EXPECT_EQ(
        packs_in_words(
            {.perhaps = 3, .because = Constraint::torque, .at_best = StartVerdict::marginal}, 2),
        "with one more pack (3 in all) it may start; no number of packs makes it sure: the "
        "torque of the motor is the limit");
}

TEST(start_words, uses_are_whole_percents_of_the_limit) {
    const auto used = [](double low, double high) {
        return spanning(Utilised(low), Utilised(0.5 * (low + high)), Utilised(high));
    };
    EXPECT_EQ(in_percent(used(0.78, 1.13)), "78 to 113 %");
    EXPECT_EQ(in_percent(used(0.5, 0.5)), "50 %");
    EXPECT_EQ(in_percent(used(1.2, 1000.0)), "120 to > 999 %");
    EXPECT_EQ(in_percent(used(20.0, 1000.0)), "> 999 %");
}

// 120 A and 100 A for 5 s; the start takes half a second.
TEST(start_words, the_weakest_protection_tells_what_one_pack_may_give) {
    auto judged = bound_by(Constraint::pack_current, 1.1, 1.4);
    judged.pack_current = {110.0 * ampere, 120.0 * ampere, 140.0 * ampere};
    judged.draw.time = {0.5 * second, 0.5 * second, 0.5 * second};
    EXPECT_EQ(reason_of(judged, std::nullopt, {}),
              "one pack would carry 110 to 140 A for 500 ms, more than its protection lets "
              "through");
    starting::DirectSource source;
    for (const Current& held : {120.0 * ampere, 100.0 * ampere})
        source.branches.push_back({.limits = {.pulse = {{held, 5.0 * second}}}});
    EXPECT_EQ(reason_of(judged, std::nullopt, source),
              "one pack would carry 110 to 140 A, and its protection lets 100 A through for 500 "
              "ms");
}

TEST(start_words, what_helps_is_told_in_whole_sentences_without_what_does_not) {
    starting::LoadStart start{.name = "pump"};
    start.judged.verdict = StartVerdict::marginal;
    start.packs = {.because = Constraint::surge_power, .at_best = StartVerdict::marginal};
    start.settling = starting::Settling{.find = words::said<"measure it">(), .either_way = true};
    start.what_ifs = {
        {words::said<"with a soft-start device">(), StartVerdict::starts, Constraint::fuse},
        {words::said<"with the packs full">(), StartVerdict::marginal, Constraint::fuse},
        {words::said<"with one pack more">(), StartVerdict::starts, Constraint::fuse}};
    EXPECT_EQ(mend_of(start, 2),
              "More packs do not make it sure: the inverter is the limit. Measure it: that settles "
              "it. With a soft-start device it starts.");
}

}  // namespace
