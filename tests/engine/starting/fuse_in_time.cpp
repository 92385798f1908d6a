#include "starting/fuse_in_time.hpp"

namespace {

using namespace starting;
using units::ampere;
using units::second;

TEST(fuse_in_time, a_fuse_holds_more_for_a_shorter_time) {
    const auto rating = 100.0 * ampere;
    double before = 1e9;
    for (const double seconds : {0.01, 0.04, 0.2, 1.0, 2.0, 10.0, 60.0, 600.0, 3600.0}) {
        const auto melts = melting_current(rating, seconds * second);
        EXPECT_LE(melts.low(), melts.likely());
        EXPECT_LE(melts.likely(), melts.high());
        EXPECT_LE(melts.low() / ampere, before);
        before = melts.low() / ampere;
    }
}

// [Blade sheets], maxi: 200 % melts it in 2 to 50 s; the table keeps 60 s.
TEST(fuse_in_time, twice_the_rating_melts_it_within_the_printed_times) {
    EXPECT_NEAR(melting_current(100.0 * ampere, 2.0 * second).low() / ampere, 200.0, 1e-9);
    EXPECT_NEAR(melting_current(100.0 * ampere, 60.0 * second).high() / ampere, 200.0, 1e-9);
}

TEST(fuse_in_time, in_the_shortest_times_the_square_of_the_current_counts) {
    const auto one = melting_current(100.0 * ampere, 0.01 * second);
    const auto four = melting_current(100.0 * ampere, 0.0025 * second);
    EXPECT_NEAR(four.low() / one.low(), 2.0, 1e-9);
}

}  // namespace
