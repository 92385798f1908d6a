#include "support/made_plan.hpp"

#include <chrono>

namespace made {

namespace {

using namespace units;
using outage::EventKind;

constexpr Duration starts_at = 18.0 * hour;
constexpr int hours_of_outage = 96;

bool sun_is_up(int hour_of_day) {
    return hour_of_day >= 9 && hour_of_day < 15;
}

}  // namespace

scenario::Scenario scenario() {
    scenario::Scenario result;
    result.title = "Ice storm, four nights";
    result.outage.starts =
        local_time(std::chrono::year_month_day(std::chrono::year(2026), std::chrono::January,
                                               std::chrono::day(14)),
                   starts_at);
    result.outage.lasts = 4.0 * day;
    result.outage.battery_temperature = celsius(5.0);
    scenario::Pack pack;
    pack.name = "main";
    pack.capacity = 300.0 * ampere_hour;
    result.packs = {pack};
    scenario::Inverter inverter;
    inverter.continuous = 2400.0 * watt;
    result.inverter = inverter;
    scenario::Panel panel;
    panel.power = 100.0 * watt;
    panel.count = 3;
    result.panels = {panel};
    scenario::Load refrigerator;
    refrigerator.name = "refrigerator";
    refrigerator.priority = 2;
    scenario::Load breathing_aid;
    breathing_aid.name = "breathing aid";
    breathing_aid.priority = 1;
    breathing_aid.medical = true;
    scenario::Load lights;
    lights.name = "cabin lights";
    lights.from = scenario::Outlet::twelve_volt;
    result.loads = {refrigerator, breathing_aid, lights};
    return result;
}

outage::Course course(Energy stored, Energy capacity) {
    outage::Course course;
    auto& ledger = course.ledger;
    ledger.stored_at_start = stored;
    course.survives = true;
    course.lasts = static_cast<double>(hours_of_outage) * hour;
    course.lowest_voltage = 11.9 * volt;
    course.highest_pack_current = 14.0 * ampere;
    for (int step = 0; step < hours_of_outage; ++step) {
        const Duration at = static_cast<double>(step) * hour;
        const int hour_of_day = (18 + step) % 24;
        if (hour_of_day == 9) {
            course.events.push_back({.at = at, .kind = EventKind::sunrise});
        }
        if (hour_of_day == 15) {
            course.events.push_back({.at = at, .kind = EventKind::sunset});
        }
        const Power sun = (sun_is_up(hour_of_day) ? 300.0 : 0.0) * watt;
        const Energy room = capacity - stored + 111.0 * watt_hour;
        const Energy taken = std::min(sun * hour, room);
        const bool served = stored + taken >= 111.0 * watt_hour;
        if (!served && course.survives) {
            course.survives = false;
            course.lasts = at;
            course.limited_by = outage::LimitedBy::charge;
            course.events.push_back({.at = at, .kind = EventKind::packs_empty});
        }
        const outage::TracePoint before{.at = at,
                                        .stored = stored,
                                        .charge = StateOfCharge(stored / capacity),
                                        .voltage = 13.0 * volt,
                                        .current = 8.0 * ampere,
                                        .wanted = 100.0 * watt,
                                        .served = served ? 100.0 * watt : Power{},
                                        .sun_offered = sun,
                                        .sun_taken = taken / hour};
        const Energy loads = (served ? 100.0 : 0.0) * watt_hour;
        const Energy loss = (served ? 11.0 : 0.0) * watt_hour;
        stored += taken - loads - loss;
        ledger.loads += loads;
        ledger.inverter_loss += loss;
        ledger.idle += 0.5 * loss;
        ledger.sun_offered += sun * hour;
        ledger.sun_stored += taken;
        ledger.sun_unused += sun * hour - taken;
        ledger.unserved += 100.0 * watt_hour - loads;
        course.without += served ? Duration{} : hour;
        outage::Interval interval{.from = at, .to = at + hour};
        interval.flows.stored_at_start = stored - (taken - loads - loss);
        interval.flows.stored_at_end = stored;
        interval.flows.loads = loads;
        interval.flows.unserved = 100.0 * watt_hour - loads;
        interval.flows.inverter_loss = loss;
        interval.flows.sun_offered = sun * hour;
        interval.flows.sun_stored = taken;
        interval.flows.sun_unused = sun * hour - taken;
        interval.charge = StateOfCharge(stored / capacity);
        interval.voltage = 13.0 * volt;
        course.intervals.push_back(interval);
        outage::TracePoint after = before;
        after.at = at + hour;
        after.stored = stored;
        after.charge = StateOfCharge(stored / capacity);
        course.trace.push_back(before);
        course.trace.push_back(after);
    }
    ledger.stored_at_end = stored;
    return course;
}

namespace {

outage::Plan plan_of(double low, double likely, double high) {
    const Energy capacity = 12000.0 * watt_hour;
    outage::Plan plan;
    plan.likely = course(likely * watt_hour, capacity);
    plan.earliest = course(low * watt_hour, capacity);
    plan.latest = course(high * watt_hour, capacity);
    plan.uncertain = low != high;
    plan.packs = 1;
    plan.inverter_idle = 18.0 * watt;
    plan.usable_at_start = 0.9 * likely * watt_hour;
    outage::LoadUse use;
    use.name = "refrigerator";
    use.running_low = 55.0 * watt;
    use.running = 61.0 * watt;
    use.running_high = 67.0 * watt;
    use.wanted = 5900.0 * watt_hour;
    use.per_day = 1475.0 * watt_hour;
    use.on_time = 96.0 * hour;
    use.from_what = "metered 1.9 kWh over 31 h";
    plan.loads = {use};
    for (int day_number = 1; day_number <= 4; ++day_number) {
        plan.sun.push_back({.day = day_number,
                            .offered = 1800.0 * watt_hour,
                            .taken = 1800.0 * watt_hour,
                            .clipped = {},
                            .unused = {}});
    }
    plan.assumptions = {{.where = "pack[0].resistance",
                         .text = "4 mohm, as LiFePO4 packs of this size have",
                         .source = "common practice, no source"}};
    return plan;
}

}  // namespace

outage::Plan plan(bool uncertain) {
    return uncertain ? plan_of(2400.0, 3000.0, 3600.0) : plan_of(3000.0, 3000.0, 3000.0);
}

sizing::Fan fan() {
    const Energy capacity = 12000.0 * watt_hour;
    sizing::Fan fan;
    const std::array stored{2400.0, 2700.0, 3000.0, 3300.0, 3600.0};
    for (std::size_t share = 0; share < stored.size(); ++share) {
        const auto made = course(stored[share] * watt_hour, capacity);
        fan.stored[share].push_back(made.ledger.stored_at_start);
        for (const auto& interval : made.intervals)
            fan.stored[share].push_back(interval.flows.stored_at_end);
        if (share > 0) continue;
        fan.at.push_back({});
        for (const auto& interval : made.intervals)
            fan.at.push_back(interval.to);
    }
    return fan;
}

outage::Plan lasting_plan() {
    return plan_of(10000.0, 10000.0, 10000.0);
}

}  // namespace made
