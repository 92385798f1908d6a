// One outage at a time against general-purpose solvers of differential equations, on the same model
// and the same changes of load and sun: 1 to 16 packs, four counts of panels, 14 days each. Prints
// how long each takes and how far its end of the supply is from a reference of its own kind, dopri5
// at a tolerance of 1e-11. The peers' equations, table look-up and cut-off are their own; what
// charging meets they take at every moment, where the closed form takes it once a step, and so too
// where its curve of charging stands above that of rest.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <string>
#include <vector>

#include <boost/numeric/odeint.hpp>
#include <fmt/format.h>

#ifdef CANDLEMARK_CVODE
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>
#endif

#include "outage/clock/clock.hpp"
#include "scenario/file/read.hpp"
#include "sizing/builds/design.hpp"

namespace {

using namespace units;

struct Plant {
    double total, width, rate, resistance, floor, absorption;
    double cut_off_inverter, cut_off, current_above, removed_above, empty;
    double inner, charging_empty, charging_rise, per_rated, knee, beyond;
    bool resists, locks_by_rate;
    battery::ColdLock locked;
    std::vector<double> fill, volts, charging_volts;
    std::vector<double> filled_to, stored;  // efficiency of charging up to each fill
};

Plant plant_of(const abreast::ReadyPacks& packs) {
    const auto& with = packs.with_inverter;
    Plant plant{.total = with.total,
                .width = with.width,
                .rate = with.rate,
                .resistance = with.resistance,
                .floor = with.charge_floor,
                .absorption = with.absorption,
                .cut_off_inverter = std::max(with.cut_off, with.pack_cut_off),
                .cut_off = with.pack_cut_off,
                .current_above = with.current_above,
                .removed_above = with.removed_above,
                .empty = with.empty_voltage,
                .inner = with.inner,
                .charging_empty = with.charging_empty,
                .charging_rise = with.charging_rise,
                .per_rated = with.per_rated,
                .knee = with.charging_knee,
                .beyond = with.charging_beyond,
                .resists = with.resists,
                .locks_by_rate = with.locks_by_rate,
                .locked = with.locked,
                .fill = {},
                .volts = {},
                .charging_volts = {},
                .filled_to = {},
                .stored = {}};
    for (std::size_t piece = 0;; ++piece) {
        plant.stored.push_back(with.coulombic[piece]);
        if (std::isinf(with.coulombic_edge[piece + 1])) break;
        plant.filled_to.push_back(1.0 - with.coulombic_edge[piece + 1] / with.total);
    }
    const auto& table = *with.open_circuit;
    const auto knot = [&](const battery::Piece& piece, double fill) {
        plant.fill.push_back(fill);
        plant.volts.push_back(piece.at_zero + piece.slope * fill);
        plant.charging_volts.push_back(plant.volts.back() + piece.above_at_zero +
                                       piece.steeper * fill);
    };
    for (int piece = 0; piece < table.pieces(); ++piece)
        knot(table.piece(piece), table.piece(piece).low);
    knot(table.piece(table.pieces() - 1), 1.0);
    return plant;
}

// What one pack is asked for from one change to the next.
struct Spell {
    double seconds;
    double watts;
    bool through_inverter;
};

using Charges = std::array<double, 2>;  // available, bound; C

double on_table(const Plant& plant, const std::vector<double>& volts, double available) {
    const double fill = available / (plant.width * plant.total);
    const auto after = std::upper_bound(plant.fill.begin() + 1, plant.fill.end() - 1, fill);
    const auto high = std::size_t(after - plant.fill.begin());
    const double share = (fill - plant.fill[high - 1]) / (plant.fill[high] - plant.fill[high - 1]);
    return volts[high - 1] + share * (volts[high] - volts[high - 1]);
}
double rested(const Plant& plant, double available) {
    return on_table(plant, plant.volts, available);
}

double by_power(double volts, double ohms, double watts) {
    const double under_root = volts * volts - 4.0 * ohms * watts;
    return 2.0 * watts / (volts + std::sqrt(std::max(0.0, under_root)));
}

// method.md (60), (61), (64)
double charging_current(const Plant& plant, const double* y, double watts) {
    const double volts = on_table(plant, plant.charging_volts, y[0]);
    double slow = plant.resistance;
    double fast = plant.resistance;
    if (plant.resists) {
        const double removed = plant.total - y[0] - y[1];
        const double charge = std::clamp(1.0 - removed * plant.per_rated, 0.0, 1.0);
        const double meets =
            plant.charging_empty * (1.0 + plant.charging_rise * charge / (1.001 - charge));
        slow += std::max(0.0, meets - plant.inner);
        fast += std::max(0.0, plant.beyond * meets - plant.inner);
    }
    const double at_knee = plant.resists ? volts + slow * plant.knee : HUGE_VAL;
    const double beyond = at_knee - fast * plant.knee;
    const double free = plant.resists && -watts > at_knee * plant.knee
                            ? by_power(beyond, fast, watts)
                            : by_power(volts, slow, watts);
    double held = volts >= plant.absorption ? 0.0 : (volts - plant.absorption) / slow;
    if (at_knee < plant.absorption) held = (beyond - plant.absorption) / fast;
    return std::max({free, plant.floor, held});
}

double current(const Plant& plant, const double* y, double watts) {
    return watts < 0.0 ? charging_current(plant, y, watts)
                       : by_power(rested(plant, y[0]), plant.resistance, watts);
}

double stored(const Plant& plant, double charge) {
    const auto after =
        std::upper_bound(plant.filled_to.begin(), plant.filled_to.end(), charge / plant.total);
    return plant.stored[std::size_t(after - plant.filled_to.begin())];
}

void rise(const Plant& plant, const Spell& spell, const double* y, double* slope) {
    const bool two_wells = plant.width < 1.0;
    const double flow = two_wells ? plant.rate * plant.width * (1.0 - plant.width) *
                                        (y[1] / (1.0 - plant.width) - y[0] / plant.width)
                                  : 0.0;
    const double drawn = current(plant, y, spell.watts);
    slope[0] = flow - (drawn < 0.0 ? stored(plant, y[0] + y[1]) : 1.0) * drawn;
    slope[1] = -flow;
    if (y[0] >= plant.width * plant.total && slope[0] > 0.0) slope[0] = 0.0;
}

// How far the nearest limit is, above nought while none is met.
double margin(const Plant& plant, const Spell& spell, const double* y) {
    const double at_rest = rested(plant, y[0]);
    const double removed = plant.total - y[0] - y[1];
    double least = (plant.removed_above - removed) / plant.total;
    if (!plant.locks_by_rate) least = std::min(least, at_rest - plant.empty);
    if (spell.watts <= 0.0) return spell.watts < 0.0 ? 1.0 : least;
    const double under_root = at_rest * at_rest - 4.0 * plant.resistance * spell.watts;
    if (under_root <= 0.0) return -1.0;
    const double drawn = current(plant, y, spell.watts);
    if (plant.locks_by_rate)
        least =
            std::min(least, y[0] / (plant.width * plant.total) - plant.locked.at_amperes(drawn));
    const double cut_off = spell.through_inverter ? plant.cut_off_inverter : plant.cut_off;
    least = std::min(least, at_rest - plant.resistance * drawn - cut_off);
    return std::min(least, (plant.current_above - drawn) / 100.0);
}

double by_dopri5(const Plant& plant, const std::vector<Spell>& spells, Charges y,
                 double tolerance) {
    namespace odeint = boost::numeric::odeint;
    double passed = 0.0;
    for (const Spell& spell : spells) {
        if (margin(plant, spell, y.data()) <= 0.0) return passed;
        const auto derivative = [&](const Charges& at, Charges& slope, double) {
            rise(plant, spell, at.data(), slope.data());
        };
        auto stepper = odeint::make_dense_output(tolerance * plant.total, tolerance, 3600.0,
                                                 odeint::runge_kutta_dopri5<Charges>());
        stepper.initialize(y, 0.0, spell.seconds);
        while (stepper.current_time() < spell.seconds) {
            stepper.do_step(derivative);
            double high = std::min(stepper.current_time(), spell.seconds);
            Charges at;
            stepper.calc_state(high, at);
            if (margin(plant, spell, at.data()) > 0.0) continue;
            double low = stepper.previous_time();
            while (high - low > 1e-4) {
                const double middle = 0.5 * (low + high);
                stepper.calc_state(middle, at);
                (margin(plant, spell, at.data()) <= 0.0 ? high : low) = middle;
            }
            return passed + high;
        }
        stepper.calc_state(spell.seconds, y);
        passed += spell.seconds;
    }
    return passed;
}

// Minute by minute, the load as it is at the minute's beginning.
double by_euler(const Plant& plant, const std::vector<Spell>& spells, Charges y, double step) {
    std::size_t now = 0;
    double begins = 0.0;
    double end = 0.0;
    for (const Spell& spell : spells)
        end += spell.seconds;
    for (double time = 0.0; time < end; time += step) {
        while (now + 1 < spells.size() && begins + spells[now].seconds <= time)
            begins += spells[now++].seconds;
        if (margin(plant, spells[now], y.data()) <= 0.0) return time;
        double slope[2];
        rise(plant, spells[now], y.data(), slope);
        y[0] += step * slope[0];
        y[1] += step * slope[1];
    }
    return end;
}

#ifdef CANDLEMARK_CVODE
struct Asked {
    const Plant* plant;
    const Spell* spell;
};

int cvode_rise(realtype, N_Vector y, N_Vector slope, void* of) {
    const auto& asked = *static_cast<Asked*>(of);
    rise(*asked.plant, *asked.spell, N_VGetArrayPointer(y), N_VGetArrayPointer(slope));
    return 0;
}

int cvode_margin(realtype, N_Vector y, realtype* value, void* of) {
    const auto& asked = *static_cast<Asked*>(of);
    value[0] = margin(*asked.plant, *asked.spell, N_VGetArrayPointer(y));
    return 0;
}

double by_cvode(const Plant& plant, const std::vector<Spell>& spells, Charges start,
                double tolerance) {
    SUNContext context = nullptr;
    SUNContext_Create(nullptr, &context);
    N_Vector y = N_VNew_Serial(2, context);
    N_VGetArrayPointer(y)[0] = start[0];
    N_VGetArrayPointer(y)[1] = start[1];
    Asked asked{&plant, spells.data()};
    void* memory = CVodeCreate(CV_ADAMS, context);
    CVodeInit(memory, cvode_rise, 0.0, y);
    CVodeSStolerances(memory, tolerance, tolerance * plant.total);
    CVodeSetUserData(memory, &asked);
    CVodeRootInit(memory, 1, cvode_margin);
    CVodeSetNoInactiveRootWarn(memory);
    CVodeSetMaxNumSteps(memory, 100000);
    SUNNonlinearSolver solver = SUNNonlinSol_FixedPoint(y, 0, context);
    CVodeSetNonlinearSolver(memory, solver);
    double passed = 0.0;
    for (const Spell& spell : spells) {
        asked.spell = &spell;
        if (margin(plant, spell, N_VGetArrayPointer(y)) <= 0.0) break;
        CVodeReInit(memory, 0.0, y);
        CVodeSetStopTime(memory, spell.seconds);
        realtype reached = 0.0;
        const int flag = CVode(memory, spell.seconds, y, &reached, CV_NORMAL);
        passed += reached;
        if (flag == CV_ROOT_RETURN || flag < 0) break;
    }
    SUNNonlinSolFree(solver);
    CVodeFree(&memory);
    N_VDestroy(y);
    SUNContext_Free(&context);
    return passed;
}
#endif

struct One {
    int packs;
    std::vector<double> sun;
    std::vector<outage::SunChange> changes;
    std::vector<Spell> spells;
    double reference = 0.0;
};

struct Timed {
    double seconds = 0.0;
    std::vector<double> errors;  // s, sorted
};

template <class Run>
Timed timed(std::vector<One>& all, int turns, const Run& run) {
    Timed best{.seconds = 1e12};
    for (int turn = 0; turn < turns; ++turn) {
        Timed here;
        std::vector<double> ends;
        const auto begins = std::clock();
        for (const One& one : all)
            ends.push_back(run(one));
        here.seconds = double(std::clock() - begins) / CLOCKS_PER_SEC;
        for (std::size_t i = 0; i < all.size(); ++i)
            here.errors.push_back(std::abs(ends[i] - all[i].reference));
        std::ranges::sort(here.errors);
        if (here.seconds < best.seconds) best = here;
    }
    return best;
}

}  // namespace

