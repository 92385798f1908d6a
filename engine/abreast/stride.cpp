#include "abreast/stride.hpp"

#include "abreast/stride_lanes.hpp"

namespace abreast {

namespace lanes_detail {

void stride(Width width, const LaneWells& from, LaneWells& to, State& state, const Thresholds& near,
            const Prepared& pack, const Segment& segment, std::size_t count, bool may_charge) {
    auto* const chosen = width == Width::eight  ? stride_for<step::Eight>(pack, may_charge)
                         : width == Width::four ? stride_for<step::Four>(pack, may_charge)
                                                : stride_for<step::Two>(pack, may_charge);
    chosen(from, to, state, near, pack, segment, count);
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
