#include "outage/told/telling.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "outage/told/account.hpp"

namespace outage {

using namespace units;

Telling::Telling(Keep keep, Duration midnight, std::vector<SunOfDay>* days)
    : keep_(keep), midnight_(midnight), days_(days) {
    course_.limited_by = LimitedBy::none;
    course_.lowest_voltage = std::numeric_limits<Voltage>::infinity();
}

Event* Telling::note_at(Duration when, EventKind kind, const Figures& figures) {
    if (!keep_.trace) return nullptr;
    course_.events.push_back({.at = when,
                              .kind = kind,
                              .power = figures.power,
                              .at_most = figures.at_most,
                              .current = figures.current,
                              .pack = figures.pack});
    return &course_.events.back();
}

std::size_t Telling::from(std::size_t part, LimitedBy why) {
    if (keep_.trace) course_.out.push_back({part, now_, now_, why});
    return course_.out.size() - 1;
}

void Telling::until(std::size_t told) {
    if (keep_.trace && told < course_.out.size()) course_.out[told].to = now_;
}

void Telling::fails(LimitedBy cause) {
    if (failed_) return;
    failed_ = true;
    course_.lasts = now_;
    course_.limited_by = cause;
}

void Telling::account(const Leg& leg, const Ledger& flows) {
    add(course_.ledger, flows);
    if (leg.time > Duration{})
        course_.lowest_voltage = std::min(course_.lowest_voltage, leg.voltage);
    if (flows.unserved > Energy{}) course_.without += leg.time;
    if (days_ != nullptr && flows.sun_offered + flows.sun_clipped > Energy{}) {
        auto& day = day_of(now_ + 0.5 * leg.time);
        day.offered += flows.sun_offered;
        day.taken += flows.sun_used + flows.sun_stored;
        day.unused += flows.sun_unused;
        day.clipped += flows.sun_clipped;
    }
}

SunOfDay& Telling::day_of(Duration when) {
    const double days = std::floor((when - midnight_) / units::day) + 1.0;
    const auto index = static_cast<std::size_t>(std::max(0.0, days));
    if (days_->size() <= index) days_->resize(index + 1);
    return (*days_)[index];
}

}  // namespace outage
