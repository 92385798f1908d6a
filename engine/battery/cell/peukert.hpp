// Peukert's law: only to turn two ratings into rows for the two wells, and as a line to compare
// with. It knows no recovery, so no run is computed with it. Source: [Peukert 1897].
#pragma once

#include "units/quantities.hpp"
#include "units/result.hpp"

namespace battery {

// A rating: this charge when emptied evenly over this time.
struct RatedCharge {
    units::Charge charge{};
    units::Duration over{};
    friend bool operator==(const RatedCharge&, const RatedCharge&) = default;
};

struct Peukert {
    RatedCharge rating;
    double exponent = 1.0;  // at least 1
};

// The law through two ratings.
//   fails  at "exponent" when the slower rating gives less charge than the faster one (no battery
//          does that: one of the two is misprinted), and when the two do not differ in current
[[nodiscard]] units::Result<Peukert> peukert_through(const RatedCharge& slow,
                                                     const RatedCharge& fast);

// From a 20 h capacity and a reserve time, which is minutes at 25 A ([BCI reserve]).
[[nodiscard]] units::Result<Peukert> peukert_from_reserve(units::Charge twenty_hour,
                                                          units::Duration reserve);

[[nodiscard]] units::Duration time_at(const Peukert& law, units::Current current);
[[nodiscard]] units::Charge charge_at(const Peukert& law, units::Current current);

}  // namespace battery
