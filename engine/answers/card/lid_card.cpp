#include "answers/card/lid_card.hpp"

#include <algorithm>
#include <cctype>

#include <fmt/format.h>

#include "answers/card/parts.hpp"
#include "answers/chance_words.hpp"
#include "answers/checked.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using scenario::Scenario;

std::string charge_at_start(const Scenario& scenario) {
    const auto is_full = [](const scenario::Pack& pack) {
        return !pack.rested_voltage && pack.charge.value_or(units::StateOfCharge(1.0)).value() >= 1;
    };
    if (std::ranges::all_of(scenario.packs, is_full)) {
        return "From full packs";
    }
    if (scenario.packs.size() == 1 && scenario.packs.front().charge) {
        return fmt::format("From packs {} full", units::show(*scenario.packs.front().charge));
    }
    return "From the charge in the file";
}

std::string sky(const Scenario& scenario) {
    if (scenario.panels.empty()) {
        return ", no sun";
    }
    if (!scenario.outage.sky.empty()) {
        return ", sky as forecast";
    }
    switch (scenario.outage.cause.value_or(scenario::Cause::unknown)) {
        case scenario::Cause::storm:
            return ", after a storm";
        case scenario::Cause::clear:
            return ", clear at first";
        case scenario::Cause::unknown:
            break;
    }
    return "";
}

std::string basis(const Scenario& scenario) {
    const auto warmth = scenario.outage.battery_temperature;
    return fmt::format(
        "{} on {}{}{}.", charge_at_start(scenario), date_and_time(scenario.outage.starts),
        warmth ? fmt::format(", packs at {}", units::show(*warmth)) : "", sky(scenario));
}

// "93 times in 100."
std::string how_surely(const chance::Figures& figures) {
    std::string words = chance_in_words(figures) + ".";
    words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    return words;
}

// "Nine times in ten; half the time 42 h; to the end 35 times in 100."
std::string at_the_goal(const scenario::Outage& outage, const chance::Figures& figures) {
    std::string words = goal_in_words(figures.goal);
    words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    const bool to_the_end =
        outage.open_ended ? figures.half >= outage.lasts : figures.of >= units::Probability(0.5);
    const std::string half =
        to_the_end ? "" : fmt::format("; half the time {}", lasting(figures.half, false));
    const std::string condition = outage.open_ended ? ", " + if_half_are_over(outage) : "";
    return fmt::format("{}{}; to the end {}{}.", words, half, chance_in_words(figures), condition);
}

// The first thing that stands in the way of the plan; a card must not be quieter than the answer.
void add_stops(LidCard& card, const Answer& outage) {
    int stops = 0;
    for (const auto& pinned : outage.findings) {
        if (pinned.finding.severity != scenario::Severity::stop) {
            continue;
        }
        if (++stops == 1) {
            card.basis.push_back(
                fmt::format("STOP, {}: {}", pinned.finding.where, pinned.finding.text));
        }
    }
    if (stops > 1) {
        card.basis.back() += fmt::format(" And {} more: see the report.", stops - 1);
    }
}

}  // namespace

LidCard lid_card(const Scenario& scenario, const CardAnswers& answers, std::string made) {
    LidCard card{.title = scenario.title.empty() ? "Emergency power unit" : scenario.title,
                 .made = std::move(made),
                 .answer = {},
                 .basis = {basis(scenario)},
                 .parts = {},
                 .closing = std::string(closing_line)};
    if (!answers.outage) {
        card.answer = "Not answered";
        card.basis = {reason_in(answers.outage.error())};
    } else if (answers.ration) {
        const chance::Figures& all = answers.ration->all_on.figures;
        const bool lasts = counted_on_to_the_end(scenario.outage, all);
        card.answer = lasts ? "Everything on: to the end"
                            : fmt::format("Everything on: {}", lasting(all.count_on, false));
        card.basis.insert(card.basis.begin(),
                          lasts ? how_surely(all) : at_the_goal(scenario.outage, all));
    }
    if (answers.outage) {
        if (const auto back = given_back(*answers.outage); !back.empty()) {
            card.basis.push_back(back);
        }
        add_stops(card, *answers.outage);
    }
    card.parts = {
        ration_part(scenario, answers),  voltmeter_part(answers), fuses_part(answers),
        plug_in_part(scenario, answers), cold_part(scenario),     storage_part(scenario, answers),
        cautions_part(answers)};
    std::erase_if(card.parts, [](const CardPart& part) {
        return part.lines.empty() && part.table.rows.empty() && part.after.empty() &&
               part.ticks.empty();
    });
    return card;
}

bool cut_one(CardPart& part) {
    constexpr std::size_t least = 2;
    if (!part.brief.empty()) {
        const auto longest = std::ranges::max_element(part.lines, {}, &std::string::size);
        const auto index = static_cast<std::size_t>(longest - part.lines.begin());
        if (*longest != part.brief[index]) {
            *longest = part.brief[index];
            return true;
        }
        return false;
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

std::string left_out(const CardPart& part) {
    return part.cut == 0 ? ""
                         : fmt::format("and {} more {}: see the report.", part.cut, part.of_what);
}

}  // namespace answers
