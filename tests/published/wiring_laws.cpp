// The laws of wiring against printed tables and worked figures. Values stand as printed; a
// tolerance is half of the last digit printed unless a reason is given.
#include <cmath>

#include "wiring/ampacity.hpp"
#include "wiring/conductor.hpp"
#include "wiring/connector.hpp"
#include "wiring/fuse.hpp"
#include "wiring/heat.hpp"
#include "wiring/network.hpp"

namespace {

using namespace units;
using namespace wiring;

constexpr double ohm_per_kft = 1.0 / 304.8;  // in ohm per metre
constexpr double milliohm = 1e-3;

double per_kft(ResistancePerLength resistance) {
    return resistance / ohm_per_metre / ohm_per_kft;
}

scenario::Wire wire_of(WireSize size, double round_trip_metres) {
    return {.size = size, .round_trip = round_trip_metres * metre};
}

// ASTM B258 diameters; circular mils as printed in [NEC] ch. 9 table 8.
TEST(wiring_laws, gauges_have_their_printed_diameter_and_area) {
    EXPECT_NEAR(diameter_of(AmericanGauge{12}) / metre * 1e3, 2.0525, 0.00005);
    EXPECT_NEAR(diameter_of(AmericanGauge{-3}) / metre * 1e3, 11.6840, 0.00005);
    EXPECT_NEAR(area_of(AmericanGauge{12}) / square_metre * 1e6, 3.3088, 0.00005);
    EXPECT_NEAR(area_of(AmericanGauge{-3}) / square_metre * 1e6, 107.219, 0.0005);
    for (const GaugeRow& row : gauge_rows()) {
        const double mils = area_of(row.size) / square_metre / 5.0671e-10;
        EXPECT_NEAR(mils / row.circular_mils, 1.0, 0.003) << row.size.number;  // three digits
    }
}

// [NEC] ch. 9 table 8, 75 degC, all 15 rows: stranded against the metal with a lay of 2.15 %. The
// 0.5 % is what three printed digits and the makers' lays leave.
TEST(wiring_laws, every_row_of_the_resistance_table_follows_from_the_metal) {
    ASSERT_EQ(gauge_rows().size(), 15U);
    for (const GaugeRow& row : gauge_rows()) {
        const auto metal = resistance_of_area(area_of(row.size), celsius(75.0));
        EXPECT_NEAR(row.stranded / (1.0215 * metal), 1.0, 0.005) << row.size.number;
        if (row.solid) {
            EXPECT_NEAR(*row.solid / metal, 1.0, 0.005) << row.size.number;
        }
        if (row.coated) {
            // Tin adds 3 to 6 %, the thinnest strands most.
            EXPECT_GT(*row.coated / row.stranded, 1.025) << row.size.number;
            EXPECT_LT(*row.coated / row.stranded, 1.066) << row.size.number;
        }
    }
    EXPECT_NEAR(per_kft(resistance_of_area(area_of(AmericanGauge{10}), celsius(75.0))), 1.2147,
                0.00005);
    EXPECT_NEAR(per_kft(resistance_of(ConductorKind{AmericanGauge{10}}, celsius(75.0))), 1.24,
                0.005);
}

// [IEC 60228] class 5: maxima at 20 degC, so above the metal of the nominal size, by 11 to 20 %.
TEST(wiring_laws, every_row_of_the_metric_table_lies_above_its_metal) {
    ASSERT_EQ(metric_rows().size(), 15U);
    for (const MetricRow& row : metric_rows()) {
        const auto metal = resistance_of_area(row.size, celsius(20.0));
        EXPECT_GT(row.plain / metal, 1.10) << row.size / square_metre * 1e6;
        EXPECT_LT(row.plain / metal, 1.20) << row.size / square_metre * 1e6;
        EXPECT_GT(row.tinned, row.plain);
        EXPECT_LT(row.tinned / row.plain, 1.04);
        if (row.class2) {
            EXPECT_LT(*row.class2, row.plain * 1.01);
            EXPECT_GT(*row.class2 / metal, 1.0);
        }
    }
    // Nominal 2.5 mm2: 6.90 ohm/km.
    EXPECT_NEAR(resistance_of_area(2.5e-6 * square_metre, celsius(20.0)) / ohm_per_metre * 1e3,
                6.90, 0.005);
}

// The footnote of [NEC] ch. 9 table 8 prints 0.00323.
TEST(wiring_laws, the_coefficient_at_75_degrees_is_that_of_the_footnote) {
    EXPECT_NEAR(copper_coefficient_at(celsius(75.0)), 0.00323, 0.000005);
    EXPECT_NEAR(copper_coefficient_at(celsius(75.0)), 0.003232, 0.0000005);
    // [IEC 60287] R(T) = R20 (234.5 + T) / 254.5, at 60 degC within 1e-4.
    const auto known = ResistancePerLength::from_value(1.0);
    EXPECT_NEAR(at_temperature(known, celsius(20.0), celsius(60.0)) / known, (234.5 + 60.0) / 254.5,
                1.2e-4);
}

// [Marine catalogue] worked example: 10 A, 11 ft out and 10 ft back, 12 V. Circular mils by
// CM = K I L / V with K = 10.75 [ABYC E-11]; its printed answers are 10 AWG (3 %) and 16 AWG (10
// %).
TEST(wiring_laws, a_marine_catalogue_chooses_the_same_wire) {
    const auto mils_for = [](double drop) { return 10.75 * 10.0 * 21.0 / (drop * 12.0); };
    EXPECT_NEAR(mils_for(0.03), 6271.0, 0.5);
    EXPECT_NEAR(mils_for(0.10), 1881.0, 0.5);
    // K = 10.75 ohm cmil/ft is copper of about 29.3 degC.
    const auto drop = [](int gauge, BuiltTo built_to) {
        const ConductorKind kind{AmericanGauge{gauge}, built_to};
        // Without the lay of strands, as the catalogue reckons.
        return resistance_of(kind, celsius(29.3)) / 1.0215 * (21.0 * 0.3048 * metre) *
               (10.0 * ampere) / (12.0 * volt);
    };
    EXPECT_LE(drop(10, BuiltTo::sae), 0.03);
    EXPECT_GT(drop(12, BuiltTo::sae), 0.03);  // 5,833 cmil of the boat make fall short
    EXPECT_LE(drop(12, BuiltTo::nec), 0.03);  // 6,530 cmil do not
    EXPECT_LE(drop(16, BuiltTo::sae), 0.10);
    EXPECT_GT(drop(18, BuiltTo::sae), 0.10);
}

// Worked from the printed resistances.
TEST(wiring_laws, drops_of_worked_runs) {
    const auto drop = [](const scenario::Wire& wire, double degrees, double amperes) {
        return resistance_of(wire, celsius(degrees)) * (amperes * ampere);
    };
    EXPECT_NEAR(drop(wire_of(AmericanGauge{14}, 4.0), 75.0, 10.0) / volt, 0.4121, 0.00005);
    EXPECT_NEAR(resistance_of(wire_of(AmericanGauge{-3}, 3.0), celsius(75.0)) / ohm / milliohm,
                0.5984, 0.00005);
    EXPECT_NEAR(drop(wire_of(AmericanGauge{-3}, 3.0), 75.0, 310.0) / volt, 0.1855, 0.00005);
    EXPECT_NEAR(drop(wire_of(AmericanGauge{-3}, 3.0), 75.0, 310.0) * (310.0 * ampere) / watt, 57.5,
                0.05);
    EXPECT_NEAR(drop(wire_of(AmericanGauge{16}, 4.0), 75.0, 5.0) / volt, 0.3274, 0.00005);
    EXPECT_NEAR(drop(wire_of(1e-6 * square_metre, 10.0), 20.0, 5.0) / volt, 0.975, 0.0005);
    const auto thick = wire_of(35e-6 * square_metre, 2.2);
    EXPECT_NEAR(drop(thick, 60.0, 180.0) / volt, 0.2539, 0.00005);
    EXPECT_NEAR(drop(thick, 60.0, 180.0) * (180.0 * ampere) / watt, 45.7, 0.05);
    EXPECT_NEAR(drop(thick, 20.0, 180.0) / volt, 0.2194, 0.00005);
}

// [NEC] correction factors as printed for 36-40 and 46-50 degC, and the worked 90 degC wire.
TEST(wiring_laws, hot_places_take_what_the_printed_factors_take) {
    const auto factor = [](double insulation, double around) {
        return ambient_factor(celsius(insulation), celsius(around));
    };
    EXPECT_NEAR(factor(90, 40), 0.9129, 0.00005);
    EXPECT_NEAR(factor(90, 50), 0.8165, 0.00005);
    EXPECT_NEAR(factor(90, 60), 0.7071, 0.00005);
    // Printed with two digits: 0.82 0.88 0.91 and 0.58 0.75 0.82, within one of the last.
    EXPECT_NEAR(factor(60, 40), 0.82, 0.01);
    EXPECT_NEAR(factor(75, 40), 0.88, 0.01);
    EXPECT_NEAR(factor(90, 40), 0.91, 0.01);
    EXPECT_NEAR(factor(60, 50), 0.58, 0.01);
    EXPECT_NEAR(factor(75, 50), 0.75, 0.01);
    EXPECT_NEAR(factor(90, 50), 0.82, 0.01);
    // Boat makers print 0.85 for 105 degC at 50 degC [Marine catalogue].
    EXPECT_NEAR(factor(105, 50), 0.85, 0.01);
    EXPECT_EQ(factor(60, 60), 0.0);
    EXPECT_EQ(factor(60, 20), 1.0);  // cold is never credited
}

// Within a table the columns follow the same law, roughly: makers round to 5 A.
TEST(wiring_laws, every_row_of_the_ampacity_tables_follows_the_derating_law) {
    for (const auto table : {AmpacityTable::boat, AmpacityTable::building}) {
        const auto& columns = ampacity_columns(table);
        ASSERT_EQ(columns.rows.size(), 15U);
        for (const AmpacityRow& row : columns.rows) {
            ASSERT_EQ(row.allowed.size(), columns.insulation.size());
            for (std::size_t i = 1; i < row.allowed.size(); ++i) {
                EXPECT_GE(row.allowed[i], row.allowed[i - 1]) << row.size.number;
                // Where both are large enough to be printed finely: the square-root law.
                if (row.allowed[i - 1] >= 55.0 * ampere) {
                    const double law = std::sqrt((in_celsius(columns.insulation[i]) - 30.0) /
                                                 (in_celsius(columns.insulation[i - 1]) - 30.0));
                    // Conductors of better insulation are also reckoned with thinner walls; the
                    // printed steps stay within 16 % of the law (the 200 degC column is capped).
                    EXPECT_NEAR(row.allowed[i] / row.allowed[i - 1] / law, 1.0, 0.28)
                        << row.size.number << " column " << i;
                }
            }
        }
        for (std::size_t i = 1; i < columns.rows.size(); ++i) {
            for (std::size_t column = 0; column < columns.insulation.size(); ++column) {
                EXPECT_GE(columns.rows[i].allowed[column], columns.rows[i - 1].allowed[column]);
            }
        }
    }
}

// [33 CFR 183.425] table 5 and [NEC] 310.16, the figures most builds turn on.
TEST(wiring_laws, the_ampacity_tables_hold_their_printed_figures) {
    const auto allowed = [](int gauge, double insulation, AmpacityTable table) {
        const scenario::Wire wire{
            .size = AmericanGauge{gauge}, .length = 1.0 * metre, .insulation = celsius(insulation)};
        return ampacity_of(wire, {.around = celsius(30.0), .table = table})->allowed / ampere;
    };
    EXPECT_NEAR(allowed(-3, 105, AmpacityTable::boat), 445.0, 1e-9);
    EXPECT_NEAR(allowed(-1, 105, AmpacityTable::boat), 330.0, 1e-9);
    EXPECT_NEAR(allowed(16, 105, AmpacityTable::boat), 25.0, 1e-9);
    EXPECT_NEAR(allowed(-3, 75, AmpacityTable::building), 230.0, 1e-9);
    EXPECT_NEAR(allowed(4, 75, AmpacityTable::building), 85.0, 1e-9);
    EXPECT_NEAR(allowed(12, 60, AmpacityTable::building), 20.0, 1e-9);
    EXPECT_NEAR(allowed(18, 60, AmpacityTable::cord), 10.0, 1e-9);
    // 445 A at 50 degC: 378 by the makers' 0.85 [Marine catalogue], 381 by the law.
    const scenario::Wire hot{
        .size = AmericanGauge{-3}, .length = 1.0 * metre, .insulation = celsius(105.0)};
    EXPECT_NEAR(ampacity_of(hot, {.around = celsius(50.0)})->allowed / ampere, 378.0, 4.0);
}

// Worked networks: constant power behind packs in parallel.
TEST(wiring_laws, packs_share_a_constant_power_as_worked_out) {
    const auto milliohms = [](double value) { return value * milliohm * ohm; };
    const Fed two = fed({.sources = {{13.0 * volt, milliohms(12)}, {13.0 * volt, milliohms(12)}},
                         .main = milliohms(1),
                         .drawn = 3000.0 / 0.9 * watt});
    EXPECT_NEAR(two.main / ampere, 307.24, 0.005);
    EXPECT_NEAR(two.bus / volt, 11.157, 0.0005);
    EXPECT_NEAR(two.at_load / volt, 10.849, 0.0005);
    EXPECT_NEAR(two.shares[0] / ampere, 153.62, 0.005);
    EXPECT_NEAR(two.largest / watt, 6035.7, 0.05);
    const Fed three = fed({.sources = {{13.2 * volt, milliohms(8)},
                                       {13.0 * volt, milliohms(12)},
                                       {13.0 * volt, milliohms(16)}},
                           .main = milliohms(1),
                           .drawn = 3000.0 / 0.9 * watt});
    EXPECT_NEAR(three.main / ampere, 283.385, 0.0005);
    EXPECT_NEAR(three.shares[0] / ampere, 144.25, 0.005);
    EXPECT_NEAR(three.shares[1] / ampere, 79.50, 0.005);
    EXPECT_NEAR(three.shares[2] / ampere, 59.63, 0.005);
    EXPECT_NEAR(three.at_load / volt, 11.7626, 0.00005);
    const Fed weak = fed({.sources = {{12.4 * volt, milliohms(15)}},
                          .main = milliohms(2),
                          .drawn = 6000.0 / 0.85 * watt});
    EXPECT_EQ(weak.how, Feeding::collapses);
    EXPECT_NEAR(weak.largest / watt, 2261.2, 0.05);
}

// "The thin cable": 2,400 W at 0.88, 13.0 V behind 4 mohm, 8 ft of cable and 0.4 mohm of joints.
TEST(wiring_laws, a_thin_main_cable_is_seen) {
    const auto at = [](int gauge, double watts) {
        const scenario::Wire cable = wire_of(AmericanGauge{gauge}, 8.0 * 0.3048);
        return fed({.sources = {{13.0 * volt, 4.0 * milliohm * ohm}},
                    .main = resistance_of(cable, celsius(75.0)) + 0.4 * milliohm * ohm,
                    .drawn = watts / 0.88 * watt});
    };
    const Fed thick = at(-1, 2400.0);
    EXPECT_NEAR(thick.at_load / volt, 11.80, 0.005);
    EXPECT_NEAR(thick.main / ampere, 231.0, 0.5);
    EXPECT_NEAR((thick.bus - thick.at_load) / volt, 0.27, 0.005);
    EXPECT_NEAR((thick.bus - thick.at_load) * thick.main / watt, 63.0, 0.5);
    const Fed harder = at(-1, 3000.0);
    EXPECT_NEAR(harder.at_load / volt, 11.46, 0.005);
    EXPECT_NEAR(harder.main / ampere, 297.0, 0.5);
    const Fed thin = at(4, 2400.0);
    EXPECT_NEAR(thin.main / ampere, 240.0, 0.5);
    EXPECT_NEAR((thin.bus - thin.at_load) / volt, 0.69, 0.005);
    EXPECT_NEAR((thin.bus - thin.at_load) * thin.main / watt, 165.0, 0.5);
}

// Figures for 3 kW through an inverter of 0.88, and for its surge at 0.85.
TEST(wiring_laws, the_current_of_a_large_inverter) {
    const auto amperes = [](double watts, double share, double volts) {
        return watts / share / volts;
    };
    EXPECT_NEAR(amperes(3000, 0.88, 10.5), 324.68, 0.005);
    EXPECT_NEAR(least_rating({.continuous = 324.68 * ampere}) / ampere, 405.8, 0.06);
    EXPECT_NEAR(least_rating({.continuous = 309.92 * ampere}) / ampere, 387.4, 0.05);
    EXPECT_NEAR(least_rating({.continuous = 266.34 * ampere}) / ampere, 332.9, 0.05);
    const auto smallest = [](double continuous) {
        return *fuse_window({.continuous = continuous * ampere}, std::nullopt, nullptr).smallest /
               ampere;
    };
    EXPECT_EQ(smallest(324.68), 450.0);
    EXPECT_EQ(smallest(309.92), 400.0);
    EXPECT_EQ(smallest(266.34), 350.0);
    EXPECT_EQ(smallest(133.2), 175.0);
    EXPECT_EQ(smallest(66.6), 90.0);
    EXPECT_EQ(smallest(154.96), 200.0);  // 24 V, cut off at 22 V: 193.7 A
    EXPECT_NEAR(least_rating({.continuous = 154.96 * ampere}) / ampere, 193.7, 0.05);
}

// 642 A for 1 to 2 s on 51 mm strips: 300 A may open, 400 A holds (about 15 s at 160 %).
TEST(wiring_laws, a_surge_on_a_fuse_has_three_answers) {
    const FuseFamily& strip = *find_fuse_family("strip 51 mm");
    const auto at = [&strip](double rating, double seconds) {
        return stands(strip.opens, rating * ampere, 642.0 * ampere, seconds * second);
    };
    EXPECT_EQ(at(300, 2.0), Surge::may_open);
    EXPECT_EQ(at(400, 2.0), Surge::holds);
    EXPECT_EQ(at(250, 20.0), Surge::opens);
    EXPECT_EQ(at(750, 3600.0), Surge::holds);
    EXPECT_NEAR(*opening_at(strip.opens, 1.60).least / second, 15.0, 0.5);
    // [UL 248-14] as told in [Fuseology]: 200 % opens within 120 s to 30 A, 240 s to 60 A.
    const FuseFamily& cartridge = *find_fuse_family("cartridge");
    EXPECT_EQ(*opening_at(envelope_of(cartridge, 30.0 * ampere), 2.0).most, 120.0 * second);
    EXPECT_EQ(*opening_at(envelope_of(cartridge, 35.0 * ampere), 2.0).most, 240.0 * second);
    EXPECT_EQ(
        stands(envelope_of(cartridge, 30.0 * ampere), 30.0 * ampere, 60.0 * ampere, 1.0 * second),
        Surge::may_open);
}

// [Fuseology], pulse life table.
TEST(wiring_laws, pulses_use_up_a_fuse_as_printed) {
    EXPECT_NEAR(pulse_share(100).value(), 0.48, 1e-12);
    EXPECT_NEAR(pulse_share(1000).value(), 0.38, 1e-12);
    EXPECT_NEAR(pulse_share(10000).value(), 0.29, 1e-12);
    EXPECT_NEAR(pulse_share(100000).value(), 0.22, 1e-12);
}

// A 10 A branch with a 5 A switch on 16 AWG: a 5 A fuse, 4 A for hours. 6 A for hours: no fuse.
TEST(wiring_laws, the_switch_sets_the_fuse_and_the_load) {
    const FuseFamily& blade = *find_fuse_family("blade");
    const auto window = fuse_window({.continuous = 4.0 * ampere}, 5.0 * ampere, &blade);
    EXPECT_EQ(*window.largest, 5.0 * ampere);
    EXPECT_EQ(*window.smallest, 5.0 * ampere);
    EXPECT_FALSE(window.empty());
    const auto none = fuse_window({.continuous = 6.0 * ampere}, 5.0 * ampere, &blade);
    EXPECT_NEAR(none.least / ampere, 7.5, 1e-12);
    EXPECT_TRUE(none.empty());
}

// Three packs of 4 mohm at 13.6 V; 10 kA terminal fuses fall short behind all three.
TEST(wiring_laws, fault_currents_add_up_over_the_packs) {
    const auto fault = [](int packs) {
        return prospective_current(13.6 * volt, 4.0 * milliohm * ohm, packs) / ampere;
    };
    EXPECT_NEAR(fault(1), 3400.0, 0.5);
    EXPECT_NEAR(fault(2), 6800.0, 0.5);
    EXPECT_NEAR(fault(3), 10200.0, 0.5);
    EXPECT_EQ(*breaks_at(*find_fuse_family("terminal"), 13.6 * volt), 10000.0 * ampere);
    EXPECT_EQ(*breaks_at(*find_fuse_family("class T"), 13.6 * volt), 20000.0 * ampere);
    EXPECT_FALSE(breaks_at(*find_fuse_family("blade"), 58.4 * volt));
    for (const auto& [milliohms, kiloamperes] :
         {std::pair{2.0, 6.8}, {3.0, 4.53}, {5.0, 2.72}, {8.0, 1.70}, {10.0, 1.36}}) {
        EXPECT_NEAR(prospective_current(13.6 * volt, milliohms * milliohm * ohm, 1) / ampere / 1e3,
                    kiloamperes, 0.005);
    }
}

// [IEC 62485-2] as restated: 12 V 100 Ah valve-regulated, boost: 0.24 m3/h, 6.72 cm2 each.
TEST(wiring_laws, hydrogen_needs_the_printed_opening) {
    const auto vent = hydrogen_vent(scenario::Chemistry::agm, 6, 100.0 * ampere_hour);
    ASSERT_TRUE(vent);
    EXPECT_NEAR(vent->air / cubic_metre_per_hour, 0.24, 1e-9);
    EXPECT_NEAR(vent->opening / square_metre * 1e4, 6.72, 1e-9);
    EXPECT_FALSE(hydrogen_vent(scenario::Chemistry::lifepo4, 4, 100.0 * ampere_hour));
}

// 120 A through a 0.2 mohm contact; 13.4 V plugged onto 12.8 V, 10 mohm each.
TEST(wiring_laws, contacts_and_plugging_in) {
    const auto current = 120.0 * ampere;
    const auto contact = *find_connector("two-pole 50")->contact;
    EXPECT_NEAR(current * contact / volt * 1e3, 24.0, 1e-9);
    EXPECT_NEAR(current * contact * current / watt, 2.88, 1e-9);
    EXPECT_NEAR(plugged_together(13.4 * volt, 0.010 * ohm, 12.8 * volt, 0.010 * ohm, 20.0 * ampere)
                        .current /
                    ampere,
                30.0, 1e-9);
    const auto thin =
        plugged_together(13.4 * volt, 0.010 * ohm, 12.5 * volt, 0.004 * ohm, 20.0 * ampere);
    EXPECT_NEAR(thin.current / ampere, 64.0, 0.5);
    EXPECT_NEAR(thin.largest_difference / volt, 0.28, 0.005);
}

// [Two-pole 50 sheet]: UL 120 A, CSA 50 A; whoever does not choose is held to the lower.
TEST(wiring_laws, the_lower_listing_holds_until_one_is_chosen) {
    const ConnectorRow* row = find_connector("two-pole 50");
    scenario::Connector connector{.rating = 120.0 * ampere, .part = "two-pole 50"};
    EXPECT_EQ(rating_of(connector, row).rating, 50.0 * ampere);
    EXPECT_NE(in_english(rating_of(connector, row).by).find("CSA"), std::string::npos);
    connector.listing = "ul";
    EXPECT_EQ(rating_of(connector, row).rating, 120.0 * ampere);
}

// 300 W in a plastic case of 1.049 m2; 3 kW at 0.90 in it.
TEST(wiring_laws, a_shut_case_cannot_shed_an_inverters_loss) {
    const auto area = 2.0 * (0.56 * 0.45 + 0.56 * 0.27 + 0.45 * 0.27) * square_metre;
    EXPECT_NEAR(area / square_metre, 1.0494, 0.00005);
    const auto plastic = heat_transfer_of(false);
    EXPECT_NEAR(rise_in_case(300.0 * watt, 1.049 * square_metre, plastic) / kelvin, 81.7, 0.05);
    EXPECT_NEAR(air_for(300.0 * watt, 15.0 * kelvin) / cubic_metre_per_hour, 59.7, 0.05);
    const auto loss = loss_of(3000.0 * watt, Efficiency(0.90));
    EXPECT_NEAR(loss / watt, 333.3, 0.05);
    EXPECT_NEAR(rise_in_case(loss, area, plastic) / kelvin, 90.7, 0.1);
    EXPECT_NEAR(air_for(loss, 20.0 * kelvin) / cubic_metre_per_hour, 49.7, 0.06);
}

}  // namespace
