// Keys of [place].
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using told::error_at;
using told::errors_of;
using told::read;

std::string with_place(const std::string& keys) {
    return sample::smallest("[place]\n" + keys);
}

// 700 feet of 0.3048 m are 213.36 m.
TEST(place_keys, a_spot_of_ones_own_is_read) {
    const auto place = read(with_place("latitude = \"43.7 deg\"\nlongitude = \"-87.9 deg\"\n"
                                       "elevation = \"700 ft\"\nutc_offset = \"-6 h\"\n"))
                           .scenario.place;
    EXPECT_DOUBLE_EQ(*place.latitude / units::degree, 43.7);
    EXPECT_DOUBLE_EQ(*place.longitude / units::degree, -87.9);
    EXPECT_DOUBLE_EQ(*place.elevation / units::metre, 213.36);
    EXPECT_EQ(place.utc_offset, -6.0 * units::hour);
}

TEST(place_keys, one_coordinate_demands_the_other) {
    EXPECT_THAT(
        error_at(errors_of(with_place("latitude = \"42 deg\"\n")), "place.longitude").remedy,
        HasSubstr("\"-87.9 deg\""));
    EXPECT_THAT(
        error_at(errors_of(with_place("longitude = \"-88 deg\"\n")), "place.latitude").remedy,
        HasSubstr("\"42 deg\""));
}

// The shore of the Dead Sea lies some 430 m below the sea; no dwelling is lower.
TEST(place_keys, heights_reach_from_the_dead_sea_to_the_highest_dwellings) {
    EXPECT_THAT(errors_of(with_place("elevation = \"-430 m\"\n")), IsEmpty());
    EXPECT_THAT(
        error_at(errors_of(with_place("elevation = \"-500 m\"\n")), "place.elevation").found,
        HasSubstr("too little"));
    EXPECT_THAT(
        error_at(errors_of(with_place("utc_offset = \"15 h\"\n")), "place.utc_offset").found,
        HasSubstr("too much"));
}

TEST(place_keys, a_climate_has_twelve_months) {
    std::string months = "sunshine = [";
    for (int month = 0; month < 11; ++month)
        months += "\"5 h/d\", ";
    const auto eleven = errors_of(with_place(months + "]\n"));
    EXPECT_THAT(error_at(eleven, "place.sunshine").remedy, HasSubstr("twelve values"));
    const auto twelve = read(with_place(months + "\"6.5 h/d\"]\n")).scenario.place;
    EXPECT_DOUBLE_EQ(twelve.sunshine->at(11) / units::hour, 6.5);
}

}  // namespace
