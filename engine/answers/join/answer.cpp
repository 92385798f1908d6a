#include "answers/join/answer.hpp"

#include <cmath>

#include <fmt/format.h>

#include "answers/checked.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using handling::Joining;
using handling::Joins;

std::string_view word_for(Joins direction) {
    switch (direction) {
        case Joins::pack_charges_unit:
            return "pack_charges_unit";
        case Joins::unit_charges_pack:
            return "unit_charges_pack";
        case Joins::level:
            break;
    }
    return "level";
}

std::string flow(const Joining& joining) {
    const auto current = in_words(abs(joining.current), 2);
    switch (joining.direction) {
        case Joins::pack_charges_unit:
            return fmt::format("{} flow at first, out of {} into {}", current, joining.pack,
                               joining.onto);
        case Joins::unit_charges_pack:
            return fmt::format("{} flow at first, out of {} into {}", current, joining.onto,
                               joining.pack);
        case Joins::level:
            break;
    }
    return "their voltages are level, and next to nothing flows";
}

std::string first_sentence(const Joining& joining) {
    if (!joining.known) {
        return fmt::format(
            "Whether {} may be plugged onto {} cannot be told: measure both at "
            "rest first.",
            joining.pack, joining.onto);
    }
    return joining.allowed ? fmt::format("Nothing found against plugging {} onto {} now: {}.",
                                         joining.pack, joining.onto, flow(joining))
           : joining.direction == Joins::level
               ? fmt::format("Do not plug {} onto {} now, level as their voltages are: see below.",
                             joining.pack, joining.onto)
               : fmt::format("Do not plug {} onto {} now: {}.", joining.pack, joining.onto,
                             flow(joining));
}

std::string second_sentence(const Joining& joining) {
    if (!joining.largest_difference) {
        return "No limit of any part is known, so none could be held against it.";
    }
    if (!joining.known) {
        return fmt::format(
            "Up to {} between the voltages at rest keeps every part within its "
            "limit (the first to reach it: {}, {}).",
            in_volts(*joining.largest_difference), joining.weakest,
            in_words(*joining.weakest_limit, 2));
    }
    return fmt::format(
        "The voltages at rest are {} apart; up to {} keeps every part within its "
        "limit (the first to reach it: {}, {}).",
        in_volts(abs(joining.pack_voltage - joining.unit_voltage)),
        in_volts(*joining.largest_difference), joining.weakest,
        in_words(*joining.weakest_limit, 2));
}

// A pack that must not be charged takes nothing in the reckoning, whatever would flow in truth.
bool without_course(const Joining& joining) {
    return joining.direction != Joins::level && joining.moved == units::Charge{};
}

std::string third_sentence(const Joining& joining) {
    if (!joining.known || joining.direction == Joins::level || without_course(joining)) {
        return "";
    }
    if (!joining.settles_in) {
        return fmt::format(
            "The current falls as the voltages meet, but more than 1 A still flows "
            "after two days; {} move until then.",
            in_words(abs(joining.moved), 2));
    }
    return fmt::format(
        "The current falls as the voltages meet: below 1 A after {}, when {} have "
        "moved.",
        length_in_words(*joining.settles_in), in_words(abs(joining.moved), 2));
}

Series course(const Joining& joining) {
    std::vector<double> at;
    std::vector<double> current;
    std::vector<double> bus;
    for (const auto& point : joining.course) {
        at.push_back(std::round(point.at / units::minute));
        current.push_back(point.current / units::ampere);
        bus.push_back(point.bus / units::volt);
    }
    return {.name = "course",
            .title = "After plugging in",
            .columns = {{"at", "after", "min", at},
                        {"current", "out of the joining pack", "A", current},
                        {"bus", "bus", "V", bus}}};
}

std::vector<WorkingRow> working(const Joining& joining) {
    const std::string method = "battery method.md (37)";
    return {{"Joining", "voltage of " + joining.pack + " at rest", shown(joining.pack_voltage, 4),
             "battery method.md (14)", "the scenario file"},
            {"Joining", "voltage of " + joining.onto + " at rest", shown(joining.unit_voltage, 4),
             "battery method.md (26)", "the scenario file"},
            {"Joining", "path from one to the other", shown(joining.path), method,
             joining.resistance_assumed ? "typical, see the assumptions" : "the scenario file"},
            {"Joining", "current at the first moment", shown(joining.current), method, ""},
            {"Joining", "charge that moves", shown(joining.moved), "battery method.md (31)", ""}};
}

}  // namespace

Answer join_answer(const scenario::Scenario& scenario, const Joining& joining) {
    Answer answer = checked_answer("join", scenario, joining.findings, joining.assumptions);
    for (const auto& sentence :
         {first_sentence(joining), second_sentence(joining), third_sentence(joining)}) {
        if (!sentence.empty()) {
            answer.sentences.push_back(sentence);
        }
    }
    const Absent no_limit{"no limit of any part is known"};
    const bool untold = without_course(joining);
    const Absent not_settled{untold ? "it must not be plugged in: no course was worked out"
                                    : "more than 1 A still flows after two days"};
    const Absent unknown{"a voltage at rest is not known: measure both"};
    const auto if_known = [&](Value value) { return joining.known ? value : Value{unknown}; };
    answer.values = {
        {"allowed", "may be plugged in, by this reckoning", {joining.allowed}},
        {"current", "current at first", if_known(value_of(abs(joining.current)))},
        {"direction", "direction", if_known({std::string(word_for(joining.direction))})},
        {"voltage_difference", "voltages at rest apart",
         if_known(value_of(abs(joining.pack_voltage - joining.unit_voltage)))},
        {"largest_voltage_difference", "largest that keeps the limits",
         joining.largest_difference ? value_of(*joining.largest_difference) : Value{no_limit}},
        {"weakest", "first to reach its limit",
         joining.weakest.empty() ? Value{no_limit} : Value{joining.weakest}},
        {"settles_in", "below 1 A after",
         if_known(joining.settles_in && !untold ? value_of(*joining.settles_in)
                                                : Value{not_settled})},
        {"moved", "charge that moves",
         if_known(untold ? Value{not_settled} : value_of(abs(joining.moved)))},
        {"pack_voltage", "voltage of the joining pack",
         if_known(value_of(joining.pack_voltage, 4))},
        {"unit_voltage", "voltage of the unit", if_known(value_of(joining.unit_voltage, 4))},
        {"pack_charge", "charge of the joining pack", if_known(value_of(joining.pack_charge, 2))},
        {"unit_charge", "charge of the unit", if_known(value_of(joining.unit_charge, 2))},
        {"in_parallel",
         "packs in parallel then",
         {static_cast<std::int64_t>(joining.in_parallel)}}};
    if (!joining.known) {
        return answer;
    }
    answer.working = working(joining);
    answer.series = {course(joining)};
    return answer;
}

}  // namespace answers
