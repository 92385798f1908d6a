#include <gtest/gtest.h>

#include "models/days/sun_controls.hpp"
#include "scenario/file/read.hpp"

namespace {

TEST(a_place_of_ones_own, begins_with_the_figures_of_the_place_it_was) {
    touch::ScenarioDocument document;
    document.openExample();
    touch::SunControls sun;
    sun.set_document(&document);
    EXPECT_FALSE(sun.own_place());
    sun.makePlaceOwn();
    ASSERT_TRUE(sun.own_place()) << document.text().toStdString();
    const auto read = scenario::read_scenario(document.text().toStdString(), "");
    ASSERT_TRUE(read);
    EXPECT_FALSE(read->scenario.place.name.has_value());
    EXPECT_NEAR(*read->scenario.place.latitude / units::degree, 41.8, 0.5);  // Chicago
    EXPECT_TRUE(read->scenario.place.irradiation.has_value());
    sun.setPlace("Miami FL");
    EXPECT_FALSE(sun.own_place());
}

}  // namespace
