#include "questions/shared/draws.hpp"

#include "file_of.hpp"

namespace {

using testing::ElementsAre;
using units::watt;

// Metered loads may draw a tenth more. [NEC] article 100 calls continuous what lasts three hours.
constexpr const char* evening = "from = \"12V\"\nhours = [\"18:00-22:00\"]\npriority = 1\n";
constexpr const char* an_hour = "from = \"12V\"\nhours = [\"19:00-20:00\"]\npriority = 4\n";

fitting::Draws draws_of(const std::string& text) {
    return questions::draws_of(file_of::text(text).scenario).value();
}

TEST(draws, what_is_on_for_four_hours_is_continuous_and_what_is_on_for_one_comes_on_top) {
    const auto draws = draws_of(file_of::outage("1 d") + file_of::a_pack +
                                file_of::load("lamps", "60 W", evening) +
                                file_of::load("phones", "20 W", an_hour) +
                                "[[circuit]]\nname = \"light\"\nfeeds = [\"lamps\"]\n"
                                "links = [{fuse = \"10 A\", family = \"blade\"}]\n");
    EXPECT_NEAR(draws.direct.continuous / watt, 66.0, 1e-9);
    EXPECT_NEAR(draws.direct.further / watt, 22.0, 1e-9);
    EXPECT_EQ(draws.ac.continuous, units::Power());
    ASSERT_EQ(draws.circuits.size(), 1U);
    EXPECT_NEAR(draws.circuits.front().at_bus.continuous / watt, 66.0, 1e-9);
    EXPECT_NEAR(draws.circuits.front().at_bus.further / watt, 0.0, 1e-9);
    EXPECT_TRUE(draws.circuits.front().critical);
    EXPECT_FALSE(draws.circuits.front().starts_motors);
    EXPECT_THAT(draws.without_circuit, ElementsAre("phones"));
}

TEST(draws, an_outage_shorter_than_three_hours_counts_as_if_it_went_on) {
    const auto draws =
        draws_of(file_of::outage("2 h") + file_of::a_pack + file_of::load("lamp", "50 W"));
    EXPECT_NEAR(draws.direct.continuous / watt, 55.0, 1e-9);
    EXPECT_NEAR(draws.direct.further / watt, 0.0, 1e-9);
}

TEST(draws, of_no_load_are_none) {
    const auto draws = draws_of(file_of::outage("1 d") + file_of::a_pack);
    EXPECT_EQ(draws.direct.continuous, units::Power());
    EXPECT_TRUE(draws.without_circuit.empty());
}

TEST(draws, a_load_whose_draw_cannot_be_told_is_named) {
    const auto read = file_of::text(file_of::outage("1 d") + file_of::a_pack + file_of::a_kettle);
    const auto refused = questions::draws_of(read.scenario);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().found, testing::HasSubstr("kettle needs one"));
}

}  // namespace
