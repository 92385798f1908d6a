#include "battery/cell/fit.hpp"

#include <array>

namespace {

using namespace battery;
using namespace units;

const Kinetics truth{120.0 * ampere_hour, Share(0.4), 0.8 * per_hour};

RatedCharge row_of(Duration time) {
    return {.charge = capacity_over(truth, time), .over = time};
}

TEST(fit, three_rows_made_by_two_wells_give_those_wells_back) {
    const std::array rows{row_of(20.0 * hour), row_of(1.0 * hour), row_of(5.0 * hour)};
    const Kinetics found = fit_rows(rows).value().kinetics;
    EXPECT_NEAR(found.total / ampere_hour, 120.0, 1e-6);
    EXPECT_NEAR(found.available.value(), 0.4, 1e-8);
    EXPECT_NEAR(found.rate / per_hour, 0.8, 1e-8);
}

TEST(fit, so_do_two_rows_when_the_rate_is_known_and_six_by_least_error) {
    const Kinetics two =
        fit_two_rows(row_of(1.0 * hour), row_of(20.0 * hour), truth.rate)->kinetics;
    EXPECT_NEAR(two.available.value(), 0.4, 1e-10);
    const std::array rows{row_of(0.5 * hour), row_of(1.0 * hour),  row_of(2.0 * hour),
                          row_of(5.0 * hour), row_of(10.0 * hour), row_of(20.0 * hour)};
    const Fit many = fit_rows(rows).value();
    EXPECT_NEAR(many.kinetics.available.value(), 0.4, 1e-4);
    EXPECT_LT(many.residual.value(), 1e-5);
}

TEST(fit, refuses_rows_that_no_battery_gives) {
    const std::array falling{RatedCharge{100.0 * ampere_hour, 1.0 * hour},
                             RatedCharge{90.0 * ampere_hour, 5.0 * hour},
                             RatedCharge{95.0 * ampere_hour, 20.0 * hour}};
    EXPECT_EQ(fit_rows(falling).error().front().where, "rows");
    const std::array two{row_of(1.0 * hour), row_of(2.0 * hour)};
    EXPECT_FALSE(fit_rows(two).has_value());
    EXPECT_FALSE(fit_two_rows(two[0], two[0], truth.rate).has_value());
}

}  // namespace
