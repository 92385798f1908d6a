#include "estimate/posterior.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include <fmt/format.h>

#include "chance/draw.hpp"
#include "estimate/meters.hpp"
#include "estimate/weights.hpp"
#include "outage/in_threads.hpp"

namespace estimate {

using namespace units;
using chance::score_of;

namespace {

// Share below a score, in the open interval in which a score can be had back.
double drawn_at(double score) {
    const double at = 0.5 * std::erfc(-std::clamp(score, -7.0, 7.0) / std::numbers::sqrt2);
    return std::clamp(at, 1e-12, 1.0 - 1e-12);
}

constexpr const char* meters_own = "meter/volts";
constexpr const char* tables_own = "pack/table";
constexpr double discount = 0.98;        // [Liu 2001]
constexpr int most_rounds = 10;          // of drawing together
constexpr double least_exponent = 0.02;  // of a round, so that it comes to an end
constexpr double beyond_chance = 0.001;  // of a contradiction

Members drawn_members(const chance::World& world, const Asked& asked) {
    Members members{.names = world.names(), .values = {}, .own = {}, .weights = {}};
    const std::size_t count = std::size_t(asked.blocks) * chance::lanes;
    members.values.assign(count, std::vector<double>(members.names.size()));
    members.own.resize(count);
    members.weights.assign(count, 1.0 / double(count));
    for (int block = 0; block < asked.blocks; ++block) {
        const chance::Block of{.seed = asked.seed, .number = std::uint32_t(block)};
        const std::size_t first = std::size_t(block) * chance::lanes;
        for (std::size_t name = 0; name < members.names.size(); ++name) {
            const auto column = chance::drawn(of, members.names[name]);
            for (std::size_t lane = 0; lane < column.size(); ++lane)
                members.values[first + lane][name] = column[lane];
        }
        const auto meter = chance::drawn(of, meters_own);
        const auto table = chance::drawn(of, tables_own);
        for (std::size_t lane = 0; lane < meter.size(); ++lane)
            members.own[first + lane] = {.meter = score_of(meter[lane]),
                                         .table = score_of(table[lane])};
    }
    return members;
}

// The draws of metered loads, as the meters leave them.
void move_by_meters(Members& members, const std::vector<Metered>& meters,
                    const scenario::Scenario& scenario, const chance::World& world) {
    for (std::size_t i = 0; i < meters.size(); ++i) {
        const Metered& meter = meters[i];
        // Of several on one load the last has what all of them say.
        const bool last =
            std::none_of(meters.begin() + std::ptrdiff_t(i) + 1, meters.end(),
                         [&](const Metered& later) { return later.load == meter.load; });
        const auto name = fmt::format("load/{}/draw", scenario.loads[meter.load].name);
        const auto found = std::ranges::find(members.names, name);
        if (!last || found == members.names.end()) continue;
        const auto place = static_cast<std::size_t>(found - members.names.begin());
        const auto& sides = world.draw_of(meter.load);
        for (auto& values : members.values) {
            // Each member keeps its place within the spread.
            const double factor =
                meter.after.mean + meter.after.deviation * score_of(values[place]);
            const double side = factor > 0.0 ? sides.above : sides.below;
            if (side > 0.0) values[place] = drawn_at(factor / side);
        }
    }
}

// What each member would have shown, reading by reading, and has now.
struct Shown {
    std::vector<std::vector<State>> at;  // by member, by reading
    std::vector<State> now;
};

Shown shown_by(const Members& members, const scenario::Scenario& scenario, const Story& story,
               const Lives& lives, const Asked& asked) {
    std::vector<Duration> times;
    for (const std::size_t place : story.readings)
        times.push_back(scenario.log[place].at - scenario.outage.starts);
    times.push_back(std::max(asked.now, times.empty() ? asked.now : times.back()));
    Shown shown{.at = std::vector<std::vector<State>>(members.values.size()), .now = {}};
    outage::for_each_number(static_cast<int>(members.values.size()), asked.threads, [&](int i) {
        shown.at[std::size_t(i)] = lives.states(members.values[std::size_t(i)], times);
    });
    for (auto& of_member : shown.at) {
        shown.now.push_back(of_member.back());
        of_member.pop_back();
    }
    return shown;
}

// One a member and reading.
using Comparisons = std::vector<std::vector<Compared>>;

Comparisons comparisons(const Members& members, const Shown& shown,
                        const scenario::Scenario& scenario, const Story& story,
                        const PacksRead& packs) {
    Comparisons all(members.values.size());
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = 0; j < story.readings.size(); ++j) {
            const auto& entry = scenario.log[story.readings[j]];
            all[i].push_back(compared(entry, shown.at[i][j], packs, members.own[i],
                                      entry.at - scenario.outage.starts));
        }
    return all;
}

std::vector<double> likelihoods(const Comparisons& all) {
    std::vector<double> sums;
    for (const auto& of_member : all) {
        double sum = 0.0;
        for (const Compared& one : of_member)
            sum += log_likelihood(one);
        sums.push_back(sum);
    }
    return sums;
}

// How far each reading lies from what all members expect, unweighted.
std::vector<double> surprises(const Comparisons& all, std::size_t readings) {
    std::vector<double> found;
    for (std::size_t j = 0; j < readings; ++j) {
        double mean = 0.0;
        double squares = 0.0;
        double error = 0.0;
        for (const auto& of_member : all) {
            mean += of_member[j].expected;
            squares += of_member[j].expected * of_member[j].expected;
            error += of_member[j].error * of_member[j].error;
        }
        const double count = double(all.size());
        mean /= count;
        const double variance = std::max(0.0, squares / count - mean * mean) + error / count;
        found.push_back((all.front()[j].read - mean) / std::sqrt(variance));
    }
    return found;
}

// The least sum of squares over the members, with all readings but one.
//   without   none where it is beyond the last
double least_squares(const Comparisons& all, const Members& members, std::size_t readings,
                     std::size_t without) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < all.size(); ++i) {
        // The meter's own errors count as well: a member far out in them is no easy way out.
        double sum = members.own[i].meter * members.own[i].meter +
                     members.own[i].table * members.own[i].table;
        for (std::size_t j = 0; j < readings; ++j)
            if (j != without) sum += -2.0 * log_likelihood(all[i][j]);
        least = std::min(least, sum);
    }
    return least;
}

