// What the sun offers to the battery, step by step: the seam between this part and the clock.
#pragma once

#include <memory>
#include <span>
#include <variant>
#include <vector>

#include "solar/controller.hpp"
#include "solar/placement.hpp"
#include "solar/places/site.hpp"
#include "solar/weather/clearness_distribution.hpp"
#include "units/time.hpp"

namespace solar {

struct WeatherYear;  // weather_file.hpp

// How each local day's clearness is known.
struct TypicalSky {};  // expectation over all skies of the month
struct QuantileSky {
    units::Probability darker;
};  // so many of the month's days are darker
struct GivenSky {
    std::vector<Clearness> days;
    std::vector<SnowDraw> snow = {};
};  // from the first local day on; the last clearness lasts, without a draw there is no snow
struct HourlySky {
    std::shared_ptr<const WeatherYear> year;
    int days_later = 0;
    std::vector<SnowDraw> snow = {};
};  // a weather file's own hours, or those of so many days later (negative: earlier); a file that
    // tells when snow falls goes before the draws of it, without a draw there is no snow
using Sky = std::variant<TypicalSky, QuantileSky, GivenSky, HourlySky>;

// Holds from start for its duration. Steps follow each other without a gap. They last at most
// 15 minutes while the sun is up; a night is one step a local day, however long, with zeros.
struct SunStep {
    units::LocalTime start;
    units::Duration duration{};
    units::Irradiance on_plane{};  // before glass; mean of the groups weighted by rated power
    units::Power offered{};        // at the battery terminals
    units::Power clipped{};        // kept back by the controller's limits, as battery power
    units::Current current{};      // offered, at the controller model's battery voltage
};

using SunSeries = std::vector<SunStep>;

// Never empty for a duration above zero; begins at `from`, ends at `from` + `lasts`.
//   groups  share the one controller; none: all zeros
[[nodiscard]] SunSeries sun_offered(const Site& site, std::span<const PanelGroup> groups,
                                    const ControllerModel& controller, units::LocalTime from,
                                    units::Duration lasts, const Sky& sky);

struct SunSum {
    units::Energy offered{};
    units::Energy clipped{};
    units::Irradiation on_plane{};
};

[[nodiscard]] SunSum sum(std::span<const SunStep> series);

// What a day gives: the dull tenth, the middle and the bright tenth of the month's days.
struct DayRange {
    units::Energy low{};     // 10 % of days give less
    units::Energy likely{};  // half
    units::Energy high{};    // 90 %
    units::Energy mean{};    // expectation
};

[[nodiscard]] DayRange day_range(const Site& site, std::span<const PanelGroup> groups,
                                 const ControllerModel& controller, units::LocalTime day);

}  // namespace solar
