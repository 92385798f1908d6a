#include "outage/room.hpp"

#include "solar/sun_setup.hpp"

namespace outage {

namespace {

using namespace units;

constexpr Temperature usual_room = celsius(18.0);

// Part of the way from there to the outside that an unheated room inside a house goes: ours.
constexpr double half_way = 0.5;
// In which e-th part of the way is left. [House tau 2012]; insulated for little heat 90 to 200 h, [House tau range].
constexpr Duration cools_in = 16.6 * hour;

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
    if (!heated)
        assumptions.push_back({"outage.room_temperature",
                               "not heated: cools from 18 degC half way to the day's mean outside, "
                               "in 16.6 h by the e-th part",
                               "[House tau 2012] and ours; a heated room's temperature wins"});
    std::optional<solar::SunSetup> setup;
    if (!heated) {
        if (auto made = solar::sun_setup(scenario, folder)) setup = std::move(*made);
        if (!setup || !(setup->site.temperature || setup->hours))
            assumptions.push_back({"outage.battery_follows_room",
                                   "outside it is 15 degC all year: the place's temperatures are "
                                   "not known",
                                   "ours"});
    }
    PackWarmth warmth{.mean = room, .days = {}};
    TemperatureDifference sum{};
    Duration time{};
    Temperature now = room;
    for (auto midnight = midnight_before(outage.starts); midnight < outage.starts + outage.lasts;
         midnight = midnight + day) {
        const auto begins = std::max(midnight, outage.starts);
        const Duration lasts = std::min(midnight + day, outage.starts + outage.lasts) - begins;
        const Temperature out = setup ? outside(*setup, midnight) : celsius(15.0);
        const Temperature ends = heated ? room : room + half_way * (out - room);
        const double left = std::exp(-(lasts / cools_in));
        const double mean_left = (1.0 - left) / (lasts / cools_in);
        warmth.days.push_back(ends + mean_left * (now - ends));
        now = ends + left * (now - ends);
        sum += (warmth.days.back() - room) * (lasts / second);
        time += lasts;
    }
    if (time > Duration{}) warmth.mean = room + sum / (time / second);
    const auto [coldest, warmest] = std::ranges::minmax(warmth.days);
    assumptions.push_back(
        {"outage.battery_temperature",
         in_celsius(warmest) - in_celsius(coldest) < 0.5
             ? fmt::format("that of the room, {:.0f} degC", in_celsius(warmth.mean))
             : fmt::format("that of the room from day to day, {:.0f} to {:.0f} degC",
                           in_celsius(coldest), in_celsius(warmest)),
         "outage/method.md (10)"});
    return warmth;
}

namespace {

scenario::Scenario fixed_at(Temperature temperature, std::string_view which,
                            scenario::Scenario scenario, scenario::Assumptions& assumptions) {
    assumptions.push_back({"outage.battery_temperature",
                           fmt::format("taken as {:.0f} degC, {}", in_celsius(temperature), which),
                           "outage/method.md (10)"});
    scenario.outage.battery_temperature = temperature;
    return scenario;
}

}  // namespace

scenario::Scenario at_the_coldest(scenario::Scenario scenario, const std::string& folder,
                                  scenario::Assumptions& assumptions) {
    const auto warmth = warmth_of_packs(scenario, folder, assumptions);
    if (!warmth || warmth->days.empty()) return scenario;
    return fixed_at(std::ranges::min(warmth->days), "the coldest day's", std::move(scenario),
                    assumptions);
}

scenario::Scenario at_the_mean_from(LocalTime from, scenario::Scenario scenario,
                                    const std::string& folder, scenario::Assumptions& assumptions) {
    const auto warmth = warmth_of_packs(scenario, folder, assumptions);
    if (!warmth || warmth->days.empty()) return scenario;
    const auto passed = (midnight_before(from) - midnight_before(scenario.outage.starts)) / day;
    const auto first =
        std::min(warmth->days.size() - 1, static_cast<std::size_t>(std::max(0.0, passed + 0.5)));
    TemperatureDifference sum{};
    for (std::size_t i = first; i < warmth->days.size(); ++i)
        sum += warmth->days[i] - warmth->mean;
    const double left = static_cast<double>(warmth->days.size() - first);
    return fixed_at(warmth->mean + sum / left, "the mean of the days left", std::move(scenario),
                    assumptions);
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
