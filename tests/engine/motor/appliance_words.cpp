#include "motor/appliances/appliance_words.hpp"

#include <gtest/gtest.h>

#include "motor/appliances/appliances.hpp"

namespace {

bool is_a_saying(const words::Said& said) {
    return said.saying != &words::saying<"{text}">;
}

// What is written into the list has to be among the sayings, so that each language can say it.
TEST(appliance_words, every_name_and_note_of_the_list_is_a_saying) {
    for (const motor::Appliance& appliance : motor::appliances()) {
        EXPECT_TRUE(is_a_saying(motor::name_in_words(appliance))) << appliance.name;
        EXPECT_EQ(motor::name_in_words(appliance), appliance.name);
        EXPECT_TRUE(is_a_saying(appliance.note)) << appliance.note;
    }
}

TEST(appliance_words, a_source_with_words_is_one) {
    EXPECT_TRUE(is_a_saying(motor::find_appliance("variable-speed refrigerator")->source));
    EXPECT_EQ(motor::find_appliance("variable-speed refrigerator")->source, "planner's default");
}

TEST(appliance_words, what_is_not_of_the_list_is_taken_as_it_is) {
    EXPECT_EQ(motor::said_of_appliances("kettle"), "kettle");
    EXPECT_FALSE(is_a_saying(motor::said_of_appliances("kettle")));
}

}  // namespace
