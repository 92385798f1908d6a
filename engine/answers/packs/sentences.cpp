#include "answers/packs/sentences.hpp"

#include <algorithm>
#include <cmath>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "answers/shown.hpp"
#include "demand/power.hpp"

namespace answers {

namespace {

using sizing::Build;
using words::Said;
using words::said;
using words::said_of;

Said with(const Build& build) {
    return build_in_words(build.packs, build.panels);
}

// The clause, with what it weighs and what it costs behind it, as far as that is known.
Said with_bill(Said clause, const sizing::Bill& bill) {
    if (bill.weight) clause = said<"{what}, {weight}">(std::move(clause), in_words(*bill.weight));
    if (bill.price)
        clause = said<"{what}, price {price} in all">(
            std::move(clause), words::with_decimals(bill.price->amount(), 0));
    return clause;
}

Said packs_of_the_case(int packs, int there) {
    if (there == 1) return said<"{packs} with the one in the case">(packs_in_words(packs));
    return said<"{packs} with the {there} in the case">(packs_in_words(packs),
                                                        number_in_words(there));
}

Said packs_to_make(int packs, int more) {
    const int there = packs - more;
    if (more == packs) return said<"Build {packs}">(packs_in_words(more));
    if (more == 0 && there == 1) return said<"Build no further pack: the one in the case">();
    if (more == 0)
        return said<"Build no further pack: the {there} in the case">(number_in_words(there));
    return said_of<"Build {n} expansion pack ({packs})", "Build {n} expansion packs ({packs})">(
        words::in_words(more), packs_of_the_case(packs, there));
}

// What is to be made, and what there is then.
Said to_build(const scenario::Scenario& scenario, const Build& build) {
    Said packs = packs_to_make(build.packs, packs_to_build(scenario, build.packs));
    if (build.panels == 0) return packs;
    return said<"{packs} and {panels}">(std::move(packs), panels_in_words(build.panels));
}

// The fewest packs with the panels there are.
Said fewest(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    const auto& builds = found.builds;
    const Build& build = *builds.with_these_panels;
    const Said lasts =
        with_bill(said<"{build}: lasts {how_long}">(
                      to_build(scenario, build),
                      lasting_so_often(scenario.outage, chance_in_words(build.figures))),
                  build.bill);
    if (!builds.one_fewer) return words::as_sentence(lasts);
    const Build& fewer = *builds.one_fewer;
    const Said chance = chance_in_words(fewer.figures);
    // Then it may be the motor and not the length of the outage that asks for one more.
    if (found.starts && found.starts->packs > fewer.packs)
        return said_of<
            "{lasts}; with {n} pack in all, {chance}, but {load} needs {packs} to start.",
            "{lasts}; with {n} packs in all, {chance}, but {load} needs {packs} to start.">(
            lasts, words::in_words(fewer.packs), chance, found.starts->load,
            words::in_words(found.starts->packs));
    return said_of<"{lasts}; with {n} pack in all, {chance}.",
                   "{lasts}; with {n} packs in all, {chance}.">(lasts, words::in_words(fewer.packs),
                                                                chance);
}

Said not_with_these_panels(const questions::PacksFound& found) {
    const auto& most =
        found.grid.at(found.grid.most_packs, std::min(found.panels, found.grid.most_panels));
    const Said panels = found.panels == 0 ? said<"no panel">() : panels_in_words(found.panels);
    return said_of<
        "No number of packs up to {n} lasts to the end {goal} with {panels}: {packs} "
        "does {chance}.",
        "No number of packs up to {n} lasts to the end {goal} with {panels}: {packs} do "
        "{chance}.">(found.grid.most_packs, goal_in_words(found.builds.goal), panels,
                     packs_in_words(most.packs), chance_in_words(most.figures));
}

Said builds_up_to(const sizing::Grid& grid) {
    return said<"{packs} and {panels}">(said_of<"{n} pack", "{n} packs">(grid.most_packs),
                                        said_of<"{n} panel", "{n} panels">(grid.most_panels));
}

Said not_feasible(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    const Build& best = *found.builds.best_chance;
    const auto& spend = scenario.goal ? scenario.goal->spend_at_most : std::nullopt;
    Said most = builds_up_to(found.grid);
    if (spend)
        most = said<"{build} for at most {price}">(std::move(most),
                                                   words::with_decimals(spend->amount(), 0));
    const Said chance = chance_in_words(best.figures);
    const bool one = best.packs == 1 && best.panels == 0;
    const Said best_of_all = with_bill(one ? said<"{build} does, {chance}">(with(best), chance)
                                           : said<"{build} do, {chance}">(with(best), chance),
                                       best.bill);
    return said<"Not feasible: nothing up to {most} lasts {how_long}, {goal}; {best}.">(
        most, lasting_it(scenario.outage), goal_in_words(found.builds.goal), best_of_all);
}

// What it costs comes first where that is what it is the best in.
Said cheapest_in_words(const Build& build) {
    Said figures = said<"{build}, price {price} in all">(
        with(build), words::with_decimals(build.bill.price ? build.bill.price->amount() : 0.0, 0));
    if (build.bill.weight)
        figures = said<"{what}, {weight}">(std::move(figures), in_words(*build.bill.weight));
    return said<"Cheapest: {build} ({chance}).">(std::move(figures),
                                                 chance_in_words(build.figures));
}

Said trade(const questions::PacksFound& found) {
    const auto& builds = found.builds;
    std::vector<Said> sentences;
    if (builds.cheapest) sentences.push_back(cheapest_in_words(*builds.cheapest));
    const bool another = !builds.cheapest || !builds.lightest ||
                         builds.lightest->packs != builds.cheapest->packs ||
                         builds.lightest->panels != builds.cheapest->panels;
    if (builds.lightest && another)
        sentences.push_back(said<"Lightest: {build} ({chance}).">(
            with_bill(with(*builds.lightest), builds.lightest->bill),
            chance_in_words(builds.lightest->figures)));
    return words::together(std::move(sentences));
}

Said without_these(Said loads, const scenario::Scenario& scenario,
                   const questions::PacksFound& found, int packs) {
    const auto bill = sizing::bill(scenario, packs, found.panels);
    const Said build = build_in_words(packs, found.panels);
    const Said goal = goal_in_words(found.builds.goal);
    const bool one = packs == 1 && found.panels == 0;
    return words::as_sentence(
        with_bill(one ? said<"Without {loads}, {build} lasts to the end {goal}">(std::move(loads),
                                                                                 build, goal)
                      : said<"Without {loads}, {build} last to the end {goal}">(std::move(loads),
                                                                                build, goal),
                  bill));
}

// The first rung of the ladder at which some number of packs meets the goal.
Said fewer_loads(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    std::vector<Said> off;
    for (const auto& rung : found.ladder.rungs) {
        off.emplace_back(rung.off.name);
        if (rung.packs_so_far > 0)
            return without_these(words::joined(std::move(off), words::List::Joint::comma), scenario,
                                 found, rung.packs_so_far);
    }
    Said another = said<
        "Leaving loads out alone does not make it last: plan for another source "
        "besides.">();
    if (std::ranges::none_of(scenario.loads, demand::is_medical)) return another;
    return words::together({std::move(another), said<"Ask the equipment supplier which.">()});
}

// How long the best build of the grid would do for.
Said a_shorter_time(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    const Build& best = *found.builds.best_chance;
    if (!best.timed || best.figures.count_on >= scenario.outage.lasts) return {};
    const Said time = length_in_words(best.figures.count_on);
    const Said goal = goal_in_words(found.builds.goal);
    if (best.packs == 1 && best.panels == 0)
        return said<"{^build} lasts {time} {goal}.">(with(best), time, goal);
    return said<"{^build} last {time} {goal}.">(with(best), time, goal);
}

Said one_measurement(const questions::PacksFound& found) {
    constexpr double worth_it = 0.05;  // of verdicts; ours
    for (const auto& influence : found.influences) {
        if (influence.flips < units::Probability(worth_it)) break;
        if (influence.is_load)
            return said<
                "The load that matters most: {load}. What is not known of it decides "
                "{often} whether it lasts; put a plug-in meter on it for a day.">(
                influence.input, times_in_100(influence.flips));
    }
    return {};
}

}  // namespace

int packs_to_build(const scenario::Scenario& scenario, int packs) {
    const int in_the_case = scenario.packs.size() > 1 ? scenario.packs.front().count : 0;
    return std::max(0, packs - in_the_case);
}

Said packs_in_words(int packs) {
    return said_of<"{n} pack", "{n} packs">(words::in_words(packs));
}

Said panels_in_words(int panels) {
    return said_of<"{n} panel", "{n} panels">(words::in_words(panels));
}

Said build_in_words(int packs, int panels) {
    if (panels == 0) return packs_in_words(packs);
    return said<"{packs} and {panels}">(packs_in_words(packs), panels_in_words(panels));
}

std::vector<words::Said> packs_sentences(const scenario::Scenario& scenario,
                                         const questions::PacksFound& found) {
    std::vector<words::Said> sentences;
    if (!found.builds.feasible) {
        sentences.push_back(not_feasible(scenario, found));
        sentences.push_back(a_shorter_time(scenario, found));
        sentences.push_back(fewer_loads(scenario, found));
    } else {
        sentences.push_back(found.builds.with_these_panels ? fewest(scenario, found)
                                                           : not_with_these_panels(found));
        sentences.push_back(trade(found));
    }
    sentences.push_back(one_measurement(found));
    std::erase_if(sentences, [](const Said& sentence) { return sentence.empty(); });
    return sentences;
}

}  // namespace answers
