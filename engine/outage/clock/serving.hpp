// The bank as it serves before anything has failed.
#pragma once

#include <span>

#include "battery/prepared.hpp"
#include "demand/demand.hpp"
#include "outage/unit.hpp"
#include "units/quantities.hpp"

namespace outage {

inline constexpr double counts_as_full = 0.005;  // of the rated charge; common practice, no source

// The bank as it is on a day of the unit; itself where the unit knows no days.
//   bank   0 is the first, then the others
[[nodiscard]] Bank on_day(const Unit& unit, std::size_t bank, std::size_t day);

// The least current that the protection or the fuse does not bear forever.
[[nodiscard]] std::optional<units::Current> first_limit(const Bank& bank);

// What may be offered to all packs of the bank before the fuse of one could carry more than it
// bears forever; infinite where that cannot be.
[[nodiscard]] units::Power charge_borne(const Bank& bank);

// Whether some step asks so much of the inverter that the fuse in front of it may open.
[[nodiscard]] bool main_fuse_may_open(const Unit& unit, std::span<const demand::DemandStep> steps);

// Limits of the packs themselves, of their fuses and of what may be used of them.
[[nodiscard]] battery::Stops protection(const Bank& bank);

// The voltage at the bus that ends a discharge: what the inverter needs there, where it serves, or
// the lowest that 12 V loads bear; zero where there is neither.
[[nodiscard]] units::Voltage cut_off_of(bool through_inverter, units::Voltage lowest,
                                        units::Voltage needs);

// One pack under these limits; through the inverter what that needs counts too.
//   lowest   what 12 V loads bear, at the bus
//   needs    InverterDraw::needs
[[nodiscard]] battery::Prepared serving(const Bank& bank, bool through_inverter,
                                        units::Voltage lowest, units::Voltage needs);

// Charge that may be taken out by choice and by temperature, when drawn slowly.
[[nodiscard]] units::Charge most_removed(const Bank& bank);

// Packs at or beyond their limit do not begin.
[[nodiscard]] bool starts_empty(const Bank& bank);

}  // namespace outage
