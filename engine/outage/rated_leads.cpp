#include "outage/rated_leads.hpp"

#include <algorithm>

#include "unit/path.hpp"

namespace outage {

namespace {

RatedLead rated(const scenario::Scenario& scenario, std::string_view feeds,
                const std::optional<units::Current>& connector) {
    scenario::Findings told_elsewhere;
    const auto path = unit::path_of(
        {.scenario = scenario, .feeds = feeds, .where = {}, .who = {}, .resistance_key = {}},
        {.connector = {.key = connector}}, told_elsewhere);
    RatedLead lead;
    if (path.connector) lead.connector = path.connector->value;
    if (path.contact) lead.contact = path.contact->value;
    return lead;
}

}  // namespace

std::vector<RatedLead> rated_leads(const scenario::Scenario& scenario) {
    std::vector<RatedLead> leads;
    for (const scenario::Pack& pack : scenario.packs)
        if (pack.count != 0) leads.push_back(rated(scenario, pack.name, pack.connector));
    return leads;
}

RatedLead rated_main(const scenario::Scenario& scenario) {
    return rated(scenario, "inverter", std::nullopt);
}

std::optional<units::Current> passed_by_all(const std::vector<RatedLead>& leads, bool alike,
                                            std::optional<units::Current> RatedLead::*part) {
    std::optional<units::Current> passed;
    for (const RatedLead& lead : leads) {
        const auto& rating = lead.*part;
        if (!rating && !alike) return std::nullopt;
        if (!rating) continue;
        passed = !passed ? *rating
                 : alike ? std::min(*passed, *rating)
                         : std::max(*passed, *rating);
    }
    return passed;
}

}  // namespace outage