std::optional<Contradiction> contradiction_in(const Comparisons& all, const Members& members,
                                              const Story& story) {
    const std::size_t readings = story.readings.size();
    if (readings == 0) return std::nullopt;
    const auto most = [](std::size_t count) {
        return largest_sum_of_squares(static_cast<int>(count) + 2, beyond_chance);
    };
    if (least_squares(all, members, readings, readings) <= most(readings)) return std::nullopt;
    Contradiction found;
    for (std::size_t j = 0; j < readings; ++j)
        if (readings == 1 || least_squares(all, members, readings, j) <= most(readings - 1))
            found.odd.push_back(story.readings[j]);
    found.one_of_them = !found.odd.empty();
    if (found.odd.empty()) found.odd = story.readings;
    return found;
}

// Members drawn again by weight, each pulled to their mean and moved by what that takes away.
Members drawn_together(const Members& members, const std::vector<double>& weights, int round,
                       const Asked& asked) {
    const auto places = drawn_again(weights, members.values.size());
    Members made{.names = members.names,
                 .values = {},
                 .own = {},
                 .weights = {},
                 .rounds = members.rounds + 1};
    for (const std::size_t place : places) {
        made.values.push_back(members.values[place]);
        made.own.push_back(members.own[place]);
    }
    const std::size_t count = places.size();
    made.weights.assign(count, 1.0 / double(count));
    const Pull pull = pull_of(discount);
    // One column of scores at a time.
    const auto pull_column = [&](const std::string& name, auto get, auto set) {
        double mean = 0.0;
        double squares = 0.0;
        for (std::size_t i = 0; i < count; ++i) {
            const double score = get(i);
            mean += score;
            squares += score * score;
        }
        mean /= double(count);
        const double deviation = std::sqrt(std::max(0.0, squares / double(count) - mean * mean));
        const auto label = fmt::format("again/{}/{}", round, name);
        for (int block = 0; block < asked.blocks; ++block) {
            const auto column =
                chance::drawn({.seed = asked.seed, .number = std::uint32_t(block)}, label);
            for (std::size_t lane = 0; lane < column.size(); ++lane) {
                const std::size_t i = std::size_t(block) * chance::lanes + lane;
                set(i, pull.kept * get(i) + (1.0 - pull.kept) * mean +
                           pull.moved * deviation * score_of(column[lane]));
            }
        }
    };
    for (std::size_t name = 0; name < made.names.size(); ++name)
        pull_column(
            made.names[name], [&](std::size_t i) { return score_of(made.values[i][name]); },
            [&](std::size_t i, double score) { made.values[i][name] = drawn_at(score); });
    pull_column(
        meters_own, [&](std::size_t i) { return made.own[i].meter; },
        [&](std::size_t i, double score) { made.own[i].meter = score; });
    pull_column(
        tables_own, [&](std::size_t i) { return made.own[i].table; },
        [&](std::size_t i, double score) { made.own[i].table = score; });
    return made;
}

}  // namespace

