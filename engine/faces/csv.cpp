#include "faces/csv.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

#include <fmt/format.h>

namespace faces {

namespace {

bool is_number(std::string_view text) {
    double value = 0.0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
    return fault == std::errc{} && end == text.data() + text.size();
}

// A spreadsheet works out what begins like this as a formula; an apostrophe makes it words.
// Common practice, no source.
bool begins_a_formula(std::string_view text) {
    return !text.empty() && std::string_view("=+-@\t\r").find(text.front()) != text.npos &&
           !is_number(text);
}

std::string field(std::string_view words) {
    const std::string text = (begins_a_formula(words) ? "'" : "") + std::string(words);
    if (text.find_first_of(",;\"\t\r\n") == std::string::npos) {
        return text;
    }
    std::string quoted = "\"";
    for (const char letter : text) {
        quoted += letter;
        if (letter == '"') {
            quoted += '"';
        }
    }
    return quoted + "\"";
}

std::string field(double value) {
    return std::isfinite(value) ? fmt::format("{:.7g}", value) : std::string();
}

std::string line(const std::vector<std::string>& fields) {
    return fmt::format("{}\r\n", fmt::join(fields, ","));
}

std::size_t length(const answers::Column& column) {
    return std::visit([](const auto& points) { return points.size(); }, column.points);
}

std::string table(const answers::Series& series) {
    std::vector<std::string> fields;
    std::size_t rows = 0;
    for (const auto& column : series.columns) {
        fields.push_back(field(column.unit.empty()
                                   ? column.heading
                                   : fmt::format("{} [{}]", column.heading, column.unit)));
        rows = std::max(rows, length(column));
    }
    std::string text = line(fields);
    for (std::size_t row = 0; row < rows; ++row) {
        fields.clear();
        for (const auto& column : series.columns) {
            fields.push_back(std::visit(
                [row](const auto& points) {
                    return row < points.size() ? field(points[row]) : std::string();
                },
                column.points));
        }
        text += line(fields);
    }
    return text;
}

void add_lines(std::string& text, const std::string& key, const answers::Value& value);

struct LinesOf {
    std::string& text;
    const std::string& key;

    void operator()(const answers::Absent& absent) const {
        text += line({field(key), "", field(absent.reason)});
    }
    void operator()(bool yes) const { text += line({field(key), yes ? "true" : "false", ""}); }
    void operator()(std::int64_t count) const {
        text += line({field(key), std::to_string(count), ""});
    }
    void operator()(const std::string& words) const {
        text += line({field(key), field(words), ""});
    }
    void operator()(const answers::Quantity& quantity) const {
        text += line({field(key), field(quantity.value), field(quantity.unit)});
    }
    void operator()(const answers::List& list) const {
        for (std::size_t place = 0; place < list.size(); ++place) {
            add_lines(text, fmt::format("{}[{}]", key, place), list[place]);
        }
    }
    void operator()(const answers::Members& members) const {
        for (const auto& member : members) {
            add_lines(text, key.empty() ? member.key : key + "." + member.key, member.value);
        }
    }
};

void add_lines(std::string& text, const std::string& key, const answers::Value& value) {
    std::visit(LinesOf{text, key}, value.held);
}

}  // namespace

std::string in_csv(const answers::Answer& answer) {
    if (!answer.series.empty()) {
        return table(answer.series.front());
    }
    std::string text = line({"key", "value", "unit"});
    LinesOf{text, ""}(answer.values);
    return text;
}

}  // namespace faces
