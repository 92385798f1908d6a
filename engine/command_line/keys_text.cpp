#include "command_line/keys_text.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "command_line/told_words.hpp"
#include "faces/page.hpp"
#include "scenario/reading.hpp"
#include "scenario/reference.hpp"
#include "units/quote.hpp"

namespace command_line {

namespace {

using scenario::ToldKey;

void add(std::string& text, const std::vector<std::string>& lines) {
    for (const auto& line : lines)
        text += line + "\n";
}

std::string in_a_line(const ToldKey& told, int columns) {
    std::string text;
    const auto means = fmt::format("{}{}", told.means,
                                   !told.required ? ""
                                   : told.lent    ? " (required of the first)"
                                                  : " (required)");
    const auto name = name_of(told) + ":";
    // Beside the name where most of the line is left, else below it.
    if (faces::width_of(name) <= columns / 2) {
        add(text, faces::wrapped(means, columns, name + " "));
    } else {
        add(text, faces::wrapped(name, columns));
        if (!means.empty()) add(text, faces::wrapped(means, columns, "    "));
    }
    return text;
}

std::string called(const ToldKey& told) {
    const std::string label(told.on_screen.label);
    if (label.empty() || told.group.empty() || label == told.group) return label;
    return fmt::format("{} ({})", label, told.group);
}

std::string whole(const ToldKey& told, int columns) {
    std::string text = name_of(told) + "\n";
    const auto row = [&](std::string_view label, std::string_view words) {
        if (!words.empty())
            add(text, faces::wrapped(words, columns, fmt::format("  {:<9}", label)));
    };
    row("means", told.means);
    row("called", called(told));
    row("takes", told.limits);
    row("unit", units_of(told.shape));
    const bool of_several = told.example.starts_with("[[");
    row("write",
        of_several ? told.example : fmt::format("{} = {}", last_word(told.key), told.example));
    row("absent", when_absent(told));
    return text;
}

bool is_named(const ToldKey& told, std::string_view asked) {
    return told.key == asked || last_word(told.key) == asked;
}

units::Errors unknown(const std::string& asked) {
    std::vector<std::string_view> known;
    for (const auto& told : scenario::reference()) {
        known.push_back(told.key);
        known.push_back(last_word(told.key));
    }
    const auto nearest = scenario::nearest_word(asked, known);
    return {{.where = "keys",
             .found = fmt::format("no key is named \"{}\"", units::quote(asked, 80)),
             .remedy = nearest.empty() ? "candlemark keys lists them all"
                                       : fmt::format("did you mean {}?", nearest)}};
}

}  // namespace

units::Result<std::string> keys_text(const std::string& asked, int columns) {
    const int width = std::clamp(columns, 40, 100);
    std::string text;
    if (asked.empty()) {
        for (const auto& told : scenario::reference())
            text += in_a_line(told, width);
        return text;
    }
    for (const auto& told : scenario::reference()) {
        const bool inside = told.key.starts_with(asked + ".");
        const bool named = is_named(told, asked);
        if (named && !text.empty()) text += "\n";
        if (named) text += whole(told, width);
        if (inside && !named) text += in_a_line(told, width);
    }
    if (text.empty()) return units::fail(unknown(asked));
    return text;
}

}  // namespace command_line
