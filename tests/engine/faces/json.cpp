#include "faces/json.hpp"

#include <limits>

#include <nlohmann/json.hpp>

#include "answers/outage/answer.hpp"
#include "support/made_plan.hpp"

namespace {

using namespace answers;
using namespace faces;
using nlohmann::json;

Answer made_answer() {
    return outage_answer(made::scenario(), made::plan(), {});
}

// Every object with "value" also has "unit", and neither is null.
void expect_quantities_have_units(const json& node, int& quantities) {
    if (node.is_object() && node.contains("value") && !node.contains("section")) {
        EXPECT_TRUE(node.at("value").is_number()) << node.dump();
        EXPECT_TRUE(node.at("unit").is_string()) << node.dump();
        ++quantities;
    }
    if (node.is_structured()) {
        for (const auto& inner : node) {
            expect_quantities_have_units(inner, quantities);
        }
    }
}

TEST(json, the_envelope_has_exactly_the_promised_keys_in_order) {
    const auto parsed = nlohmann::ordered_json::parse(in_json(made_answer()));
    std::vector<std::string> keys;
    for (const auto& [key, value] : parsed.items()) {
        keys.push_back(key);
    }
    EXPECT_THAT(keys, testing::ElementsAre("candlemark", "question", "answer", "findings",
                                           "working", "assumptions", "cautions", "series"));
    EXPECT_EQ(parsed.at("candlemark"), 1);
    EXPECT_EQ(parsed.at("question"), "outage");
}

TEST(json, the_keys_of_the_outage_answer_are_there) {
    const auto answer = json::parse(in_json(made_answer())).at("answer");
    for (const char* key :
         {"lasts", "ends_at", "survives", "limited_by", "energy", "chance", "count_on",
          "over_chances", "chance_of_lasting", "next_packs", "sentences"}) {
        EXPECT_TRUE(answer.contains(key)) << key;
    }
    for (const char* key :
         {"loads", "inverter_loss", "wiring_loss", "battery_loss", "sun_offered", "sun_stored",
          "sun_unused", "stored_at_start", "stored_at_end", "unserved", "residual"}) {
        EXPECT_EQ(answer.at("energy").at(key).at("unit"), "W.h") << key;
    }
    EXPECT_EQ(answer.at("lasts").at("unit"), "h");
    EXPECT_TRUE(answer.at("survives").is_boolean());
}

TEST(json, every_quantity_has_a_number_and_a_unit) {
    int quantities = 0;
    expect_quantities_have_units(json::parse(in_json(made_answer())).at("answer"), quantities);
    EXPECT_GT(quantities, 20);
}

TEST(json, a_key_without_a_value_is_null_and_says_why) {
    const auto answer = json::parse(in_json(made_answer())).at("answer");
    EXPECT_TRUE(answer.at("chance").is_null());
    EXPECT_TRUE(answer.at("why_null").at("chance").is_string());
    EXPECT_FALSE(answer.at("why_null").contains("lasts"));
}

TEST(json, figures_take_the_place_of_null_once_members_were_run) {
    questions::OutageChance chance{
        .more = sizing::MorePacks{.more = 2, .tried = 2, .of = units::Probability(0.93)},
        .packs = 4};
    chance.figures = {.of = units::Probability(0.34),
                      .low = units::Probability(0.31),
                      .high = units::Probability(0.37),
                      .members = 256,
                      .effective = 256.0,
                      .nine_in_ten = 20.0 * units::hour,
                      .half = 30.0 * units::hour,
                      .one_in_ten = 50.0 * units::hour,
                      .goal = units::Probability(0.9),
                      .count_on = 20.0 * units::hour};
    const auto answer =
        json::parse(in_json(outage_answer(made::scenario(), made::plan(), {}, chance)))
            .at("answer");
    EXPECT_EQ(answer.at("over_chances").at("nine_in_ten").at("value"), 20.0);
    EXPECT_EQ(answer.at("count_on").at("ends_at"), "2026-01-15T14:00:00");
    EXPECT_EQ(answer.at("chance").at("members"), 256);
    EXPECT_EQ(answer.at("chance").at("of").at("unit"), "%");
    EXPECT_NEAR(answer.at("chance").at("of").at("value").get<double>(), 34.0, 1e-9);
    EXPECT_EQ(answer.at("chance_of_lasting"), answer.at("chance").at("of"));
    EXPECT_EQ(answer.at("more_packs").at("packs"), 6);
}

TEST(json, no_number_that_is_not_finite_is_ever_printed) {
    auto plan = made::plan();
    plan.likely.lowest_voltage = std::numeric_limits<double>::quiet_NaN() * units::volt;
    const auto text = in_json(outage_answer(made::scenario(), plan, {}));
    EXPECT_TRUE(json::parse(text).at("answer").at("lowest_voltage").is_null());
    EXPECT_EQ(text.find("nan"), std::string::npos);
}

TEST(json, numbers_have_ten_digits_and_no_noise) {
    Answer answer;
    answer.question = "outage";
    answer.values = {{"lasts", "", {Quantity{0.1 + 0.2, "h", "0.3 h"}}}};
    EXPECT_EQ(json::parse(in_json(answer)).at("answer").at("lasts").at("value").dump(), "0.3");
}

TEST(json, bytes_that_are_not_utf8_do_not_stop_the_answer) {
    auto scenario = made::scenario();
    scenario.title = "ice \xff storm";
    EXPECT_TRUE(json::accept(in_json(outage_answer(scenario, made::plan(), {}))));
}

TEST(json, a_column_of_codes_has_the_codes) {
    answers::Answer answer;
    const std::vector<answers::Code> codes{{.code = "low_voltage", .said = "low voltage"}};
    answer.series = {{.name = "ends",
                      .title = "ends",
                      .columns = {{.name = "why", .heading = "why", .unit = "", .points = codes}}}};
    EXPECT_EQ(
        nlohmann::json::parse(faces::in_json(answer, {}))["series"][0]["columns"][0]["points"],
        nlohmann::json::array({"low_voltage"}));
}

TEST(json, columns_of_a_series_have_equal_lengths) {
    const auto whole = json::parse(in_json(made_answer()));
    for (const auto& series : whole.at("series")) {
        const auto length = series.at("columns").at(0).at("points").size();
        for (const auto& column : series.at("columns")) {
            EXPECT_EQ(column.at("points").size(), length) << column.at("name");
        }
    }
}

// 360 kJ are 100 Wh; 2026-01-15 03:00 is 1768446000 s after 1970 (20468 days of 86400 s and 3 h).
TEST(json, what_was_said_is_beside_its_text_with_parts_as_values) {
    using namespace words;
    Answer answer{.question = "storage"};
    answer.sentences.push_back(said<"{pack} holds {energy} at {time}: {why}.">(
        "main", Amount{Dimension::energy, 360e3}, Moment{.since_1970 = 1768446000.0},
        said<"{n} times charged">(2)));
    const auto parsed = json::parse(in_json(answer)).at("answer");
    EXPECT_EQ(parsed.at("sentences").at(0),
              "main holds 100 Wh at Thursday 03:00: 2 times charged.");
    EXPECT_EQ(parsed.at("sentences_said").at(0), json::parse(R"({
        "saying": "{pack} holds {energy} at {time}: {why}.",
        "parts": {"pack": "main",
                  "energy": {"value": 100.0, "unit": "W.h"},
                  "time": "2026-01-15T03:00:00",
                  "why": {"saying": "{n} times charged", "parts": {"n": 2}}}})"));
}

}  // namespace
