#include "faces/csv.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "answers/exhibits.hpp"
#include "faces/page.hpp"
#include "faces/spoken.hpp"

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

std::string field_of(double value) {
    return field(value);
}

std::string field_of(const words::Said& said) {
    return field(plain(said));
}

std::string field_of(const answers::Code& code) {
    return code.is_time ? field(code.code) : field_of(code.said);
}

std::size_t length(const answers::Column& column) {
    return std::visit([](const auto& points) { return points.size(); }, column.points);
}

std::string table(const answers::Series& series) {
    std::vector<std::string> fields;
    std::size_t rows = 0;
    for (const auto& column : series.columns) {
        fields.push_back(field(column.unit.empty()
                                   ? plain(column.heading)
                                   : fmt::format("{} [{}]", plain(column.heading), column.unit)));
        rows = std::max(rows, length(column));
    }
    std::string text = line(fields);
    for (std::size_t row = 0; row < rows; ++row) {
        fields.clear();
        for (const auto& column : series.columns) {
            fields.push_back(std::visit(
                [row](const auto& points) {
                    return row < points.size() ? field_of(points[row]) : std::string();
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
        text += line({field(key), "", field(plain(absent.reason))});
    }
    void operator()(bool yes) const { text += line({field(key), yes ? "true" : "false", ""}); }
    void operator()(std::int64_t count) const {
        text += line({field(key), std::to_string(count), ""});
    }
    void operator()(const answers::Code& code) const { (*this)(code.code); }
    void operator()(const words::Said& said) const { (*this)(plain(said)); }
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

// One overload a kind of exhibit: what of it is the one table that this face prints. Pictures are
// none, and have their numbers in tables and figures of the answer.
struct TableOf {
    using Table = std::optional<std::string>;

    Table operator()(const answers::DaysChart*) const { return {}; }
    Table operator()(const answers::BuildsView*) const { return {}; }
    Table operator()(const answers::BarChart*) const { return {}; }
    Table operator()(const answers::DayCurves*) const { return {}; }
    Table operator()(const answers::StartChart*) const { return {}; }
    Table operator()(const answers::WiringDiagram*) const { return {}; }
    Table operator()(const answers::Account*) const { return {}; }
    Table operator()(const answers::Series* one) const { return table(*one); }
};

}  // namespace

std::string in_csv(const answers::Answer& unspoken, const words::Language& language) {
    const answers::Answer answer = spoken(unspoken, language);
    for (const auto& exhibit : answers::exhibits_of(answer))
        if (auto found = std::visit(TableOf{}, exhibit)) return std::move(*found);
    std::string text = line({field(words::in(language, words::said<"key">())),
                             field(words::in(language, words::said<"value">())),
                             field(words::in(language, words::said<"{?measure}unit">()))});
    LinesOf{text, ""}(answer.values);
    return text;
}

}  // namespace faces
