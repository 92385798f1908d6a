// A scenario made ready for the clock: models, demand and skies, worked out once for any number
// of runs.
#pragma once

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "demand/demand.hpp"
#include "outage/clock/banks.hpp"
#include "outage/clock/chargers.hpp"
#include "outage/clock/clock.hpp"
#include "outage/parts.hpp"
#include "outage/sky.hpp"
#include "scenario/scenario.hpp"
#include "solar/places/site.hpp"
#include "solar/sun_track.hpp"
#include "solar/weather/weather.hpp"
#include "units/result.hpp"

namespace outage {

// Index of the three ends a plan is run at.
enum class End { earliest, likely, latest };

// What lights the panels under any sky.
struct SkyModels {
    solar::SunTrack track;
    solar::ControllerModel controller;
    solar::WeatherModel weather;
    std::shared_ptr<const solar::WeatherYear> hours;  // of a weather file; empty without one
    std::vector<solar::PanelGroup> groups;
};

struct Ready {
    Ready();
    Ready(const Ready& other);
    Ready(Ready&& other) noexcept;
    Ready& operator=(const Ready& other);
    Ready& operator=(Ready&& other) noexcept;
    ~Ready();

    scenario::Outage outage;
    PackKinds kinds;                // of pack, alike ones together
    std::array<Unit, 3> units;      // by End: only the inverter's idle differs
    units::Resistance main_path{};  // from the bus to the inverter
    unit::Limits main_limits;       // of that way
    std::vector<unit::Branch> branches;
    units::Voltage nominal{};
    demand::Demand demand;
    std::vector<ChargerRuns> chargers;                     // other than the sun
    std::array<std::vector<demand::DemandStep>, 3> steps;  // by End; with what the chargers offer
    std::array<Parts, 3> parts;                            // by End; the 12 V loads of the demand
    std::array<std::vector<SunChange>, 3> sun;             // by End
    std::optional<solar::Site> site;
    std::shared_ptr<const SkyModels> sky;       // none without panels
    units::Duration midnight{};                 // from the start to the first midnight
    std::vector<unit::TemperatureFrom> warmth;  // of the packs, the first from 0
    std::optional<units::Temperature> coldest;  // day of packs that follow their room
    scenario::Findings findings;
    scenario::Assumptions assumptions;
};

//   folder     of the scenario's file, against which place.weather_file is taken; empty: the
//              working folder
//   fails      with every reason why the scenario cannot be planned, each at its key
[[nodiscard]] units::Result<Ready> make_ready(const scenario::Scenario& scenario,
                                              const std::string& folder = {});

// One run of the clock.
[[nodiscard]] Course run(const Ready& ready, End end, Keep keep = {},
                         std::vector<SunOfDay>* days = nullptr);

// The same unit with so many packs together: more are of the last kind, as banks.hpp says.
[[nodiscard]] Unit with_packs(const Ready& ready, End end, int count);

// Some circuit of 12 V loads has one.
[[nodiscard]] bool has_fuses(const Ready& ready);

// The 12 V loads where a fuse of their circuits may open, for runs that ask for the first failure;
// else nothing, for their sum is all that matters then.
[[nodiscard]] const Parts* guarded_loads(const Ready& ready, End end);
// Likewise of another demand in the place of its own.
[[nodiscard]] std::optional<Parts> guarded_loads(const Ready& ready, const demand::Demand& demand,
                                                 End end);
[[nodiscard]] inline const Parts* or_none(const std::optional<Parts>& parts) {
    return parts ? &*parts : nullptr;
}

// The steps of another demand in the place of its own, with the same chargers.
[[nodiscard]] std::vector<demand::DemandStep> steps_of(const Ready& ready,
                                                       const demand::Demand& demand, End end);

}  // namespace outage
