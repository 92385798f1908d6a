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
Matrix scores_of(std::size_t members, std::size_t unknowns, std::uint32_t first = 0) {
    Matrix scores(members, unknowns);
    for (std::size_t i = 0; i < unknowns; ++i)
        for (std::size_t block = 0; block * 64 < members; ++block) {
            const auto column = chance::drawn({.seed = 3, .number = first + std::uint32_t(block)},
                                              fmt::format("{}", i));
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

double square(double of) {
    return of * of;
}

// Means and deviations of load and capacity are those of the closed form: 0.1905 +- 0.0976 and
// -0.0476 +- 0.0900. Sampling leaves 0.1 of a deviation.
void expect_as_left(const Matrix& scores, const std::vector<double>& weights) {
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

TEST(law, members_drawn_of_it_and_weighed_are_as_the_readings_leave_them) {
    const auto law = estimate::law_of(estimate::linear_of(cloud()));
    Matrix scores = scores_of(1024, 8);
    std::vector<double> sums;
    for (std::size_t k = 0; k < scores.rows(); ++k) {
        law.move(scores.row(k));
        sums.push_back(-law.against_plan(scores.row(k)) - 0.5 * square(off(scores.row(k))));
    }
    const auto weights = estimate::weights_of(sums);
    EXPECT_GT(estimate::effective(weights), 700.0);
    expect_as_left(scores, weights);
}

// The ratio of two normal densities, by their formula: here of means 1 and 0, deviations 0.5 and 1.
TEST(law, tells_how_much_more_frequent_a_member_is_than_in_the_plan) {
    estimate::Law law{.unknowns = {1}, .most_likely = {1.0}, .root = Matrix(1, 1)};
    law.root(0, 0) = 2.0;
    for (const double score : {-1.0, 0.0, 0.4, 1.0, 2.5}) {
        const double scores[] = {3.0, score};
        const double expected =
            -0.5 * square((score - 1.0) / 0.5) - std::log(0.5) + 0.5 * square(score);
        EXPECT_NEAR(law.against_plan(scores), expected, 1e-12) << score;
    }
}

// From one point, wherever that is, they come to be spread as the law has it.
TEST(law, members_that_move_on_within_it_come_to_be_drawn_of_it) {
    const auto law = estimate::law_of(estimate::linear_of(cloud()));
    constexpr std::size_t members = 1024;
    Matrix at(members, 8);
    for (std::size_t k = 0; k < members; ++k)
        for (std::size_t i = 0; i < 8; ++i)
            at(k, i) = 3.0;
    for (int time = 0; time < 20; ++time) {
        Matrix scores = scores_of(members, 8, std::uint32_t(time) * 16);
        for (std::size_t k = 0; k < members; ++k)
            law.move_from({at.row(k), at.row(k) + 8}, 0.7, scores.row(k));
        at = scores;
    }
    std::vector<double> sums;
    for (std::size_t k = 0; k < members; ++k)
        sums.push_back(-law.against_plan(at.row(k)) - 0.5 * square(off(at.row(k))));
    expect_as_left(at, estimate::weights_of(sums));
    double sum = 0.0;
    double squares = 0.0;
    for (std::size_t k = 0; k < members; ++k) {
        sum += at(k, 0) / double(members);
        squares += square(at(k, 0)) / double(members);
    }
    EXPECT_NEAR(sum, 0.0, 0.1);
    EXPECT_NEAR(squares, 1.0, 0.15);
}

// What nothing depends on is left alone, and a reading that does not count is none.
TEST(law, without_its_only_reading_is_that_of_the_plan) {
    const auto law = estimate::law_of(estimate::linear_of(cloud()), 0);
    std::vector<double> scores{0.1, -0.4, 1.5, 0.0, 2.0, -1.0, 0.3, 0.7};
    const auto before = scores;
    law.move(scores.data());
    EXPECT_NEAR(law.against_plan(scores.data()), 0.0, 1e-12);
    for (std::size_t i = 0; i < scores.size(); ++i)
        EXPECT_NEAR(scores[i], before[i], 1e-12);
}

}  // namespace
