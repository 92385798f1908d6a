#include "answers/card/lid_card.hpp"

#include <algorithm>

#include "answers/card/parts.hpp"
#include "answers/chance_words.hpp"
#include "answers/checked.hpp"
#include "answers/clock_words.hpp"
#include "answers/outage/findings.hpp"

namespace answers {

namespace {

using scenario::Scenario;
using words::Said;
using words::said;
using words::said_of;

Said charge_at_start(const Scenario& scenario) {
    const Said when = date_and_time(scenario.outage.starts);
    const auto is_full = [](const scenario::Pack& pack) {
        return !pack.rested_voltage && pack.charge.value_or(units::StateOfCharge(1.0)).value() >= 1;
    };
    if (std::ranges::all_of(scenario.packs, is_full)) {
        return said<"from full packs on {when}">(when);
    }
    if (scenario.packs.size() == 1 && scenario.packs.front().charge) {
        return said<"from packs {charge} full on {when}">(in_words(*scenario.packs.front().charge),
                                                          when);
    }
    return said<"from the charge in the file on {when}">(when);
}

Said sky(const Scenario& scenario) {
    if (scenario.panels.empty()) {
        return said<"no sun">();
    }
    if (!scenario.outage.sky.empty()) {
        return said<"sky as forecast">();
    }
    switch (scenario.outage.cause.value_or(scenario::Cause::unknown)) {
        case scenario::Cause::storm:
            return said<"after a storm">();
        case scenario::Cause::clear:
            return said<"clear at first">();
        case scenario::Cause::unknown:
            break;
    }
    return {};
}

// "From full packs on Wed 14 Jan 18:00, packs at 5 °C, after a storm."
Said basis(const Scenario& scenario) {
    std::vector<Said> from{charge_at_start(scenario)};
    if (const auto warmth = scenario.outage.battery_temperature) {
        from.push_back(said<"packs at {temperature}">(*warmth));
    }
    from.push_back(sky(scenario));
    return words::as_sentence(words::joined(std::move(from), words::List::Joint::comma));
}

// "To the end 35 times in 100", and on what that depends where nobody knows the end.
Said to_the_end(const scenario::Outage& outage, const chance::Figures& figures) {
    const Said often = chance_in_words(figures);
    if (!outage.open_ended) return said<"to the end {often}">(often);
    return said<"to the end {often}, {condition}">(often, if_half_are_over(outage));
}

// "Nine times in ten; half the time 42 h; to the end 35 times in 100."
Said at_the_goal(const scenario::Outage& outage, const chance::Figures& figures) {
    std::vector<Said> clauses{goal_in_words(figures.goal)};
    const bool half_lasts_it =
        outage.open_ended ? figures.half >= outage.lasts : figures.of >= units::Probability(0.5);
    if (!half_lasts_it) {
        clauses.push_back(said<"half the time {time}">(lasting(figures.half, false)));
    }
    clauses.push_back(to_the_end(outage, figures));
    return words::as_sentence(words::joined(std::move(clauses), words::List::Joint::semicolon));
}

// The first thing that stands in the way of the plan; a card must not be quieter than the answer.
void add_stops(LidCard& card, const questions::OutageFound& outage) {
    std::vector<scenario::Finding> stops;
    for (auto& pinned : outage_findings(outage.scenario, outage.plan, outage.starts)) {
        if (pinned.finding.severity == scenario::Severity::stop) {
            stops.push_back(std::move(pinned.finding));
        }
    }
    if (stops.empty()) return;
    Said first = said<"STOP, {place}: {stop}">(stops.front().where, stops.front().text);
    if (stops.size() == 1) {
        card.basis.push_back(std::move(first));
        return;
    }
    card.basis.push_back(said_of<"{stop} There is {n} more: see the report.",
                                 "{stop} There are {n} more: see the report.">(
        std::move(first), static_cast<int>(stops.size()) - 1));
}

}  // namespace

LidCard lid_card(const Scenario& scenario, const questions::CardFound& found, std::string made) {
    LidCard card{
        .title = scenario.title.empty() ? said<"Emergency power unit">() : Said(scenario.title),
        .made = std::move(made),
        .answer = {},
        .basis = {basis(scenario)},
        .parts = {},
        .closing = closing_line()};
    if (!found.outage) {
        card.answer = said<"Not answered">();
        card.basis = {reason_in(found.outage.error())};
    } else if (found.ration) {
        const chance::Figures& all = found.ration->all_on.figures;
        const bool lasts = counted_on_to_the_end(scenario.outage, all);
        card.answer = lasts ? said<"Everything on: to the end">()
                            : said<"Everything on: {time}">(lasting(all.count_on, false));
        card.basis.insert(card.basis.begin(), lasts ? words::as_sentence(chance_in_words(all))
                                                    : at_the_goal(scenario.outage, all));
    }
    if (found.outage) {
        if (const auto back = given_back(*found.outage); !back.empty()) {
            card.basis.push_back(back);
        }
        add_stops(card, *found.outage);
    }
    card.parts = {
        ration_part(scenario, found),  voltmeter_part(found), fuses_part(found),
        plug_in_part(scenario, found), cold_part(scenario),   storage_part(scenario, found),
        cautions_part(found)};
    std::erase_if(card.parts, [](const CardPart& part) {
        return part.lines.empty() && part.table.rows.empty() && part.after.empty() &&
               part.ticks.empty();
    });
    return card;
}

namespace {

// The longest line that is not in its short form yet; the number of lines where all are.
std::size_t longest_of(const CardPart& part, const words::Language& language) {
    std::size_t found = part.lines.size();
    std::size_t letters = 0;
    for (std::size_t i = 0; i < part.lines.size(); ++i) {
        const std::size_t here = words::in(language, part.lines[i]).size();
        if (part.lines[i] == part.brief[i] || here <= letters) continue;
        found = i;
        letters = here;
    }
    return found;
}

}  // namespace

bool cut_one(CardPart& part, const words::Language& language) {
    constexpr std::size_t least = 2;
    if (!part.brief.empty()) {
        const std::size_t longest = longest_of(part, language);
        if (longest == part.lines.size()) return false;
        part.lines[longest] = part.brief[longest];
        return true;
    }
    if (part.name == "plug_in" || part.name == "cold") {
        return false;
    }
    if (part.table.rows.size() > least) {
        // The first row of a ration is the next thing to do; of readings the ends matter most.
        auto& rows = part.table.rows;
        rows.erase(part.name == "voltmeter" ? rows.begin() + std::ssize(rows) / 2 : rows.end() - 1);
    } else if (part.ticks.size() > least) {
        part.ticks.pop_back();
    } else {
        return false;
    }
    ++part.cut;
    return true;
}

Said left_out(const CardPart& part) {
    if (part.cut == 0) return {};
    if (part.name == "ration") {
        return said_of<"and {n} more step: see the report.", "and {n} more steps: see the report.">(
            part.cut);
    }
    if (part.name == "voltmeter") {
        return said_of<"and {n} more reading: see the report.",
                       "and {n} more readings: see the report.">(part.cut);
    }
    if (part.name == "fuses") {
        return said_of<"and {n} more circuit: see the report.",
                       "and {n} more circuits: see the report.">(part.cut);
    }
    return said_of<"and {n} more date.", "and {n} more dates.">(part.cut);
}

}  // namespace answers
