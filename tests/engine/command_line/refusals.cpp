// What cannot be answered is refused with file, line and key, whichever part of the engine notices.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "command_line/run.hpp"

namespace {

using command_line::Outcome;
using command_line::Status;
using testing::HasSubstr;
using testing::Not;

constexpr std::string_view smallest = R"toml(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 d"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
)toml";

constexpr std::string_view lamp = R"toml([[load]]
name = "lamp"
from = "12V"
power = "9 W"
)toml";

Outcome asked(std::vector<std::string> arguments, const std::string& text) {
    arguments.insert(arguments.begin() + 1, "-");
    command_line::Surroundings around;
    around.standard_input = [&] { return units::Result<std::string>(text); };
    return command_line::run(arguments, around);
}

std::string with_a_lamp(std::string_view more = "") {
    return std::string(smallest) + std::string(lamp) + std::string(more);
}

TEST(Refusals, a_load_without_an_inverter_is_told_with_its_line) {
    const auto outcome = asked(
        {"outage"}, std::string(smallest) + "[[load]]\nname = \"kettle\"\npower = \"1 kW\"\n");
    EXPECT_EQ(outcome.status, Status::unusable);
    EXPECT_THAT(outcome.errors, HasSubstr("standard input: inverter: kettle needs one"));
}

TEST(Refusals, packs_of_two_chemistries_are_told_with_the_line_of_the_second) {
    const auto outcome = asked({"outage"}, with_a_lamp("[[pack]]\nname = \"old\"\nchemistry = "
                                                       "\"agm\"\ncapacity = \"60 Ah\"\n"));
    EXPECT_EQ(outcome.status, Status::unusable);
    EXPECT_THAT(outcome.errors, HasSubstr("standard input:15: pack[1].chemistry"));
}

TEST(Refusals, panels_without_a_place_are_told_with_the_file) {
    const auto outcome = asked({"sun"}, with_a_lamp("[[panel]]\npower = \"100 W\"\n"));
    EXPECT_EQ(outcome.status, Status::unusable);
    EXPECT_THAT(outcome.errors, HasSubstr("standard input: place.latitude: absent"));
}

TEST(Refusals, what_set_brought_in_is_told_as_its_own) {
    const auto outcome = asked({"outage", "--set", "pack.main.count=0"}, with_a_lamp());
    EXPECT_EQ(outcome.status, Status::unusable);
    EXPECT_THAT(outcome.errors, HasSubstr("--set pack.main.count=0: "));
}

TEST(Refusals, set_on_a_name_that_is_not_there_names_those_that_are) {
    for (const char* set : {"load.router.power=20 W", "pack.spare.capacity=20 Ah"}) {
        const auto outcome = asked({"outage", "--set", set}, with_a_lamp());
        EXPECT_EQ(outcome.status, Status::unusable) << set;
        EXPECT_THAT(outcome.errors,
                    testing::AnyOf(HasSubstr("there are lamp"), HasSubstr("there are main")))
            << set;
    }
}

TEST(Refusals, set_on_a_table_that_is_not_there_names_the_tables) {
    const auto outcome = asked({"outage", "--set", "heater.power=20 W"}, with_a_lamp());
    EXPECT_EQ(outcome.status, Status::unusable);
    EXPECT_THAT(outcome.errors, HasSubstr("--set heater.power=20 W: heater: "));
    EXPECT_THAT(outcome.errors, HasSubstr("inverter"));
}

TEST(Refusals, set_needs_no_name_where_there_is_one_entry) {
    EXPECT_EQ(asked({"outage", "--set", "load.power=20 W"}, with_a_lamp()).status,
              Status::answered);
    EXPECT_EQ(asked({"start", "--set", "load.motor.kind=direct_current"}, with_a_lamp()).errors,
              "");
}

TEST(Refusals, a_seed_is_a_whole_number_of_64_bits_or_refused) {
    for (const char* seed : {"-1", "", "18446744073709551616", "1.5", " 1", "one"}) {
        const auto outcome = asked({"outage", "--seed", seed}, with_a_lamp());
        EXPECT_EQ(outcome.status, Status::unusable) << seed;
        EXPECT_THAT(outcome.errors, HasSubstr("give a whole number from 0 to")) << seed;
    }
    EXPECT_EQ(asked({"outage", "--seed", "18446744073709551615"}, with_a_lamp()).status,
              Status::answered);
}

TEST(Refusals, a_file_without_loads_is_told_and_cannot_be_built_for) {
    const auto outage = asked({"outage"}, std::string(smallest));
    EXPECT_EQ(outage.status, Status::answered);
    EXPECT_THAT(outage.errors, HasSubstr("no load is described"));
    const auto packs = asked({"packs"}, std::string(smallest));
    EXPECT_EQ(packs.status, Status::unusable);
    EXPECT_THAT(packs.errors, HasSubstr("add a [[load]]"));
}

TEST(Refusals, an_unknown_place_is_told_though_nothing_asks_for_it) {
    const auto outcome = asked({"outage"}, with_a_lamp("[place]\nname = \"Nowhereville\"\n"));
    EXPECT_EQ(outcome.status, Status::answered);
    EXPECT_THAT(outcome.errors, HasSubstr("standard input:14: place.name"));
    EXPECT_THAT(asked({"outage"}, with_a_lamp("[place]\nname = \"Chicago IL\"\n")).errors,
                Not(HasSubstr("place")));
}

TEST(Refusals, a_lithium_unit_too_hot_or_too_cold_gives_nothing_in_words) {
    for (const char* temperature : {"61 degC", "-41 degC", "80 degC", "-60 degC"}) {
        for (const char* question : {"outage", "packs"}) {
            const auto outcome =
                asked({question, "--set", std::string("outage.battery_temperature=") + temperature},
                      with_a_lamp("[[pack]]\nname = \"expansion\"\ncount = 2\n"));
            EXPECT_EQ(outcome.status, Status::stop) << question << temperature << outcome.errors;
        }
    }
}

TEST(Refusals, a_tested_capacity_that_no_such_pack_has_is_refused_with_both_keys) {
    const auto outcome =
        asked({"outage", "--set", "pack.main.tested_capacity=1150 Ah"}, with_a_lamp());
    EXPECT_EQ(outcome.status, Status::unusable);
    EXPECT_THAT(outcome.errors, HasSubstr("tested_capacity"));
    EXPECT_THAT(outcome.errors, HasSubstr("capacity is 100 Ah"));
    EXPECT_EQ(asked({"outage", "--set", "pack.main.tested_capacity=125 Ah"}, with_a_lamp()).status,
              Status::answered);
}

TEST(Refusals, more_packs_than_any_unit_has_are_refused_at_the_count) {
    const auto outcome = asked({"outage", "--set", "pack.expansion.count=64"},
                               with_a_lamp("[[pack]]\nname = \"expansion\"\n"));
    EXPECT_EQ(outcome.status, Status::unusable);
    EXPECT_THAT(outcome.errors, HasSubstr("at most 64 in all"));
}

TEST(Refusals, one_pack_lasts_and_two_last) {
    EXPECT_THAT(asked({"packs", "--most-packs", "2"}, with_a_lamp()).output,
                HasSubstr("Build one pack: lasts to the end"));
}

}  // namespace
