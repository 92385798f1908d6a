#include "outage/rated_leads.hpp"

namespace outage {

namespace {

void add_hot(const unit::Limits& limits, units::Current carries, const HotPart& about,
             std::vector<HotPart>& hot) {
    for (const unit::Limit& limit : limits) {
        const bool heats =
            limit.by == unit::Limiter::connector || limit.by == unit::Limiter::contact;
        if (!heats || !(carries > limit.most.value)) continue;
        HotPart part = about;
        part.part = limit;
        part.carries = carries;
        hot.push_back(std::move(part));
    }
}

}  // namespace

std::vector<RatedLead> rated_leads(const PackKinds& kinds) {
    std::vector<RatedLead> leads;
    std::size_t bank = 0;
    for (const PackKind& kind : kinds) {
        if (kind.count < 1) continue;
        for (const PackLead& lead : kind.leads)
            leads.push_back({.lead = lead, .bank = bank});
        ++bank;
    }
    return leads;
}

std::vector<HotPart> hot_parts(const std::vector<RatedLead>& leads,
                               const std::vector<PackCurrents>& currents) {
    using unit::Flow;
    std::vector<HotPart> hot;
    for (const auto& [lead, bank] : leads) {
        if (bank >= currents.size()) continue;
        const HotPart about{.pack = lead.name};
        add_hot(lead.gives, currents[bank].given, about, hot);
        HotPart taking = about;
        taking.flow = Flow::into_pack;
        add_hot(lead.takes, currents[bank].taken, taking, hot);
    }
    return hot;
}

std::vector<HotPart> hot_parts(const unit::Limits& main, units::Current carries) {
    std::vector<HotPart> hot;
    add_hot(main, carries, {}, hot);
    return hot;
}

}  // namespace outage
