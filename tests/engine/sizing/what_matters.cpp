#include "sizing/what_matters.hpp"

#include <gtest/gtest.h>

#include "scenario/read.hpp"

namespace {

using namespace units;

scenario::Scenario demo(const std::string& name) {
    const auto read = scenario::read_scenario_file(
        std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name + ".toml", {});
    EXPECT_TRUE(read.has_value());
    return read->scenario;
}

outage::Ready ready_of(const scenario::Scenario& scenario) {
    auto ready = outage::make_ready(scenario);
    EXPECT_TRUE(ready.has_value());
    return std::move(*ready);
}

TEST(what_matters, the_better_end_of_an_input_lasts_longer_and_the_widest_comes_first) {
    const auto found = sizing::influences(ready_of(demo("ice_storm")));
    ASSERT_GE(found.size(), 3U);
    for (std::size_t i = 0; i < found.size(); ++i) {
        EXPECT_GT(found[i].at_best, found[i].at_worst) << found[i].input;
        if (i > 0) {
            EXPECT_LE(found[i].spread(), found[i - 1].spread());
        }
    }
}

}  // namespace
