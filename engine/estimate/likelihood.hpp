// What a reading of the packs or of the sun says of one member: what it would have shown there, and
// how far the two may lie apart. method.md (12) to (15)
#pragma once

#include "battery/pack_model.hpp"
#include "estimate/lives.hpp"
#include "scenario/log.hpp"
#include "units/quantities.hpp"

namespace estimate {

// Errors of the meters' own, and how far the packs' table is off: each one value for the whole log,
// in standard deviations. A voltmeter that reads high does so each time.
//   meter     of the voltmeter
//   table     of the packs' rested voltages
//   display   of the packs' own displays
//   sun       of the controller's counter
struct OwnErrors {
    double meter = 0.0;
    double table = 0.0;
    double display = 0.0;
    double sun = 0.0;
};

// What a reading shows and a member expects, in volts, shares of the charge or watt-hours.
//   error        standard deviation of what is neither the member's nor the meter's own, above 0
//   as_product   it is rather a product of what is not known than a sum, and not below 0
struct Compared {
    double read = 0.0;
    double expected = 0.0;
    double error = 1.0;
    bool as_product = false;
};

// What the packs are, for readings of them.
struct PacksRead {
    scenario::Chemistry chemistry{};
    units::Voltage nominal{};
    units::Charge capacity{};  // of all, rated
};
[[nodiscard]] PacksRead packs_read(const outage::Ready& ready);

//   since_start   of the outage, until the reading
[[nodiscard]] Compared compared(const scenario::LogEntry& entry, const State& state,
                                const PacksRead& packs, const OwnErrors& own,
                                units::Duration since_start);

// How far what is read lies above what is expected, over the error; 0 where that is infinite.
[[nodiscard]] double distance(const Compared& compared);

// How far what is expected lies above what is read, over the error, as a linear form of what is not
// known meets it best: of a product by its logarithm, which is the same near to what is read.
[[nodiscard]] double expected_above(const Compared& compared);

// Logarithm, without its constant; 0 with an infinite error.
[[nodiscard]] double log_likelihood(const Compared& compared);

// Of a plug-in meter, of the logarithm of the mean draw that it tells: standard deviations.
//   own     the meter's, the same each time
//   fresh   of what the load did while it was metered
struct MeterError {
    double own = 0.0;
    double fresh = 0.0;
    [[nodiscard]] double both() const;
};

//   mean   that it shows
[[nodiscard]] MeterError meter_error(units::Power mean, double power_factor, bool compressor,
                                     units::Duration over, double day_deviation);

}  // namespace estimate
