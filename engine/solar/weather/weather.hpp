// Sequences of daily clearness: dull days follow dull days, and storms begin outages.
#pragma once

#include <chrono>
#include <cstdint>
#include <vector>

#include "scenario/scenario.hpp"
#include "solar/placement.hpp"
#include "solar/places/site.hpp"
#include "solar/weather/clearness_distribution.hpp"
#include "units/time.hpp"

namespace solar {

// What is known of the sky on the first days.
enum class FirstSky {
    unknown,      // any day of the month
    after_storm,  // the dullest tenth of days
    clear,        // the brighter half of days
};

// The share of the month's days, darkest first, that a day is drawn from.
struct SkyBand {
    units::Probability from{0.0};
    units::Probability to{1.0};
};

// The band of the `number`th day of a forecast, 0 the first. Its edges give way to those of any
// day by a tenth for each day the forecast looks further ahead. method.md (51)
[[nodiscard]] SkyBand band_of(scenario::DaySky sky, int number);

struct WeatherModel {
    FirstSky first_sky = FirstSky::unknown;
    int first_days = 1;                  // local days for which first_sky holds; ours
    std::vector<SkyBand> forecast = {};  // of the local days from the start's on; before first_sky
    double persistence = 0.29;    // of normal scores from day to day, 0 to 0.6; [Graham 1988]
    double climate_error = 0.05;  // relative, of the table's means: one draw a sequence; ours
};

[[nodiscard]] WeatherModel weather_model(const scenario::Outage& outage,
                                         scenario::Assumptions& assumptions);

// Local days, the one of the start included, until the first one is over whose noon lay ahead when
// the power went: an evening's storm is met by the panels on the next day. 1 or 2.
[[nodiscard]] int first_days_of(units::LocalTime starts);

// Names one sequence of random numbers: the same pair gives the same days, bit for bit, whatever
// was drawn before, in whatever thread.
struct SequenceName {
    std::uint64_t seed = 1;
    std::uint32_t number = 0;
};

// A random number in the open interval 0 to 1 for each place in a sequence. [Salmon 2011]
[[nodiscard]] double uniform(SequenceName sequence, std::uint32_t day, std::uint32_t purpose);

// What is drawn of the snow of `days` local days. method.md (52)
[[nodiscard]] std::vector<SnowDraw> snow_draws(int days, SequenceName sequence);

// Clearness of `days` local days from the one that holds `first`. method.md (40) to (43)
[[nodiscard]] std::vector<Clearness> daily_clearness(const Site& site, units::LocalTime first,
                                                     int days, const WeatherModel& model,
                                                     SequenceName sequence);

}  // namespace solar