int main(int count, char** arguments) {
    const std::string file = count > 1 ? arguments[1] : "scenarios/ice_storm.toml";
    auto read =
        scenario::read_scenario_file(file, {*scenario::read_override("outage.lasts=\"14 d\"")});
    if (!read) return 1;
    // Packs of one kind, as one: what the peers know.
    read->scenario.packs.resize(1);
    read->scenario.circuits.clear();
    const auto design = sizing::make_design(read->scenario, {}, 16, 9);
    if (!design) return 1;
    const auto& ready = *design->ready;
    const auto likely = std::size_t(outage::End::likely);
    const double start_removed = design->lit.at_start.removed / coulomb;
    std::vector<One> all;
    int ended = 0;
    double days = 0.0;
    for (int packs = 1; packs <= 16; ++packs)
        for (const int panels : {2, 4, 6, 9}) {
            One one{.packs = packs, .sun = {}, .changes = {}, .spells = {}};
            design->skies.offered(design->skies.weather(1, 7 * packs), panels, one.sun);
            for (std::size_t i = 0; i < one.sun.size(); ++i)
                one.changes.push_back(
                    {.from = design->skies.from()[i], .offered = one.sun[i] * watt});
            for (const auto& segment : design->lit.segments.all)
                one.spells.push_back(
                    {segment.time, (segment.taken - one.sun[std::size_t(segment.sun_step)]) / packs,
                     segment.through_inverter});
            const auto plant = plant_of(design->lit.days.front()[std::size_t(packs - 1)]);
            const double start = plant.total - start_removed;
            one.reference = by_dopri5(plant, one.spells,
                                      {plant.width * start, (1.0 - plant.width) * start}, 1e-11);
            days += one.reference / 86400.0;
            if (one.reference < 14.0 * 86400.0 - 1.0) ++ended;
            all.push_back(std::move(one));
        }
    std::printf("%zu outages of 14 days, %d end early, %.0f days in all, %zu changes each\n",
                all.size(), ended, days, design->lit.segments.all.size());
    const auto peer = [&](auto method) {
        return [&, method](const One& one) {
            const auto plant = plant_of(design->lit.days.front()[std::size_t(one.packs - 1)]);
            const double start = plant.total - start_removed;
            return method(plant, one.spells,
                          Charges{plant.width * start, (1.0 - plant.width) * start});
        };
    };
    const auto lane = timed(all, 5, [&](const One& one) {
        const abreast::LaneJob job{.packs = one.packs, .sun = one.sun};
        abreast::LaneEnding ending;
        abreast::run_lanes(design->lit, {&job, 1}, {&ending, 1});
        return ending.lasts / second;
    });
    const auto tell = [&](const char* name, const Timed& run) {
        const auto at = [&](double share) {
            return run.errors[std::size_t(share * double(run.errors.size() - 1))];
        };
        std::printf("%-44s %9.1f ms %8.2fx %9.0f days/s  error median %.4g p90 %.4g max %.4g s\n",
                    name, 1e3 * run.seconds, run.seconds / lane.seconds, days / run.seconds,
                    at(0.5), at(0.9), at(1.0));
    };
    tell("closed form, one lane", lane);
    tell("closed form, the clock with its ledger", timed(all, 3, [&](const One& one) {
             return outage::run(design->units[std::size_t(one.packs - 1)], ready.steps[likely],
                                one.changes, ready.outage.lasts, ready.midnight,
                                {.trace = false, .after_failure = false})
                        .lasts /
                    second;
         }));
    tell("Euler, 60 s", timed(all, 1, peer([](auto&&... of) { return by_euler(of..., 60.0); })));
    for (const double tolerance : {1e-4, 1e-6, 1e-8, 1e-10})
        tell(fmt::format("Odeint dopri5, dense, restarted, {:.0e}", tolerance).c_str(),
             timed(all, 1, peer([&](auto&&... of) { return by_dopri5(of..., tolerance); })));
#ifdef CANDLEMARK_CVODE
    for (const double tolerance : {1e-4, 1e-6, 1e-8, 1e-10})
        tell(fmt::format("SUNDIALS CVODE Adams, restarted, {:.0e}", tolerance).c_str(),
             timed(all, 1, peer([&](auto&&... of) { return by_cvode(of..., tolerance); })));
#else
    std::printf("SUNDIALS CVODE: not installed (libsundials-dev), left out\n");
#endif
    return 0;
}
