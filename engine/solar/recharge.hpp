// What the panels give back on each day of an outage, over many weathers.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "solar/sun_track.hpp"
#include "solar/weather/typical_sky.hpp"
#include "solar/weather/weather.hpp"

namespace solar {

// low, likely and high are percentiles of this day, or of the whole outage, over the weathers:
// the low days do not all come together, so they do not add up to the low outage.
struct RechargeDay {
    units::LocalTime midnight;  // before it, also of a first day that begins later
    DayRange offered;           // at the battery terminals, after the controller's limits
};

// Weathers by their number, counted from 0, that offer so much over the whole outage.
struct RankedWeathers {
    int low = 0;  // a tenth of the weathers offer less
    int likely = 0;
    int high = 0;
};

struct Recharge {
    std::vector<RechargeDay> days;  // each local day the outage touches
    DayRange whole;                 // outage
    RankedWeathers ranked;
    int weathers = 0;
};

// Percentiles by nearest rank over `weathers` sequences of days drawn from `seed`; the same seed
// gives the same figures to the last bit. method.md (40) to (43)
//   accuracy  a day's yield is read between 33 skies: below 0.3 % of a bright day
//   takes     weathers: at least 1
[[nodiscard]] Recharge recharge(const SunTrack& track, const Site& site,
                                const ControllerModel& controller, const WeatherModel& model,
                                std::uint64_t seed, int weathers);

// A file's hours taken from other start dates: up to so many days before and after the outage's.
// Ours: one season's weather, and enough of it. method.md (46)
inline constexpr int season_reaches = 30;
inline constexpr int start_dates = 2 * season_reaches + 1;

// Start date `number`, 0 to start_dates - 1; the outage's own is number season_reaches.
[[nodiscard]] HourlySky from_start_date(std::shared_ptr<const WeatherYear> year, int number,
                                        std::vector<SnowDraw> snow = {});

// The same over all start dates of a weather file.
//   snow_seed  of what is drawn of snow; absent: there is none
[[nodiscard]] Recharge recharge_of_hours(const SunTrack& track, const ControllerModel& controller,
                                         const std::shared_ptr<const WeatherYear>& year,
                                         std::optional<std::uint64_t> snow_seed = {});

}  // namespace solar
