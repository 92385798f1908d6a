#include "outage/told/freezing_findings.hpp"

#include <algorithm>
#include <optional>

#include "battery/cell/freezing.hpp"
#include "units/said.hpp"

namespace outage {

using namespace units;
using words::Said;
using words::said;

namespace {

struct Moment {
    Duration at{};
    StateOfCharge charge;
    Temperature temperature;
};

// Where the course first meets a condition that once met stays met as the charge falls: between
// the ends of an interval the charge runs straight.
template <class Met>
std::optional<Moment> first(const InTheCold& packs, const Course& course, Met met) {
    if (course.trace.empty()) return std::nullopt;
    StateOfCharge before = course.trace.front().charge;
    std::size_t today = 0;
    for (const Interval& interval : course.intervals) {
        const auto& warmth = packs.warmth;
        while (today + 1 < warmth.size() && warmth[today + 1].from <= interval.from)
            ++today;
        const Temperature now = warmth[today].temperature;
        const auto at_part = [&](double part) {
            return StateOfCharge(before.value() +
                                 part * (interval.charge.value() - before.value()));
        };
        if (met(before, now)) return Moment{interval.from, before, now};
        if (met(interval.charge, now)) {
            double not_yet = 0.0;
            double met_by = 1.0;
            for (int halving = 0; halving < 30; ++halving) {
                const double middle = 0.5 * (not_yet + met_by);
                (met(at_part(middle), now) ? met_by : not_yet) = middle;
            }
            return Moment{interval.from + met_by * (interval.to - interval.from), at_part(met_by),
                          now};
        }
        before = interval.charge;
    }
    return std::nullopt;
}

Said source() {
    return said<"battery method.md (50), [Acid freezing]">();
}

words::Moment on_the_clock(LocalTime time) {
    return moment(time, words::Moment::Form::weekday_date_clock);
}

Temperature freezing_at(const InTheCold& packs, StateOfCharge charge) {
    return *battery::freezing_point(packs.chemistry, charge);
}

scenario::Finding frozen_from(const InTheCold& packs, const Moment& frozen, LocalTime starts) {
    const auto below =
        battery::freezes_below(packs.chemistry, frozen.temperature).value_or(frozen.charge);
    return {.severity = scenario::Severity::stop,
            .where = packs.where,
            .text = said<"at {temperature} the acid freezes below {limit} left, and {charge} is "
                         "left from {time} on: the case may break and spill acid">(
                frozen.temperature, amount(below, 2), amount(frozen.charge, 2),
                on_the_clock(starts + frozen.at)),
            .mend = said<"keep the packs warmer or fuller; never charge or use a frozen one, thaw "
                         "it first">(),
            .source = source()};
}

scenario::Finding near_from(const InTheCold& packs, const Moment& near, LocalTime starts) {
    return {
        .severity = scenario::Severity::caution,
        .where = packs.where,
        .text = said<"at {temperature} and {charge} left from {time} on the acid is near freezing "
                     "({freezing_point})">(near.temperature, amount(near.charge, 2),
                                           on_the_clock(starts + near.at),
                                           freezing_at(packs, near.charge)),
        .mend = said<"keep the packs warmer or fuller">(),
        .source = source()};
}

}  // namespace

scenario::Findings freezing_findings(const InTheCold& packs, const Course& course,
                                     LocalTime starts) {
    if (packs.chemistry == scenario::Chemistry::lifepo4 || packs.warmth.empty()) return {};
    const auto frozen = first(packs, course, [&](StateOfCharge charge, Temperature temperature) {
        return temperature <= freezing_at(packs, charge);
    });
    if (frozen) return {frozen_from(packs, *frozen, starts)};
    constexpr StateOfCharge usual_least(0.60);  // common practice, no source
    const auto near = first(packs, course, [&](StateOfCharge charge, Temperature temperature) {
        return temperature < celsius(0.0) &&
               (charge < usual_least ||
                temperature <= freezing_at(packs, charge) + battery::near_freezing);
    });
    if (near) return {near_from(packs, *near, starts)};
    return {};
}

}  // namespace outage
