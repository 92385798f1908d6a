// Contacts: what they may carry when warm, what they take from the power, and what flows when packs
// that differ are plugged together.
#pragma once

#include <optional>
#include <string>

#include "scenario/circuit.hpp"
#include "units/quantities.hpp"
#include "wiring/tables.hpp"

namespace wiring {

// The rating a connector is held to, and whose it is.
struct ConnectorRating {
    units::Current rating{};
    words::Said by;  // "its CSA listing, the lower of two"
    words::Said source;
    Reliability reliability{};
};

// The lowest of what the builder states and what its listings allow, unless one listing is chosen.
[[nodiscard]] ConnectorRating rating_of(const scenario::Connector& connector,
                                        const ConnectorRow* row);

// Share of a rating given at 25 degC that contacts keep; method.md (9). 0 where it is as hot around
// them as they may become; never above 1.
[[nodiscard]] double contact_factor(units::Temperature hottest, units::Temperature around);

struct PlugIn {
    units::Current current{};             // from the first into the second; negative the other way
    units::Voltage largest_difference{};  // that keeps within the given current
};

// Two packs at rest, joined; method.md (11).
//   takes   resistances above 0
[[nodiscard]] PlugIn plugged_together(units::Voltage first, units::Resistance of_first,
                                      units::Voltage second, units::Resistance of_second,
                                      units::Current allowed);

}  // namespace wiring
