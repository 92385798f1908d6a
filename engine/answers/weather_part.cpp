#include "answers/weather_part.hpp"

#include <chrono>

#include "answers/columns.hpp"
#include "answers/shown.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using units::LocalTime;
using words::Said;
using words::said;
using Form = words::Moment::Form;

// A day of a year that has no 29 February.
LocalTime day_of_a_year(int month, int date) {
    return units::local_time(std::chrono::year(2025) / month / date, units::Duration());
}

Said date_in_words(int month, int date) {
    return said<"{date}">(units::moment(day_of_a_year(month, date), Form::day_and_month));
}

template <class Written>
Value value_of(Written quantity) {
    return quantity_or_reason(shown(quantity, 4), said<"the number is not finite">());
}

Value value_of(const std::optional<units::Temperature>& temperature) {
    return temperature ? value_of(*temperature) : Value{Absent{said<"the file has none">()}};
}

// To a tenth of a kilowatt-hour, as sums of a year are compared.
Value sum_of_year(units::Irradiation sum) {
    const auto printed = units::in_customary_unit(sum);
    return {Quantity{.value = printed.value,
                     .unit = std::string(printed.unit),
                     .shown = said<"{sum}">(units::amount_in(sum, "kWh/m²", 3))}};
}

Value plain(double value, int decimals) {
    return {Quantity{
        .value = value, .unit = "1", .shown = said<"{n}">(words::with_decimals(value, decimals))}};
}

std::string_view name_of(solar::WeatherFormat format) {
    switch (format) {
        case solar::WeatherFormat::tmy3:
            return "TMY3";
        case solar::WeatherFormat::epw:
            return "EPW";
        case solar::WeatherFormat::nsrdb:
            break;
    }
    return "NSRDB";
}

Said year_of(solar::WeatherFormat format) {
    if (format == solar::WeatherFormat::tmy3) return said<"a {form} year">(name_of(format));
    return said<"an {form} year">(name_of(format));
}

Members weather_values(const std::string& file, const questions::WeatherRead& weather) {
    const auto& year = weather.year;
    const auto& sums = weather.sums;
    return {
        {"file", said<"file">(), {file}},
        {"format", said<"format">(), {std::string(name_of(year.format))}},
        {"station", said<"station">(), {sums.station}},
        {"latitude", said<"latitude">(), value_of(year.at.latitude)},
        {"longitude", said<"longitude">(), value_of(year.at.longitude)},
        {"elevation", said<"elevation">(), value_of(year.elevation)},
        {"utc_offset", said<"clock ahead of UTC">(), value_of(year.utc_offset)},
        {"rows", said<"hours">(), {static_cast<std::int64_t>(sums.hours)}},
        {"missing",
         said<"hours without usable light">(),
         {static_cast<std::int64_t>(sums.missing)}},
        {"global", said<"global light of the year, level">(), sum_of_year(sums.global)},
        {"direct", said<"direct light, facing the sun">(), sum_of_year(sums.direct)},
        {"diffuse", said<"diffuse light, level">(), sum_of_year(sums.diffuse)},
        {"coldest", said<"coldest hour">(), value_of(sums.coldest)},
        {"mean_temperature", said<"mean temperature">(), value_of(sums.mean)},
        {"warmest", said<"warmest hour">(), value_of(sums.warmest)},
        {"worst_day", said<"dullest day">(), value_of(sums.worst_day)},
        {"worst_day_on", said<"on">(), {date_in_words(sums.worst_day_month, sums.worst_day_date)}},
        {"worst_three_days", said<"dullest three days in a row">(),
         value_of(sums.worst_three_days)},
        {"worst_three_days_from",
         said<"{?day}from">(),
         {date_in_words(sums.worst_three_days_month, sums.worst_three_days_date)}},
        {"closure", said<"direct and diffuse over global">(), plain(sums.closure, 4)},
        {"closure_at_the_hours_end", said<"the same, half an hour later">(),
         plain(sums.closure_at_the_hours_end, 4)}};
}

Series months_table(const questions::WeatherRead& weather) {
    const auto& temperatures = weather.temperatures;
    Series series{.name = "weather_months", .title = said<"Month by month">(), .columns = {}};
    series.columns = {column("month", said<"month">(), 12,
                             [](std::size_t row) {
                                 const auto first = day_of_a_year(static_cast<int>(row) + 1, 1);
                                 return said<"{month}">(units::moment(first, Form::month));
                             }),
                      column("global", said<"global, a mean day">(), 12,
                             [&](std::size_t row) { return weather.sums.monthly[row]; })};
    if (temperatures) {
        series.columns.push_back(column("temperature", said<"mean temperature">(), 12,
                                        [&](std::size_t row) { return (*temperatures)[row]; }));
    }
    return series;
}

void add(Answer& answer, scenario::Severity severity, Said text, Said mend) {
    answer.findings.push_back({.finding = {.severity = severity,
                                           .where = said<"{key}">("place.weather_file"),
                                           .text = std::move(text),
                                           .mend = std::move(mend),
                                           .source = said<"solar/method.md, section 6">()}});
}

void add_findings(Answer& answer, const std::vector<solar::Oddity>& oddities) {
    for (const auto& odd : oddities)
        add(answer, odd.severity, words::as_sentence(odd.text), words::as_sentence(odd.mend));
}

}  // namespace

void add_weather(Answer& answer, const std::string& file, const questions::WeatherRead& weather) {
    const auto& year = weather.year;
    const auto& sums = weather.sums;
    answer.sentences.push_back(
        said<"The weather file {file} is {form} of {station}: {hours} hours, {sum} kWh/m² of sun a "
             "year on level ground.">(
            file, year_of(year.format), sums.station, sums.hours,
            words::with_decimals(sums.global / units::kilowatt_hour_per_square_metre, 0)));
    answer.values.push_back(
        {"weather_file", said<"weather file">(), {weather_values(file, weather)}});
    answer.series.push_back(months_table(weather));
    add_findings(answer, weather.odd);
    sort_by_weight(answer.findings);
}

}  // namespace answers
