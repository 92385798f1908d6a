#include "handling/storage.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "answers/card/parts.hpp"
#include "answers/checked.hpp"
#include "units/clock.hpp"

namespace answers {

namespace {

constexpr double usual_months = 6.0;  // between two looks; common practice, no source
constexpr int dates_to_tick = 8;
constexpr int blanks_to_fill = 5;

const std::string* words_at(const Answer& answer, std::string_view path) {
    const Value* value = value_at(answer.values, path);
    return value ? std::get_if<std::string>(&value->held) : nullptr;
}

// Whole months from putting away to topping up, at most half a year: filling starts them anew.
double months_between(units::LocalTime since, const std::string* top_up_by) {
    if (!top_up_by) {
        return usual_months;
    }
    const auto by = units::read_local_time(*top_up_by);
    return by ? std::clamp(std::floor((*by - since) / handling::month), 1.0, usual_months)
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

CardPart storage_part(const scenario::Scenario& scenario, const CardAnswers& answers) {
    CardPart part{
        .name = "storage", .heading = "In storage: top up, then tick", .of_what = "dates"};
    if (!answers.storage || !scenario.storage) {
        part.lines = {"The file does not say how it is stored. Write the days of topping up here."};
        part.ticks = std::vector<std::string>(blanks_to_fill, "__________");
        return part;
    }
    if (const std::string* by = words_at(*answers.storage, "top_up_by")) {
        const auto date = units::read_local_time(*by);
        part.lines = {fmt::format("Put away {}; top up by {} at the latest.",
                                  date_in_words(scenario.storage->since),
                                  date ? date_in_words(*date) : *by)};
    } else {
        part.lines = {fmt::format("Put away {}.", date_in_words(scenario.storage->since))};
    }
    const double apart =
        months_between(scenario.storage->since, words_at(*answers.storage, "top_up_by"));
    for (int look = 1; look <= dates_to_tick; ++look) {
        part.ticks.push_back(
            date_in_iso(months_later(scenario.storage->since, look * static_cast<int>(apart))));
    }
    return part;
}

}  // namespace answers
