#include "command_line/reference/answer_schema.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

#include "command_line/questions.hpp"

namespace command_line {

namespace {

using Json = nlohmann::ordered_json;
using Keys = std::vector<std::string_view>;

// The keys of `answer` that may be relied on, beside title, sentences and closing.
struct Relied {
    std::string_view question;
    Keys keys;
};

const std::vector<Relied>& relied_on() {
    static const std::vector<Relied> all{
        {"outage",
         {"lasts", "ends_at", "survives", "limited_by", "energy", "over_chances", "count_on",
          "chance_of_lasting", "chance", "corner"}},
        {"packs",
         {"packs", "panels", "chance", "grid", "weight", "price", "cheapest", "lightest",
          "feasible"}},
        {"start", {"loads"}},
        {"wiring", {"circuits"}},
        {"join", {"allowed", "largest_voltage_difference"}},
        {"gauge", {"charge_low", "charge_likely", "charge_high", "readable", "lasts"}},
        {"storage", {"charge_now", "ready", "top_up_by"}},
        {"now", {"over_chances", "count_on", "chance", "limited_by", "next_off", "read_next"}},
        {"learnt", {"values"}}};
    return all;
}

Json text() {
    return {{"type", "string"}};
}

Json refers_to(std::string_view definition) {
    return {{"$ref", "#/definitions/" + std::string(definition)}};
}

Json list_of(Json item) {
    return {{"type", "array"}, {"items", std::move(item)}};
}

// A table with these keys and no others; all are there but those named.
Json table(Json keys, const Keys& may_lack = {}) {
    Json required = Json::array();
    for (const auto& [key, value] : keys.items())
        if (std::ranges::find(may_lack, key) == may_lack.end()) required.push_back(key);
    return {{"type", "object"},
            {"properties", std::move(keys)},
            {"required", std::move(required)},
            {"additionalProperties", false}};
}

Json number() {
    return {{"type", {"number", "null"}}};
}

// Units are written as UCUM has them.
Json unit() {
    return {{"type", "string"}};
}

Json quantity() {
    return table({{"value", number()}, {"unit", unit()}});
}

// Whatever an answer tells: each key by its own name.
Json value() {
    return {
        {"anyOf",
         {{{"type", {"null", "boolean", "integer", "string"}}},
          refers_to("quantity"),
          list_of(refers_to("value")),
          {{"type", "object"},
           {"properties", {{"why_null", {{"type", "object"}, {"additionalProperties", text()}}}}},
           {"additionalProperties", refers_to("value")}}}}};
}

// A saying with its parts as values, for a program that says it in another language.
Json said() {
    return table({{"saying", text()},
                  {"parts", {{"type", "object"}, {"additionalProperties", refers_to("part")}}}});
}

Json part() {
    return {{"anyOf",
             {{{"type", {"string", "number"}}},
              refers_to("quantity"),
              table({{"low", refers_to("quantity")}, {"high", refers_to("quantity")}}),
              refers_to("said"),
              list_of(refers_to("said"))}}};
}

Json answer() {
    return {{"type", "object"},
            {"properties",
             {{"title", text()},
              {"sentences", {{"type", "array"}, {"items", text()}, {"minItems", 1}}},
              {"sentences_said", list_of(refers_to("said"))},
              {"closing", text()},
              {"why_null", {{"type", "object"}, {"additionalProperties", text()}}}}},
            {"required", {"title", "sentences", "sentences_said", "closing"}},
            {"additionalProperties", refers_to("value")}};
}

Json finding() {
    return table({{"severity", {{"enum", {"stop", "caution", "note"}}}},
                  {"where", text()},
                  {"text", text()},
                  {"said", refers_to("said")},
                  {"mend", text()},
                  {"mend_said", refers_to("said")},
                  {"source", text()},
                  {"at", refers_to("quantity")}},
                 {"at"});
}

Json made_by() {
    return table({{"program", {{"const", "candlemark"}}},
                  {"version", text()},
                  {"arguments", list_of(text())},
                  {"seed", {{"type", "integer"}, {"minimum", 0}}},
                  {"files", list_of(table({{"file", text()}, {"sha256", text()}}))}});
}

Json series() {
    const Json points{{"type", "array"}, {"items", {{"type", {"number", "string", "null"}}}}};
    const Json column = table(
        {{"name", text()}, {"heading", text()}, {"unit", unit()}, {"points", points}}, {"unit"});
    return table({{"name", text()}, {"title", text()}, {"columns", list_of(column)}});
}

Json working() {
    return table({{"section", text()},
                  {"quantity", text()},
                  {"value", number()},
                  {"unit", unit()},
                  {"formula", text()},
                  {"source", text()}});
}

Json error() {
    return table({{"where", text()},
                  {"found", text()},
                  {"remedy", text()},
                  {"line", {{"type", "integer"}, {"minimum", 0}}}});
}

Json question_word() {
    Json words = Json::array();
    for (const auto& question : questions())
        words.push_back(question.name);
    return {{"enum", std::move(words)}};
}

Json line() {
    return table({{"file", text()},
                  {"candlemark", {{"const", 1}}},
                  {"made_by", refers_to("made_by")},
                  {"question", question_word()},
                  {"answer", {{"anyOf", {refers_to("answer"), {{"type", "null"}}}}}},
                  {"findings", list_of(refers_to("finding"))},
                  {"warnings", list_of(refers_to("error"))},
                  {"errors", list_of(refers_to("error"))}},
                 {"made_by"});
}

Json definitions() {
    return {{"quantity", quantity()},
            {"value", value()},
            {"said", said()},
            {"part", part()},
            {"answer", answer()},
            {"finding", finding()},
            {"made_by", made_by()},
            {"error", error()},
            {"line", line()},
            {"refusal", table({{"file", text()}, {"errors", list_of(refers_to("error"))}})}};
}

// Of an answer to this question these keys are required.
Json relied_of(const Relied& relied) {
    return {{"if", {{"properties", {{"question", {{"const", relied.question}}}}}}},
            {"then", {{"properties", {{"answer", {{"required", relied.keys}}}}}}}};
}

}  // namespace

std::string answer_schema() {
    Json schema{{"$schema", "http://json-schema.org/draft-07/schema#"},
                {"$id", "urn:candlemark:answer:1"},
                {"title", "An answer of Candlemark, version 1"}};
    schema.update(table({{"candlemark", {{"const", 1}}},
                         {"made_by", refers_to("made_by")},
                         {"question", question_word()},
                         {"answer", refers_to("answer")},
                         {"findings", list_of(refers_to("finding"))},
                         {"working", list_of(working())},
                         {"assumptions", list_of(table({{"where", text()},
                                                        {"text", text()},
                                                        {"said", refers_to("said")},
                                                        {"source", text()}}))},
                         {"cautions", list_of(table({{"hazard", text()},
                                                     {"text", text()},
                                                     {"said", refers_to("said")},
                                                     {"source", text()}}))},
                         {"series", list_of(series())}},
                        {"made_by"}));
    Json relied = Json::array();
    for (const auto& one : relied_on())
        relied.push_back(relied_of(one));
    schema["allOf"] = std::move(relied);
    schema["definitions"] = definitions();
    return schema.dump(1) + "\n";
}

}  // namespace command_line
