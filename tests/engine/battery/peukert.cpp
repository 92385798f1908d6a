#include "battery/cell/peukert.hpp"

namespace {

using namespace battery;
using namespace units;

TEST(peukert, passes_through_both_ratings) {
    const RatedCharge slow{100.0 * ampere_hour, 20.0 * hour};
    const RatedCharge fast{60.0 * ampere_hour, 1.0 * hour};
    const Peukert law = peukert_through(slow, fast).value();
    EXPECT_NEAR(time_at(law, 5.0 * ampere) / hour, 20.0, 1e-12);
    EXPECT_NEAR(time_at(law, 60.0 * ampere) / hour, 1.0, 1e-12);
    EXPECT_NEAR(charge_at(law, 60.0 * ampere) / ampere_hour, 60.0, 1e-11);
}

TEST(peukert, refuses_ratings_that_do_not_differ_and_an_exponent_below_one_in_words) {
    const RatedCharge slow{100.0 * ampere_hour, 20.0 * hour};
    EXPECT_FALSE(peukert_through(slow, slow).has_value());
    EXPECT_FALSE(peukert_through(slow, {Charge{}, 1.0 * hour}).has_value());
    const auto more_when_faster = peukert_through(slow, {110.0 * ampere_hour, 1.0 * hour});
    EXPECT_NE(in_english(more_when_faster.error().front().remedy).find("misprinted"),
              std::string::npos);
}

}  // namespace
