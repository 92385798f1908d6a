// What a card in the lid is made of, by hand.
#pragma once

#include "questions/card.hpp"
#include "support/made_plan.hpp"

namespace made {

inline units::Errors not_known() {
    return {{.where = "pack", .found = "there is no pack", .remedy = "add one"}};
}

inline sizing::RationStep step_of(double of, double half, double count_on) {
    return {.figures = {.of = units::Probability(of),
                        .low = units::Probability(of - 0.02),
                        .high = units::Probability(of + 0.02),
                        .half = half * units::hour,
                        .goal = units::Probability(0.9),
                        .count_on = count_on * units::hour}};
}

// Everything on lasts 28.7 h nine times in ten; without the router 30 h.
inline sizing::Ration ration() {
    sizing::Ration ration{.all_on = step_of(0.123, 38.9, 28.7)};
    auto step = step_of(0.309, 48.2, 30.0);
    step.off = {{.name = "router", .spared = 220.0 * units::watt_hour}};
    step.spared = 220.0 * units::watt_hour;
    ration.steps = {step};
    ration.kept = {{.name = "breathing machine", .spared = 200.0 * units::watt_hour}};
    ration.vital = true;
    return ration;
}

// From `low` to `high` of the charge, by which it lasts `least` to `most` hours.
inline questions::CardReading reading(double volts, double low, double high, double least,
                                      double most) {
    questions::GaugeFound found{
        .scenario = {},
        .reading = {},
        .charge = {.low = units::StateOfCharge(low), .high = units::StateOfCharge(high)},
        .from_now = questions::FromNow{}};
    found.from_now->lasts_low = least * units::hour;
    found.from_now->lasts_high = most * units::hour;
    found.from_now->survives_high = most > 90.0;
    return {.reads = volts * units::volt, .found = std::move(found)};
}

inline questions::JoinFound join(double largest_difference) {
    questions::JoinFound found{.scenario = {}, .joining = {.pack = "spare", .onto = "main"}};
    found.joining.largest_difference = largest_difference * units::volt;
    found.joining.weakest = "the fuse of pack spare";
    found.joining.weakest_limit = 30.0 * units::ampere;
    return found;
}

// Wiring and storage could not be answered.
inline questions::CardFound card() {
    return {
        .outage = questions::OutageFound{.scenario = scenario(), .plan = lasting_plan()},
        .ration = ration(),
        .wiring = units::fail(not_known()),
        .storage = units::fail(not_known()),
        .joins = {join(0.58), join(0.29)},
        .readings = {reading(13.4, 0.66, 0.986, 22.9, 37.2), reading(13.2, 0.27, 0.82, 3.9, 96.0)}};
}

}  // namespace made
