#include "answers/sun/words.hpp"

#include <algorithm>
#include <cmath>

#include "answers/clock_words.hpp"
#include "answers/shown.hpp"

namespace answers {

using words::Said;
using words::said;

namespace {

using solar::PlacementKind;

Said compass(units::Angle azimuth) {
    const auto eighth = std::lround(azimuth / units::degree / 45.0);
    switch (((eighth % 8) + 8) % 8) {
        case 0:
            return said<"north">();
        case 1:
            return said<"north-east">();
        case 2:
            return said<"east">();
        case 3:
            return said<"south-east">();
        case 4:
            return said<"south">();
        case 5:
            return said<"south-west">();
        case 6:
            return said<"west">();
        default:
            return said<"north-west">();
    }
}

bool lies_flat(const scenario::Aim& aim) {
    return aim.tilt < 0.5 * units::degree;
}

}  // namespace

Said day_label(units::LocalTime midnight) {
    return said<"{day}">(units::moment(midnight, words::Moment::Form::short_weekday_date));
}

Said range_in_words(const solar::DayRange& range) {
    if (range.high - range.low < 0.05 * units::watt_hour) {
        return in_words(range.likely, 2);
    }
    return said<"{likely} ({low} to {high})">(in_words(range.likely, 2), in_words(range.low, 2),
                                              in_words(range.high, 2));
}

Said words_for(PlacementKind kind) {
    switch (kind) {
        case PlacementKind::as_described:
            return said<"as they are">();
        case PlacementKind::without_shade:
            return said<"the same without shade">();
        case PlacementKind::never_taken_in:
            return said<"the same, out all day">();
        case PlacementKind::flat:
            return said<"flat on the ground">();
        case PlacementKind::best_fixed:
            return said<"propped up">();
        case PlacementKind::turned_twice:
            return said<"turned twice a day">();
        case PlacementKind::turned_three_times:
            return said<"turned three times a day">();
    }
    return {};
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

Said stands(const std::vector<scenario::Aim>& aims) {
    switch (aims.size()) {
        case 0:
            return {};
        case 1:
            break;
        case 2:
            return said<"turned twice a day">();
        case 3:
            return said<"turned three times a day">();
        default:
            return said<"turned {n} times a day">(static_cast<int>(aims.size()));
    }
    const auto& aim = aims.front();
    if (lies_flat(aim)) {
        return said<"flat">();
    }
    return said<"{tilt} facing {direction}">(units::amount_in(aim.tilt, "°", 0),
                                             compass(aim.azimuth));
}

Said stands_in_short(const std::vector<scenario::Aim>& aims) {
    if (aims.size() > 1) {
        return said<"turned {n} times">(static_cast<int>(aims.size()));
    }
    if (aims.empty() || lies_flat(aims.front())) {
        return said<"flat">();
    }
    const auto& aim = aims.front();
    return said<"{tilt} {direction}">(units::amount_in(aim.tilt, "°", 0), compass(aim.azimuth));
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

Said why_in_words(sizing::PanelLimit why) {
    switch (why) {
        case sizing::PanelLimit::controller:
            return said<"the charge controller turns the rest away">();
        case sizing::PanelLimit::packs_full:
            return said<"the packs are full, or take no more, when more comes">();
        case sizing::PanelLimit::too_cold:
            return said<"the packs are too cold to be charged when more comes">();
        case sizing::PanelLimit::lasts:
            return said<"it lasts nearly surely as it is">();
        case sizing::PanelLimit::too_little:
            break;
    }
    return said<"before it ends they give too little">();
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
