#include "estimate/weighing/contradiction.hpp"

#include <algorithm>
#include <limits>

#include "estimate/closed_form.hpp"

namespace estimate {

namespace {

constexpr double beyond_chance = 0.001;

double most(std::size_t readings) {
    return largest_sum_of_squares(static_cast<int>(readings) + 2, beyond_chance);
}

double squares_of(const std::vector<Compared>& shown, std::size_t without) {
    double sum = 0.0;
    for (std::size_t j = 0; j < shown.size(); ++j)
        if (j != without) sum += distance(shown[j]) * distance(shown[j]);
    return sum;
}

double squares_of(const OwnErrors& own) {
    return own.meter * own.meter + own.table * own.table + own.display * own.display +
           own.sun * own.sun;
}

// Over the members of the plan: the meters' own errors count as well, so that a member far out in
// them is no easy way out.
double least_of_plan(const Batch& plan, std::size_t without) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < plan.shown.size(); ++i)
        least =
            std::min(least, squares_of(plan.members.own[i]) + squares_of(plan.shown[i], without));
    return least;
}

// Of the one that is likeliest after all readings but one: sought along the slopes of the form, each
// time from what the last one found does show.
double least_at_best(Linear form, std::optional<std::size_t> without, const Unknowns& unknowns,
                     const Runner& runner, double enough) {
    constexpr int times = 3;
    for (std::size_t j = 0; j < form.rest.rows(); ++j)
        for (std::size_t k = 0; k < form.rest.columns(); ++k)
            form.rest(j, k) = j == k ? 1.0 : 0.0;
    double least = std::numeric_limits<double>::infinity();
    for (int found = 0; found < times && least > enough; ++found) {
        const Law law = law_of(form, without);
        Matrix scores(1, unknowns.count());
        for (std::size_t i = 0; i < law.unknowns.size(); ++i)
            scores(0, law.unknowns[i]) = law.most_likely[i];
        double sum = 0.0;
        for (const double score : law.most_likely)
            sum += score * score;
        const auto shown = runner.shown_by(unknowns.with(scores)).front();
        least = std::min(least, sum + squares_of(shown, without.value_or(shown.size())));
        for (std::size_t j = 0; j < shown.size(); ++j) {
            form.at_nought[j] = expected_above(shown[j]);
            for (std::size_t i = 0; i < law.unknowns.size(); ++i)
                form.at_nought[j] -= form.per_score(j, i) * law.most_likely[i];
        }
    }
    return least;
}

}  // namespace

std::optional<Contradiction> contradiction_in(const Batch& plan, std::vector<Linear> forms,
                                              const Unknowns& unknowns, const Runner& runner,
                                              const Story& story) {
    const std::size_t readings = story.readings.size();
    if (least_of_plan(plan, readings) <= most(readings)) return std::nullopt;
    if (forms.empty()) forms.push_back(linear_of(cloud_of(plan)));
    const auto some_meet = [&](std::optional<std::size_t> without, double squares) {
        return std::ranges::any_of(forms, [&](const Linear& form) {
            return least_at_best(form, without, unknowns, runner, squares) <= squares;
        });
    };
    if (some_meet({}, most(readings))) return std::nullopt;
    Contradiction found;
    for (std::size_t j = 0; j < readings; ++j)
        if (readings == 1 || least_of_plan(plan, j) <= most(readings - 1) ||
            some_meet(j, most(readings - 1)))
            found.odd.push_back(story.readings[j]);
    found.one_of_them = !found.odd.empty();
    if (found.odd.empty()) found.odd = story.readings;
    return found;
}

}  // namespace estimate
