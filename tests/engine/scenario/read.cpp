#include "scenario/read.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "units/text.hpp"

namespace {

using scenario::read_scenario;
using scenario::ReadScenario;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

ReadScenario read(std::string_view text) {
    const units::Result<ReadScenario> result = read_scenario(text, "plan.toml");
    if (!result) {
        for (const units::Error& error : result.error()) {
            ADD_FAILURE() << units::print(error);
        }
        return {};
    }
    return *result;
}

units::Errors errors_of(std::string_view text, const scenario::Overrides& overrides = {}) {
    const units::Result<ReadScenario> result = read_scenario(text, "plan.toml", overrides);
    return result ? units::Errors{} : result.error();
}

// The error at a key, or an empty one.
units::Error error_at(const units::Errors& errors, std::string_view where) {
    const auto found = std::ranges::find(errors, where, &units::Error::where);
    return found == errors.end() ? units::Error{} : *found;
}

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

TEST(read, circuits_that_begin_at_no_circuit_or_in_a_ring_are_refused) {
    const auto with = [](std::string_view first, std::string_view second) {
        return scenario::read_scenario(
            std::string(sample::ice_storm) +
                "[[circuit]]\nname = \"panel\"\nlinks = [{fuse = \"30 A\"}]\nfrom = \"" +
                std::string(first) +
                "\"\n[[circuit]]\nname = \"socket\"\nlinks = [{fuse = \"10 A\"}]\nfrom = \"" +
                std::string(second) + "\"\n",
            "plan.toml");
    };
    EXPECT_TRUE(with("bus", "panel"));
    const auto unknown = with("bus", "panell");
    ASSERT_FALSE(unknown);
    EXPECT_THAT(print(unknown.error().front()), HasSubstr("did you mean panel?"));
    const auto ring = with("socket", "panel");
    ASSERT_FALSE(ring);
    EXPECT_THAT(print(ring.error().front()), HasSubstr("in a ring"));
}

TEST(read, another_pack_with_only_a_name_is_like_the_first) {
    const auto packs = read(sample::ice_storm).scenario.packs;
    EXPECT_EQ(packs[1].name, "expansion");
    EXPECT_EQ(packs[1].count, 3);
    EXPECT_EQ(packs[1].capacity, packs[0].capacity);
    EXPECT_EQ(packs[1].rated_over, packs[0].rated_over);
    EXPECT_EQ(packs[1].charge, packs[0].charge);
}

TEST(read, a_pack_of_another_size_takes_only_what_belongs_to_the_chemistry) {
    const auto packs =
        read(std::string(sample::every_key) + "[[pack]]\nname = \"small\"\ncapacity = \"35 Ah\"\n")
            .scenario.packs;
    EXPECT_EQ(packs.back().chemistry, scenario::Chemistry::agm);
    EXPECT_EQ(packs.back().usable, packs[0].usable);
    EXPECT_FALSE(packs.back().two_well);
    EXPECT_FALSE(packs.back().current_limit);
    EXPECT_FALSE(packs.back().weight);
    EXPECT_FALSE(packs.back().tested_capacity);
}

TEST(read, a_pack_of_another_chemistry_must_describe_itself) {
    const auto errors = errors_of(std::string(sample::ice_storm) +
                                  "[[pack]]\nname = \"old\"\nchemistry = \"flooded\"\n");
    EXPECT_THAT(error_at(errors, "pack[2].capacity").found, HasSubstr("in pack \"old\""));
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

// Controls, line ends, marks of direction and letters of no width: they act, or hide in a name that
// looks like another.
TEST(read, words_of_letters_that_are_not_seen_are_refused) {
    const auto with = [](const char* key, const std::string& letter) {
        std::string text(sample::ice_storm);
        const std::string line = std::string(key) + "\"";
        return text.insert(text.find(line) + line.size(), letter);
    };
    for (const unsigned code :
         {0x00U,   0x07U,   0x09U,   0x0AU,   0x0DU,   0x1BU,   0x7FU,   0x80U,   0x85U,   0x9BU,
          0x9FU,   0x200BU, 0x200CU, 0x200DU, 0x200EU, 0x200FU, 0x202AU, 0x202BU, 0x202CU, 0x202DU,
          0x202EU, 0x2066U, 0x2067U, 0x2068U, 0x2069U, 0x2028U, 0x2029U, 0xFEFFU}) {
        const std::string letter = fmt::format("\\u{:04X}", code);
        const std::string shown =
            code < 0x100 ? fmt::format("\\x{:02x}", code) : fmt::format("\\u{{{:x}}}", code);
        for (const auto& [key, where] :
             {std::pair{"title  = ", "title"}, std::pair{"name = ", "place.name"}}) {
            const units::Error error = error_at(errors_of(with(key, letter)), where);
            EXPECT_THAT(error.found, HasSubstr(shown)) << letter;
            EXPECT_GT(error.line, 0);
        }
    }
    for (const char* letters : {"Küche ", "Ω ", "台所 ", "מטבח ", "مطبخ ", "🔋 "}) {
        EXPECT_THAT(errors_of(with("title  = ", letters)), IsEmpty()) << letters;
    }
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
        EXPECT_THAT(error_at(errors_of(text), "format").remedy, testing::Not(IsEmpty())) << format;
    }
}

TEST(read, an_unknown_key_is_warned_of_and_the_nearest_known_one_offered) {
    const auto plan = read(sample::smallest(
        "[inverter]\ncontinuous = \"2400 W\"\nideling = \"18 W\"\ncolour = \"red\"\n"));
    ASSERT_THAT(plan.warnings, SizeIs(2));
    EXPECT_EQ(plan.warnings[0].where, "inverter.ideling");
    EXPECT_EQ(plan.warnings[0].line, 11);
    EXPECT_EQ(plan.warnings[1].where, "inverter.colour");
    const auto typo =
        read(sample::smallest("[inverter]\ncontinuous = \"2400 W\"\nsurgelasts = \"1 s\"\n"));
    EXPECT_EQ(typo.warnings.at(0).remedy, "did you mean surge_lasts?");
}

TEST(read, an_unknown_table_is_warned_of) {
    const auto plan = read(sample::smallest("[inverer]\ncontinuous = \"2400 W\"\n"));
    ASSERT_THAT(plan.warnings, SizeIs(1));
    EXPECT_EQ(plan.warnings[0].remedy, "did you mean inverter?");
}

TEST(read, equal_names_are_told_with_the_line_of_the_first) {
    const auto errors =
        errors_of(sample::smallest("[[load]]\nname = \"lamp\"\npower = \"5 W\"\n"
                                   "[[load]]\nname = \"lamp\"\npower = \"6 W\"\n"));
    EXPECT_THAT(error_at(errors, "load[1].name").found, HasSubstr("line 10"));
}

TEST(read, a_short_metering_of_a_load_that_cycles_is_warned_of) {
    const auto plan = read(sample::smallest(
        "[[load]]\nname = \"fridge\"\nmetered = {energy = \"400 Wh\", over = \"6 h\"}\n"
        "runs = {on = \"15 min\", every = \"45 min\"}\n"));
    ASSERT_THAT(plan.warnings, SizeIs(1));
    EXPECT_EQ(plan.warnings[0].where, "load[0].metered");
    const auto steady = read(sample::smallest(
        "[[load]]\nname = \"lamp\"\nmetered = {energy = \"400 Wh\", over = \"6 h\"}\n"));
    EXPECT_THAT(steady.warnings, IsEmpty());
}

TEST(read, a_circuit_that_feeds_nothing_in_the_file_is_warned_of) {
    const auto plan = read(
        sample::smallest("[[load]]\nname = \"lamp\"\npower = \"5 W\"\n[[circuit]]\nname = \"c\"\n"
                         "feeds = [\"lmap\"]\nlinks = [{fuse = \"5 A\"}]\n"));
    ASSERT_THAT(plan.warnings, SizeIs(1));
    EXPECT_EQ(plan.warnings[0].remedy, "did you mean lamp?");
}

TEST(read, lists_have_limits) {
    std::string loads = sample::smallest();
    for (int i = 0; i < 201; ++i) {
        loads += "[[load]]\nname = \"l" + std::to_string(i) + "\"\npower = \"1 W\"\n";
    }
    EXPECT_THAT(error_at(errors_of(loads), "load").found, HasSubstr("201"));
    std::string hours = "hours = [";
    for (int i = 0; i < 100'000; ++i) {
        hours += "\"06:00-07:00\",";
    }
    const auto errors =
        errors_of(sample::smallest("[[load]]\nname = \"lamp\"\npower = \"1 W\"\n" + hours + "]\n"));
    EXPECT_THAT(error_at(errors, "load[0].hours").found, HasSubstr("a list of 100000"));
}

TEST(read, a_hundred_thousand_tables_are_told_once) {
    std::string text = sample::smallest();
    for (int i = 0; i < 100'000; ++i) {
        text += "[[load]]\npower = \"1 W\"\n";
    }
    EXPECT_THAT(errors_of(text), SizeIs(1));
}

TEST(read, an_override_holds_in_place_of_the_value_of_the_file) {
    const auto plan = read_scenario(sample::ice_storm, "plan.toml",
                                    {{"pack.expansion.count", "4"},
                                     {"outage.lasts", "36 h"},
                                     {"load.refrigerator.priority", "1"},
                                     {"goal.spend_at_most", "900"}});
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->scenario.packs[1].count, 4);
    EXPECT_EQ(plan->scenario.outage.lasts, 36.0 * units::hour);
    EXPECT_EQ(plan->scenario.goal->spend_at_most, units::Price(900.0));
    EXPECT_EQ(plan->text, sample::ice_storm);
}

TEST(read, an_override_at_fault_is_named_and_other_lines_stay_true) {
    std::string text(sample::ice_storm);
    text.replace(text.find("\"12 W\""), 6, "\"12 A\"");
    const auto errors = errors_of(text, {{"goal.spend_at_most", "900"},
                                         {"outage.cause", "rain"},
                                         {"pack.main.fuse", "30 A"},
                                         {"pack.expansion.count", "-1"},
                                         {"pack.third.count", "1"},
                                         {"outage.lasst", "3 d"}});
    EXPECT_EQ(error_at(errors, "outage.cause").file, "--set outage.cause=rain");
    EXPECT_EQ(error_at(errors, "pack[1].count").file, "--set pack.expansion.count=-1");
    EXPECT_THAT(error_at(errors, "pack.third.count").found, HasSubstr("main, expansion"));
    EXPECT_EQ(error_at(errors, "outage.lasst").file, "--set outage.lasst=3 d");
    const std::size_t at = text.find("\"12 A\"");
    EXPECT_EQ(error_at(errors, "load[1].power").line,
              1 + std::count(text.begin(), text.begin() + static_cast<long>(at), '\n'));
    EXPECT_EQ(error_at(errors, "load[1].power").file, "plan.toml");
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
