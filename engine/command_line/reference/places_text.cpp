#include "command_line/reference/places_text.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <sstream>

#include <fmt/format.h>

#include "faces/page.hpp"
#include "solar/places/places.hpp"
#include "units/quote.hpp"

namespace command_line {

namespace {

using solar::KnownPlace;
using units::degree;
using units::metre;
using words::said;

constexpr std::size_t as_many = 5;

// Mean of the year a day on level ground.
double mean_of_year(const KnownPlace& place) {
    double sum = 0.0;
    for (const auto& month : place.irradiation) {
        sum += month / units::kilowatt_hour_per_square_metre;
    }
    return sum / 12.0;
}

std::string row_of(const KnownPlace& place) {
    const double north = place.at.latitude / degree;
    const double east = place.at.longitude / degree;
    return fmt::format("{}, {}: {:.2f} {} {:.2f} {}, {:.0f} m, {:.1f} kWh/m^2 a day\n", place.name,
                       place.country, std::abs(north), north < 0.0 ? 'S' : 'N', std::abs(east),
                       east < 0.0 ? 'W' : 'E', place.elevation / metre, mean_of_year(place));
}

std::string all_of_them() {
    std::map<std::string_view, std::vector<std::string_view>> countries;
    for (const KnownPlace& place : solar::known_places()) {
        countries[place.country].push_back(place.name);
    }
    std::string text;
    for (const auto& [country, names] : countries) {
        std::string line = std::string(country) + " ";
        for (const auto& name : names) {
            if (line.size() + name.size() > 76) {
                text += line + "\n";
                line = "  ";
            }
            line += fmt::format(" {}{}", name, name == names.back() ? "" : ",");
        }
        text += line + "\n";
    }
    return text + fmt::format(
                      "\n{} places. Anywhere else give latitude and longitude; the nearest place's "
                      "sky\nis taken then, with a caution beyond 100 km or 300 m of height.\n",
                      solar::known_places().size());
}

// "40.0, -105.3" and "40.0 -105.3"; absent when it is not two numbers.
std::optional<solar::Coordinates> coordinates_in(std::string text) {
    for (char& letter : text) {
        if (letter == ',') letter = ' ';
    }
    std::istringstream stream(text);
    stream.imbue(std::locale::classic());
    double latitude = 0.0;
    double longitude = 0.0;
    if (!(stream >> latitude >> longitude) || !(stream >> std::ws).eof()) return std::nullopt;
    return solar::Coordinates{.latitude = latitude * degree, .longitude = longitude * degree};
}

std::string nearest_to(solar::Coordinates at) {
    std::string text;
    for (const auto& near : solar::nearest_known_places(at, as_many)) {
        text += fmt::format("{:6.0f} km  {}", near.distance / metre / 1000.0, row_of(near.place));
    }
    return text;
}

units::Result<std::string> places_in_rows(const std::string& asked) {
    if (asked.find_first_not_of(' ') == std::string::npos) return all_of_them();
    if (const auto at = coordinates_in(asked)) {
        const bool on_the_globe =
            std::abs(at->latitude / degree) <= 90.0 && std::abs(at->longitude / degree) <= 180.0;
        if (!on_the_globe) {
            return units::fail(
                {.where = "places",
                 .found = units::quote(asked, 80),
                 .remedy = said<"give latitude -90 to 90 and longitude -180 to 180, north "
                                "and east positive">()});
        }
        return nearest_to(*at);
    }
    const auto named = solar::places_beginning(asked);
    if (named.empty()) {
        auto unknown = solar::known_place(asked).error();
        for (auto& error : unknown) {
            error.where = "places";
            error.found = said<"no place begins with \"{name}\"">(units::quote(asked, 80));
        }
        return units::fail(std::move(unknown));
    }
    std::string text;
    for (const KnownPlace& place : named) {
        text += row_of(place) + fmt::format("  {}\n", place.source);
    }
    return text;
}

}  // namespace

units::Result<std::string> places_text(const std::string& asked, int columns) {
    auto text = places_in_rows(asked);
    if (!text) return text;
    const int width = std::clamp(columns, 40, 100);
    std::istringstream rows(*text);
    std::string page;
    for (std::string row; std::getline(rows, row);) {
        // What does not fit goes on below, further in.
        const bool fits = faces::width_of(row) <= width;
        const auto lines = fits ? std::vector{row} : faces::wrapped(row, width - 4);
        for (std::size_t place = 0; place < lines.size(); ++place)
            page += (place == 0 ? "" : "    ") + lines[place] + "\n";
    }
    return page;
}

}  // namespace command_line
