// The charge of a pack as two wells joined by a valve: one feeds the terminals, the other refills
// it slowly. Current is positive out of the pack. Source: [Manwell 1993]; method.md (1) to (9).
#pragma once

#include <optional>

#include "battery/decay.hpp"
#include "units/quantities.hpp"

namespace battery {

// What does not change while a pack is used.
//   total      charge of both wells when full, more than any rated capacity
//   available  width of the available well as a part of the whole, above 0 to 1; 1 is one well
//   rate       how fast a head difference dies away (k of [Jongerden 2009], not k' of a valve);
//              0 is two wells that never exchange
struct Kinetics {
    units::Charge total{};
    units::Share available{1.0};
    units::Frequency rate{};
    friend bool operator==(const Kinetics&, const Kinetics&) = default;
};

// What changes. The wells are full at {0, 0}.
//   removed          charge taken out of both wells together
//   head_difference  how much higher the bound well stands, each well's charge divided by its
//                    width; positive after discharge, negative after charge; 0 with one well
struct Wells {
    units::Charge removed{};
    units::Charge head_difference{};
    friend bool operator==(const Wells&, const Wells&) = default;
};

namespace two_well_detail {
// 1/c, or 0 with one well, so that its head difference stays 0
inline double head_gain(const Kinetics& kinetics) {
    return kinetics.available.value() < 1.0 ? 1.0 / kinetics.available.value() : 0.0;
}
}  // namespace two_well_detail

// Wells after a time at one current, exactly. method.md (3)
[[nodiscard]] inline Wells after(const Kinetics& kinetics, const Wells& wells,
                                 units::Current current, units::Duration time) {
    const Decay heads = decay(kinetics.rate * time);
    return {
        .removed = wells.removed + current * time,
        .head_difference = wells.head_difference * heads.left +
                           current * time * (two_well_detail::head_gain(kinetics) * heads.once)};
}

// Fill of the available well, 0 empty to 1 full; the terminals feel this one. method.md (2)
[[nodiscard]] inline units::StateOfCharge available_fill(const Kinetics& kinetics,
                                                         const Wells& wells) {
    const double bound = kinetics.available.complement().value();
    return units::StateOfCharge(1.0 -
                                (wells.removed + bound * wells.head_difference) / kinetics.total);
}

// Fill of the bound well; the same as the available one when there is one well.
[[nodiscard]] inline units::StateOfCharge bound_fill(const Kinetics& kinetics, const Wells& wells) {
    return units::StateOfCharge(
        1.0 -
        (wells.removed - kinetics.available.value() * wells.head_difference) / kinetics.total);
}

// Fill of both wells together: what a rested pack would show.
[[nodiscard]] inline units::StateOfCharge fill(const Kinetics& kinetics, const Wells& wells) {
    return units::StateOfCharge(1.0 - wells.removed / kinetics.total);
}

[[nodiscard]] inline units::Charge available_charge(const Kinetics& kinetics, const Wells& wells) {
    return kinetics.available.value() * available_fill(kinetics, wells).value() * kinetics.total;
}

[[nodiscard]] inline units::Charge bound_charge(const Kinetics& kinetics, const Wells& wells) {
    return kinetics.available.complement().value() * bound_fill(kinetics, wells).value() *
           kinetics.total;
}

// The wells that hold these charges; with one well, all of it is available.
[[nodiscard]] Wells wells_holding(const Kinetics& kinetics, units::Charge available,
                                  units::Charge bound);

// A pack at rest long enough for both wells to stand level.
[[nodiscard]] inline Wells rested(const Kinetics& kinetics, units::StateOfCharge fill) {
    return {.removed = fill.complement().value() * kinetics.total, .head_difference = {}};
}

// In all that follows `reachable` is the part of the charge that the temperature lets out: the
// pack is empty when its available well has fallen to 1 - reachable. Nothing is lost: what is
// locked in is there again when the pack is warm. method.md (5)

// Time at one current until the available well is empty; zero when it is so already, nothing
// when the current does not discharge.
[[nodiscard]] std::optional<units::Duration> time_to_empty(
    const Kinetics& kinetics, const Wells& wells, units::Current current,
    units::Share reachable = units::Share(1.0));

// Time at one charging (negative) current until the available well is full and the current must
// taper; zero when it is so already, nothing when the current does not charge.
[[nodiscard]] std::optional<units::Duration> time_to_full(const Kinetics& kinetics,
                                                          const Wells& wells,
                                                          units::Current current);

// Largest current that can be held for the time before the available well is empty; not negative.
[[nodiscard]] units::Current largest_discharge(const Kinetics& kinetics, const Wells& wells,
                                               units::Duration time,
                                               units::Share reachable = units::Share(1.0));

// Largest charging current, as a magnitude, that the available well takes for the time; 0 when
// full.
[[nodiscard]] units::Current largest_charge(const Kinetics& kinetics, const Wells& wells,
                                            units::Duration time);

// Charge a full pack gives when emptied in exactly this time at one current. method.md (7)
[[nodiscard]] units::Charge capacity_over(const Kinetics& kinetics, units::Duration time);

// The available well is full and kept full while the bound one fills: the current dies away.
//   current   into the wells at the end, negative; accepted: charge taken in over the time
struct Taper {
    Wells wells;
    units::Current current{};
    units::Charge accepted{};
};
[[nodiscard]] Taper taper(const Kinetics& kinetics, const Wells& wells, units::Duration time);

}  // namespace battery
