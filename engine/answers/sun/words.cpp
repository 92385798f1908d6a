#include "answers/sun/words.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "answers/shown.hpp"

namespace answers {

namespace {

using solar::PlacementKind;

std::string_view compass(units::Angle azimuth) {
    constexpr std::array<std::string_view, 8> points{"north", "north-east", "east", "south-east",
                                                     "south", "south-west", "west", "north-west"};
    const auto eighth = std::lround(azimuth / units::degree / 45.0);
    return points[static_cast<std::size_t>(((eighth % 8) + 8) % 8)];
}

}  // namespace

std::string day_label(units::LocalTime midnight) {
    const std::string text = date_and_time(midnight);
    return text.substr(0, text.find_last_of(' '));
}

std::string range_in_words(const solar::DayRange& range) {
    if (range.high - range.low < 0.05 * units::watt_hour) {
        return in_words(range.likely, 2);
    }
    return fmt::format("{} ({} to {})", in_words(range.likely, 2), in_words(range.low, 2),
                       in_words(range.high, 2));
}

std::string words_for(PlacementKind kind) {
    switch (kind) {
        case PlacementKind::as_described:
            return "as they stand";
        case PlacementKind::without_shade:
            return "the same without shade";
        case PlacementKind::never_taken_in:
            return "the same, out all day";
        case PlacementKind::flat:
            return "flat on the ground";
        case PlacementKind::best_fixed:
            return "propped up";
        case PlacementKind::turned_twice:
            return "turned twice a day";
        case PlacementKind::turned_three_times:
            return "turned three times a day";
    }
    return "";
}

std::string key_for(PlacementKind kind) {
    switch (kind) {
        case PlacementKind::as_described:
            return "as_described";
        case PlacementKind::without_shade:
            return "without_shade";
        case PlacementKind::never_taken_in:
            return "never_taken_in";
        case PlacementKind::flat:
            return "flat";
        case PlacementKind::best_fixed:
            return "best_fixed";
        case PlacementKind::turned_twice:
            return "turned_twice";
        case PlacementKind::turned_three_times:
            return "turned_three_times";
    }
    return "";
}

std::string stands(const std::vector<scenario::Aim>& aims) {
    if (aims.empty()) {
        return "";
    }
    if (aims.size() > 1) {
        return fmt::format("turned {} times a day", number_in_words(static_cast<int>(aims.size())));
    }
    const auto& aim = aims.front();
    if (aim.tilt < 0.5 * units::degree) {
        return "flat";
    }
    return fmt::format("{:.0f}° facing {}", aim.tilt / units::degree, compass(aim.azimuth));
}

std::string stands_in_short(const std::vector<scenario::Aim>& aims) {
    if (aims.size() > 1) {
        return fmt::format("turned {} times", aims.size());
    }
    if (aims.empty() || aims.front().tilt < 0.5 * units::degree) {
        return "flat";
    }
    return fmt::format("{:.0f}° {}", aims.front().tilt / units::degree,
                       compass(aims.front().azimuth));
}

const solar::PlacementYield* row_of(const questions::SunResults& results, PlacementKind kind) {
    const auto row = std::ranges::find(results.placements, kind, &solar::PlacementYield::kind);
    return row == results.placements.end() ? nullptr : &*row;
}

std::optional<double> times_flat(const questions::SunResults& results,
                                 const solar::PlacementYield& yield) {
    const auto* flat = row_of(results, PlacementKind::flat);
    if (flat == nullptr || flat->day.mean < 1.0 * units::watt_hour) {
        return std::nullopt;
    }
    return yield.day.mean / flat->day.mean;
}

double outage_days(const scenario::Scenario& scenario) {
    return std::max<double>(scenario.outage.lasts / units::day, 1e-6);
}

double days_gained(const std::vector<sizing::PanelCount>& counts, std::size_t row) {
    return (counts[row].figures.half - counts.front().figures.half) / units::day;
}

std::string why_in_words(sizing::PanelLimit why) {
    switch (why) {
        case sizing::PanelLimit::controller:
            return "the charge controller turns the rest away";
        case sizing::PanelLimit::packs_full:
            return "the packs are full, or take no more, when more comes";
        case sizing::PanelLimit::too_cold:
            return "the packs are too cold to be charged when more comes";
        case sizing::PanelLimit::lasts:
            return "it lasts nearly surely as it is";
        case sizing::PanelLimit::too_little:
            break;
    }
    return "before it ends they give too little";
}

std::string key_for(sizing::PanelLimit why) {
    switch (why) {
        case sizing::PanelLimit::controller:
            return "controller";
        case sizing::PanelLimit::packs_full:
            return "packs_full";
        case sizing::PanelLimit::too_cold:
            return "too_cold";
        case sizing::PanelLimit::lasts:
            return "lasts";
        case sizing::PanelLimit::too_little:
            break;
    }
    return "too_little";
}

}  // namespace answers
