#include "demand/cold.hpp"

#include <algorithm>
#include <cmath>

#include "units/said.hpp"

namespace demand {

namespace {

using scenario::KeepsCold;
using units::Duration;
using units::Temperature;
using words::Said;
using words::said;

Said practice() {
    return said<"common practice, no source">();
}

constexpr Temperature usual_room = units::celsius(22.0);

// Power at full pace over the mean, where no cycle tells it: a refrigerator runs about a third of
// the time [DOE appliances].
constexpr double usual_capacity = 3.0;

Said by_its_name(KeepsCold kind) {
    switch (kind) {
        case KeepsCold::freezer:
            return said<"a freezer, by its name or its compressor's motor">();
        case KeepsCold::refrigerator:
            return said<
                "a refrigerator without a freezer, by its name or its compressor's "
                "motor">();
        case KeepsCold::refrigerator_freezer:
        case KeepsCold::nothing:
            break;
    }
    return said<"a refrigerator with a freezer, by its name or its compressor's motor">();
}

Temperature room_of(const scenario::Load& load, const scenario::Outage& outage,
                    const std::string& where, scenario::Assumptions& assumed) {
    if (load.room) {
        return *load.room;
    }
    if (outage.room_temperature) {
        return *outage.room_temperature;
    }
    assumed.push_back(
        {where + ".room", said<"it is in a room of {temperature}">(usual_room), practice()});
    return usual_room;
}

// In which its figure holds.
Temperature reference_of(const scenario::Load& load, const std::string& where,
                         scenario::Assumptions& assumed) {
    if (std::holds_alternative<scenario::YearlyLabel>(*load.draw)) {
        return room_of_labels();
    }
    const auto* metered = std::get_if<scenario::MeteredUse>(&*load.draw);
    if (metered && metered->room) {
        return *metered->room;
    }
    if (metered) {
        assumed.push_back({where + ".metered.room",
                           said<"the meter ran in a room of {temperature}">(usual_room),
                           practice()});
    }
    return usual_room;
}

// Its figure is a mean, or it says what part of the time it is on.
bool mean_is_known(const scenario::Load& load) {
    return load.runs || std::holds_alternative<scenario::MeteredUse>(*load.draw) ||
           std::holds_alternative<scenario::YearlyLabel>(*load.draw);
}

// A compressor of one speed runs longer; one whose speed varies, or of which only the mean is
// known, draws more.
ColdPace pace(const scenario::Load& load, KeepsCold kind, DrawRatio by_room) {
    const double ratio = std::max(by_room.value(), 1e-3);
    const double duty = load.runs ? double(load.runs->on / load.runs->every) : 1.0;
    const bool varies =
        !load.runs || (load.motor && load.motor->kind == scenario::MotorKind::electronic);
    if (!varies) {
        const double raised = duty * ratio;
        return {.keeper = {time_constant_of(kind), DrawRatio(1.0 / raised)},
                .on = std::min(1.0, raised) * load.runs->every,
                .steady = DrawRatio(1.0),
                .recovering = DrawRatio(1.0)};
    }
    const bool scales = mean_is_known(load);
    return {.keeper = {time_constant_of(kind), DrawRatio(usual_capacity / ratio)},
            .on = load.runs ? load.runs->on : Duration(),
            .steady = DrawRatio(scales ? std::min(ratio, usual_capacity) : 1.0),
            .recovering = DrawRatio(scales ? usual_capacity * duty : 1.0)};
}

void tell_of_room(const units::Range<DrawRatio>& by_room, Temperature room, Temperature reference,
                  const std::string& where, scenario::Assumptions& assumed) {
    if (std::abs(by_room.likely().value() - 1.0) < 1e-3) {
        return;
    }
    assumed.push_back(
        {where + ".room",
         said<"in a room of {room} it draws {times} times what it does at {reference} ({low} to "
              "{high})">(room, words::Number{.value = by_room.likely().value()}, reference,
                         words::Number{.value = by_room.low().value()},
                         words::Number{.value = by_room.high().value()}),
         said<"demand method.md (5), (6); [ICC 301]">()});
}

}  // namespace

std::optional<ColdPlan> cold_plan(const scenario::Load& load, const scenario::Outage& outage,
                                  const std::string& where, scenario::Assumptions& assumed) {
    const KeepsCold kind = keeps_cold(load);
    if (kind == KeepsCold::nothing || !load.draw) {
        return std::nullopt;
    }
    if (!load.keeps_cold) {
        assumed.push_back({where + ".keeps_cold", by_its_name(kind), practice()});
    }
    const Temperature room = room_of(load, outage, where, assumed);
    units::Range<DrawRatio> by_room = units::exactly(DrawRatio(1.0));
    if (mean_is_known(load)) {
        const Temperature reference = reference_of(load, where, assumed);
        by_room = draw_by_room(kind, room, reference);
        tell_of_room(by_room, room, reference, where, assumed);
    }
    return ColdPlan{.kind = kind,
                    .room = room,
                    .paces = {pace(load, kind, by_room.low()), pace(load, kind, by_room.likely()),
                              pace(load, kind, by_room.high())}};
}

Temperature inside(const ColdPlan& plan, Warmed warmed) {
    const Temperature set_point = set_point_of(plan.kind);
    const Temperature room = std::max(plan.room, set_point);
    return set_point + warmed.value() * (room - set_point);
}

}  // namespace demand
