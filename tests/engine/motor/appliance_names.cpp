// Appliances of the list by the names that people have for them.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "motor/appliances/appliances.hpp"

namespace {

using motor::find_appliance;
using testing::HasSubstr;

TEST(appliance_names, names_are_found_whatever_their_capitals_and_by_their_other_names) {
    EXPECT_EQ(find_appliance("Sump  PUMP 1/3 HP")->name, "sump pump 1/3 hp");
    EXPECT_EQ(find_appliance("fridge")->name, "refrigerator");
}

TEST(appliance_names, a_misspelt_name_is_told_what_comes_close) {
    const auto missing = find_appliance("refridgerator");
    ASSERT_FALSE(missing);
    EXPECT_THAT(missing.error().front().remedy, HasSubstr("\"refrigerator\""));
    EXPECT_THAT(find_appliance("sump").error().front().remedy, HasSubstr("sump pump 1/3 hp"));
    EXPECT_THAT(find_appliance("").error().front().remedy, HasSubstr("appliances.toml"));
}

}  // namespace
