// The step is written once: over dimensions that refuse each other, and over any number of packs
// abreast with the same bits.
#include <bit>
#include <cstdint>
#include <random>

#include "battery/step/in_bank.hpp"

namespace {

using namespace battery::step;

using C = Coulombs<double>;
using A = Amperes<double>;
using V = Volts<double>;
using V2 = SquareVolts<double>;
using O = Ohms<double>;
using W = Watts<double>;
using J = Joules<double>;
using S = Seconds<double>;
using PerO = PerOhm<double>;
using PerS = PerSecond<double>;
using PerC = PerCoulomb<double>;
using PerA = PerAmpere<double>;
using N = double;
// of a dimension that no equation knows
using Wrong = Dimensioned<units::si::luminous_intensity, double>;

// Whether an equation takes these, and with any one of them of another dimension no longer does.
template <class Equation, class... Given, std::size_t... index>
constexpr bool refuses_each(std::index_sequence<index...>) {
    constexpr auto with = []<std::size_t wrong, std::size_t... i>(std::index_sequence<i...>) {
        return std::is_invocable_v<Equation, std::conditional_t<i == wrong, Wrong, Given>...>;
    };
    return (!with.template operator()<index>(std::index_sequence_for<Given...>{}) && ...);
}
template <class Equation, class... Given>
constexpr bool only = std::is_invocable_v<Equation, Given...>&& refuses_each<Equation, Given...>(
    std::index_sequence_for<Given...>{});

#define EQUATION(name) \
    decltype(          \
        [](auto... given) requires requires { name(given...); } { return name(given...); })

static_assert(only<EQUATION(bus_of<double>), W, PerO, A, V, V, O, bool>);
static_assert(only<EQUATION(meets_bus<double>), Mean<double>, O, O, N, N, N>);
static_assert(only<EQUATION(most_into<double>), N, Standing<double>, N, N, N, S, N, N>);
static_assert(only<EQUATION(highest_node_of<double>), Meets<double>, A, N, N, A, V>);
static_assert(only<EQUATION(beyond_knee<double>), V, Meets<double>, A, A>);
static_assert(only<EQUATION(lag_at<double>), A, A, Added<double>, PerC, A, S>);
static_assert(only<EQUATION(higher<double>), Taking<double>, V>);
static_assert(only<EQUATION(lagging<double>), Current<double>, V, A, V>);
static_assert(only<EQUATION(lag_of<double>), bool, A, A, O, PerC, S>);
static_assert(only<EQUATION(available_fill), C, C, N, PerC>);
static_assert(only<EQUATION(bound_fill), C, C, N, PerC>);
static_assert(only<EQUATION(whole_fill), C, PerC>);
static_assert(only<EQUATION(removed_after), C, A, S>);
static_assert(only<EQUATION(head_after), C, N, A, N, S, N>);
static_assert(only<EQUATION(head_rise), A, N, PerS, C>);
static_assert(only<EQUATION(shortfall_rise), A, N, A>);
static_assert(only<EQUATION(voltage_on), V, V, N>);
static_assert(only<EQUATION(mean_fill), C, C, N, N, PerC>);
static_assert(only<EQUATION(fill_per_ampere), S, N, N, PerC>);
static_assert(only<EQUATION(volts_per_ampere), V, PerA>);
static_assert(only<EQUATION(mean_rested), V, O, A>);
static_assert(only<EQUATION(resistance_of_step), O, N, O>);
static_assert(only<EQUATION(under_root), V, O, W>);
static_assert(only<EQUATION(current_of), W, V, V>);
static_assert(only<EQUATION(absorbed), V, V, O>);
static_assert(only<EQUATION(settling), V, V, O, N>);
static_assert(only<EQUATION(most_taken), C, C, N, N, S, N, N>);
static_assert(only<EQUATION(charging_resistance), O, N, N, N>);
static_assert(only<EQUATION(charging_slope), O, N, N>);
static_assert(only<EQUATION(mean_rise), O, A, PerC, S>);
static_assert(only<EQUATION(voltage_at_knee), V, O, A>);
static_assert(only<EQUATION(voltage_beyond), V, O, A>);
static_assert(only<EQUATION(power_at_knee), V, A>);
static_assert(only<EQUATION(charging_rise), O, O, A, A>);
static_assert(only<EQUATION(charging_drift), O, O, A>);
static_assert(only<EQUATION(in_charging_rise), C, V>);
static_assert(only<EQUATION(at_far_end), C, V, A, O>);
static_assert(only<EQUATION(in_resistance), C, A, O>);
static_assert(only<EQUATION(in_charging), A, A, S, V>);
static_assert(only<EQUATION(gained), A, N, S>);
static_assert(only<EQUATION(mean_head), C, C, N, N>);
static_assert(only<EQUATION(mean_removed_head), C, C, C, C, C, N, N, N>);
static_assert(only<EQUATION(mean_head_squared), C, C, N, N, N, N, PerS, S>);
static_assert(only<EQUATION(far_above), V, PerA, W>);
static_assert(only<EQUATION(can_be_had), V, O, W>);
static_assert(only<EQUATION(within_tolerance), V, V, V, V>);

// What the laws of electricity make of units, and what they refuse.
template <class X, class Y>
constexpr bool adds = requires(X x, Y y) {
    x + y;
};
template <class X, class Y>
constexpr bool compares = requires(X x, Y y) {
    x < y;
};
static_assert(std::is_same_v<decltype(A{} * O{}), V> && std::is_same_v<decltype(V{} * A{}), W>);
static_assert(std::is_same_v<decltype(A{} * S{}), C> && std::is_same_v<decltype(C{} * V{}), J>);
static_assert(std::is_same_v<decltype(C{} * PerC{}), double> &&
              std::is_same_v<decltype(S{} * PerS{}), double>);
static_assert(std::is_same_v<decltype(root_of(V2{})), V>);
static_assert(adds<V, V> && !adds<V, A> && !adds<V, double> && !adds<double, V>);
static_assert(compares<V, V> && !compares<V, V2> && !compares<V, double>);

struct Case {
    double removed, head, slope, at_zero, resistance, power, time, left, once, twice;
};

template <Kind kind, class Real>
std::array<Real, 5> stepped(const std::vector<Case>& cases, std::size_t first) {
    const auto lanes = [&](double Case::*member) {
        Real all_of{};
        if constexpr (one<Real>)
            all_of = cases[first].*member;
        else
            for (std::size_t lane = 0; lane < lanes_of<Real>; ++lane)
                all_of[lane] = cases[first + lane].*member;
        return all_of;
    };
    const Constants<double> pack{{1.0 / 396000.0}, 0.655, 0.345, 1.0 / 0.345, {1.02 / 3600.0}};
    const Standing<Real> from{
        {lanes(&Case::removed)}, {kind.two_wells ? lanes(&Case::head) : Real{}}, Real{}, Real{}};
    const Seconds<Real> time{lanes(&Case::time)};
    const Real once = lanes(&Case::once);
    const auto mean = mean_of<kind, Real>(
        {{lanes(&Case::at_zero)}, {lanes(&Case::slope)}}, from, pack, once,
        fill_per_ampere(time, 0.655 / 0.345, lanes(&Case::twice), pack.per_total));
    const Watts<Real> power{lanes(&Case::power)};
    const Ohms<Real> resistance =
        resistance_of_step(Ohms<Real>{lanes(&Case::resistance)}, 0.9, mean.per_ampere);
    Current<Real> current;
    if constexpr (kind.resists) {
        const Resists<double> resists{{0.025}, 0.888, {1.0 / 360000.0}, {14.0}, 0.35, {0.008}};
        const auto added = added_at<Real>(from.removed, resists);
        const auto taking = taking_of(mean.at_rest, resistance, added, resists.knee);
        current = current_either_way(power, resistance, taking, resists.knee, A{-30.0}, V{14.4});
        const auto behind = lag_at<Real>(current.amount, current.amount, added, resists.per_rated,
                                         resists.knee, time);
        const auto lag = select(power < nothing_of(power), behind, nothing_of(behind));
        current.amount = lagging<Real>(current, lag, A{-30.0}, V{14.4}).amount;
    } else {
        current = current_at<kind, Real>(power, mean.at_rest, resistance, A{-30.0}, V{14.4});
    }
    const auto to = stand_after<kind>(from, current.amount, pack, time, lanes(&Case::left), once);
    return {current.amount.value, to.removed.value, to.head.value, to.available, to.bound};
}

template <Kind kind, class Real>
void same_bits() {
    std::mt19937_64 bits(5);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits);
    };
    std::vector<Case> cases;
    for (int i = 0; i < 4096; ++i) {
        const double time = between(1.0, 5000.0);
        const auto decayed = battery::decay(1.02 / 3600.0 * time);
        cases.push_back({.removed = between(0.0, 390000.0),
                         .head = between(-40000.0, 40000.0),
                         .slope = between(0.1, 20.0),
                         .at_zero = between(10.0, 12.5),
                         .resistance = between(0.001, 0.05),
                         .power = between(-2000.0, 800.0),
                         .time = time,
                         .left = decayed.left,
                         .once = decayed.once,
                         .twice = decayed.twice});
    }
    for (std::size_t first = 0; first < cases.size(); first += lanes_of<Real>) {
        const auto abreast = stepped<kind, Real>(cases, first);
        for (std::size_t lane = 0; lane < lanes_of<Real>; ++lane) {
            const auto alone = stepped<kind, double>(cases, first + lane);
            for (std::size_t part = 0; part < alone.size(); ++part)
                ASSERT_EQ(std::bit_cast<std::uint64_t>(double(abreast[part][lane])),
                          std::bit_cast<std::uint64_t>(alone[part]))
                    << "case " << first + lane << " part " << part;
        }
    }
}

