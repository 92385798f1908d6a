#include "solar/weather_file.hpp"

#include "scenario/file.hpp"
#include "scenario/named_file.hpp"
#include "solar/csv.hpp"
#include "solar/file_snow.hpp"
#include "solar/weather_hour.hpp"
#include "units/quote.hpp"

namespace solar {

namespace {

using namespace units;

constexpr std::size_t most_errors = 20;
constexpr int longest_station = 80;  // characters of its name
// The hours of a year with seventy columns have two million bytes.
constexpr scenario::WantedFile wanted{
    .largest = 10'000'000,
    .usual = "a year of hours has about two million",
    .remedy = "give the path of an EPW or TMY3 file, relative to the scenario"};
constexpr double brightest = 1500.0;  // W/m2; the solar constant is 1367
constexpr std::array<int, 12> days_in_month{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

using Cells = std::vector<std::string_view>;

// Columns counted from 0; absent where the file has none.
struct Columns {
    std::size_t global, direct, diffuse, air;
    std::optional<std::size_t> ground, snow;
    std::size_t needed;  // cells a row must have
};

struct Reader {
    const std::string& file;
    WeatherYear year;
    Columns columns{};
    Errors errors;
    int line = 0;
    std::vector<int> lines;  // on which each hour stands

    void refuse(std::string where, std::string found, std::string remedy) {
        if (errors.size() < most_errors)
            errors.push_back({.where = std::move(where),
                              .found = std::move(found),
                              .remedy = std::move(remedy),
                              .file = file,
                              .line = line});
    }
    [[nodiscard]] bool is_full() const { return errors.size() >= most_errors; }

    // What a cell holds is never shown: the file may be another than the person thinks, and what
    // is in it is nobody's business. The line and the column say where to look.
    // A number within bounds from a cell; an error and absence otherwise.
    std::optional<double> within(const Cells& cells, std::size_t column, const char* name,
                                 double low, double high) {
        const std::string_view cell = column < cells.size() ? cells[column] : std::string_view{};
        const std::optional<double> value = number(cell);
        if (value && *value >= low && *value <= high) return value;
        refuse(fmt::format("column {} ({})", column + 1, name),
               cell.empty()   ? "the cell is empty"
               : !value       ? "the cell is not a number"
               : *value < low ? "the number is too small"
                              : "the number is too large",
               fmt::format("give a number from {:g} to {:g}", low, high));
        return std::nullopt;
    }
};

bool is_utf8(std::string_view text) {
    while (!text.empty()) {
        const int length = utf8_length(text);
        if (length == 0) return false;
        text.remove_prefix(std::size_t(length));
    }
    return true;
}

// The letters of Latin-1 are the first 256 of Unicode.
std::string from_latin_1(std::string_view text) {
    std::string utf8;
    for (const char letter : text) {
        const auto code = static_cast<unsigned char>(letter);
        if (code < 0x80U) {
            utf8 += letter;
        } else {
            utf8 += static_cast<char>(0xC0U | (code >> 6U));
            utf8 += static_cast<char>(0x80U | (code & 0x3FU));
        }
    }
    return utf8;
}

// The station's name, fit to be shown.
std::string station_in(std::string_view cell) {
    return is_utf8(cell)
               ? quote(cell, longest_station)
               : quote(from_latin_1(cell), longest_station) + " (letters read as Latin-1)";
}

bool begins_with_number(std::string_view text) {
    return !text.empty() && text.front() >= '0' && text.front() <= '9';
}

// -9900 and -99 stand for missing in TMY3, 9999 and 999 in EPW: [TMY3 manual], [EPW].
bool light_is_missing(double value) {
    return value <= -99.0 || value >= 9999.0;
}

std::optional<Irradiance> light(Reader& reader, const Cells& cells, std::size_t column,
                                const char* name) {
    const std::optional<double> value = number(cells[column]);
    if (value && light_is_missing(*value)) return std::nullopt;
    if (value && *value >= 0.0 && *value <= brightest) return *value * watt_per_square_metre;
    if (reader.year.format == WeatherFormat::epw && cells[column].empty()) return std::nullopt;
    static_cast<void>(reader.within(cells, column, name, 0.0, brightest));
    return std::nullopt;
}

std::optional<Temperature> air(Reader& reader, const Cells& cells) {
    const std::size_t column = reader.columns.air;
    const std::optional<double> value = number(cells[column]);
    if (value && (*value <= -99.0 || *value >= 99.9)) return std::nullopt;
    if (!value && cells[column].empty()) return std::nullopt;
    const std::optional<double> degrees = reader.within(cells, column, "dry bulb", -90.0, 70.0);
    return degrees ? std::optional(celsius(*degrees)) : std::nullopt;
}

std::optional<Albedo> ground(const Reader& reader, const Cells& cells) {
    if (!reader.columns.ground || *reader.columns.ground >= cells.size()) return std::nullopt;
    const std::optional<double> value = number(cells[*reader.columns.ground]);
    // 999 and -9900 are missing; 0 is written where it was not measured
    if (!value || *value <= 0.0 || *value > 1.0) return std::nullopt;
    return Albedo(*value);
}

// 999 is missing [EPW]; deeper than any station's it is taken for that as well.
std::optional<Length> snow(const Reader& reader, const Cells& cells) {
    constexpr double deepest = 900.0;  // cm
    if (!reader.columns.snow || *reader.columns.snow >= cells.size()) return std::nullopt;
    const std::optional<double> value = number(cells[*reader.columns.snow]);
    if (!value || *value < 0.0 || *value > deepest) return std::nullopt;
    return 0.01 * *value * metre;
}

void add_hour(Reader& reader, const Cells& cells, double month, double date, double hour) {
    const int most = month == 2.0 ? 29 : days_in_month[std::size_t(month) - 1];
    if (date > most)
        reader.refuse("date", fmt::format("month {:g} has no day {:g}", month, date),
                      "give a day of the month");
    if (cells.size() < reader.columns.needed) {
        reader.refuse("row", fmt::format("{} cells", cells.size()),
                      fmt::format("give at least {}", reader.columns.needed));
        return;
    }
    const Columns& columns = reader.columns;
    reader.year.hours.push_back({.month = int(month),
                                 .date = int(date),
                                 .hour = int(hour),
                                 .global = light(reader, cells, columns.global, "global"),
                                 .direct = light(reader, cells, columns.direct, "direct"),
                                 .diffuse = light(reader, cells, columns.diffuse, "diffuse"),
                                 .air = air(reader, cells),
                                 .ground = ground(reader, cells),
                                 .snow = snow(reader, cells)});
    reader.lines.push_back(reader.line);
}

void read_coordinates(Reader& reader, const Cells& cells, std::size_t offset, std::size_t latitude,
                      std::size_t longitude, std::size_t elevation) {
    const auto hours = reader.within(cells, offset, "UTC offset", -12.0, 14.0);
    const auto north = reader.within(cells, latitude, "latitude", -90.0, 90.0);
    const auto east = reader.within(cells, longitude, "longitude", -180.0, 180.0);
    const auto up = reader.within(cells, elevation, "elevation", -500.0, 9000.0);
    if (!hours || !north || !east || !up) return;
    reader.year.utc_offset = *hours * hour;
    reader.year.at = {.latitude = *north * degree, .longitude = *east * degree};
    reader.year.elevation = *up * metre;
    double apart = std::abs(*hours - *east / 15.0);
    apart = std::min(apart, 24.0 - apart);
    if (apart > 3.0)
        reader.refuse(fmt::format("column {} (UTC offset)", offset + 1),
                      fmt::format("the clock is {:.1f} h from the sun at that longitude", apart),
                      "west is negative in both");
}

// --- TMY3: a station line, a line of headings, rows with a date and a time.

std::optional<std::size_t> column_headed(const Cells& headings, std::string_view beginning) {
    for (std::size_t i = 0; i < headings.size(); ++i)
        if (headings[i].starts_with(beginning)) return i;
    return std::nullopt;
}

std::size_t needed_column(Reader& reader, const Cells& headings, std::string_view beginning) {
    const auto found = column_headed(headings, beginning);
    if (!found)
        reader.refuse("headings", fmt::format("no column begins with \"{}\"", beginning),
                      "give the headings of a TMY3 file on line 2");
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

void read_tmy3_row(Reader& reader, const Cells& cells) {
    if (cells.size() < 2) {
        reader.refuse("row", "no date and time", "give a row of 68 or 71 cells");
        return;
    }
    const auto when = date_and_time(cells[0], cells[1]);
    if (!when || when->hour < 1.0) {
        reader.refuse("column 1 and 2 (date, time)", "these are not a date and the end of an hour",
                      "give MM/DD/YYYY and the hour's end, 01:00 to 24:00");
        return;
    }
    add_hour(reader, cells, when->month, when->date, when->hour);
}

void read_tmy3(Reader& reader, std::string_view first_line, std::string_view text) {
    Cells cells;
    split_cells(first_line, cells);
    reader.year.format = WeatherFormat::tmy3;
    reader.line = 1;
    if (cells.size() < 7) {
        reader.refuse("station", fmt::format("{} cells on line 1", cells.size()),
                      "give station, name, state, UTC offset, latitude, longitude, elevation");
        return;
    }
    reader.year.station = station_in(cells[1]);
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
                                          reader.columns.diffuse, reader.columns.air});
    if (!reader.errors.empty()) return;
    while (!text.empty() && !reader.is_full()) {
        ++reader.line;
        const std::string_view line = take_line(text);
        if (line.find_first_not_of(" ,\t") == std::string_view::npos) continue;
        split_cells(line, cells);
        read_tmy3_row(reader, cells);
    }
}

// --- EPW: eight lines of heading, rows of numbers.

void read_epw_row(Reader& reader, const Cells& cells) {
    const auto month = reader.within(cells, 1, "month", 1.0, 12.0);
    const auto date = reader.within(cells, 2, "day", 1.0, 31.0);
    const auto hour_of_day = reader.within(cells, 3, "hour", 1.0, 24.0);
    if (month && date && hour_of_day)
        add_hour(reader, cells, std::floor(*month), std::floor(*date), std::floor(*hour_of_day));
}

void read_epw(Reader& reader, std::string_view first_line, std::string_view text) {
    Cells cells;
    split_cells(first_line, cells);
    reader.year.format = WeatherFormat::epw;
    reader.line = 1;
    if (cells.size() < 10) {
        reader.refuse("LOCATION", fmt::format("{} cells on line 1", cells.size()),
                      "give LOCATION, city, state, country, source, station, latitude, longitude, "
                      "UTC offset, elevation");
        return;
    }
    reader.year.station = station_in(cells[1]);
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
        if (line.find_first_not_of(" ,\t") == std::string_view::npos) continue;
        if (!begins_with_number(line) && reader.line <= 8) continue;  // headings
        split_cells(line, cells);
        read_epw_row(reader, cells);
    }
}

// The calendar must run through the year once, whatever the years' numbers.
void check_calendar(Reader& reader) {
    const auto& hours = reader.year.hours;
    reader.line = 0;
    if (hours.size() != 8760 && hours.size() != 8784) {
        reader.refuse("rows", fmt::format("{} hours", hours.size()),
                      "give 8760, or 8784 in a leap year");
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
                    "rows",
                    fmt::format("hour {} of the year is {}/{} {}:00, not {}/{} {}:00", next + 1,
                                found.month, found.date, found.hour, month, date, of_day),
                    "give every hour from 1 January 1:00 to 31 December 24:00 once, in order");
                return;
            }
}

