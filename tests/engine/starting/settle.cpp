#include "starting/settle.hpp"

#include "engine/starting/made_start.hpp"

namespace {

using namespace made_start;

TEST(settle, a_surge_of_unknown_length_leaves_it_marginal_at_best) {
    auto silent = three_kilowatts();
    silent.surge_lasts.reset();
    const auto known = side_of(three_kilowatts());
    const auto unknown = side_of(silent);
    const std::vector<StartingMotor> motors{pump(known, 37.0)};  // 1.5 times and more
    EXPECT_EQ(judge_start(motors, {}, known, packs(6)).verdict, StartVerdict::starts);
    const StartQuestion question{
        .motors = motors, .background = {}, .inverter = unknown, .source = packs(6)};
    const auto found = judge_start(question);
    EXPECT_EQ(found.verdict, StartVerdict::marginal);
    EXPECT_EQ(found.binding, Constraint::surge_duration);
    const auto settling = settle_with(question);
    ASSERT_TRUE(settling);
    EXPECT_EQ(settling->datum, Datum::surge_duration);
}

TEST(settle, a_start_that_is_sure_needs_no_datum_found) {
    const auto side = side_of(three_kilowatts());
    const StartQuestion question{
        .motors = {pump(side, 20.0)}, .background = {}, .inverter = side, .source = packs(6)};
    EXPECT_EQ(judge_start(question).verdict, StartVerdict::starts);
}

// One pack of 13.2 V between 4 and 20 milliohm: at the good end the start is sure, at the bad one
// its voltage falls below the cut-off. Everything else is stated, so it is the resistance that
// settles the doubt, either way.
TEST(settle, a_resistance_nobody_measured_is_what_to_measure) {
    const auto side = side_of(three_kilowatts());
    DirectSource source = packs(2);
    source.branches.front().path =
        units::spanning<units::Resistance>(0.002 * ohm, 0.010 * ohm, 0.030 * ohm);
    const StartQuestion question{
        .motors = {pump(side, 28.0)}, .background = {}, .inverter = side, .source = source};
    ASSERT_EQ(judge_start(question).verdict, StartVerdict::marginal);
    const auto settling = settle_with(question);
    ASSERT_TRUE(settling);
    EXPECT_EQ(settling->datum, Datum::pack_resistance);
    EXPECT_NE(in_english(settling->find).find("measure the resistance of a pack"), std::string::npos);
}

}  // namespace
