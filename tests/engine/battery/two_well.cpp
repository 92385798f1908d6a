#include "battery/cell/two_well.hpp"

namespace {

using namespace battery;
using namespace units;

const Kinetics pack{.total = 100.0 * ampere_hour, .available = Share(0.35), .rate = 1.0 * per_hour};
const Kinetics one_well{.total = 100.0 * ampere_hour, .available = Share(1.0), .rate = {}};

TEST(two_well, a_full_pack_at_rest_stays_full) {
    const Wells later = after(pack, Wells{}, Current{}, 30.0 * day);
    EXPECT_EQ(later, Wells{});
    EXPECT_DOUBLE_EQ(available_fill(pack, later).value(), 1.0);
}

TEST(two_well, rest_refills_the_available_well_from_the_bound_one) {
    const Wells drawn = after(pack, Wells{}, 40.0 * ampere, 1.0 * hour);
    const Wells rested_later = after(pack, drawn, Current{}, 1.0 * hour);
    EXPECT_GT(available_fill(pack, rested_later), available_fill(pack, drawn));
    EXPECT_LT(bound_fill(pack, rested_later), bound_fill(pack, drawn));
    EXPECT_EQ(rested_later.removed, drawn.removed);
}

TEST(two_well, one_well_has_no_head_difference_and_gives_all_its_charge_at_any_rate) {
    const Wells drawn = after(one_well, Wells{}, 30.0 * ampere, 2.0 * hour);
    EXPECT_EQ(drawn.head_difference, Charge{});
    EXPECT_NEAR(available_fill(one_well, drawn).value(), 0.4, 1e-15);
    EXPECT_NEAR(*time_to_empty(one_well, Wells{}, 200.0 * ampere) / hour, 0.5, 1e-12);
    EXPECT_NEAR(capacity_over(one_well, 1.0 * minute) / ampere_hour, 100.0, 1e-12);
}

TEST(two_well, charges_of_the_wells_can_be_turned_into_wells_and_back) {
    const Wells wells = wells_holding(pack, 20.0 * ampere_hour, 50.0 * ampere_hour);
    EXPECT_NEAR(available_charge(pack, wells) / ampere_hour, 20.0, 1e-12);
    EXPECT_NEAR(bound_charge(pack, wells) / ampere_hour, 50.0, 1e-12);
}

TEST(two_well, a_pack_that_is_not_discharged_never_empties) {
    EXPECT_FALSE(time_to_empty(pack, Wells{}, Current{}).has_value());
    EXPECT_FALSE(time_to_empty(pack, Wells{}, -5.0 * ampere).has_value());
}

TEST(two_well, an_empty_pack_has_no_time_left_and_a_full_one_takes_no_charge) {
    const Wells empty = rested(pack, StateOfCharge(0.0));
    EXPECT_EQ(*time_to_empty(pack, empty, 1.0 * ampere), Duration{});
    EXPECT_EQ(*time_to_full(pack, Wells{}, -1.0 * ampere), Duration{});
    EXPECT_EQ(largest_charge(pack, Wells{}, 1.0 * hour), Current{});
    EXPECT_EQ(largest_discharge(pack, empty, 1.0 * hour), Current{});
}

TEST(two_well, a_pack_just_charged_and_then_drawn_empties_when_its_charge_is_gone) {
    const Wells charged{.removed = 95.0 * ampere_hour, .head_difference = -40.0 * ampere_hour};
    const Duration time = *time_to_empty(pack, charged, 1.0 * ampere);
    EXPECT_NEAR(available_fill(pack, after(pack, charged, 1.0 * ampere, time)).value(), 0.0, 1e-13);
}

TEST(two_well, cold_locks_charge_in_and_warmth_gives_it_back) {
    const Duration cold = *time_to_empty(pack, Wells{}, 10.0 * ampere, Share(0.7));
    const Wells at_end = after(pack, Wells{}, 10.0 * ampere, cold);
    EXPECT_NEAR(available_fill(pack, at_end).value(), 0.3, 1e-13);
    const Duration warmed = *time_to_empty(pack, at_end, 10.0 * ampere);
    EXPECT_NEAR((cold + warmed) / hour, *time_to_empty(pack, Wells{}, 10.0 * ampere) / hour, 1e-10);
}

TEST(two_well, a_very_short_step_keeps_its_digits) {
    const Wells later = after(pack, Wells{}, 10.0 * ampere, 1e-6 * second);
    EXPECT_NEAR(later.head_difference / (10.0 * ampere * 1e-6 * second / 0.35), 1.0, 1e-9);
}

}  // namespace
