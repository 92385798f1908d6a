#include "command_line/read_request.hpp"

#include "typed.hpp"

namespace {

using command_line::Status;
using testing::HasSubstr;
using typed::asked;
using typed::with_a_lamp;

TEST(read_request, what_set_brought_in_is_told_as_its_own) {
    const auto outcome = asked({"outage", "--set", "pack.main.count=0"}, with_a_lamp());
    EXPECT_EQ(outcome.status, Status::unusable);
    EXPECT_THAT(outcome.errors, HasSubstr("--set pack.main.count=0: "));
}

TEST(read_request, set_on_a_name_that_is_not_there_names_those_that_are) {
    for (const char* set : {"load.router.power=20 W", "pack.spare.capacity=20 Ah"}) {
        const auto outcome = asked({"outage", "--set", set}, with_a_lamp());
        EXPECT_EQ(outcome.status, Status::unusable) << set;
        EXPECT_THAT(outcome.errors,
                    testing::AnyOf(HasSubstr("there are lamp"), HasSubstr("there are main")))
            << set;
    }
}

TEST(read_request, set_on_a_table_that_is_not_there_names_the_tables) {
    const auto outcome = asked({"outage", "--set", "heater.power=20 W"}, with_a_lamp());
    EXPECT_EQ(outcome.status, Status::unusable);
    EXPECT_THAT(outcome.errors, HasSubstr("--set heater.power=20 W: heater: "));
    EXPECT_THAT(outcome.errors, HasSubstr("inverter"));
}

TEST(read_request, set_needs_no_name_where_there_is_one_entry) {
    EXPECT_EQ(asked({"outage", "--set", "load.power=20 W"}, with_a_lamp()).status,
              Status::answered);
    EXPECT_EQ(asked({"start", "--set", "load.motor.kind=direct_current"}, with_a_lamp()).errors,
              "");
}

TEST(read_request, every_set_that_cannot_be_read_is_told_at_once) {
    const auto overrides =
        command_line::overrides_of({"pack.main.count", "load.lamp.power=9 W", "x"});
    ASSERT_FALSE(overrides);
    ASSERT_EQ(overrides.error().size(), 2U);
    EXPECT_EQ(overrides.error().front().found, "found 'pack.main.count', which has no =");
    EXPECT_EQ(overrides.error().back().found, "found 'x', which has no =");
}

// The file has its count in quotes, which is refused; what is set stands without them.
TEST(read_request, a_count_in_quotes_is_mended_by_set) {
    auto text = with_a_lamp();
    text.replace(text.find("capacity"), 0, "count = \"2\"\n");
    EXPECT_THAT(asked({"read"}, text).errors, HasSubstr("without quotes"));
    EXPECT_EQ(asked({"read", "--set", "pack.main.count=2"}, text).status, Status::answered);
    EXPECT_EQ(asked({"read", "--set", "pack.main.count=\"2\""}, text).status, Status::answered);
}

}  // namespace
