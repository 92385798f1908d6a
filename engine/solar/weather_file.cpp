#include "solar/weather_file.hpp"

#include "scenario/file.hpp"
#include "scenario/named_file.hpp"
#include "solar/csv.hpp"
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
    std::optional<std::size_t> ground;
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
                                 .ground = ground(reader, cells)});
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
    reader.columns = {
        .global = 13, .direct = 14, .diffuse = 15, .air = 6, .ground = 32, .needed = 16};
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

}  // namespace

namespace {

// Any common year; a 29 February falls on 1 March, which the sun does not notice.
Instant instant_of(const WeatherYear& year, const HourOfWeather& row, double hours_before_end) {
    const auto date = std::chrono::year(2026) / row.month / row.date;
    const std::chrono::sys_days days = date;
    return instant(
        local_time(std::chrono::year_month_day(days), (row.hour - hours_before_end) * hour),
        year.utc_offset);
}

double cos_zenith_at(const WeatherYear& year, const HourOfWeather& row, double hours_before_end) {
    const SunPosition sun = sun_position(year.at, instant_of(year, row, hours_before_end));
    return std::max(0.0, std::cos(sun.zenith / radian));
}

// Mean over the hour of the cosine, 0 while the sun is down.
double height_of_hour(const WeatherYear& year, const HourOfWeather& row) {
    constexpr int parts = 6;
    double sum = 0.0;
    for (int part = 0; part < parts; ++part)
        sum += cos_zenith_at(year, row, (part + 0.5) / parts);
    return sum / parts;
}

Irradiance outside_the_air(const HourOfWeather& row) {
    const auto date = std::chrono::year(2026) / row.month / row.date;
    return extraterrestrial_normal(day_of_year(std::chrono::sys_days(date)));
}

// The kinds of light that are missing follow from the others by G = G_n cos z + G_d; global light
// alone is split by (17). method.md (47)
void complete_light(const WeatherYear& year, HourOfWeather& row) {
    if (row.global && row.direct && row.diffuse) return;
    const double height = height_of_hour(year, row);
    if (height <= 0.0) {  // night: what is missing is nothing
        for (auto* light : {&row.global, &row.direct, &row.diffuse})
            *light = light->value_or(Irradiance{});
        return;
    }
    const Irradiance outside = outside_the_air(row);
    // A low sun would make a small difference into a large beam.
    const auto square_on = [&](Irradiance level) {
        const Irradiance most = outside * 0.85;  // no beam at the ground is stronger: ours
        return height > 0.02 ? std::clamp<Irradiance>(level / height, {}, most) : Irradiance{};
    };
    row.light = LightFrom::worked_out;
    if (row.direct && row.diffuse) {
        row.global = *row.direct * height + *row.diffuse;
    } else if (row.global && row.direct) {
        row.diffuse = std::max<Irradiance>(Irradiance{}, *row.global - *row.direct * height);
    } else if (row.global && row.diffuse) {
        row.direct = square_on(*row.global - *row.diffuse);
    } else if (row.global) {
        const double clearness = std::min(1.0, double(*row.global / (outside * height)));
        row.diffuse = *row.global * diffuse_share_of_hour(Clearness(clearness)).value();
        row.direct = square_on(*row.global - *row.diffuse);
    } else {  // one of the two alone says nothing of the other
        row.global.reset();
        row.direct.reset();
        row.diffuse.reset();
        row.light = LightFrom::nowhere;
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

namespace {

// Hours whose three kinds of light stand in the file, with the sun in them.
struct LitHour {
    const HourOfWeather* row;
    std::size_t number;
};

double closure(const WeatherYear& year, const std::vector<LitHour>& lit, double hours_before_end) {
    Irradiance sum{};
    Irradiance global{};
    for (const auto& [row, number] : lit) {
        global += *row->global;
        sum += *row->direct * cos_zenith_at(year, *row, hours_before_end) + *row->diffuse;
    }
    return global > Irradiance{} ? double(sum / global) : 0.0;
}

// By how much later the sun fits the light: the shift, in half hours, at which direct and diffuse
// light make the global hour by hour. Zero unless another fits a good deal better. method.md (48)
struct Fit {
    Duration late{};
    double misfit = 0.0;
};

Fit fit_of(const WeatherYear& year, const std::vector<LitHour>& lit) {
    constexpr int reach = 24;                    // half hours
    constexpr double a_good_deal_better = 0.02;  // of the year's global light: ours
    if (lit.empty()) return {};
    const auto misses = [&](int half_hours) {
        double sum = 0.0;
        double global = 0.0;
        // every third hour: enough to tell, and no hour of the day is left out
        for (std::size_t i = 0; i < lit.size(); i += 3) {
            const HourOfWeather& row = *lit[i].row;
            global += row.global->value();
            sum += std::abs(row.global->value() - row.diffuse->value() -
                            row.direct->value() * cos_zenith_at(year, row, 0.5 - 0.5 * half_hours));
        }
        return global > 0.0 ? sum / global : 0.0;
    };
    const double now = misses(0);
    if (now < a_good_deal_better) return {{}, now};
    int best = 0;
    double least = now;
    for (int shift = -reach; shift <= reach; ++shift) {
        const double missed = misses(shift);
        if (missed >= least) continue;
        least = missed;
        best = shift;
    }
    if (now - least < a_good_deal_better) return {{}, now};
    return {0.5 * best * hour, least};
}

void count_what_no_sky_does(const WeatherYear& year, WeatherSummary& found) {
    const auto& hours = year.hours;
    const auto air = [&](std::size_t i) { return in_celsius(*hours[i].air); };
    for (std::size_t i = 0; i < hours.size(); ++i) {
        const HourOfWeather& row = hours[i];
        if (i > 0 && i + 1 < hours.size() && hours[i - 1].air && row.air && hours[i + 1].air)
            found.leaps +=
                std::abs(air(i) - air(i - 1)) > 8.0 && std::abs(air(i) - air(i + 1)) > 8.0;
        if (row.light == LightFrom::nowhere) continue;
        const double global = row.global->value();
        const double direct = row.direct->value();
        const double diffuse = row.diffuse->value();
        if (std::max({global, direct, diffuse}) <= 20.0) continue;
        const double height = height_of_hour(year, row);
        found.lit_at_night += height <= 0.0;
        const double outside = outside_the_air(row).value();
        found.brighter_than_sun +=
            std::max(global, diffuse) > outside * height + 100.0 || direct > outside;
        if (row.light == LightFrom::file)
            found.unbalanced += std::abs(global - direct * height - diffuse) > 100.0;
    }
}

Irradiation in_an_hour(const std::optional<Irradiance>& light) {
    return Irradiation(light.value_or(Irradiance{}) * hour);
}

}  // namespace

WeatherSummary summary(const WeatherYear& year) {
    WeatherSummary found;
    found.station = year.station;
    found.hours = int(year.hours.size());
    double warmth = 0.0;
    int warm_hours = 0;
    std::vector<Irradiation> days(year.hours.size() / 24);
    std::array<int, 12> days_of{};
    std::vector<LitHour> lit;
    for (std::size_t i = 0; i < year.hours.size(); ++i) {
        const HourOfWeather& row = year.hours[i];
        found.missing += row.light == LightFrom::nowhere;
        found.worked_out += row.light == LightFrom::worked_out;
        if (row.light == LightFrom::file && *row.global + *row.direct > Irradiance{})
            lit.push_back({&row, i});
        found.global += in_an_hour(row.global);
        found.direct += in_an_hour(row.direct);
        found.diffuse += in_an_hour(row.diffuse);
        days[i / 24] += in_an_hour(row.global);
        const auto month = std::size_t(row.month - 1);
        found.monthly[month] += in_an_hour(row.global);
        days_of[month] += row.hour == 24;
        if (!row.air) {
            ++found.without_air;
            continue;
        }
        warmth += in_celsius(*row.air);
        ++warm_hours;
        found.coldest = std::min(found.coldest.value_or(*row.air), *row.air);
        found.warmest = std::max(found.warmest.value_or(*row.air), *row.air);
    }
    if (warm_hours > 0) found.mean = celsius(warmth / warm_hours);
    for (std::size_t month = 0; month < 12; ++month)
        if (days_of[month] > 0) found.monthly[month] /= double(days_of[month]);
    const auto worst = std::min_element(days.begin(), days.end());
    found.worst_day = *worst;
    const HourOfWeather& first_hour = year.hours[std::size_t(worst - days.begin()) * 24];
    found.worst_day_month = first_hour.month;
    found.worst_day_date = first_hour.date;
    std::size_t dullest = 0;
    const auto three_from = [&](std::size_t i) { return days[i] + days[i + 1] + days[i + 2]; };
    for (std::size_t i = 1; i + 2 < days.size(); ++i)
        if (three_from(i) < three_from(dullest)) dullest = i;
    found.worst_three_days = three_from(dullest);
    found.worst_three_days_month = year.hours[dullest * 24].month;
    found.worst_three_days_date = year.hours[dullest * 24].date;
    found.closure = closure(year, lit, 0.5);
    found.closure_at_the_hours_end = closure(year, lit, 0.0);
    const Fit fit = fit_of(year, lit);
    found.sun_late = fit.late;
    found.misfit = fit.misfit;
    count_what_no_sky_does(year, found);
    found.half_an_hour_off =
        std::abs(found.closure_at_the_hours_end - 1.0) + 0.005 < std::abs(found.closure - 1.0);
    return found;
}

std::vector<Oddity> oddities_of(const WeatherSummary& sums) {
    using scenario::Severity;
    std::vector<Oddity> odd;
    const auto hours = [](int count) {
        return fmt::format("{} {}", count, count == 1 ? "hour" : "hours");
    };
    if (sums.missing > 0)
        odd.push_back({Severity::caution,
                       fmt::format("{} of {} hours have no usable light with the sun up; they "
                                   "count as dark",
                                   sums.missing, sums.hours),
                       "take a complete file"});
    if (sums.worked_out > 0)
        odd.push_back({Severity::note,
                       fmt::format("a kind of light is missing in {} and is worked out from the "
                                   "others; global light alone is split by [Erbs 1982]",
                                   hours(sums.worked_out)),
                       ""});
    const double late = sums.sun_late / hour;
    if (std::abs(late) > 0.75)
        odd.push_back({Severity::caution,
                       fmt::format("the light fits the sun {:g} h {} best: the clock in the "
                                   "file's first line, its longitude or its rows are shifted",
                                   std::abs(late), late > 0.0 ? "later" : "earlier"),
                       "compare the station's line with the maker's copy of the file"});
    else if (sums.half_an_hour_off || late != 0.0)
        odd.push_back({Severity::note,
                       fmt::format("the sun's height fits the light better half an hour {} "
                                   "(closure {:.3f} against {:.3f})",
                                   late < 0.0 ? "earlier" : "later", sums.closure_at_the_hours_end,
                                   sums.closure),
                       ""});
    if (sums.without_air > 0)
        odd.push_back({Severity::note,
                       fmt::format("{} have no temperature; the month's mean stands for it",
                                   hours(sums.without_air)),
                       ""});
    constexpr double far_from_closed = 0.03;  // ours
    if (sums.closure > 0.0 &&
        (std::abs(sums.closure - 1.0) > far_from_closed || sums.misfit > 0.02))
        odd.push_back({Severity::caution,
                       fmt::format("direct and diffuse light make {:.3f} of the global light and "
                                   "miss it by {:.1f} % hour by hour: the clock, the place or one "
                                   "of the columns may be wrong",
                                   sums.closure, 100.0 * sums.misfit),
                       "compare the station's line with the maker's copy of the file"});
    const auto impossible = [&](int count, std::string_view what) {
        if (count > 0)
            odd.push_back({count > sums.hours / 100 ? Severity::caution : Severity::note,
                           fmt::format("{} {}", hours(count), what),
                           "compare them with the maker's copy of the file"});
    };
    impossible(sums.unbalanced,
               "in which direct and diffuse light miss the global light by more "
               "than 100 W/m^2");
    impossible(sums.lit_at_night, "with light while the sun is down");
    impossible(sums.brighter_than_sun, "with more light than reaches the top of the air");
    impossible(sums.leaps, "with air more than 8 K off the hours on both sides");
    return odd;
}

std::optional<Albedo> mean_ground(const WeatherYear& year) {
    double sum = 0.0;
    int known = 0;
    for (const HourOfWeather& row : year.hours) {
        if (!row.ground || row.global.value_or(Irradiance{}) <= Irradiance{}) continue;
        sum += row.ground->value();
        ++known;
    }
    if (known == 0) return std::nullopt;
    return Albedo(sum / known);
}

std::optional<std::array<Temperature, 12>> monthly_temperature(const WeatherYear& year) {
    std::array<double, 12> warmth{};
    std::array<int, 12> hours{};
    for (const HourOfWeather& row : year.hours)
        if (row.air) {
            warmth[std::size_t(row.month - 1)] += in_celsius(*row.air);
            ++hours[std::size_t(row.month - 1)];
        }
    std::array<Temperature, 12> means;
    for (std::size_t month = 0; month < 12; ++month) {
        if (hours[month] == 0) return std::nullopt;
        means[month] = celsius(warmth[month] / hours[month]);
    }
    return means;
}

Site site_of(const WeatherYear& year) {
    const WeatherSummary sums = summary(year);
    Site made{.name = year.station,
              .at = year.at,
              .elevation = year.elevation,
              .utc_offset = year.utc_offset,
              .temperature = monthly_temperature(year),
              .daily_range = {},
              .source = fmt::format("hourly weather file of {}", year.station)};
    for (std::size_t month = 0; month < 12; ++month) {
        const Irradiation outside = extraterrestrial_of_month(year.at.latitude, int(month) + 1);
        const bool is_lit = outside > 0.1e6 * joule / square_metre;
        made.clearness[month] = Clearness(
            is_lit ? std::clamp(double(sums.monthly[month] / outside), 0.02, 0.85) : 0.40);
    }
    return made;
}

}  // namespace solar
