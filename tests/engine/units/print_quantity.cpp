#include <limits>

#include "units/text.hpp"

namespace {

using namespace units;

TEST(print_quantity, prints_the_unit_customary_in_a_file) {
    EXPECT_EQ(print(100.0 * ampere_hour), "100 Ah");
    EXPECT_EQ(print(2400.0 * watt), "2400 W");
    EXPECT_EQ(print(1.9 * 1000.0 * watt_hour), "1.9 kWh");
    EXPECT_EQ(print(100.0 * watt_hour), "100 Wh");
    EXPECT_EQ(print(12.8 * volt), "12.8 V");
    EXPECT_EQ(print(0.015 * ampere), "15 mA");
    EXPECT_EQ(print(11.0 * ampere), "11 A");
    EXPECT_EQ(print(0.0002 * ohm), "0.2 mohm");
    EXPECT_EQ(print(celsius(25.0)), "25 degC");
    EXPECT_EQ(print(celsius(-4.5)), "-4.5 degC");
    EXPECT_EQ(print(5.0 * kelvin), "5 K");
    EXPECT_EQ(print(45.0 * degree), "45 deg");
    EXPECT_EQ(print(20.0 * kilogram), "20 kg");
    EXPECT_EQ(print(16e-6 * square_metre), "16 mm2");
    EXPECT_EQ(print(0.54 * square_metre), "0.54 m2");
    EXPECT_EQ(print(1000.0 * watt_per_square_metre), "1000 W/m2");
    EXPECT_EQ(print(4.5 * kilowatt_hour_per_square_metre), "4.5 kWh/m2");
    EXPECT_EQ(print(0.5 * per_hour), "0.5 1/h");
    EXPECT_EQ(print(60.0 * hertz), "60 Hz");
    EXPECT_EQ(print(1000.0 * volt_ampere), "1000 VA");
    EXPECT_EQ(print(ReactivePower(5.0 * watt)), "5 var");
}

TEST(print_quantity, prints_a_duration_in_the_unit_with_the_fewest_digits) {
    EXPECT_EQ(print(20.0 * hour), "20 h");
    EXPECT_EQ(print(4.0 * day), "4 d");
    EXPECT_EQ(print(90.0 * minute), "90 min");
    EXPECT_EQ(print(5.0 * second), "5 s");
    EXPECT_EQ(print(1.5 * second), "1.5 s");
    EXPECT_EQ(print(Duration()), "0 h");
}

TEST(print_quantity, prints_feet_where_metres_take_more_digits) {
    EXPECT_EQ(print(0.9144 * metre), "3 ft");
    EXPECT_EQ(print(2.0 * metre), "2 m");
}

TEST(print_quantity, prints_fractions_in_percent_and_power_factors_and_prices_bare) {
    EXPECT_EQ(print(StateOfCharge(0.9)), "90 %");
    EXPECT_EQ(print(Efficiency(0.875)), "87.5 %");
    EXPECT_EQ(print(StateOfCharge(1.0)), "100 %");  // not "1", which is shorter
    EXPECT_EQ(print(PowerFactor(0.8)), "0.8");
    EXPECT_EQ(print(Price(120.5)), "120.5");
}

TEST(print_quantity, has_no_negative_nothing) {
    EXPECT_EQ(print(-0.0 * volt), "0 V");
    EXPECT_EQ(in_customary_unit(-0.0 * volt).value, 0.0);
    EXPECT_FALSE(std::signbit(in_customary_unit(-0.0 * volt).value));
}

TEST(print_quantity, falls_back_to_si_where_the_customary_unit_cannot_tell_neighbours_apart) {
    const Duration shortest = Duration::from_value(std::numeric_limits<double>::denorm_min());
    EXPECT_EQ(*read<Duration>(print(shortest)), shortest);
    const Temperature nearly_absolute_zero = Temperature(1e-20 * kelvin);
    EXPECT_EQ(print(nearly_absolute_zero), "1e-20 K");
}

TEST(print_quantity, prints_in_a_unit_of_choice) {
    EXPECT_EQ(print_in(2.5e-6 * square_metre, "mm2"), "2.5 mm2");
    EXPECT_EQ(print_in(20.0 * hour, "min"), "1200 min");
}

TEST(in_customary_unit, gives_one_unit_for_one_kind) {
    EXPECT_EQ(in_customary_unit(20.0 * watt), (Printed{20.0, "W"}));
    EXPECT_EQ(in_customary_unit(1000.0 * volt_ampere), (Printed{1000.0, "V.A"}));
    EXPECT_EQ(in_customary_unit(ReactivePower(5.0 * watt)), (Printed{5.0, "var"}));
    EXPECT_EQ(in_customary_unit(1900.0 * watt_hour), (Printed{1900.0, "W.h"}));
    EXPECT_EQ(in_customary_unit(100.0 * ampere_hour), (Printed{100.0, "A.h"}));
    EXPECT_EQ(in_customary_unit(12.8 * volt), (Printed{12.8, "V"}));
    EXPECT_EQ(in_customary_unit(0.015 * ampere), (Printed{0.015, "A"}));
    EXPECT_EQ(in_customary_unit(0.004 * ohm), (Printed{0.004, "Ohm"}));
    EXPECT_EQ(in_customary_unit(celsius(25.0)), (Printed{25.0, "Cel"}));
    EXPECT_EQ(in_customary_unit(5.0 * kelvin), (Printed{5.0, "K"}));
    EXPECT_EQ(in_customary_unit(4.0 * day), (Printed{96.0, "h"}));
    EXPECT_EQ(in_customary_unit(2.0 * metre), (Printed{2.0, "m"}));
    EXPECT_EQ(in_customary_unit(16e-6 * square_metre), (Printed{16e-6, "m2"}));
    EXPECT_EQ(in_customary_unit(Volume::from_value(0.002)), (Printed{2.0, "L"}));
    EXPECT_EQ(in_customary_unit(20.0 * kilogram), (Printed{20.0, "kg"}));
    EXPECT_EQ(in_customary_unit(45.0 * degree), (Printed{45.0, "deg"}));
    EXPECT_EQ(in_customary_unit(1000.0 * watt_per_square_metre), (Printed{1000.0, "W/m2"}));
    EXPECT_EQ(in_customary_unit(4.5 * kilowatt_hour_per_square_metre), (Printed{4500.0, "W.h/m2"}));
    EXPECT_EQ(in_customary_unit(60.0 * hertz), (Printed{60.0, "Hz"}));
    EXPECT_EQ(in_customary_unit(Torque::from_value(2.0)), (Printed{2.0, "N.m"}));
    EXPECT_EQ(in_customary_unit(Inertia::from_value(2.0)), (Printed{2.0, "kg.m2"}));
    EXPECT_EQ(in_customary_unit(Force::from_value(2.0)), (Printed{2.0, "N"}));
    EXPECT_EQ(in_customary_unit(AngularVelocity::from_value(2.0)), (Printed{2.0, "rad/s"}));
    EXPECT_EQ(in_customary_unit(Probability(0.9)), (Printed{90.0, "%"}));
    EXPECT_EQ(in_customary_unit(PowerFactor(0.8)), (Printed{0.8, "1"}));
    EXPECT_EQ(in_customary_unit(Price(120.5)), (Printed{120.5, "1"}));
}

}  // namespace
