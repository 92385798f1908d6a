// What the plugs and switches between the packs and the bus are rated for. They open nothing on a
// current above it: they overheat.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "outage/clock/banks.hpp"
#include "outage/course.hpp"
#include "unit/limits.hpp"
#include "units/quantities.hpp"

namespace outage {

// The lead of one [[pack]] whose packs are on the bus.
//   bank   whose packs they are, as Event::pack
struct RatedLead {
    PackLead lead;
    std::size_t bank = 0;
};

// Bank by bank; a bank of packs under several names has several.
[[nodiscard]] std::vector<RatedLead> rated_leads(const PackKinds& kinds);

// A plug or switch that more than its rating flows through.
struct HotPart {
    std::string pack;  // the name of the [[pack]]; empty: the way to the inverter
    unit::Flow flow = unit::Flow::out_of_pack;
    unit::Limit part;
    units::Current carries{};
};

// Each lead by the current of its own packs, in discharge and in charge.
[[nodiscard]] std::vector<HotPart> hot_parts(const std::vector<RatedLead>& leads,
                                             const std::vector<PackCurrents>& currents);

// Of the way to the inverter.
[[nodiscard]] std::vector<HotPart> hot_parts(const unit::Limits& main, units::Current carries);

}  // namespace outage
