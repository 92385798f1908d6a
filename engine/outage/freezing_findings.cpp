#include "outage/freezing_findings.hpp"

#include <algorithm>
#include <optional>

#include <fmt/format.h>

#include "battery/freezing.hpp"
#include "units/clock.hpp"
#include "units/text.hpp"

namespace outage {

using namespace units;

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

}  // namespace

scenario::Findings freezing_findings(const InTheCold& packs, const Course& course,
                                     LocalTime starts) {
    scenario::Findings findings;
    if (packs.chemistry == scenario::Chemistry::lifepo4 || packs.warmth.empty()) return findings;
    const auto freezing = [&](StateOfCharge charge) {
        return *battery::freezing_point(packs.chemistry, charge);
    };
    const auto frozen = first(packs, course, [&](StateOfCharge charge, Temperature temperature) {
        return temperature <= freezing(charge);
    });
    if (frozen) {
        findings.push_back(
            {.severity = scenario::Severity::stop,
             .where = packs.where,
             .text = fmt::format(
                 "at {} the acid freezes below {} left, and {} is left from {} on: the case may "
                 "break and spill acid",
                 show(frozen->temperature),
                 show(battery::freezes_below(packs.chemistry, frozen->temperature)
                          .value_or(frozen->charge),
                      2),
                 show(frozen->charge, 2), show_clock(starts + frozen->at)),
             .mend = "keep the packs warmer or fuller; never charge or use a frozen one, thaw it "
                     "first",
             .source = "battery method.md (50), [Acid freezing]"});
        return findings;
    }
    constexpr StateOfCharge usual_least(0.60);  // common practice, no source
    const auto near = first(packs, course, [&](StateOfCharge charge, Temperature temperature) {
        return temperature < celsius(0.0) &&
               (charge < usual_least || temperature <= freezing(charge) + battery::near_freezing);
    });
    if (near)
        findings.push_back(
            {.severity = scenario::Severity::caution,
             .where = packs.where,
             .text = fmt::format("at {} and {} left from {} on the acid is near freezing ({})",
                                 show(near->temperature), show(near->charge, 2),
                                 show_clock(starts + near->at), show(freezing(near->charge))),
             .mend = "keep the packs warmer or fuller",
             .source = "battery method.md (50), [Acid freezing]"});
    return findings;
}

}  // namespace outage
