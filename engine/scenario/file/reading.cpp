#include "scenario/file/reading.hpp"

#include <algorithm>
#include <numeric>

#include <fmt/format.h>

#include "units/quote.hpp"

namespace scenario {
namespace {

using words::Said;
using words::said;
using words::said_of;

char small(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

bool same(char a, char b) {
    return small(a) == small(b);
}

// Letters to insert, delete or replace, or neighbours to swap, to make one word of another,
// capital or small.
std::size_t letters_apart(std::string_view a, std::string_view b) {
    std::vector<std::size_t> before(b.size() + 1);
    std::vector<std::size_t> above(b.size() + 1);
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(above.begin(), above.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            row[j] = std::min(
                {above[j] + 1, row[j - 1] + 1, above[j - 1] + (same(a[i - 1], b[j - 1]) ? 0 : 1)});
            if (i > 1 && j > 1 && same(a[i - 1], b[j - 2]) && same(a[i - 2], b[j - 1])) {
                row[j] = std::min(row[j], before[j - 2] + 1);
            }
        }
        before.swap(above);
        above.swap(row);
    }
    return above[b.size()];
}

// Of the known words that go on where the written one ends, the shortest: "waveform" for "wave".
std::string_view shortest_beginning_with(std::string_view written,
                                         const std::vector<std::string_view>& known) {
    constexpr std::size_t enough = 3;  // letters
    std::string_view shortest;
    for (const std::string_view word : known) {
        const bool begins = written.size() >= enough && word.size() > written.size() &&
                            std::ranges::equal(word.substr(0, written.size()), written, same);
        if (begins && (shortest.empty() || word.size() < shortest.size())) shortest = word;
    }
    return shortest;
}

}  // namespace

Spot Spot::at(const Node& value, std::string_view key) const {
    return {.node = &value,
            .path = path.empty() ? std::string(key) : fmt::format("{}.{}", path, key),
            .owner = owner};
}

Spot Spot::at(const Node& item, std::size_t index) const {
    return {.node = &item, .path = fmt::format("{}[{}]", path, index), .owner = owner};
}

units::Error Reading::told(const Spot& spot, Said found, Said remedy) const {
    return {.where = spot.path,
            .found = spot.owner.empty() ? std::move(found)
                                        : said<"in {owner}, {found}">(spot.owner, std::move(found)),
            .remedy = std::move(remedy),
            .file = file_name_,
            .line = spot.node == nullptr ? 0 : spot.node->line};
}

void Reading::refuse(const Spot& spot, Said found, Said remedy) {
    errors_.push_back(told(spot, std::move(found), std::move(remedy)));
}

void Reading::warn(const Spot& spot, Said found, Said remedy) {
    warnings_.push_back(told(spot, std::move(found), std::move(remedy)));
}

void Reading::warn_of_unknown(const Spot& spot, Said remedy, Said known) {
    warn(spot, said<"this key is not known and was left out">(), std::move(remedy));
    unknown_.push_back(told(spot, said<"this key is not known">(), std::move(known)));
}

void Reading::demand(const Spot& table, std::string_view key, const Said& example) {
    if (std::ranges::find(lost_keys_, key) != lost_keys_.end()) {
        return;
    }
    Spot missing = table;
    missing.path = table.path.empty() ? std::string(key) : fmt::format("{}.{}", table.path, key);
    refuse(missing, said<"nothing is given here, and it has no default">(),
           said<"add a line such as {key} = {example}">(key, example));
}

std::string text_of(const Node& node) {
    const std::string text = units::quote(node.text);
    return node.kind == Node::Kind::text ? '"' + text + '"' : text;
}

Said shown(const Node& node) {
    switch (node.kind) {
        case Node::Kind::table:
            return said<"a table">();
        case Node::Kind::list:
            return said_of<"a list of {n}", "a list of {n}">(node.items.size());
        default:
            return text_of(node);
    }
}

Said one_after_the_other(const std::vector<std::string_view>& names, words::List::Joint joint) {
    return words::joined({names.begin(), names.end()}, joint);
}

std::string_view nearest_word(std::string_view written,
                              const std::vector<std::string_view>& known) {
    std::string_view nearest;
    constexpr std::size_t longest_word = 64;
    if (written.size() > longest_word) {
        return nearest;
    }
    const std::string_view whole = shortest_beginning_with(written, known);
    std::size_t least = std::max<std::size_t>(2, written.size() / 3) + 1;
    for (const std::string_view word : known) {
        const std::size_t apart = letters_apart(written, word);
        if (apart < least && apart < word.size()) {
            least = apart;
            nearest = word;
        }
    }
    constexpr std::size_t slip = 1;  // a letter mistyped counts for more than a word cut short
    return whole.empty() || (!nearest.empty() && least <= slip) ? nearest : whole;
}

}  // namespace scenario
