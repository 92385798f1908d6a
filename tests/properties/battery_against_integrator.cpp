// The closed-form step against an integration of the same model's differential equations by a
// library that knows nothing of it: dopri5 of Boost.Odeint with dense output, started again at each
// change of power, tolerance 1e-10. Its equations, its table look-up and its cut-off are its own.
#include <algorithm>
#include <array>
#include <cmath>
#include <random>
#include <utility>

#include <boost/numeric/odeint.hpp>

#include "battery/advance.hpp"
#include "battery/cell/chemistry.hpp"

namespace {

using namespace battery;
using namespace units;

struct Spell {
    double watts;
    double seconds;
};

// What charging meets, where it is looked at: method.md (60), (61).
struct Charger {
    double when_empty = 0.0, rise = 0.0, rated = 1.0, knee = 0.0, beyond = 1.0;
    double inner = 0.0, absorption = 0.0, stored = 1.0;
};

struct Plant {
    double total, width, rate, resistance, cut_off, locked;
    std::vector<std::pair<double, double>> table;  // fill, volts
    Charger charger = {};
};

using Charges = std::array<double, 2>;  // available, bound

double rested_voltage_of(const Plant& plant, double available) {
    const double fill = available / (plant.width * plant.total);
    auto high = std::upper_bound(plant.table.begin() + 1, plant.table.end() - 1, fill,
                                 [](double value, const auto& row) { return value < row.first; });
    const auto low = high - 1;
    return low->second +
           (high->second - low->second) * (fill - low->first) / (high->first - low->first);
}

double current_of(const Plant& plant, double available, double watts) {
    const double rested = rested_voltage_of(plant, available);
    const double under_root = rested * rested - 4.0 * plant.resistance * watts;
    return (rested - std::sqrt(std::max(0.0, under_root))) / (2.0 * plant.resistance);
}

double charging_current_of(const Plant& plant, const Charges& charges, double watts) {
    const Charger& into = plant.charger;
    const double rested = rested_voltage_of(plant, charges[0]);
    const double removed = plant.total - charges[0] - charges[1];
    const double charge = std::clamp(1.0 - removed / into.rated, 0.0, 1.0);
    const double meets = into.when_empty * (1.0 + into.rise * charge / (1.001 - charge));
    const double slow = plant.resistance + std::max(0.0, meets - into.inner);
    const double fast = plant.resistance + std::max(0.0, into.beyond * meets - into.inner);
    const double at_knee = rested + slow * into.knee;
    const auto of_power = [&](double volts, double ohms) {
        return 2.0 * watts / (volts + std::sqrt(volts * volts - 4.0 * ohms * watts));
    };
    const double beyond = at_knee - fast * into.knee;
    const double free =
        -watts > at_knee * into.knee ? of_power(beyond, fast) : of_power(rested, slow);
    const double held = at_knee < into.absorption ? (beyond - into.absorption) / fast
                                                  : std::min(0.0, rested - into.absorption) / slow;
    return std::max(free, held);
}

bool has_ended(const Plant& plant, const Charges& charges, double watts) {
    if (watts < 0.0) return false;
    const double rested = rested_voltage_of(plant, charges[0]);
    if (rested * rested <= 4.0 * plant.resistance * watts) return true;
    if (charges[0] <= plant.locked * plant.width * plant.total) return true;
    return rested - plant.resistance * current_of(plant, charges[0], watts) <= plant.cut_off;
}

// Seconds until it ends, or all the spells' time.
double integrate(const Plant& plant, Charges charges, const std::vector<Spell>& spells) {
    namespace odeint = boost::numeric::odeint;
    double passed = 0.0;
    for (const Spell& spell : spells) {
        if (has_ended(plant, charges, spell.watts)) return passed;
        const auto derivative = [&](const Charges& y, Charges& rise, double) {
            const double flow = plant.rate * plant.width * (1.0 - plant.width) *
                                (y[1] / (1.0 - plant.width) - y[0] / plant.width);
            rise[0] = flow - (spell.watts < 0.0 ? plant.charger.stored *
                                                      charging_current_of(plant, y, spell.watts)
                                                : current_of(plant, y[0], spell.watts));
            rise[1] = -flow;
            if (y[0] >= plant.width * plant.total) rise[0] = std::min(0.0, rise[0]);
        };
        auto stepper =
            odeint::make_dense_output(1e-6, 1e-10, 120.0, odeint::runge_kutta_dopri5<Charges>());
        stepper.initialize(charges, 0.0, 1e-3);
        while (stepper.current_time() < spell.seconds) {
            stepper.do_step(derivative);
            double high = std::min(stepper.current_time(), spell.seconds);
            Charges at;
            stepper.calc_state(high, at);
            if (!has_ended(plant, at, spell.watts)) continue;
            double low = stepper.previous_time();
            while (high - low > 1e-7) {
                const double middle = 0.5 * (low + high);
                stepper.calc_state(middle, at);
                (has_ended(plant, at, spell.watts) ? high : low) = middle;
            }
            return passed + high;
        }
        stepper.calc_state(spell.seconds, charges);
        passed += spell.seconds;
    }
    return passed;
}

double closed_form(const Prepared& pack, Wells wells, const std::vector<Spell>& spells) {
    double passed = 0.0;
    for (const Spell& spell : spells) {
        const Advanced run = advance(pack, wells, spell.watts * watt, spell.seconds * second);
        wells = run.wells;
        passed += run.time / second;
        if (run.ending != Ending::completed) return passed;
    }
    return passed;
}

struct Scenario {
    Arrangement arrangement;
    Plant plant;
    std::vector<Spell> spells;
};

// Half at one power, half with a load that switches; C/50 to beyond 2 C.
Scenario scenario_of(int index, std::mt19937_64& bits) {
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits);
    };
    constexpr scenario::Chemistry all[] = {scenario::Chemistry::agm, scenario::Chemistry::flooded,
                                           scenario::Chemistry::gel, scenario::Chemistry::lifepo4};
    const OpenCircuit& table = open_circuit_of(all[index % 4]);
    const double ampere_hours = between(20.0, 400.0);
    Scenario made{
        .arrangement = {.kinetics = {ampere_hours * ampere_hour, Share(between(0.25, 0.95)),
                                     between(0.2, 2.0) * per_hour},
                        .open_circuit = &table,
                        .inner = 0.8 / ampere_hours * ohm,
                        .path = between(0.1, 0.4) / ampere_hours * ohm,
                        .reachable = Share(between(0.7, 1.0)),
                        .stops = {.cut_off = between(10.0, 11.5) * volt}},
        .plant = {},
        .spells = {}};
    const Kinetics& kinetics = made.arrangement.kinetics;
    made.plant = {.total = kinetics.total / coulomb,
                  .width = kinetics.available.value(),
                  .rate = kinetics.rate / hertz,
                  .resistance = (made.arrangement.inner + made.arrangement.path) / ohm,
                  .cut_off = *made.arrangement.stops.cut_off / volt,
                  .locked = made.arrangement.reachable.complement().value(),
                  .table = {}};
    for (int piece = 0; piece < table.pieces(); ++piece) {
        const double fill = table.piece(piece).low;
        made.plant.table.push_back({fill, table.voltage(StateOfCharge(fill)) / volt});
    }
    made.plant.table.push_back({1.0, table.voltage(StateOfCharge(1.0)) / volt});
    const double watts = 12.0 * ampere_hours * std::exp(between(std::log(0.02), std::log(2.0)));
    if (index < 48) {
        made.spells = {{watts, 300.0 * 3600.0}};
        return made;
    }
    for (int spell = 0; spell < 4000; ++spell)
        made.spells.push_back({spell % 2 == 0 ? watts : 0.1 * watts, between(120.0, 1800.0)});
    return made;
}

