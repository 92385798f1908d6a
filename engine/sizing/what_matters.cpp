#include "sizing/what_matters.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "chance/open_end.hpp"
#include "outage/in_threads.hpp"
#include "units/said.hpp"

namespace sizing {

namespace {

using namespace units;
using words::said;

constexpr std::size_t most_loads = 8;
constexpr int members_enough = 2 * chance::lanes;  // a share to 4 points either way

// Unknowns that are drawn anew together.
struct Group {
    Influence influence;
    std::vector<std::size_t> places;
};

std::vector<std::size_t> places_of(const chance::World& world, auto wanted) {
    std::vector<std::size_t> places;
    const auto& names = world.names();
    for (std::size_t i = 0; i < names.size(); ++i)
        if (wanted(names[i])) places.push_back(i);
    return places;
}

void add_together(std::vector<Group>& groups, const chance::World& world, words::Said input,
                  words::Said what, auto wanted) {
    auto places = places_of(world, wanted);
    if (!places.empty())
        groups.push_back({.influence = {.input = std::move(input), .what = std::move(what)},
                          .places = std::move(places)});
}

// How far its energy may be off, one standard deviation.
Energy doubt(const chance::World& world, std::size_t load) {
    const auto& planned = world.ready().demand.loads[load];
    Duration on{};
    for (const auto& strand : planned.strands)
        on += double(strand.items) * strand.of_power.value() * demand::total(strand.on);
    return std::expm1(world.draw_of(load).above) * planned.power.likely * on;
}

void add_loads(std::vector<Group>& groups, const chance::World& world) {
    const auto& loads = world.ready().demand.loads;
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < loads.size(); ++i)
        if (doubt(world, i) > Energy{}) order.push_back(i);
    std::ranges::stable_sort(
        order, [&](std::size_t a, std::size_t b) { return doubt(world, a) > doubt(world, b); });
    if (order.size() > most_loads) order.resize(most_loads);
    for (const std::size_t i : order) {
        const auto& load = loads[i];
        const auto at = [&](double score) {
            return amount(Power(chance::factor_at(world.draw_of(i), score) * load.power.likely), 2);
        };
        const std::string name = fmt::format("load/{}/draw", load.name);
        groups.push_back(
            {.influence = {.input = said<"{load}">(load.name),
                           .what = said<"{low} to {high}; {from_what}">(at(-1.2816), at(1.2816),
                                                                        load.power.from_what),
                           .load = i,
                           .is_load = true},
             .places = places_of(world, [&](const std::string& each) { return each == name; })});
    }
}

std::vector<Group> groups_of(const chance::World& world) {
    std::vector<Group> groups;
    add_loads(groups, world);
    add_together(
        groups, world, said<"the sky">(), said<"how bright each day is, and the month">(),
        [](const std::string& name) { return name.starts_with("sky/") || name == "sun/climate"; });
    add_together(groups, world, said<"the panels">(),
                 said<"what they give of the light that falls on them">(),
                 [](const std::string& name) { return name == "sun/scale"; });
    add_together(
        groups, world, said<"the packs">(),
        said<"what they hold, and how full they are at the start">(),
        [](const std::string& name) { return name.starts_with("pack/") && name != "pack/warmth"; });
    add_together(groups, world, said<"warmth of the packs">(),
                 said<"some degrees warmer or colder">(),
                 [](const std::string& name) { return name == "pack/warmth"; });
    add_together(groups, world, said<"warm and cold days">(),
                 said<"how hard compressors and heating work, day by day">(),
                 [](const std::string& name) { return name.starts_with("day/"); });
    add_together(groups, world, said<"inverter with nothing plugged in">(),
                 said<"what it draws itself">(),
                 [](const std::string& name) { return name == "inverter/idle"; });
    return groups;
}

// The members as they are, where so many can be held: what is not drawn anew is taken from them.
std::vector<chance::Lived> usual_lives(const chance::Members& members, int count,
                                       unsigned threads) {
    const chance::World& world = members.world();
    std::vector<chance::Lived> usual;
    if (held_at_once(world) < std::size_t(chance::lanes)) return usual;
    usual.resize(std::size_t(count));
    outage::for_each_number(count, threads, [&](int number) {
        usual[std::size_t(number)] = world.lived(members.values(number));
    });
    return usual;
}

// How often the verdict changes for the members from `first` to `last`, summed over them; where
// nobody knows how long the outage lasts, how often its end would lie between the two ends.
//   usual   of all members, or none
double flips_of(const chance::Members& members, const std::vector<chance::Lived>& usual,
                const std::vector<chance::MemberEnd>& ends, const std::vector<std::size_t>& places,
                const MemberJob& build, int first, int last) {
    const chance::World& world = members.world();
    const chance::SwitchedOff all_on;
    std::vector<chance::Lived> lived;
    std::vector<std::vector<outage::SunChange>> suns;
    for (int number = first; number < last; ++number) {
        const auto values = members.redrawn(number, places);
        if (usual.empty())
            lived.push_back(world.lived(values));
        else
            lived.push_back(world.lived(
                values, all_on, {usual[std::size_t(number)], members.values(number), all_on}));
        suns.push_back(build.panels == world.panels()
                           ? lived.back().sun
                           : world.sun(lived.back().light, build.panels));
    }
    std::vector<LivedJob> jobs;
    for (std::size_t i = 0; i < lived.size(); ++i)
        jobs.push_back({.lived = &lived[i], .packs = build.packs, .sun = suns[i]});
    const auto anew = ends_of(world, jobs);
    const auto& outage = world.ready().outage;
    double flips = 0.0;
    for (std::size_t i = 0; i < anew.size(); ++i)
        flips += std::abs(chance::outlasts(outage, anew[i]).value() -
                          chance::outlasts(outage, ends[std::size_t(first) + i]).value());
    return flips;
}

}  // namespace

std::vector<Influence> influences(const chance::Members& members,
                                  const std::vector<chance::MemberEnd>& ends, int packs, int panels,
                                  unsigned threads) {
    const chance::World& world = members.world();
    const bool averaged = world.ready().outage.open_ended;
    const int count = std::min(members.count(), averaged ? chance::lanes : members_enough);
    const int together = static_cast<int>(held_at_once(world));
    const int parts = (count + together - 1) / together;
    const auto groups = groups_of(world);
    const auto usual = usual_lives(members, count, threads);
    std::vector<double> flipped(groups.size() * std::size_t(parts), 0.0);
    outage::for_each_number(int(flipped.size()), threads, [&](int index) {
        const int first = index % parts * together;
        flipped[std::size_t(index)] =
            flips_of(members, usual, ends, groups[std::size_t(index / parts)].places,
                     {.packs = packs, .panels = panels}, first, std::min(count, first + together));
    });
    std::vector<Influence> found;
    for (std::size_t group = 0; group < groups.size(); ++group) {
        double flips = 0.0;
        for (int part = 0; part < parts; ++part)
            flips += flipped[group * std::size_t(parts) + std::size_t(part)];
        if (!(flips > 0.0)) continue;
        found.push_back(groups[group].influence);
        found.back().flips = Probability(std::min(1.0, flips / double(count)));
    }
    std::ranges::stable_sort(
        found, [](const Influence& a, const Influence& b) { return a.flips > b.flips; });
    return found;
}

}  // namespace sizing