template <class Real>
void same_bits_of_every_kind() {
    same_bits<Kind{true, true, true, true}, Real>();
    same_bits<Kind{true, false, true, true}, Real>();
    same_bits<Kind{true, true, true, false}, Real>();
    same_bits<Kind{true, false, true, false}, Real>();
    same_bits<Kind{false, true, true, false}, Real>();
    same_bits<Kind{false, false, true, false}, Real>();
}

// Either way is one way: what charging alone makes of a power, and what discharge does.
TEST(step, a_pack_offered_charge_or_asked_for_it) {
    const Ohms<double> resistance{0.012};
    const Resists<double> resists{{0.025}, 0.888, {1.0 / 360000.0}, {14.0}, 0.35, {0.008}};
    for (const double power : {-900.0, -200.0, -10.0, 0.0, 10.0, 400.0})
        for (const double charge : {0.0, 0.5, 0.9, 0.999}) {
            const auto taking = taking_of<double>(
                {12.4}, resistance, added_at<double>({(1.0 - charge) * 360000.0}, resists),
                resists.knee);
            const auto either = current_either_way<double>({power}, resistance, taking,
                                                           resists.knee, A{-30.0}, V{14.4});
            const auto one =
                power < 0.0 ? charging_at<double>({power}, taking, resists.knee, A{-30.0}, V{14.4})
                            : current_at<Kind{false, false, true}, double>(
                                  {power}, {12.4}, resistance, A{-30.0}, V{14.4});
            EXPECT_EQ(either.amount.value, one.amount.value);
            EXPECT_EQ(either.root.value, one.root.value);
        }
}

