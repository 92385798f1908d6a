// Names for files that a person has not named yet.
#include "models/file/file_name.hpp"

#include <gtest/gtest.h>

namespace {

TEST(file_name, is_the_title_in_letters_that_any_folder_holds) {
    EXPECT_EQ(touch::file_name_of("Ice storm, four nights"), "ice_storm_four_nights");
    EXPECT_EQ(touch::file_name_of("../../etc/passwd"), "etc_passwd");
    EXPECT_EQ(touch::file_name_of("Übung für Anna"), "übung_für_anna");
    EXPECT_EQ(touch::file_name_of(""), "plan");
    EXPECT_EQ(touch::file_name_of("?!"), "plan");
    EXPECT_LE(touch::file_name_of(QString(500, 'a')).size(), 60);
}

}  // namespace
