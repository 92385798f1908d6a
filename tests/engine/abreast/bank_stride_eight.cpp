#include "by_hand.hpp"

namespace {

TEST(bank_stride_eight, unlike_packs_at_eight_lanes_end_as_worked_out_and_as_by_the_clock) {
    by_hand::expect_ends(by_hand::unlike_packs(), abreast::Width::eight);
}

}  // namespace
