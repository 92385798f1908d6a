// What the packs of outages side by side have come to at moments on their way.
#pragma once

#include <algorithm>
#include <span>
#include <vector>

#include "abreast/own.hpp"
#include "battery/cell/two_well.hpp"
#include "units/quantities.hpp"

namespace abreast {

// Of one outage at one moment.
//   wells       of one pack of each bank, in the order of the unit
//   sun_taken   since the outage began
struct Seen {
    std::vector<battery::Wells> wells;
    units::Energy sun_taken{};
};

// run_own, watched.
//   at      moments, in rising order: each is a change of its own
//   gives   by outage, by moment; those after an outage has failed, or is run by the clock, are
//           left out
[[nodiscard]] std::vector<std::vector<Seen>> run_watched(std::span<const Outage> outages,
                                                         units::Duration lasts,
                                                         units::Duration midnight,
                                                         std::span<const units::Duration> at,
                                                         std::span<OwnEnding> endings);

namespace lanes_detail {

// Of the outages of one block.
//   seen   one an outage
struct Watched {
    std::span<const units::Duration> at;
    std::vector<std::vector<Seen>> seen;
    std::size_t next = 0;  // of the moments

    // How many moments have come by this time.
    [[nodiscard]] bool is_due(double now) const {
        constexpr double as_good_as_now = 1e-6;  // s
        return next < at.size() && at[next] / units::second <= now + as_good_as_now;
    }
};

// J of the sun that loads and packs took; sun and charger have equal parts in it, each by what it
// offers, as outage::flows_of has it.
//   sun, charger, taken   W at the bus
//   accepted              J by all packs
[[nodiscard]] inline double taken_of_sun(double sun, double charger, double taken, double time,
                                         double accepted) {
    const double all = sun + charger;
    if (!(all > 0.0)) return 0.0;
    return sun / all * (std::min(all, taken) * time + accepted);
}

// Whether packs might be offered more than they may take: at half the voltage that charging ends at
// no pack is ever charged.
//   over_and_above   W that nothing else takes
//   most             A that all packs may be charged with
//   absorption       V that charging ends at
[[nodiscard]] inline bool leaves_some(double over_and_above, double most, double absorption) {
    return over_and_above > most * absorption / 2.0;
}

}  // namespace lanes_detail

}  // namespace abreast
