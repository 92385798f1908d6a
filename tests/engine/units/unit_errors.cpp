// What is said of a text whose unit is missing, of another kind, or means nothing.
#include "units/written/unit_errors.hpp"

#include "units/text.hpp"

namespace {

using namespace units;
using enum Dimension;

struct Refusal {
    Dimension wanted;
    std::string_view text;
    std::string_view said;  // the whole error
};

void expect_refused(std::initializer_list<Refusal> refusals) {
    for (const Refusal& refusal : refusals) {
        const Result<double> read = read_si(refusal.wanted, refusal.text);
        ASSERT_FALSE(read.has_value()) << refusal.text << " gave " << *read;
        ASSERT_EQ(read.error().size(), 1U);
        EXPECT_EQ(read.error().front().where, "");
        EXPECT_EQ(print(read.error().front()), refusal.said);
    }
}

TEST(unit_errors, names_both_kinds_when_one_is_found_and_another_wanted) {
    expect_refused({
        {charge, "100 Wh", "found 100 Wh, which is energy; give charge, such as 100 Ah"},
        {voltage, "12 A", "found 12 A, which is current; give voltage, such as 12.8 V"},
        {fraction, "90 W", "found 90 W, which is power; give a fraction, such as 90 % or 0.9"},
        {irradiation, "4.5 h",
         "found 4.5 h, which is duration; give irradiation, such as 4.5 kWh/m2"},
        {frequency, "1800 rpm",
         "found 1800 rpm, which is angular velocity; give frequency, such as 60 Hz"},
        {price, "5 %", "found 5 %, which is a fraction; give a price, such as 120.50"},
        {mass, "5 lbf", "found 5 lbf, which is force; give mass, such as 20 kg"},
    });
}

TEST(unit_errors, says_how_the_wanted_kind_follows_from_the_one_found) {
    expect_refused({
        {power, "1.9 kWh",
         "found 1.9 kWh, which is energy; say over how long, such as metered = {energy = \"1.9 "
         "kWh\", "
         "over = \"31 h\"}, or give power, such as 100 W"},
        {energy, "100 W",
         "found 100 W, which is power; give energy, such as 1.9 kWh; power becomes energy once it "
         "lasts for a time"},
        {charge, "100 A",
         "found 100 A, which is current; give charge, such as 100 Ah; current becomes charge once "
         "it "
         "lasts for a time"},
        {apparent_power, "800 W",
         "found 800 W, which is power; give apparent power, such as 1000 VA; it is real power "
         "divided "
         "by the power factor"},
        {power, "1000 VA",
         "found 1000 VA, which is apparent power; give real power, such as 100 W; it is apparent "
         "power "
         "times the power factor"},
        {temperature, "25 C", "found 25 C, which is charge; C is coulomb; write degC"},
        {duration, "90 m",
         "found 90 m, which is length; write min for minutes, or give another duration, such as 20 "
         "h"},
    });
}

TEST(unit_errors, asks_for_the_unit_that_is_missing) {
    expect_refused({
        {voltage, "12", "12 has no unit; give voltage, such as 12 V"},
        {charge, "100", "100 has no unit; give charge, such as 100 Ah"},
        {temperature, "-4", "-4 has no unit; give temperature, such as -4 degC"},
        {duration, "2 d 6", "2 d 6 has no unit; give duration, such as 2 d 6 h"},
        {power, "1.000000000000000", "1.000000000000000 has no unit; give power, such as 100 W"},
    });
}

TEST(unit_errors, explains_units_that_mean_nothing) {
    expect_refused({
        {power, "100 W/h",
         "found '100 W/h': a watt is already a rate, so watts per hour is not what a load draws; "
         "power "
         "is in W, and power over time is energy in Wh; give power, such as 100 W"},
        {energy, "100 watts per hour",
         "found '100 watts per hour': a watt is already a rate, so watts per hour is not what a "
         "load "
         "draws; power is in W, and power over time is energy in Wh; give energy, such as 1.9 kWh"},
        {current, "2 A/h",
         "found '2 A/h': an ampere is already a rate, so amperes per hour is not what a load "
         "draws; "
         "current is in A, and current over time is charge in Ah; give current, such as 15 A"},
        {power, "30 kWh/month",
         "found '30 kWh/month': months differ in length; count in d or yr; give power, such as 100 "
         "W"},
        {power, "2 kWh/h",
         "found '2 kWh/h': energy over an hour, for an hour, is power; write W or kW; give power, "
         "such "
         "as 100 W"},
    });
}

}  // namespace
