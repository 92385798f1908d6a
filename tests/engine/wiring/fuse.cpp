#include "wiring/fuse.hpp"

namespace {

using namespace units;
using namespace wiring;

constexpr Duration ms = 0.001 * second;

// A fuse of 10 A by a sheet of its own: at 20 A between 1 and 100 s, at 60 A between 0.01 and 0.1 s.
Envelope of_a_sheet() {
    const scenario::Fuse fuse{
        .rating = 10.0 * ampere,
        .opens = {{.current = 60.0 * ampere, .least = 10.0 * ms, .most = 100.0 * ms},
                  {.current = 20.0 * ampere, .least = 1.0 * second, .most = 100.0 * second}}};
    return envelope_of(fuse, nullptr);
}

// Half way from 2 to 6 times on a logarithmic scale, sqrt(12) = 3.4641, the times are the roots of
// the products: 0.1 s and 3.162 s.
TEST(fuse, between_two_points_times_are_straight_on_logarithmic_scales) {
    const auto span = opening_at(of_a_sheet(), 3.464102);
    EXPECT_FALSE(span.holds);
    EXPECT_NEAR(*span.least / second, 0.1, 1e-6);
    EXPECT_NEAR(*span.most / second, 3.16228, 1e-4);
}

// Beyond the last point what melts it is I2t: at 12 times, twice 6, a quarter of the time.
TEST(fuse, beyond_the_last_point_the_square_of_the_current_counts) {
    const auto span = opening_at(of_a_sheet(), 12.0);
    EXPECT_NEAR(*span.least / ms, 2.5, 1e-9);
    EXPECT_NEAR(*span.most / ms, 25.0, 1e-9);
}

TEST(fuse, its_rating_it_holds_and_nothing_known_may_open) {
    EXPECT_TRUE(opening_at(of_a_sheet(), 1.0).holds);
    EXPECT_EQ(stands(of_a_sheet(), 10.0 * ampere, 20.0 * ampere, 0.5 * second), Surge::holds);
    EXPECT_EQ(stands(of_a_sheet(), 10.0 * ampere, 20.0 * ampere, 10.0 * second), Surge::may_open);
    EXPECT_EQ(stands(of_a_sheet(), 10.0 * ampere, 20.0 * ampere, 100.0 * second), Surge::opens);
    EXPECT_EQ(stands({}, 10.0 * ampere, 9.0 * ampere, 1.0 * hour), Surge::holds);
    EXPECT_EQ(stands({}, 10.0 * ampere, 11.0 * ampere, 1.0 * second), Surge::may_open);
}

// [NEC] 210.20(A): 125 % of what runs for three hours, 1.25 x 20 + 5 = 30 A; a fuse that a hot
// place leaves 0.9 of its rating needs 33.3 A.
TEST(fuse, what_runs_for_hours_counts_a_quarter_more) {
    const Asked asked{.continuous = 20.0 * ampere, .further = 5.0 * ampere};
    EXPECT_NEAR(least_rating(asked) / ampere, 30.0, 1e-12);
    Asked hot = asked;
    hot.hot = 0.9;
    EXPECT_NEAR(least_rating(hot) / ampere, 33.3333, 1e-4);
    Asked marked = asked;
    marked.full_duty = true;
    EXPECT_NEAR(least_rating(marked) / ampere, 25.0, 1e-12);
}

// Blades are made in 25, 30 and 40 A. A wire that carries 35 A leaves 30; one of 28 A nothing.
TEST(fuse, the_window_lies_between_the_load_and_the_weakest_part) {
    const FuseFamily* blade = find_fuse_family("blade");
    ASSERT_NE(blade, nullptr);
    const Asked asked{.continuous = 20.0 * ampere, .further = 5.0 * ampere};
    const auto window = fuse_window(asked, 35.0 * ampere, blade);
    EXPECT_EQ(window.smallest, 30.0 * ampere);
    EXPECT_EQ(window.largest, 30.0 * ampere);
    EXPECT_FALSE(window.empty());
    EXPECT_TRUE(fuse_window(asked, 28.0 * ampere, blade).empty());
    EXPECT_FALSE(fuse_window(asked, std::nullopt, blade).most);
}

// [ISO 8820-3]: 1 kA at 32 V; of 48 V the family says nothing.
TEST(fuse, it_breaks_what_its_family_breaks_at_that_voltage) {
    const FuseFamily* blade = find_fuse_family("blade");
    EXPECT_EQ(breaks_at(*blade, 14.4 * volt), 1000.0 * ampere);
    EXPECT_EQ(breaks_at(*blade, 48.0 * volt), std::nullopt);
}

}  // namespace