constexpr std::array<std::string_view, 12> month_names{
    "January", "February", "March",     "April",   "May",      "June",
    "July",    "August",   "September", "October", "November", "December"};

// Months that hold no year's light are refused at the file, not at a figure made from it.
void check_months(Reader& reader) {
    constexpr Irradiation little_light = 1e6 * joule / square_metre;
    constexpr double clearest = 0.85;  // as for typed months
    struct Month {
        int line = 0, lit = 0, dark = 0, days = 0;
        Irradiation global{};
    };
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
    for (int number = 1; number <= 12; ++number) {
        const Month& of = months[std::size_t(number - 1)];
        const auto name = month_names[std::size_t(number - 1)];
        const Irradiation outside = extraterrestrial_of_month(reader.year.at.latitude, number);
        if (outside <= little_light) continue;
        reader.line = of.line;
        if (2 * of.dark > of.lit) {
            reader.refuse("light",
                          fmt::format("in {} {} of {} hours with the sun up have no usable light",
                                      name, of.dark, of.lit),
                          "global light is needed, or direct and diffuse light together; take a "
                          "complete file");
            continue;
        }
        const Irradiation a_day = of.global / double(std::max(1, of.days));
        if (a_day <= Irradiation{} || a_day > clearest * outside)
            reader.refuse("light",
                          fmt::format("{} brings {:.2f} kWh/m^2 a day, while {:.2f} reach the top "
                                      "of the air there",
                                      name, a_day / kilowatt_hour_per_square_metre,
                                      outside / kilowatt_hour_per_square_metre),
                          "more than 0 and at most 0.85 of that is possible; check the columns, "
                          "their units (Wh/m^2 of the hour) and the latitude");
    }
}

}  // namespace

Result<WeatherYear> read_weather(std::string_view text, const std::string& file) {
    Reader reader{.file = file, .year = {}, .errors = {}, .lines = {}};
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);  // byte order mark
    const std::string_view first = take_line(text);
    if (first.starts_with("LOCATION"))
        read_epw(reader, first, text);
    else if (begins_with_number(first) && first.find(',') != std::string_view::npos)
        read_tmy3(reader, first, text);
    else {
        reader.line = 1;
        reader.refuse("format", "the first line is not that of a weather file",
                      "give an EPW file (LOCATION, …) or a TMY3 file (station number, name, …)");
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
                     .found = "the file is empty",
                     .remedy = std::string(wanted.remedy),
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
