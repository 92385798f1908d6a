#include "estimate/weighing/law.hpp"

#include <cmath>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "chance/draw.hpp"
#include "chance/unknowns.hpp"
#include "estimate/weights.hpp"

namespace {

using estimate::Matrix;

// Normal scores of so many unknowns.
Matrix scores_of(std::size_t members, std::size_t unknowns) {
    Matrix scores(members, unknowns);
    for (std::size_t i = 0; i < unknowns; ++i)
        for (std::size_t block = 0; block * 64 < members; ++block) {
            const auto column =
                chance::drawn({.seed = 3, .number = std::uint32_t(block)}, fmt::format("{}", i));
            for (std::size_t lane = 0; lane < 64; ++lane)
                scores(block * 64 + lane, i) = chance::score_of(column[lane]);
        }
    return scores;
}

// A load of deviation 0.20 and a capacity of 0.10, and a reading of ln(load) - ln(capacity) that
// shows 0.25, off by 0.05; among unknowns that it does not see.
constexpr std::size_t load = 2;
constexpr std::size_t capacity = 5;
double off(const double* scores) {
    return (0.20 * scores[load] - 0.10 * scores[capacity] - 0.25) / 0.05;
}

estimate::Cloud cloud() {
    estimate::Cloud made{.scores = scores_of(256, 8), .off = Matrix(256, 1)};
    for (std::size_t k = 0; k < 256; ++k)
        made.off(k, 0) = off(made.scores.row(k));
    return made;
}

// The closed form has 0.1905 and -0.0476 for them, 0.9525 and -0.476 deviations.
TEST(law, is_most_likely_where_the_closed_form_says) {
    const auto law = estimate::law_of(estimate::linear_of(cloud()));
    ASSERT_GE(law.unknowns.size(), 2U);
    for (std::size_t i = 0; i < law.unknowns.size(); ++i) {
        const double expected = law.unknowns[i] == load       ? 0.9525
                                : law.unknowns[i] == capacity ? -0.476
                                                              : 0.0;
        EXPECT_NEAR(law.most_likely[i], expected, 0.02) << law.unknowns[i];
    }
}

// Drawn of the law and weighed by how rare they are, members have the mean and deviation of the
// closed form: 0.1905 +- 0.0976 and -0.0476 +- 0.0900. Sampling leaves 0.1 of a deviation.
TEST(law, members_drawn_of_it_and_weighed_are_as_the_readings_leave_them) {
    const auto law = estimate::law_of(estimate::linear_of(cloud()));
    Matrix scores = scores_of(1024, 8);
    std::vector<double> sums;
    for (std::size_t k = 0; k < scores.rows(); ++k) {
        const double rarer = law.move(scores.row(k));
        sums.push_back(rarer - 0.5 * std::pow(off(scores.row(k)), 2));
    }
    const auto weights = estimate::weights_of(sums);
    EXPECT_GT(estimate::effective(weights), 700.0);
    const auto expect = [&](std::size_t unknown, double deviation, double mean, double left) {
        double sum = 0.0;
        double squares = 0.0;
        for (std::size_t k = 0; k < weights.size(); ++k) {
            const double at = deviation * scores(k, unknown);
            sum += weights[k] * at;
            squares += weights[k] * at * at;
        }
        EXPECT_NEAR(sum, mean, 0.1 * left);
        EXPECT_NEAR(std::sqrt(squares - sum * sum), left, 0.1 * left);
    };
    expect(load, 0.20, 0.1905, 0.0976);
    expect(capacity, 0.10, -0.0476, 0.0900);
}

// What nothing depends on is left alone, and a reading that does not count is none.
TEST(law, without_its_only_reading_is_that_of_the_plan) {
    const auto law = estimate::law_of(estimate::linear_of(cloud()), 0);
    std::vector<double> scores{0.1, -0.4, 1.5, 0.0, 2.0, -1.0, 0.3, 0.7};
    const auto before = scores;
    EXPECT_NEAR(law.move(scores.data()), 0.0, 1e-12);
    for (std::size_t i = 0; i < scores.size(); ++i)
        EXPECT_NEAR(scores[i], before[i], 1e-12);
}

}  // namespace
