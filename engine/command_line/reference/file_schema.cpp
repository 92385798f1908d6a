#include "command_line/reference/file_schema.hpp"

#include <algorithm>
#include <vector>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "command_line/reference/told_words.hpp"
#include "scenario/keys/reference.hpp"
#include "units/written/unit_table.hpp"

namespace command_line {

namespace {

using Json = nlohmann::ordered_json;
using scenario::Shape;
using scenario::ToldKey;

Json table_of(const std::string& path, const std::string& of);

constexpr std::string_view number = R"((?:-|\+|−|–)? ?[0-9.][0-9.,/ ]*(?:[eE][-+]?[0-9]+)?)";

// A spelling of the table with what people write in its place: "°C" for "degC", "m^2" for "m2".
std::string as_pattern(std::string_view spelling) {
    const std::pair<std::string_view, std::string_view> others[] = {
        {"deg", "(?:deg|°) ?"}, {"ohm", "(?:ohm|Ω|Ω)"}, {"Ohm", "(?:Ohm|Ω|Ω)"},
        {"2", "(?:\\^?2|²)"},   {"3", "(?:\\^?3|³)"},   {" ", "(?: |·|⋅|\\*|\\.|-)"},
        {"/", " ?/ ?\\(?"},     {"u", "(?:u|µ|μ)"}};
    std::string pattern;
    for (std::size_t at = 0; at < spelling.size();) {
        const auto rest = spelling.substr(at);
        const auto other = std::ranges::find_if(
            others, [&rest](const auto& one) { return rest.starts_with(one.first); });
        pattern +=
            other == std::end(others) ? std::string(1, rest.front()) : std::string(other->second);
        at += other == std::end(others) ? 1 : other->first.size();
    }
    return pattern;
}

void add_units(std::vector<std::string>& all, units::Dimension dimension) {
    for (const auto& unit : units::unit_table())
        if (unit.dimension == units::written_as(dimension))
            all.push_back(as_pattern(unit.spelling));
}

// "100 Ah", and sums: "3 ft 6 in".
std::string pattern_of(const Shape& shape) {
    std::vector<std::string> all;
    add_units(all, shape.dimension);
    if (shape.or_of) add_units(all, *shape.or_of);
    const std::string per = shape.per == "/d"   ? "(?: ?/ ?(?:d|day))?"
                            : shape.per == "/K" ? "(?: ?/ ?(?:K|degC|°C))?"
                                                : "(?: ?(?:/|a |per ) ?(?:month|mo))?";
    return fmt::format("^ *(?:{} *(?:{})\\)?{} *)+$", number, fmt::join(all, "|"), per);
}

Json text_like(std::string_view pattern) {
    return {{"type", "string"}, {"pattern", pattern}};
}

bool is_fraction(units::Dimension dimension) {
    return units::written_as(dimension) == units::Dimension::fraction;
}

Json written_quantity(const Shape& shape) {
    const Json text = text_like(pattern_of(shape));
    if (shape.dimension == units::Dimension::price)
        return {{"anyOf", {{{"type", "number"}, {"minimum", 0}}, text}}};
    if (is_fraction(shape.dimension) && shape.per.empty())
        return {{"anyOf", {text, {{"type", "number"}, {"minimum", 0}, {"maximum", 1}}}}};
    return text;
}

// "apparent power or power", "voltage/K"
std::string name_of_kind(const Shape& shape) {
    const auto plain = [](units::Dimension dimension) {
        const std::string words(units::kind_in_words(dimension));
        return words.substr(words.starts_with("a ") ? 2 : 0);
    };
    return fmt::format("{}{}{}{}", plain(shape.dimension), shape.or_of ? " or " : "",
                       shape.or_of ? plain(*shape.or_of) : "", shape.per);
}

// Each kind of quantity is written once; "/" would part the words of a reference.
Json quantity_of(const Shape& shape) {
    std::string name = name_of_kind(shape);
    std::ranges::replace(name, '/', ',');
    std::ranges::replace(name, ' ', '_');
    return {{"allOf", Json::array({{{"$ref", "#/definitions/" + name}}})}};
}

Json kinds_of_quantities() {
    Json kinds = Json::object();
    for (const auto& told : scenario::reference()) {
        if (told.shape.kind != Shape::Kind::quantity) continue;
        const auto reference = quantity_of(told.shape)["allOf"][0]["$ref"].get<std::string>();
        kinds[reference.substr(reference.rfind('/') + 1)] = written_quantity(told.shape);
    }
    return kinds;
}

Json choice_of(const Shape& shape) {
    Json words = Json::array();
    for (const auto& choice : shape.choices)
        words.push_back(choice.value);
    return {{"enum", std::move(words)}};
}

// Each kind of part of a circuit is a table of its own.
Json link_of(const std::string& path) {
    Json kinds = Json::array();
    std::string last;
    for (const auto& told : scenario::reference()) {
        if (!told.key.starts_with(path + '.') || told.of == last) continue;
        last = told.of;
        kinds.push_back(table_of(path, told.of));
    }
    return {{"anyOf", std::move(kinds)}};
}

bool has_kinds(const std::string& path) {
    return std::ranges::any_of(scenario::reference(), [&](const ToldKey& told) {
        return told.key.starts_with(path + '.') && !told.of.empty();
    });
}

Json one_of(const ToldKey& told) {
    switch (told.shape.kind) {
        case Shape::Kind::quantity:
            return quantity_of(told.shape);
        case Shape::Kind::whole:
            return {
                {"type", "integer"}, {"minimum", told.shape.least}, {"maximum", told.shape.most}};
        case Shape::Kind::truth:
            return {{"type", "boolean"}};
        case Shape::Kind::choice:
            return choice_of(told.shape);
        case Shape::Kind::moment:
            return text_like(
                R"(^[0-9]{4}-[0-9]{2}-[0-9]{2}(?:[Tt ][0-9]{2}:[0-9]{2}(?::[0-9]{2}(?:\.[0-9]+)?)?)?$)");
        case Shape::Kind::time_of_day:
            return text_like("^ *[0-9]{1,2}:[0-9]{2}(?::00)? *$");
        case Shape::Kind::span:
            return text_like("^ *[0-9]{1,2}:[0-9]{2} *(?:-|–|to) *[0-9]{1,2}:[0-9]{2} *$");
        case Shape::Kind::wire_size:
            return text_like("^ *[0-9./]+ *(?:AWG|awg|mm2|mm\\^2|mm²|in2|in\\^2|in²|cm2|m2).*$");
        case Shape::Kind::words:
            return {{"type", "string"},
                    {"minLength", told.shape.may_be_empty ? 0 : 1},
                    {"maxLength", told.shape.longest}};
        case Shape::Kind::table:
            return has_kinds(told.key) ? link_of(told.key) : table_of(told.key, told.of);
    }
    return {};
}

Json value_of(const ToldKey& told) {
    Json one = one_of(told);
    if (!told.shape.besides.empty()) {
        Json besides = Json::array();
        for (const auto& other : told.shape.besides)
            besides.push_back(Json::parse(other));
        one = {{"anyOf", {std::move(one), {{"enum", std::move(besides)}}}}};
    }
    if (!told.shape.several) return one;
    const Json list{{"type", "array"},
                    {"items", one},
                    {"minItems", told.shape.fewest_items},
                    {"maxItems", told.shape.most_items}};
    if (!told.shape.one_will_do) return list;
    return {{"anyOf", {list, one}}};
}

std::string words_of(const ToldKey& told) {
    std::string words(told.means);
    if (!told.limits.empty()) words += ". Takes " + std::string(told.limits);
    if (const auto absent = when_absent(told); !absent.empty())
        words += ". Absent: " + std::string(absent);
    return words;
}

Json key_of(const ToldKey& told) {
    Json key = value_of(told);
    const bool is_table = told.shape.kind == Shape::Kind::table;
    key["description"] = words_of(told);
    if (is_table) return key;
    Json example = Json::parse(told.example, nullptr, false);
    // A date and time stands without quotes in a TOML file.
    if (example.is_discarded()) example = told.example;
    const bool whole = told.example.find("…") == std::string::npos;
    if (whole) key["examples"] = Json::array({std::move(example)});
    return key;
}

Json table_of(const std::string& path, const std::string& of) {
    const std::string before = path.empty() ? "" : path + '.';
    Json keys = Json::object();
    Json required = Json::array();
    for (const auto& told : scenario::reference()) {
        const bool here = told.key.starts_with(before) && told.of == of &&
                          told.key.find('.', before.size()) == std::string::npos;
        if (!here) continue;
        const std::string name = told.key.substr(before.size());
        keys[name] = key_of(told);
        if (told.required && !told.lent) required.push_back(name);
    }
    Json table{
        {"type", "object"}, {"properties", std::move(keys)}, {"additionalProperties", false}};
    if (!required.empty()) table["required"] = std::move(required);
    return table;
}

}  // namespace

std::string file_schema() {
    Json schema{{"$schema", "http://json-schema.org/draft-07/schema#"},
                {"$id", "urn:candlemark:scenario:1"},
                {"title", "Candlemark scenario, format 1"}};
    schema.update(table_of("", ""));
    schema["definitions"] = kinds_of_quantities();
    return schema.dump(1) + "\n";
}

}  // namespace command_line
