#include "solar/weather/weather_reader.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "solar/weather/csv.hpp"
#include "units/quote.hpp"

namespace solar {

using namespace units;
using words::Said;
using words::said;
using words::said_of;
using words::with_decimals;

namespace {

constexpr std::size_t most_errors = 20;
constexpr int longest_station = 80;   // characters of its name
constexpr double brightest = 1500.0;  // W/m2; the solar constant is 1367
constexpr std::array<int, 12> days_in_month{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

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

// -9900 and -99 stand for missing in TMY3, 9999 and 999 in EPW: [TMY3 manual], [EPW].
bool light_is_missing(double value) {
    return value <= -99.0 || value >= 9999.0;
}

std::optional<Irradiance> light(WeatherReader& reader, const Cells& cells, std::size_t column,
                                const Said& name) {
    const std::optional<double> value = number(cells[column]);
    if (value && light_is_missing(*value)) return std::nullopt;
    if (value && *value >= 0.0 && *value <= brightest) return *value * watt_per_square_metre;
    if (reader.year.format == WeatherFormat::epw && cells[column].empty()) return std::nullopt;
    static_cast<void>(reader.within(cells, column, name, 0.0, brightest));
    return std::nullopt;
}

std::optional<Temperature> air(WeatherReader& reader, const Cells& cells) {
    if (!reader.columns.air) return std::nullopt;
    const std::size_t column = *reader.columns.air;
    if (column >= cells.size()) return std::nullopt;
    const std::optional<double> value = number(cells[column]);
    if (value && (*value <= -99.0 || *value >= 99.9)) return std::nullopt;
    if (!value && cells[column].empty()) return std::nullopt;
    const std::optional<double> degrees =
        reader.within(cells, column, said<"dry bulb">(), -90.0, 70.0);
    return degrees ? std::optional(celsius(*degrees)) : std::nullopt;
}

std::optional<Albedo> ground(const WeatherReader& reader, const Cells& cells) {
    if (!reader.columns.ground || *reader.columns.ground >= cells.size()) return std::nullopt;
    const std::optional<double> value = number(cells[*reader.columns.ground]);
    // 999 and -9900 are missing; 0 is written where it was not measured
    if (!value || *value <= 0.0 || *value > 1.0) return std::nullopt;
    return Albedo(*value);
}

// 999 is missing [EPW]; deeper than any station's it is taken for that as well.
std::optional<Length> snow(const WeatherReader& reader, const Cells& cells) {
    constexpr double deepest = 900.0;  // cm
    if (!reader.columns.snow || *reader.columns.snow >= cells.size()) return std::nullopt;
    const std::optional<double> value = number(cells[*reader.columns.snow]);
    if (!value || *value < 0.0 || *value > deepest) return std::nullopt;
    return 0.01 * *value * metre;
}

}  // namespace

void WeatherReader::refuse(Said place, Said fault, Said remedy) {
    if (is_full()) return;
    errors.push_back({.where = "",
                      .found = said<"{place}: {fault}">(std::move(place), std::move(fault)),
                      .remedy = std::move(remedy),
                      .file = file,
                      .line = line});
}

bool WeatherReader::is_full() const {
    return errors.size() >= most_errors;
}

std::optional<double> WeatherReader::within(const Cells& cells, std::size_t column,
                                            const Said& name, double low, double high) {
    const std::string_view cell = column < cells.size() ? cells[column] : std::string_view{};
    const std::optional<double> value = number(cell);
    if (value && *value >= low && *value <= high) return value;
    refuse(
        said<"column {number} ({heading})">(column + 1, name),
        cell.empty()   ? said<"the cell is empty">()
        : !value       ? said<"the cell is not a number">()
        : *value < low ? said<"the number is too small">()
                       : said<"the number is too large">(),
        said<"give a number from {low} to {high}">(with_decimals(low, 0), with_decimals(high, 0)));
    return std::nullopt;
}

void name_station(WeatherReader& reader, std::string_view cell) {
    reader.year.letters_guessed = !is_utf8(cell);
    reader.year.station = quote(
        reader.year.letters_guessed ? from_latin_1(cell) : std::string(cell), longest_station);
}

void read_coordinates(WeatherReader& reader, const Cells& cells, std::size_t offset,
                      std::size_t latitude, std::size_t longitude, std::size_t elevation) {
    const auto hours = reader.within(cells, offset, said<"UTC offset">(), -12.0, 14.0);
    const auto north = reader.within(cells, latitude, said<"latitude">(), -90.0, 90.0);
    const auto east = reader.within(cells, longitude, said<"longitude">(), -180.0, 180.0);
    const auto up = reader.within(cells, elevation, said<"elevation">(), -500.0, 9000.0);
    if (!hours || !north || !east || !up) return;
    reader.year.utc_offset = *hours * hour;
    reader.year.at = {.latitude = *north * degree, .longitude = *east * degree};
    reader.year.elevation = *up * metre;
    double apart = std::abs(*hours - *east / 15.0);
    apart = std::min(apart, 24.0 - apart);
    if (apart > 3.0)
        reader.refuse(
            said<"column {number} ({heading})">(offset + 1, said<"UTC offset">()),
            said<"the clock is {hours} h from the sun at that longitude">(with_decimals(apart, 1)),
            said<"west is negative in both">());
}

void add_hour(WeatherReader& reader, const Cells& cells, double month, double date, double hour) {
    const int most = month == 2.0 ? 29 : days_in_month[std::size_t(month) - 1];
    if (date > most)
        reader.refuse(said<"date">(), said<"month {month} has no day {day}">(int(month), int(date)),
                      said<"give a day of the month">());
    if (cells.size() < reader.columns.needed) {
        reader.refuse(said<"row">(), said_of<"{n} cell", "{n} cells">(cells.size()),
                      said<"give at least {n}">(reader.columns.needed));
        return;
    }
    const Columns& columns = reader.columns;
    reader.year.hours.push_back(
        {.month = int(month),
         .date = int(date),
         .hour = int(hour),
         .global = light(reader, cells, columns.global, said<"global">()),
         .direct = light(reader, cells, columns.direct, said<"direct">()),
         .diffuse = light(reader, cells, columns.diffuse, said<"diffuse">()),
         .air = air(reader, cells),
         .ground = ground(reader, cells),
         .snow = snow(reader, cells)});
    reader.lines.push_back(reader.line);
}

bool is_blank(std::string_view line) {
    return line.find_first_not_of(" ,\t") == std::string_view::npos;
}

}  // namespace solar
