#include "abreast/bank_stride.hpp"

#include "abreast/bank_stride_lanes.hpp"

namespace abreast::lanes_detail {

void KindLanes::move(std::size_t from, std::size_t to) {
    for (auto* figure :
         {&count, &per_count,    &resistance,    &inner,          &coulombic,     &width,
          &bound, &bound_gain,   &head_gain,     &rate,           &per_total,     &gives,
          &takes, &floor,        &empty,         &charging_empty, &charging_rise, &per_rated,
          &knee,  &stands_above, &counted_slope, &at_zero,        &slope,         &low,
          &high,  &bound_low,    &bound_high,    &least_removed,  &most_removed,  &removed,
          &head,  &available,    &below,         &taking,         &held})
        (*figure)[to] = (*figure)[from];
}

void BankLanes::move(std::size_t from, std::size_t to) {
    for (auto* figure :
         {&taken, &charger, &sun, &absorption, &any_takes, &ohms, &limit_drop,
          &cut_off_with_inverter, &cut_off_direct, &removed, &removed_above, &filled_to, &alone})
        (*figure)[to] = (*figure)[from];
    for (std::size_t k = 0; k < kinds; ++k)
        of[k].move(from, to);
}

void bank_stride(Width width, BankLanes& lanes, const BankStretch& stretch, std::size_t count) {
    auto* const chosen =
        width == Width::eight  ? bank_stride_for<step::Eight>(lanes.kinds, lanes.all_rules)
        : width == Width::four ? bank_stride_for<step::Four>(lanes.kinds, lanes.all_rules)
                               : bank_stride_for<step::Two>(lanes.kinds, lanes.all_rules);
    chosen(lanes, stretch, count);
}

}  // namespace abreast::lanes_detail
