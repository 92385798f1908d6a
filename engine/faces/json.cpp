#include "faces/json.hpp"

#include <cmath>
#include <cstdlib>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace faces {

namespace {

using Json = nlohmann::ordered_json;

// Ten significant digits: more would print the noise of the last bits.
Json number(double value) {
    if (!std::isfinite(value)) {
        return nullptr;
    }
    return std::strtod(fmt::format("{:.10g}", value).c_str(), nullptr);
}

Json json_of(const answers::Quantity& quantity) {
    return {{"value", number(quantity.value)}, {"unit", quantity.unit}};
}

Json json_of(const answers::Value& value);

Json json_of(const answers::Members& members) {
    Json result = Json::object();
    Json reasons = Json::object();
    for (const auto& member : members) {
        result[member.key] = json_of(member.value);
        if (const auto* absent = std::get_if<answers::Absent>(&member.value.held)) {
            reasons[member.key] = absent->reason;
        }
    }
    if (!reasons.empty()) {
        result["why_null"] = std::move(reasons);
    }
    return result;
}

Json json_of(const answers::List& list) {
    Json result = Json::array();
    for (const auto& value : list) {
        result.push_back(json_of(value));
    }
    return result;
}

struct JsonOf {
    Json operator()(const answers::Absent&) const { return nullptr; }
    Json operator()(bool yes) const { return yes; }
    Json operator()(std::int64_t count) const { return count; }
    Json operator()(const std::string& words) const { return words; }
    Json operator()(const answers::Quantity& quantity) const { return json_of(quantity); }
    Json operator()(const answers::List& list) const { return json_of(list); }
    Json operator()(const answers::Members& members) const { return json_of(members); }
};

Json json_of(const answers::Value& value) {
    return std::visit(JsonOf{}, value.held);
}

Json json_of(const answers::PinnedFinding& pinned) {
    const auto& finding = pinned.finding;
    Json result{{"severity", answers::word_for(finding.severity)},
                {"where", finding.where},
                {"text", finding.text},
                {"mend", finding.mend},
                {"source", finding.source}};
    if (pinned.at) {
        result["at"] = {{"value", number(*pinned.at / units::hour)}, {"unit", "h"}};
    }
    return result;
}

Json json_of(const answers::WorkingRow& row) {
    return {{"section", row.section},           {"quantity", row.quantity},
            {"value", number(row.value.value)}, {"unit", row.value.unit},
            {"formula", row.formula},           {"source", row.source}};
}

Json json_of(const answers::Column& column) {
    Json result{{"name", column.name}, {"heading", column.heading}};
    if (const auto* numbers = std::get_if<std::vector<double>>(&column.points)) {
        result["unit"] = column.unit;
        Json points = Json::array();
        for (const double value : *numbers) {
            points.push_back(number(value));
        }
        result["points"] = std::move(points);
    } else {
        result["points"] = std::get<std::vector<std::string>>(column.points);
    }
    return result;
}

Json json_of(const answers::Series& series) {
    Json columns = Json::array();
    for (const auto& column : series.columns) {
        columns.push_back(json_of(column));
    }
    return {{"name", series.name}, {"title", series.title}, {"columns", std::move(columns)}};
}

Json json_of(const scenario::Assumption& assumption) {
    return {{"where", assumption.where}, {"text", assumption.text}, {"source", assumption.source}};
}

Json json_of(const answers::Caution& caution) {
    return {{"hazard", caution.hazard}, {"text", caution.text}, {"source", caution.source}};
}

Json json_of(const units::Error& error) {
    return {{"where", error.where},
            {"found", error.found},
            {"remedy", error.remedy},
            {"line", error.line}};
}

template <class Entry>
Json array_of(const std::vector<Entry>& entries) {
    Json result = Json::array();
    for (const auto& entry : entries) {
        result.push_back(json_of(entry));
    }
    return result;
}

Json answer_of(const answers::Answer& answer) {
    Json values = Json::object();
    values["title"] = answer.title;
    values["sentences"] = answer.sentences;
    values.update(json_of(answer.values));
    values["closing"] = answer.closing;
    return values;
}

Json json_of(const answers::MadeBy& made) {
    Json files = Json::array();
    for (const auto& file : made.files) {
        files.push_back({{"file", file.name}, {"sha256", file.sha256}});
    }
    return {{"program", "candlemark"},
            {"version", made.version},
            {"arguments", made.arguments},
            {"seed", made.seed},
            {"files", std::move(files)}};
}

// What every answer begins with.
void begin(const answers::Answer& answer, const std::optional<answers::MadeBy>& made_by,
           Json& json) {
    json["candlemark"] = 1;
    if (made_by) {
        json["made_by"] = json_of(*made_by);
    }
    json["question"] = answer.question;
    json["answer"] = answer_of(answer);
    json["findings"] = array_of(answer.findings);
}

// Bytes of the file that are not UTF-8 are replaced, not refused: the answer matters more.
std::string text_of(const Json& json, int indent) {
    return json.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace

std::string in_json_line(const Line& line, const answers::Answer* answer) {
    Json json{{"file", line.file}, {"candlemark", 1}};
    if (line.made_by) {
        json["made_by"] = json_of(*line.made_by);
    }
    json["question"] = line.question;
    json["answer"] = answer == nullptr ? Json(nullptr) : answer_of(*answer);
    json["findings"] = answer == nullptr ? Json::array() : array_of(answer->findings);
    json["warnings"] = array_of(line.warnings);
    json["errors"] = array_of(line.errors);
    return text_of(json, -1);
}

std::string in_json(const std::string& file, const units::Errors& errors) {
    return text_of(Json{{"file", file}, {"errors", array_of(errors)}}, 1);
}

std::string in_json(const answers::Answer& answer, const std::optional<answers::MadeBy>& made_by) {
    Json whole = Json::object();
    begin(answer, made_by, whole);
    whole["working"] = array_of(answer.working);
    whole["assumptions"] = array_of(answer.assumptions);
    whole["cautions"] = array_of(answer.cautions);
    whole["series"] = array_of(answer.series);
    return text_of(whole, 1);
}

}  // namespace faces
