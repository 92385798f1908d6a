// How panels stand through the day, and when they are out at all.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scenario/panel.hpp"
#include "solar/controller.hpp"
#include "solar/places/site.hpp"
#include "solar/tilt.hpp"

namespace solar {

// How snow comes to lie on a panel in one month.
struct SnowOfMonth {
    units::Probability falls{0.0};  // of a day: an inch or more
    double lies = 0.0;              // days that a fall covers the panel, mean
};

// Numbers drawn of one day's snow, each from 0 to 1, the greater the less snow.
struct SnowDraw {
    double falls = 1.0;
    double goes = 1.0;
};

// Like panels that stand alike.
struct PanelGroup {
    PanelModel model;
    int count = 1;
    int in_series = 1;
    std::vector<scenario::Aim> aims;    // by time of day, at least one
    std::vector<units::DailySpan> out;  // when they stand outside; empty: always
    std::vector<scenario::ShadedHours> shade;
    std::vector<int> covered_days;                       // 1 is the first day of the outage
    std::vector<SnowOfMonth> snow = {};                  // January first; empty: none is counted
    units::TemperatureDifference warmer_than_nominal{};  // flat on the ground: no air behind
};

// The group a scenario's panel entry describes.
//   first_day  of the outage: three aims at the sun are made for it when `placement` is aimed and
//              no times are given
[[nodiscard]] PanelGroup panel_group(const scenario::Panel& panel, const std::string& where,
                                     const Site& site, units::LocalTime first_day,
                                     scenario::Assumptions& assumptions);

// Aims at the sun in the middle of each of `count` equal parts of the day; one that looks to the
// equator on a day without sunrise. Good for that day and weeks around it.
[[nodiscard]] std::vector<scenario::Aim> aims_at_the_sun(const Site& site, units::LocalTime day,
                                                         int count);

// Which way the group looks at a time of day; before the day's first aim, as on the evening before.
[[nodiscard]] Plane plane_at(const PanelGroup& group, units::Duration time_of_day);

[[nodiscard]] bool stands_out(const PanelGroup& group, units::Duration time_of_day, int day);

// The direct light left by shade. One shaded cell holds back the whole string, so twice the shaded
// share is lost, down to nothing: ours, on the cautious side. method.md (44)
[[nodiscard]] units::Share unshaded(const PanelGroup& group, units::Duration time_of_day);

// Tilt towards the equator that gives most on a typical day like `day`, to 5 degrees.
[[nodiscard]] Plane best_fixed_plane(const Site& site, units::LocalTime day);

}  // namespace solar
