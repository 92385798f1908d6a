#include "by_hand.hpp"

namespace {

TEST(stride_eight, packs_at_eight_lanes_end_as_worked_out_and_as_by_the_clock) {
    by_hand::expect_ends(by_hand::like_packs(), abreast::Width::eight);
}

}  // namespace
