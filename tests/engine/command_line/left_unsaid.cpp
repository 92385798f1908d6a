#include "command_line/left_unsaid.hpp"

#include "typed.hpp"

namespace {

using command_line::Status;
using testing::HasSubstr;
using testing::Not;
using typed::asked;
using typed::with_a_lamp;

TEST(left_unsaid, a_file_without_loads_is_told_and_cannot_be_built_for) {
    const auto outage = asked({"outage"}, typed::a_pack);
    EXPECT_EQ(outage.status, Status::answered);
    EXPECT_THAT(outage.errors, HasSubstr("no load is described"));
    const auto packs = asked({"packs"}, typed::a_pack);
    EXPECT_EQ(packs.status, Status::unusable);
    EXPECT_THAT(packs.errors, HasSubstr("add a [[load]]"));
}

TEST(left_unsaid, an_unknown_place_is_told_though_nothing_asks_for_it) {
    const auto outcome = asked({"outage"}, with_a_lamp("[place]\nname = \"Nowhereville\"\n"));
    EXPECT_EQ(outcome.status, Status::answered);
    EXPECT_THAT(outcome.errors, HasSubstr("standard input:14: place.name"));
    EXPECT_THAT(asked({"outage"}, with_a_lamp("[place]\nname = \"Chicago IL\"\n")).errors,
                Not(HasSubstr("place")));
}

}  // namespace
