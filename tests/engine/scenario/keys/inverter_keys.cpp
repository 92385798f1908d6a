// Keys of [inverter]: what people write, taken or refused with what to write.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/told.hpp"

namespace {

using testing::HasSubstr;
using told::hint;
using told::read;
using told::with;

TEST(inverter_keys, words_for_waveforms) {
    const auto wave = [](const char* word) {
        return hint(with("power = \"60 W\"", "", std::string("waveform = \"") + word + "\"\n"));
    };
    EXPECT_EQ(wave("modified sine"), "write quasi_square");
    EXPECT_EQ(wave("Pure Sine Wave"), "write sine");
    EXPECT_EQ(wave("quasi_square"), "it was taken");
}

// The hint, followed to the letter.
TEST(inverter_keys, one_point_of_efficiency_needs_no_brackets) {
    const auto efficiency = [](const std::string& value) {
        return hint(with("power = \"60 W\"", "", "efficiency = " + value + "\n"));
    };
    EXPECT_THAT(efficiency("\"90 %\""), HasSubstr("{at = \"50 %\", is = \"0.90\"}"));
    EXPECT_EQ(efficiency("{at = \"50 %\", is = \"0.90\"}"), "it was taken");
    EXPECT_EQ(efficiency("[{at = \"50 %\", is = \"0.90\"}]"), "it was taken");
}

TEST(inverter_keys, a_curve_rises_and_an_overload_is_above_the_rating) {
    const auto inverter = [](const std::string& keys) {
        return hint(with("power = \"9 W\"", "", keys + "\n"));
    };
    EXPECT_THAT(inverter("efficiency = [{at = \"50 %\", is = 0.9}, {at = \"10 %\", is = 0.8}]"),
                HasSubstr("order of rising load"));
    EXPECT_THAT(inverter("overload = [{at = \"90 %\", holds = \"60 s\"}]"),
                HasSubstr("points above 100 %"));
    EXPECT_THAT(inverter("overload = [{at = \"150 %\", holds = \"5 s\"}, {at = \"110 %\", holds = "
                         "\"60 s\"}]"),
                HasSubstr("rising load and falling time"));
}

// A multiple may be written as a part of a hundred or as it is: 150 % is 1.5.
TEST(inverter_keys, an_overload_of_half_as_much_again_is_written_in_two_ways) {
    for (const char* at : {"\"150 %\"", "\"1.5\""}) {
        const auto plan =
            read(with("power = \"9 W\"", "",
                      std::string("overload = [{at = ") + at + ", holds = \"5 s\"}]\n"));
        EXPECT_EQ(plan.scenario.inverter->overload.at(0).at, units::Share(1.5)) << at;
    }
    EXPECT_THAT(
        hint(with("power = \"9 W\"", "", "overload = [{at = \"1001 %\", holds = \"5 s\"}]\n")),
        HasSubstr("\"150 %\" or \"1.5\""));
}

TEST(inverter_keys, ratings_that_contradict_each_other_are_refused) {
    EXPECT_THAT(hint(with("power = \"9 W\"", "", "surge = \"1500 W\"\n")),
                HasSubstr("short-time rating"));
    EXPECT_THAT(hint(with("power = \"9 W\"", "",
                          "cutoff_voltage = \"10.5 V\"\nrestart_voltage = \"10.5 V\"\n")),
                HasSubstr("\"12.5 V\""));
}

}  // namespace
