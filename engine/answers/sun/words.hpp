// Words the parts of the sun answer share.
#pragma once

#include <string>

#include "answers/sun/answer.hpp"

namespace answers {

[[nodiscard]] words::Said day_label(units::LocalTime midnight);  // "Thu 15 Jan"

// "640 Wh (120 Wh to 1.3 kWh)": likely, and the range where there is one.
[[nodiscard]] words::Said range_in_words(const solar::DayRange& range);

[[nodiscard]] words::Said words_for(solar::PlacementKind kind);  // "flat on the ground"
[[nodiscard]] std::string key_for(solar::PlacementKind kind);    // "flat"

// "60° facing south"; "turned three times a day"; nothing for no aim.
[[nodiscard]] words::Said stands(const std::vector<scenario::Aim>& aims);

// The same in a few characters: "60° south", "turned 3 times".
[[nodiscard]] words::Said stands_in_short(const std::vector<scenario::Aim>& aims);

// The row of a kind; nullptr where the comparison has none.
[[nodiscard]] const solar::PlacementYield* row_of(const questions::SunResults& results,
                                                  solar::PlacementKind kind);

// Mean of the weathers over that of panels flat on the ground; absent when those give nothing.
[[nodiscard]] std::optional<double> times_flat(const questions::SunResults& results,
                                               const solar::PlacementYield& yield);

[[nodiscard]] double outage_days(const scenario::Scenario& scenario);

// How much longer half of the members last than without panels, in days.
[[nodiscard]] double days_gained(const std::vector<sizing::PanelCount>& counts, std::size_t row);

[[nodiscard]] words::Said why_in_words(sizing::PanelLimit why);
[[nodiscard]] std::string key_for(sizing::PanelLimit why);  // "packs_full"

}  // namespace answers