// A day's load and twelve hours of sun that gives back a little less, until nothing is left.
Scenario charged_scenario_of(int index, std::mt19937_64& bits) {
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits);
    };
    struct Kind {
        scenario::Chemistry chemistry;
        double width, per_hour, when_empty, rise, beyond;  // ohm Ah
    };
    constexpr Kind kinds[] = {{scenario::Chemistry::agm, 0.465, 0.87, 3.6, 0.55, 0.20},
                              {scenario::Chemistry::gel, 0.63, 0.50, 2.52, 0.888, 0.353},
                              {scenario::Chemistry::flooded, 0.43, 0.70, 5.0, 0.30, 0.353}};
    const Kind& kind = kinds[index % 3];
    const OpenCircuit& table = open_circuit_of(kind.chemistry);
    const double rated = between(50.0, 200.0);
    Scenario made{.arrangement = {.kinetics = {1.06 * rated * ampere_hour, Share(kind.width),
                                               kind.per_hour * per_hour},
                                  .open_circuit = &table,
                                  .inner = 0.8 / rated * ohm,
                                  .path = 0.2 / rated * ohm,
                                  .stops = {.cut_off = 10.5 * volt}},
                  .plant = {},
                  .spells = {}};
    auto& charging = made.arrangement.charging;
    charging = {.largest = 1000.0 * ampere,
                .absorption = between(14.0, 14.7) * volt,
                .coulombic = Efficiency(0.95),
                .resistance = {.when_empty = kind.when_empty / rated * ohm,
                               .rise = kind.rise,
                               .rated = rated * ampere_hour,
                               .knee = rated / 7.0 * ampere,
                               .beyond = kind.beyond}};
    const Kinetics& kinetics = made.arrangement.kinetics;
    made.plant = {.total = kinetics.total / coulomb,
                  .width = kind.width,
                  .rate = kinetics.rate / hertz,
                  .resistance = (made.arrangement.inner + made.arrangement.path) / ohm,
                  .cut_off = 10.5,
                  .locked = 0.0,
                  .table = {},
                  .charger = {.when_empty = kind.when_empty / rated,
                              .rise = kind.rise,
                              .rated = rated * 3600.0,
                              .knee = rated / 7.0,
                              .beyond = kind.beyond,
                              .inner = made.arrangement.inner / ohm,
                              .absorption = *charging.absorption / volt,
                              .stored = 0.95}};
    for (int piece = 0; piece < table.pieces(); ++piece) {
        const double fill = table.piece(piece).low;
        made.plant.table.push_back({fill, table.voltage(StateOfCharge(fill)) / volt});
    }
    made.plant.table.push_back({1.0, table.voltage(StateOfCharge(1.0)) / volt});
    const double load = rated * between(0.15, 0.4);
    for (int hour = 0; hour < 14 * 24; ++hour) {
        const double sun = std::sin(0.2618 * hour) * 3.0 * load * between(0.2, 1.1);
        made.spells.push_back({load - std::max(0.0, sun), 3600.0});
    }
    return made;
}

