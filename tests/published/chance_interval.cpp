// The interval told beside a chance, against the worked examples of [Newcombe 1998], table I,
// method 3 (score without continuity correction), four digits as printed.
#include "chance/figures.hpp"

namespace {

struct Printed {
    int survived;
    int tried;
    double low;
    double high;
};

class ChanceInterval : public testing::TestWithParam<Printed> {};

TEST_P(ChanceInterval, is_that_of_the_table) {
    const auto [survived, tried, low, high] = GetParam();
    const auto interval = chance::wilson(survived, tried);
    EXPECT_NEAR(interval.low.value(), low, 5e-5);
    EXPECT_NEAR(interval.high.value(), high, 5e-5);
}

INSTANTIATE_TEST_SUITE_P(published, ChanceInterval,
                         testing::Values(Printed{81, 263, 0.2553, 0.3662},
                                         Printed{15, 148, 0.0624, 0.1605},
                                         Printed{0, 20, 0.0000, 0.1611},
                                         Printed{1, 29, 0.0061, 0.1718}));

}  // namespace
