#include <numbers>

#include "units/text.hpp"

namespace {

using namespace units;

// A text that is read, and its value in SI units worked out by hand from the cited factors.
struct Reading {
    Dimension wanted;
    std::string_view text;
    double si;
};

void expect_read(std::initializer_list<Reading> readings) {
    for (const Reading& reading : readings) {
        const Result<double> read = read_si(reading.wanted, reading.text);
        ASSERT_TRUE(read.has_value()) << print(read.error().front());
        const double tolerance = 4e-16 * std::abs(reading.si);  // two roundings of a double
        EXPECT_NEAR(*read, reading.si, tolerance) << reading.text;
    }
}

using enum Dimension;

TEST(read_quantity, units_of_power_are_read) {
    expect_read(
        {Reading{power, "100 W", 100.0}, Reading{power, "100W", 100.0},
         Reading{power, "100 watts", 100.0}, Reading{power, "1 watt", 1.0},
         Reading{power, "2.4 kW", 2400.0}, Reading{power, "5 mW", 0.005},
         Reading{power, "1 MW", 1e6},
         // [NIST SP 811] B.8: horsepower (550 ft lbf/s) 7.456 999 E+02
         Reading{power, "1 hp", 745.69987158227022}, Reading{power, "1/2 hp", 372.84993579113511},
         Reading{power, "½ hp", 372.84993579113511}, Reading{power, ".5hp", 372.84993579113511},
         Reading{power, "1 1/2 hp", 1118.5498073734053},
         Reading{power, "1½ hp", 1118.5498073734053},
         // 450 kWh over 8760 h
         Reading{power, "450 kWh/yr", 51.36986301369863},
         Reading{power, "450 kWh/year", 51.36986301369863},
         Reading{power, "450 kWh / a", 51.36986301369863}, Reading{power, "1.2 kWh/d", 50.0},
         Reading{power, "1.2 kWh/day", 50.0}, Reading{power, "240 Wh/d", 10.0},
         Reading{power, "240 Wh/day", 10.0}});
}

TEST(read_quantity, units_of_electricity_are_read) {
    expect_read({Reading{apparent_power, "2.2 kVA", 2200.0},
                 Reading{apparent_power, "5 VA", 5.0},
                 Reading{apparent_power, "5 V.A", 5.0},
                 Reading{apparent_power, "1 MVA", 1e6},
                 Reading{reactive_power, "500 var", 500.0},
                 Reading{reactive_power, "-1.5 kvar", -1500.0},
                 Reading{energy, "1.9 kWh", 6.84e6},
                 Reading{energy, "1.9kWh", 6.84e6},
                 Reading{energy, "1,9 kWh", 6.84e6},
                 Reading{energy, "1.9 kW h", 6.84e6},
                 Reading{energy, "1.9 kW-h", 6.84e6},
                 Reading{energy, "1.9 kW·h", 6.84e6},
                 Reading{energy, "100 Wh", 3.6e5},
                 Reading{energy, "100 W.h", 3.6e5},
                 Reading{energy, "500 mWh", 1800.0},
                 Reading{energy, "1 MWh", 3.6e9},
                 Reading{energy, "7 J", 7.0},
                 Reading{energy, "7 kJ", 7e3},
                 Reading{energy, "7 MJ", 7e6},
                 Reading{energy, "7 Ws", 7.0},
                 Reading{energy, "7 W s", 7.0},
                 Reading{charge, "100 Ah", 3.6e5},
                 Reading{charge, "100 A h", 3.6e5},
                 Reading{charge, "2500 mAh", 9000.0},
                 Reading{charge, "1 kAh", 3.6e6},
                 Reading{charge, "9 C", 9.0},
                 Reading{charge, "9 As", 9.0},
                 Reading{charge, "9 A s", 9.0},
                 Reading{voltage, "12.8 V", 12.8},
                 Reading{voltage, "50 mV", 0.05},
                 Reading{voltage, "1 kV", 1000.0},
                 Reading{voltage, "12 volts", 12.0},
                 Reading{voltage, "1 volt", 1.0},
                 Reading{current, "15 mA", 0.015},
                 Reading{current, "200 A", 200.0},
                 Reading{current, "3 amps", 3.0},
                 Reading{current, "1 amp", 1.0},
                 Reading{current, "1 ampere", 1.0},
                 Reading{current, "2 amperes", 2.0},
                 Reading{current, "40 µA", 40e-6},
                 Reading{current, "40 uA", 40e-6},
                 Reading{current, "10 kA", 1e4}});
}

TEST(read_quantity, units_of_resistance_are_read) {
    expect_read({Reading{resistance, "0.2 mohm", 0.0002}, Reading{resistance, "4 mOhm", 0.004},
                 Reading{resistance, "6 mΩ", 0.006}, Reading{resistance, "6 m\u2126", 0.006},
                 Reading{resistance, "5 ohm", 5.0}, Reading{resistance, "5 Ohm", 5.0},
                 Reading{resistance, "5 ohms", 5.0}, Reading{resistance, "5 uohm", 5e-6},
                 Reading{resistance, "5 μΩ", 5e-6}, Reading{resistance, "5 uOhm", 5e-6},
                 Reading{resistance, "5 kohm", 5e3}, Reading{resistance, "5 kOhm", 5e3},
                 Reading{resistance, "5 Mohm", 5e6}, Reading{resistance, "5 MΩ", 5e6},
                 Reading{resistance, "5 MOhm", 5e6}});
}

TEST(read_quantity, temperatures_are_read) {
    expect_read({Reading{temperature, "25 degC", 298.15}, Reading{temperature, "25 °C", 298.15},
                 Reading{temperature, "25°C", 298.15}, Reading{temperature, "25 Cel", 298.15},
                 // [NIST SP 811] B.8: T/K = (t/degF + 459.67)/1.8
                 Reading{temperature, "77 degF", 298.15}, Reading{temperature, "-40 degF", 233.15},
                 Reading{temperature, "−40 °C", 233.15}, Reading{temperature, "300 K", 300.0},
                 Reading{temperature_difference, "5 K", 5.0},
                 Reading{temperature_difference, "5 degC", 5.0},
                 Reading{temperature_difference, "9 degF", 5.0}});
}

TEST(read_quantity, durations_and_their_sums_are_read) {
    expect_read({Reading{duration, "20 h", 72000.0}, Reading{duration, "4 d", 345600.0},
                 Reading{duration, "2 d 6 h", 194400.0},
                 Reading{duration, "1 d 2 h 3 min 4.5 s", 93784.5},
                 Reading{duration, "90 min", 5400.0}, Reading{duration, "1 s", 1.0},
                 Reading{duration, "250 ms", 0.25}, Reading{duration, "250 us", 0.00025},
                 Reading{duration, "1/2 h", 1800.0}, Reading{duration, "1/20 h", 180.0},
                 Reading{duration, "2 hours", 7200.0}, Reading{duration, "1 hour", 3600.0},
                 Reading{duration, "2 hr", 7200.0}, Reading{duration, "2 hrs", 7200.0},
                 Reading{duration, "2 days 6 hours", 194400.0}, Reading{duration, "1 day", 86400.0},
                 Reading{duration, "5 minutes", 300.0}, Reading{duration, "1 minute", 60.0},
                 Reading{duration, "5 seconds", 5.0}, Reading{duration, "1 second", 1.0},
                 Reading{duration, "5 sec", 5.0}, Reading{duration, "2 wk", 1209600.0},
                 Reading{duration, "2 weeks", 1209600.0}, Reading{duration, "1 week", 604800.0},
                 // [NIST SP 811] B.8: year (365 days) 3.1536 E+07 s
                 Reading{duration, "1 yr", 3.1536e7}, Reading{duration, "1 year", 3.1536e7},
                 Reading{duration, "2 years", 6.3072e7}, Reading{duration, "4.5 h/d", 16200.0}});
}

TEST(read_quantity, lengths_areas_volumes_and_angles_are_read) {
    expect_read(
        {// [NIST SP 811] B.8: foot 0.3048, inch 0.0254, yard 0.9144, all exact
         Reading{length, "3 ft", 0.9144}, Reading{length, "7/16 in", 0.0111125},
         Reading{length, "3 ft 6 in", 1.0668}, Reading{length, "3 feet 6 inches", 1.0668},
         Reading{length, "1 foot 1 inch", 0.3302}, Reading{length, "6 7/16 in", 0.1635125},
         Reading{length, "2 yd", 1.8288}, Reading{length, "2 m", 2.0},
         Reading{length, "2 mm", 0.002}, Reading{length, "2 cm", 0.02},
         Reading{length, "2 km", 2000.0}, Reading{area, "16 mm2", 16e-6},
         Reading{area, "16 mm^2", 16e-6}, Reading{area, "16 mm²", 16e-6},
         Reading{area, "0.54 m2", 0.54}, Reading{area, "2 cm2", 2e-4},
         // [NIST SP 811] B.8: square inch 6.4516 E-04, square foot 9.290304 E-02, exact
         Reading{area, "1 in2", 6.4516e-4}, Reading{area, "1 ft2", 0.09290304},
         Reading{volume, "2 L", 0.002}, Reading{volume, "2 l", 0.002},
         Reading{volume, "2 mL", 2e-6}, Reading{volume, "2 ml", 2e-6},
         Reading{volume, "2 cm3", 2e-6}, Reading{volume, "2 m3", 2.0},
         // [NIST SP 811] B.8: cubic foot 2.831 685 E-02, gallon (U.S.) 3.785 412 E-03; in full
         // digits
         Reading{volume, "1 ft3", 0.028316846592}, Reading{volume, "1 gal", 0.003785411784},
         Reading{angle, "180 deg", std::numbers::pi}, Reading{angle, "180°", std::numbers::pi},
         Reading{angle, "180 degrees", std::numbers::pi}, Reading{angle, "1 rad", 1.0},
         Reading{angle, "1 degree", 0.017453292519943295}});
}

TEST(read_quantity, irradiance_and_irradiation_are_read) {
    expect_read(
        {Reading{irradiance, "1000 W/m2", 1000.0}, Reading{irradiance, "1 kW/m^2", 1000.0},
         Reading{irradiation, "4.5 kWh/m^2/d", 1.62e7},
         Reading{irradiation, "4.5 kWh/m2/d", 1.62e7},
         Reading{irradiation, "4.5 kWh/m²/day", 1.62e7},
         Reading{irradiation, "4.5 kWh/(m2 d)", 1.62e7},
         Reading{irradiation, "4.5 kWh/(m²·day)", 1.62e7},
         Reading{irradiation, "4.5 kWh/m2", 1.62e7}, Reading{irradiation, "500 Wh/m2", 1.8e6},
         Reading{irradiation, "500 Wh/m2/d", 1.8e6}, Reading{irradiation, "16.2 MJ/m2", 1.62e7},
         Reading{irradiation, "16.2 MJ/m2/d", 1.62e7},
         Reading{irradiation, "16.2 MJ/m2/day", 1.62e7}, Reading{irradiation, "5 J/m2", 5.0},
         Reading{irradiation, "5 J/m2/d", 5.0}, Reading{irradiation, "5 kJ/m2", 5e3}});
}

TEST(read_quantity, units_of_motion_and_mass_are_read) {
    expect_read({Reading{frequency, "60 Hz", 60.0}, Reading{frequency, "20 kHz", 2e4},
                 Reading{frequency, "1/s", 1.0}, Reading{frequency, "3 1/min", 0.05},
                 Reading{frequency, "1/h", 1.0 / 3600.0}, Reading{frequency, "3.6 1/h", 0.001},
                 Reading{frequency, "3.6/h", 0.001}, Reading{frequency, "3.6 / h", 0.001},
                 Reading{frequency, "864 1/d", 0.01},
                 // one turn is 2 pi rad: 1800 turns a minute are 60 pi rad/s
                 Reading{angular_velocity, "1800 rpm", 60.0 * std::numbers::pi},
                 Reading{angular_velocity, "5 rad/s", 5.0}, Reading{torque, "2 N m", 2.0},
                 Reading{torque, "2 Nm", 2.0}, Reading{torque, "2 N·m", 2.0},
                 Reading{torque, "2 N*m", 2.0}, Reading{torque, "2 N.m", 2.0},
                 Reading{torque, "2 N-m", 2.0}, Reading{torque, "2 mN m", 0.002},
                 // [NIST SP 811] B.8: foot pound-force 1.355 818, inch pound-force 1.129 848
                 // E-01; in full digits
                 Reading{torque, "1 lbf ft", 1.3558179483314004},
                 Reading{torque, "1 ft-lbf", 1.3558179483314004},
                 Reading{torque, "1 lb-ft", 1.3558179483314004},
                 Reading{torque, "1 ft lb", 1.3558179483314004},
                 Reading{torque, "1 lbf in", 0.1129848290276167},
                 Reading{torque, "1 in-lbf", 0.1129848290276167},
                 Reading{torque, "1 in-lb", 0.1129848290276167},
                 Reading{inertia, "0.01 kg m2", 0.01}, Reading{inertia, "0.01 kg·m²", 0.01},
                 Reading{inertia, "0.01 kg m^2", 0.01}, Reading{inertia, "0.01 kgm2", 0.01},
                 Reading{inertia, "5 g m2", 0.005}, Reading{inertia, "5 kg cm2", 0.0005},
                 // [NIST SP 811] B.8: pound foot squared 4.214 011 E-02; in full digits
                 Reading{inertia, "1 lb ft2", 0.0421401100938048}, Reading{force, "50 N", 50.0},
                 Reading{force, "5 kN", 5000.0}, Reading{force, "1 lbf", 4.4482216152605},
                 Reading{mass, "20 kg", 20.0}, Reading{mass, "20 g", 0.02},
                 Reading{mass, "2 t", 2000.0},
                 // [NIST SP 811] B.8: pound (avoirdupois) 4.535 924 E-01, ounce 2.834 952 E-02;
                 // in full digits
                 Reading{mass, "1 lb", 0.45359237}, Reading{mass, "2 lbs", 0.90718474},
                 Reading{mass, "1 oz", 0.028349523125}, Reading{mass, "1 lb 8 oz", 0.680388555}});
}

TEST(read_quantity, fractions_and_prices_are_read) {
    expect_read({Reading{fraction, "90 %", 0.9}, Reading{fraction, "90%", 0.9},
                 Reading{fraction, "0.9", 0.9}, Reading{fraction, "9/10", 0.9},
                 Reading{fraction, "0", 0.0}, Reading{fraction, "1", 1.0},
                 Reading{probability, "95 %", 0.95}, Reading{power_factor, "0.8", 0.8},
                 Reading{power_factor, "80 %", 0.8}, Reading{price, "120", 120.0},
                 Reading{price, "120.50", 120.5}, Reading{price, "120,50", 120.5}});
}

TEST(read_quantity, numbers_are_read_as_people_write_them) {
    expect_read({Reading{power, "0,125 kW", 125.0}, Reading{power, "1.000 kW", 1000.0},
                 Reading{power, "1234,500 W", 1234.5}, Reading{power, ",125 kW", 125.0},
                 Reading{power, "+5 W", 5.0}, Reading{power, "-5 W", -5.0},
                 Reading{power, "1e3 W", 1000.0}, Reading{power, "2.5E-3kW", 2.5},
                 Reading{power, "1,5e+2 W", 150.0}, Reading{power, "5. W", 5.0},
                 Reading{power, "  5 W  ", 5.0}, Reading{power, "\t5\u00a0W", 5.0},
                 Reading{power, "5\u202fW", 5.0}, Reading{power, "007 W", 7.0}});
}

TEST(read_quantity, gives_the_type_that_is_asked_for) {
    EXPECT_EQ(*read<Charge>("100 Ah"), 100.0 * ampere_hour);
    EXPECT_EQ(*read<Temperature>("25 degC"), celsius(25.0));
    EXPECT_EQ(*read<Temperature>("77 degF"), celsius(25.0));
    EXPECT_EQ(*read<ApparentPower>("1000 VA"), 1000.0 * volt_ampere);
    EXPECT_EQ(*read<Efficiency>("86 %"), Efficiency(0.86));
    EXPECT_EQ(*read<PowerFactor>("0.8"), PowerFactor(0.8));
    EXPECT_EQ(*read<Price>("120.50"), Price(120.5));
    EXPECT_EQ(*read<Angle>("45 deg"), 45.0 * degree);
}

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

TEST(read_quantity, never_takes_other_capitals_but_suggests_the_right_ones) {
    expect_refused({
        {energy, "1.9 kwh", "found '1.9 kwh'; the unit 'kwh' is not known; did you mean kWh?"},
        {energy, "1.9 KWH", "found '1.9 KWH'; the unit 'KWH' is not known; did you mean kWh?"},
        {power, "5 mw", "found '5 mw'; the unit 'mw' is not known; did you mean mW or MW?"},
        {power, "5 w", "found '5 w'; the unit 'w' is not known; did you mean W?"},
        {power, "5 KW", "found '5 KW'; the unit 'KW' is not known; did you mean kW?"},
        {charge, "100 AH", "found '100 AH'; the unit 'AH' is not known; did you mean Ah?"},
        {energy, "2 mwh", "found '2 mwh'; the unit 'mwh' is not known; did you mean mWh or MWh?"},
    });
    EXPECT_EQ(*read<Power>("1 mW"), 0.001 * watt);
    EXPECT_EQ(*read<Power>("1 MW"), 1e6 * watt);
}

TEST(read_quantity, suggests_a_unit_a_letter_away) {
    expect_refused({
        {energy, "5 kWhr", "found '5 kWhr'; the unit 'kWhr' is not known; did you mean kWh?"},
        {duration, "5 houra", "found '5 houra'; the unit 'houra' is not known; did you mean hour?"},
        {length, "5 inchs", "found '5 inchs'; the unit 'inchs' is not known; did you mean inch?"},
        {current, "5 zorkmid",
         "found '5 zorkmid'; the unit 'zorkmid' is not known; give current, such as 15 A"},
        {temperature, "77 F", "found '77 F'; F is not a unit of temperature; write degF"},
    });
}

TEST(read_quantity, refuses_numbers_that_read_two_ways) {
    expect_refused({
        {power, "1,000 W", "1,000 reads two ways: 1000 or 1.000; write 1000 or 1.000"},
        {energy, "12,345 kWh", "12,345 reads two ways: 12345 or 12.345; write 12345 or 12.345"},
        {power, "1.000,5 W",
         "1.000,5 has separators between its digits; write it with at most one decimal point and "
         "nothing else, such as 1000.5"},
        {power, "1,000.5 W",
         "1,000.5 has separators between its digits; write it with at most one decimal point and "
         "nothing else, such as 1000.5"},
        {power, "1.000.000 W",
         "1.000.000 has separators between its digits; write it with at most one decimal point and "
         "nothing else, such as 1000000"},
        {power, "1'000 W",
         "1'000 has separators between its digits; write it with at most one decimal point and "
         "nothing else, such as 1000"},
        {power, "1 000 W",
         "'1 000 W' has two numbers in a row; write one number without spaces inside, "
         "then its unit"},
        {power, "10-20 W",
         "'10-20 W' has two numbers in a row; write one number without spaces inside, "
         "then its unit"},
    });
}

TEST(read_quantity, refuses_what_is_no_number) {
    expect_refused({
        {power, "", "found nothing; give power, such as 100 W"},
        {power, "  ", "found nothing; give power, such as 100 W"},
        {power, "nan W", "'nan W' does not begin with a number; give power, such as 100 W"},
        {power, "inf W", "'inf W' does not begin with a number; give power, such as 100 W"},
        {power, "-inf", "'-inf' does not begin with a number; give power, such as 100 W"},
        {power, "W", "'W' does not begin with a number; give power, such as 100 W"},
        {power, "-", "'-' does not begin with a number; give power, such as 100 W"},
        {price, "$120", "'$120' does not begin with a number; give a price, such as 120.50"},
        {power, "1/0 hp", "1/0 divides by zero; give power, such as 100 W"},
        {power, "1 1/0 hp", "1/0 divides by zero; give power, such as 100 W"},
    });
}

TEST(read_quantity, refuses_numbers_that_no_double_holds) {
    expect_refused({
        {power, "1e400 W",
         "1e400 is too large or too small a number to be read; give power, such as 100 W"},
        {power, "1e-400 W",
         "1e-400 is too large or too small a number to be read; give power, such as 100 W"},
        {energy, "1e308 kWh", "1e308 kWh is too large to be read; give energy, such as 1.9 kWh"},
    });
}

TEST(read_quantity, refuses_what_cannot_be) {
    expect_refused({
        {temperature, "-300 degC",
         "-300 degC is below absolute zero, -273.15 degC; give temperature, such as 25 degC"},
        {temperature, "-1 K",
         "-1 K is below absolute zero, -273.15 degC; give temperature, such as 25 degC"},
        {fraction, "120 %",
         "120 % is not between 0 and 1, that is 0 % and 100 %; give a fraction, such as 90 % or "
         "0.9"},
        {fraction, "-5 %",
         "-5 % is not between 0 and 1, that is 0 % and 100 %; give a fraction, such as 90 % or "
         "0.9"},
        {probability, "90", "90 is not between 0 and 1, that is 0 % and 100 %; did you mean 90 %?"},
    });
}

TEST(read_quantity, adds_parts_only_where_that_means_one_thing) {
    expect_refused({
        {duration, "6 h 2 d",
         "'6 h 2 d' adds up parts whose units do not get smaller; write each unit "
         "once, the largest first, such as 2 d 6 h or 3 ft 6 in"},
        {duration, "2 h 2 h",
         "'2 h 2 h' adds up parts whose units do not get smaller; write each unit "
         "once, the largest first, such as 2 d 6 h or 3 ft 6 in"},
        {duration, "-2 d 6 h",
         "'-2 d 6 h' adds up parts of which one is negative; write it with one unit"},
        {duration, "2 d -6 h",
         "'2 d -6 h' adds up parts of which one is negative; write it with one unit"},
        {voltage, "12 V 5 mV", "'12 V 5 mV' has more after its unit; give voltage, such as 12.8 V"},
    });
}

TEST(read_quantity, answers_garbage_with_short_words) {
    const std::string long_garbage(10'000, 'x');
    const std::string long_number(10'000, '9');
    const std::string controls = "12 \x1b[31m\n\xff\xc0\x80 \xe2\x80\xae V";
    for (const std::string& text : {long_garbage, long_number, controls, std::string(3, '\0')}) {
        const Result<Voltage> read = units::read<Voltage>(text);
        ASSERT_FALSE(read.has_value());
        EXPECT_LT(print(read.error().front()).size(), 300U);
        for (const char letter : print(read.error().front())) {
            EXPECT_FALSE(std::iscntrl(static_cast<unsigned char>(letter)));
        }
    }
}

TEST(read_quantity, says_what_to_give_for_every_kind) {
    EXPECT_EQ(what_to_give<Charge>(), "give charge, such as 100 Ah");
    EXPECT_EQ(what_to_give<Irradiation>(), "give irradiation, such as 4.5 kWh/m2");
    EXPECT_EQ(what_to_give<Share>(), "give a fraction, such as 90 % or 0.9");
}

}  // namespace
