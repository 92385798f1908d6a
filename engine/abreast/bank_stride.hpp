// One stride of many banks of packs that differ: a lane is an outage, the kinds of pack follow one
// after another. The quiet step of battery::Calm, which takes the packs of one bank abreast.
#pragma once

#include <array>
#include <cstddef>

#include "abreast/stride.hpp"
#include "battery/decay.hpp"

namespace abreast {

inline constexpr std::size_t most_kinds = 4;  // of pack in one bank

namespace lanes_detail {

// One kind of pack in every lane: what battery::Calm::Block holds of it, of one pack or, where it
// says so there, of all. Where a condition is kept it is 1, else 0.
struct KindLanes {
    alignas(64) Lane<double> count, per_count, resistance, inner, coulombic, width, bound;
    alignas(64) Lane<double> bound_gain, head_gain, rate, per_total, gives, takes, floor, empty;
    alignas(64) Lane<double> charging_empty, charging_rise, per_rated, knee, stands_above;
    alignas(64) Lane<double> counted_slope, at_zero, slope, low, high, bound_low, bound_high;
    alignas(64) Lane<double> least_removed, most_removed;
    alignas(64) Lane<double> removed, head, available, below;
    alignas(64) Lane<double> taking, held;              // in the mean of the last step
    alignas(64) Lane<double> tried_taking, tried_held;  // of the last that was tried

    // One lane in the place of another.
    void move(std::size_t from, std::size_t to);
};

//   ohms           of all packs together, at a moment, were all to give
//   cut_off        the highest voltage at the bus, or of a pack, that ends a discharge: through
//                  the inverter, and without it
//   limit_drop     the least voltage that a pack loses at a current that it does not bear
//   removed        from all packs, as the next
//   moved          change of a rested voltage in the last step tried, as Calm::moved
//   time, goes     of each lane for itself, where a stride is asked for it; 1: it goes, else 0
//   alone          became of the last step: BankStep
enum class BankStep {
    done,       // the lane has moved on
    disturbed,  // must be taken one by one: it stays as it is
    too_long,   // beyond the tolerance: it stays as it is
};

struct BankLanes {
    std::size_t kinds = 2;
    bool all_rules = true;  // some pack has two wells, or meets more than its resistance in charge
    double tolerance = 0.0;
    double fill_tolerance = 0.0;
    double drift_tolerance = 0.0;
    alignas(64) Lane<double> taken, charger, sun;
    alignas(64) Lane<double> absorption, any_takes, ohms, limit_drop;
    alignas(64) Lane<double> cut_off_with_inverter, cut_off_direct;
    alignas(64) Lane<double> removed, removed_above, filled_to;
    alignas(64) Lane<double> moved, time, goes;
    alignas(64) Lane<double> alone;
    std::array<KindLanes, most_kinds> of;

    [[nodiscard]] BankStep became(std::size_t lane) const {
        return static_cast<BankStep>(int(alone[lane]));
    }
    void move(std::size_t from, std::size_t to);
};

//   own_time  each lane that goes has its own; else all go, for this one
//   alike     of each kind, whether all lanes' head differences decay at one rate
//   decayed   of each kind over the time, where they do
struct BankStretch {
    double time = 0.0;  // s
    bool own_time = false;
    bool through_inverter = false;
    std::array<bool, most_kinds> alike;
    std::array<battery::Decay, most_kinds> decayed;
};

// Where nothing is met on the way a lane comes to the same bits as its bank alone; else it stays as
// it is and is marked.
void bank_stride(Width width, BankLanes& lanes, const BankStretch& stretch, std::size_t count);

}  // namespace lanes_detail

}  // namespace abreast
