#include "answers/chance_words.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "answers/clock_words.hpp"

namespace answers {

namespace {

using namespace units;
using chance::Figures;

constexpr double rounding = 1e-9;  // of shares

}  // namespace

int whole_hundredths(Probability of) {
    return static_cast<int>(std::floor(100.0 * of.value() + rounding));
}

std::string goal_in_words(Probability goal) {
    if (std::abs(goal.value() - 0.9) < rounding) return "nine times in ten";
    return fmt::format("{:.4g} times in 100", 100.0 * goal.value());
}

// As it was typed, to two digits: "24 h", "4.9 days".
std::string half_in_words(Duration half_over_by) {
    if (half_over_by < 1.0 * hour) return fmt::format("{:.0f} min", half_over_by / minute);
    return half_over_by < 72.0 * hour ? fmt::format("{:.3g} h", half_over_by / hour)
                                      : fmt::format("{:.2g} days", half_over_by / day);
}

std::string if_half_are_over(const scenario::Outage& outage) {
    if (!outage.open_ended) return "";
    return fmt::format("if half of such outages are over within {}",
                       half_in_words(*outage.half_over_by));
}

std::string lasting_it(const scenario::Outage& outage) {
    if (outage.open_ended) return "longer than the outage";
    const LocalTime end = outage.starts + outage.lasts;
    return "to the end, " + (outage.lasts < 7.0 * day ? weekday_and_time(end) : date_and_time(end));
}

std::string lasting_so_often(const scenario::Outage& outage, const std::string& so_often) {
    return outage.open_ended
               ? fmt::format("{} {}, {}", lasting_it(outage), so_often, if_half_are_over(outage))
               : fmt::format("{}, {}", lasting_it(outage), so_often);
}

bool counted_on_to_the_end(const scenario::Outage& outage, const Figures& figures) {
    return !outage.open_ended && figures.meets_the_goal();
}

std::string counted_on_in_words(LocalTime starts, Duration lasts) {
    const LocalTime end = starts + lasts;
    const Duration after_midnight = time_of_day(end);
    const bool named_ahead =
        lasts >= 48.0 * hour && ((after_midnight >= 11.0 * hour && after_midnight < 12.0 * hour) ||
                                 after_midnight >= 23.0 * hour);
    // "about noon" and "about the end" of a day begin an hour before it.
    return end_in_words(starts, named_ahead ? lasts - 1.0 * hour : lasts);
}

std::string times_in_100(Probability of) {
    if (of > Probability(0.99)) return "more than 99 times in 100";
    if (of < Probability(0.01)) return "fewer than once in 100";
    const int times = whole_hundredths(of);
    return times == 1 ? "once in 100" : fmt::format("{} times in 100", times);
}

std::string chance_in_words(const Figures& figures) {
    return chance_in_words(figures.of, {.low = figures.low, .high = figures.high}, figures.goal);
}

std::string chance_in_words(Probability share, const chance::Interval& interval, Probability goal) {
    constexpr double sharp = 0.03;
    const double of = share.value();
    const double half = std::max(interval.high.value() - of, of - interval.low.value());
    if (half <= sharp + rounding || of > 0.99 || of < 0.01) return times_in_100(share);
    const bool meets = of >= goal.value() - rounding;
    int tenths = static_cast<int>(std::lround(10.0 * of));
    if (!meets && tenths >= 10.0 * goal.value() - rounding) --tenths;
    if (tenths < 1 || tenths > 9) return "about " + times_in_100(share);
    return tenths == 1 ? "about once in ten" : fmt::format("about {} times in ten", tenths);
}

std::string chance_and_interval(const Figures& figures) {
    return fmt::format("{} ({:.0f} to {:.0f})", times_in_100(figures.of),
                       std::floor(100.0 * figures.low.value() + rounding),
                       std::ceil(100.0 * figures.high.value() - rounding));
}

}  // namespace answers
