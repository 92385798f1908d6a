#include "answers/card/parts.hpp"

#include <algorithm>
#include <cmath>

#include "answers/answer_of.hpp"
#include "answers/cautions.hpp"
#include "answers/cautions_in_brief.hpp"
#include "answers/chance_words.hpp"
#include "answers/columns.hpp"
#include "answers/shown.hpp"
#include "battery/cell/chemistry.hpp"
#include "battery/cell/freezing.hpp"
#include "battery/cell/temperature.hpp"

namespace answers {

namespace {

using words::Said;
using words::said;
using words::said_of;
using Joint = words::List::Joint;

constexpr std::size_t longest_list = 90;   // of loads in one row; more would push the rest out
constexpr std::size_t longest_energy = 9;  // " 1.2 kWh,"

// "lamps 140 Wh, phones 60 Wh"
Said listed(const std::vector<sizing::ShedLoad>& loads) {
    std::vector<Said> told;
    std::size_t letters = 0;
    for (const sizing::ShedLoad& load : loads) {
        letters += load.name.size() + longest_energy;
        if (!told.empty() && letters > longest_list) {
            const auto more = static_cast<int>(loads.size() - told.size());
            return said<"{loads} and {n} more">(words::joined(std::move(told), Joint::comma), more);
        }
        told.push_back(said<"{load} {energy}">(load.name, in_words(load.spared, 2)));
    }
    return words::joined(std::move(told), Joint::comma);
}

words::Amount whole_hours(double hours) {
    return units::amount_in(std::floor(hours + 1e-6) * units::hour, "h", 0);
}

// From now, by what a reading means.
Said span_of(const questions::FromNow& from) {
    if (from.survives_low) return said<"to the end">();
    const double least = from.lasts_low / units::hour;
    const double most = from.lasts_high / units::hour;
    if (from.survives_high) return said<"{time} to the end">(whole_hours(least));
    if (std::floor(most + 1e-6) <= std::floor(least + 1e-6)) {
        return said<"{time}">(whole_hours(least));
    }
    return said<"{low} to {high}">(words::with_decimals(std::floor(least + 1e-6), 0),
                                   whole_hours(most));
}

// Of 100, downwards: "35 of 100".
Said in_short(units::Probability of) {
    if (of > units::Probability(0.99)) return said<"> 99 of 100">();
    if (of < units::Probability(0.01)) return said<"< 1 of 100">();
    return said<"{n} of 100">(whole_hundredths(of));
}

Said step_in_words(std::size_t number, const sizing::RationStep& step) {
    const auto n = static_cast<int>(number);
    if (step.inverter) return said<"{n}. {loads}; then the inverter">(n, listed(step.off));
    return said<"{n}. {loads}">(n, listed(step.off));
}

}  // namespace

Said lasting(units::Duration lasts, bool survives) {
    const double half_days = std::floor(lasts / (0.5 * units::day) + 1e-6);
    const double hours = std::floor(lasts / units::hour + 1e-6);
    const double minutes = std::floor(lasts / units::minute + 1e-6);
    const Said length =
        lasts < 2.0 * units::hour
            ? said<"{time}">(units::amount_in(minutes * units::minute, "min", 0))
        : hours < 100.0 ? said<"{time}">(whole_hours(hours))
                        : said<"{n} days">(words::Number{.value = half_days / 2.0, .digits = 6});
    return survives ? said<"all {time}">(length) : length;
}

Said given_back(const questions::OutageFound& outage) {
    if (!outage.chance || !outage.chance->sun) {
        return {};
    }
    const double days = std::max<double>(outage.scenario.outage.lasts / units::day, 1e-6);
    const auto& kept = outage.chance->sun->kept;
    if (!(kept.high > units::Energy{})) {
        return {};
    }
    const auto a_day = [days](units::Energy energy) { return in_words(energy * (1.0 / days), 2); };
    return said<"The sun gives back {likely} a day ({low} to {high}).">(
        a_day(kept.likely), a_day(kept.low), a_day(kept.high));
}

Said reason_in(const units::Errors& errors) {
    if (errors.empty()) {
        return said<"Not answered.">();
    }
    const auto& error = errors.front();
    const Said fault =
        error.where.empty() ? error.found : said<"{place}: {fault}">(error.where, error.found);
    return said<"Not answered: {fault}.">(fault);
}

CardPart ration_part(const scenario::Scenario& scenario, const questions::CardFound& found) {
    CardPart part{.name = "ration", .heading = said<"To make it last, switch off">()};
    if (!found.ration) {
        part.lines = {reason_in(found.ration.error())};
        return part;
    }
    const sizing::Ration& ration = *found.ration;
    if (ration.steps.empty()) {
        part.lines = {
            said<"All loads have the same priority: nothing goes before anything else.">()};
    } else {
        part.table = {.headings = {said<"in this order">(), said<"saves a day">(),
                                   said<"lasts {often}">(goal_in_words(ration.all_on.figures.goal)),
                                   said<"to the end">()},
                      .rows = {},
                      .answers = 2};
    }
    for (std::size_t step = 0; step < ration.steps.size(); ++step) {
        const sizing::RationStep& each = ration.steps[step];
        part.table.rows.push_back(
            {step_in_words(step + 1, each), in_words(each.spared, 2),
             lasting(each.figures.count_on, counted_on_to_the_end(scenario.outage, each.figures)),
             in_short(each.figures.of)});
    }
    if (!ration.kept.empty()) {
        part.after = {ration.vital
                          ? said<"Life and health, never off: {loads}.">(listed(ration.kept))
                          : said<"Last of all: {loads}.">(listed(ration.kept))};
    }
    return part;
}

namespace {

Said why_no_reading(const questions::CardFound& found) {
    if (found.unreadable.empty()) {
        return said<"There are no packs to read.">();
    }
    return said<"The voltage tells nothing here: {why}.">(found.unreadable.front().found);
}

std::vector<Said> voltmeter_row(const questions::CardReading& reading) {
    const auto volts = units::amount_in(reading.reads, "V", 1);
    const auto percent = [](units::StateOfCharge charge) {
        return words::with_decimals(number(charge), 0);
    };
    const auto& found = reading.found;
    return {reading.or_more ? said<"≥ {voltage}">(volts) : said<"{voltage}">(volts),
            said<"{low}–{high} %">(percent(found.charge.low), percent(found.charge.high)),
            found.from_now ? span_of(*found.from_now) : Said("?")};
}

}  // namespace

CardPart voltmeter_part(const questions::CardFound& found) {
    CardPart part{.name = "voltmeter", .heading = said<"What the voltmeter means">()};
    if (found.readings.empty()) {
        part.lines = {why_no_reading(found)};
        return part;
    }
    part.lines = {said<"Switch all off, wait an hour, then read.">()};
    part.table = {.headings = {said<"volts">(), said<"full">(), said<"all on, lasts">()},
                  .rows = {}};
    for (const auto& reading : found.readings) {
        part.table.rows.push_back(voltmeter_row(reading));
    }
    return part;
}

namespace {

std::vector<Said> fuse_row(const fitting::CircuitState& circuit, bool fails) {
    const Said name = fails ? said<"{name} (!)">(circuit.name) : Said(circuit.name);
    if (circuit.fuses.empty()) {
        return {name, said<"none">(), "?"};
    }
    const auto& fuse = circuit.fuses.front();
    const auto amperes = [](const std::optional<units::Current>& current) {
        return current ? in_words(*current, 4) : Said("?");
    };
    return {name, amperes(circuit.links[fuse.link].rating), amperes(fuse.window.largest)};
}

}  // namespace

CardPart fuses_part(const questions::CardFound& found) {
    CardPart part{.name = "fuses", .heading = said<"Fuses">()};
    if (!found.wiring) {
        part.lines = {reason_in(found.wiring.error())};
        return part;
    }
    const auto& fit = found.wiring->fit;
    if (fit.circuits.empty()) {
        part.lines = {said<"The file names no circuits.">()};
        return part;
    }
    part.table = {.headings = {said<"circuit">(), said<"fuse">(), said<"at most">()}, .rows = {}};
    for (const auto& circuit : fit.circuits) {
        const bool fails = fitting::fails_for_sure(fit, circuit.name);
        part.table.rows.push_back(fuse_row(circuit, fails));
        if (fails) {
            part.after = {said<"(!) does not suit: see the report.">()};
        }
    }
    return part;
}

namespace {

// Rounded down to what a voltmeter of one decimal shows.
Said plug_in_rule(const std::optional<units::Voltage>& largest_difference) {
    if (!largest_difference) {
        return said<"No limit of any part is known: bring both to the same voltage first.">();
    }
    const double tenths = std::floor(*largest_difference / units::volt * 10.0 + 1e-9);
    return said<"Plug in only when they are less than {voltage} apart.">(
        units::amount_in(tenths / 10.0 * units::volt, "V", 1));
}

}  // namespace

CardPart plug_in_part(const scenario::Scenario& scenario, const questions::CardFound& found) {
    CardPart part{.name = "plug_in", .heading = said<"Plugging in a pack">()};
    if (found.joins.empty()) {
        part.lines = {said<"The file has one pack: there is nothing to plug in.">()};
        return part;
    }
    std::optional<units::Voltage> least;
    for (const auto& join : found.joins) {
        if (!join) {
            part.lines = {reason_in(join.error())};
            return part;
        }
        const auto& joining = join->joining;
        if (!joining.allowed) {
            part.lines.push_back(answer_of(*join).sentences.front());
        }
        if (joining.largest_difference) {
            const units::Voltage apart = *joining.largest_difference;
            least = std::min<units::Voltage>(least.value_or(apart), apart);
        }
    }
    const auto& chemistry = battery::defaults_of(scenario.packs.front().chemistry).name;
    part.lines.push_back(said<"Only {kind} to {kind}. Measure both at rest.">(chemistry));
    part.lines.push_back(plug_in_rule(least));
    return part;
}

namespace {

// Rounded up to the next five: whoever reads it at night cannot ask back.
Said frozen_words(scenario::Chemistry chemistry) {
    constexpr units::Temperature hard_frost = units::celsius(-20.0);
    const auto least = battery::freezes_below(chemistry, hard_frost);
    const double twentieths = least ? std::ceil(20.0 * least->value() - 1e-9) : 1.0;
    return said<
        "Keep {kind} above {charge}: emptier packs freeze at {temperature}. Never charge a frozen "
        "one.">(battery::defaults_of(chemistry).name, in_words(units::Share(twentieths / 20.0)),
                hard_frost);
}

Said given_in_the_cold(scenario::Chemistry chemistry) {
    constexpr units::Temperature freezing = units::celsius(0.0);
    constexpr units::Temperature frost = units::celsius(-10.0);
    const auto share = [chemistry](units::Temperature at) {
        const double factor = battery::capacity_factor(chemistry, at).factor;
        return in_words(units::Share(std::round(100.0 * factor) / 100.0));
    };
    return said<"They give {share} of their charge at {freezing}, {less} at {frost}.">(
        share(freezing), freezing, share(frost), frost);
}

}  // namespace

CardPart cold_part(const scenario::Scenario& scenario) {
    CardPart part{.name = "cold", .heading = said<"In the cold">()};
    for (const auto& pack : scenario.packs) {
        const auto& usual = battery::defaults_of(pack.chemistry);
        const auto coldest = pack.coldest_charge ? pack.coldest_charge : usual.coldest_charge.value;
        const Said rule =
            coldest ? said<"Never charge {kind} at or below {temperature}: warm it first.">(
                          usual.name, *coldest)
                    : frozen_words(pack.chemistry);
        if (std::ranges::find(part.lines, rule) == part.lines.end()) {
            part.lines.push_back(rule);
        }
    }
    if (!scenario.packs.empty()) {
        part.lines.push_back(given_in_the_cold(scenario.packs.front().chemistry));
    }
    return part;
}

CardPart cautions_part(const questions::CardFound& found) {
    CardPart part{.name = "cautions", .heading = said<"Beware">()};
    if (!found.outage) {
        return part;
    }
    for (const Caution& caution : cautions_for(found.outage->scenario)) {
        part.lines.push_back(said<"{hazard}: {text}">(caution.hazard, caution.text));
        const Said brief = in_brief(caution);
        part.brief.push_back(brief.empty() ? part.lines.back()
                                           : said<"{hazard}: {text}">(caution.hazard, brief));
    }
    return part;
}

}  // namespace answers
