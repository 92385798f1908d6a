#include "units/written/unit_table.hpp"

#include <set>

#include "units/text.hpp"

namespace {

using namespace units;

constexpr int kinds = static_cast<int>(Dimension::price) + 1;

TEST(unit_table, spells_no_unit_twice) {
    std::set<std::string_view> spellings;
    for (const NamedUnit& unit : unit_table()) {
        EXPECT_TRUE(unit.spelling.empty() || spellings.insert(unit.spelling).second)
            << unit.spelling;
    }
}

TEST(unit_table, knows_the_units_that_each_kind_is_written_in) {
    for (int at = 0; at < kinds; ++at) {
        const auto kind = static_cast<Dimension>(at);
        const DimensionText& text = text_of(kind);
        EXPECT_EQ(text.dimension, kind);
        for (const std::string_view spelling :
             {text.si, text.customary.front(), text.ucum_spelling}) {
            const NamedUnit* const unit = find_unit(kind, spelling);
            ASSERT_NE(unit, nullptr) << spelling;
            EXPECT_EQ(unit->dimension, written_as(kind)) << spelling;
        }
        EXPECT_EQ(to_si(*find_unit(kind, text.si), 7.25, kind), 7.25) << text.si;
    }
}

TEST(unit_table, gives_examples_that_can_be_read) {
    for (int at = 0; at < kinds; ++at) {
        const auto kind = static_cast<Dimension>(at);
        std::string example(text_of(kind).example);
        example = example.substr(0, example.find(" or "));
        EXPECT_TRUE(read_si(kind, example).has_value()) << example;
    }
}

TEST(unit_table, reads_every_spelling_it_holds) {
    for (const NamedUnit& unit : unit_table()) {
        const std::string text = "0.5 " + std::string(unit.spelling);
        const Result<double> read = read_si(unit.dimension, text);
        ASSERT_TRUE(read.has_value()) << print(read.error().front());
        EXPECT_EQ(*read, to_si(unit, 0.5, unit.dimension)) << text;
    }
}

TEST(unit_table, a_difference_of_temperature_has_no_offset) {
    const NamedUnit* const fahrenheit = find_unit(Dimension::temperature_difference, "degF");
    ASSERT_NE(fahrenheit, nullptr);
    EXPECT_DOUBLE_EQ(to_si(*fahrenheit, 9.0, Dimension::temperature_difference), 5.0);
    EXPECT_DOUBLE_EQ(number_of(*fahrenheit, 5.0, Dimension::temperature_difference), 9.0);
    EXPECT_DOUBLE_EQ(number_of(*fahrenheit, 298.15, Dimension::temperature), 77.0);
}

}  // namespace
