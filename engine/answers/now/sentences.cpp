#include "answers/now/sentences.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "demand/power.hpp"
#include "notes/understand.hpp"
#include "units/clock.hpp"
#include "units/text.hpp"

namespace answers {

namespace {

using namespace units;
using chance::Figures;
using estimate::Departure;
using estimate::NextRead;
using estimate::Outlook;
using estimate::Sure;

constexpr Duration worth_saying = 10.0 * minute;
constexpr double to_act_within =
    0.8;  // of the time that is counted on; the rest is for the way. Ours

// "To the end, Sunday 18:00, 95 times in 100."
std::string sentence_of_the_chance(const scenario::Outage& outage, const Figures& figures) {
    std::string words = lasting_so_often(outage, chance_in_words(figures)) + ".";
    words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    return words;
}

// "Count on it until Friday 06:00 (nine times in ten), most likely until Friday 14:00."
std::string times(const Figures& figures, LocalTime now) {
    const std::string sure = counted_on_in_words(now, figures.count_on);
    const std::string often = goal_in_words(figures.goal);
    if (figures.count_on < minute)
        return fmt::format("Do not count on it from now on ({}).", often);
    if (figures.half - figures.count_on < 0.1 * figures.half)
        return fmt::format("Lasts until about {} ({}).", sure, often);
    return fmt::format("Count on it until {} ({}), most likely until {}.", sure, often,
                       end_in_words(now, figures.half));
}

std::string until_when(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    const Figures& figures = outlook.figures;
    if (outlook.out_already >= Probability(0.5))
        return "By the plan and what was read the supply has failed already. Where it has not, "
               "read the volts now and write them down.";
    if (figures.meets_the_goal())
        return fmt::format("Lasts {}.",
                           lasting_so_often(scenario.outage, chance_in_words(figures)));
    const std::string to_the_end = sentence_of_the_chance(scenario.outage, figures);
    if (figures.of >= Probability(0.5) && !scenario.outage.open_ended)
        return fmt::format("Count on it until {} ({}). {}",
                           counted_on_in_words(now, figures.count_on), goal_in_words(figures.goal),
                           to_the_end);
    return fmt::format("{} {}", times(figures, now), to_the_end);
}

std::string what_goes_off(const scenario::Scenario& scenario, LocalTime now,
                          const Outlook& outlook) {
    if (outlook.figures.meets_the_goal()) return "Nothing needs to be switched off.";
    const auto pays = std::ranges::find_if(
        outlook.next_off, [](const estimate::OffStep& step) { return step.alone >= worth_saying; });
    if (pays == outlook.next_off.end())
        return "Switching off what may go off buys next to nothing.";
    const auto& load = scenario.loads[pays->load].name;
    const std::string buys = fmt::format("Switch off next: {}. By itself it buys about {}.", load,
                                         length_in_words(pays->alone));
    const std::string then = times(pays->figures, now);
    if (then == times(outlook.figures, now)) return buys;  // too little to show in the hours
    const bool first = pays == outlook.next_off.begin();
    return buys + (first ? " " : " With those before it: ") + then;
}

std::string what_to_read(const scenario::Scenario& scenario, const Outlook& outlook) {
    if (outlook.read_next.empty())
        return "No one reading would narrow this much; read the volts again in some hours.";
    const auto& next = outlook.read_next.front();
    return fmt::format("Read next: {}. It would narrow the time that is left from {} to about {}.",
                       next_read_in_words(scenario, next), length_in_words(outlook.width),
                       length_in_words(next.width_after));
}

std::string what_it_was(LocalTime now, const Outlook& outlook) {
    const Figures& was = *outlook.was;
    return fmt::format("Before the last reading it was {} to {}, most likely {}.",
                       counted_on_in_words(now, was.count_on), end_in_words(now, was.one_in_ten),
                       end_in_words(now, was.half));
}

std::string listed(const scenario::Scenario& scenario, const std::vector<std::size_t>& places) {
    std::string text;
    for (std::size_t i = 0; i < std::min<std::size_t>(places.size(), 3); ++i)
        text += (i > 0 ? "; " : "") + entry_in_short(scenario.log[places[i]]);
    return places.size() > 3 ? text + fmt::format("; and {} more", places.size() - 3) : text;
}

std::string contradiction_in_words(const scenario::Scenario& scenario, const Outlook& outlook) {
    const auto& odd = outlook.contradiction->odd;
    const std::string which = listed(scenario, odd);
    if (odd.size() == 1 && outlook.contradiction->one_of_them)
        return fmt::format(
            "This reading cannot be true together with the plan and the others: {}. "
            "The times are those of the plan without any such reading. Strike it, or "
            "look for a wrong pack, or for something that was switched and not "
            "written down.",
            which);
    return fmt::format(
        "These readings cannot all be true: {}. The times are those of the plan "
        "without them. Strike the wrong one, or look for something that was switched "
        "and not written down.",
        which);
}

void add_departures(std::vector<std::string>& sentences, const scenario::Scenario& scenario,
                    const Outlook& outlook) {
    if (outlook.readings == 0 || outlook.contradiction) return;
    if (outlook.fits) {
        sentences.emplace_back("No reading speaks against the plan.");
        return;
    }
    for (const Departure& one : outlook.departures) {
        constexpr const char* words[] = {"Perhaps", "Probably", "Surely"};
        std::string text =
            fmt::format("{} {}, because of: {}.", words[static_cast<std::size_t>(one.sure)],
                        departure_in_words(one), listed(scenario, one.because));
        if (!one.or_else.empty())
            text += fmt::format(" Or else: {}. The readings cannot tell which.",
                                fmt::join(one.or_else, ", or "));
        sentences.push_back(std::move(text));
    }
    if (outlook.departures.empty())
        sentences.emplace_back(
            "The readings do not fit the plan, and nothing they touch explains it: check the log.");
    if (outlook.more_left)
        sentences.emplace_back(
            "More is left than planned: is something off that was not written down?");
}

}  // namespace

std::string entry_in_short(const scenario::LogEntry& entry) {
    std::string said = notes::in_words(entry);
    if (said.ends_with('.')) said.pop_back();
    return said;
}

std::string departure_in_words(const Departure& departure) {
    const auto percent = [](double factor) {
        return fmt::format("{:.0f} %", 100.0 * std::abs(factor - 1.0));
    };
    const bool more = departure.likely >= 1.0;
    return fmt::format("{} is {} {} than planned (between {:.2f} and {:.2f} of it)", departure.what,
                       percent(departure.likely), more ? "more" : "less", departure.low,
                       departure.high);
}

std::string next_read_in_words(const scenario::Scenario& scenario,
                               const estimate::Narrowing& next) {
    switch (next.what) {
        case NextRead::meter:
            return "a plug-in meter on " + scenario.loads[next.load].name + ", for a day";
        case NextRead::sun:
            return "what the controller counted today";
        case NextRead::charge:
            break;
    }
    return "the packs' own display, or the volts after some hours of rest";
}

std::vector<std::string> now_sentences(const scenario::Scenario& scenario, LocalTime now,
                                       const Outlook& outlook) {
    std::vector<std::string> sentences;
    if (outlook.story.supply_back && *outlook.story.supply_back <= now)
        return {
            fmt::format("The supply came back {}: the outage is over. Charge the packs again, "
                        "and ask learnt what this outage taught.",
                        weekday_and_time(*outlook.story.supply_back))};
    sentences.push_back(until_when(scenario, now, outlook));
    sentences.push_back(what_goes_off(scenario, now, outlook));
    sentences.push_back(what_to_read(scenario, outlook));
    if (outlook.contradiction) sentences.push_back(contradiction_in_words(scenario, outlook));
    if (outlook.was) sentences.push_back(what_it_was(now, outlook));
    add_departures(sentences, scenario, outlook);
    if (outlook.to_expected)
        sentences.push_back(fmt::format(
            "Until the supply is expected back, {}, {}. That time is a hope: it may take twice as "
            "long.",
            weekday_and_time(*outlook.story.expected_back), times_in_100(*outlook.to_expected)));
    if (!outlook.figures.meets_the_goal() &&
        std::ranges::any_of(scenario.loads, demand::is_medical))
        sentences.insert(
            sentences.begin(),
            fmt::format("Somebody's health depends on this: act by {}. By then be where there is "
                        "power, or call for help; do not wait for the end.",
                        counted_on_in_words(now, to_act_within * outlook.figures.count_on)));
    return sentences;
}

}  // namespace answers
