#include "estimate/departures.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "chance/unknowns.hpp"
#include "estimate/closed_form.hpp"

namespace estimate {

using chance::score_of;
using words::Said;
using words::said;

namespace {

constexpr double four_in_five = 1.2816;
constexpr double departs = 2.0;  // standard deviations of a surprise
constexpr double surely_departs = 3.0;
constexpr double moved_at_all = 0.4;  // of its own standard deviation
constexpr double as_much = 0.4;       // of what moved most: it may as well be that

// An unknown and what its score does to the value that a person knows.
//   at   logarithm of the factor at a score; more is a greater value
struct Unknown {
    Said what;
    std::size_t place = 0;
    double above = 0.0;  // logarithm of the factor for a score of 1
    double below = 0.0;  // for a score of -1, as a positive number
    std::optional<std::size_t> load = {};
    [[nodiscard]] double at(double score) const {
        return score > 0.0 ? above * score : below * score;
    }
};

std::optional<std::size_t> place_of(const std::vector<std::string>& names,
                                    const std::string& name) {
    const auto found = std::ranges::find(names, name);
    if (found == names.end()) return std::nullopt;
    return static_cast<std::size_t>(found - names.begin());
}

std::vector<Unknown> unknowns_of(const scenario::Scenario& scenario, const chance::World& world,
                                 const Members& members) {
    std::vector<Unknown> all;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i)
        if (const auto place =
                place_of(members.names, fmt::format("load/{}/draw", scenario.loads[i].name)))
            all.push_back({.what = said<"what {load} draws">(scenario.loads[i].name),
                           .place = *place,
                           .above = world.draw_of(i).above,
                           .below = world.draw_of(i).below,
                           .load = i});
    for (const auto& kind : world.ready().kinds) {
        const auto named = std::ranges::find(scenario.packs, kind.name, &scenario::Pack::name);
        const auto place = place_of(members.names, fmt::format("pack/{}/capacity", kind.name));
        if (named == scenario.packs.end() || !place) continue;
        const double held = -chance::capacity_deviation(*named);
        all.push_back({.what = said<"what {pack} holds">(kind.name),
                       .place = *place,
                       .above = held,
                       .below = held});
    }
    if (const auto place = place_of(members.names, "inverter/idle"); place && scenario.inverter) {
        const double idle = chance::idle_deviation(*scenario.inverter);
        all.push_back({.what = said<"the inverter's idle draw">(),
                       .place = *place,
                       .above = idle,
                       .below = idle});
    }
    if (const auto place = place_of(members.names, "sun/scale"))
        all.push_back({.what = said<"what the panels give">(),
                       .place = *place,
                       .above = -chance::panels_deviation,
                       .below = -chance::panels_deviation});
    return all;
}

// Where an unknown is after the readings.
//   moved   of its own deviation
//   more    share of the members in which its value is greater than planned
struct Moved {
    double mean = 0.0;
    double deviation = 0.0;
    double more = 0.5;
};

Moved moved(const Unknown& unknown, const Members& members) {
    Moved found{.more = 0.0};
    double squares = 0.0;
    for (std::size_t i = 0; i < members.values.size(); ++i) {
        const double score = score_of(members.values[i][unknown.place]);
        found.mean += members.weights[i] * score;
        squares += members.weights[i] * score * score;
        if (unknown.at(score) > 0.0) found.more += members.weights[i];
    }
    found.deviation = std::sqrt(std::max(0.0, squares - found.mean * found.mean));
    return found;
}

// How far the meters' own errors moved, the one that moved most: they may as well be what a reading
// tells.
double moved_of_meters(const Members& members) {
    double most = 0.0;
    for (const auto of :
         {&OwnErrors::meter, &OwnErrors::table, &OwnErrors::display, &OwnErrors::sun}) {
        double mean = 0.0;
        for (std::size_t i = 0; i < members.own.size(); ++i)
            mean += members.weights[i] * (members.own[i].*of);
        most = std::max(most, std::abs(mean));
    }
    return most;
}

Departure departure_of(const Unknown& unknown, const Moved& where) {
    const double one = unknown.at(where.mean - four_in_five * where.deviation);
    const double other = unknown.at(where.mean + four_in_five * where.deviation);
    return {.what = unknown.what,
            .low = std::exp(std::min(one, other)),
            .likely = std::exp(unknown.at(where.mean)),
            .high = std::exp(std::max(one, other)),
            .sure = sureness(std::max(where.more, 1.0 - where.more)),
            .because = {},
            .or_else = {}};
}

// A meter of its own says so.
void tell_metered(Outlook& found, const std::vector<Unknown>& unknowns,
                  const Posterior& posterior) {
    for (const Read& read : posterior.reads) {
        if (!read.load || std::abs(read.surprise) <= departs) continue;
        const auto of = std::ranges::find(unknowns, read.load, &Unknown::load);
        if (of == unknowns.end()) continue;
        auto made = departure_of(*of, moved(*of, posterior.members));
        made.sure = std::abs(read.surprise) > surely_departs ? Sure::surely : Sure::probably;
        made.because = {read.entry};
        found.departures.push_back(std::move(made));
    }
}

// What may lie behind readings that several things explain: each names the others.
void tell_mixed(Outlook& found, const std::vector<Unknown>& unknowns, const Posterior& posterior,
                const std::vector<std::size_t>& because) {
    struct Candidate {
        const Unknown* unknown;
        Moved where;
    };
    std::vector<Candidate> candidates;
    for (const Unknown& unknown : unknowns) {
        const bool has_a_meter = std::ranges::any_of(posterior.reads, [&](const Read& read) {
            return read.load && read.load == unknown.load;
        });
        if (has_a_meter) continue;
        const Moved where = moved(unknown, posterior.members);
        if (std::abs(where.mean) >= moved_at_all) candidates.push_back({&unknown, where});
    }
    double most = 0.0;
    for (const Candidate& one : candidates)
        most = std::max(most, std::abs(one.where.mean));
    const double of_meters = moved_of_meters(posterior.members);
    std::erase_if(candidates,
                  [&](const Candidate& one) { return std::abs(one.where.mean) < as_much * most; });
    std::ranges::stable_sort(candidates, [](const Candidate& a, const Candidate& b) {
        return std::abs(a.where.mean) > std::abs(b.where.mean);
    });
    for (const Candidate& one : candidates) {
        auto made = departure_of(*one.unknown, one.where);
        for (const Candidate& other : candidates)
            if (other.unknown != one.unknown) made.or_else.push_back(other.unknown->what);
        // One reading of a store never tells alone what is drawn from what is held, nor that the
        // meter is right.
        const bool alone = made.or_else.empty() && of_meters < as_much * most;
        made.sure = alone ? std::min(made.sure, Sure::probably) : Sure::perhaps;
        made.because = because;
        found.departures.push_back(std::move(made));
    }
}

}  // namespace

Sure sureness(double share) {
    return share >= 0.975 ? Sure::surely : share >= 0.8 ? Sure::probably : Sure::perhaps;
}

void tell_departures(Outlook& found, const scenario::Scenario& scenario, const chance::World& world,
                     const Posterior& posterior) {
    if (posterior.without_weights) {
        found.fits = false;
        return;
    }
    std::vector<double> all;
    std::vector<std::size_t> far;
    double of_packs = 0.0;
    for (const Read& read : posterior.reads) {
        all.push_back(read.surprise);
        if (!read.load && std::abs(read.surprise) > departs) {
            far.push_back(read.entry);
            if (!scenario.log[read.entry].sun) of_packs += read.surprise;
        }
    }
    found.fits = fit_together(all) &&
                 std::ranges::none_of(all, [](double z) { return std::abs(z) > departs; });
    if (found.fits) return;
    found.more_left = of_packs > departs;
    const auto unknowns = unknowns_of(scenario, world, posterior.members);
    tell_metered(found, unknowns, posterior);
    if (!far.empty()) tell_mixed(found, unknowns, posterior, far);
}

}  // namespace estimate
