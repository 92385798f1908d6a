#include "scenario/file/read.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"
#include "units/text.hpp"

namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;
using told::error_at;
using told::errors_of;
using told::read;

TEST(read, a_file_as_a_person_writes_it_becomes_plain_values) {
    using namespace units;
    const scenario::Scenario plan = read(sample::ice_storm).scenario;
    EXPECT_EQ(plan.title, "Ice storm, four nights");
    EXPECT_EQ(print(plan.outage.starts), "2026-01-14T18:00:00");
    EXPECT_EQ(plan.outage.lasts, 4.0 * day);
    EXPECT_EQ(plan.outage.cause, scenario::Cause::storm);
    EXPECT_EQ(plan.outage.battery_temperature, celsius(5.0));
    EXPECT_EQ(plan.place.name, "Chicago IL");
    ASSERT_THAT(plan.packs, SizeIs(2));
    EXPECT_EQ(plan.packs[0].capacity, 100.0 * ampere_hour);
    EXPECT_EQ(plan.packs[0].rated_over, 5.0 * hour);
    EXPECT_EQ(plan.packs[0].chemistry, scenario::Chemistry::lifepo4);
    EXPECT_EQ(plan.packs[0].charge, StateOfCharge(1.0));
    ASSERT_TRUE(plan.inverter);
    EXPECT_EQ(plan.inverter->continuous, 2400.0 * watt);
    EXPECT_EQ(plan.inverter->surge, 4800.0 * watt);
    ASSERT_THAT(plan.inverter->efficiency, SizeIs(3));
    EXPECT_EQ(plan.inverter->efficiency[1].at, Share(0.5));
    EXPECT_EQ(plan.inverter->efficiency[1].is, Efficiency(0.91));
    EXPECT_THAT(plan.inverter->off, ElementsAre(DailySpan{23.0 * hour, 6.0 * hour}));
    ASSERT_THAT(plan.panels, SizeIs(1));
    EXPECT_EQ(plan.panels[0].count, 3);
    EXPECT_EQ(plan.panels[0].placement, scenario::Placement::fixed);
    EXPECT_EQ(plan.panels[0].tilt, 45.0 * degree);
    ASSERT_TRUE(plan.controller);
    EXPECT_EQ(plan.controller->input_limit, 520.0 * watt);
    ASSERT_THAT(plan.loads, SizeIs(2));
    const auto metered = std::get<scenario::MeteredUse>(plan.loads[0].draw.value());
    EXPECT_EQ(metered.energy, 1900.0 * watt_hour);
    EXPECT_EQ(metered.over, 31.0 * hour);
    EXPECT_EQ(plan.loads[0].runs->on, 15.0 * minute);
    EXPECT_EQ(plan.loads[0].motor->kind, scenario::MotorKind::compressor_rsir);
    EXPECT_EQ(plan.loads[0].priority, 2);
    EXPECT_EQ(plan.loads[1].from, scenario::Outlet::twelve_volt);
    EXPECT_THAT(plan.loads[1].hours, SizeIs(2));
    ASSERT_THAT(plan.circuits, SizeIs(1));
    ASSERT_THAT(plan.circuits[0].links, SizeIs(3));
    EXPECT_EQ(std::get<scenario::Fuse>(plan.circuits[0].links[0]).rating, 7.5 * ampere);
    const auto wire = std::get<scenario::Wire>(plan.circuits[0].links[2]);
    EXPECT_EQ(std::get<AmericanGauge>(wire.size).number, 16);
    EXPECT_DOUBLE_EQ(wire.length / metre, 0.9144);  // 3 ft; the foot is 0.3048 m exactly
    EXPECT_EQ(print(plan.storage->since), "2026-04-01T00:00:00");
    EXPECT_EQ(plan.goal->chance, Probability(0.9));
    EXPECT_FALSE(plan.clock.has_value());
}

TEST(read, a_good_file_gives_no_warnings) {
    EXPECT_THAT(read(sample::ice_storm).warnings, IsEmpty());
    EXPECT_THAT(read(sample::every_key).warnings, IsEmpty());
}

