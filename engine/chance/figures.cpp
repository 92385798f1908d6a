#include "chance/figures.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include <boost/math/distributions/students_t.hpp>

#include "chance/draw.hpp"
#include "chance/one_year.hpp"

namespace chance {

namespace {

using namespace units;

constexpr double rounding = 1e-9;  // of sums of shares
constexpr double few = 10.0;       // members on a side below which a spread says little

double students(std::size_t values) {
    const boost::math::students_t spread(double(values) - 1.0);
    return boost::math::quantile(spread, 0.975);
}

Interval around(double middle, double half) {
    return {.low = Probability(std::clamp(middle - half, 0.0, 1.0)),
            .high = Probability(std::clamp(middle + half, 0.0, 1.0))};
}

std::vector<double> lasted_in_blocks(std::span<const Outcome> outcomes) {
    std::vector<double> lasted;
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        if (i % std::size_t(lanes) == 0) lasted.push_back(0.0);
        lasted.back() += outcomes[i].outlasts.value();
    }
    return lasted;
}

}  // namespace

Interval wilson(double lasted, double tried) {
    assert(tried >= 1.0 && lasted >= 0.0 && lasted <= tried);
    constexpr double z = 1.959964;  // 19 times in 20 of a normal distribution
    const double p = lasted / tried;
    const double middle = (p + z * z / (2.0 * tried)) / (1.0 + z * z / tried);
    const double half = z * std::sqrt(p * (1.0 - p) / tried + z * z / (4.0 * tried * tried)) /
                        (1.0 + z * z / tried);
    // The share itself lies within, whatever rounding says.
    return {.low = Probability(std::clamp(middle - half, 0.0, p)),
            .high = Probability(std::clamp(middle + half, p, 1.0))};
}

Interval interval_of_blocks(std::span<const double> lasted) {
    assert(!lasted.empty());
    double sum = 0.0;
    for (const double count : lasted)
        sum += count;
    const double blocks = double(lasted.size());
    const double members = blocks * lanes;
    if (lasted.size() < 2 || sum < few || members - sum < few) return wilson(sum, members);
    const double of = sum / members;
    double squares = 0.0;
    for (const double count : lasted)
        squares += (count / lanes - of) * (count / lanes - of);
    return around(of, students(lasted.size()) * std::sqrt(squares / (blocks * (blocks - 1.0))));
}

Duration time_of(std::span<const Outcome> sorted, double share) {
    assert(!sorted.empty());
    double ended = 0.0;
    for (const Outcome& outcome : sorted) {
        ended += outcome.weight;
        if (ended > share + rounding) return outcome.lasts;
    }
    return sorted.back().lasts;
}

double effective(std::span<const Outcome> outcomes) {
    double squares = 0.0;
    for (const Outcome& outcome : outcomes)
        squares += outcome.weight * outcome.weight;
    return 1.0 / squares;
}

double share_that_outlasts(std::span<const Outcome> outcomes) {
    double outlast = 0.0;
    double all = 0.0;
    for (const Outcome& outcome : outcomes) {
        all += outcome.weight;
        outlast += outcome.outlasts.value() * outcome.weight;
    }
    return std::min(1.0, outlast / all);
}

bool Figures::meets_the_goal() const {
    return of.value() >= goal.value() - rounding;
}

Figures figures_of(std::span<const Outcome> outcomes, Probability goal, const StartDates& dates) {
    assert(!outcomes.empty());
    std::vector<Outcome> sorted(outcomes.begin(), outcomes.end());
    std::ranges::stable_sort(sorted, {}, &Outcome::lasts);
    const double of = share_that_outlasts(outcomes);
    Interval interval = interval_of_blocks(lasted_in_blocks(outcomes));
    if (!dates.of.empty()) {
        const double worth = worth_in_all_years(outcomes, dates);
        interval = wilson(of * worth, worth);
    }
    double at_once = 0.0;
    for (const Outcome& outcome : outcomes)
        if (!outcome.survives && outcome.lasts < minute) at_once += outcome.weight;
    return {.of = Probability(of),
            .low = interval.low,
            .high = interval.high,
            .members = int(outcomes.size()),
            .effective = effective(outcomes),
            .nine_in_ten = time_of(sorted, 0.1),
            .half = time_of(sorted, 0.5),
            .one_in_ten = time_of(sorted, 0.9),
            .goal = goal,
            .count_on = time_of(sorted, goal.complement().value()),
            .at_once = Probability(std::min(1.0, at_once))};
}

}  // namespace chance
