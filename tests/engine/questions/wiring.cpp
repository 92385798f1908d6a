#include "questions/wiring.hpp"

#include <algorithm>

#include "file_of.hpp"

namespace {

using questions::WiringAsked;
using testing::HasSubstr;

std::string lamps_behind(const std::string& fuse) {
    return file_of::outage("1 d", file_of::warm) + file_of::a_pack +
           file_of::load("lamps", "100 W") +
           "[[circuit]]\nname = \"light\"\nfeeds = [\"lamps\"]\nlinks = [{fuse = \"" + fuse +
           "\", family = \"blade\"}, {wire = \"10 AWG\", length = \"3 ft\"}]\n";
}

// C2: does the fuse bear what is drawn for hours?
bool is_too_small(const questions::WiringFound& found) {
    return std::ranges::any_of(found.fit.checks, [](const fitting::Check& check) {
        return check.id == "C2" && check.verdict == fitting::Verdict::fails;
    });
}

// Metered 100 W may be 110 W, at 10.5 V 10.5 A: more than 5 A, and with a quarter on top for what
// lasts, [NEC] 210.20(A), 13.1 A, within 15 A, which 10 AWG bears.
TEST(wiring_question, a_fuse_too_small_fails_with_ways_out_and_one_that_bears_it_does_not) {
    const auto small = questions::find(file_of::text(lamps_behind("5 A")), WiringAsked{}, {});
    ASSERT_TRUE(small);
    EXPECT_TRUE(is_too_small(*small));
    ASSERT_FALSE(small->ways.empty());
    EXPECT_EQ(small->ways.front().circuit, "light");
    const auto larger = questions::find(file_of::text(lamps_behind("15 A")), WiringAsked{}, {});
    ASSERT_TRUE(larger);
    EXPECT_FALSE(is_too_small(*larger));
}

TEST(wiring_question, a_load_without_an_inverter_is_refused) {
    const auto refused =
        questions::find(file_of::text(file_of::outage("1 d") + file_of::a_pack + file_of::a_kettle),
                        WiringAsked{}, {});
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().found, HasSubstr("kettle needs one"));
}

}  // namespace