TEST(read, every_key_of_the_format_is_read) {
    using namespace units;
    const scenario::Scenario plan = read(sample::every_key).scenario;
    EXPECT_EQ(plan.outage.lasts, 78.0 * hour);
    EXPECT_NEAR(in_celsius(*plan.outage.battery_temperature), 25.0, 1e-9);  // 77 degF
    EXPECT_EQ(plan.outage.battery_follows_room, true);
    EXPECT_EQ(plan.place.utc_offset, -6.0 * hour);
    EXPECT_DOUBLE_EQ(plan.place.irradiation->at(0) / kilowatt_hour_per_square_metre, 1.5);
    EXPECT_DOUBLE_EQ(plan.place.sunshine->at(5) / hour, 9.6);
    EXPECT_EQ(plan.place.temperature->at(11), celsius(-1.0));
    EXPECT_EQ(plan.place.temperature_range->at(4), 11.0 * kelvin);
    EXPECT_EQ(plan.place.weather_file, "weather/station.epw");
    const scenario::Pack& pack = plan.packs.at(0);
    EXPECT_EQ(pack.two_well->available, Share(0.3));
    EXPECT_DOUBLE_EQ(pack.two_well->rate / per_hour, 0.6);
    ASSERT_THAT(pack.pulse, SizeIs(2));
    EXPECT_EQ(pack.pulse[1].lasts, 30.0 * second);
    EXPECT_EQ(pack.age, scenario::Age::mid_life);
    EXPECT_EQ(pack.price, Price(249.5));
    EXPECT_EQ(plan.inverter->continuous_apparent, 3000.0 * volt_ampere);
    EXPECT_THAT(plan.inverter->off, SizeIs(1));
    const scenario::Panel& panel = plan.panels.at(0);
    ASSERT_THAT(panel.aims, SizeIs(2));
    EXPECT_EQ(panel.aims[1].at, 12.0 * hour);
    EXPECT_EQ(panel.shade.at(0).shaded, Share(0.5));
    EXPECT_THAT(panel.covered_days, ElementsAre(1, 3));
    EXPECT_DOUBLE_EQ(panel.power_lost_per_kelvin->value(), 0.004);
    EXPECT_EQ(plan.chargers.at(0).kind, scenario::ChargerKind::generator);
    EXPECT_THAT(plan.chargers.at(0).days, ElementsAre(2, 4));
    // 450 kWh over the 8766 h of a mean year, or the 8760 h of a common one.
    EXPECT_NEAR(std::get<scenario::YearlyLabel>(plan.loads.at(0).draw.value()).average / watt,
                51.35, 0.03);
    EXPECT_EQ(plan.loads.at(0).keeps_cold, scenario::KeepsCold::freezer);
    EXPECT_EQ(plan.loads.at(0).room, celsius(35.0));
    EXPECT_EQ(plan.loads.at(0).age, 8.0 * 365.0 * day);
    EXPECT_EQ(std::get<scenario::Nameplate>(plan.loads.at(1).draw.value()).current, 9.8 * ampere);
    EXPECT_EQ(plan.loads.at(1).runs->starts_at, 5.0 * minute);
    // Half a horsepower of 745.7 W [NIST SP 811] B.8.
    EXPECT_NEAR(*plan.loads.at(1).motor->horsepower / watt, 372.85, 0.01);
    EXPECT_EQ(plan.loads.at(1).motor->code_letter, "K");
    EXPECT_EQ(plan.loads.at(2).like, "phone");
    ASSERT_THAT(plan.circuits.at(0).links, SizeIs(6));
    EXPECT_EQ(std::get<scenario::Fuse>(plan.circuits[0].links[0]).interrupts, 20'000.0 * ampere);
    EXPECT_EQ(std::get<scenario::Switch>(plan.circuits[0].links[1]).rated_for, "dc");
    EXPECT_DOUBLE_EQ(*std::get<scenario::Wire>(plan.circuits[0].links[2]).round_trip / metre,
                     8 * 0.3048);
    EXPECT_EQ(std::get<scenario::SocketOutlet>(plan.circuits[0].links[4]).rating, 15.0 * ampere);
    const auto& cable = std::get<scenario::Wire>(plan.circuits[0].links[5]);
    EXPECT_EQ(cable.return_size, WireSize(AmericanGauge{0}));
    EXPECT_EQ(cable.runs, 2);
    EXPECT_EQ(plan.circuits[0].from, "bus");
    EXPECT_DOUBLE_EQ(*plan.circuits[0].joints / ohm, 0.4e-3);
    EXPECT_DOUBLE_EQ(*plan.enclosure->surface / square_metre, 1.05);
    EXPECT_EQ(plan.enclosure->inside, celsius(45.0));
    EXPECT_EQ(plan.storage->maintained, true);
    EXPECT_EQ(print(plan.storage->since), "2026-04-01T12:00:00");
    EXPECT_EQ(plan.goal->spend_at_most, Price(800.0));
}

TEST(read, every_error_is_told_at_once_with_its_line_and_key) {
    const auto errors = errors_of(R"(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "4 Ah"
[[pack]]
name = "main"
chemistry = "lead"
capacity = "100 Wh"
[[load]]
name = "lamp"
power = "minus two"
)");
    ASSERT_THAT(errors, SizeIs(4));
    EXPECT_EQ(errors[0].where, "outage.lasts");
    EXPECT_EQ(errors[0].line, 4);
    EXPECT_EQ(errors[0].file, "plan.toml");
    EXPECT_EQ(errors[1].where, "pack[0].chemistry");
    EXPECT_THAT(errors[1].remedy, HasSubstr("agm where the label says so"));
    EXPECT_EQ(errors[2].where, "pack[0].capacity");
    EXPECT_EQ(errors[2].line, 8);
    EXPECT_THAT(errors[2].found, HasSubstr("100 Wh, which is energy"));
    EXPECT_THAT(errors[2].remedy, HasSubstr("100 Ah"));
    EXPECT_EQ(errors[3].where, "load[0].power");
    EXPECT_THAT(errors[3].found, HasSubstr("in load \"lamp\""));
}

TEST(read, a_missing_key_is_demanded_with_an_example) {
    const auto errors = errors_of("title = \"nothing else\"\n");
    EXPECT_THAT(error_at(errors, "format").remedy, HasSubstr("format = 1"));
    EXPECT_NE(error_at(errors, "outage").remedy, "");
    EXPECT_NE(error_at(errors, "pack").remedy, "");
    const auto inside = errors_of("format = 1\n[outage]\n[[pack]]\n[[load]]\n");
    for (const char* key : {"outage.starts", "outage.lasts", "pack[0].name", "pack[0].chemistry",
                            "pack[0].capacity", "load[0].name", "load[0].power"}) {
        EXPECT_NE(error_at(inside, key).found, "") << key;
    }
}

TEST(read, a_newer_format_is_refused_and_nothing_else_is_guessed_at) {
    const auto errors = errors_of("format = 2\n[outage]\nlasts = \"a new way\"\n");
    ASSERT_THAT(errors, SizeIs(1));
    EXPECT_EQ(errors[0].where, "format");
    EXPECT_THAT(errors[0].found, HasSubstr("newer"));
}

TEST(read, a_format_that_is_no_version_is_refused) {
    for (const char* format : {"0", "-1", "\"one\"", "nan", "inf", "true"}) {
        std::string text = sample::smallest();
        text.replace(text.find("= 1"), 3, std::string("= ") + format);
        EXPECT_FALSE(error_at(errors_of(text), "format").remedy.empty()) << format;
    }
}

TEST(read, a_hundred_thousand_tables_are_told_once) {
    std::string text = sample::smallest();
    for (int i = 0; i < 100'000; ++i) {
        text += "[[load]]\npower = \"1 W\"\n";
    }
    EXPECT_THAT(errors_of(text), SizeIs(1));
}

TEST(read, an_override_is_split_at_its_first_equals_sign) {
    const auto override = scenario::read_override("load.\"a=b\".runs={on = \"1 s\"}");
    ASSERT_TRUE(override);
    EXPECT_EQ(override->key, "load.\"a=b\".runs");
    EXPECT_EQ(override->value, "{on = \"1 s\"}");
    EXPECT_FALSE(scenario::read_override("nothing"));
    EXPECT_FALSE(scenario::read_override("=4"));
}

}  // namespace
