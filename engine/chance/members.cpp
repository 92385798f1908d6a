#include "chance/members.hpp"

#include <algorithm>
#include <cassert>
#include <map>

#include "chance/one_year.hpp"
#include "chance/open_end.hpp"
#include "outage/clock/clock.hpp"
#include "outage/in_threads.hpp"

namespace chance {

namespace {

using namespace units;

constexpr outage::Keep to_the_first_failure{.trace = false, .after_failure = false};

}  // namespace

Asked as_it_is(const World& world) {
    return {.packs = world.packs(), .panels = world.panels()};
}

MemberEnd end_in(const outage::Course& course) {
    return {.lasts = course.lasts, .survives = course.survives, .limited_by = course.limited_by};
}

Members::Members(World world, std::uint64_t seed, int blocks)
    : world_(std::move(world)), seed_(seed), blocks_(blocks) {
    assert(blocks >= 1);
    const auto& names = world_.names();
    values_.resize(std::size_t(count()) * names.size());
    for (int block = 0; block < blocks; ++block)
        for (std::size_t name = 0; name < names.size(); ++name) {
            const Column column =
                drawn({.seed = seed, .number = std::uint32_t(block)}, names[name]);
            for (std::size_t lane = 0; lane < column.size(); ++lane)
                values_[(std::size_t(block * lanes) + lane) * names.size() + name] = column[lane];
        }
}

Values Members::values(int number) const {
    const std::size_t names = world_.names().size();
    return Values(values_).subspan(std::size_t(number) * names, names);
}

std::vector<double> Members::redrawn(int number, const std::vector<std::size_t>& places) const {
    constexpr std::uint32_t anew = 0x80000000;  // blocks that no question reaches
    const auto own = values(number);
    std::vector<double> values(own.begin(), own.end());
    for (const std::size_t place : places)
        values[place] = drawn({.seed = seed_, .number = anew + std::uint32_t(number / lanes)},
                              world_.names()[place])[std::size_t(number % lanes)];
    return values;
}

MemberEnd Members::end_of(int number, const Asked& asked) const {
    const Lived lived = world_.lived(values(number), asked.off);
    const auto sun =
        asked.panels == world_.panels() ? lived.sun : world_.sun(lived.light, asked.panels);
    return end_in(world_.run(lived, asked.packs, sun, to_the_first_failure));
}

std::vector<MemberEnd> Members::ends(const Asked& asked, unsigned threads) const {
    std::vector<MemberEnd> ends(static_cast<std::size_t>(count()));
    outage::for_each_number(count(), threads, [&](int number) {
        ends[static_cast<std::size_t>(number)] = end_of(number, asked);
    });
    return ends;
}

std::vector<Outcome> Members::outcomes(const std::vector<MemberEnd>& ends) const {
    const auto& outage = world_.ready().outage;
    std::vector<Outcome> outcomes;
    for (const MemberEnd& end : ends)
        outcomes.push_back({.lasts = end.survives ? outage.lasts : end.lasts,
                            .survives = end.survives,
                            .outlasts = outlasts(outage, end),
                            .weight = 1.0 / double(ends.size())});
    return outcomes;
}

double Members::share_that_outlasts(const std::vector<MemberEnd>& ends) const {
    return chance::share_that_outlasts(outcomes(ends));
}

Figures Members::figures(const std::vector<MemberEnd>& ends, Probability goal) const {
    std::vector<int> dates;
    for (std::size_t i = 0; i < ends.size(); ++i)
        if (const auto date = world_.start_date(values(int(i)))) dates.push_back(*date);
    const auto of = outcomes(ends);
    return figures_of(of, goal, start_dates_of(dates, world_.ready().outage, of));
}

outage::LimitedBy mostly_limited_by(const std::vector<MemberEnd>& ends) {
    std::map<outage::LimitedBy, int> counts;
    int early = 0;
    for (const MemberEnd& end : ends)
        if (!end.survives) {
            ++early;
            ++counts[end.limited_by];
        }
    for (const auto& [limit, count] : counts)
        if (2 * count > early) return limit;
    return outage::LimitedBy::none;
}

}  // namespace chance
