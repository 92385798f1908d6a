#include "answers/join/answer.hpp"

#include <cmath>

#include "answers/checked.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using handling::Joining;
using handling::Joins;
using words::Said;
using words::said;

Code code_of(const Joining& joining) {
    const Said into = said<"from {pack} into {onto}">(joining.pack, joining.onto);
    switch (joining.direction) {
        case Joins::pack_charges_unit:
            return {"pack_charges_unit", into};
        case Joins::unit_charges_pack:
            return {"unit_charges_pack",
                    said<"from {pack} into {onto}">(joining.onto, joining.pack)};
        case Joins::level:
            break;
    }
    return {"level", said<"none, the voltages are level">()};
}

Said refused(const Joining& joining) {
    const Said current = in_words(abs(joining.current), 2);
    switch (joining.direction) {
        case Joins::pack_charges_unit:
            return said<
                "Do not plug {pack} onto {onto} now: at first {current} would flow from {pack} "
                "into {onto}.">(joining.pack, joining.onto, current);
        case Joins::unit_charges_pack:
            return said<
                "Do not plug {pack} onto {onto} now: at first {current} would flow from {onto} "
                "into {pack}.">(joining.pack, joining.onto, current);
        case Joins::level:
            break;
    }
    return said<
        "Do not plug {pack} onto {onto} now, although their voltages are level: the findings say "
        "why.">(joining.pack, joining.onto);
}

Said not_refused(const Joining& joining) {
    const Said current = in_words(abs(joining.current), 2);
    switch (joining.direction) {
        case Joins::pack_charges_unit:
            return said<
                "Nothing was found against plugging {pack} onto {onto} now: at first {current} "
                "will flow from {pack} into {onto}.">(joining.pack, joining.onto, current);
        case Joins::unit_charges_pack:
            return said<
                "Nothing was found against plugging {pack} onto {onto} now: at first {current} "
                "will flow from {onto} into {pack}.">(joining.pack, joining.onto, current);
        case Joins::level:
            break;
    }
    return said<
        "Nothing was found against plugging {pack} onto {onto} now: their voltages are level, and "
        "next to nothing will flow.">(joining.pack, joining.onto);
}

Said first_sentence(const Joining& joining) {
    if (!joining.known)
        return said<
            "Whether {pack} may be plugged onto {onto} is not known: measure both at rest first.">(
            joining.pack, joining.onto);
    return joining.allowed ? not_refused(joining) : refused(joining);
}

// How far apart the voltages may be, and what sets that.
Said largest_difference(const Joining& joining) {
    if (!(*joining.largest_difference > units::Voltage{}))
        return said<"No difference is small enough for {weakest}.">(joining.weakest);
    return said<
        "Up to {most} apart, every part stays within its limit; the first to reach it is {weakest} "
        "({limit}).">(in_volts(*joining.largest_difference), joining.weakest,
                      in_words(*joining.weakest_limit, 2));
}

std::vector<Said> of_the_voltages(const Joining& joining) {
    if (!joining.largest_difference)
        return {said<"No limit of any part is known, so the current was held against none.">()};
    if (!joining.known) return {largest_difference(joining)};
    return {said<"The voltages at rest are {apart} apart.">(
                in_volts(abs(joining.pack_voltage - joining.unit_voltage))),
            largest_difference(joining)};
}

// A pack that must not be charged takes nothing in the reckoning, whatever would flow in truth.
bool without_course(const Joining& joining) {
    return joining.direction != Joins::level && joining.moved == units::Charge{};
}

