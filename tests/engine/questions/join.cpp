#include "questions/join.hpp"

#include "file_of.hpp"

namespace {

using questions::JoinAsked;
using testing::HasSubstr;
using units::ampere;

std::string pack(const std::string& name, const std::string& rested) {
    return "[[pack]]\nname = \"" + name + "\"\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\n" +
           "resistance = \"10 mohm\"\nlead_resistance = \"5 mohm\"\nrested_voltage = \"" + rested +
           "\"\n";
}

std::string two_packs(const std::string& outage) {
    return file_of::outage("1 d", outage) + pack("main", "13.30 V") + pack("spare", "13.15 V");
}

// 0.15 V over two packs of 10 mohm and two leads of 5 mohm, 30 mohm in all: 5 A, into the lower one.
TEST(join_question, the_higher_pack_charges_the_lower_by_the_volts_between_them) {
    const auto found = questions::find(file_of::text(two_packs(file_of::warm)), JoinAsked{}, {});
    ASSERT_TRUE(found);
    EXPECT_EQ(found->joining.pack, "spare");
    EXPECT_NEAR(found->joining.current / ampere, -5.0, 0.05);
    EXPECT_TRUE(found->assumed.empty());
    const auto refused = questions::find(file_of::text(two_packs(file_of::warm)),
                                         JoinAsked{.at_most = 3.0 * ampere}, {});
    ASSERT_TRUE(refused);
    EXPECT_FALSE(refused->joining.allowed);
}

// A lithium pack is not charged below freezing, whatever flows.
TEST(join_question, it_is_asked_at_the_coldest_of_the_room) {
    const auto found = questions::find(
        file_of::text(two_packs("battery_follows_room = true\nroom_temperature = \"-5 degC\"")),
        JoinAsked{}, {});
    ASSERT_TRUE(found);
    EXPECT_NEAR(units::in_celsius(found->joining.temperature), -5.0, 1e-9);
    EXPECT_FALSE(found->joining.allowed);
    EXPECT_FALSE(found->assumed.empty());
}

TEST(join_question, a_pack_that_is_not_there_is_refused_by_its_name) {
    const auto refused =
        questions::find(file_of::text(two_packs(file_of::warm)), JoinAsked{.pack = "third"}, {});
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().found, HasSubstr("third"));
}

}  // namespace
