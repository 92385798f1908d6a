#include "scenario/file/document.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "scenario/file/syntax.hpp"
#include "units/quote.hpp"
#include "words/toml.hpp"

namespace scenario {
namespace {

constexpr int most_syntax_errors = 20;

// Byte offsets of the library's places, which count characters within lines.
class Places {
  public:
    explicit Places(std::string_view text) : text_(text), line_begins_(beginnings_of_lines(text)) {}

    [[nodiscard]] std::size_t offset(toml::source_position place) {
        const std::size_t line = place.line == 0 ? 0 : place.line - 1;
        const std::size_t column = place.column == 0 ? 0 : place.column - 1;
        if (line >= line_begins_.size()) {
            return text_.size();
        }
        if (line != line_ || characters_.empty()) {
            take_characters_of(line);
        }
        return characters_[std::min(column, characters_.size() - 1)];
    }

    [[nodiscard]] std::string_view text() const { return text_; }

  private:
    // Where each character of the line begins, and where the next line would.
    void take_characters_of(std::size_t line) {
        line_ = line;
        characters_.clear();
        const std::size_t end =
            line + 1 < line_begins_.size() ? line_begins_[line + 1] : text_.size();
        const bool marked = line == 0 && text_.starts_with("\xEF\xBB\xBF");
        for (std::size_t at = line_begins_[line] + (marked ? 3 : 0); at < end; ++at) {
            const bool continues = (static_cast<unsigned char>(text_[at]) & 0xC0) == 0x80;
            if (!continues) {
                characters_.push_back(at);
            }
        }
        characters_.push_back(end);
    }

