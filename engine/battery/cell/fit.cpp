#include "battery/cell/fit.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include "words/said.hpp"

namespace battery {

using namespace units;
using words::said;

namespace {

// The box in which fits are looked for; a fit at its edge is refused.
constexpr double narrowest = 0.01;
constexpr double widest = 0.99;
constexpr double slowest_per_hour = 0.01;
constexpr double fastest_per_hour = 100.0;

Error not_two_wells() {
    return {.where = "rows",
            .found = said<"no pair of wells gives these rows">(),
            .remedy = said<"give rows in which a longer discharge yields more charge, measured at "
                           "one temperature">()};
}

bool usable(std::span<const RatedCharge> rows) {
    return std::all_of(rows.begin(), rows.end(), [](const RatedCharge& row) {
        return row.charge > Charge{} && row.over > Duration{};
    });
}

// Width of the available well from two rows at a rate; outside 0..1 where none fits. (11)
double width_from(const RatedCharge& first, const RatedCharge& second, Frequency rate) {
    const double ratio = first.charge / second.charge;
    const double first_x = rate * first.over;
    const double second_x = rate * second.over;
    const double upper =
        ratio * second_x * -std::expm1(-first_x) - first_x * -std::expm1(-second_x);
    const double lower = upper + (1.0 - ratio) * first_x * second_x;
    return lower != 0.0 ? upper / lower : -1.0;
}

Kinetics unit_wells(double width, Frequency rate) {
    return {.total = 1.0 * coulomb, .available = Share(width), .rate = rate};
}

// The total that fits the rows best at a width and rate (it enters linearly), and what is left.
Fit best_total(std::span<const RatedCharge> rows, double width, Frequency rate) {
    Kinetics kinetics = unit_wells(width, rate);
    double sum = 0.0;
    double squares = 0.0;
    for (const RatedCharge& row : rows) {
        const double shape = capacity_over(kinetics, row.over) / row.charge;
        sum += shape;
        squares += shape * shape;
    }
    const double total = sum / squares;
    double error = 0.0;
    for (const RatedCharge& row : rows) {
        const double off = total * (capacity_over(kinetics, row.over) / row.charge) - 1.0;
        error += off * off;
    }
    kinetics.total = total * coulomb;
    return {.kinetics = kinetics,
            .residual = Share(std::sqrt(error / static_cast<double>(rows.size())))};
}

Fit best_width(std::span<const RatedCharge> rows, Frequency rate) {
    const auto found = boost::math::tools::brent_find_minima(
        [&](double width) { return best_total(rows, width, rate).residual.value(); }, narrowest,
        widest, 40);
    return best_total(rows, found.first, rate);
}

Frequency rate_of(double logarithm) {
    return std::exp(logarithm) * per_hour;
}

Result<Fit> fit_three(std::span<const RatedCharge> rows) {
    const auto width_at = [&](double logarithm) {
        return width_from(rows[0], rows[2], rate_of(logarithm));
    };
    const auto middle_off = [&](double logarithm) {
        const Kinetics unit = unit_wells(width_at(logarithm), rate_of(logarithm));
        return (capacity_over(unit, rows[1].over) / capacity_over(unit, rows[2].over)) /
                   (rows[1].charge / rows[2].charge) -
               1.0;
    };
    const auto valid = [&](double logarithm) {
        const double width = width_at(logarithm);
        return width > narrowest && width < widest;
    };
    constexpr int cells = 400;
    const double first = std::log(slowest_per_hour);
    const double step = (std::log(fastest_per_hour) - first) / cells;
    for (int cell = 0; cell < cells; ++cell) {
        const double left = first + cell * step;
        const double right = left + step;
        if (!valid(left) || !valid(right)) continue;
        const double at_left = middle_off(left);
        const double at_right = middle_off(right);
        if ((at_left > 0.0) == (at_right > 0.0)) continue;
        std::uintmax_t steps = 200;
        const auto bracket =
            boost::math::tools::toms748_solve(middle_off, left, right, at_left, at_right,
                                              boost::math::tools::eps_tolerance<double>(50), steps);
        const double found = 0.5 * (bracket.first + bracket.second);
        return best_total(rows, width_at(found), rate_of(found));
    }
    return fail(not_two_wells());
}

Result<Fit> fit_many(std::span<const RatedCharge> rows) {
    const auto error_at = [&](double logarithm) {
        return best_width(rows, rate_of(logarithm)).residual.value();
    };
    constexpr int cells = 60;
    const double first = std::log(slowest_per_hour);
    const double step = (std::log(fastest_per_hour) - first) / cells;
    int best = 0;
    double least = std::numeric_limits<double>::max();
    for (int cell = 0; cell <= cells; ++cell) {
        const double error = error_at(first + cell * step);
        if (error < least) {
            least = error;
            best = cell;
        }
    }
    if (best == 0 || best == cells) return fail(not_two_wells());
    const auto found = boost::math::tools::brent_find_minima(error_at, first + (best - 1) * step,
                                                             first + (best + 1) * step, 40);
    const Fit fitted = best_width(rows, rate_of(found.first));
    const double width = fitted.kinetics.available.value();
    if (width < 1.01 * narrowest || width > 0.999 * widest) return fail(not_two_wells());
    return fitted;
}

}  // namespace

Result<Fit> fit_two_rows(const RatedCharge& first, const RatedCharge& second, Frequency rate) {
    const std::array rows{first, second};
    if (!usable(rows) || first.over == second.over || !(rate > Frequency{}))
        return fail(not_two_wells());
    const double width = width_from(first, second, rate);
    if (!(width > narrowest && width < widest)) return fail(not_two_wells());
    return best_total(rows, width, rate);
}

Result<Fit> fit_rows(std::span<const RatedCharge> rows) {
    if (rows.size() < 3)
        return fail(
            Error{.where = "rows",
                  .found = said<"fewer than three rows">(),
                  .remedy = said<"give three rows, or two and the rate of the chemistry">()});
    std::vector<RatedCharge> sorted(rows.begin(), rows.end());
    std::sort(sorted.begin(), sorted.end(),
              [](const RatedCharge& a, const RatedCharge& b) { return a.over < b.over; });
    const auto same = std::adjacent_find(sorted.begin(), sorted.end(),
                                         [](const RatedCharge& a, const RatedCharge& b) {
                                             return !(a.charge < b.charge) || a.over == b.over;
                                         });
    if (!usable(sorted) || same != sorted.end()) return fail(not_two_wells());
    return sorted.size() == 3 ? fit_three(sorted) : fit_many(sorted);
}

}  // namespace battery
