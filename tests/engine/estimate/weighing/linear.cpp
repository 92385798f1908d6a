#include "estimate/weighing/linear.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "chance/draw.hpp"
#include "chance/unknowns.hpp"
#include "estimate/weighing/law.hpp"

namespace {

using estimate::Matrix;

constexpr std::size_t unknowns = 6;

Matrix scores_of(std::size_t members) {
    Matrix scores(members, unknowns);
    for (std::size_t i = 0; i < unknowns; ++i)
        for (std::size_t block = 0; block * 64 < members; ++block) {
            const auto column =
                chance::drawn({.seed = 5, .number = std::uint32_t(block)}, fmt::format("{}", i));
            for (std::size_t lane = 0; lane < 64; ++lane)
                scores(block * 64 + lane, i) = chance::score_of(column[lane]);
        }
    return scores;
}

// Two readings in errors of their own: one of a product, one of a sum.
double product(const double* scores) {
    return 10.0 * (std::exp(0.3 * scores[1] - 0.2 * scores[4]) - 1.5);
}
double sum(const double* scores) {
    return 4.0 * scores[1] + 3.0 * scores[2] - 6.0;
}
Matrix shown(const Matrix& scores) {
    Matrix off(scores.rows(), 2);
    for (std::size_t k = 0; k < scores.rows(); ++k) {
        off(k, 0) = product(scores.row(k));
        off(k, 1) = sum(scores.row(k));
    }
    return off;
}

double square(double of) {
    return of * of;
}

// What is most likely, by trying a grid of the three that count.
std::array<double, 3> by_trying() {
    std::array<double, 3> best{};
    double least = 1e300;
    constexpr double step = 0.01;
    for (double one = 0.5; one < 2.0; one += step)
        for (double two = 0.0; two < 1.0; two += step)
            for (double four = -1.0; four < 0.5; four += step) {
                const double scores[] = {0.0, one, two, 0.0, four, 0.0};
                const double far = square(one) + square(two) + square(four) +
                                   square(product(scores)) + square(sum(scores));
                if (far < least) {
                    least = far;
                    best = {one, two, four};
                }
            }
    return best;
}

TEST(linear_form, about_the_likeliest_is_that_of_a_search_by_trying) {
    const auto form = estimate::about_likeliest({0.5, -1.0, -1.0, 2.0, 1.0, -0.5}, shown);
    EXPECT_TRUE(form.held.empty());
    const auto law = estimate::law_of(form);
    const auto best = by_trying();
    EXPECT_NEAR(law.most_likely[1], best[0], 0.05);
    EXPECT_NEAR(law.most_likely[2], best[1], 0.05);
    EXPECT_NEAR(law.most_likely[4], best[2], 0.05);
    for (const std::size_t unseen : {0U, 3U, 5U})
        EXPECT_NEAR(law.most_likely[unseen], 0.0, 1e-9) << unseen;
}

// Snow lies or it does not: where the readings say that it does, slopes tell nothing of it, and it
// is held to where it lies.
TEST(linear_form, beyond_a_step_is_held_there) {
    const auto with_snow = [](const Matrix& scores) {
        Matrix off(scores.rows(), 1);
        for (std::size_t k = 0; k < scores.rows(); ++k)
            off(k, 0) = scores(k, 3) > 1.3 ? 0.0 : 12.0 * std::exp(0.5 * scores(k, 0));
        return off;
    };
    const auto form = estimate::about_likeliest({0.2, 0.0, 0.0, 1.6, 0.0, 0.0}, with_snow);
    ASSERT_EQ(form.held.size(), 1U);
    EXPECT_EQ(form.held.front().unknown, 3U);
    const auto law = estimate::law_of(form);
    EXPECT_GT(law.most_likely[3], 1.3);
    EXPECT_NEAR(law.most_likely[0], 0.0, 0.1);
}

TEST(linear_form, of_members_has_the_slopes_and_only_the_unknowns_that_are_seen) {
    estimate::Cloud cloud{.scores = scores_of(256), .off = Matrix(256, 1)};
    for (std::size_t k = 0; k < 256; ++k)
        cloud.off(k, 0) = sum(cloud.scores.row(k));
    const auto form = estimate::linear_of(cloud);
    const auto slope = [&](std::size_t unknown) {
        const auto found = std::ranges::find(form.unknowns, unknown);
        return found == form.unknowns.end()
                   ? 0.0
                   : form.per_score(0, std::size_t(found - form.unknowns.begin()));
    };
    EXPECT_NEAR(form.at_nought[0], -6.0, 1e-3);
    EXPECT_NEAR(slope(1), 4.0, 1e-3);
    EXPECT_NEAR(slope(2), 3.0, 1e-3);
    EXPECT_LE(form.unknowns.size(), 4U);
    EXPECT_NEAR(form.rest(0, 0), 1.0, 1e-3);
}

// What an earlier form has already is not fitted again, and what it leaves is.
TEST(linear_form, goes_on_from_an_earlier_one) {
    const Matrix scores = scores_of(256);
    const estimate::Cloud cloud{.scores = scores, .off = shown(scores)};
    const auto earlier = estimate::about_likeliest({0.0, 1.2, 0.4, 0.0, -0.3, 0.0}, shown);
    const auto form = estimate::linear_of(cloud, earlier);
    EXPECT_EQ(form.unknowns, earlier.unknowns);
    EXPECT_NEAR(form.per_score(1, 1), 4.0, 1e-2);
    EXPECT_NEAR(form.per_score(1, 2), 3.0, 1e-2);
    EXPECT_NEAR(form.rest(1, 1), 1.0, 1e-2);
    EXPECT_GT(form.rest(0, 0), 1.1);  // the product is no line
}

}  // namespace
