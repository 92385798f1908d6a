#include "solar/irradiation.hpp"

namespace {

using namespace units;
using namespace solar;

TEST(irradiation, polar_night_brings_nothing_and_polar_day_lasts_half_a_turn_each_way) {
    EXPECT_DOUBLE_EQ(sunset_hour_angle(80.0 * degree, -23.0 * degree) / degree, 0.0);
    EXPECT_NEAR(sunset_hour_angle(80.0 * degree, 23.0 * degree) / degree, 180.0, 1e-9);
    EXPECT_EQ(extraterrestrial_day(80.0 * degree, -23.0 * degree, 355), Irradiation{});
    EXPECT_EQ(global_rate({}, Angle{}), Frequency{});
}

TEST(irradiation, the_earth_is_nearest_the_sun_in_january) {
    EXPECT_GT(extraterrestrial_normal(3), solar_constant);
    EXPECT_LT(extraterrestrial_normal(185), solar_constant);
}

TEST(irradiation, the_darker_the_sky_the_more_of_its_light_is_diffuse) {
    double last = 1.01;
    for (double clearness = 0.05; clearness < 0.70; clearness += 0.05) {
        const double share = diffuse_share_of_day(Clearness(clearness), 70.0 * degree).value();
        EXPECT_LT(share, last);
        last = share;
    }
}

TEST(irradiation, full_sunshine_is_a_clear_sky_and_none_a_quarter) {
    EXPECT_DOUBLE_EQ(clearness_from_sunshine(12.0 * hour, 12.0 * hour).value(), 0.75);
    EXPECT_DOUBLE_EQ(clearness_from_sunshine(Duration{}, 12.0 * hour).value(), 0.25);
    EXPECT_DOUBLE_EQ(clearness_from_sunshine(Duration{}, Duration{}).value(), 0.25);
}

TEST(irradiation, a_wide_temperature_range_tells_of_clear_days) {
    // [FAO-56] example 15 form: 16 % of the root of the range, inland
    EXPECT_NEAR(clearness_from_temperature_range(11.8 * kelvin, false).value(), 0.55, 0.005);
    EXPECT_DOUBLE_EQ(clearness_from_temperature_range(-1.0 * kelvin, false).value(), 0.0);
}

}  // namespace