// What charging meets is its mean over a substep, to second order. Seen here: 0.5 s.
TEST(battery_against_integrator, two_weeks_of_charging_end_within_a_second) {
    std::mt19937_64 bits{7};
    double worst = 0.0;
    int ended = 0;
    for (int index = 0; index < 24; ++index) {
        const Scenario one = charged_scenario_of(index, bits);
        const Charges full{one.plant.width * one.plant.total,
                           (1.0 - one.plant.width) * one.plant.total};
        const double reference = integrate(one.plant, full, one.spells);
        const double here = closed_form(prepare(one.arrangement), Wells{}, one.spells);
        ended += reference < 14.0 * 86400.0 - 1.0 ? 1 : 0;
        std::printf("charged %2d: reference %13.4f s, closed form %13.4f s, off %9.4f s\n", index,
                    reference, here, here - reference);
        worst = std::max(worst, std::abs(here - reference));
    }
    EXPECT_GT(ended, 12);
    EXPECT_LT(worst, 1.0);
}

TEST(battery_against_integrator, cut_offs_agree_within_half_a_second_in_96_scenarios) {
    const auto worst_at = [&](Voltage tolerance, std::vector<double>& errors) {
        std::mt19937_64 bits{64};
        for (int index = 0; index < 96; ++index) {
            const Scenario one = scenario_of(index, bits);
            const Charges full{one.plant.width * one.plant.total,
                               (1.0 - one.plant.width) * one.plant.total};
            const double reference = integrate(one.plant, full, one.spells);
            const double here =
                closed_form(prepare(one.arrangement, tolerance), Wells{}, one.spells);
            if (reference > 0.0) errors.push_back(std::abs(here - reference));
            if (tolerance == default_tolerance && index % 9 == 1)
                std::printf("scenario %2d: reference %13.4f s, closed form %13.4f s\n", index,
                            reference, here);
        }
        std::sort(errors.begin(), errors.end());
        return errors.back();
    };
    for (const double millivolt : {1.0, 5.0, 10.0, 20.0, 50.0}) {
        std::vector<double> errors;
        const double worst = worst_at(0.001 * millivolt * volt, errors);
        std::printf("tolerance %4.0f mV: median %.5f s, 90 %% %.5f s, largest %.5f s\n", millivolt,
                    errors[errors.size() / 2], errors[errors.size() * 9 / 10], worst);
        EXPECT_GE(errors.size(), 64u);  // the others' cut-off is met before they begin
        EXPECT_TRUE(millivolt > default_tolerance / (0.001 * volt) || worst < 0.5) << worst;
    }
}

}  // namespace
