#include "outage/room.hpp"

#include "solar/sun_setup.hpp"

namespace outage {

namespace {

using namespace units;

constexpr Temperature usual_room = celsius(18.0);

// Part of the way from there to the outside that an unheated room inside a house goes: ours.
constexpr double half_way = 0.5;

// Mean outside temperature of a local day: the file's hours, or the month's climate.
Temperature outside(const solar::SunSetup& setup, LocalTime midnight) {
    if (setup.hours)
        if (const auto known = solar::mean_temperature_on(*setup.hours, midnight)) return *known;
    // Either side of noon the day's turn cancels out.
    return solar::air_temperature(setup.site, midnight + 8.5 * hour);
}

}  // namespace

std::optional<PackWarmth> warmth_of_packs(const scenario::Scenario& scenario,
                                          const std::string& folder,
                                          scenario::Assumptions& assumptions) {
    const auto& outage = scenario.outage;
    if (!outage.battery_follows_room.value_or(false) || outage.battery_temperature)
        return std::nullopt;
    const bool heated = outage.room_temperature.has_value();
    const Temperature room = outage.room_temperature.value_or(usual_room);
    const double share = heated ? 0.0 : half_way;
    if (!heated)
        assumptions.push_back({"outage.room_temperature",
                               "not heated: half way from 18 degC to the day's mean outside",
                               "ours; a heated room's temperature wins"});
    std::optional<solar::SunSetup> setup;
    if (share > 0.0) {
        if (auto made = solar::sun_setup(scenario, folder)) setup = std::move(*made);
        if (!setup || !(setup->site.temperature || setup->hours))
            assumptions.push_back({"outage.battery_follows_room",
                                   "outside it is 15 degC all year: the place's temperatures are "
                                   "not known",
                                   "ours"});
    }
    PackWarmth warmth{.mean = room, .days = {}};
    TemperatureDifference sum{};
    for (auto midnight = midnight_before(outage.starts); midnight < outage.starts + outage.lasts;
         midnight = midnight + day) {
        const Temperature out = setup ? outside(*setup, midnight) : celsius(15.0);
        const TemperatureDifference drift = share * (out - room);
        warmth.days.push_back(room + drift);
        sum += drift;
    }
    if (!warmth.days.empty()) warmth.mean = room + sum / static_cast<double>(warmth.days.size());
    assumptions.push_back({"outage.battery_temperature",
                           fmt::format("that of the room, {:.0f} degC on average over the days",
                                       in_celsius(warmth.mean)),
                           "outage/method.md (10)"});
    return warmth;
}

std::vector<bool> days_too_cold_to_charge(const scenario::Scenario& scenario,
                                          const std::optional<PackWarmth>& warmth) {
    std::vector<bool> days;
    if (!warmth) return days;
    std::optional<Temperature> coldest;
    for (const auto& pack : scenario.packs)
        if (pack.chemistry == scenario::Chemistry::lifepo4) {
            const Temperature own = pack.coldest_charge.value_or(celsius(0.0));
            coldest = std::max(coldest.value_or(own), own);
        }
    for (const Temperature& of_day : warmth->days)
        days.push_back(coldest && of_day < *coldest);
    return days;
}

scenario::Findings cold_room(const std::vector<bool>& too_cold,
                             const std::optional<PackWarmth>& warmth) {
    const auto days = std::count(too_cold.begin(), too_cold.end(), true);
    if (days == 0 || !warmth) return {};
    const auto coldest = *std::min_element(warmth->days.begin(), warmth->days.end());
    return {{.severity = scenario::Severity::caution,
             .where = "outage.battery_follows_room",
             .text = fmt::format("on {} of {} days the room is too cold to charge LiFePO4 packs, "
                                 "down to {:.0f} degC: the sun then serves the loads alone",
                                 days, too_cold.size(), in_celsius(coldest)),
             .mend = "keep the packs in a warmer room, or warm them before they are charged",
             .source = "pack.coldest_charge, 0 degC unless given; outage/method.md (10)"}};
}

}  // namespace outage
