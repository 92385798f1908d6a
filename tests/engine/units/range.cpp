#include "units/range.hpp"

#include <algorithm>
#include <array>

#include "units/quantities.hpp"

namespace {

using units::ampere;
using units::Current;
using units::each;
using units::Ends;
using units::exactly;
using units::Range;
using units::spanning;

template <class T>
concept MadeOfThree = requires(T value) {
    Range<T>{value, value, value};
};
template <class T>
concept WithOpenEnds = requires(Range<T>& range, T value) {
    range.low() = value;
};

static_assert(!MadeOfThree<double> && !WithOpenEnds<double>,
              "a range is made by functions that order it");

TEST(range, its_ends_are_in_order_whatever_it_is_made_of) {
    std::array values{1.0, 2.0, 3.0};
    do {
        const auto range = spanning(values[0], values[1], values[2]);
        EXPECT_EQ(range.low(), 1.0);
        EXPECT_EQ(range.high(), 3.0);
        EXPECT_EQ(range.likely(), values[1]);
    } while (std::ranges::next_permutation(values).found);
}

TEST(range, one_value_is_a_range_of_no_width) {
    const Range<Current> range = exactly(2.0 * ampere);
    EXPECT_EQ(range.low(), range.high());
    EXPECT_EQ(range.likely(), 2.0 * ampere);
}

TEST(range, a_falling_function_leaves_it_in_order) {
    const auto inverse = each([](double value) { return 1.0 / value; }, spanning(1.0, 2.0, 4.0));
    EXPECT_EQ(inverse, spanning(0.25, 0.5, 1.0));
}

TEST(range, ends_keep_the_order_of_the_burden) {
    const auto range = spanning(1.0, 2.0, 4.0);
    EXPECT_EQ(more_is_harder(range), (Ends<double>{1.0, 2.0, 4.0}));
    EXPECT_EQ(less_is_harder(range), (Ends<double>{4.0, 2.0, 1.0}));
    const auto sum = each([](double a, double b) { return a + b; }, more_is_harder(range),
                          less_is_harder(range));
    EXPECT_EQ(sum, (Ends<double>{5.0, 4.0, 5.0}));
    EXPECT_EQ(spanning(sum), spanning(4.0, 4.0, 5.0));
}

TEST(range, two_overlap_when_they_share_a_value) {
    EXPECT_TRUE(overlap(spanning(1.0, 2.0, 3.0), spanning(3.0, 4.0, 5.0)));
    EXPECT_FALSE(overlap(spanning(1.0, 2.0, 3.0), spanning(3.1, 4.0, 5.0)));
}

}  // namespace
