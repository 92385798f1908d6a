// What holds for every pair of wells, every state and every current.
#include <cmath>

#include "battery/cell/two_well.hpp"

namespace {

using namespace battery;
using namespace units;

// low to high, evenly in the logarithm where both are positive and `evenly` is false
double drawn_between(double low, double high, bool evenly = true) {
    const double at = *rc::gen::inRange(0, 1'000'001) / 1e6;
    return evenly ? low + at * (high - low) : low * std::pow(high / low, at);
}

Kinetics any_kinetics() {
    return {.total = drawn_between(1.0, 1000.0, false) * ampere_hour,
            .available = Share(*rc::gen::inRange(0, 5) == 0 ? 1.0 : drawn_between(0.02, 0.999)),
            .rate = drawn_between(0.001, 100.0, false) * per_hour};
}

Wells any_wells(const Kinetics& kinetics) {
    const double width = kinetics.available.value();
    const Charge available = drawn_between(0.0, 1.0) * width * kinetics.total;
    const Charge bound = drawn_between(0.0, 1.0) * (1.0 - width) * kinetics.total;
    return wells_holding(kinetics, available, bound);
}

Current any_current(const Kinetics& kinetics) {
    const Current size = kinetics.total / hour * drawn_between(1e-6, 20.0, false);
    return *rc::gen::arbitrary<bool>() ? size : -size;
}

Duration any_time() {
    return drawn_between(1e-3, 60.0 * 86400.0, false) * second;
}

void check(const char* what, void (*property)()) {
    EXPECT_TRUE(rc::check(what, property));
}

TEST(battery_two_well, a_step_of_a_and_then_b_is_a_step_of_both) {
    check("composition", [] {
        const Kinetics kinetics = any_kinetics();
        const Wells wells = any_wells(kinetics);
        const Current current = any_current(kinetics);
        const Duration a = any_time();
        const Duration b = any_time();
        const Wells both = after(kinetics, wells, current, a + b);
        const Wells one_by_one = after(kinetics, after(kinetics, wells, current, a), current, b);
        const Charge scale = kinetics.total + abs(current * (a + b));
        RC_ASSERT(abs(both.removed - one_by_one.removed) / scale < 1e-14);
        RC_ASSERT(abs(both.head_difference - one_by_one.head_difference) *
                      kinetics.available.value() / scale <
                  1e-13);
    });
}

TEST(battery_two_well, both_wells_lose_exactly_the_charge_that_flows_out) {
    check("conservation", [] {
        const Kinetics kinetics = any_kinetics();
        const Wells wells = any_wells(kinetics);
        const Current current = any_current(kinetics);
        const Duration time = any_time();
        const Wells later = after(kinetics, wells, current, time);
        const auto held = [&](const Wells& state) {
            return available_charge(kinetics, state) + bound_charge(kinetics, state);
        };
        const Charge lost = held(wells) - held(later);
        RC_ASSERT(abs(lost - current * time) / (kinetics.total + abs(current * time)) < 1e-12);
    });
}

TEST(battery_two_well, more_charge_never_lasts_shorter) {
    check("monotone", [] {
        const Kinetics kinetics = any_kinetics();
        const Wells less = any_wells(kinetics);
        const Current current = abs(any_current(kinetics));
        const Wells more = wells_holding(
            kinetics,
            available_charge(kinetics, less) +
                drawn_between(0.0, 1.0) * (kinetics.available.value() * kinetics.total -
                                           available_charge(kinetics, less)),
            bound_charge(kinetics, less));
        RC_ASSERT(*time_to_empty(kinetics, more, current) >=
                  *time_to_empty(kinetics, less, current) * (1.0 - 1e-9));
    });
}

TEST(battery_two_well, at_the_time_to_empty_it_is_empty_and_to_full_full) {
    check("instants", [] {
        const Kinetics kinetics = any_kinetics();
        const Wells wells = any_wells(kinetics);
        const Current current = abs(any_current(kinetics));
        const double locked = drawn_between(0.0, 0.5);
        const double fill = available_fill(kinetics, wells).value();
        const Duration empty = *time_to_empty(kinetics, wells, current, Share(1.0 - locked));
        const double at_empty =
            available_fill(kinetics, after(kinetics, wells, current, empty)).value();
        RC_ASSERT((fill <= locked ? empty == Duration{} : std::abs(at_empty - locked) < 1e-9));
        const Duration full = *time_to_full(kinetics, wells, -current);
        const double at_full =
            available_fill(kinetics, after(kinetics, wells, -current, full)).value();
        RC_ASSERT(std::abs(at_full - 1.0) < 1e-9);
    });
}

TEST(battery_two_well, the_largest_currents_just_empty_and_just_fill_it) {
    check("largest", [] {
        const Kinetics kinetics = any_kinetics();
        const Wells wells = any_wells(kinetics);
        const Duration time = any_time();
        const Current out = largest_discharge(kinetics, wells, time);
        RC_ASSERT(std::abs(available_fill(kinetics, after(kinetics, wells, out, time)).value()) <
                  1e-9);
        const Current in = largest_charge(kinetics, wells, time);
        RC_ASSERT(std::abs(available_fill(kinetics, after(kinetics, wells, -in, time)).value() -
                           1.0) < 1e-9);
        RC_ASSERT(largest_charge(kinetics, Wells{}, time) == Current{});
    });
}

TEST(battery_two_well, rest_keeps_the_charge_and_moves_the_available_well_one_way) {
    check("rest", [] {
        const Kinetics kinetics = any_kinetics();
        const Wells wells = any_wells(kinetics);
        const Duration time = any_time();
        const Wells sooner = after(kinetics, wells, Current{}, 0.5 * time);
        const Wells later = after(kinetics, wells, Current{}, time);
        RC_ASSERT(later.removed == wells.removed);
        const double up = wells.head_difference < Charge{} ? -1.0 : 1.0;
        const double first = available_fill(kinetics, wells).value();
        const double second = available_fill(kinetics, sooner).value();
        const double third = available_fill(kinetics, later).value();
        RC_ASSERT(up * (second - first) >= -1e-15);
        RC_ASSERT(up * (third - second) >= -1e-15);
    });
}

TEST(battery_two_well, one_wide_well_or_a_fast_exchange_gives_all_the_charge_at_any_rate) {
    check("limits", [] {
        Kinetics kinetics = any_kinetics();
        const Current current = abs(any_current(kinetics));
        const double whole = kinetics.total / current / second;
        kinetics.available = Share(1.0 - 1e-9);
        RC_ASSERT(std::abs(*time_to_empty(kinetics, Wells{}, current) / second / whole - 1.0) <
                  1e-7);
        kinetics.available = Share(drawn_between(0.02, 0.999));
        kinetics.rate = Frequency::from_value(1e9 / whole);
        RC_ASSERT(std::abs(*time_to_empty(kinetics, Wells{}, current) / second / whole - 1.0) <
                  1e-6);
    });
}

}  // namespace
