#include "abreast/bank_stride.hpp"

#include "abreast/bank_stride_lanes.hpp"

namespace abreast::lanes_detail {

void bank_stride(Width width, BankLanes& lanes, const BankStretch& stretch, std::size_t count) {
    auto* const chosen =
        width == Width::eight  ? bank_stride_for<step::Eight>(lanes.kinds, lanes.all_rules)
        : width == Width::four ? bank_stride_for<step::Four>(lanes.kinds, lanes.all_rules)
                               : bank_stride_for<step::Two>(lanes.kinds, lanes.all_rules);
    chosen(lanes, stretch, count);
}

}  // namespace abreast::lanes_detail
