#include "estimate/weights.hpp"

#include <cmath>

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace {

using namespace estimate;

double any(double least, double most) {
    return least + (most - least) * (*rc::gen::inRange(0, 1'000'000) / 1e6);
}

// Four draws by two capacities; a charge is read, then a meter.
TEST(weights, members_by_hand) {
    std::vector<double> charge;
    std::vector<double> meter;
    std::vector<double> a_of;
    std::vector<double> q_of;
    for (const double a : {0.8, 1.0, 1.2, 1.4})
        for (const double q : {0.8, 1.0}) {
            const double far = (0.60 - (1.0 - 0.3 * a / q)) / 0.05;
            charge.push_back(-0.5 * far * far);
            const double by_meter = (1.02 - a) / 0.05;
            meter.push_back(charge.back() - 0.5 * by_meter * by_meter);
            a_of.push_back(a);
            q_of.push_back(q);
        }
    const auto weights = weights_of(charge);
    const double told[] = {.0391, .0017, .2551, .0391, .1754, .2099, .0127, .2669};
    for (std::size_t i = 0; i < weights.size(); ++i)
        EXPECT_NEAR(weights[i], told[i], 0.00005);
    EXPECT_NEAR(effective(weights), 4.665, 0.0005);
    double small = 0.0;
    double mean = 0.0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        small += q_of[i] < 0.9 ? weights[i] : 0.0;
        mean += weights[i] * a_of[i];
    }
    EXPECT_NEAR(small, 0.4823, 0.00005);
    EXPECT_NEAR(mean, 1.181, 0.0005);
    const auto both = weights_of(meter);
    double small_then = 0.0;
    double hours = 0.0;
    double squares = 0.0;
    for (std::size_t i = 0; i < both.size(); ++i) {
        small_then += q_of[i] < 0.9 ? both[i] : 0.0;
        const double left =
            (1.0 - 0.3 * a_of[i] / q_of[i] - 0.10) * 100.0 * q_of[i] / (10.0 * a_of[i]);
        hours += both[i] * left;
        squares += both[i] * left * left;
    }
    EXPECT_NEAR(small_then, 0.8661, 0.00005);
    EXPECT_NEAR(hours, 4.438, 0.0005);
    EXPECT_NEAR(std::sqrt(squares - hours * hours), 0.612, 0.0005);
}

TEST(weights, sum_to_one_and_count_no_more_than_there_are) {
    EXPECT_TRUE(rc::check([] {
        std::vector<double> likelihood;
        const int count = *rc::gen::inRange(1, 200);
        for (int i = 0; i < count; ++i)
            likelihood.push_back(any(-900.0, 0.0));
        const auto weights = weights_of(likelihood);
        double sum = 0.0;
        for (const double weight : weights)
            sum += weight;
        RC_ASSERT(std::abs(sum - 1.0) < 1e-12);
        RC_ASSERT(effective(weights) <= double(weights.size()) * (1.0 + 1e-12));
        RC_ASSERT(effective(weights) >= 1.0 - 1e-12);
        // Each is drawn again as often as its weight says, but for one.
        const auto places = drawn_again(weights, 1000);
        std::vector<int> often(weights.size(), 0);
        for (const std::size_t place : places)
            ++often[place];
        for (std::size_t i = 0; i < weights.size(); ++i)
            RC_ASSERT(std::abs(often[i] - 1000.0 * weights[i]) <= 1.0 + 1e-6);
    }));
}

TEST(weights, of_one_likelihood_are_alike_to_the_last_bit) {
    for (const double one : {0.0, -3.0, -1e300}) {
        const auto weights = weights_of(std::vector<double>(64, one));
        for (const double weight : weights)
            EXPECT_EQ(weight, 1.0 / 64.0);
    }
}

}  // namespace
