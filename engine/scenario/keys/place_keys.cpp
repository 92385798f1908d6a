// The keys of [place]. Limits: the poles, the Dead Sea shore and the highest dwellings, offsets in
// use from -12 h to +14 h, and monthly means beyond any measured; common practice, no source.
#include "scenario/file/tables.hpp"

namespace scenario {

using words::said;

namespace {

using units::celsius;

void check_place(Reading& reading, const Spot& spot, const Place& place) {
    if (place.latitude.has_value() != place.longitude.has_value() &&
        (spot.node->find("latitude") == nullptr || spot.node->find("longitude") == nullptr)) {
        reading.demand(spot, place.latitude ? "longitude" : "latitude",
                       place.latitude ? "\"-87.9 deg\"" : "\"42 deg\"");
    }
}

// Where on the globe, and by which clock.
Keys<Place> where_it_is() {
    return keys_of(
        key<&Place::name>(
            {.name = "name",
             .means =
                 said<"a built-in place (candlemark places lists them), or a name for your own">()},
            WordsForm{.sample = "Chicago IL"}),
        key<&Place::latitude>({.name = "latitude",
                               .means = said<"north of the equator; south is negative">(),
                               .on_screen = {.label = said<"Latitude, north positive">(),
                                             .units = {"deg"},
                                             .silent = said<"as assumed">()}},
                              from_to(-90.0 * units::degree, 90.0 * units::degree, "42 deg")),
        key<&Place::longitude>({.name = "longitude",
                                .means = said<"east of Greenwich; west is negative">(),
                                .on_screen = {.label = said<"Longitude, east positive">(),
                                              .units = {"deg"},
                                              .silent = said<"as assumed">()}},
                               from_to(-180.0 * units::degree, 180.0 * units::degree, "-87.9 deg")),
        key<&Place::elevation>({.name = "elevation",
                                .means = said<"height above the sea">(),
                                .on_screen = {.label = said<"Height above the sea">(),
                                              .units = {"m", "ft"},
                                              .silent = said<"as assumed">()}},
                               from_to(-450.0 * units::metre, 9000.0 * units::metre, "200 m")),
        key<&Place::utc_offset>({.name = "utc_offset",
                                 .means = said<"standard time less universal time">(),
                                 .on_screen = {.label = said<"Clock ahead of universal time">(),
                                               .units = {"h"},
                                               .silent = said<"as assumed">()}},
                                from_to(-12.0 * units::hour, 14.0 * units::hour, "-6 h")));
}

// Means of each month.
Keys<Place> climate_by_month() {
    return keys_of(
        key<&Place::irradiation>(
            {.name = "irradiation",
             .means = said<"sun on level ground on a mean day of each month">(),
             .on_screen = {.label = said<"Sun on level ground a day">(),
                           .units = {"kWh/m2"},
                           .silent = said<"as assumed">()}},
            monthly(from_to(units::Irradiation(), 15.0 * units::kilowatt_hour_per_square_metre,
                            "4.5 kWh/m^2/d"))),
        key<&Place::sunshine>(
            {.name = "sunshine",
             .means = said<
                 "bright sunshine on a mean day of each month, where irradiation is not known">()},
            monthly(from_to(units::Duration(), 24.0 * units::hour, "6.5 h/d").followed_by("/d"))),
        key<&Place::temperature>({.name = "temperature",
                                  .means = said<"mean warmth of the air in each month">(),
                                  .on_screen = {.label = said<"Warmth of the air">(),
                                                .units = {"degC", "degF"},
                                                .silent = said<"as assumed">()}},
                                 monthly(from_to(celsius(-90.0), celsius(60.0), "-4 degC"))),
        key<&Place::temperature_range>(
            {.name = "temperature_range",
             .means = said<"mean difference of day and night in each month">()},
            monthly(from_to(units::TemperatureDifference(), 60.0 * units::kelvin, "9 K"))));
}

// A file in their place, and the ground.
Keys<Place> weather_and_ground() {
    return keys_of(key<&Place::weather_file>(
                       {.name = "weather_file",
                        .means = said<"hourly weather file of a station, beside the scenario">()},
                       WordsForm{.sample = "station.epw", .longest = 4096}),
                   key<&Place::ground_reflectance>(
                       {.name = "ground_reflectance",
                        .means = said<"share of the light that the ground throws back">()},
                       from_to(units::Share(), units::Share(1.0), "20 %")));
}

}  // namespace

template <>
const Description<Place>& describe<Place>() {
    static const Description<Place> description = {
        .silent = said<"by the named place, else assumed; the answers give the figure they take">(),
        .keys = joined(where_it_is(), climate_by_month(), weather_and_ground()),
        .check = check_place};
    return description;
}

}  // namespace scenario
