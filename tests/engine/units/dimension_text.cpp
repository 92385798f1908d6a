#include "units/text.hpp"
#include "units/written/unit_table.hpp"

namespace {

using namespace units;

// [NIST SP 811] tables 5, 6 and 8 and appendix B.8: 1 h is 3,600 s, so 1 Ah is 3,600 C and 1 Wh
// 3,600 J; 1 L is 1e-3 m3; 1 mm2 is 1e-6 m2; a pound-force is 4.448222 N.
TEST(dimension_text, its_spellings_are_those_of_the_units_they_name) {
    struct Row {
        Dimension dimension;
        std::string_view customary;
        double in_si;
    };
    for (const Row& row : {Row{Dimension::charge, "Ah", 3600.0},
                           {Dimension::energy, "Wh", 3600.0},
                           {Dimension::volume, "L", 1e-3},
                           {Dimension::duration, "h", 3600.0},
                           {Dimension::irradiation, "kWh/m2", 3.6e6},
                           {Dimension::resistance, "ohm", 1.0}}) {
        const DimensionText& text = text_of(row.dimension);
        EXPECT_EQ(text.dimension, row.dimension);
        EXPECT_EQ(text.customary.front(), row.customary);
        const NamedUnit* const named = find_unit(row.dimension, row.customary);
        ASSERT_NE(named, nullptr);
        EXPECT_DOUBLE_EQ(to_si(*named, 1.0, row.dimension), row.in_si) << row.customary;
        const NamedUnit* const si = find_unit(row.dimension, text.si);
        ASSERT_NE(si, nullptr);
        EXPECT_EQ(to_si(*si, 1.0, row.dimension), 1.0) << text.si;
    }
}

// The Unified Code for Units of Measure 2.1, table of derived units: Cel, Ohm, L, deg; products by a
// dot, quotients by a slash.
TEST(dimension_text, codes_are_those_of_the_unified_code) {
    EXPECT_EQ(text_of(Dimension::temperature).ucum, "Cel");
    EXPECT_EQ(text_of(Dimension::resistance).ucum, "Ohm");
    EXPECT_EQ(text_of(Dimension::charge).ucum, "A.h");
    EXPECT_EQ(text_of(Dimension::irradiance).ucum, "W/m2");
    EXPECT_EQ(text_of(Dimension::power_factor).ucum, "1");
}

TEST(dimension_text, what_has_no_units_of_its_own_is_written_in_those_of_another_kind) {
    EXPECT_EQ(written_as(Dimension::probability), Dimension::fraction);
    EXPECT_EQ(written_as(Dimension::power_factor), Dimension::fraction);
    EXPECT_EQ(written_as(Dimension::temperature_difference), Dimension::temperature);
    EXPECT_EQ(written_as(Dimension::price), Dimension::price);
}

}  // namespace
