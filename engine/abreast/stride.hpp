// One stride of many lanes, as wide as the processor at hand allows.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "abreast/segments.hpp"
#include "battery/advance.hpp"
#include "battery/decay.hpp"
#include "battery/prepared.hpp"

namespace abreast {

inline constexpr int lanes = 64;

// Lanes that the processor's registers take at once. Every width gives the same bits.
enum class Width { two, four, eight };

// Those this processor has, narrowest first.
[[nodiscard]] std::vector<Width> widths_here();

namespace lanes_detail {

using battery::Prepared;

template <class T>
using Lane = std::array<T, lanes>;

// What the number of packs changes in a pack's own step, lane by lane; see battery::Prepared.
struct Thresholds {
    alignas(64) Lane<double> near_voltage;
    alignas(64) Lane<double> near_per_watt;
    alignas(64) Lane<double> limit_voltage;
    alignas(64) Lane<double> limit_per_watt;

    void set(std::size_t lane, const Prepared& pack) {
        near_voltage[lane] = pack.near_voltage;
        near_per_watt[lane] = pack.near_per_watt;
        limit_voltage[lane] = pack.limit_voltage;
        limit_per_watt[lane] = pack.limit_per_watt;
    }
};

// The wells of every lane. A stride reads one and writes another: a store that depends on a
// condition would keep narrow registers from being used.
struct LaneWells {
    alignas(64) Lane<double> removed;
    alignas(64) Lane<double> head;
    alignas(64) Lane<double> available;
};

// What else a stride needs of every lane, with the piece of the rested voltage each well stands on.
struct State {
    alignas(64) Lane<double> at_zero;  // the available well's piece
    alignas(64) Lane<double> slope;
    alignas(64) Lane<double> tolerance;
    alignas(64) Lane<double> available_low;
    alignas(64) Lane<double> available_high;
    alignas(64) Lane<double> bound_low;
    alignas(64) Lane<double> bound_high;
    alignas(64) Lane<double> count;
    alignas(64) Lane<double> resistance;
    alignas(64) Lane<double> sun;
    alignas(64) Lane<double> alone;  // 1: this step must be taken one by one, else 0
    Thresholds with_inverter;
    Thresholds direct;
    // efficiency of charging while the removed charge is above least_removed, at most most_removed
    alignas(64) Lane<double> coulombic;
    alignas(64) Lane<double> least_removed;
    alignas(64) Lane<double> most_removed;
};

// What a stride reads of the make of a pack to choose its rules.
struct Build {
    bool two_wells = true;
    bool one_efficiency = false;  // of charging, at every fill
    bool resists = true;          // charging meets more than the inner resistance

    friend bool operator==(const Build&, const Build&) = default;
};
[[nodiscard]] Build build_of(const Prepared& pack);

// What battery::Prepared and Segment are where each lane has packs and a demand of its own; one of
// them is set from the pack of its lane.
struct OwnPacks {
    Build build;  // of all
    double drift_tolerance = 0.0;
    alignas(64) Lane<double> taken, charger;
    alignas(64) Lane<double> per_total, bound, bound_gain, width, head_gain, rate;
    alignas(64) Lane<double> inner, floor, absorption, empty, removed_above, filled_to;
    alignas(64) Lane<double> charging_empty, charging_rise, per_rated;
    alignas(64) Lane<double> charging_knee, charging_beyond, as_rested_to, everywhere;

    void set(std::size_t lane, const Prepared& pack);
};

struct OwnStretch {
    double time = 0.0;       // s
    bool alike = true;       // the head differences of all lanes decay at one rate
    battery::Decay decayed;  // over the time, where they do
};

// One stride of all lanes where nothing is met on the way: the same operations in the same order as
// battery::try_for and battery::undisturbed, so the same bits; else the lane keeps its state and is
// marked.
//   may_charge   whether any lane is offered more than is taken
void stride(Width width, const LaneWells& from, LaneWells& to, State& state, const Thresholds& near,
            const Prepared& pack, const Segment& segment, std::size_t count, bool may_charge);

// The same of lanes whose packs and demand are their own.
void own_stride(Width width, const LaneWells& from, LaneWells& to, State& state,
                const Thresholds& near, const OwnPacks& packs, const OwnStretch& stretch,
                std::size_t count, bool may_charge);

}  // namespace lanes_detail

}  // namespace abreast
