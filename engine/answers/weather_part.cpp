#include "answers/weather_part.hpp"

#include <array>
#include <cctype>

#include <fmt/format.h>

#include "answers/columns.hpp"
#include "answers/shown.hpp"

namespace answers {

namespace {

constexpr std::array<std::string_view, 12> months{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                  "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

std::string date_in_words(int month, int date) {
    return fmt::format("{} {}", date, months[static_cast<std::size_t>(month - 1)]);
}

template <class Written>
Value value_of(Written quantity) {
    return quantity_or_reason(shown(quantity, 4), "the number is not finite");
}

Value value_of(const std::optional<units::Temperature>& temperature) {
    return temperature ? value_of(*temperature) : Value{Absent{"the file has none"}};
}

// To a tenth of a kilowatt-hour, as sums of a year are compared.
Value sum_of_year(units::Irradiation sum) {
    const auto printed = units::in_customary_unit(sum);
    return {Quantity{
        .value = printed.value,
        .unit = std::string(printed.unit),
        .shown = fmt::format("{:.3f} kWh/m²",
                             static_cast<double>(sum / units::kilowatt_hour_per_square_metre))}};
}

Value plain(double value, int decimals) {
    return {
        Quantity{.value = value, .unit = "1", .shown = fmt::format("{:.{}f}", value, decimals)}};
}

Members weather_values(const std::string& file, const solar::WeatherYear& year,
                       const solar::WeatherSummary& sums) {
    const bool tmy3 = year.format == solar::WeatherFormat::tmy3;
    return {{"file", "file", {file}},
            {"format", "format", {std::string(tmy3 ? "TMY3" : "EPW")}},
            {"station", "station", {sums.station}},
            {"latitude", "latitude", value_of(year.at.latitude)},
            {"longitude", "longitude", value_of(year.at.longitude)},
            {"elevation", "elevation", value_of(year.elevation)},
            {"utc_offset", "clock ahead of UTC", value_of(year.utc_offset)},
            {"rows", "hours", {static_cast<std::int64_t>(sums.hours)}},
            {"missing", "hours without usable light", {static_cast<std::int64_t>(sums.missing)}},
            {"global", "global light of the year, level", sum_of_year(sums.global)},
            {"direct", "direct light, facing the sun", sum_of_year(sums.direct)},
            {"diffuse", "diffuse light, level", sum_of_year(sums.diffuse)},
            {"coldest", "coldest hour", value_of(sums.coldest)},
            {"mean_temperature", "mean temperature", value_of(sums.mean)},
            {"warmest", "warmest hour", value_of(sums.warmest)},
            {"worst_day", "dullest day", value_of(sums.worst_day)},
            {"worst_day_on", "on", {date_in_words(sums.worst_day_month, sums.worst_day_date)}},
            {"worst_three_days", "dullest three days in a row", value_of(sums.worst_three_days)},
            {"worst_three_days_from",
             "from",
             {date_in_words(sums.worst_three_days_month, sums.worst_three_days_date)}},
            {"closure", "direct and diffuse over global", plain(sums.closure, 4)},
            {"closure_at_the_hours_end", "the same, half an hour later",
             plain(sums.closure_at_the_hours_end, 4)}};
}

Series months_table(const solar::WeatherYear& year, const solar::WeatherSummary& sums) {
    const auto temperatures = solar::monthly_temperature(year);
    Series series{.name = "weather_months", .title = "Month by month", .columns = {}};
    series.columns = {
        column("month", "month", 12, [](std::size_t row) { return std::string(months[row]); }),
        column("global", "global, a mean day", 12,
               [&](std::size_t row) { return sums.monthly[row]; })};
    if (temperatures) {
        series.columns.push_back(column("temperature", "mean temperature", 12,
                                        [&](std::size_t row) { return (*temperatures)[row]; }));
    }
    return series;
}

void add(Answer& answer, scenario::Severity severity, std::string text, std::string mend) {
    answer.findings.push_back({.finding = {.severity = severity,
                                           .where = "place.weather_file",
                                           .text = std::move(text),
                                           .mend = std::move(mend),
                                           .source = "solar/method.md, section 6"}});
}

// A finding's sentence of its own: "The …", with a full stop.
std::string sentence(std::string text) {
    if (text.empty()) return text;
    text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    return text + ".";
}

void add_findings(Answer& answer, const solar::WeatherSummary& sums) {
    for (const auto& odd : solar::oddities_of(sums))
        add(answer, odd.severity, sentence(odd.text), sentence(odd.mend));
}

}  // namespace

void add_weather(Answer& answer, const std::string& file, const solar::WeatherYear& year) {
    const auto sums = solar::summary(year);
    answer.sentences.push_back(fmt::format(
        "The weather file {} is {} of {}: {} hours, {:.0f} kWh/m² of sun a year on level ground.",
        file, year.format == solar::WeatherFormat::tmy3 ? "a TMY3 year" : "an EPW year",
        sums.station, sums.hours,
        static_cast<double>(sums.global / units::kilowatt_hour_per_square_metre)));
    answer.values.push_back({"weather_file", "weather file", {weather_values(file, year, sums)}});
    answer.series.push_back(months_table(year, sums));
    add_findings(answer, sums);
    sort_by_weight(answer.findings);
}

}  // namespace answers
