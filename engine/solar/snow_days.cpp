#include "solar/snow_days.hpp"

#include <algorithm>
#include <array>

#include "solar/snow.hpp"
#include "solar/weather/typical_sky.hpp"

namespace solar {

using namespace units;

namespace {

// A snowy month of our choice, and as much in the month before.
constexpr Length fallen_in_the_example = 0.25 * metre;
constexpr double falls_of_the_example = 3.0;
constexpr double days_of_a_month = 30.0;

std::size_t month_of(LocalTime when) {
    return std::size_t(unsigned(date_of(when).month()) - 1U);
}

// The example's month for a group whose planes are `aims`.
Share lost_in_the_example(const Site& site, PanelGroup group, std::vector<scenario::Aim> aims,
                          LocalTime day_held) {
    group.aims = std::move(aims);
    group.covered_days.clear();
    group.snow.clear();
    const std::array groups{group};
    const Irradiation a_day = sum(sun_offered(site, groups, ControllerModel{},
                                              midnight_before(day_held), day, TypicalSky{}))
                                  .on_plane;
    const SnowyMonth snowy{.fallen = fallen_in_the_example,
                           .falls = falls_of_the_example,
                           .humidity = Share(0.75),
                           .air = (*site.temperature)[month_of(day_held)],
                           .on_plane = days_of_a_month * a_day};
    // One that is turned in the day sheds its snow as at its steepest.
    Angle tilt{};
    for (const scenario::Aim& aim : group.aims)
        tilt = std::max(tilt, aim.tilt);
    return lost_to_snow(snowy, snowy, {.tilt = tilt});
}

}  // namespace

Probability snowy_days(Temperature month) {
    // [Twin Cities snow]: 0.106 of days at -11 degC, 0.09 at -7 to 2, 0.06 at 0, 0.03 at 7.5 and
    // 0.006 at 8; that other places have it as often at the same warmth is ours.
    constexpr double most = 0.10, falls_from = -3.0, ends_at = 11.0;
    const double left = (ends_at - in_celsius(month)) / (ends_at - falls_from);
    return Probability(most * std::clamp(left, 0.0, 1.0));
}

std::vector<SnowOfMonth> snow_of_months(const Site& site, const PanelGroup& group, LocalTime starts,
                                        Duration lasts, std::optional<Probability> told) {
    if (!site.temperature) return {};
    std::vector<SnowOfMonth> months(12);
    bool any = false;
    std::optional<std::size_t> last;
    for (LocalTime midnight = midnight_before(starts); midnight < starts + lasts;
         midnight = midnight + day) {
        const std::size_t month = month_of(midnight);
        if (month == last) continue;
        last = month;
        const Probability falls = told ? *told : snowy_days((*site.temperature)[month]);
        if (falls.value() <= 0.0) continue;
        const double lost = lost_in_the_example(site, group, group.aims, midnight).value();
        months[month] = {.falls = falls, .lies = lost * days_of_a_month / falls_of_the_example};
        any = true;
    }
    return any ? months : std::vector<SnowOfMonth>{};
}

std::vector<bool> covered_by_snow(const PanelGroup& group, LocalTime first,
                                  std::span<const SnowDraw> draws) {
    std::vector<bool> covered(draws.size(), false);
    if (group.snow.empty()) return covered;
    bool lies = false;
    for (std::size_t number = 0; number < draws.size(); ++number) {
        const SnowOfMonth& of = group.snow[month_of(first + double(number) * day)];
        const double falls = of.falls.value();
        // On the first day one of the days before may still lie.
        const bool fresh =
            draws[number].falls < (number == 0 ? falls * std::max(1.0, of.lies) : falls);
        const double stays =
            fresh ? std::min(1.0, of.lies)
                  : std::clamp((1.0 - 1.0 / std::max(1.0, of.lies)) / (1.0 - falls), 0.0, 1.0);
        lies = (fresh || lies) && draws[number].goes < stays;
        covered[number] = lies;
    }
    return covered;
}

}  // namespace solar
