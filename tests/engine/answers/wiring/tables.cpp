#include "answers/wiring/tables.hpp"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using namespace answers;
using namespace units;

// 10 A, of which 8 A for hours, through a 5 A switch behind a 10 A fuse; 0.32 V of 12.8 V are lost.
fitting::Fit lamps() {
    fitting::CircuitState circuit{.name = "lamps"};
    circuit.nominal = 12.8 * volt;
    circuit.continuous = 8.0 * ampere;
    circuit.further = 2.0 * ampere;
    circuit.drop = 0.32 * volt;
    circuit.links = {{.kind = "fuse", .title = "10 A fuse", .rating = 10.0 * ampere},
                     {.kind = "switch", .title = "5 A switch", .rating = 5.0 * ampere}};
    circuit.weakest = 1;
    circuit.fuses = {{.link = 0,
                      .window = {.least = 12.0 * ampere,
                                 .most = 5.0 * ampere,
                                 .smallest = 15.0 * ampere,
                                 .largest = 5.0 * ampere}}};
    fitting::Fit fit;
    fit.circuits = {circuit};
    return fit;
}

std::string cell(const Series& table, std::string_view column) {
    return words::in_english(std::get<std::vector<words::Said>>(
        std::ranges::find(table.columns, column, &Column::name)->points)[0]);
}

TEST(wiring_tables, a_circuit_tells_its_current_its_window_and_its_drop_in_percent) {
    auto fit = lamps();
    const auto tables = wiring_series(fit, {});
    ASSERT_EQ(tables.front().name, "circuits");
    EXPECT_EQ(cell(tables.front(), "carries"), "10 A");
    EXPECT_EQ(cell(tables.front(), "drop"), "2.5 %");
    EXPECT_EQ(cell(tables.front(), "fuse_may_be"), "none fits");
    EXPECT_EQ(cell(tables.front(), "weakest"), "5 A switch");
    fit.circuits[0].fuses[0].window.smallest = 3.0 * ampere;
    EXPECT_EQ(cell(wiring_series(fit, {}).front(), "fuse_may_be"), "3 A to 5 A");
    fit.circuits[0].fuses.clear();
    EXPECT_EQ(cell(wiring_series(fit, {}).front(), "fuse"), "none");
}

TEST(wiring_tables, ways_out_have_a_table_where_there_are_any) {
    const auto tables = wiring_series(lamps(), {{"lamps", "a 5 A fuse", "then it fits"}});
    ASSERT_EQ(tables.size(), 4U);
    EXPECT_EQ(tables[2].name, "ways");
    EXPECT_EQ(wiring_series(lamps(), {}).size(), 3U);
}

}  // namespace
