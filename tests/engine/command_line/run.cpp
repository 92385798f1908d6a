// What cannot be answered is refused with file, line and key, whichever part of the engine notices.
#include "typed.hpp"

namespace {

using command_line::Status;
using testing::HasSubstr;
using typed::asked;
using typed::with_a_lamp;

TEST(Refusals, a_load_without_an_inverter_is_told_with_its_line) {
    const auto outcome =
        asked({"outage"}, typed::a_pack + "[[load]]\nname = \"kettle\"\npower = \"1 kW\"\n");
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

TEST(Refusals, a_seed_is_a_whole_number_of_64_bits_or_refused) {
    for (const char* seed : {"-1", "", "18446744073709551616", "1.5", " 1", "one"}) {
        const auto outcome = asked({"outage", "--seed", seed}, with_a_lamp());
        EXPECT_EQ(outcome.status, Status::unusable) << seed;
        EXPECT_THAT(outcome.errors, HasSubstr("give a whole number from 0 to")) << seed;
    }
    EXPECT_EQ(asked({"outage", "--seed", "18446744073709551615"}, with_a_lamp()).status,
              Status::answered);
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
