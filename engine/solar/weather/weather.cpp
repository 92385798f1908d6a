#include "solar/weather/weather.hpp"

#include <Random123/philox.h>
#include <numbers>

#include <boost/math/special_functions/erf.hpp>

#include "solar/weather/drawn_days.hpp"
#include "words/said.hpp"

namespace solar {

namespace {

using namespace units;
using words::Said;
using words::said;

enum Purpose : std::uint32_t { of_a_day, of_the_climate, of_snow_falling, of_snow_going };

double normal_score(double probability) {
    return -std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * probability);
}

double probability_of(double score) {
    return 0.5 * std::erfc(-score / std::numbers::sqrt2);
}

// The range of probabilities a first day is drawn from. Ours: a storm's day is among the dullest
// tenth, a clear one in the brighter half.
double first_score(FirstSky sky, double drawn) {
    if (sky == FirstSky::after_storm) return normal_score(0.10 * drawn);
    if (sky == FirstSky::clear) return normal_score(0.5 + 0.5 * drawn);
    return normal_score(drawn);
}

// The day's score when the forecast leaves a band of all days: what it would be without one, drawn
// together. A brighter band never gives a darker day.
double within(const SkyBand& band, double score) {
    constexpr double hair = 1e-15;  // off 0 and 1, where no score is
    const double from = band.from.value();
    const double share = from + (band.to.value() - from) * probability_of(score);
    return normal_score(std::clamp(share, hair, 1.0 - hair));
}

Said in_words(scenario::DaySky sky) {
    switch (sky) {
        case scenario::DaySky::dark:
            return said<"dark">();
        case scenario::DaySky::grey:
            return said<"grey">();
        case scenario::DaySky::mixed:
            return said<"mixed">();
        case scenario::DaySky::clear:
            return said<"clear">();
    }
    return {};
}

void take_forecast(const scenario::Outage& outage, WeatherModel& model,
                   scenario::Assumptions& assumptions) {
    std::vector<Said> told;
    for (std::size_t number = 0; number < outage.sky.size(); ++number) {
        const SkyBand band = band_of(outage.sky[number], int(number));
        // What is left of the day before the first noon has the sky of the first word.
        const int days = number == 0 ? model.first_days : 1;
        model.forecast.insert(model.forecast.end(), std::size_t(days), band);
        told.push_back(said<"{sky} ({low} to {high} in 100)">(
            in_words(outage.sky[number]), words::with_decimals(100.0 * band.from.value(), 0),
            words::with_decimals(100.0 * band.to.value(), 0)));
    }
    assumptions.push_back(
        {"outage.sky",
         said<"of the month's days, darkest first, those forecast are among: {days}; a forecast "
              "counts for a tenth less with each day it looks further ahead">(
             words::joined(std::move(told), words::List::Joint::comma)),
         said<"ours">()});
}

}  // namespace

SkyBand band_of(scenario::DaySky sky, int number) {
    // Shares of a month's days: ours. A dark day is one like a storm's.
    static constexpr std::array<std::array<double, 2>, 4> bands{
        {{0.0, 0.10}, {0.10, 0.40}, {0.40, 0.75}, {0.75, 1.0}}};
    const auto [from, to] = bands[std::size_t(sky)];
    const double gone = std::clamp(0.1 * number, 0.0, 1.0);
    return {Probability(from * (1.0 - gone)), Probability(to + (1.0 - to) * gone)};
}

int first_days_of(LocalTime starts) {
    return time_of_day(starts) < 12.0 * hour ? 1 : 2;
}

WeatherModel weather_model(const scenario::Outage& outage, scenario::Assumptions& assumptions) {
    WeatherModel model{.first_days = first_days_of(outage.starts)};
    switch (outage.sky.empty() ? outage.cause.value_or(scenario::Cause::unknown)
                               : scenario::Cause::unknown) {
        case scenario::Cause::storm:
            model.first_sky = FirstSky::after_storm;
            assumptions.push_back({"outage.cause",
                                   said<"the first day with its noon ahead is among the dullest "
                                        "tenth">(),
                                   said<"ours">()});
            break;
        case scenario::Cause::clear:
            model.first_sky = FirstSky::clear;
            assumptions.push_back({"outage.cause",
                                   said<"the first day with its noon ahead is in the brighter "
                                        "half">(),
                                   said<"ours">()});
            break;
        case scenario::Cause::unknown:
            break;
    }
    if (!outage.sky.empty()) take_forecast(outage, model, assumptions);
    assumptions.push_back({"place.irradiation",
                           said<"day-to-day persistence 0.29; the table's means are off by 5 %, "
                                "one standard deviation, the same for all days of a sequence">(),
                           said<"[Graham 1988], from memory; the 5 % is ours">()});
    return model;
}

double uniform(SequenceName sequence, std::uint32_t day, std::uint32_t purpose) {
    const r123::Philox4x32::ctr_type counter{{day, sequence.number, purpose, 0}};
    const r123::Philox4x32::key_type key{
        {std::uint32_t(sequence.seed), std::uint32_t(sequence.seed >> 32)}};
    const auto drawn = r123::Philox4x32{}(counter, key);
    const std::uint64_t bits = (std::uint64_t(drawn[1]) << 32 | drawn[0]) >> 12;
    return (double(bits) + 0.5) * 0x1p-52;
}

std::vector<Clearness> daily_clearness(const Site& site, LocalTime first, const WeatherModel& model,
                                       double climate_drawn, std::span<const double> days_drawn) {
    const double spread = model.climate_error;
    const double climate = std::exp(spread * normal_score(climate_drawn) - 0.5 * spread * spread);
    std::vector<Clearness> clearness;
    clearness.reserve(days_drawn.size());
    const double fresh = std::sqrt(1.0 - model.persistence * model.persistence);
    const LocalTime midnight = midnight_before(first);
    double score = 0.0;
    std::optional<ClearnessDistribution> distribution;
    Clearness of_the_month{};
    for (std::size_t number = 0; number < days_drawn.size(); ++number) {
        const Clearness mean = site.mean_clearness(midnight + double(number) * day);
        if (!distribution || mean != of_the_month) {
            of_the_month = mean;
            distribution.emplace(Clearness(mean.value() * climate), site.elevation);
        }
        const double drawn = days_drawn[number];
        if (number < model.forecast.size())
            score = within(model.forecast[number],
                           number == 0 ? normal_score(drawn)
                                       : model.persistence * score + fresh * normal_score(drawn));
        else if (number == 0 ||
                 (model.first_sky != FirstSky::unknown && int(number) < model.first_days))
            score = first_score(model.first_sky, drawn);
        else
            score = model.persistence * score + fresh * normal_score(drawn);
        clearness.push_back(distribution->quantile(Probability(probability_of(score))));
    }
    return clearness;
}

std::vector<SnowDraw> snow_draws(int days, SequenceName sequence) {
    std::vector<SnowDraw> drawn;
    for (std::uint32_t number = 0; int(number) < days; ++number)
        drawn.push_back({.falls = uniform(sequence, number, of_snow_falling),
                         .goes = uniform(sequence, number, of_snow_going)});
    return drawn;
}

std::vector<Clearness> daily_clearness(const Site& site, LocalTime first, int days,
                                       const WeatherModel& model, SequenceName sequence) {
    std::vector<double> drawn;
    for (int number = 0; number < days; ++number)
        drawn.push_back(uniform(sequence, std::uint32_t(number), of_a_day));
    return daily_clearness(site, first, model, uniform(sequence, 0, of_the_climate), drawn);
}

}  // namespace solar
