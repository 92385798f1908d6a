#include "outage/room.hpp"

#include "solar/sun_setup.hpp"
#include "units/said.hpp"

namespace outage {

namespace {

using namespace units;
using words::Said;
using words::said;

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

constexpr Temperature outside_unless_known = celsius(15.0);

// Where it is outside, or nothing where the file does not lead to its temperatures.
std::optional<solar::SunSetup> outside_of(const scenario::Scenario& scenario,
                                          const std::string& folder,
                                          scenario::Assumptions& assumptions) {
    auto made = solar::sun_setup(scenario, folder);
    std::optional<solar::SunSetup> setup;
    if (made) setup = std::move(*made);
    if (!setup || !(setup->site.temperature || setup->hours))
        assumptions.push_back({"outage.battery_follows_room",
                               said<"outside it is {temperature} all year: the place's "
                                    "temperatures are not known">(outside_unless_known),
                               said<"ours">()});
    return setup;
}

// A stretch of one local day, and how warm the room would come to be in it.
struct RoomDay {
    Duration lasts{};
    Temperature towards{};
};

std::vector<RoomDay> room_days(const scenario::Outage& outage, Temperature room,
                               const std::optional<solar::SunSetup>& setup) {
    std::vector<RoomDay> days;
    const bool heated = outage.room_temperature.has_value();
    const auto ends = outage.starts + outage.lasts;
    for (auto midnight = midnight_before(outage.starts); midnight < ends;
         midnight = midnight + day) {
        const Temperature out = setup ? outside(*setup, midnight) : outside_unless_known;
        days.push_back({.lasts = std::min(midnight + day, ends) - std::max(midnight, outage.starts),
                        .towards = heated ? room : room + half_way * (out - room)});
    }
    return days;
}

// The mean of each day of a room that cools towards that day's end, and of all of them. (10)
PackWarmth cooling(Temperature room, const std::vector<RoomDay>& days) {
    PackWarmth warmth{.mean = room, .days = {}};
    TemperatureDifference sum{};
    Duration time{};
    Temperature now = room;
    for (const RoomDay& of_day : days) {
        const double left = std::exp(-(of_day.lasts / cools_in));
        const double mean_left = (1.0 - left) / (of_day.lasts / cools_in);
        warmth.days.push_back(of_day.towards + mean_left * (now - of_day.towards));
        now = of_day.towards + left * (now - of_day.towards);
        sum += (warmth.days.back() - room) * (of_day.lasts / second);
        time += of_day.lasts;
    }
    if (time > Duration{}) warmth.mean = room + sum / (time / second);
    return warmth;
}

Said in_words(const PackWarmth& warmth) {
    const auto [coldest, warmest] = std::ranges::minmax(warmth.days);
    if (in_celsius(warmest) - in_celsius(coldest) < 0.5)
        return said<"that of the room, {temperature}">(to_the_degree(warmth.mean));
    return said<"that of the room from day to day, {temperatures}">(between(
        celsius(std::round(in_celsius(coldest))), celsius(std::round(in_celsius(warmest)))));
}

Said method() {
    return said<"outage/method.md (10)">();
}

}  // namespace

std::optional<PackWarmth> warmth_of_packs(const scenario::Scenario& scenario,
                                          const std::string& folder,
                                          scenario::Assumptions& assumptions) {
    const auto& outage = scenario.outage;
    if (!outage.battery_follows_room.value_or(false) || outage.battery_temperature)
        return std::nullopt;
    std::optional<solar::SunSetup> setup;
    if (!outage.room_temperature) {
        assumptions.push_back({"outage.room_temperature",
                               said<"not heated: cools from {temperature} half way to the day's "
                                    "mean outside, in 16.6 h by the e-th part">(usual_room),
                               said<"[House tau 2012] and ours; a heated room's temperature "
                                    "wins">()});
        setup = outside_of(scenario, folder, assumptions);
    }
    const Temperature room = outage.room_temperature.value_or(usual_room);
    auto warmth = cooling(room, room_days(outage, room, setup));
    assumptions.push_back({"outage.battery_temperature", in_words(warmth), method()});
    return warmth;
}

namespace {

scenario::Scenario fixed_at(Temperature temperature, Said text, scenario::Scenario scenario,
                            scenario::Assumptions& assumptions) {
    assumptions.push_back({"outage.battery_temperature", std::move(text), method()});
    scenario.outage.battery_temperature = temperature;
    return scenario;
}

}  // namespace

scenario::Scenario at_the_coldest(scenario::Scenario scenario, const std::string& folder,
                                  scenario::Assumptions& assumptions) {
    const auto warmth = warmth_of_packs(scenario, folder, assumptions);
    if (!warmth || warmth->days.empty()) return scenario;
    const Temperature coldest = std::ranges::min(warmth->days);
    return fixed_at(coldest,
                    said<"taken as {temperature}, the coldest day's">(to_the_degree(coldest)),
                    std::move(scenario), assumptions);
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
    const Temperature mean = warmth->mean + sum / left;
    return fixed_at(mean,
                    said<"taken as {temperature}, the mean of the days left">(to_the_degree(mean)),
                    std::move(scenario), assumptions);
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
             .text = said<"on {n} of {days} days the room is too cold to charge LiFePO4 packs, "
                          "down to {temperature}: the sun then serves the loads alone">(
                 days, too_cold.size(), to_the_degree(coldest)),
             .mend = said<"keep the packs in a warmer room, or warm them before they are "
                          "charged">(),
             .source = said<"pack.coldest_charge, {temperature} unless given; outage/method.md "
                            "(10)">(celsius(0.0))}};
}

}  // namespace outage
