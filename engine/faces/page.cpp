#include "faces/page.hpp"

#include <algorithm>
#include <array>

#include "units/quote.hpp"
#include "units/written/plain_number.hpp"

namespace faces {

namespace {

// Bytes of the first `count` characters.
std::size_t bytes_of(std::string_view text, int count) {
    std::size_t place = 0;
    while (place < text.size() && count > 0) {
        place += static_cast<std::size_t>(std::max(units::utf8_length(text.substr(place)), 1));
        --count;
    }
    return std::min(place, text.size());
}

std::string_view code_of(Ink ink) {
    switch (ink) {
        case Ink::plain:
            return "";
        case Ink::strong:
            return "\x1b[1m";
        case Ink::flame:
            return "\x1b[33m";
        case Ink::stop:
            return "\x1b[1;31m";
        case Ink::caution:
            return "\x1b[33m";
        case Ink::faint:
            return "\x1b[2m";
    }
    return "";
}

std::string_view ascii_for(std::string_view character) {
    using Pair = std::array<std::string_view, 2>;
    // Letters as German and Spanish write them where there is no key for them.
    static constexpr auto pairs = std::to_array<Pair>(
        {{"−", "-"},  {"–", "-"},   {"—", "-"},  {"…", "..."}, {"²", "2"},  {"³", "3"},
         {"µ", "u"},  {"Ω", "ohm"}, {"×", "x"},  {"±", "+/-"}, {"≥", ">="}, {"≤", "<="},
         {"→", "->"}, {"·", "."},   {"’", "'"},  {"„", "\""},  {"“", "\""}, {"”", "\""},
         {"«", "\""}, {"»", "\""},  {"ä", "ae"}, {"ö", "oe"},  {"ü", "ue"}, {"Ä", "Ae"},
         {"Ö", "Oe"}, {"Ü", "Ue"},  {"ß", "ss"}, {"á", "a"},   {"é", "e"},  {"í", "i"},
         {"ó", "o"},  {"ú", "u"},   {"ñ", "n"},  {"Á", "A"},   {"É", "E"},  {"Í", "I"},
         {"Ó", "O"},  {"Ú", "U"},   {"Ñ", "N"},  {"¿", ""},    {"¡", ""}});
    const auto found =
        std::ranges::find(pairs, character, [](const auto& pair) { return pair[0]; });
    return found == pairs.end() ? "?" : (*found)[1];
}

// A word of its own: "60 deg facing" for "60° facing", "5 deg C" for "5 °C".
std::string degrees_between(std::string_view before, std::string_view after) {
    const bool apart = !before.empty() && before.back() != ' ';
    const bool of_a_scale = after.starts_with('C') || after.starts_with('F');
    return std::string(apart ? " " : "") + (of_a_scale ? "deg " : "deg");
}

// Control characters of a scenario's names must not act on a terminal.
std::string printable(std::string_view text) {
    std::string result(text);
    std::ranges::replace_if(
        result, [](unsigned char letter) { return letter < 0x20 || letter == 0x7f; }, '?');
    return result;
}

}  // namespace

std::string inked(std::string_view text, Ink ink, const Look& look) {
    if (!look.colour || ink == Ink::plain) {
        return std::string(text);
    }
    return std::string(code_of(ink)) + std::string(text) + "\x1b[0m";
}

std::string without_colour(std::string_view text) {
    std::string plain;
    while (!text.empty()) {
        const auto code = text.find("\x1B[");
        plain += text.substr(0, code);
        if (code == std::string_view::npos) break;
        const auto end = text.find('m', code);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return plain;
}

int width_of(std::string_view text) {
    int width = 0;
    while (!text.empty()) {
        text.remove_prefix(static_cast<std::size_t>(std::max(units::utf8_length(text), 1)));
        ++width;
    }
    return width;
}

std::string padded(std::string_view text, int width) {
    const int missing = std::max(width - width_of(text), 0);
    return printable(text) + std::string(static_cast<std::size_t>(missing), ' ');
}

std::string right_aligned(std::string_view text, int width) {
    const int missing = std::max(width - width_of(text), 0);
    return std::string(static_cast<std::size_t>(missing), ' ') + printable(text);
}

std::string shortened(std::string_view text, int width) {
    if (width_of(text) <= width) {
        return printable(text);
    }
    return printable(text.substr(0, bytes_of(text, std::max(width - 3, 0)))) + "...";
}

std::vector<std::string> wrapped(std::string_view text, int width, std::string_view first) {
    const int indent = width_of(first);
    const int room = std::max(width - indent, 8);
    std::vector<std::string> lines;
    std::string line;
    const auto end_line = [&] {
        const std::string start =
            lines.empty() ? std::string(first) : std::string(static_cast<std::size_t>(indent), ' ');
        lines.push_back(start + printable(line));
        line.clear();
    };
    while (!text.empty()) {
        const auto space = text.find(' ');
        std::string_view word = text.substr(0, space);
        if (!line.empty() && width_of(line) + 1 + width_of(word) > room) {
            end_line();
        }
        while (width_of(word) > room) {
            const auto bytes = bytes_of(word, room);
            line = word.substr(0, bytes);
            word.remove_prefix(bytes);
            end_line();
        }
        line += (line.empty() || word.empty() ? "" : " ") + std::string(word);
        text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
    }
    if (!line.empty() || lines.empty()) {
        end_line();
    }
    return lines;
}

std::string fitted(std::string_view lines, int width) {
    std::string text;
    while (!lines.empty()) {
        const auto end = std::min(lines.find('\n'), lines.size());
        const auto line = lines.substr(0, end);
        lines.remove_prefix(std::min(end + 1, lines.size()));
        const auto begin = std::min(line.find_first_not_of(' '), line.size());
        const std::string first(begin, ' ');
        const int further = begin == 0 ? 0 : 4;
        const auto fitting = width_of(line) <= width
                                 ? std::vector{std::string(line)}
                                 : wrapped(line.substr(begin), width - further, first);
        for (std::size_t place = 0; place < fitting.size(); ++place)
            text += (place == 0 ? "" : std::string(static_cast<std::size_t>(further), ' ')) +
                    fitting[place] + "\n";
    }
    return text;
}

std::string in_ascii(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        const auto length = static_cast<std::size_t>(std::max(units::utf8_length(text), 1));
        const auto character = text.substr(0, length);
        const bool plain = length == 1 && static_cast<unsigned char>(character[0]) < 0x80;
        text.remove_prefix(length);
        if (character == "°")
            result += degrees_between(result, text);
        else
            result += plain ? character : ascii_for(character);
    }
    return result;
}

std::string number_shown(double number, const words::Language& language) {
    std::string text = units::plain_number(number);
    const auto point = text.find('.');
    if (point != std::string::npos) text.replace(point, 1, language.decimal_mark());
    return text;
}

std::string unit_shown(std::string_view ucum) {
    constexpr std::array<std::array<std::string_view, 2>, 4> others{
        {{"1", ""}, {"Cel", "°C"}, {"Ohm", "Ω"}, {"deg", "°"}}};
    const auto found = std::ranges::find(others, ucum, [](const auto& pair) { return pair[0]; });
    if (found != others.end()) return std::string((*found)[1]);
    std::string unit(ucum);
    std::erase(unit, '.');
    return unit;
}

}  // namespace faces
