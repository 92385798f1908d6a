#include "answers/card/parts.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "answers/chance_words.hpp"
#include "answers/shown.hpp"
#include "battery/chemistry.hpp"
#include "battery/freezing.hpp"
#include "battery/temperature.hpp"

namespace answers {

namespace {

constexpr std::size_t longest_list = 90;  // of loads in one row; more would push the rest out

const Quantity* number_at(const Answer& answer, std::string_view path) {
    const Value* value = value_at(answer.values, path);
    return value ? std::get_if<Quantity>(&value->held) : nullptr;
}

bool truth_at(const Answer& answer, std::string_view path) {
    const Value* value = value_at(answer.values, path);
    const bool* truth = value ? std::get_if<bool>(&value->held) : nullptr;
    return truth && *truth;
}

// "lamps 140 Wh, phones 60 Wh"
std::string listed(const std::vector<sizing::ShedLoad>& loads) {
    std::string text;
    std::size_t told = 0;
    for (const sizing::ShedLoad& load : loads) {
        const auto one =
            fmt::format("{}{} {}", told == 0 ? "" : ", ", load.name, in_words(load.spared, 2));
        if (told > 0 && text.size() + one.size() > longest_list) {
            return fmt::format("{} and {} more", text, loads.size() - told);
        }
        text += one;
        ++told;
    }
    return text;
}

std::string span_of(double low, double high, bool survives_low, bool survives_high) {
    if (survives_low) {
        return "to the end";
    }
    const double least = std::floor(low + 1e-6);
    return survives_high ? fmt::format("{:.0f} h to the end", least)
           : std::floor(high + 1e-6) > least
               ? fmt::format("{:.0f} to {:.0f} h", least, std::floor(high + 1e-6))
               : fmt::format("{:.0f} h", least);
}

// Of 100, downwards: "35 of 100".
std::string in_short(units::Probability of) {
    return of > units::Probability(0.99)   ? "> 99 of 100"
           : of < units::Probability(0.01) ? "< 1 of 100"
                                           : fmt::format("{} of 100", whole_hundredths(of));
}

std::string step_in_words(std::size_t number, const sizing::RationStep& step) {
    return fmt::format("{}. {}{}", number, listed(step.off),
                       step.inverter ? "; then the inverter" : "");
}

}  // namespace

std::string lasting(units::Duration lasts, bool survives) {
    const double half_days = std::floor(lasts / (0.5 * units::day) + 1e-6);
    const double hours = std::floor(lasts / units::hour + 1e-6);
    const std::string length =
        lasts < 2.0 * units::hour
            ? fmt::format("{:.0f} min", std::floor(lasts / units::minute + 1e-6))
        : hours < 100.0 ? fmt::format("{:.0f} h", hours)
                        : fmt::format("{:g} days", half_days / 2.0);
    return survives ? "all " + length : length;
}

std::string given_back(const Answer& outage) {
    const Quantity* low = number_at(outage, "recharge.per_day.low");
    const Quantity* likely = number_at(outage, "recharge.per_day.likely");
    const Quantity* high = number_at(outage, "recharge.per_day.high");
    if (!low || !likely || !high || !(high->value > 0.0)) {
        return "";
    }
    const auto about = [](const Quantity* energy) {
        return in_words(energy->value * units::watt_hour, 2);
    };
    return fmt::format("The sun gives back {} a day ({} to {}).", about(likely), about(low),
                       about(high));
}

std::string reason_in(const units::Errors& errors) {
    if (errors.empty()) {
        return "Not answered.";
    }
    const auto& error = errors.front();
    return fmt::format("Not answered: {}{}{}.", error.where, error.where.empty() ? "" : ": ",
                       error.found);
}

CardPart ration_part(const scenario::Scenario& scenario, const CardAnswers& answers) {
    CardPart part{.name = "ration", .heading = "To make it last, switch off", .of_what = "steps"};
    if (!answers.ration) {
        part.lines = {reason_in(answers.ration.error())};
        return part;
    }
    const sizing::Ration& ration = *answers.ration;
    if (ration.steps.empty()) {
        part.lines = {"All loads are of one rank: nothing goes before anything else."};
    } else {
        part.table = {
            .headings = {"in this order", "saves a day",
                         "lasts " + goal_in_words(ration.all_on.figures.goal), "to the end"},
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
        part.after = {fmt::format("{}: {}.",
                                  ration.vital ? "Life and health, never off" : "Last of all",
                                  listed(ration.kept))};
    }
    return part;
}

CardPart voltmeter_part(const CardAnswers& answers) {
    CardPart part{
        .name = "voltmeter", .heading = "What the voltmeter means", .of_what = "readings"};
    if (answers.readings.empty()) {
        part.lines = {answers.no_reading};
        return part;
    }
    part.lines = {"All off for an hour, then read."};
    part.table = {.headings = {"volts", "full", "all on, lasts"}, .rows = {}};
    for (const CardReading& reading : answers.readings) {
        const Quantity* low = number_at(reading.answer, "charge_low");
        const Quantity* high = number_at(reading.answer, "charge_high");
        const Quantity* least = number_at(reading.answer, "lasts_low");
        const Quantity* most = number_at(reading.answer, "lasts_high");
        part.table.rows.push_back(
            {reading.reads,
             low && high ? fmt::format("{:.0f}–{:.0f} %", low->value, high->value) : "?",
             least && most
                 ? span_of(least->value, most->value, truth_at(reading.answer, "survives_low"),
                           truth_at(reading.answer, "survives_high"))
                 : "?"});
    }
    return part;
}

CardPart fuses_part(const CardAnswers& answers) {
    CardPart part{.name = "fuses", .heading = "Fuses", .of_what = "circuits"};
    if (!answers.wiring) {
        part.lines = {reason_in(answers.wiring.error())};
        return part;
    }
    const auto series =
        std::ranges::find(answers.wiring->series, std::string("circuits"), &Series::name);
    const Value* circuits = value_at(answers.wiring->values, "circuits");
    const auto* list = circuits ? std::get_if<List>(&circuits->held) : nullptr;
    if (series == answers.wiring->series.end() || !list || list->empty()) {
        part.lines = {"The file names no circuits."};
        return part;
    }
    const auto words = [&series](std::string_view name) -> const std::vector<std::string>& {
        return std::get<std::vector<std::string>>(
            std::ranges::find(series->columns, name, &Column::name)->points);
    };
    part.table = {.headings = {"circuit", "fuse", "at most"}, .rows = {}};
    bool fails = false;
    for (std::size_t row = 0; row < list->size(); ++row) {
        const Value* largest =
            value_at(std::get<Members>((*list)[row].held), "fuse_window.largest");
        const auto* most = largest ? std::get_if<Quantity>(&largest->held) : nullptr;
        const bool bad = words("verdict")[row] == "fails";
        fails = fails || bad;
        const std::string& fuse = words("fuse")[row];
        const auto comma = fuse.find(',');
        part.table.rows.push_back({words("circuit")[row] + (bad ? " (!)" : ""),
                                   comma == std::string::npos ? fuse : fuse.substr(0, comma),
                                   most ? most->shown : "?"});
    }
    if (fails) {
        part.after = {"(!) does not suit: see the report."};
    }
    return part;
}

CardPart plug_in_part(const scenario::Scenario& scenario, const CardAnswers& answers) {
    CardPart part{.name = "plug_in", .heading = "Plugging in a pack"};
    if (answers.joins.empty()) {
        part.lines = {"The file has one pack: nothing to plug in."};
        return part;
    }
    std::optional<double> least;
    for (const auto& join : answers.joins) {
        if (!join) {
            part.lines = {reason_in(join.error())};
            return part;
        }
        if (!truth_at(*join, "allowed")) {
            part.lines.push_back(join->sentences.front());
        }
        if (const Quantity* difference = number_at(*join, "largest_voltage_difference")) {
            least = std::min(least.value_or(difference->value), difference->value);
        }
    }
    part.lines.push_back(fmt::format("Only {} to {}. Measure both at rest.",
                                     battery::defaults_of(scenario.packs.front().chemistry).name,
                                     battery::defaults_of(scenario.packs.front().chemistry).name));
    part.lines.push_back(least ? fmt::format("Plug in only when less than {:.1f} V apart.",
                                             std::floor(*least * 10.0 + 1e-9) / 10.0)
                               : "No limit of any part is known: level them first.");
    return part;
}

namespace {

// Rounded up to the next five: whoever reads it at night cannot ask back.
std::string frozen_words(scenario::Chemistry chemistry) {
    constexpr double hard_frost = -20.0;
    const auto least = battery::freezes_below(chemistry, units::celsius(hard_frost));
    return fmt::format(
        "Keep {} above {:.0f} %: emptier ones freeze at −20 °C (−4 °F). Never charge a frozen one.",
        battery::defaults_of(chemistry).name,
        least ? 5.0 * std::ceil(20.0 * least->value() - 1e-9) : 5.0);
}

}  // namespace

CardPart cold_part(const scenario::Scenario& scenario) {
    CardPart part{.name = "cold", .heading = "In the cold"};
    for (const auto& pack : scenario.packs) {
        const auto& usual = battery::defaults_of(pack.chemistry);
        const auto coldest = pack.coldest_charge ? pack.coldest_charge : usual.coldest_charge.value;
        const auto words =
            coldest ? fmt::format("Never charge {} at or below {} ({:.0f} °F): warm it first.",
                                  usual.name, units::show(*coldest),
                                  units::in_celsius(*coldest) * 1.8 + 32.0)
                    : frozen_words(pack.chemistry);
        if (std::ranges::find(part.lines, words) == part.lines.end()) {
            part.lines.push_back(words);
        }
    }
    if (!scenario.packs.empty()) {
        const auto at = [&scenario](double degrees) {
            return 100.0 * battery::capacity_factor(scenario.packs.front().chemistry,
                                                    units::celsius(degrees))
                               .factor;
        };
        part.lines.push_back(
            fmt::format("They give {:.0f} % at 0 °C, {:.0f} % at −10 °C.", at(0.0), at(-10.0)));
    }
    return part;
}

CardPart cautions_part(const CardAnswers& answers) {
    CardPart part{.name = "cautions", .heading = "Beware"};
    if (!answers.outage) {
        return part;
    }
    for (const Caution& caution : answers.outage->cautions) {
        part.lines.push_back(fmt::format("{}: {}", caution.hazard, caution.text));
        part.brief.push_back(fmt::format("{}: {}.", caution.hazard,
                                         caution.text.substr(0, caution.text.find_first_of(":."))));
    }
    return part;
}

}  // namespace answers
