#include "report/packs_sentences.hpp"

#include <cctype>
#include <cmath>

#include <fmt/format.h>

#include "report/clock_words.hpp"
#include "report/shown.hpp"

namespace report {

namespace {

using sizing::Build;

std::string capital(std::string words) {
    if (!words.empty())
        words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    return words;
}

std::string to_the_end(const scenario::Outage& outage) {
    return "to the end, " + weekday_and_time(outage.starts + outage.lasts);
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

std::string percent_of(units::Probability chance) {
    return fmt::format("{:.0f} %", std::floor(100.0 * chance.value()));
}

// The fewest packs with the panels there are.
std::string fewest(const scenario::Scenario& scenario, const PacksFound& found) {
    const auto& builds = found.builds;
    const Build& build = *builds.with_these_panels;
    const auto& chance = found.at_the_goal.value_or(build.chance);
    std::string words = capital(fmt::format("{} last{} {} with a chance of {}{}{}", with(build),
                                            build.packs == 1 && build.panels == 0 ? "s" : "",
                                            to_the_end(scenario.outage), chance_in_words(chance),
                                            weight_of(build), price_of(build)));
    if (builds.one_fewer)
        words += fmt::format("; {} with {}", number_in_words(builds.one_fewer->packs),
                             chance_in_words(builds.one_fewer->chance));
    return words + ".";
}

std::string not_with_these_panels(const PacksFound& found) {
    const auto& most =
        found.sweep.at(found.sweep.most_packs, std::min(found.panels, found.sweep.most_panels));
    return capital(fmt::format(
        "no number of packs up to {} reaches a chance of {} with {}: {} "
        "reach{} {}.",
        found.sweep.most_packs, percent_of(found.builds.goal),
        found.panels == 1   ? "one panel"
        : found.panels == 0 ? "no panel"
                            : number_in_words(found.panels) + " panels",
        number_in_words(most.packs), most.packs == 1 ? "es" : "", chance_in_words(most.chance)));
}

std::string not_feasible(const scenario::Scenario& scenario, const PacksFound& found) {
    const Build& best = *found.builds.best_chance;
    const auto& spend = scenario.goal ? scenario.goal->spend_at_most : std::nullopt;
    return fmt::format(
        "Not feasible: nothing up to {} and {}{} lasts {} with a chance "
        "of {}; {} reach{} {}{}{}.",
        counted(found.sweep.most_packs, "pack"), counted(found.sweep.most_panels, "panel"),
        spend ? fmt::format(" for at most {:.0f}", spend->amount()) : "",
        to_the_end(scenario.outage), percent_of(found.builds.goal), with(best),
        best.packs == 1 && best.panels == 0 ? "es" : "", chance_in_words(best.chance),
        weight_of(best), price_of(best));
}

std::string trade(const PacksFound& found) {
    const auto& builds = found.builds;
    std::string words;
    if (builds.cheapest)
        words = fmt::format("Cheapest: {}{}{} ({}).", with(*builds.cheapest),
                            price_of(*builds.cheapest), weight_of(*builds.cheapest),
                            chance_in_words(builds.cheapest->chance));
    const bool another = !builds.cheapest || !builds.lightest ||
                         builds.lightest->packs != builds.cheapest->packs ||
                         builds.lightest->panels != builds.cheapest->panels;
    if (builds.lightest && another)
        words += fmt::format("{}Lightest: {}{}{} ({}).", words.empty() ? "" : " ",
                             with(*builds.lightest), weight_of(*builds.lightest),
                             price_of(*builds.lightest), chance_in_words(builds.lightest->chance));
    return words;
}

// The first rung of the ladder at which some number of packs carries the likely course.
std::string fewer_loads(const scenario::Scenario& scenario, const PacksFound& found) {
    std::vector<std::string> off;
    for (const auto& rung : found.ladder.rungs) {
        off.push_back(rung.off.name);
        if (rung.packs_so_far == 0) continue;
        const auto bill = sizing::bill(scenario, rung.packs_so_far, found.panels);
        return fmt::format("Without {}, {} carr{} the likely course through{}{}.",
                           fmt::join(off, ", "), build_in_words(rung.packs_so_far, found.panels),
                           rung.packs_so_far == 1 && found.panels == 0 ? "ies" : "y",
                           weight_in_words(bill), price_in_words(bill));
    }
    return "Leaving loads out alone does not make it last: plan for another source besides.";
}

// How long the best build of the grid would do for.
std::string a_shorter_time(const scenario::Scenario& scenario, const PacksFound& found) {
    const Build& best = *found.builds.best_chance;
    if (!best.lasts || best.lasts->p10 >= scenario.outage.lasts) return "";
    return capital(
        fmt::format("{} last {} nine times in ten.", with(best), length_in_words(best.lasts->p10)));
}

std::string one_measurement(const PacksFound& found) {
    for (const auto& influence : found.influences) {
        if (!(influence.spread() > 1.0 * units::hour)) break;
        if (influence.is_load)
            return fmt::format(
                "The load that matters most: {}. Between the least and the most it may draw "
                "lie {}; put a plug-in meter on it for a day.",
                influence.input, length_in_words(influence.spread()));
    }
    return "";
}

}  // namespace

std::string chance_in_words(const sizing::Chance& chance) {
    if (chance.outages == 1)
        return chance.of > units::Probability(0.5) ? "100 % (no sun counted on)"
                                                   : "0 % (no sun counted on)";
    return fmt::format("{:.0f} % ({:.0f} to {:.0f}, of {} weathers)",
                       std::floor(100.0 * chance.of.value()),
                       std::floor(100.0 * chance.low.value()),
                       std::ceil(100.0 * chance.high.value()), chance.outages);
}

std::string build_in_words(int packs, int panels) {
    std::string words = packs == 1 ? "one pack" : number_in_words(packs) + " packs";
    if (panels > 0)
        words +=
            panels == 1 ? " and one panel" : fmt::format(" and {} panels", number_in_words(panels));
    return words;
}

std::vector<std::string> packs_sentences(const scenario::Scenario& scenario,
                                         const PacksFound& found) {
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

}  // namespace report
