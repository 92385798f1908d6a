// The bank as it serves before anything has failed.
#pragma once

#include "battery/prepared.hpp"
#include "outage/unit.hpp"
#include "units/quantities.hpp"

namespace outage {

inline constexpr double counts_as_full = 0.005;  // of the rated charge; common practice, no source

// What opens first: the protection or the fuse.
[[nodiscard]] inline std::optional<units::Current> first_limit(const Bank& bank) {
    if (bank.fuse && (!bank.current_limit || *bank.fuse < *bank.current_limit)) return bank.fuse;
    return bank.current_limit;
}
[[nodiscard]] inline bool fuse_is_first(const Bank& bank) {
    return bank.fuse && (!bank.current_limit || *bank.fuse < *bank.current_limit);
}

// Limits of the packs themselves, of their fuses and of what may be used of them.
[[nodiscard]] battery::Stops protection(const Bank& bank);

// One pack under these limits; through the inverter its low-voltage cut-off counts too.
[[nodiscard]] battery::Prepared serving(const Unit& unit, bool through_inverter);

// Charge that may be taken out by choice and by temperature, when drawn slowly.
[[nodiscard]] units::Charge most_removed(const Bank& bank);

// Packs at or beyond their limit do not begin.
[[nodiscard]] bool starts_empty(const Bank& bank);

}  // namespace outage
