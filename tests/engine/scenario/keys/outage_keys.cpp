// Keys of [outage], [storage], [goal] and [[charger]].
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using testing::HasSubstr;
using told::errors_of;
using told::hint;
using told::read;
using told::with;

TEST(outage_keys, a_generator_is_rated_in_volt_amperes_or_watts) {
    const auto rated = [](const char* rating) {
        const auto read = scenario::read_scenario(
            with("power = \"60 W\"\n[[charger]]\nname = \"g\"\nkind = \"generator\"\ncurrent = "
                 "\"20 A\"\ngenerator_rating = \"" +
                 std::string(rating) + "\"\n"),
            "plan.toml");
        return read && read->scenario.chargers[0].generator_rating
                   ? *read->scenario.chargers[0].generator_rating
                   : units::ApparentPower();
    };
    EXPECT_EQ(rated("2 kVA"), units::ApparentPower(2000.0 * units::watt));
    EXPECT_EQ(rated("2000 W"), units::ApparentPower(2000.0 * units::watt));
    EXPECT_EQ(rated("20 A"), units::ApparentPower());
}

// 44 lb of 0.45359237 kg are 19.958 kg; 77 degF are 25 degC.
TEST(outage_keys, pounds_and_fahrenheit_are_read) {
    auto text = sample::smallest("[goal]\ncarry_at_most = \"44 lb\"\n");
    text.replace(text.find("[[pack]]"), 0, "battery_temperature = \"77 degF\"\n");
    const auto plan = read(text).scenario;
    EXPECT_NEAR(*plan.goal->carry_at_most / units::kilogram, 19.958, 0.0005);
    EXPECT_NEAR(units::in_celsius(*plan.outage.battery_temperature), 25.0, 1e-9);
}

TEST(outage_keys, nobody_knows_how_long_needs_the_half) {
    auto text = sample::smallest();
    text.replace(text.find("\"4 d\""), 5, "\"?\"");
    EXPECT_THAT(told::hint(text), HasSubstr("add half_over_by"));
    text.replace(text.find("[[pack]]"), 0, "half_over_by = \"24 h\"\n");
    EXPECT_TRUE(read(text).scenario.outage.open_ended);
}

TEST(outage_keys, a_storage_says_since_when) {
    EXPECT_THAT(told::error_at(errors_of(sample::smallest("[storage]\ndrain = \"15 mA\"\n")),
                               "storage.since")
                    .remedy,
                HasSubstr("since = "));
}

}  // namespace
