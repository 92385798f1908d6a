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
                HasSubstr("may mean anything from"));
    EXPECT_THAT(answer(scenario::Chemistry::lifepo4, {.reads = 13.25 * volt, .error = 0.0 * volt})
                    .sentences.front(),
                HasSubstr("no closer: lithium voltage is nearly flat there"));
}

TEST(gauge_answer, it_says_of_which_pack_and_under_which_load_it_was_read) {
    const auto first = [](const handling::Reading& reading) {
        return in_english(answer(scenario::Chemistry::agm, reading).sentences.front());
    };
    EXPECT_THAT(first({.reads = 12.5 * volt, .error = 0.05 * volt}),
                testing::StartsWith("12.5 V at rest "));
    EXPECT_THAT(first({.reads = 12.5 * volt, .error = 0.05 * volt, .pack = "main"}),
                testing::StartsWith("12.5 V of pack main at rest "));
    EXPECT_THAT(first({.reads = 12.2 * volt, .error = 0.05 * volt, .power = 50.0 * watt}),
                testing::StartsWith("12.2 V under this load "));
}

questions::FromNow from_now(double low, double likely, double high) {
    return {.now = *read_local_time("2026-01-16T21:30"),
            .left = 100.0 * hour,
            .lasts_low = low * hour,
            .lasts = likely * hour,
            .lasts_high = high * hour,
            .survives_high = high > 99.0};
}

std::string how_long(const questions::FromNow& from, double volts,
                     scenario::Chemistry chemistry = scenario::Chemistry::agm) {
    const auto made = one(chemistry);
    const handling::Reading reading{.reads = volts * volt, .error = 0.05 * volt};
    return in_english(
        gauge_answer(made, reading, *handling::gauge(made, reading), from).sentences.back());
}

TEST(gauge_answer, how_long_it_lasts_is_told_at_both_ends) {
    EXPECT_EQ(how_long(from_now(8.0, 12.0, 100.0), 12.5),
              "From Friday 21:30 on it lasts until Saturday 09:00; at worst until Saturday 05:00, "
              "at best to the end of the outage.");
    EXPECT_EQ(how_long(from_now(8.0, 12.0, 100.0), 13.2, scenario::Chemistry::lifepo4),
              "From Friday 21:30 on it lasts at least until Saturday 05:00 and at most to the end "
              "of the outage: plan with the first.");
}

// An hour apart, but no sharper than it is known both ends are one.
TEST(gauge_answer, ends_that_sound_alike_are_told_once) {
    EXPECT_EQ(how_long(from_now(54.0, 54.5, 55.0), 12.5),
              "From Friday 21:30 on it lasts until the early hours of Monday, at either end of the "
              "reading.");
}

TEST(gauge_answer, in_german_it_is_whole_sentences) {
    const auto german = *words::language("de");
    const auto told =
        answer(scenario::Chemistry::lifepo4, {.reads = 13.25 * volt, .error = 0.1 * volt});
    EXPECT_THAT(words::in(german, told.sentences.front()),
                testing::MatchesRegex("13,25 V können alles von [0-9]+ bis [0-9]+ % voll bedeuten: "
                                      "Die Spannung von Lithium-Akkus ist dort fast gleich\\."));
    EXPECT_THAT(words::in(german, told.sentences.at(1)),
                testing::StartsWith("Die Spanne ist so groß, weil die Ablesung um "));
}

TEST(gauge_answer, without_a_time_nothing_is_said_of_how_long_it_lasts) {
    EXPECT_FALSE(has_number(
        answer(scenario::Chemistry::agm, {.reads = 12.5 * volt, .error = 0.05 * volt}), "lasts"));
}

}  // namespace
