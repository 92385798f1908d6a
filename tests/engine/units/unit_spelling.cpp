#include "units/written/unit_spelling.hpp"

namespace {

using units::plain_unit;
using units::unit_length;

TEST(unit_spelling, ends_a_unit_where_the_next_number_begins) {
    EXPECT_EQ(unit_length("d 6 h"), 1U);
    EXPECT_EQ(unit_length("kg m2"), 5U);
    EXPECT_EQ(unit_length("ft .5 in"), 2U);
    EXPECT_EQ(unit_length("1/h"), 3U);
    EXPECT_EQ(unit_length(""), 0U);
}

TEST(unit_spelling, writes_products_powers_and_quotients_one_way) {
    for (const char* const written : {"N m", "N·m", "N⋅m", "N*m", "N.m", "N-m", "N  m"}) {
        EXPECT_EQ(plain_unit(written), "N m") << written;
    }
    EXPECT_EQ(plain_unit("kWh / m^2 / d"), "kWh/m2/d");
    EXPECT_EQ(plain_unit("kWh/(m2 d)"), "kWh/m2/d");
    EXPECT_EQ(plain_unit("/h"), "1/h");
    EXPECT_EQ(plain_unit("1/h"), "1/h");
    EXPECT_EQ(plain_unit(""), "");
}

}  // namespace
