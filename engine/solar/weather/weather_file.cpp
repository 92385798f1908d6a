#include "solar/weather/weather_file.hpp"

#include "scenario/file/file.hpp"
#include "scenario/file/named_file.hpp"
#include "solar/weather/csv.hpp"
#include "solar/weather/data_base_year.hpp"
#include "solar/weather/file_snow.hpp"
#include "solar/weather/weather_hour.hpp"
#include "solar/weather/weather_reader.hpp"

namespace solar {

namespace {

using namespace units;
using words::Said;
using words::said;
using words::said_of;
using words::with_decimals;

// The hours of a year with seventy columns have two million bytes.
const scenario::WantedFile wanted{
    .largest = 10'000'000,
    .usual = said<"a year of hours has about two million">(),
    .remedy = said<"give the path of an EPW, TMY3 or NSRDB file, relative to the scenario">()};
constexpr std::array<int, 12> days_in_month{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

bool begins_with_number(std::string_view text) {
    return !text.empty() && text.front() >= '0' && text.front() <= '9';
}

Said cells_on_line_1(const Cells& cells) {
    return said_of<"{n} cell on line 1", "{n} cells on line 1">(cells.size());
}

// --- TMY3: a station line, a line of headings, rows with a date and a time.

std::optional<std::size_t> column_headed(const Cells& headings, std::string_view beginning) {
    for (std::size_t i = 0; i < headings.size(); ++i)
        if (headings[i].starts_with(beginning)) return i;
    return std::nullopt;
}

std::size_t needed_column(WeatherReader& reader, const Cells& headings,
                          std::string_view beginning) {
    const auto found = column_headed(headings, beginning);
    if (!found)
        reader.refuse(said<"headings">(), said<"no column begins with \"{heading}\"">(beginning),
                      said<"give the headings of a TMY3 file on line 2">());
    return found.value_or(0);
}

struct DateAndTime {
    double month, date, hour;
};

// "01/31/1988" and "24:00", also "1/31/1988" and "24:00:00" as spreadsheets save them.
std::optional<DateAndTime> date_and_time(std::string_view date, std::string_view time) {
    const std::size_t first = date.find('/');
    const std::size_t second = first == std::string_view::npos ? first : date.find('/', first + 1);
    const std::size_t colon = time.find(':');
    if (second == std::string_view::npos || colon == std::string_view::npos) return std::nullopt;
    const auto month = number(date.substr(0, first));
    const auto day_of_month = number(date.substr(first + 1, second - first - 1));
    const auto hour_of_day = number(time.substr(0, colon));
    const auto whole = [](const std::optional<double>& value, double low, double high) {
        return value && *value >= low && *value <= high && *value == std::floor(*value);
    };
    if (!whole(month, 1, 12) || !whole(day_of_month, 1, 31) || !whole(hour_of_day, 0, 24))
        return std::nullopt;
    return DateAndTime{*month, *day_of_month, *hour_of_day};
}

void read_tmy3_row(WeatherReader& reader, const Cells& cells) {
    if (cells.size() < 2) {
        reader.refuse(said<"row">(), said<"no date and time">(),
                      said<"give a row of 68 or 71 cells">());
        return;
    }
    const auto when = date_and_time(cells[0], cells[1]);
    if (!when || when->hour < 1.0) {
        reader.refuse(said<"column 1 and 2 (date, time)">(),
                      said<"these are not a date and the end of an hour">(),
                      said<"give MM/DD/YYYY and the hour's end, 01:00 to 24:00">());
        return;
    }
    add_hour(reader, cells, when->month, when->date, when->hour);
}

void read_tmy3(WeatherReader& reader, std::string_view first_line, std::string_view text) {
    Cells cells;
    split_cells(first_line, cells);
    reader.year.format = WeatherFormat::tmy3;
    reader.line = 1;
    if (cells.size() < 7) {
        reader.refuse(
            said<"station">(), cells_on_line_1(cells),
            said<"give station, name, state, UTC offset, latitude, longitude, elevation">());
        return;
    }
    name_station(reader, cells[1]);
    read_coordinates(reader, cells, 3, 4, 5, 6);
    reader.line = 2;
    Cells headings;
    split_cells(take_line(text), headings);
    reader.columns.global = needed_column(reader, headings, "GHI (");
    reader.columns.direct = needed_column(reader, headings, "DNI (");
    reader.columns.diffuse = needed_column(reader, headings, "DHI (");
    reader.columns.air = needed_column(reader, headings, "Dry-bulb (");
    reader.columns.ground = column_headed(headings, "Alb (");
    reader.columns.needed = 1 + std::max({reader.columns.global, reader.columns.direct,
                                          reader.columns.diffuse, *reader.columns.air});
    if (!reader.errors.empty()) return;
    while (!text.empty() && !reader.is_full()) {
        ++reader.line;
        const std::string_view line = take_line(text);
        if (is_blank(line)) continue;
        split_cells(line, cells);
        read_tmy3_row(reader, cells);
    }
}

// --- EPW: eight lines of heading, rows of numbers.

void read_epw_row(WeatherReader& reader, const Cells& cells) {
    const auto month = reader.within(cells, 1, said<"month">(), 1.0, 12.0);
    const auto date = reader.within(cells, 2, said<"day">(), 1.0, 31.0);
    const auto hour_of_day = reader.within(cells, 3, said<"hour">(), 1.0, 24.0);
    if (month && date && hour_of_day)
        add_hour(reader, cells, std::floor(*month), std::floor(*date), std::floor(*hour_of_day));
}

void read_epw(WeatherReader& reader, std::string_view first_line, std::string_view text) {
    Cells cells;
    split_cells(first_line, cells);
    reader.year.format = WeatherFormat::epw;
    reader.line = 1;
    if (cells.size() < 10) {
        reader.refuse("LOCATION", cells_on_line_1(cells),
                      said<"give LOCATION, city, state, country, source, station, latitude, "
                           "longitude, UTC offset, elevation">());
        return;
    }
    name_station(reader, cells[1]);
    read_coordinates(reader, cells, 8, 6, 7, 9);
    reader.columns = {.global = 13,
                      .direct = 14,
                      .diffuse = 15,
                      .air = 6,
                      .ground = 32,
                      .snow = 30,
                      .needed = 16};
    while (!text.empty() && !reader.is_full()) {
        ++reader.line;
        const std::string_view line = take_line(text);
        if (is_blank(line)) continue;
        if (!begins_with_number(line) && reader.line <= 8) continue;  // headings
        split_cells(line, cells);
        read_epw_row(reader, cells);
    }
}

// "2/28 24:00"
Said end_of_hour(int month, int date, int hour) {
    return said<"{month}/{day} {hour}:00">(month, date, hour);
}

// The calendar must run through the year once, whatever the years' numbers.
void check_calendar(WeatherReader& reader) {
    const auto& hours = reader.year.hours;
    reader.line = 0;
    if (hours.size() != 8760 && hours.size() != 8784) {
        reader.refuse(said<"rows">(), said_of<"{n} hour", "{n} hours">(hours.size()),
                      said<"give 8760, or 8784 in a leap year">());
        return;
    }
    const bool leap = hours.size() == 8784;
    std::size_t next = 0;
    for (int month = 1; month <= 12; ++month)
        for (int date = 1; date <= days_in_month[std::size_t(month - 1)] + (leap && month == 2);
             ++date)
            for (int of_day = 1; of_day <= 24; ++of_day, ++next) {
                const HourOfWeather& found = hours[next];
                if (found.month == month && found.date == date && found.hour == of_day) continue;
                reader.refuse(
                    said<"rows">(),
                    said<"hour {number} of the year is {found}, not {expected}">(
                        next + 1, end_of_hour(found.month, found.date, found.hour),
                        end_of_hour(month, date, of_day)),
                    said<"give every hour from 1 January 1:00 to 31 December 24:00 once, in "
                         "order">());
                return;
            }
}

// What a file's hours say of one month.
struct Month {
    int line = 0;  // on which it begins
    int lit = 0;   // hours with light, or with the sun up and none known
    int dark = 0;  // hours with the sun up whose light is known from nowhere
    int days = 0;
    Irradiation global{};
};

std::array<Month, 12> months_of(const WeatherReader& reader) {
    std::array<Month, 12> months{};
    for (std::size_t i = 0; i < reader.year.hours.size(); ++i) {
        const HourOfWeather& row = reader.year.hours[i];
        Month& of = months[std::size_t(row.month - 1)];
        if (of.line == 0) of.line = reader.lines[i];
        of.days += row.hour == 24;
        of.dark += row.light == LightFrom::nowhere;
        of.lit +=
            row.light == LightFrom::nowhere || row.global.value_or(Irradiance{}) > Irradiance{};
        of.global += Irradiation(row.global.value_or(Irradiance{}) * hour);
    }
    return months;
}

void check_month(WeatherReader& reader, const Month& of, const Said& name, Irradiation outside) {
    constexpr double clearest = 0.85;  // as for typed months
    reader.line = of.line;
    if (2 * of.dark > of.lit) {
        reader.refuse(
            said<"light">(),
            said_of<"in {month} {n} of {hours} hours with the sun up has no usable light",
                    "in {month} {n} of {hours} hours with the sun up have no usable light">(
                name, of.dark, of.lit),
            said<"global light is needed, or direct and diffuse light together; take a "
                 "complete file">());
        return;
    }
    const Irradiation a_day = of.global / double(std::max(1, of.days));
    if (a_day <= Irradiation{} || a_day > clearest * outside)
        reader.refuse(
            said<"light">(),
            said<"{month} brings {light} kWh/m^2 a day, while {most} reach the top of the air "
                 "there">(name, with_decimals(a_day / kilowatt_hour_per_square_metre, 2),
                          with_decimals(outside / kilowatt_hour_per_square_metre, 2)),
            said<"more than 0 and at most 0.85 of that is possible; check the columns, their "
                 "units (Wh/m^2 of the hour) and the latitude">());
}

// Months that hold no year's light are refused at the file, not at a figure made from it.
void check_months(WeatherReader& reader) {
    constexpr Irradiation little_light = 1e6 * joule / square_metre;
    const std::array<Month, 12> months = months_of(reader);
    for (int number = 1; number <= 12; ++number) {
        const Irradiation outside = extraterrestrial_of_month(reader.year.at.latitude, number);
        if (outside <= little_light) continue;
        check_month(reader, months[std::size_t(number - 1)], name_of_month(number), outside);
    }
}

}  // namespace

Result<WeatherYear> read_weather(std::string_view text, const std::string& file) {
    WeatherReader reader{.file = file, .year = {}, .errors = {}, .lines = {}};
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);  // byte order mark
    const std::string_view first = take_line(text);
    if (first.starts_with("LOCATION"))
        read_epw(reader, first, text);
    else if (begins_with_number(first) && first.find(',') != std::string_view::npos)
        read_tmy3(reader, first, text);
    else if (first.starts_with("Source,"))
        read_data_base_year(reader, first, text);
    else {
        reader.line = 1;
        reader.refuse(
            said<"format">(), said<"the first line is not that of a weather file">(),
            said<"give an EPW file (LOCATION, …), a TMY3 file (station number, name, …) or an "
                 "hourly year of the NSRDB (Source, …)">());
    }
    if (reader.errors.empty()) check_calendar(reader);
    if (reader.errors.empty()) {
        for (HourOfWeather& row : reader.year.hours)
            complete_light(reader.year, row);
        check_months(reader);
        reader.year.snowfall = days_of_snowfall(reader.year);
    }
    if (!reader.errors.empty()) return fail(std::move(reader.errors));
    return std::move(reader.year);
}

Result<WeatherYear> read_weather_file(const std::string& path) {
    auto text = scenario::bytes_of_file(path, wanted);
    if (text && text->empty())
        text = fail({.where = "",
                     .found = said<"the file is empty">(),
                     .remedy = wanted.remedy,
                     .file = path});
    if (!text) {
        for (Error& error : text.error())
            error.where = "place.weather_file";
        return fail(std::move(text.error()));
    }
    return read_weather(*text, path);
}

Result<std::string> bytes_of_weather_of(const scenario::Place& place, const std::string& folder) {
    const auto path =
        scenario::path_of_named_file(place.weather_file.value_or(""), folder, "place.weather_file");
    if (!path) return fail(path.error());
    return scenario::bytes_of_file(*path, wanted);
}

Result<WeatherYear> read_weather_of(const scenario::Place& place, const std::string& folder) {
    const auto path =
        scenario::path_of_named_file(place.weather_file.value_or(""), folder, "place.weather_file");
    if (!path) return fail(path.error());
    return read_weather_file(*path);
}

}  // namespace solar
