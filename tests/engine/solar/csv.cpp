#include "solar/weather/csv.hpp"

namespace {

using namespace solar;

std::vector<std::string_view> cells_of(std::string_view line) {
    std::vector<std::string_view> cells;
    split_cells(line, cells);
    return cells;
}

using testing::ElementsAre;

TEST(csv, commas_part_cells_and_quotes_keep_them) {
    EXPECT_THAT(cells_of("725300,\"OHARE, CHICAGO\",IL"),
                ElementsAre("725300", "OHARE, CHICAGO", "IL"));
    EXPECT_THAT(cells_of(" a , b ,"), ElementsAre("a", "b", ""));
    EXPECT_THAT(cells_of(""), ElementsAre(""));
    EXPECT_THAT(cells_of("\"a \"\"b\"\"\",c"), ElementsAre("a \"\"b\"\"", "c"));
    EXPECT_THAT(cells_of("\"never closed, x"), ElementsAre("never closed, x"));
}

TEST(csv, lines_end_in_either_way) {
    std::string_view text = "one\r\ntwo\n\nlast";
    EXPECT_EQ(take_line(text), "one");
    EXPECT_EQ(take_line(text), "two");
    EXPECT_EQ(take_line(text), "");
    EXPECT_EQ(take_line(text), "last");
    EXPECT_TRUE(text.empty());
}

TEST(csv, a_number_is_the_whole_cell_and_finite) {
    EXPECT_EQ(number("-12.5"), -12.5);
    EXPECT_EQ(number("+3"), 3.0);
    EXPECT_FALSE(number(""));
    EXPECT_FALSE(number("12 W"));
    EXPECT_FALSE(number("nan"));
    EXPECT_FALSE(number("inf"));
    EXPECT_FALSE(number("1e999"));
}

}  // namespace
