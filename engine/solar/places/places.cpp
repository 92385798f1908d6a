#include "solar/places/places.hpp"

#include <cassert>

#include "solar/weather/csv.hpp"
#include "words/said.hpp"

namespace solar {

extern const std::string_view places_text;  // from places.csv, by embed_places.cmake

namespace {

using namespace units;
using words::Said;
using words::said;

// Columns of places.csv.
enum Column {
    name,
    country,
    latitude,
    longitude,
    elevation,
    utc_offset,
    zone,
    sun,
    clear = sun + 12,
    warmth = clear + 12,
    status = warmth + 12,
    known_by,
    data,
    source,
    columns
};

words::Said known_from(std::string_view kind, std::string_view data) {
    using words::said;
    if (kind == "year") return said<"means of one typical year ({data})">(data);
    if (kind == "mean") return said<"means of many years ({data})">(data);
    assert(kind == "sunshine");
    return said<
        "estimated from hours of sunshine, with an error of about 6 % in the year "
        "({data})">(data);
}

KnownPlace read_row(const std::vector<std::string_view>& cells) {
    const auto value = [&](int column) { return number(cells[std::size_t(column)]).value(); };
    KnownPlace place;
    place.name = cells[name];
    place.country = cells[country];
    place.at = {.latitude = value(latitude) * degree, .longitude = value(longitude) * degree};
    place.elevation = value(elevation) * metre;
    place.utc_offset = value(utc_offset) * hour;
    place.source = cells[source];
    place.known_from = known_from(cells[known_by], cells[data]);
    std::array<Temperature, 12> temperature;
    bool warmth_is_known = true;
    for (int month = 0; month < 12; ++month) {
        const auto i = std::size_t(month);
        place.irradiation[i] = value(sun + month) * kilowatt_hour_per_square_metre;
        place.clearness[i] = Clearness(value(clear + month));
        const std::optional<double> mean = number(cells[std::size_t(warmth + month)]);
        warmth_is_known = warmth_is_known && mean;
        temperature[i] = celsius(mean.value_or(0.0));
    }
    if (warmth_is_known) place.temperature = temperature;
    return place;
}

std::vector<KnownPlace> read_places(std::string_view text) {
    std::vector<KnownPlace> places;
    places.reserve(128);
    std::vector<std::string_view> cells;
    static_cast<void>(take_line(text));  // headings
    while (!text.empty()) {
        split_cells(take_line(text), cells);
        assert(cells.size() == columns);
        places.push_back(read_row(cells));
    }
    return places;
}

char lower(char letter) {
    return letter >= 'A' && letter <= 'Z' ? char(letter - 'A' + 'a') : letter;
}

bool begins_with(std::string_view name, std::string_view beginning) {
    return name.size() >= beginning.size() &&
           std::equal(beginning.begin(), beginning.end(), name.begin(),
                      [](char a, char b) { return lower(a) == lower(b); });
}

// Letters to change, add or leave out so that `typed` becomes the beginning of `name`.
int changes_needed(std::string_view typed, std::string_view name) {
    std::vector<int> row(name.size() + 1);
    for (std::size_t j = 0; j <= name.size(); ++j)
        row[j] = int(j);
    for (std::size_t i = 1; i <= typed.size(); ++i) {
        int diagonal = row[0];
        row[0] = int(i);
        for (std::size_t j = 1; j <= name.size(); ++j) {
            const int change = diagonal + (lower(typed[i - 1]) == lower(name[j - 1]) ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({change, row[j] + 1, row[j - 1] + 1});
        }
    }
    return *std::min_element(row.begin(), row.end());
}

Said listed(const std::vector<std::string_view>& names) {
    constexpr std::size_t at_most = 5;
    std::vector<Said> quoted;
    for (std::size_t i = 0; i < std::min(names.size(), at_most); ++i)
        quoted.push_back(said<"\"{name}\"">(names[i]));
    const Said all = words::joined(std::move(quoted), words::List::Joint::comma);
    if (names.size() <= at_most) return all;
    return said<"{places} or {n} more">(all, names.size() - at_most);
}

Said coordinates_instead() {
    return said<
        "give latitude and longitude, and the nearest place is taken with its distance; "
        "\"candlemark places\" lists all">();
}

Said one_of_or_coordinates(const std::vector<std::string_view>& names) {
    return said<
        "give {places}, or latitude and longitude, and the nearest place is taken with its "
        "distance; \"candlemark places\" lists all">(listed(names));
}

// "CO" of "Boulder CO" and of "Boulder, CO".
std::string_view state_of(std::string_view name) {
    const std::size_t space = name.rfind(' ');
    if (space == std::string_view::npos || name.size() - space != 3) return {};
    return name.substr(space + 1);
}

// Names that may be meant: spelt alike but for a slip or two, or in the state that was typed.
std::vector<std::string_view> names_meant(std::string_view typed) {
    std::vector<std::pair<int, std::string_view>> ranked;
    const int slips = typed.size() < 6 ? 1 : 2;
    for (const KnownPlace& place : known_places()) {
        const int changes = changes_needed(typed, place.name);
        const std::string_view state = state_of(typed);
        const bool same_state = !state.empty() && state_of(place.name).size() == state.size() &&
                                begins_with(state_of(place.name), state);
        if (changes <= slips || same_state)
            ranked.emplace_back(changes <= slips ? changes : 100, place.name);
    }
    std::stable_sort(ranked.begin(), ranked.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<std::string_view> names;
    for (const auto& [rank, name] : ranked)
        names.push_back(name);
    return names;
}

}  // namespace

const std::vector<KnownPlace>& known_places() {
    static const std::vector<KnownPlace> places = read_places(places_text);
    return places;
}

Result<KnownPlace> known_place(std::string_view typed) {
    std::vector<std::string_view> fitting;
    const KnownPlace* found = nullptr;
    for (const KnownPlace& place : known_places()) {
        if (!begins_with(place.name, typed)) continue;
        if (place.name.size() == typed.size()) return place;
        fitting.push_back(place.name);
        found = &place;
    }
    if (fitting.size() == 1 && !typed.empty()) return *found;
    if (fitting.empty()) {
        const auto meant = names_meant(typed);
        return fail(
            {.where = "place.name",
             .found = said<"\"{name}\" is not a built-in place">(typed),
             .remedy = meant.empty() ? coordinates_instead() : one_of_or_coordinates(meant)});
    }
    return fail({.where = "place.name",
                 .found = said<"\"{name}\" is the beginning of {n} places">(typed, fitting.size()),
                 .remedy = said<"write out one of {places}">(listed(fitting))});
}

std::vector<KnownPlace> places_beginning(std::string_view name) {
    std::vector<KnownPlace> found;
    for (const KnownPlace& place : known_places())
        if (begins_with(place.name, name)) found.push_back(place);
    return found;
}

Length distance_between(Coordinates a, Coordinates b) {
    const double phi_a = a.latitude / radian;
    const double phi_b = b.latitude / radian;
    const double half_phi = std::sin(0.5 * (phi_b - phi_a));
    const double half_lambda = std::sin(0.5 * ((b.longitude - a.longitude) / radian));
    const double haversine =
        half_phi * half_phi + std::cos(phi_a) * std::cos(phi_b) * half_lambda * half_lambda;
    return 2.0 * 6371000.0 * std::asin(std::min(1.0, std::sqrt(haversine))) * metre;
}

std::vector<NearbyPlace> nearest_known_places(Coordinates at, std::size_t count) {
    std::vector<NearbyPlace> places;
    for (const KnownPlace& place : known_places())
        places.push_back({place, distance_between(place.at, at)});
    std::stable_sort(places.begin(), places.end(),
                     [](const auto& a, const auto& b) { return a.distance < b.distance; });
    if (places.size() > count) places.erase(places.begin() + std::ptrdiff_t(count), places.end());
    return places;
}

NearbyPlace nearest_known_place(Coordinates at) {
    return nearest_known_places(at, 1).front();
}

}  // namespace solar
