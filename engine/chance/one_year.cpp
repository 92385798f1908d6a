#include "chance/one_year.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <map>
#include <optional>

#include "solar/weather/start_dates.hpp"

namespace chance {

namespace {

// Where no verdict differs nothing tells what it hangs on.
constexpr double told_by_nothing = 0.5;        // ours
constexpr double members_that_outweigh = 2.0;  // of the rarer verdict: ours

struct OfDate {
    double members = 0.0;
    double sum = 0.0;
    double squares = 0.0;
};

std::map<int, OfDate> by_date(std::span<const Outcome> outcomes, std::span<const int> dates) {
    std::map<int, OfDate> of;
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        const double lasted = outcomes[i].outlasts.value();
        OfDate& date = of[dates[i]];
        ++date.members;
        date.sum += lasted;
        date.squares += lasted * lasted;
    }
    return of;
}

struct Spread {
    double between = 0.0, within = 0.0;  // mean squares
    double members = 0.0;                // of a date, in the mean
};

// Nothing where no date has two members.
std::optional<Spread> spread_of(const std::map<int, OfDate>& of, double all, double mean) {
    const double dates = double(of.size());
    if (dates < 2.0 || all <= dates) return std::nullopt;
    Spread spread;
    double sizes = 0.0;
    for (const auto& [number, date] : of) {
        const double apart = date.sum / date.members - mean;
        spread.between += date.members * apart * apart / (dates - 1.0);
        spread.within += (date.squares - date.sum * date.sum / date.members) / (all - dates);
        sizes += date.members * date.members;
    }
    spread.members = (all - sizes / all) / (dates - 1.0);
    return spread;
}

}  // namespace

double share_between_dates(std::span<const Outcome> outcomes, std::span<const int> dates) {
    assert(!outcomes.empty() && outcomes.size() == dates.size());
    const double all = double(outcomes.size());
    double lasted = 0.0;
    for (const Outcome& outcome : outcomes)
        lasted += outcome.outlasts.value();
    const auto of = by_date(outcomes, dates);
    const auto spread = spread_of(of, all, lasted / all);
    if (!spread || spread->members <= 1.0) return 1.0;
    const double n = spread->members;
    const double sum = spread->between + (n - 1.0) * spread->within;
    const double found =
        sum > 0.0 ? std::clamp((spread->between - spread->within) / sum, 0.0, 1.0) : 0.0;
    // So far off is it where the dates matter not at all, one standard deviation.
    const double off = std::sqrt(2.0 / (n * (n - 1.0) * (double(of.size()) - 1.0)));
    const double rarer = std::min(lasted, all - lasted);
    return (rarer * std::min(1.0, found + off) + members_that_outweigh * told_by_nothing) /
           (rarer + members_that_outweigh);
}

double worth_in_all_years(std::span<const Outcome> outcomes, const StartDates& dates) {
    const double share = share_between_dates(outcomes, dates.of);
    const double all = double(outcomes.size());
    return 1.0 / (share / std::min(dates.independent, all) + (1.0 - share) / all);
}

StartDates start_dates_of(std::span<const int> of, const scenario::Outage& outage,
                          std::span<const Outcome> outcomes) {
    const auto lasts =
        outage.open_ended ? std::ranges::max(outcomes, {}, &Outcome::lasts).lasts : outage.lasts;
    return {.of = of, .independent = solar::independent_start_dates(lasts)};
}

}  // namespace chance