    std::string_view text_;
    std::vector<std::size_t> line_begins_;
    std::size_t line_ = 0;
    std::vector<std::size_t> characters_;
};

units::Duration since_midnight(const toml::time& time) {
    const int minutes = time.hour * 60 + time.minute;
    const double seconds = time.second + time.nanosecond * 1e-9;
    return static_cast<double>(minutes) * units::minute + seconds * units::second;
}

units::LocalTime local_time(const toml::date& date, units::Duration after_midnight) {
    return units::local_time(std::chrono::year(date.year) / date.month / date.day, after_midnight);
}

Node node_of(const toml::node& from, Places& places);

void take_entries(Node& node, const toml::table& table, Places& places) {
    node.entries.reserve(table.size());
    for (const auto& [key, value] : table) {
        node.entries.push_back({.key = std::string(key.str()),
                                .begin = places.offset(key.source().begin),
                                .line = static_cast<int>(key.source().begin.line),
                                .value = node_of(value, places)});
    }
    // A header's place is given anew with each of its parts, so the value's place decides.
    std::ranges::sort(node.entries, {},
                      [](const Entry& entry) { return std::pair(entry.value.begin, entry.begin); });
}

Node::Form form_at(std::string_view text, std::size_t begin) {
    const char first = begin < text.size() ? text[begin] : ' ';
    return first == '{'   ? Node::Form::inside
           : first == '[' ? Node::Form::header
                          : Node::Form::dotted;
}

void take_items(Node& node, const toml::array& array, Places& places) {
    node.items.reserve(array.size());
    for (const toml::node& item : array) {
        node.items.push_back(node_of(item, places));
    }
    const bool headed = !node.items.empty() && node.items.front().kind == Node::Kind::table &&
                        node.items.front().form == Node::Form::header;
    node.form = headed ? Node::Form::header : Node::Form::inside;
}

// A number, a truth or a time; false where it is none of them.
bool take_plain_value(Node& node, const toml::node& from) {
    if (const auto* integer = from.as_integer()) {
        node.kind = Node::Kind::whole;
        node.whole = integer->get();
        node.number = static_cast<double>(integer->get());
    } else if (const auto* real = from.as_floating_point()) {
        node.kind = Node::Kind::real;
        node.number = real->get();
    } else if (const auto* boolean = from.as_boolean()) {
        node.kind = Node::Kind::truth;
        node.truth = boolean->get();
    } else if (const auto* date_time = from.as_date_time()) {
        node.kind = Node::Kind::time;
        const toml::date_time& value = date_time->get();
        node.time = local_time(value.date, since_midnight(value.time));
        node.has_offset = value.offset.has_value();
    } else if (const auto* date = from.as_date()) {
        node.kind = Node::Kind::time;
        node.time = local_time(date->get(), {});
    } else if (const auto* time = from.as_time()) {
        node.kind = Node::Kind::clock;
        node.since_midnight = since_midnight(time->get());
    } else {
        return false;
    }
    return true;
}

Node node_of(const toml::node& from, Places& places) {
    Node node;
    node.begin = places.offset(from.source().begin);
    node.end = places.offset(from.source().end);
    node.line = static_cast<int>(from.source().begin.line);
    if (const auto* table = from.as_table()) {
        node.kind = Node::Kind::table;
        node.form = form_at(places.text(), node.begin);
        take_entries(node, *table, places);
    } else if (const auto* array = from.as_array()) {
        node.kind = Node::Kind::list;
        take_items(node, *array, places);
    } else if (const auto* string = from.as_string()) {
        node.kind = Node::Kind::text;
        node.text = string->get();
    } else if (take_plain_value(node, from)) {
        node.text = std::string(places.text().substr(node.begin, node.end - node.begin));
    }
    return node;
}

// The tree, or the library's complaint.
using Parsed = tl::expected<Node, Complaint>;

bool meets_assumptions(std::string_view text) {
    try {
        (void)toml::parse(text);
    } catch (const toml::parse_error&) {
        return true;
    } catch (const words::UnmetTomlAssumption&) {
        return false;
    }
    return true;
}

// The first line with which the text no longer meets the library's assumptions.
int line_of_unmet_assumption(std::string_view text) {
    const std::vector<std::size_t> begins = beginnings_of_lines(text);
    std::size_t met = 0;
    std::size_t unmet = begins.size();
    while (unmet - met > 1) {
        const std::size_t lines = met + (unmet - met) / 2;
        (meets_assumptions(text.substr(0, begins[lines])) ? met : unmet) = lines;
    }
    return static_cast<int>(unmet);
}

// The library tells its complaints apart by their text alone.
Complaint::Kind kind_of(std::string_view description) {
    const auto speaks_of = [description](std::string_view word) {
        return description.find(word) != std::string_view::npos;
    };
    return speaks_of("redefine") ? Complaint::Kind::given_twice
           : speaks_of("nested") ? Complaint::Kind::too_deep
                                 : Complaint::Kind::other;
}

Parsed parse(std::string_view text) {
    try {
        const toml::table table = toml::parse(text);
        Places places(text);
        Node file;
        file.kind = Node::Kind::table;
        file.form = Node::Form::file;
        file.end = text.size();
        file.line = 1;
        take_entries(file, table, places);
        return file;
    } catch (const toml::parse_error& error) {
        return tl::unexpected(Complaint{.kind = kind_of(error.description()),
                                        .words = error.description(),
                                        .line = static_cast<int>(error.source().begin.line)});
    } catch (const words::UnmetTomlAssumption&) {
        return tl::unexpected(
            Complaint{.words = words::said<"a comma, bracket or value out of place">(),
                      .line = line_of_unmet_assumption(text)});
    }
}

}  // namespace

const Entry* Node::entry(std::string_view key) const {
    const auto found = std::ranges::find(entries, key, &Entry::key);
    return found == entries.end() ? nullptr : &*found;
}

const Node* Node::find(std::string_view key) const {
    const Entry* found = entry(key);
    return found == nullptr ? nullptr : &found->value;
}

units::Result<Node> read_document(std::string_view text, std::string_view file_name) {
    Salvage salvage = salvage_document(text, file_name);
    if (!salvage.errors.empty()) {
        return units::fail(std::move(salvage.errors));
    }
    return std::move(salvage.document);
}

Salvage salvage_document(std::string_view text, std::string_view file_name) {
    Salvage salvage;
    if (std::optional<units::Error> unfit = unfit_to_parse(text)) {
        unfit->file = file_name;
        salvage.errors.push_back(std::move(*unfit));
        salvage.whole = false;
        return salvage;
    }
    std::string repaired;
    std::string_view current = text;
    for (int attempt = 0; attempt <= most_syntax_errors; ++attempt) {
        Parsed parsed = parse(current);
        if (parsed) {
            salvage.document = std::move(*parsed);
            return salvage;
        }
        const Complaint& complaint = parsed.error();
        const std::string line = std::string(line_of(current, complaint.line));
        units::Error error = syntax_error(complaint, line);
        error.file = file_name;
        error.line = complaint.line;
        salvage.errors.push_back(std::move(error));
        // Only a line that is wrong by itself can be left out without changing the rest.
        const bool wrong_alone = key_on_line(line).has_value() && !parse(line);
        if (!wrong_alone) {
            break;
        }
        repaired = std::string(current);
        const std::string quoted = with_value_in_quotes(line);
        if (!quoted.empty() && parse(quoted)) {
            replace_line(repaired, complaint.line, quoted);
        } else {
            replace_line(repaired, complaint.line, "#");
            salvage.lost_keys.push_back(*key_on_line(line));
        }
        current = repaired;
    }
    salvage.whole = false;
    return salvage;
}

}  // namespace scenario
