#include "estimate/members.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <utility>

#include <fmt/format.h>

#include "chance/draw.hpp"
#include "estimate/weights.hpp"

namespace estimate {

using chance::score_of;

namespace {

// Share below a score, in the open interval in which a score can be had back.
double drawn_at(double score) {
    const double at = 0.5 * std::erfc(-std::clamp(score, -7.0, 7.0) / std::numbers::sqrt2);
    return std::clamp(at, 1e-12, 1.0 - 1e-12);
}

constexpr std::array own_errors{
    std::pair("meter/volts", &OwnErrors::meter), std::pair("pack/table", &OwnErrors::table),
    std::pair("meter/display", &OwnErrors::display), std::pair("meter/sun", &OwnErrors::sun)};

}  // namespace

double Members::effective() const {
    return estimate::effective(weights);
}

bool Members::are_alike() const {
    return rounds == 0 &&
           std::ranges::all_of(weights, [&](double weight) { return weight == weights.front(); });
}

Unknowns::Unknowns(const scenario::Scenario& scenario, const chance::World& world,
                   const std::vector<Metered>& meters)
    : names_(world.names()) {
    for (std::size_t i = 0; i < meters.size(); ++i) {
        const Metered& meter = meters[i];
        // Of several on one load the last has what all of them say.
        const bool last =
            std::none_of(meters.begin() + std::ptrdiff_t(i) + 1, meters.end(),
                         [&](const Metered& later) { return later.load == meter.load; });
        const auto name = fmt::format("load/{}/draw", scenario.loads[meter.load].name);
        const auto found = std::ranges::find(names_, name);
        if (!last || found == names_.end()) continue;
        metered_.push_back({.place = static_cast<std::size_t>(found - names_.begin()),
                            .after = meter.after,
                            .sides = world.draw_of(meter.load)});
    }
}

const Unknowns::OfMeter* Unknowns::meter_of(std::size_t place) const {
    const auto found = std::ranges::find(metered_, place, &OfMeter::place);
    return found == metered_.end() ? nullptr : &*found;
}

double Unknowns::value_at(std::size_t place, double score) const {
    const OfMeter* meter = meter_of(place);
    if (meter == nullptr) return drawn_at(score);
    // Each member keeps its place within the spread.
    const double factor = meter->after.mean + meter->after.deviation * score;
    const double side = factor > 0.0 ? meter->sides.above : meter->sides.below;
    return drawn_at(side > 0.0 ? factor / side : score);
}

Unknowns::Drawn Unknowns::drawn(std::uint64_t seed, int first, int blocks) const {
    const std::size_t count = std::size_t(blocks) * chance::lanes;
    Drawn made{.members = {.names = names_, .values = {}, .own = {}, .weights = {}},
               .scores = Matrix(count, this->count())};
    Members& members = made.members;
    members.values.assign(count, std::vector<double>(names_.size()));
    members.own.resize(count);
    members.weights.assign(count, 1.0 / double(count));
    for (int block = 0; block < blocks; ++block) {
        const chance::Block of{.seed = seed, .number = std::uint32_t(first + block)};
        const std::size_t begins = std::size_t(block) * chance::lanes;
        for (std::size_t name = 0; name < names_.size(); ++name) {
            const auto column = chance::drawn(of, names_[name]);
            const bool moved = meter_of(name) != nullptr;
            for (std::size_t lane = 0; lane < column.size(); ++lane) {
                const double score = score_of(column[lane]);
                made.scores(begins + lane, name) = score;
                members.values[begins + lane][name] = moved ? value_at(name, score) : column[lane];
            }
        }
        for (std::size_t i = 0; i < own_errors.size(); ++i) {
            const auto column = chance::drawn(of, own_errors[i].first);
            for (std::size_t lane = 0; lane < column.size(); ++lane)
                made.scores(begins + lane, names_.size() + i) =
                    members.own[begins + lane].*own_errors[i].second = score_of(column[lane]);
        }
    }
    return made;
}

void Unknowns::put(Members& members, std::size_t member, const double* scores,
                   const std::vector<std::size_t>& places) const {
    for (const std::size_t place : places) {
        if (place < names_.size())
            members.values[member][place] = value_at(place, scores[place]);
        else
            members.own[member].*own_errors[place - names_.size()].second = scores[place];
    }
}

std::size_t Unknowns::count() const {
    return names_.size() + own_errors.size();
}

Members Unknowns::with(const Matrix& scores) const {
    std::vector<std::size_t> every(count());
    std::iota(every.begin(), every.end(), std::size_t{});
    const std::size_t members = scores.rows();
    Members made{
        .names = names_, .values = {}, .own = std::vector<OwnErrors>(members), .weights = {}};
    made.values.assign(members, std::vector<double>(names_.size()));
    made.weights.assign(members, 1.0 / double(members));
    for (std::size_t i = 0; i < members; ++i)
        put(made, i, scores.row(i), every);
    return made;
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
