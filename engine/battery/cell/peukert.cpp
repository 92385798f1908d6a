#include "battery/cell/peukert.hpp"

#include <cmath>

#include "words/said.hpp"

namespace battery {

using namespace units;
using words::said;

namespace {
Current current_of(const RatedCharge& rating) {
    return rating.charge / rating.over;
}
}  // namespace

Result<Peukert> peukert_through(const RatedCharge& slow, const RatedCharge& fast) {
    const bool positive = slow.charge > Charge{} && fast.charge > Charge{} &&
                          slow.over > Duration{} && fast.over > Duration{};
    if (!positive || !(slow.over > fast.over) || !(current_of(fast) > current_of(slow)))
        return fail(Error{.where = "exponent",
                          .found = said<"the two ratings are not at two different currents">(),
                          .remedy = said<"give two ratings of which the faster one draws more">()});
    const double exponent =
        std::log(slow.over / fast.over) / std::log(current_of(fast) / current_of(slow));
    if (exponent < 1.0)
        return fail(Error{
            .where = "exponent",
            .found = said<"the exponent comes out at {exponent}, below 1: the battery would give "
                          "more charge the harder it is drawn">(words::with_decimals(exponent, 3)),
            .remedy = said<"check both ratings; one of them is misprinted or belongs to another "
                           "battery">()});
    return Peukert{.rating = slow, .exponent = exponent};
}

Result<Peukert> peukert_from_reserve(Charge twenty_hour, Duration reserve) {
    constexpr Current reserve_current = 25.0 * ampere;  // [BCI reserve]
    return peukert_through({.charge = twenty_hour, .over = 20.0 * hour},
                           {.charge = reserve_current * reserve, .over = reserve});
}

Duration time_at(const Peukert& law, Current current) {
    return law.rating.over * std::pow(current_of(law.rating) / current, law.exponent);
}

Charge charge_at(const Peukert& law, Current current) {
    return current * time_at(law, current);
}

}  // namespace battery
