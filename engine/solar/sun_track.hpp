// The geometry of the sun over a span of days, made once and lit by many skies.
#pragma once

#include <span>
#include <vector>

#include "solar/placement.hpp"
#include "solar/weather/typical_sky.hpp"

namespace solar {

// The light of one step on level ground.
struct StepLight {
    units::Irradiance beam{};
    units::Irradiance diffuse{};
};

// One group of panels at one step: what light would do to it, whatever the sky.
struct Aspect {
    double cos_incidence = 0.0;
    double beam_ratio = 0.0;    // direct light on the plane over that on level ground
    double sky_view = 0.0;      // share of an even sky it sees
    double ground_view = 0.0;   // share of ground it sees
    double direct_glass = 0.0;  // through_glass
    double unshaded = 1.0;      // of direct light
    bool out = true;
};

struct TrackStep {
    units::LocalTime start;
    units::Duration duration{};
    int day = 0;                           // 0 is the first local day
    bool lit = false;                      // sun above the horizon
    double cos_zenith = 0.0;               // at the middle of the step
    units::Irradiance extraterrestrial{};  // on level ground
    double global_share = 0.0;             // of its day's irradiation, divided by its duration, 1/s
    double diffuse_share = 0.0;
    units::Temperature air;  // by the site's climate
};

struct TrackDay {
    units::LocalTime midnight;
    units::Irradiation extraterrestrial{};  // of the whole local day
    units::Angle sunset{};                  // hour angle
    units::Angle declination{};
    units::Duration noon{};  // of the sun, after midnight
};

class SunTrack {
  public:
    SunTrack(const Site& site, std::span<const PanelGroup> groups, units::LocalTime from,
             units::Duration lasts);

    [[nodiscard]] const std::vector<TrackStep>& steps() const { return steps_; }
    [[nodiscard]] const std::vector<TrackDay>& days() const { return days_; }
    [[nodiscard]] std::size_t day_begins(std::size_t day) const { return day_begins_[day]; }
    [[nodiscard]] const std::vector<PanelGroup>& groups() const { return groups_; }

    // Irradiation on level ground and its diffuse part on a day of that clearness.
    struct DayLight {
        units::Irradiation global{};
        units::Irradiation diffuse{};
    };
    [[nodiscard]] DayLight day_light(std::size_t day, Clearness clearness) const;

    // Which groups snow covers on a day; empty: none.
    using Covered = std::vector<bool>;

    // One step under one sky, through glass, cells and controller.
    [[nodiscard]] SunStep lit(std::size_t step, DayLight light, const ControllerModel& controller,
                              const Covered& covered = {}) const;

    // One step under light known for itself, on ground of its own.
    [[nodiscard]] SunStep lit(std::size_t step, StepLight light, units::Temperature air,
                              Albedo ground, const ControllerModel& controller,
                              const Covered& covered = {}) const;

    // By snow, of each local day.
    [[nodiscard]] std::vector<Covered> covered_days(std::span<const SnowDraw> draws) const;

    // Sum of one day's steps; cheaper than building them.
    [[nodiscard]] SunSum day_sum(std::size_t day, Clearness clearness,
                                 const ControllerModel& controller) const;

    [[nodiscard]] SunSeries under(const Sky& sky, const ControllerModel& controller) const;

  private:
    [[nodiscard]] SunSeries under_hours(const HourlySky& sky,
                                        const ControllerModel& controller) const;
    void add_day(const Site& site, units::LocalTime midnight, units::LocalTime from,
                 units::LocalTime until, int number);

    units::Angle latitude_{};
    units::Duration utc_offset_{};
    Albedo ground_{0.0};
    bool ground_is_known_ = false;  // for the spot itself, not taken for want of better
    std::vector<PanelGroup> groups_;
    double rated_ = 0.0;  // of all groups, W
    std::vector<TrackStep> steps_;
    std::vector<Aspect> aspects_;  // step by step, one a group
    std::vector<TrackDay> days_;
    std::vector<std::size_t> day_begins_;       // first step of each day, and the end
    std::vector<ClearnessDistribution> skies_;  // of each day
};

}  // namespace solar
