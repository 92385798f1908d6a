#include "answers/sun/shares.hpp"

#include <gtest/gtest.h>

namespace {

using namespace answers;
using units::watt_hour;

// Of 1000 Wh at the battery 200 go into loads, 500 into packs, 50 come too cold and 250 too late;
// 100 never came so far. A quarter of it is that of one day of four.
TEST(sun_shares, what_is_offered_is_all_that_becomes_of_it) {
    const sizing::SunShares shares{.used = 200.0 * watt_hour,
                                   .stored = 500.0 * watt_hour,
                                   .lost = 25.0 * watt_hour,
                                   .too_cold = 50.0 * watt_hour,
                                   .full = 250.0 * watt_hour,
                                   .clipped = 100.0 * watt_hour};
    const auto number = [](const Members& members, std::string_view key) {
        return std::get<Quantity>(value_at(members, key)->held).value;
    };
    EXPECT_NEAR(number(sun_shares(shares), "offered"), 1000.0, 1e-9);
    const auto a_day = sun_shares(shares, 0.25);
    EXPECT_NEAR(number(a_day, "offered"), 250.0, 1e-9);
    EXPECT_NEAR(number(a_day, "clipped"), 25.0, 1e-9);
    EXPECT_NEAR(number(a_day, "lost"), 6.25, 1e-9);
}

}  // namespace
