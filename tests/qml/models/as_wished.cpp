#include "models/as_wished.hpp"

#include <gtest/gtest.h>

namespace {

using touch::amount_as_wished;
using touch::as_wished;

TEST(text_as_wished, has_the_clock_of_twelve_hours) {
    const touch::Wishes twelve{.twelve_hours = true};
    EXPECT_EQ(as_wished("until Thursday 15:05, 00:30-12:00", twelve),
              "until Thursday 3:05 PM, 12:30 AM-12:00 PM");
    EXPECT_EQ(as_wished("2026-01-14T18:00:00", twelve), "2026-01-14T18:00:00");
    EXPECT_EQ(as_wished("until Thursday 15:05", {}), "until Thursday 15:05");
}

// 5 °C is 41 °F, 20 kg is 44.09 lb and 1 m is 3.28 ft [NIST SP 811].
TEST(text_as_wished, has_units_of_the_united_states_beside_the_metric_ones) {
    const touch::Wishes us{.us_units = true};
    EXPECT_EQ(as_wished("at 5 degC", us), QString("at 5 °C (41 °F)"));
    EXPECT_EQ(as_wished("-40 °C", us), QString("-40 °C (-40 °F)"));
    EXPECT_EQ(as_wished("carry 20 kg, 1 m", us), "carry 20 kg (44 lb), 1 m (3.3 ft)");
    EXPECT_EQ(as_wished("4.5 kWh/m², 12 min, 5 mm, 3 mΩ", us),
              QString("4.5 kWh/m², 12 min, 5 mm, 3 mΩ"));
    EXPECT_EQ(as_wished("at 5 degC", {}), QString("at 5 °C"));
}

TEST(text_as_wished, has_a_decimal_comma_in_amounts_alone) {
    const touch::Wishes comma{.decimal_comma = true};
    EXPECT_EQ(amount_as_wished("1.9 kWh", comma), "1,9 kWh");
    EXPECT_EQ(as_wished("Draws 1.9 kWh. Two packs.", comma), "Draws 1.9 kWh. Two packs.");
}

}  // namespace
