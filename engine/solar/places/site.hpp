// One spot on the earth with its months of sun and warmth: what the rest of this part needs.
#pragma once

#include <array>
#include <optional>
#include <string>

#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/place.hpp"
#include "solar/irradiation.hpp"
#include "solar/sun_position.hpp"
#include "solar/tilt.hpp"
#include "units/result.hpp"
#include "units/time.hpp"

namespace solar {

struct Site {
    std::string name;
    Coordinates at;
    units::Length elevation{};
    units::Duration utc_offset{};           // standard time, east positive
    std::array<Clearness, 12> clearness{};  // monthly means of the daily clearness
    std::optional<std::array<units::Temperature, 12>> temperature;            // monthly means
    std::optional<std::array<units::TemperatureDifference, 12>> daily_range;  // of temperature
    Albedo ground{0.20};
    bool ground_is_known = false;  // typed; otherwise a weather file's own goes before it
    words::Said source;            // of the sun's figures

    [[nodiscard]] Clearness mean_clearness(units::LocalTime day) const;
};

// "January" for 1, to "December" for 12.
[[nodiscard]] const words::Said& name_of_month(int month);
// "+5.5 h": how far a clock is ahead of universal time.
[[nodiscard]] words::Said offset_in_words(units::Duration utc_offset);

// The day of the year that stands for a month, 1 to 12. [Klein 1977]
[[nodiscard]] int mean_day_of_month(int month);

// Mean of a month's days outside the air, 1 to 12. Twelve of these turn monthly irradiation into
// clearness and back without a loss.
[[nodiscard]] units::Irradiation extraterrestrial_of_month(units::Angle latitude, int month);

// Air temperature through a day: coldest at 2:30, warmest at 14:30. method.md (35)
// 15 degrees on average where the site knows none; a day's range of 9 K where it knows none.
[[nodiscard]] units::Temperature air_temperature(const Site& site, units::LocalTime when);

// From what a person knows of a place, in this order: twelve irradiations, twelve sunshine
// hours, twelve temperature ranges, a built-in place by its name, the nearest built-in place.
// A named place lends what the person left out; the person's own figures always win.
//   findings  a caution when the sun's figures come from a built-in place more than 100 km or
//             300 m of height away
//   fails     at the key of "place" that is missing, out of range or contradicts another
[[nodiscard]] units::Result<Site> site(const scenario::Place& place,
                                       scenario::Assumptions& assumptions,
                                       scenario::Findings& findings);

}  // namespace solar
