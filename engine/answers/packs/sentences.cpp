#include "answers/packs/sentences.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

#include <fmt/format.h>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "answers/shown.hpp"
#include "demand/power.hpp"

namespace answers {

namespace {

using sizing::Build;

std::string capital(std::string words) {
    if (!words.empty())
        words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    return words;
}

std::string with(const Build& build) {
    return build_in_words(build.packs, build.panels);
}

std::string counted(int number, std::string_view what) {
    return fmt::format("{} {}{}", number, what, number == 1 ? "" : "s");
}

std::string price_in_words(const sizing::Bill& bill) {
    return bill.price ? fmt::format(", {:.0f} in all", bill.price->amount()) : "";
}

std::string price_of(const Build& build) {
    return price_in_words(build.bill);
}

std::string weight_in_words(const sizing::Bill& bill) {
    return bill.weight ? ", " + in_words(*bill.weight) : "";
}

std::string weight_of(const Build& build) {
    return weight_in_words(build.bill);
}

// What is to be made, and what stands there then.
std::string to_build(const scenario::Scenario& scenario, const Build& build) {
    const int more = packs_to_build(scenario, build.packs);
    const std::string panels =
        build.panels > 0 ? fmt::format(" and {}", panels_in_words(build.panels)) : "";
    if (more == build.packs) return fmt::format("Build {}{}", packs_in_words(more), panels);
    const int there = build.packs - more;
    if (more == 0)
        return fmt::format("Build no further pack: {} in the case{}",
                           there == 1 ? "the one" : "the " + number_in_words(there), panels);
    return fmt::format("Build {} expansion pack{} ({} with {} in the case){}",
                       number_in_words(more), more == 1 ? "" : "s", packs_in_words(build.packs),
                       there == 1 ? "the one" : "the " + number_in_words(there), panels);
}

// The fewest packs with the panels there are.
std::string fewest(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    const auto& builds = found.builds;
    const Build& build = *builds.with_these_panels;
    std::string words =
        fmt::format("{}: lasts {}{}{}", to_build(scenario, build),
                    lasting_so_often(scenario.outage, chance_in_words(build.figures)),
                    weight_of(build), price_of(build));
    if (!builds.one_fewer) return words + ".";
    const Build& fewer = *builds.one_fewer;
    words += fmt::format("; {} in all, {}", number_in_words(fewer.packs),
                         chance_in_words(fewer.figures));
    // Then it may be the motor and not the length of the outage that asks for one more.
    if (found.starts && found.starts->packs > fewer.packs)
        words += fmt::format(", but {} {} to start", found.starts->load,
                             number_in_words(found.starts->packs));
    return words + ".";
}

std::string not_with_these_panels(const questions::PacksFound& found) {
    const auto& most =
        found.grid.at(found.grid.most_packs, std::min(found.panels, found.grid.most_panels));
    return capital(fmt::format("no number of packs up to {} lasts to the end {} with {}: {} {} {}.",
                               found.grid.most_packs, goal_in_words(found.builds.goal),
                               found.panels == 0 ? "no panel" : panels_in_words(found.panels),
                               packs_in_words(most.packs), most.packs == 1 ? "does" : "do",
                               chance_in_words(most.figures)));
}

std::string not_feasible(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    const Build& best = *found.builds.best_chance;
    const auto& spend = scenario.goal ? scenario.goal->spend_at_most : std::nullopt;
    return fmt::format("Not feasible: nothing up to {} and {}{} lasts {}, {}; {} {}{}{}{}.",
                       counted(found.grid.most_packs, "pack"),
                       counted(found.grid.most_panels, "panel"),
                       spend ? fmt::format(" for at most {:.0f}", spend->amount()) : "",
                       lasting_it(scenario.outage), goal_in_words(found.builds.goal), with(best),
                       best.packs == 1 && best.panels == 0 ? "does, " : "do, ",
                       chance_in_words(best.figures), weight_of(best), price_of(best));
}

std::string trade(const questions::PacksFound& found) {
    const auto& builds = found.builds;
    std::string words;
    if (builds.cheapest)
        words = fmt::format("Cheapest: {}{}{} ({}).", with(*builds.cheapest),
                            price_of(*builds.cheapest), weight_of(*builds.cheapest),
                            chance_in_words(builds.cheapest->figures));
    const bool another = !builds.cheapest || !builds.lightest ||
                         builds.lightest->packs != builds.cheapest->packs ||
                         builds.lightest->panels != builds.cheapest->panels;
    if (builds.lightest && another)
        words += fmt::format("{}Lightest: {}{}{} ({}).", words.empty() ? "" : " ",
                             with(*builds.lightest), weight_of(*builds.lightest),
                             price_of(*builds.lightest), chance_in_words(builds.lightest->figures));
    return words;
}

// The first rung of the ladder at which some number of packs meets the goal.
std::string fewer_loads(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    std::vector<std::string> off;
    for (const auto& rung : found.ladder.rungs) {
        off.push_back(rung.off.name);
        if (rung.packs_so_far == 0) continue;
        const auto bill = sizing::bill(scenario, rung.packs_so_far, found.panels);
        return fmt::format("Without {}, {} last{} to the end {}{}{}.", fmt::join(off, ", "),
                           build_in_words(rung.packs_so_far, found.panels),
                           rung.packs_so_far == 1 && found.panels == 0 ? "s" : "",
                           goal_in_words(found.builds.goal), weight_in_words(bill),
                           price_in_words(bill));
    }
    std::string words =
        "Leaving loads out alone does not make it last: plan for another source besides.";
    if (std::ranges::any_of(scenario.loads, demand::is_medical))
        words += " Ask the equipment supplier which.";
    return words;
}

// How long the best build of the grid would do for.
std::string a_shorter_time(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    const Build& best = *found.builds.best_chance;
    if (!best.timed || best.figures.count_on >= scenario.outage.lasts) return "";
    return capital(
        fmt::format("{} last{} {} {}.", with(best), best.packs == 1 && best.panels == 0 ? "s" : "",
                    length_in_words(best.figures.count_on), goal_in_words(found.builds.goal)));
}

std::string one_measurement(const questions::PacksFound& found) {
    constexpr double worth_it = 0.05;  // of verdicts; ours
    for (const auto& influence : found.influences) {
        if (influence.flips < units::Probability(worth_it)) break;
        if (influence.is_load)
            return fmt::format(
                "The load that matters most: {}. What is not known of it decides {} whether it "
                "lasts; put a plug-in meter on it for a day.",
                influence.input, times_in_100(influence.flips));
    }
    return "";
}

}  // namespace

int packs_to_build(const scenario::Scenario& scenario, int packs) {
    const int in_the_case = scenario.packs.size() > 1 ? scenario.packs.front().count : 0;
    return std::max(0, packs - in_the_case);
}

std::string packs_in_words(int packs) {
    return packs == 1 ? "one pack" : number_in_words(packs) + " packs";
}

std::string panels_in_words(int panels) {
    return panels == 1 ? "one panel" : number_in_words(panels) + " panels";
}

std::string build_in_words(int packs, int panels) {
    return packs_in_words(packs) + (panels > 0 ? " and " + panels_in_words(panels) : "");
}

std::vector<std::string> packs_sentences(const scenario::Scenario& scenario,
                                         const questions::PacksFound& found) {
    std::vector<std::string> sentences;
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
    std::erase_if(sentences, [](const std::string& words) { return words.empty(); });
    return sentences;
}

}  // namespace answers
