#include "scenario/file/syntax.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scenario/file/document.hpp"
#include "units/quote.hpp"

namespace scenario {
namespace {

using words::Said;
using words::said;

// A dotted key grows one level of table with each dot, and levels are taken down one inside the
// other; keys cannot go over a line end, so the dots of a line bound them.
constexpr int most_dots_on_a_line = 250;

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

bool is_bare_key(std::string_view key) {
    return !key.empty() && std::ranges::all_of(key, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               c == '_' || c == '-' || c == '.';
    });
}

std::optional<units::Error> unfit_line(std::string_view line, int number) {
    if (trimmed(line).starts_with('#')) {
        return std::nullopt;
    }
    if (std::ranges::count(line, '.') > most_dots_on_a_line) {
        return units::Error{
            .where = "",
            .found = said<"a line with more than {n} full stops">(most_dots_on_a_line),
            .remedy = said<"break the line, or make it a comment">(),
            .line = number};
    }
    for (std::size_t at = 0; at < line.size();) {
        const int length = units::utf8_length(line.substr(at));
        if (length == 0) {
            return units::Error{
                .where = "",
                .found = said<"byte {n} of the line is not part of UTF-8 text">(at + 1),
                .remedy = said<"save the file as UTF-8 plain text">(),
                .line = number};
        }
        at += static_cast<std::size_t>(length);
    }
    return std::nullopt;
}

}  // namespace

std::vector<std::size_t> beginnings_of_lines(std::string_view text) {
    std::vector<std::size_t> begins = {0};
    for (std::size_t at = text.find('\n'); at != std::string_view::npos;
         at = text.find('\n', at + 1)) {
        begins.push_back(at + 1);
    }
    return begins;
}

std::string_view line_of(std::string_view text, int line) {
    std::size_t begin = 0;
    for (int passed = 1; passed < line; ++passed) {
        const std::size_t at = text.find('\n', begin);
        if (at == std::string_view::npos) {
            return {};
        }
        begin = at + 1;
    }
    std::string_view found = text.substr(begin, text.find('\n', begin) - begin);
    if (found.ends_with('\r')) {
        found.remove_suffix(1);
    }
    return found;
}

void replace_line(std::string& text, int line, std::string_view with) {
    const std::string_view old = line_of(text, line);
    const auto begin = static_cast<std::size_t>(old.data() - text.data());
    text.replace(begin, old.size(), with);
}

std::optional<units::Error> unfit_to_parse(std::string_view text) {
    if (text.size() > largest_file) {
        return units::Error{
            .where = "",
            .found = said<"{n} bytes; a scenario file has a few thousand">(text.size()),
            .remedy = said<"give a scenario file of at most {n} bytes">(largest_file)};
    }
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
        return units::Error{.where = "",
                            .found = said<"text in UTF-16">(),
                            .remedy = said<"save the file as UTF-8 plain text">()};
    }
    int number = 1;
    for (std::size_t begin = 0; begin <= text.size(); ++number) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        const std::string_view line = text.substr(begin, end - begin);
        if (line.find('\0') != std::string_view::npos) {
            return units::Error{.where = "",
                                .found = said<"a byte of value zero, which no text has">(),
                                .remedy = said<"give a scenario file, which is plain text">(),
                                .line = number};
        }
        if (std::optional<units::Error> unfit = unfit_line(line, number)) {
            return unfit;
        }
        begin = end + 1;
    }
    return std::nullopt;
}

std::optional<std::string> key_on_line(std::string_view line) {
    const std::size_t equals = line.find('=');
    if (equals == std::string_view::npos) {
        return std::nullopt;
    }
    const std::string_view key = trimmed(line.substr(0, equals));
    if (!is_bare_key(key)) {
        return std::nullopt;
    }
    return std::string(key);
}

std::string with_value_in_quotes(std::string_view line) {
    const std::size_t equals = line.find('=');
    if (equals == std::string_view::npos) {
        return {};
    }
    std::string_view value = line.substr(equals + 1);
    value = trimmed(value.substr(0, value.find('#')));
    if (value.empty() || value.find_first_of("\"'[]{}\\") != std::string_view::npos) {
        return {};
    }
    return fmt::format("{} = \"{}\"", trimmed(line.substr(0, equals)), value);
}

units::Error syntax_error(const Complaint& complaint, std::string_view line) {
    const std::string key = key_on_line(line).value_or("");
    const std::string shown = units::quote(trimmed(line), 60);
    const std::string quoted = with_value_in_quotes(line);
    units::Error error = {.where = key, .found = "", .remedy = ""};
    if (complaint.kind == Complaint::Kind::given_twice) {
        error.found = said<"found `{line}`, which is already given above">(shown);
        error.remedy = said<
            "keep one of the two; tables there may be several of are written [[pack]], [[load]]">();
    } else if (complaint.kind == Complaint::Kind::too_deep) {
        error.found = said<"lists or tables inside one another more than 32 deep">();
        error.remedy = said<"a scenario file needs three levels at most">();
    } else if (!key.empty() && !quoted.empty()) {
        error.found = said<"found `{line}`, whose value cannot be read">(shown);
        error.remedy = said<"put the value in quotes: {line}">(units::quote(quoted, 80));
    } else if (std::ranges::count(line, '"') % 2 == 1) {
        error.found = said<"found `{line}`, where a quote is opened and not closed">(shown);
        error.remedy = said<"close it with \" on the same line">();
    } else if (!key.empty() && trimmed(line).ends_with('=')) {
        error.found = said<"found `{line}`, which has no value">(shown);
        error.remedy = said<"give a value, or take the line out">();
    } else {
        error.found = shown.empty() ? said<"the text ends too early ({complaint})">(complaint.words)
                                    : said<"found `{line}`, which cannot be read ({complaint})">(
                                          shown, complaint.words);
        error.remedy = said<
            "write `key = value`, `[table]`, `[[table]]` or a comment after #, with every bracket "
            "and quote closed">();
    }
    return error;
}

}  // namespace scenario
