#include "command_line/reference/told_words.hpp"

namespace {

using command_line::last_word;
using command_line::name_of;
using command_line::units_of;
using command_line::when_absent;
using scenario::Shape;
using scenario::ToldKey;
using units::Dimension;

TEST(told_words, a_key_is_known_by_its_last_word_too) {
    EXPECT_EQ(last_word("pack.two_well.total"), "total");
    EXPECT_EQ(last_word("title"), "title");
    EXPECT_EQ(last_word(""), "");
}

TEST(told_words, a_key_of_several_parts_says_of_which) {
    EXPECT_EQ(name_of(ToldKey{.key = "pack.count"}), "pack.count");
    EXPECT_EQ(name_of(ToldKey{.key = "circuit.links.voltage", .of = "switch"}),
              "circuit.links.voltage, beside switch");
    EXPECT_EQ(name_of(ToldKey{.key = "circuit.links.switch", .of = "switch"}),
              "circuit.links.switch");
}

TEST(told_words, units_of_one_size_stand_once_the_usual_first) {
    EXPECT_EQ(units_of({.kind = Shape::Kind::quantity, .dimension = Dimension::duration}),
              "h, d, min, s, ms, us, wk, yr");
    EXPECT_EQ(units_of({.kind = Shape::Kind::quantity,
                        .dimension = Dimension::apparent_power,
                        .or_of = Dimension::power}),
              "VA, kVA, MVA, W, mW, kW, MW, hp, Wh/d, kWh/d, kWh/yr");
    EXPECT_EQ(
        units_of({.kind = Shape::Kind::quantity, .dimension = Dimension::voltage, .per = "/K"}),
        "V, mV, kV, each before /K");
    EXPECT_EQ(units_of({.kind = Shape::Kind::whole}), "");
    EXPECT_EQ(units_of({.kind = Shape::Kind::quantity, .dimension = Dimension::price}), "");
}

TEST(told_words, where_a_key_is_absent_it_is_refused_lent_or_assumed) {
    EXPECT_EQ(when_absent({.silent = "one", .required = false}), "one");
    EXPECT_EQ(when_absent({.required = true}), "refused: it is required");
    EXPECT_EQ(when_absent({.required = true, .lent = true}),
              "as in the first, of which it is required");
}

}  // namespace
