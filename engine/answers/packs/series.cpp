#include "answers/packs/series.hpp"

#include <cmath>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "answers/columns.hpp"
#include "answers/packs/sentences.hpp"
#include "answers/shown.hpp"

namespace answers {

namespace {

using sizing::Grid;
using words::Said;
using words::said;

// One row a number of packs, one column a number of panels.
template <class Function>
Series by_packs_and_panels(std::string name, Said title, const Grid& grid, bool brief,
                           Function of_cell) {
    Series series{.name = std::move(name), .title = std::move(title), .brief = brief};
    const auto rows = static_cast<std::size_t>(grid.most_packs);
    series.columns.push_back(
        column("packs", said<"packs">(), rows, [](std::size_t row) { return double(row + 1); }));
    for (int panels = 0; panels <= grid.most_panels; ++panels)
        series.columns.push_back(
            column("panels_" + std::to_string(panels), said<"{panels}">(panels), rows,
                   [&](std::size_t row) { return of_cell(grid.at(int(row) + 1, panels)); }));
    return series;
}

Said percent(const sizing::Cell& cell) {
    return said<"{of}">(words::with_decimals(std::floor(100.0 * cell.figures.of.value()), 0));
}

template <class Written>
Said known(const std::optional<Written>& quantity) {
    return quantity ? in_words(*quantity) : said<"not known">();
}

// The whole frontier, and of it what a person who has this goal would look at.
Series frontier_table(std::string name, Said title, const std::vector<sizing::Build>& builds,
                      bool brief) {
    const auto each = [&](auto of_build) {
        return [&builds, of_build](std::size_t row) { return of_build(builds[row]); };
    };
    Series series{.name = std::move(name), .title = std::move(title), .brief = brief};
    const std::size_t rows = builds.size();
    series.columns = {
        column("packs", said<"packs">(), rows, each([](const auto& b) { return double(b.packs); })),
        column("panels", said<"panels">(), rows,
               each([](const auto& b) { return double(b.panels); })),
        column("price", said<"price">(), rows, each([](const auto& b) {
                   return b.bill.price
                              ? said<"{amount}">(words::with_decimals(b.bill.price->amount(), 0))
                              : said<"not known">();
               })),
        column("weight", said<"weight">(), rows,
               each([](const auto& b) { return known(b.bill.weight); })),
        column("trips", said<"walks">(), rows, each([](const auto& b) {
                   return b.bill.trips ? said<"{trips}">(*b.bill.trips) : said<"-">();
               })),
        column("chance", said<"chance of lasting">(), rows,
               each([](const auto& b) { return chance_in_words(b.figures); }))};
    return series;
}

Series influence_table(const std::vector<sizing::Influence>& influences) {
    const auto each = [&](auto of_one) {
        return [&influences, of_one](std::size_t row) { return of_one(influences[row]); };
    };
    Series series{.name = "influences",
                  .title = said<"What matters most: how often it alone decides whether it lasts">(),
                  .brief = true};
    const std::size_t rows = influences.size();
    series.columns = {
        column("input", said<"not known of">(), rows, each([](const auto& i) { return i.input; })),
        column("flips", said<"decides">(), rows,
               each([](const auto& i) { return times_in_100(i.flips); })),
        column("what", said<"what it may be">(), rows, each([](const auto& i) { return i.what; }))};
    return series;
}

Said packs_or_none(int packs) {
    return packs > 0 ? said<"{packs}">(packs) : said<"too few">();
}

Series ladder_table(const sizing::Ladder& ladder, units::Probability goal) {
    const auto each = [&](auto of_one) {
        return [&ladder, of_one](std::size_t row) { return of_one(ladder.rungs[row]); };
    };
    Series series{.name = "ladder",
                  .title = said<"Switched off in this order, each with those above it">(),
                  .brief = true};
    const std::size_t rows = ladder.rungs.size();
    series.columns = {
        column("load", said<"load">(), rows, each([](const auto& r) { return r.off.name; })),
        column("priority", said<"priority">(), rows,
               each([](const auto& r) { return double(r.priority); })),
        column("spared", said<"spares a day">(), rows,
               each([](const auto& r) { return in_words(r.off.spared); })),
        column("lasts_so_far", said<"then lasts {goal}">(goal_in_words(goal)), rows,
               each([](const auto& r) { return length_in_words(r.figures.count_on); })),
        column("chance", said<"to the end">(), rows,
               each([](const auto& r) { return chance_in_words(r.figures); })),
        column("packs_so_far", said<"packs in all">(), rows,
               each([](const auto& r) { return packs_or_none(r.packs_so_far); }))};
    return series;
}

// From five points below the goal upwards, the cheapest first; no more than fit a screen.
std::vector<sizing::Build> near_the_goal(const sizing::Builds& builds) {
    constexpr std::size_t most = 8;
    std::vector<sizing::Build> near;
    for (const auto& build : builds.frontier)
        if (build.chance().value() >= builds.goal.value() - 0.05 && near.size() < most)
            near.push_back(build);
    return near;
}

}  // namespace

std::vector<Series> packs_series(const questions::PacksFound& found) {
    std::vector<Series> series;
    series.push_back(by_packs_and_panels(
        "grid", said<"Times in 100 that it lasts to the end: packs in all down, panels across">(),
        found.grid, true, percent));
    series.push_back(by_packs_and_panels(
        "lasts", said<"Half of the members last so long, where that was looked at">(), found.grid,
        false, [](const sizing::Cell& cell) {
            return cell.timed ? length_in_words(cell.figures.half) : words::Said();
        }));
    const auto near = near_the_goal(found.builds);
    if (!near.empty())
        series.push_back(frontier_table(
            "choice", said<"Near the goal: no other build is lighter, cheaper and as sure">(), near,
            true));
    series.push_back(frontier_table("frontier",
                                    said<"No other build is lighter, cheaper and as sure">(),
                                    found.builds.frontier, false));
    if (!found.influences.empty()) series.push_back(influence_table(found.influences));
    if (!found.ladder.rungs.empty())
        series.push_back(ladder_table(found.ladder, found.builds.goal));
    return series;
}

}  // namespace answers
