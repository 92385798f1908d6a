#include "handling/storage.hpp"

#include <algorithm>
#include <cmath>

#include "answers/card/parts.hpp"
#include "answers/checked.hpp"
#include "units/clock.hpp"

namespace answers {

namespace {

using words::Said;
using words::said;

constexpr double usual_months = 6.0;  // between two looks; common practice, no source
constexpr int dates_to_tick = 8;
constexpr int blanks_to_fill = 5;

// Whole months from putting away to topping up, at most half a year: filling starts them anew.
double months_between(units::LocalTime since, std::optional<units::LocalTime> top_up_by) {
    return top_up_by
               ? std::clamp(
                     std::floor((units::midnight_before(*top_up_by) - since) / handling::month),
                     1.0, usual_months)
               : usual_months;
}

// The same day of a later month; the last one where that month is shorter.
units::LocalTime months_later(units::LocalTime since, int months) {
    auto date = units::date_of(since) + std::chrono::months(months);
    if (!date.ok()) {
        date = date.year() / date.month() / std::chrono::last;
    }
    return units::local_time(date, {});
}

}  // namespace

CardPart storage_part(const scenario::Scenario& scenario, const questions::CardFound& found) {
    CardPart part{.name = "storage", .heading = said<"In storage: top up, then tick">()};
    if (!found.storage || !scenario.storage) {
        part.lines = {
            said<"The file does not say how it is stored. Write the days of topping up here.">()};
        part.ticks = std::vector<Said>(blanks_to_fill, "__________");
        return part;
    }
    const auto since = scenario.storage->since;
    const auto by = found.storage->stored.top_up_by;
    part.lines = {by ? said<"Put away on {date}. Top up by {latest} at the latest.">(
                           date_in_words(since), date_in_words(*by))
                     : said<"Put away on {date}.">(date_in_words(since))};
    const double apart = months_between(since, by);
    for (int look = 1; look <= dates_to_tick; ++look) {
        part.ticks.push_back(date_in_iso(months_later(since, look * static_cast<int>(apart))));
    }
    return part;
}

}  // namespace answers
