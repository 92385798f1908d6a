#include "questions/start.hpp"

#include "file_of.hpp"

namespace {

using questions::StartAsked;

const std::string inverter = "[inverter]\ncontinuous = \"3000 W\"\nsurge = \"6000 W\"\n";
const std::string pump = file_of::load("pump", "600 W",
                                       "motor = {kind = \"split_phase\", horsepower = \"1/3 hp\", "
                                       "code_letter = \"M\", voltage = \"115 V\"}\n");

std::string a_pump(const std::string& outage, int packs) {
    auto pack = file_of::a_pack +
                "pulse = [{current = \"200 A\", for = \"5 s\"}]\ncount = " + std::to_string(packs) +
                "\n";
    return file_of::outage("1 d", outage) + pack + inverter + pump;
}

starting::StartVerdict verdict_of(const std::string& outage, int packs) {
    const auto found = questions::find(file_of::text(a_pump(outage, packs)), StartAsked{}, {});
    EXPECT_TRUE(found);
    EXPECT_EQ(found->starts.plan.loads.size(), 1U);
    return found->starts.plan.loads.front().judged.verdict;
}

TEST(start_question, a_file_without_a_motor_has_nothing_to_start) {
    const auto found = questions::find(
        file_of::text(file_of::outage("1 d") + file_of::a_pack + file_of::load("lamp", "9 W")),
        StartAsked{}, {});
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->starts.plan.loads.empty());
}

// Code letter M is 10 to 11.2 kVA a horsepower [NEC] table 430.7(B): 3.3 kVA and more for 1/3 hp,
// over 250 A from 12.8 V: more than the 200 A of one pack, a part of the 1200 A of six.
TEST(start_question, six_packs_start_what_one_does_not) {
    EXPECT_EQ(verdict_of(file_of::warm, 1), starting::StartVerdict::will_not_start);
    EXPECT_EQ(verdict_of(file_of::warm, 6), starting::StartVerdict::starts);
}

TEST(start_question, packs_that_follow_their_room_are_asked_at_its_coldest) {
    const auto found = questions::find(
        file_of::text(a_pump("battery_follows_room = true\nroom_temperature = \"-10 degC\"", 6)),
        StartAsked{}, {});
    ASSERT_TRUE(found);
    ASSERT_FALSE(found->assumed.empty());
    EXPECT_EQ(found->assumed.back().where, "outage.battery_temperature");
    EXPECT_EQ(found->assumed.back().text, "taken as −10 °C, the coldest day's");
}

TEST(start_question, a_motor_without_an_inverter_is_refused) {
    EXPECT_FALSE(questions::find(file_of::text(file_of::outage("1 d") + file_of::a_pack + pump),
                                 StartAsked{}, {}));
}

}  // namespace
