// A better unit never makes a start worse.
#include <algorithm>
#include <cmath>

#include "motor/code_letter.hpp"
#include "starting/packs.hpp"
#include "starting/settle.hpp"

namespace {

using namespace starting;
using units::ampere;
using units::ohm;
using units::second;
using units::volt;
using units::watt;

double between(int low, int high, double scale = 1.0) {
    return scale * *rc::gen::inRange(low, high);
}

scenario::Inverter any_inverter() {
    scenario::Inverter inverter;
    inverter.continuous = between(500, 4000) * watt;
    if (*rc::gen::arbitrary<bool>()) {
        inverter.surge = between(100, 250, 0.01) * inverter.continuous;
        if (*rc::gen::arbitrary<bool>()) inverter.surge_lasts = between(1, 100, 0.1) * second;
    }
    if (*rc::gen::arbitrary<bool>()) inverter.cutoff_voltage = between(95, 110, 0.1) * volt;
    if (*rc::gen::arbitrary<bool>()) inverter.cutoff_delay = between(0, 30, 0.1) * second;
    if (*rc::gen::arbitrary<bool>()) inverter.waveform = scenario::Waveform::quasi_square;
    if (*rc::gen::arbitrary<bool>())
        inverter.when_overloaded =
            *rc::gen::element(scenario::WhenOverloaded::trips, scenario::WhenOverloaded::folds_back,
                              scenario::WhenOverloaded::sags);
    return inverter;
}

scenario::Load any_motor() {
    using enum scenario::MotorKind;
    scenario::Load load{.name = "motor"};
    load.motor = scenario::Motor{
        .kind = *rc::gen::element(split_phase, capacitor_start, permanent_split_fan,
                                  compressor_rsir, submersible, universal, electronic),
        .soft_start = *rc::gen::arbitrary<bool>()};
    if (*rc::gen::arbitrary<bool>())
        load.motor->horsepower = between(2, 15, 0.1) * motor::horsepower;
    return load;
}

Branch any_branch() {
    Branch branch{.name = "pack",
                  .emf = between(115, 136, 0.1) * volt,
                  .path = {},
                  .count = static_cast<int>(between(1, 5))};
    const double least = between(1, 20, 0.001);
    branch.path = units::spanning<units::Resistance>(
        least * ohm, between(100, 150, 0.01) * least * ohm, between(150, 250, 0.01) * least * ohm);
    if (*rc::gen::arbitrary<bool>()) branch.limits.continuous = between(40, 300) * ampere;
    if (*rc::gen::arbitrary<bool>())
        branch.limits.pulse = {{between(100, 500) * ampere, between(1, 60, 0.1) * second}};
    if (*rc::gen::arbitrary<bool>()) branch.fuse = between(60, 400) * ampere;
    return branch;
}

struct Generated {
    scenario::Inverter described;
    StartQuestion question;
};

Generated any_start() {
    Generated made{.described = any_inverter()};
    made.question.inverter = *inverter_side(made.described, 12.8 * volt);
    const int motors = *rc::gen::inRange(1, 3);
    const double power = between(50, 1200);
    for (int i = 0; i < motors; ++i) {
        const RunningDraw running{.real = units::spanning<units::Power>(
                                      0.8 * power * watt, power * watt, 1.3 * power * watt),
                                  .factor = units::PowerFactor(0.7)};
        auto motor = starting_motor(any_motor(), "load[0]", running, made.question.inverter);
        RC_PRE(motor.has_value());
        made.question.motors.push_back(*motor);
    }
    made.question.background = background_of(
        {.real = units::spanning<units::Power>(between(0, 100) * watt, between(100, 300) * watt,
                                               between(300, 800) * watt),
         .factor = units::PowerFactor(0.9)});
    const auto branch = any_branch();
    made.question.source = {.branches = {branch, branch}, .shared = between(0, 30, 0.0001) * ohm};
    made.question.source.branches.back().count = static_cast<int>(between(1, 5));
    return made;
}

void expect_no_worse(const StartQuestion& better, const StartQuestion& worse) {
    RC_ASSERT(judge_start(better).verdict <= judge_start(worse).verdict);
}

TEST(start_order, more_packs_never_make_a_start_worse) {
    EXPECT_TRUE(rc::check([] {
        const auto made = any_start();
        StartQuestion more = made.question;
        more.source.branches.back().count += *rc::gen::inRange(1, 6);
        expect_no_worse(more, made.question);
    }));
}

TEST(start_order, a_fuller_bank_never_makes_a_start_worse) {
    EXPECT_TRUE(rc::check([] {
        const auto made = any_start();
        StartQuestion fuller = made.question;
        const auto higher = between(1, 100, 0.01) * volt;
        for (auto& branch : fuller.source.branches)
            branch.emf += higher;
        expect_no_worse(fuller, made.question);
    }));
}

TEST(start_order, a_thicker_cable_never_makes_a_start_worse) {
    EXPECT_TRUE(rc::check([] {
        const auto made = any_start();
        StartQuestion thicker = made.question;
        thicker.source.shared = between(0, 100, 0.01) * thicker.source.shared;
        for (auto& branch : thicker.source.branches)
            branch.path = units::each(
                [](units::Resistance whole) -> units::Resistance { return 0.9 * whole; },
                branch.path);
        expect_no_worse(thicker, made.question);
    }));
}

TEST(start_order, a_longer_surge_never_makes_a_start_worse) {
    EXPECT_TRUE(rc::check([] {
        auto made = any_start();
        made.described.surge = 2.0 * made.described.continuous;
        made.described.surge_lasts = between(1, 50, 0.1) * second;
        made.question.inverter = *inverter_side(made.described, 12.8 * volt);
        StartQuestion longer = made.question;
        made.described.surge_lasts = between(1, 10) * *made.described.surge_lasts;
        longer.inverter = *inverter_side(made.described, 12.8 * volt);
        expect_no_worse(longer, made.question);
    }));
}

template <class T>
void expect_in_order(const units::Range<T>& range) {
    RC_ASSERT(!(range.likely() < range.low()));
    RC_ASSERT(!(range.high() < range.likely()));
}

void expect_ordered_and_rightly_bound(const Judgement& found) {
    for (const auto& use : found.used) {
        expect_in_order(use.used);
        RC_ASSERT(std::isfinite(use.used.high().value()));
    }
    expect_in_order(units::spanning(found.draw.apparent));
    expect_in_order(units::spanning(found.draw.direct_power));
    expect_in_order(units::spanning(found.voltage));
    expect_in_order(units::spanning(found.current));
    expect_in_order(units::spanning(found.pack_current));
    const auto* binding = found.of(found.binding);
    RC_ASSERT(binding != nullptr);
    if (found.verdict == StartVerdict::will_not_start)
        RC_ASSERT(binding->used.low() > Utilised(1.0));
    if (found.verdict == StartVerdict::starts || found.draw.surge_time_in_doubt ||
        found.draw.waveform_in_doubt)
        return;
    const bool overstepped = std::ranges::any_of(
        found.used, [](const auto& use) { return use.used.high() > Utilised(1.0); });
    RC_ASSERT(!overstepped || binding->used.high() > Utilised(1.0));
    RC_ASSERT(binding->used.high() > comfortable(binding->constraint));
}

TEST(start_order, ranges_are_in_order_and_what_binds_is_overstepped_in_10000_starts) {
    constexpr int at_a_time = 100;  // of the 100 cases that a property is tried on
    EXPECT_TRUE(rc::check([] {
        for (int i = 0; i < at_a_time; ++i)
            expect_ordered_and_rightly_bound(judge_start(any_start().question));
    }));
}

TEST(start_order, the_packs_that_are_said_to_be_enough_are_the_fewest_that_are) {
    EXPECT_TRUE(rc::check([] {
        const auto question = any_start().question;
        const auto judge_behind = [&](const DirectSource& source) {
            return judge_start(question.motors, question.background, question.inverter, source);
        };
        const auto needed = packs_needed(question.source, judge_behind);
        const int others = packs_of(question.source) - question.source.branches.back().count;
        if (!needed.surely) {
            RC_ASSERT(judge_behind(with_last(question.source, most_packs_tried)).verdict !=
                      StartVerdict::starts);
            return;
        }
        const int last = *needed.surely - others;
        RC_ASSERT(judge_behind(with_last(question.source, last)).verdict == StartVerdict::starts);
        if (last > 0)
            RC_ASSERT(judge_behind(with_last(question.source, last - 1)).verdict !=
                      StartVerdict::starts);
    }));
}

}  // namespace
