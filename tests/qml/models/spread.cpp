#include "models/days/spread.hpp"

#include <gtest/gtest.h>

namespace {

using touch::grouped;
using touch::spread;

TEST(spread, leaves_alone_what_is_far_enough_apart) {
    EXPECT_EQ(spread({100.0, 200.0, 290.0}, 400.0, 48.0), (QList<double>{100.0, 200.0, 290.0}));
}

TEST(spread, puts_what_would_touch_around_its_middle) {
    EXPECT_EQ(spread({100.0, 110.0}, 400.0, 48.0), (QList<double>{81.0, 129.0}));
    EXPECT_EQ(spread({100.0, 100.0, 100.0}, 400.0, 48.0), (QList<double>{52.0, 100.0, 148.0}));
}

TEST(spread, stays_within_the_width) {
    EXPECT_EQ(spread({0.0, 2.0}, 400.0, 48.0), (QList<double>{24.0, 72.0}));
    EXPECT_EQ(spread({398.0, 400.0}, 400.0, 48.0), (QList<double>{328.0, 376.0}));
}

// 1,000 sets of places: none touches another, none leaves the width.
TEST(spread, never_lets_two_touch) {
    unsigned state = 7;
    const auto random = [&state] {
        state = state * 1664525U + 1013904223U;
        return double(state >> 8) / double(1U << 24);
    };
    for (int times = 0; times < 1000; ++times) {
        QList<double> wished;
        for (int number = 0; number < 1 + times % 8; ++number)
            wished << 400.0 * random();
        std::ranges::sort(wished);
        const QList<double> middles = spread(wished, 400.0, 48.0);
        ASSERT_EQ(middles.size(), wished.size());
        EXPECT_GE(middles.front(), 24.0);
        EXPECT_LE(middles.back(), 376.0 + 1e-9);
        for (qsizetype i = 1; i < middles.size(); ++i)
            EXPECT_GE(middles[i] - middles[i - 1], 48.0 - 1e-9);
    }
}

TEST(grouped, puts_the_closest_together_first) {
    using Groups = QList<QList<int>>;
    const QList<double> places{0.0, 10.0, 100.0, 300.0, 305.0};
    EXPECT_EQ(grouped(places, 5).size(), 5);
    EXPECT_EQ(grouped(places, 4), (Groups{{0}, {1}, {2}, {3, 4}}));
    EXPECT_EQ(grouped(places, 3), (Groups{{0, 1}, {2}, {3, 4}}));
    EXPECT_EQ(grouped(places, 0).size(), 1);
    EXPECT_TRUE(grouped({}, 3).isEmpty());
}

}  // namespace
