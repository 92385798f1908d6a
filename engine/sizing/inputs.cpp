#include "sizing/inputs.hpp"

#include <algorithm>
#include <cmath>
#include <random>

#include <boost/math/distributions/students_t.hpp>
#include <boost/random/sobol.hpp>

#include "inverter/model.hpp"
#include "outage/demand.hpp"
#include "outage/demand_power.hpp"
#include "sizing/sweep.hpp"

namespace sizing {

namespace {

using namespace units;

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);
constexpr int designs = 32;            // of the inputs
constexpr int weathers_a_design = 32;  // each with weathers of its own

Power between(Power low, Power middle, Power high, double at) {
    return at < 0.5 ? low + 2.0 * at * (middle - low) : middle + (2.0 * at - 1.0) * (high - middle);
}

// Designs are quasi-random and the weathers of each are its own, so the spread of the designs'
// shares tells how well their mean is known, if anything too cautiously; and never narrower than
// as if all were independent. method.md (9)
Chance chance_of(const std::vector<int>& lasted, int weathers) {
    int all = 0;
    for (const int count : lasted)
        all += count;
    const double n = static_cast<double>(lasted.size());
    Chance chance = counted(all, static_cast<int>(lasted.size()) * weathers);
    double squares = 0.0;
    for (const int count : lasted) {
        const double off = count / double(weathers) - chance.of.value();
        squares += off * off;
    }
    const boost::math::students_t spread(n - 1.0);
    const double half = boost::math::quantile(spread, 0.975) * std::sqrt(squares / (n - 1.0) / n);
    chance.low = std::min(chance.low, Probability(std::max(0.0, chance.of.value() - half)));
    chance.high = std::max(chance.high, Probability(std::min(1.0, chance.of.value() + half)));
    return chance;
}

}  // namespace

Inputs inputs_of(const scenario::Scenario& scenario, const outage::Ready& ready) {
    Inputs inputs;
    int of_compressors = -1;
    const auto& loads = ready.demand.loads;
    for (std::size_t i = 0; i < loads.size(); ++i) {
        int coordinate = -1;
        if (loads[i].power.low < loads[i].power.high) {
            if (outage::has_compressor(scenario.loads[i])) {
                if (of_compressors < 0) of_compressors = inputs.coordinates++;
                coordinate = of_compressors;
            } else {
                coordinate = inputs.coordinates++;
            }
        }
        inputs.of_load.push_back(coordinate);
    }
    const auto& inverter = ready.units[likely].inverter;
    if (inverter && inverter->idle_low < inverter->idle_high) inputs.of_idle = inputs.coordinates++;
    return inputs;
}

outage::Ready with_inputs(const outage::Ready& ready, const Inputs& inputs,
                          const std::vector<double>& at) {
    outage::Ready moved = ready;
    for (std::size_t i = 0; i < moved.demand.loads.size(); ++i) {
        if (inputs.of_load[i] < 0) continue;
        auto& power = moved.demand.loads[i].power;
        power.likely = between(power.low, power.likely, power.high,
                               at[static_cast<std::size_t>(inputs.of_load[i])]);
    }
    auto& inverter = moved.units[likely].inverter;
    if (inputs.of_idle >= 0)
        inverter = inverter::with_idle(
            *inverter, between(inverter->idle_low, inverter->losses.idle, inverter->idle_high,
                               at[static_cast<std::size_t>(inputs.of_idle)]));
    moved.steps[likely] = outage::steps_of(moved, moved.demand, outage::End::likely);
    return moved;
}

std::vector<std::vector<double>> quasi_random(int points, int coordinates, std::uint64_t seed) {
    std::mt19937_64 shifts(seed);
    std::vector<double> shift;
    for (int i = 0; i < coordinates; ++i)
        shift.push_back(std::ldexp(static_cast<double>(shifts() >> 11U), -53));
    boost::random::sobol sequence(static_cast<std::size_t>(coordinates));
    // The library leaves point 0 out; a whole block of points, a power of two, is even by itself.
    sequence.discard(static_cast<std::uintmax_t>(points - 1) *
                     static_cast<std::uintmax_t>(coordinates));
    std::vector<std::vector<double>> found;
    for (int point = 0; point < points; ++point) {
        auto& at = found.emplace_back();
        for (int i = 0; i < coordinates; ++i) {
            const double drawn = std::ldexp(static_cast<double>(sequence() >> 11U), -53);
            at.push_back(std::fmod(drawn + shift[static_cast<std::size_t>(i)], 1.0));
        }
    }
    return found;
}

std::optional<std::vector<Chance>> chances_over_inputs(const scenario::Scenario& scenario,
                                                       const Design& design,
                                                       const std::vector<BuildSize>& builds,
                                                       std::uint64_t seed, unsigned threads) {
    const auto inputs = inputs_of(scenario, *design.ready);
    if (inputs.coordinates == 0 || builds.empty()) return std::nullopt;
    int most_packs = 1;
    for (const auto& build : builds)
        most_packs = std::max(most_packs, build.packs);
    // A file's start dates are too few to give each design its own: each meets all of them.
    const bool few = design.most_weathers < designs * weathers_a_design;
    const int weathers = few ? design.most_weathers : weathers_a_design;
    std::vector<std::vector<int>> lasted(builds.size());
    int number = 0;
    for (const auto& at : quasi_random(designs, inputs.coordinates, seed)) {
        const auto moved =
            design_of(std::make_shared<const outage::Ready>(with_inputs(*design.ready, inputs, at)),
                      most_packs, design.most_panels);
        for (std::size_t i = 0; i < builds.size(); ++i)
            lasted[i].push_back(lasted_in(moved, builds[i].packs, builds[i].panels,
                                          few ? 0 : number, weathers, seed, threads));
        number += weathers;
    }
    std::vector<Chance> chances;
    for (const auto& counts : lasted)
        chances.push_back(chance_of(counts, weathers));
    return chances;
}

}  // namespace sizing
