#include "units/result.hpp"

namespace {

using namespace units;

TEST(result, prints_an_error_as_one_line) {
    const Error error = {.where = "pack[0].capacity",
                         .found = "found 100 Wh, which is energy",
                         .remedy = "give charge, such as 100 Ah",
                         .file = "build.toml",
                         .line = 12};
    EXPECT_EQ(print(error),
              "build.toml:12: pack[0].capacity: found 100 Wh, which is energy; give charge, such "
              "as 100 Ah");
}

TEST(result, leaves_out_the_parts_of_an_error_that_are_empty) {
    EXPECT_EQ(print(Error{.where = "", .found = "12 has no unit", .remedy = ""}), "12 has no unit");
    EXPECT_EQ(print(Error{.where = "a", .found = "b", .remedy = "c"}), "a: b; c");
    EXPECT_EQ(print(Error{.where = "", .found = "b", .remedy = "", .file = "", .line = 3}),
              "line 3: b");
}

}  // namespace
