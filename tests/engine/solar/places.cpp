#include "solar/places.hpp"

#include "solar/site.hpp"

namespace {

using namespace units;
using namespace solar;

TEST(places, every_row_has_a_source_and_figures_that_fit_its_sky) {
    ASSERT_EQ(known_places().size(), 112u);
    for (const KnownPlace& place : known_places()) {
        EXPECT_FALSE(place.source.empty()) << place.name;
        for (std::size_t month = 0; month < 12; ++month) {
            // The clearness is the irradiation over that outside the air on the month's mean day.
            const int day = mean_day_of_month(int(month) + 1);
            const Irradiation outside =
                extraterrestrial_day(place.at.latitude, declination_of_day(day), day);
            EXPECT_NEAR(place.irradiation[month] / outside, place.clearness[month].value(),
                        0.002 + 0.006 / (outside / kilowatt_hour_per_square_metre))
                << place.name << " month " << month + 1;  // irradiation is printed to 0.01 kWh/m2
        }
    }
}

TEST(places, a_name_is_found_whatever_its_case_and_by_its_beginning) {
    ASSERT_TRUE(known_place("chicago il"));
    ASSERT_TRUE(known_place("Chic"));
    EXPECT_EQ(known_place("Chic")->name, "Chicago IL");
    EXPECT_NEAR(known_place("Chic")->irradiation[0] / kilowatt_hour_per_square_metre, 1.76, 1e-9);
    EXPECT_NEAR(known_place("Chic")->utc_offset / hour, -6.0, 1e-9);
}

TEST(places, a_beginning_of_several_names_them) {
    const auto found = known_place("San ");
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error()[0].where, "place.name");
    EXPECT_NE(found.error()[0].remedy.find("San Francisco CA"), std::string::npos);
}

TEST(places, a_misspelt_name_gets_the_nearest_ones) {
    const auto found = known_place("Chigaco");
    ASSERT_FALSE(found);
    EXPECT_NE(found.error()[0].remedy.find("\"Chicago IL\""), std::string::npos);
    EXPECT_FALSE(known_place(""));
}

TEST(places, the_nearest_place_comes_with_its_distance) {
    const NearbyPlace near = nearest_known_place({41.88 * degree, -87.63 * degree});
    EXPECT_EQ(near.place.name, "Chicago IL");
    EXPECT_NEAR(near.distance / metre, 26400.0, 1000.0);
}

TEST(places, distances_run_along_the_great_circle) {
    // A quarter of the way round the sphere of 6371 km.
    EXPECT_NEAR(distance_between({{}, {}}, {{}, 90.0 * degree}) / metre, 10007543.0, 1.0);
    EXPECT_NEAR(distance_between({{}, 179.0 * degree}, {{}, -179.0 * degree}) / metre, 222390.0,
                10.0);
}

}  // namespace