double Members::effective() const {
    return estimate::effective(weights);
}

bool Members::are_alike() const {
    return rounds == 0 &&
           std::ranges::all_of(weights, [&](double weight) { return weight == weights.front(); });
}

Posterior posterior_of(const scenario::Scenario& scenario, const Story& story, const Lives& lives,
                       const Asked& asked) {
    const auto& world = lives.world();
    const auto packs = packs_read(world.ready());
    Posterior found{.members = drawn_members(world, asked)};
    const auto meters = metered(scenario, story, world);
    for (const Metered& meter : meters)
        found.reads.push_back(
            {.entry = meter.entry, .surprise = meter.surprise, .load = meter.load});
    move_by_meters(found.members, meters, scenario, world);
    const std::size_t readings = story.readings.size();
    const double count = double(found.members.values.size());
    Members wide = found.members;
    std::vector<State> wide_now;
    double left = 1.0;
    for (int round = 0;; ++round) {
        auto shown = shown_by(found.members, scenario, story, lives, asked);
        found.now = std::move(shown.now);
        if (readings == 0) break;
        const auto all = comparisons(found.members, shown, scenario, story, packs);
        if (round == 0) {
            wide_now = found.now;
            const auto far = surprises(all, readings);
            for (std::size_t j = 0; j < readings; ++j)
                found.reads.push_back({.entry = story.readings[j], .surprise = far[j]});
        }
        const auto sums = likelihoods(all);
        const auto weights = weights_of(sums, left);
        const bool enough = effective(weights) >= 0.25 * count;
        if (enough || round == most_rounds) {
            found.members.weights = weights;
            found.contradiction = contradiction_in(all, found.members, story);
            break;
        }
        const double exponent =
            std::max(std::min(left, least_exponent), exponent_for(sums, left, 0.5 * count));
        found.members = drawn_together(found.members, weights_of(sums, exponent), round, asked);
        left -= exponent;
    }
    if (found.contradiction) {
        found.members = std::move(wide);
        found.now = std::move(wide_now);
        found.without_weights = true;
    }
    return found;
}

std::vector<std::vector<double>> values_for(const chance::World& world, const Members& members) {
    std::vector<std::size_t> places;
    for (const std::string& name : world.names()) {
        const auto found = std::ranges::find(members.names, name);
        places.push_back(static_cast<std::size_t>(found - members.names.begin()));
    }
    std::vector<std::vector<double>> made;
    made.reserve(members.values.size());
    for (const auto& values : members.values) {
        std::vector<double>& mine = made.emplace_back();
        mine.reserve(places.size());
        for (const std::size_t place : places)
            mine.push_back(place < values.size() ? values[place] : 0.5);
    }
    return made;
}

}  // namespace estimate
