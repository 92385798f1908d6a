// What the plugs and switches between the packs and the bus are rated for. They open nothing on a
// current above it: they overheat.
#pragma once

#include <optional>
#include <vector>

#include "scenario/scenario.hpp"
#include "units/quantities.hpp"

namespace outage {

// The weakest of the lead of one [[pack]], by circuit or key, as stamped; absent where none is
// told.
struct RatedLead {
    std::optional<units::Current> connector;
    std::optional<units::Current> contact;  // of a switch
};

// Of each [[pack]] with a count above 0, in the order of the file.
[[nodiscard]] std::vector<RatedLead> rated_leads(const scenario::Scenario& scenario);

// The weakest of the way from the bus to the inverter.
[[nodiscard]] RatedLead rated_main(const scenario::Scenario& scenario);

// The rating that is passed whichever pack gives so much: of alike packs the least, of packs that
// differ the largest; nothing where one has no such part.
[[nodiscard]] std::optional<units::Current> passed_by_all(
    const std::vector<RatedLead>& leads, bool alike,
    std::optional<units::Current> RatedLead::*part);

}  // namespace outage