// 12.8 and 12.6 V behind 10 milliohm each and 1 milliohm that both share: 12.7 V behind 6 milliohm.
TEST(step, two_packs_on_a_bus_are_a_source_behind_a_resistance) {
    const auto bus =
        bus_of<double>({300.0}, {200.0}, {1280.0 + 1260.0}, {20.0}, {14.4}, {0.001}, false);
    EXPECT_TRUE(bus.possible);
    EXPECT_NEAR(bus.source.value, 12.7, 1e-12);
    EXPECT_NEAR(bus.voltage.value * bus.current.value, 300.0, 1e-9);
    EXPECT_NEAR(bus.voltage.value, 12.7 - 0.006 * bus.current.value, 1e-12);
    EXPECT_NEAR(bus.node.value, bus.voltage.value + 0.001 * bus.current.value, 1e-12);
    // 12.7² / (4 · 0.006) = 6,720.4 W is the most
    EXPECT_TRUE(
        bus_of<double>({6720.0}, {200.0}, {2540.0}, {20.0}, {14.4}, {0.001}, false).possible);
    EXPECT_FALSE(
        bus_of<double>({6721.0}, {200.0}, {2540.0}, {20.0}, {14.4}, {0.001}, false).possible);
    // offered more than absorption lets in: it holds its voltage at the far end
    const auto held = bus_of<double>({-9000.0}, {200.0}, {2540.0}, {20.0}, {14.4}, {0.001}, true);
    EXPECT_NEAR(held.voltage.value, 14.4, 1e-12);
    EXPECT_NEAR(held.current.value, (12.7 - 14.4) / 0.006, 1e-9);
    // or as much as the weakest takes
    const auto weakest =
        bus_of<double>({-9000.0}, {200.0}, {2540.0}, {13.0}, {14.4}, {0.001}, true);
    EXPECT_NEAR(weakest.node.value, 13.0, 1e-12);
    EXPECT_NEAR(weakest.current.value, 2540.0 - 200.0 * 13.0, 1e-9);
}

TEST(step, two_packs_abreast_do_as_one) {
    same_bits_of_every_kind<Two>();
}
TEST(step, four_packs_abreast_do_as_one) {
    same_bits_of_every_kind<Four>();
}
TEST(step, eight_packs_abreast_do_as_one) {
    same_bits_of_every_kind<Eight>();
}

}  // namespace
