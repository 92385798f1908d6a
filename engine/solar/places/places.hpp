// The built-in places: monthly sun and warmth, each with where its figures come from.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "solar/irradiation.hpp"
#include "solar/sun_position.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
#include "words/said.hpp"

namespace solar {

struct KnownPlace {
    std::string_view name;     // "Chicago IL"
    std::string_view country;  // two letters, ISO 3166
    Coordinates at;
    units::Length elevation;
    units::Duration utc_offset;                      // standard time, east positive
    std::array<units::Irradiation, 12> irradiation;  // of a mean day on level ground
    std::array<Clearness, 12> clearness;
    std::optional<std::array<units::Temperature, 12>> temperature;  // monthly means
    std::string_view source;  // where each figure was read, in full, in English
    words::Said known_from;   // the same in brief: "means of one typical year (NREL TMY3 725300)"
};

// In the order of places.csv, which is compiled in. Read once, on the first call.
[[nodiscard]] const std::vector<KnownPlace>& known_places();

// By name or the beginning of one, whatever the case.
//   fails  at "place.name": the beginning of several, or unknown; then names are offered that may
//          be meant, by their spelling or because they lie in the same state, and none by chance
[[nodiscard]] units::Result<KnownPlace> known_place(std::string_view name);

// All whose names begin so, whatever the case, in the table's order.
[[nodiscard]] std::vector<KnownPlace> places_beginning(std::string_view name);

struct NearbyPlace {
    KnownPlace place;
    units::Length distance;  // along the ground
};

[[nodiscard]] NearbyPlace nearest_known_place(Coordinates at);

// The nearest rows, the nearest first; as many as there are, at most `count`.
[[nodiscard]] std::vector<NearbyPlace> nearest_known_places(Coordinates at, std::size_t count);

// Beyond either of these a place's figures stand for another spot only with a caution: ours.
inline constexpr units::Length farthest_of_its_kind = 100e3 * units::metre;
inline constexpr units::Length highest_of_its_kind = 300.0 * units::metre;

// Great-circle distance on a sphere of 6371 km.
[[nodiscard]] units::Length distance_between(Coordinates a, Coordinates b);

}  // namespace solar
