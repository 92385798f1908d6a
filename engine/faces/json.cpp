#include "faces/json.hpp"

#include <cmath>
#include <cstdlib>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "answers/exhibits.hpp"
#include "faces/page.hpp"
#include "units/text.hpp"

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

Json said_of(const words::Said& said);

Json json_of(units::Dimension dimension, double si) {
    const auto printed = units::customary_si(dimension, si);
    return {{"value", number(printed.value)}, {"unit", printed.unit}};
}

// One overload a kind of part.
struct PartOf {
    Json operator()(const words::Name& name) const { return name.text; }
    Json operator()(const words::Amount& amount) const {
        return json_of(amount.dimension, amount.si);
    }
    Json operator()(const words::Between& between) const {
        return {{"low", json_of(between.dimension, between.low)},
                {"high", json_of(between.dimension, between.high)}};
    }
    Json operator()(const words::Moment& moment) const {
        return words::in(words::english(),
                         words::Moment{moment.since_1970, words::Moment::Form::iso});
    }
    Json operator()(const words::Count& count) const { return count.number; }
    Json operator()(const words::Number& one) const { return number(one.value); }
    Json operator()(const words::Said& said) const { return said_of(said); }
    Json operator()(const words::List& list) const {
        Json items = Json::array();
        for (const words::Said& item : list.items)
            items.push_back(said_of(item));
        return items;
    }
};

// The saying's key and its parts as values.
Json said_of(const words::Said& said) {
    Json parts = Json::object();
    for (std::size_t i = 0; i < said.parts.size(); ++i)
        parts[std::string(said.saying->parts.names[i])] =
            std::visit(PartOf{}, said.parts[i].held());
    return {{"saying", said.saying->english}, {"parts", std::move(parts)}};
}

Json json_of(const answers::Value& value);

Json json_of(const answers::Members& members) {
    Json result = Json::object();
    Json reasons = Json::object();
    for (const auto& member : members) {
        result[member.key] = json_of(member.value);
        if (const auto* absent = std::get_if<answers::Absent>(&member.value.held)) {
            reasons[member.key] = plain(absent->reason);
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
    Json operator()(const answers::Code& code) const { return code.code; }
    Json operator()(const words::Said& said) const { return plain(said); }
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
                {"where", plain(finding.where)},
                {"text", plain(finding.text)},
                {"said", said_of(finding.text)},
                {"mend", plain(finding.mend)},
                {"mend_said", said_of(finding.mend)},
                {"source", plain(finding.source)}};
    if (pinned.at) {
        result["at"] = {{"value", number(*pinned.at / units::hour)}, {"unit", "h"}};
    }
    return result;
}

Json json_of(const answers::WorkingRow& row) {
    return {{"section", plain(row.section)},    {"quantity", plain(row.quantity)},
            {"value", number(row.value.value)}, {"unit", row.value.unit},
            {"formula", row.formula},           {"source", plain(row.source)}};
}

Json json_of(const answers::Column& column) {
    Json result{{"name", column.name}, {"heading", plain(column.heading)}};
    if (const auto* numbers = std::get_if<std::vector<double>>(&column.points)) {
        result["unit"] = column.unit;
        Json points = Json::array();
        for (const double value : *numbers) {
            points.push_back(number(value));
        }
        result["points"] = std::move(points);
    } else if (const auto* codes = std::get_if<std::vector<answers::Code>>(&column.points)) {
        result["points"] = Json::array();
        for (const auto& code : *codes)
            result["points"].push_back(code.code);
    } else {
        result["points"] = Json::array();
        for (const auto& said : std::get<std::vector<words::Said>>(column.points))
            result["points"].push_back(plain(said));
    }
    return result;
}

Json json_of(const answers::Series& series) {
    Json columns = Json::array();
    for (const auto& column : series.columns) {
        columns.push_back(json_of(column));
    }
    return {{"name", series.name}, {"title", plain(series.title)}, {"columns", std::move(columns)}};
}

Json json_of(const scenario::Assumption& assumption) {
    return {{"where", plain(scenario::place_of(assumption))},
            {"text", plain(assumption.text)},
            {"said", said_of(assumption.text)},
            {"source", plain(assumption.source)}};
}

Json json_of(const answers::Caution& caution) {
    return {{"hazard", plain(caution.hazard)},
            {"text", plain(caution.text)},
            {"said", said_of(caution.text)},
            {"source", plain(caution.source)}};
}

Json json_of(const units::Error& error) {
    return {{"where", error.where},
            {"found", plain(error.found)},
            {"remedy", plain(error.remedy)},
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
    values["sentences"] = Json::array();
    values["sentences_said"] = Json::array();
    for (const words::Said& sentence : answer.sentences) {
        values["sentences"].push_back(plain(sentence));
        values["sentences_said"].push_back(said_of(sentence));
    }
    values.update(json_of(answer.values));
    values["closing"] = plain(answer.closing);
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

// One overload a kind of exhibit. Pictures are of people: what they draw stands in the tables and
// in the answer's figures.
struct IntoSeries {
    Json& series;

    void operator()(const answers::DaysChart*) const {}
    void operator()(const answers::BuildsView*) const {}
    void operator()(const answers::BarChart*) const {}
    void operator()(const answers::DayCurves*) const {}
    void operator()(const answers::StartChart*) const {}
    void operator()(const answers::WiringDiagram*) const {}
    void operator()(const answers::Account*) const {}
    void operator()(const answers::Series* one) const { series.push_back(json_of(*one)); }
};

Json series_of(const answers::Answer& answer) {
    Json series = Json::array();
    for (const auto& exhibit : answers::exhibits_of(answer))
        std::visit(IntoSeries{series}, exhibit);
    return series;
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
    whole["series"] = series_of(answer);
    return text_of(whole, 1);
}

}  // namespace faces