Said of_the_course(const Joining& joining) {
    if (!joining.known || joining.direction == Joins::level || without_course(joining)) return {};
    const Said moved = in_words(abs(joining.moved), 2);
    if (!joining.settles_in)
        return said<
            "The current falls as the voltages meet, but after two days it is still above {settled}"
            "; by then {charge} has moved.">(handling::settled, moved);
    return said<
        "The current falls as the voltages meet: it is below {settled} after {time}, when {charge} "
        "has moved.">(handling::settled, length_in_words(*joining.settles_in), moved);
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
            .title = said<"After plugging in">(),
            .columns = {{"at", said<"{?duration}after">(), "min", at},
                        {"current", said<"out of the joining pack">(), "A", current},
                        {"bus", said<"bus">(), "V", bus}}};
}

std::vector<WorkingRow> working(const Joining& joining) {
    const std::string method = "battery method.md (37)";
    const Said section = said<"Joining">();
    const Said file = said<"the scenario file">();
    return {
        {section, said<"voltage of {pack} at rest">(joining.pack), shown(joining.pack_voltage, 4),
         "battery method.md (14)", file},
        {section, said<"voltage of {pack} at rest">(joining.onto), shown(joining.unit_voltage, 4),
         "battery method.md (26)", file},
        {section, said<"path from one to the other">(), shown(joining.path), method,
         joining.resistance_assumed ? said<"typical, see the assumptions">() : file},
        {section, said<"current at the first moment">(), shown(joining.current), method, {}},
        {section, said<"charge that moves">(), shown(joining.moved), "battery method.md (31)", {}}};
}

Members values_of(const Joining& joining) {
    const Absent no_limit{said<"no limit of any part is known">()};
    const bool untold = without_course(joining);
    const Absent not_settled{
        untold ? said<"it must not be plugged in: no course was worked out">()
               : said<"the current is still above {settled} after two days">(handling::settled)};
    const Absent unknown{said<"a voltage at rest is not known: measure both">()};
    const auto if_known = [&](Value value) { return joining.known ? value : Value{unknown}; };
    return {
        {"allowed", said<"may be plugged in, by this reckoning">(), {joining.allowed}},
        {"current", said<"current at first">(), if_known(value_of(abs(joining.current)))},
        {"direction", said<"direction of the current">(), if_known({code_of(joining)})},
        {"voltage_difference", said<"voltages at rest apart">(),
         if_known(value_of(abs(joining.pack_voltage - joining.unit_voltage)))},
        {"largest_voltage_difference", said<"largest that keeps the limits">(),
         joining.largest_difference ? value_of(*joining.largest_difference) : Value{no_limit}},
        {"weakest", said<"first to reach its limit">(),
         joining.weakest.empty() ? Value{no_limit} : Value{joining.weakest}},
        {"settles_in", said<"below {current} after">(handling::settled),
         if_known(joining.settles_in && !untold ? value_of(*joining.settles_in)
                                                : Value{not_settled})},
        {"moved", said<"charge that moves">(),
         if_known(untold ? Value{not_settled} : value_of(abs(joining.moved)))},
        {"pack_voltage", said<"voltage of the joining pack">(),
         if_known(value_of(joining.pack_voltage, 4))},
        {"unit_voltage", said<"voltage of the unit">(),
         if_known(value_of(joining.unit_voltage, 4))},
        {"pack_charge", said<"charge of the joining pack">(),
         if_known(value_of(joining.pack_charge, 2))},
        {"unit_charge", said<"charge of the unit">(), if_known(value_of(joining.unit_charge, 2))},
        {"in_parallel",
         said<"packs in parallel then">(),
         {static_cast<std::int64_t>(joining.in_parallel)}}};
}

}  // namespace

Answer join_answer(const scenario::Scenario& scenario, const Joining& joining) {
    Answer answer = checked_answer("join", scenario, joining.findings, joining.assumptions);
    answer.sentences = {first_sentence(joining), words::together(of_the_voltages(joining))};
    if (auto course = of_the_course(joining); !course.empty())
        answer.sentences.push_back(std::move(course));
    answer.values = values_of(joining);
    if (!joining.known) {
        return answer;
    }
    answer.working = working(joining);
    answer.series = {course(joining)};
    return answer;
}

}  // namespace answers
