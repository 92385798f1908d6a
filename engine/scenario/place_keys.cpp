// The keys of [place]. Limits: the poles, the Dead Sea shore and the highest dwellings, offsets in
// use from -12 h to +14 h, and monthly means beyond any measured; common practice, no source.
#include "scenario/tables.hpp"

namespace scenario {
namespace {

void check_place(Reading& reading, const Spot& spot, const Place& place) {
    if (place.latitude.has_value() != place.longitude.has_value() &&
        (spot.node->find("latitude") == nullptr || spot.node->find("longitude") == nullptr)) {
        reading.demand(spot, place.latitude ? "longitude" : "latitude",
                       place.latitude ? "\"-87.9 deg\"" : "\"42 deg\"");
    }
}

}  // namespace

template <>
const Description<Place>& describe<Place>() {
    using units::celsius;
    static const Description<Place> description = {
        .silent = "by the named place, else assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&Place::name>(
                {.name = "name",
                 .means =
                     "a built-in place (candlemark places lists them), or a name for your own"},
                WordsForm{.sample = "Chicago IL"}),
            key<&Place::latitude>({.name = "latitude",
                                   .means = "north of the equator; south is negative",
                                   .on_screen = {.label = on_screen("Latitude, north positive"),
                                                 .units = {"deg"},
                                                 .silent = on_screen("as assumed")}},
                                  from_to(-90.0 * units::degree, 90.0 * units::degree, "42 deg")),
            key<&Place::longitude>(
                {.name = "longitude",
                 .means = "east of Greenwich; west is negative",
                 .on_screen = {.label = on_screen("Longitude, east positive"),
                               .units = {"deg"},
                               .silent = on_screen("as assumed")}},
                from_to(-180.0 * units::degree, 180.0 * units::degree, "-87.9 deg")),
            key<&Place::elevation>({.name = "elevation",
                                    .means = "height above the sea",
                                    .on_screen = {.label = on_screen("Height above the sea"),
                                                  .units = {"m", "ft"},
                                                  .silent = on_screen("as assumed")}},
                                   from_to(-450.0 * units::metre, 9000.0 * units::metre, "200 m")),
            key<&Place::utc_offset>(
                {.name = "utc_offset",
                 .means = "standard time less universal time",
                 .on_screen = {.label = on_screen("Clock ahead of universal time"),
                               .units = {"h"},
                               .silent = on_screen("as assumed")}},
                from_to(-12.0 * units::hour, 14.0 * units::hour, "-6 h")),
            key<&Place::irradiation>(
                {.name = "irradiation",
                 .means = "sun on level ground on a mean day of each month",
                 .on_screen = {.label = on_screen("Sun on level ground a day"),
                               .units = {"kWh/m2"},
                               .silent = on_screen("as assumed")}},
                monthly(from_to(units::Irradiation(), 15.0 * units::kilowatt_hour_per_square_metre,
                                "4.5 kWh/m^2/d"))),
            key<&Place::sunshine>(
                {.name = "sunshine",
                 .means =
                     "bright sunshine on a mean day of each month, where irradiation is not known"},
                monthly(
                    from_to(units::Duration(), 24.0 * units::hour, "6.5 h/d").followed_by("/d"))),
            key<&Place::temperature>({.name = "temperature",
                                      .means = "mean warmth of the air in each month",
                                      .on_screen = {.label = on_screen("Warmth of the air"),
                                                    .units = {"degC", "degF"},
                                                    .silent = on_screen("as assumed")}},
                                     monthly(from_to(celsius(-90.0), celsius(60.0), "-4 degC"))),
            key<&Place::temperature_range>(
                {.name = "temperature_range",
                 .means = "mean difference of day and night in each month"},
                monthly(from_to(units::TemperatureDifference(), 60.0 * units::kelvin, "9 K"))),
            key<&Place::weather_file>(
                {.name = "weather_file",
                 .means = "hourly weather file of a station, beside the scenario"},
                WordsForm{.sample = "station.epw", .longest = 4096}),
            key<&Place::ground_reflectance>(
                {.name = "ground_reflectance",
                 .means = "share of the light that the ground throws back"},
                from_to(units::Share(), units::Share(1.0), "20 %"))),
        .check = check_place};
    return description;
}

}  // namespace scenario
