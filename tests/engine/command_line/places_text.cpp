#include "command_line/reference/places_text.hpp"

#include <algorithm>
#include <sstream>

#include "faces/page.hpp"

namespace {

using command_line::places_text;
using testing::HasSubstr;

TEST(places_text, lists_every_place_by_country) {
    const auto all = places_text("");
    ASSERT_TRUE(all);
    EXPECT_THAT(*all, HasSubstr("Golden CO"));
    EXPECT_THAT(*all, HasSubstr("\nNZ  "));
    EXPECT_EQ(*all, *places_text(" "));
}

TEST(places_text, finds_by_the_beginning_of_a_name_with_its_source) {
    const auto golden = places_text("gold");
    ASSERT_TRUE(golden);
    EXPECT_THAT(*golden, HasSubstr("Golden CO, US: 39.74 N 105.18 W"));
}

// Boulder lies at 40.015 N, 105.27 W: 0.275 degrees to the north of Golden, 30.6 km, and 0.09
// degrees to the west, at this latitude 7.7 km: 31.5 km.
TEST(places_text, finds_the_five_nearest_to_two_numbers) {
    for (const std::string where : {"40.015 -105.27", "40.015, -105.27"}) {
        const auto near = places_text(where, 100);
        ASSERT_TRUE(near) << where;
        EXPECT_THAT(near->substr(0, 20), HasSubstr("31 km  Golden"));
        EXPECT_EQ(std::ranges::count(*near, '\n'), 5);
    }
}

TEST(places_text, says_what_is_near_what_it_does_not_know) {
    const auto boulder = places_text("Boulder CO");
    ASSERT_FALSE(boulder);
    EXPECT_EQ(boulder.error().front().found, "no place begins with \"Boulder CO\"");
    EXPECT_THAT(boulder.error().front().remedy, HasSubstr("\"Golden CO\""));
    const auto off_the_globe = places_text("95 0");
    ASSERT_FALSE(off_the_globe);
    EXPECT_THAT(off_the_globe.error().front().remedy, HasSubstr("latitude -90 to 90"));
}

TEST(places_text, keeps_to_the_width) {
    for (const int width : {40, 60, 80})
        for (const char* where : {"", "Chicago", "40.0 -105.3"}) {
            std::istringstream lines(places_text(where, width).value());
            for (std::string line; std::getline(lines, line);)
                EXPECT_LE(faces::width_of(line), width) << line;
        }
}

}  // namespace
