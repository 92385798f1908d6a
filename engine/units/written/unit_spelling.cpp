#include "units/written/unit_spelling.hpp"

namespace units {

namespace {

bool is_digit(char letter) {
    return letter >= '0' && letter <= '9';
}

}  // namespace

std::size_t unit_length(std::string_view text) {
    for (std::size_t at = 0; at + 1 < text.size(); ++at) {
        const std::string_view next = text.substr(at + 1);
        const bool number = is_digit(next.front()) || next.front() == '.' || next.front() == '-';
        if (text[at] == ' ' && number && !next.starts_with("1/")) {
            return at;
        }
    }
    return text.size();
}

std::string plain_unit(std::string_view written) {
    std::string unit;
    for (std::size_t at = 0; at < written.size(); ++at) {
        const std::string_view rest = written.substr(at);
        if (rest.starts_with("·") || rest.starts_with("⋅")) {
            unit += ' ';
            at += rest.starts_with("·") ? 1 : 2;
        } else if (rest.front() == '*' || rest.front() == '.' || rest.front() == '-') {
            unit += ' ';
        } else if (rest.front() != '^' &&
                   !(rest.front() == ' ' && (unit.ends_with(' ') || unit.ends_with('/')))) {
            while (rest.front() == '/' && unit.ends_with(' ')) {
                unit.pop_back();
            }
            unit += rest.front();
        }
    }
    while (unit.ends_with(' ')) {
        unit.pop_back();
    }
    if (unit.starts_with('/')) {
        unit.insert(0, "1");
    }
    for (const std::string_view per_area : {"/(m2 d)", "/(m2 day)"}) {
        if (unit.ends_with(per_area)) {
            unit.replace(unit.size() - per_area.size(), per_area.size(), "/m2/d");
        }
    }
    return unit;
}

}  // namespace units
