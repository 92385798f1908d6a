#include "solar/places/places.hpp"

#include "solar/places/site.hpp"

namespace {

using namespace units;
using namespace solar;

TEST(places, every_row_has_a_source_and_figures_that_fit_its_sky) {
    ASSERT_EQ(known_places().size(), 123u);
    for (const KnownPlace& place : known_places()) {
        EXPECT_FALSE(place.source.empty()) << place.name;
        EXPECT_FALSE(place.known_from.empty()) << place.name;
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
    EXPECT_NE(in_english(found.error()[0].remedy).find("San Francisco CA"), std::string::npos);
}

TEST(places, a_misspelt_name_gets_the_nearest_ones) {
    const auto found = known_place("Chigaco");
    ASSERT_FALSE(found);
    EXPECT_NE(in_english(found.error()[0].remedy).find("\"Chicago IL\""), std::string::npos);
    EXPECT_FALSE(known_place(""));
}

TEST(places, a_name_that_is_unknown_gets_places_that_may_be_meant_and_no_others) {
    const auto remedy = [](const char* typed) {
        return in_english(known_place(typed).error()[0].remedy);
    };
    // Spelt alike, but in other states: "Baltimore MD", "Boise ID".
    for (const char* boulder : {"Boulder CO", "Boulder, CO"}) {
        EXPECT_NE(remedy(boulder).find("\"Golden CO\""), std::string::npos) << remedy(boulder);
        EXPECT_EQ(remedy(boulder).find("ID\""), std::string::npos) << remedy(boulder);
    }
    EXPECT_EQ(remedy("Timbuktu").find("\"Tu"), std::string::npos) << remedy("Timbuktu");
    EXPECT_NE(remedy("Timbuktu").find("give latitude and longitude"), std::string::npos);
}

TEST(places, the_nearest_rows_come_in_order_of_their_distance) {
    const auto near = nearest_known_places({40.015 * degree, -105.27 * degree}, 3);  // Boulder CO
    ASSERT_EQ(near.size(), 3u);
    EXPECT_EQ(near[0].place.name, "Golden CO");
    EXPECT_NEAR(near[0].distance / metre, 31.4e3, 1e3);  // 0.273 and 0.091 degrees, by hand
    EXPECT_LE(near[0].distance, near[1].distance);
    EXPECT_LE(near[1].distance, near[2].distance);
    EXPECT_EQ(nearest_known_places({}, 1000).size(), known_places().size());
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
