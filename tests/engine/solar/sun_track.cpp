#include "solar/sun_track.hpp"

namespace {

using namespace units;
using namespace solar;

// Where the equator meets the meridian of Greenwich; clocks there show universal time.
Site gulf_of_guinea() {
    Site made{.name = "0 N 0 E", .at = {}, .elevation = {}, .utc_offset = {}};
    made.clearness.fill(Clearness(0.5));
    return made;
}

const LocalTime equinox = local_time(std::chrono::year(2026) / 3 / 21, {});

// On the equator every day has twelve hours of sun. At the March equinox it stands in the zenith at
// noon; clocks are some 7 min 20 s ahead of it then, by the almanac.
TEST(sun_track, a_day_on_the_equator_has_twelve_hours_of_sun) {
    const std::array<PanelGroup, 0> none{};
    const SunTrack track(gulf_of_guinea(), none, equinox, day);
    ASSERT_EQ(track.days().size(), 1U);
    EXPECT_NEAR(track.days()[0].noon / minute, 12.0 * 60.0 + 7.3, 0.3);
    EXPECT_NEAR(track.days()[0].sunset / degree, 90.0, 0.1);
    Duration lit{};
    double highest = 0.0;
    Irradiance most{};
    for (const TrackStep& step : track.steps()) {
        if (step.lit) lit += step.duration;
        highest = std::max(highest, step.cos_zenith);
        most = std::max(most, step.extraterrestrial);
    }
    EXPECT_NEAR(lit / hour, 12.0, 0.01);
    EXPECT_NEAR(highest, 1.0, 0.002);
    // [Duffie Beckman] 1.4.1a for day 80: 1,367 x (1 + 0.033 cos 78.9 deg) = 1,376 W/m2.
    EXPECT_NEAR(most.value(), 1376.0, 7.0);
}

TEST(sun_track, steps_follow_each_other_and_a_nights_are_one) {
    const std::array<PanelGroup, 0> none{};
    const SunTrack track(gulf_of_guinea(), none, equinox + 6.5 * hour, 30.0 * hour);
    EXPECT_EQ(track.days().size(), 2U);
    LocalTime now = equinox + 6.5 * hour;
    for (const TrackStep& step : track.steps()) {
        EXPECT_NEAR((step.start - now) / second, 0.0, 1e-3);
        now = step.start + step.duration;
        if (step.lit) {
            EXPECT_LE(step.duration / minute, 15.0 + 1e-6);
        }
    }
    EXPECT_NEAR((now - equinox) / hour, 36.5, 1e-6);
    EXPECT_EQ(track.day_begins(0), 0U);
    EXPECT_EQ(track.day_begins(2), track.steps().size());
}

// What falls on the steps of a whole day is the day's irradiation: half of what reaches the air.
TEST(sun_track, the_light_of_a_day_is_shared_out_whole) {
    const std::array<PanelGroup, 0> none{};
    const SunTrack track(gulf_of_guinea(), none, equinox, day);
    double global = 0.0;
    double diffuse = 0.0;
    for (const TrackStep& step : track.steps()) {
        global += step.global_share * (step.duration / second);
        diffuse += step.diffuse_share * (step.duration / second);
    }
    EXPECT_NEAR(global, 1.0, 1e-9);
    EXPECT_NEAR(diffuse, 1.0, 1e-9);
    // By hand, on the equator at the equinox: 24/pi hours of 1,376 W/m2, 10.51 kWh/m2.
    const auto light = track.day_light(0, Clearness(0.5));
    EXPECT_NEAR(light.global / kilowatt_hour_per_square_metre, 0.5 * 10.51, 0.03);
    EXPECT_LT(light.diffuse, light.global);
}

}  // namespace
