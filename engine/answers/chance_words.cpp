#include "answers/chance_words.hpp"

#include <algorithm>
#include <cmath>

#include "answers/clock_words.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using namespace units;
using chance::Figures;
using words::Said;
using words::said;
using words::said_of;

constexpr double rounding = 1e-9;  // of shares

}  // namespace

int whole_hundredths(Probability of) {
    return static_cast<int>(std::floor(100.0 * of.value() + rounding));
}

Said goal_in_words(Probability goal) {
    if (std::abs(goal.value() - 0.9) < rounding) return said<"nine times in ten">();
    return said<"{n} times in 100">(words::Number{.value = 100.0 * goal.value(), .digits = 4});
}

// As it was typed, to two digits: "24 h", "4.9 days".
Said half_in_words(Duration half_over_by) {
    if (half_over_by < 1.0 * hour) return said<"{time}">(amount_in(half_over_by, "min", 0));
    if (half_over_by < 72.0 * hour) return said<"{time}">(amount(half_over_by));
    return said<"{n} days">(words::Number{.value = half_over_by / day, .digits = 2});
}

Said if_half_are_over(const scenario::Outage& outage) {
    if (!outage.open_ended) return {};
    return said<"if half of such outages are over within {time}">(
        half_in_words(*outage.half_over_by));
}

Said lasting_it(const scenario::Outage& outage) {
    if (outage.open_ended) return said<"longer than the outage">();
    const LocalTime end = outage.starts + outage.lasts;
    return said<"to the end, {when}">(outage.lasts < 7.0 * day ? weekday_and_time(end)
                                                               : date_and_time(end));
}

Said lasting_so_often(const scenario::Outage& outage, const Said& so_often) {
    if (!outage.open_ended) return said<"{lasting}, {often}">(lasting_it(outage), so_often);
    return said<"{lasting} {often}, {condition}">(lasting_it(outage), so_often,
                                                  if_half_are_over(outage));
}

bool counted_on_to_the_end(const scenario::Outage& outage, const Figures& figures) {
    return !outage.open_ended && figures.meets_the_goal();
}

Said counted_on_in_words(LocalTime starts, Duration lasts) {
    const LocalTime end = starts + lasts;
    const Duration after_midnight = time_of_day(end);
    const bool named_ahead =
        lasts >= 48.0 * hour && ((after_midnight >= 11.0 * hour && after_midnight < 12.0 * hour) ||
                                 after_midnight >= 23.0 * hour);
    // "about noon" and "about the end" of a day begin an hour before it.
    return end_in_words(starts, named_ahead ? lasts - 1.0 * hour : lasts);
}

Said times_in_100(Probability of) {
    if (of > Probability(0.99)) return said<"more than 99 times in 100">();
    if (of < Probability(0.01)) return said<"fewer than once in 100">();
    return said_of<"once in 100", "{n} times in 100">(whole_hundredths(of));
}

Said chance_in_words(const Figures& figures) {
    return chance_in_words(figures.of, {.low = figures.low, .high = figures.high}, figures.goal);
}

Said chance_in_words(Probability share, const chance::Interval& interval, Probability goal) {
    constexpr double sharp = 0.03;
    const double of = share.value();
    const double half = std::max(interval.high.value() - of, of - interval.low.value());
    if (half <= sharp + rounding || of > 0.99 || of < 0.01) return times_in_100(share);
    const bool meets = of >= goal.value() - rounding;
    int tenths = static_cast<int>(std::lround(10.0 * of));
    if (!meets && tenths >= 10.0 * goal.value() - rounding) --tenths;
    if (tenths < 1 || tenths > 9) return said<"about {often}">(times_in_100(share));
    return said_of<"about once in ten", "about {n} times in ten">(tenths);
}

Said chance_and_interval(const Figures& figures) {
    return said<"{chance} ({low} to {high})">(
        times_in_100(figures.of),
        words::with_decimals(std::floor(100.0 * figures.low.value() + rounding), 0),
        words::with_decimals(std::ceil(100.0 * figures.high.value() - rounding), 0));
}

}  // namespace answers
