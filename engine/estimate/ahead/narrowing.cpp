#include "estimate/ahead/narrowing.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "demand/power.hpp"
#include "estimate/closed_form.hpp"
#include "estimate/likelihood.hpp"

namespace estimate {

using namespace units;

namespace {

constexpr double worth_it = 0.95;  // of the width, at most
constexpr Duration metered_for = 24.0 * hour;
constexpr double of_a_charge = 0.05;  // a rested voltage of lead-acid, or a display

struct Moments {
    double variance_of_time = 0.0;
    double variance_of_read = 0.0;
    double covariance = 0.0;
};

Moments moments(const std::vector<chance::Outcome>& outcomes, const auto& read) {
    double time = 0.0;
    double value = 0.0;
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        time += outcomes[i].weight * (outcomes[i].lasts / hour);
        value += outcomes[i].weight * read(i);
    }
    Moments made;
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        const double t = outcomes[i].lasts / hour - time;
        const double v = read(i) - value;
        made.variance_of_time += outcomes[i].weight * t * t;
        made.variance_of_read += outcomes[i].weight * v * v;
        made.covariance += outcomes[i].weight * t * v;
    }
    return made;
}

// What reading this would leave of the deviation of the time that is left; none where there is none.
//   error   of the reading, a standard deviation
std::optional<double> part_left(const std::vector<chance::Outcome>& outcomes, const auto& read,
                                double error) {
    const Moments of = moments(outcomes, read);
    if (!(of.variance_of_time > 0.0)) return std::nullopt;
    return deviation_after(of.variance_of_time, of.covariance, of.variance_of_read, error) /
           std::sqrt(of.variance_of_time);
}

// The place of what each load draws among the unknowns of the members, where a meter can find it:
// on AC, and not switched off by now.
std::optional<std::size_t> place_of_draw(const scenario::Scenario& scenario, const Story& story,
                                         const Members& members, std::size_t load, Duration now) {
    const auto name = fmt::format("load/{}/draw", scenario.loads[load].name);
    const auto at = std::ranges::find(members.names, name);
    if (at == members.names.end() || story.is_off(load, now) ||
        scenario.loads[load].from != scenario::Outlet::ac)
        return std::nullopt;
    return static_cast<std::size_t>(at - members.names.begin());
}

// Of a meter left on a load for a day: in deviations of what it draws.
double error_of_meter(const scenario::Load& load, const demand::PlannedLoad& planned) {
    return meter_error(planned.power.likely, planned.power.factor.value(),
                       demand::has_compressor(load), metered_for,
                       chance::day_deviation(chance::day_kind_of(load)))
        .both();
}

}  // namespace

Duration width_of(std::vector<chance::Outcome> outcomes) {
    if (outcomes.empty()) return {};
    std::ranges::sort(outcomes, [](const chance::Outcome& a, const chance::Outcome& b) {
        return a.lasts < b.lasts;
    });
    return chance::time_of(outcomes, 0.9) - chance::time_of(outcomes, 0.1);
}

std::vector<Narrowing> narrowings(const scenario::Scenario& scenario, const Story& story,
                                  const chance::World& world, const Posterior& posterior,
                                  const std::vector<chance::Outcome>& outcomes, Duration now) {
    const auto& members = posterior.members;
    const Duration width = width_of(outcomes);
    std::vector<Narrowing> found;
    const auto add = [&](NextRead what, std::size_t load, const auto& read, double error) {
        const auto left = part_left(outcomes, read, error);
        if (left && *left <= worth_it)
            found.push_back({.what = what, .load = load, .width_after = *left * width});
    };
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        const auto place = place_of_draw(scenario, story, members, i, now);
        if (!place) continue;
        const auto& sides = world.draw_of(i);
        const auto read = [&](std::size_t k) {
            const double score = chance::score_of(members.values[k][*place]);
            return (score > 0.0 ? sides.above : sides.below) * score;
        };
        add(NextRead::meter, i, read,
            error_of_meter(scenario.loads[i], world.ready().demand.loads[i]));
    }
    const auto charge = [&](std::size_t k) { return posterior.now[k].charge.value(); };
    add(NextRead::charge, 0, charge, of_a_charge);
    std::ranges::stable_sort(found, [](const Narrowing& a, const Narrowing& b) {
        return a.width_after < b.width_after;
    });
    return found;
}

}  // namespace estimate
