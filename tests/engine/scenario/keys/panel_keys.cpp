// Keys of [[panel]] and [charge_controller].
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using told::error_at;
using told::errors_of;
using told::read;

std::string with_panel(const std::string& keys) {
    return sample::smallest("[[panel]]\npower = \"100 W\"\n" + keys);
}

// A sheet's "-0.4 %/degC" is a loss of four thousandths for each kelvin.
TEST(panel_keys, the_sheet_of_a_panel_is_read) {
    const auto panel = read(with_panel("open_circuit_voltage = \"22.3 V\"\n"
                                       "peak_power_voltage = \"18.2 V\"\n"
                                       "short_circuit_current = \"6.1 A\"\n"
                                       "peak_power_current = \"5.5 A\"\n"
                                       "power_lost_per_kelvin = \"0.4 %/K\"\n"
                                       "covered_days = [1, 3]\n"))
                           .scenario.panels.at(0);
    EXPECT_EQ(panel.count, 1);
    EXPECT_DOUBLE_EQ(*panel.peak_power_voltage / units::volt, 18.2);
    EXPECT_DOUBLE_EQ(panel.power_lost_per_kelvin->value(), 0.004);
    EXPECT_THAT(panel.covered_days, ElementsAre(1, 3));
}

// The point of most power lies below the open circuit in voltage, and below the short circuit in
// current.
TEST(panel_keys, a_label_read_the_wrong_way_round_is_refused) {
    EXPECT_THAT(error_at(errors_of(with_panel("open_circuit_voltage = \"18 V\"\n"
                                              "peak_power_voltage = \"22 V\"\n")),
                         "panel[0].peak_power_voltage")
                    .found,
                HasSubstr("not below the open-circuit voltage, 18 V"));
    EXPECT_THAT(error_at(errors_of(with_panel("short_circuit_current = \"5.5 A\"\n"
                                              "peak_power_current = \"5.5 A\"\n")),
                         "panel[0].peak_power_current")
                    .found,
                HasSubstr("not below the short-circuit current, 5.5 A"));
}

TEST(panel_keys, aims_come_in_the_order_of_the_day) {
    const std::string early = "{at = \"08:00\", tilt = \"70 deg\", azimuth = \"110 deg\"}";
    const std::string noon = "{at = \"12:00\", tilt = \"60 deg\", azimuth = \"180 deg\"}";
    const auto aims = [&](const std::string& first, const std::string& second) {
        return errors_of(
            with_panel("placement = \"aimed\"\naims = [" + first + ", " + second + "]\n"));
    };
    EXPECT_THAT(aims(early, noon), IsEmpty());
    EXPECT_THAT(error_at(aims(noon, early), "panel[0].aims").remedy,
                HasSubstr("the order of the day"));
}

TEST(panel_keys, a_tilt_beyond_the_vertical_is_refused) {
    EXPECT_THAT(error_at(errors_of(with_panel("tilt = \"91 deg\"\n")), "panel[0].tilt").found,
                HasSubstr("too much"));
}

TEST(panel_keys, the_kind_of_a_controller_is_demanded) {
    const auto errors =
        errors_of(sample::smallest("[charge_controller]\noutput_limit = \"40 A\"\n"));
    EXPECT_THAT(error_at(errors, "charge_controller.kind").remedy, HasSubstr("kind = \"mppt\""));
    const auto plan =
        read(sample::smallest("[charge_controller]\nkind = \"pwm\"\nefficiency = \"97 %\"\n"));
    EXPECT_NEAR(plan.scenario.controller->efficiency->value(), 0.97, 1e-12);
}

}  // namespace
