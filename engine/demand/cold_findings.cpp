#include "demand/cold_findings.hpp"

#include <algorithm>
#include <cmath>

#include "units/said.hpp"
#include "units/text.hpp"

namespace demand {

namespace {

using scenario::Finding;
using scenario::Findings;
using scenario::KeepsCold;
using scenario::Severity;
using units::Duration;
using units::Energy;
using units::Power;
using words::Said;
using words::said;

Said method() {
    return said<"demand method.md (5) to (10)">();
}

Said of_load(const PlannedLoad& load) {
    return said<"load {load}">(load.name);
}

// Shut: a refrigerator, and a freezer that is half full; [USDA food].
Duration food_clock(KeepsCold kind) {
    return (kind == KeepsCold::freezer ? 24.0 : 4.0) * units::hour;
}

Said clock_in_words(KeepsCold kind) {
    return kind == KeepsCold::freezer
               ? said<"shut, a full freezer keeps food frozen for 48 h, a half-full one for 24 h">()
               : said<
                     "shut, a refrigerator keeps food for 4 h; what was above {temperature} for "
                     "more than 2 h goes">(units::amount(units::celsius(40.0 / 9.0), 1));  // 40 °F
}

Duration length(const OffStretch& stretch) {
    return stretch.off.until - stretch.off.from;
}

// Mean of all items of the load always on in this room.
Power mean_of(const PlannedLoad& load) {
    const ColdPace& pace = load.cold->plan.paces[1];
    return static_cast<double>(load.count) *
           (pace.recovering.value() / std::max(1.0, pace.keeper.capacity.value())) *
           load.power.likely;
}

words::Amount inside_at(const PlannedLoad& load, Warmed warmed) {
    return units::amount(inside(load.cold->plan, warmed), 2);
}

words::Moment on_the_clock(units::LocalTime time) {
    return units::moment(time, words::Moment::Form::weekday_date_clock);
}

// Of the inverter itself, while it is off.
Energy idle_saved(const Demand& demand, const PlannedLoad& load,
                  const std::optional<inverter::Model>& inverter) {
    if (!inverter || load.from != scenario::Outlet::ac) {
        return {};
    }
    Spans off;
    for (const OffStretch& stretch : load.cold->course.stretches) {
        off.push_back(stretch.off);
    }
    return inverter->losses.idle * total(without(off, demand.inverter_on));
}

// How often and for how long it is off, and what the food clock makes of the longest time.
void find_hours_off(const scenario::Scenario& scenario, const PlannedLoad& load,
                    Findings& findings) {
    const ColdCourse& course = load.cold->course;
    const OffStretch& longest = *std::ranges::max_element(course.stretches, {}, length);
    Duration off{};
    for (const OffStretch& stretch : course.stretches) {
        off += length(stretch);
    }
    const KeepsCold kind = load.cold->plan.kind;
    const bool too_long = length(longest) > food_clock(kind);
    findings.push_back(
        {.severity = too_long ? Severity::caution : Severity::note,
         .where = of_load(load),
         .text = words::said_of<
             "is off once, for {off}; then the food clock starts: {rule}. That is from {from} to "
             "{until}: about {temperature} inside",
             "is off {n} times, for {off} in all; each time the food clock starts: {rule}. The "
             "longest is {longest}, from {from} to {until}: about {temperature} inside">(
             course.stretches.size(), off, clock_in_words(kind), length(longest),
             on_the_clock(scenario.outage.starts + longest.off.from),
             on_the_clock(scenario.outage.starts + longest.off.until),
             inside_at(load, longest.after)),
         .mend = too_long ? said<"switch it off for shorter times, or leave it on; a thermometer "
                                 "inside tells what may be kept">()
                          : said<"a thermometer inside tells more than the clock">(),
         .source = said<"{source}">("[USDA food]")});
}

// What being off saves, and what it does not, for the cold is made up for.
void find_little_saved(const Demand& demand, const PlannedLoad& load,
                       const std::optional<inverter::Model>& inverter, Findings& findings) {
    const ColdCourse& course = load.cold->course;
    const ColdKeeper& keeper = load.cold->plan.paces[1].keeper;
    const Power mean = mean_of(load);
    const Energy leak = mean * course.warm_time;
    const Energy owed = mean * (course.at_end.value() * keeper.time_constant);
    const Energy idle = idle_saved(demand, load, inverter);
    const Energy whole = mean * demand.lasts;
    findings.push_back(
        {.severity = Severity::note,
         .where = of_load(load),
         .text = owed > 1.0 * units::watt_hour
                     ? said<"the cold that is missed is made up for when it runs again: being off "
                            "saves {idle} of the inverter's own draw and {leak} of leak, out of "
                            "{whole} always on; {owed} are owed when the outage ends">(idle, leak,
                                                                                       whole, owed)
                     : said<"the cold that is missed is made up for when it runs again: being off "
                            "saves {idle} of the inverter's own draw and {leak} of leak, out of "
                            "{whole} always on">(idle, leak, whole),
         .mend = said<"count on the inverter's own draw alone">(),
         .source = method()});
}

// Hours in which it does not get cold again.
void find_too_few_hours(const PlannedLoad& load, Findings& findings) {
    const ColdCourse& course = load.cold->course;
    const double capacity = load.cold->plan.paces[1].keeper.capacity.value();
    const auto lost = std::ranges::count_if(course.stretches, [](const OffStretch& stretch) {
        return !std::isfinite(stretch.made_up_in / units::second);
    });
    const bool last_only =
        lost == 1 && !std::isfinite(course.stretches.back().made_up_in / units::second);
    if (capacity <= 1.0 || lost == 0 || last_only) {
        return;
    }
    findings.push_back(
        {.severity = Severity::caution,
         .where = of_load(load),
         .text = said<"does not get cold again in the hours it has: up to about {temperature} "
                      "inside. What it seems to save is food that warms">(
             inside_at(load, course.warmest)),
         .mend = said<"give it {time} a day or more">((24.0 / capacity) * units::hour),
         .source = method()});
}

void find_room_too_warm(const PlannedLoad& load, Findings& findings) {
    const ColdPlan& plan = load.cold->plan;
    const double likely = plan.paces[1].keeper.capacity.value();
    const double least = plan.paces[2].keeper.capacity.value();
    if (least >= 1.0) {
        return;
    }
    const bool surely = likely < 1.0;
    const words::Amount inside = inside_at(load, Warmed(1.0 - (surely ? likely : least)));
    findings.push_back(
        {.severity = surely ? Severity::caution : Severity::note,
         .where = of_load(load),
         .text = surely ? said<"in a room of {room} it is to run all the time and still not keep "
                               "cold: towards {temperature} inside, and the food clock runs">(
                              plan.room, inside)
                        : said<"in a room of {room} it may have to run all the time and still not "
                               "keep cold: towards {temperature} inside, and the food clock runs">(
                              plan.room, inside),
         .mend = said<"put it in a cooler place, keep it shut and full, or move the food">(),
         .source = method()});
}

// The packs are told to be warmer than the room that was assumed.
void find_other_room(const scenario::Scenario& scenario, const scenario::Load& written,
                     const PlannedLoad& load, Findings& findings) {
    const auto& packs = scenario.outage.battery_temperature;
    if (written.room || scenario.outage.room_temperature || !packs ||
        *packs - load.cold->plan.room < 5.0 * units::kelvin) {
        return;
    }
    findings.push_back(
        {.severity = Severity::note,
         .where = of_load(load),
         .text = said<"is reckoned in a room of {room}, and the packs are at {packs}">(
             load.cold->plan.room, *packs),
         .mend = said<"give room = \"{room}\" if it is as warm there">(units::print(*packs)),
         .source = method()});
}

}  // namespace

Findings cold_findings(const scenario::Scenario& scenario, const Demand& demand,
                       const std::optional<inverter::Model>& inverter) {
    Findings findings;
    for (std::size_t i = 0; i < demand.loads.size(); ++i) {
        const PlannedLoad& load = demand.loads[i];
        if (!load.cold) {
            continue;
        }
        find_room_too_warm(load, findings);
        find_other_room(scenario, scenario.loads[i], load, findings);
        if (!load.cold->course.stretches.empty() && !load.may_run.empty()) {
            find_hours_off(scenario, load, findings);
            find_little_saved(demand, load, inverter, findings);
            find_too_few_hours(load, findings);
        }
    }
    return findings;
}

}  // namespace demand
