#include "answers/now/sentences.hpp"

#include <algorithm>
#include <cmath>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "demand/power.hpp"
#include "notes/understand.hpp"

namespace answers {

namespace {

using namespace units;
using chance::Figures;
using estimate::Departure;
using estimate::NextRead;
using estimate::Outlook;
using estimate::Sure;
using words::Said;
using words::said;
using words::said_of;
using Joint = words::List::Joint;

constexpr Duration worth_saying = 10.0 * minute;
constexpr double to_act_within =
    0.8;  // of the time that is counted on; the rest is for the way. Ours
constexpr std::size_t most_named = 3;  // entries or loads in one sentence

// "It lasts to the end, Sunday 18:00, 95 times in 100."
Said to_the_end(const scenario::Outage& outage, const Figures& figures) {
    return said<"It lasts {so_long}.">(lasting_so_often(outage, chance_in_words(figures)));
}

// Whether the time that is counted on and the likely one are so near that one is told for both.
bool are_one(const Figures& figures) {
    return figures.half - figures.count_on < 0.1 * figures.half;
}

// "Count on it until Friday 06:00 (nine times in ten); most likely it lasts until Friday 14:00."
Said times(const Figures& figures, LocalTime now) {
    const Said sure = counted_on_in_words(now, figures.count_on);
    const Said often = goal_in_words(figures.goal);
    if (figures.count_on < minute)
        return said<"Do not count on it from now on: it may end at any moment.">();
    if (are_one(figures)) return said<"It lasts until about {when} ({often}).">(sure, often);
    return said<"Count on it until {when} ({often}); most likely it lasts until {likely}.">(
        sure, often, end_in_words(now, figures.half));
}

// The same once something is off.
Said times_then(const Figures& figures, LocalTime now) {
    const Said sure = counted_on_in_words(now, figures.count_on);
    if (figures.count_on < minute) return said<"Even then do not count on it.">();
    if (are_one(figures)) return said<"Then it lasts until about {when}.">(sure);
    return said<"Then count on it until {when}; most likely it lasts until {likely}.">(
        sure, end_in_words(now, figures.half));
}

Said until_when(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    const Figures& figures = outlook.figures;
    if (outlook.out_already >= Probability(0.5))
        return said<
            "By the plan and the readings this unit has failed already. If it still runs, read the "
            "volts now and write them down.">();
    const Said whole = to_the_end(scenario.outage, figures);
    if (figures.meets_the_goal()) return whole;
    if (figures.of >= Probability(0.5) && !scenario.outage.open_ended)
        return said<"Count on it until {when} ({often}). {whole}">(
            counted_on_in_words(now, figures.count_on), goal_in_words(figures.goal), whole);
    return words::together({times(figures, now), whole});
}

// How sharp the end of such a time is told: as end_in_words.
Duration sharpness(Duration lasts) {
    if (lasts < 6.0 * hour) return 5.0 * minute;
    return lasts < 48.0 * hour ? 1.0 * hour : 6.0 * hour;
}

// Whether the gain is large enough to be seen in the times as they are told.
bool shows(const Figures& figures, const Figures& then) {
    const auto grows = [](Duration from, Duration to) { return to - from >= sharpness(to); };
    return grows(figures.count_on, then.count_on) || grows(figures.half, then.half);
}

// What the times of a step ask for beside it: the steps before it.
Said those_before(const scenario::Scenario& scenario, const Outlook& outlook, std::size_t steps) {
    if (steps == 0) return {};
    if (steps > most_named)
        return said<"For that, switch off the {n} above it in the table too.">(
            static_cast<int>(steps));
    std::vector<Said> loads;
    for (std::size_t i = 0; i < steps; ++i)
        loads.emplace_back(scenario.loads[outlook.next_off[i].load].name);
    return said<"For that, switch off too: {loads}.">(
        words::joined(std::move(loads), Joint::comma));
}

Said what_goes_off(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    if (outlook.figures.meets_the_goal()) return said<"Nothing needs to be switched off.">();
    const auto pays = std::ranges::find_if(
        outlook.next_off, [](const estimate::OffStep& step) { return step.alone >= worth_saying; });
    if (pays == outlook.next_off.end())
        return said<"Switching off what may go off buys almost no time.">();
    const Said buys = said<"Switch off next: {load}. That alone buys about {time}.">(
        scenario.loads[pays->load].name, length_in_words(pays->alone));
    if (!shows(outlook.figures, pays->figures)) return buys;
    const auto steps = static_cast<std::size_t>(pays - outlook.next_off.begin());
    return words::together(
        {buys, times_then(pays->figures, now), those_before(scenario, outlook, steps)});
}

Said what_to_read(const scenario::Scenario& scenario, const Outlook& outlook) {
    if (outlook.read_next.empty())
        return said<
            "No single reading would tell much more: read the volts again in some hours.">();
    const auto& next = outlook.read_next.front();
    return said<
        "Read next: {what}. The end is known to within {width}, and after that reading to within "
        "about {then}.">(next_read_in_words(scenario, next), length_in_words(outlook.width),
                         length_in_words(next.width_after));
}

Said what_it_was(LocalTime now, const Outlook& outlook) {
    const Figures& was = *outlook.was;
    return said<
        "Before the last reading the end was expected between {low} and {high}, most likely "
        "{likely}.">(counted_on_in_words(now, was.count_on), end_in_words(now, was.one_in_ten),
                     end_in_words(now, was.half));
}

Said listed(const scenario::Scenario& scenario, const std::vector<std::size_t>& places) {
    std::vector<Said> entries;
    for (std::size_t i = 0; i < std::min(places.size(), most_named); ++i)
        entries.push_back(entry_in_short(scenario.log[places[i]]));
    Said named = words::joined(std::move(entries), Joint::semicolon);
    if (places.size() <= most_named) return named;
    return said<"{entries}; and {n} more">(std::move(named),
                                           static_cast<int>(places.size() - most_named));
}

Said contradiction_in_words(const scenario::Scenario& scenario, const Outlook& outlook) {
    const auto& odd = outlook.contradiction->odd;
    const Said which = listed(scenario, odd);
    if (odd.size() == 1 && outlook.contradiction->one_of_them)
        return said<
            "This reading cannot be true together with the plan and the other readings: {entries}. "
            "The times are those of the plan without any such reading. Strike it, or look for a "
            "wrong pack, or for something that was switched and not written down.">(which);
    return said<
        "These readings cannot all be true: {entries}. The times are those of the plan without "
        "them. Strike the wrong one, or look for something that was switched and not written "
        "down.">(which);
}

// "Perhaps what refrigerator draws is 20 % more than planned (1.10 to 1.32 times the plan)."
Said so_sure(Sure sure, const Said& departure) {
    switch (sure) {
        case Sure::surely:
            return said<"Surely {departure}.">(departure);
        case Sure::probably:
            return said<"Probably {departure}.">(departure);
        case Sure::perhaps:
            break;
    }
    return said<"Perhaps {departure}.">(departure);
}

Said why_and_what_else(const scenario::Scenario& scenario, const Departure& one) {
    const Said entries = listed(scenario, one.because);
    const Said because = entries.empty() ? Said() : said<"This follows from: {entries}.">(entries);
    if (one.or_else.empty()) return because;
    return words::together(
        {because, said<"Or else it is {others}: the readings cannot tell which.">(
                      words::joined(one.or_else, Joint::either))});
}

void add_departures(std::vector<Said>& sentences, const scenario::Scenario& scenario,
                    const Outlook& outlook) {
    if (outlook.readings == 0 || outlook.contradiction) return;
    if (outlook.fits) {
        sentences.push_back(said<"The readings agree with the plan.">());
        return;
    }
    for (const Departure& one : outlook.departures)
        sentences.push_back(words::together(
            {so_sure(one.sure, departure_in_words(one)), why_and_what_else(scenario, one)}));
    if (outlook.departures.empty())
        sentences.push_back(
            said<"The readings do not fit the plan, and nothing that they depend on explains it: "
                 "check the log.">());
    if (outlook.more_left)
        sentences.push_back(
            said<"More is left than planned: is something off that was not written down?">());
}

Said supply_is_back(LocalTime back) {
    return said<
        "The supply came back on {when}: the outage is over. Charge the packs again. What this "
        "outage taught is told by the question \"learnt\".">(weekday_and_time(back));
}

Said until_expected(const Outlook& outlook) {
    return said<
        "It lasts until the supply is expected back, {when}, {often}. That time is a hope: it may "
        "take twice as long.">(weekday_and_time(*outlook.story.expected_back),
                               times_in_100(*outlook.to_expected));
}

// Who relies on a machine leaves while there is still time.
Said act_by(LocalTime now, const Figures& figures) {
    return said<
        "Somebody's health depends on this: act by {when}. By then be where there is power, or "
        "call for help; do not wait for the end.">(
        counted_on_in_words(now, to_act_within * figures.count_on));
}

}  // namespace

Said entry_in_short(const scenario::LogEntry& entry) {
    return notes::in_short(entry);
}

Said departure_in_words(const Departure& departure) {
    const auto percent = words::with_decimals(100.0 * std::abs(departure.likely - 1.0), 0);
    const auto low = words::with_decimals(departure.low, 2);
    const auto high = words::with_decimals(departure.high, 2);
    if (departure.likely >= 1.0)
        return said<"{what} is {percent} % more than planned ({low} to {high} times the plan)">(
            departure.what, percent, low, high);
    return said<"{what} is {percent} % less than planned ({low} to {high} times the plan)">(
        departure.what, percent, low, high);
}

Said next_read_in_words(const scenario::Scenario& scenario, const estimate::Narrowing& next) {
    switch (next.what) {
        case NextRead::meter:
            return said<"a plug-in meter on {load}, for a day">(scenario.loads[next.load].name);
        case NextRead::sun:
            return said<"what the charge controller counted today">();
        case NextRead::charge:
            break;
    }
    return said<"the packs' own display, or the volts after some hours of rest">();
}

std::vector<Said> now_sentences(const scenario::Scenario& scenario, LocalTime now,
                                const Outlook& outlook) {
    std::vector<Said> sentences;
    if (outlook.story.supply_back && *outlook.story.supply_back <= now)
        return {supply_is_back(*outlook.story.supply_back)};
    if (!outlook.figures.meets_the_goal() &&
        std::ranges::any_of(scenario.loads, demand::is_medical))
        sentences.push_back(act_by(now, outlook.figures));
    sentences.push_back(until_when(scenario, now, outlook));
    sentences.push_back(what_goes_off(scenario, now, outlook));
    sentences.push_back(what_to_read(scenario, outlook));
    if (outlook.contradiction) sentences.push_back(contradiction_in_words(scenario, outlook));
    if (outlook.was) sentences.push_back(what_it_was(now, outlook));
    add_departures(sentences, scenario, outlook);
    if (outlook.to_expected) sentences.push_back(until_expected(outlook));
    return sentences;
}

}  // namespace answers
