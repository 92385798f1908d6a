#include "solar/weather/data_base_year.hpp"

#include <algorithm>
#include <cmath>

#include "solar/weather/csv.hpp"
#include "units/quote.hpp"

namespace solar {

namespace {

using words::said;

// The columns of a row that say when it was.
struct StampColumns {
    std::size_t month = 0, date = 0, hour = 0, minute = 0;
};

std::optional<std::size_t> column_named(const Cells& names, std::string_view name) {
    const auto found = std::ranges::find(names, name);
    return found == names.end() ? std::nullopt : std::optional(std::size_t(found - names.begin()));
}

std::size_t label(WeatherReader& reader, const Cells& labels, std::string_view name) {
    const auto found = column_named(labels, name);
    if (!found)
        reader.refuse(said<"labels">(), said<"none is \"{label}\"">(name),
                      said<"give the two lines about the place as the data base writes them">());
    return found.value_or(0);
}

std::size_t heading(WeatherReader& reader, const Cells& headings, std::string_view name) {
    const auto found = column_named(headings, name);
    if (!found)
        reader.refuse(said<"headings">(), said<"no column is named \"{heading}\"">(name),
                      said<"ask for GHI, DHI and DNI, and keep the headings on line 3">());
    return found.value_or(0);
}

// Place names are "-" where the data base knows none; its own number always stands there.
void read_station(WeatherReader& reader, const Cells& labels, const Cells& cells) {
    const auto cell_of = [&](std::string_view name) {
        const auto column = column_named(labels, name);
        return column && *column < cells.size() ? cells[*column] : std::string_view{};
    };
    const std::string_view city = cell_of("City");
    const bool is_named = !city.empty() && city != "-";
    name_station(reader, is_named ? city : cell_of("Location ID"));
    if (!is_named) reader.year.station = "NSRDB " + reader.year.station;
}

bool is_same_unit(std::string_view found, std::string_view wanted) {
    return std::ranges::equal(found, wanted, [](char one, char other) {
        return std::tolower(static_cast<unsigned char>(one)) == other;
    });
}

void check_units(WeatherReader& reader, const Cells& labels, const Cells& cells) {
    struct Unit {
        std::string_view label, unit;
    };
    for (const auto& [label, unit] : {Unit{"GHI Units", "w/m2"}, Unit{"DHI Units", "w/m2"},
                                      Unit{"DNI Units", "w/m2"}, Unit{"Temperature Units", "c"}}) {
        const auto column = column_named(labels, label);
        if (!column || *column >= cells.size() || is_same_unit(cells[*column], unit)) continue;
        reader.refuse(said<"column {number} ({heading})">(*column + 1, label),
                      said<"the unit is not {unit}">(unit),
                      said<"give light in w/m2 and warmth in c, as the data base does">());
    }
}

// Days of the file must be days of the place: without that the dullest day is no day at all.
bool is_on_local_time(WeatherReader& reader, const Cells& labels, const Cells& cells,
                      std::size_t zone) {
    const auto local = column_named(labels, "Local Time Zone");
    if (!local || *local >= cells.size() || zone >= cells.size()) return true;
    const auto of_rows = number(cells[zone]);
    const auto of_place = number(cells[*local]);
    if (!of_rows || !of_place || *of_rows == *of_place) return true;
    reader.refuse(said<"column {number} ({heading})">(zone + 1, "Time Zone"),
                  said<"the rows are not on the local time of the place">(),
                  said<"take the file with local times in place of universal time (utc=false)">());
    return false;
}

void read_place(WeatherReader& reader, const Cells& labels, const Cells& cells) {
    reader.line = 1;
    const std::size_t zone = label(reader, labels, "Time Zone");
    const std::size_t latitude = label(reader, labels, "Latitude");
    const std::size_t longitude = label(reader, labels, "Longitude");
    const std::size_t elevation = label(reader, labels, "Elevation");
    if (!reader.errors.empty()) return;
    reader.line = 2;
    read_station(reader, labels, cells);
    check_units(reader, labels, cells);
    if (is_on_local_time(reader, labels, cells, zone))
        read_coordinates(reader, cells, zone, latitude, longitude, elevation);
}

StampColumns read_headings(WeatherReader& reader, const Cells& headings) {
    reader.line = 3;
    reader.columns = {.global = heading(reader, headings, "GHI"),
                      .direct = heading(reader, headings, "DNI"),
                      .diffuse = heading(reader, headings, "DHI"),
                      .air = column_named(headings, "Temperature"),
                      .ground = column_named(headings, "Surface Albedo"),
                      .snow = std::nullopt,
                      .needed = 0};
    reader.columns.needed = 1 + std::max({reader.columns.global, reader.columns.direct,
                                          reader.columns.diffuse, reader.columns.air.value_or(0)});
    return {.month = heading(reader, headings, "Month"),
            .date = heading(reader, headings, "Day"),
            .hour = heading(reader, headings, "Hour"),
            .minute = heading(reader, headings, "Minute")};
}

// Rows an hour apart all have one minute, that of the hour's middle or its beginning.
bool is_an_hour_apart(WeatherReader& reader, double minute, std::optional<double>& of_all) {
    if (!of_all && (minute == 0.0 || minute == 30.0)) of_all = minute;
    if (of_all == minute) return true;
    reader.refuse(said<"column {heading}">("Minute"),
                  of_all ? said<"the minute is another than that of the rows before">()
                         : said<"the minute is neither 0 nor 30">(),
                  said<"take the file with a row an hour (interval=60)">());
    return false;
}

// Whether it is worth reading on.
bool read_row(WeatherReader& reader, const Cells& cells, const StampColumns& stamp,
              std::optional<double>& minute_of_all) {
    const auto month = reader.within(cells, stamp.month, "Month", 1.0, 12.0);
    const auto date = reader.within(cells, stamp.date, "Day", 1.0, 31.0);
    const auto hour = reader.within(cells, stamp.hour, "Hour", 0.0, 23.0);
    const auto minute = reader.within(cells, stamp.minute, "Minute", 0.0, 59.0);
    if (!month || !date || !hour || !minute) return true;
    if (!is_an_hour_apart(reader, *minute, minute_of_all)) return false;
    add_hour(reader, cells, std::floor(*month), std::floor(*date), std::floor(*hour) + 1.0);
    return true;
}

}  // namespace

void read_data_base_year(WeatherReader& reader, std::string_view first_line,
                         std::string_view text) {
    reader.year.format = WeatherFormat::nsrdb;
    Cells names;
    Cells cells;
    split_cells(first_line, names);
    split_cells(take_line(text), cells);
    read_place(reader, names, cells);
    if (!reader.errors.empty()) return;
    split_cells(take_line(text), names);
    const StampColumns stamp = read_headings(reader, names);
    if (!reader.errors.empty()) return;
    std::optional<double> minute_of_all;
    while (!text.empty() && !reader.is_full()) {
        ++reader.line;
        const std::string_view line = take_line(text);
        if (is_blank(line)) continue;
        split_cells(line, cells);
        if (!read_row(reader, cells, stamp, minute_of_all)) return;
    }
}

}  // namespace solar
