#include "by_hand.hpp"

namespace {

TEST(stride_four, packs_at_four_lanes_end_as_worked_out_and_as_by_the_clock) {
    by_hand::expect_ends(by_hand::like_packs(), abreast::Width::four);
}

}  // namespace
