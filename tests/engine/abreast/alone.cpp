#include "abreast/alone.hpp"

#include <vector>

#include <gmock/gmock.h>

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::size_t> visited(const std::vector<double>& alone) {
    std::vector<std::size_t> lanes;
    abreast::each_alone(alone, [&](std::size_t lane) { lanes.push_back(lane); });
    return lanes;
}

TEST(each_alone, visits_the_marked_lanes_in_order) {
    std::vector<double> alone(19, 0.0);
    EXPECT_THAT(visited(alone), IsEmpty());
    for (const std::size_t lane : {18u, 0u, 7u, 8u})
        alone[lane] = 1.0;
    EXPECT_THAT(visited(alone), ElementsAre(0u, 7u, 8u, 18u));
}

TEST(each_alone, visits_none_of_no_lanes) {
    EXPECT_THAT(visited({}), IsEmpty());
}

}  // namespace
