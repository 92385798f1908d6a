#include "command_line/reference/keys_text.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "command_line/reference/told_words.hpp"
#include "faces/page.hpp"
#include "scenario/file/reading.hpp"
#include "scenario/keys/reference.hpp"
#include "units/quote.hpp"

namespace command_line {

namespace {

using scenario::ToldKey;
using words::Said;
using words::said;

void add(std::string& text, const std::vector<std::string>& lines) {
    for (const auto& line : lines)
        text += line + "\n";
}

// A reference as wide as the page, in a language.
struct Page {
    int columns;
    const words::Language& language;
};

Said in_short(const ToldKey& told) {
    if (!told.required) return told.means;
    return told.lent ? said<"{meaning} (required of the first)">(told.means)
                     : said<"{meaning} (required)">(told.means);
}

std::string in_a_line(const ToldKey& told, const Page& page) {
    std::string text;
    const auto means = in(page.language, in_short(told));
    const auto name = in(page.language, name_of(told)) + ":";
    // Beside the name where most of the line is left, else below it.
    if (faces::width_of(name) <= page.columns / 2) {
        add(text, faces::wrapped(means, page.columns, name + " "));
    } else {
        add(text, faces::wrapped(name, page.columns));
        if (!means.empty()) add(text, faces::wrapped(means, page.columns, "    "));
    }
    return text;
}

Said called(const ToldKey& told) {
    const Said& label = told.on_screen.label;
    if (label.empty() || told.group.empty() || label == told.group) return label;
    return said<"{label} ({group})">(label, told.group);
}

std::string whole(const ToldKey& told, const Page& page) {
    std::vector<std::pair<Said, Said>> rows;
    const bool of_several = told.example.starts_with("[[");
    rows.emplace_back(said<"means">(), told.means);
    rows.emplace_back(said<"called">(), called(told));
    rows.emplace_back(said<"takes">(), told.limits);
    rows.emplace_back(said<"{?measure}unit">(), units_of(told.shape));
    rows.emplace_back(said<"write">(),
                      of_several ? Said(told.example)
                                 : said<"{key} = {value}">(last_word(told.key), told.example));
    rows.emplace_back(said<"absent">(), when_absent(told));
    int widest = 0;
    for (const auto& [label, words] : rows)
        widest = std::max(widest, faces::width_of(in(page.language, label)));
    std::string text = in(page.language, name_of(told)) + "\n";
    for (const auto& [label, words] : rows) {
        if (words.empty()) continue;
        const auto first =
            "  " + faces::padded(in(page.language, label), widest) + std::string(3, ' ');
        add(text, faces::wrapped(in(page.language, words), page.columns, first));
    }
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
             .found = said<"no key is named \"{name}\"">(units::quote(asked, 80)),
             .remedy = nearest.empty() ? said<"candlemark keys lists them all">()
                                       : said<"did you mean {key}?">(nearest)}};
}

}  // namespace

units::Result<std::string> keys_text(const std::string& asked, int columns,
                                     const words::Language& language) {
    const Page page{std::clamp(columns, 40, 100), language};
    std::string text;
    if (asked.empty()) {
        for (const auto& told : scenario::reference())
            text += in_a_line(told, page);
        return text;
    }
    for (const auto& told : scenario::reference()) {
        const bool inside = told.key.starts_with(asked + ".");
        const bool named = is_named(told, asked);
        if (named && !text.empty()) text += "\n";
        if (named) text += whole(told, page);
        if (inside && !named) text += in_a_line(told, page);
    }
    if (text.empty()) return units::fail(unknown(asked));
    return text;
}

}  // namespace command_line
