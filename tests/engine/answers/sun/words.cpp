#include "answers/sun/words.hpp"

#include <gtest/gtest.h>

namespace {

using namespace answers;
using namespace units;

std::vector<scenario::Aim> at(double tilt, double azimuth) {
    return {{.tilt = tilt * degree, .azimuth = azimuth * degree}};
}

// Eighths of the compass from north over east, each from 22.5 degrees before to as much behind.
TEST(sun_words, panels_face_the_nearest_eighth_of_the_compass) {
    EXPECT_EQ(stands(at(60.0, 180.0)), "60° facing south");
    EXPECT_EQ(stands(at(45.0, 157.0)), "45° facing south-east");
    EXPECT_EQ(stands(at(30.0, 359.0)), "30° facing north");
    EXPECT_EQ(stands(at(30.0, -90.0)), "30° facing west");
    EXPECT_EQ(stands(at(0.4, 90.0)), "flat");
    EXPECT_EQ(stands_in_short(at(60.0, 225.0)), "60° south-west");
}

TEST(sun_words, a_range_is_told_where_there_is_one) {
    solar::DayRange range{.low = 120.0 * watt_hour,
                          .likely = 640.0 * watt_hour,
                          .high = 1300.0 * watt_hour,
                          .mean = {}};
    EXPECT_EQ(range_in_words(range), "640 Wh (120 Wh to 1.3 kWh)");
    range.low = range.high = range.likely;
    EXPECT_EQ(range_in_words(range), "640 Wh");
}

// 60 h instead of 36 h are a day.
TEST(sun_words, days_are_gained_over_no_panel_at_all) {
    std::vector<sizing::PanelCount> counts(2);
    counts[0].figures.half = 36.0 * hour;
    counts[1].figures.half = 60.0 * hour;
    EXPECT_NEAR(days_gained(counts, 1), 1.0, 1e-12);
}

// 900 Wh against 600 Wh flat are half as much again; against nothing there is no ratio.
TEST(sun_words, nothing_is_so_many_times_of_nothing) {
    questions::SunResults results;
    results.placements = {{.kind = solar::PlacementKind::best_fixed},
                          {.kind = solar::PlacementKind::flat}};
    auto& best = results.placements[0];
    auto& flat = results.placements[1];
    best.day.mean = 900.0 * watt_hour;
    EXPECT_FALSE(times_flat(results, best));
    flat.day.mean = 600.0 * watt_hour;
    EXPECT_NEAR(*times_flat(results, best), 1.5, 1e-12);
}

}  // namespace
