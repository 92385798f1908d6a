#include "answers/gauge/answer.hpp"

namespace {

using namespace answers;
using namespace units;
using testing::HasSubstr;

scenario::Scenario one(scenario::Chemistry chemistry) {
    scenario::Scenario made;
    made.packs = {{.name = "main", .chemistry = chemistry, .capacity = 100.0 * ampere_hour}};
    made.outage.battery_temperature = celsius(25.0);
    return made;
}

Answer answer(scenario::Chemistry chemistry, const handling::Reading& reading) {
    const auto made = one(chemistry);
    return gauge_answer(made, reading, *handling::gauge(made, reading), {});
}

bool has_number(const Answer& answer, std::string_view key) {
    const Value* value = value_at(answer.values, key);
    return value != nullptr && std::holds_alternative<Quantity>(value->held);
}

TEST(gauge_answer, lead_is_told_as_an_interval_and_a_likeliest_charge) {
    const auto told =
        answer(scenario::Chemistry::flooded, {.reads = 12.4 * volt, .error = 0.05 * volt});
    EXPECT_THAT(told.sentences.front(), HasSubstr("most likely about"));
    EXPECT_TRUE(has_number(told, "charge_low"));
    EXPECT_TRUE(has_number(told, "charge_likely"));
    EXPECT_TRUE(has_number(told, "charge_high"));
}

// However fine the meter.
TEST(gauge_answer, no_likeliest_charge_is_told_on_the_plateau) {
    for (const double error : {0.0, 0.002, 0.05, 0.1}) {
        const auto told =
            answer(scenario::Chemistry::lifepo4, {.reads = 13.25 * volt, .error = error * volt});
        for (const auto& sentence : told.sentences)
            EXPECT_THAT(sentence, testing::Not(HasSubstr("most likely"))) << error;
        EXPECT_FALSE(has_number(told, "charge_likely"));
        EXPECT_TRUE(has_number(told, "charge_low"));
        EXPECT_TRUE(has_number(told, "charge_high"));
    }
    EXPECT_THAT(answer(scenario::Chemistry::lifepo4, {.reads = 13.25 * volt, .error = 0.1 * volt})
                    .sentences.front(),
                HasSubstr("cannot tell how full"));
    EXPECT_THAT(answer(scenario::Chemistry::lifepo4, {.reads = 13.25 * volt, .error = 0.0 * volt})
                    .sentences.front(),
                HasSubstr("tells no one charge"));
}

TEST(gauge_answer, without_a_time_nothing_is_said_of_how_long_it_lasts) {
    EXPECT_FALSE(has_number(
        answer(scenario::Chemistry::agm, {.reads = 12.5 * volt, .error = 0.05 * volt}), "lasts"));
}

}  // namespace
