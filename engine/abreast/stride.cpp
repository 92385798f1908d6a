#include "abreast/stride.hpp"

#include <cmath>

#include "abreast/stride_lanes.hpp"

namespace abreast {

namespace lanes_detail {

Build build_of(const Prepared& pack) {
    return {.two_wells = pack.bound > 0.0,
            .one_efficiency = std::isinf(pack.coulombic_edge[1]),
            .resists = pack.resists};
}

void stride(Width width, const LaneWells& from, LaneWells& to, State& state, const Thresholds& near,
            const Prepared& pack, const Segment& segment, std::size_t count, bool may_charge) {
    const Build build = build_of(pack);
    auto* const chosen = width == Width::eight  ? stride_for<step::Eight>(build, may_charge)
                         : width == Width::four ? stride_for<step::Four>(build, may_charge)
                                                : stride_for<step::Two>(build, may_charge);
    chosen(from, to, state, near, pack, segment, count);
}

void own_stride(Width width, const LaneWells& from, LaneWells& to, State& state,
                const Thresholds& near, const OwnPacks& packs, const OwnStretch& stretch,
                std::size_t count, bool may_charge) {
    auto* const chosen =
        width == Width::eight  ? own_stride_for<step::Eight>(packs.build, may_charge)
        : width == Width::four ? own_stride_for<step::Four>(packs.build, may_charge)
                               : own_stride_for<step::Two>(packs.build, may_charge);
    chosen(from, to, state, near, packs, stretch, count);
}

}  // namespace lanes_detail

// The narrowest is what every x86-64 has; elsewhere it is the only one that is offered.
std::vector<Width> widths_here() {
    std::vector<Width> widths{Width::two};
#if defined(__x86_64__)
    if (__builtin_cpu_supports("x86-64-v3")) widths.push_back(Width::four);
    if (__builtin_cpu_supports("x86-64-v4")) widths.push_back(Width::eight);
#endif
    return widths;
}

}  // namespace abreast
