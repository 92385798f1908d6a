#include "scenario/keys/place_of_key.hpp"

#include <algorithm>
#include <charconv>
#include <optional>

#include <fmt/format.h>

#include "scenario/file/tables.hpp"
#include "units/quote.hpp"

namespace scenario {
namespace {

using words::Said;
using words::said;

// Reads a key from front to back.
class KeyText {
  public:
    explicit KeyText(std::string_view text) : rest_(text) {}

    [[nodiscard]] bool at_end() const { return rest_.empty(); }
    [[nodiscard]] bool at_index() const { return rest_.starts_with('['); }

    void pass_full_stop() {
        if (rest_.starts_with('.')) {
            rest_.remove_prefix(1);
        }
    }

    // "[3]" gives 3.
    std::optional<std::size_t> take_index() {
        std::size_t index = 0;
        const char* begin = rest_.data() + 1;
        const auto [end, error] = std::from_chars(begin, rest_.data() + rest_.size(), index);
        if (error != std::errc() || end == rest_.data() + rest_.size() || *end != ']') {
            return std::nullopt;
        }
        rest_.remove_prefix(static_cast<std::size_t>(end - rest_.data()) + 1);
        return index;
    }

    // One name, in quotes or up to the next full stop or bracket.
    std::optional<std::string> take_name() {
        if (rest_.starts_with('"')) {
            return take_quoted();
        }
        const std::string_view name = rest_.substr(0, rest_.find_first_of(".["));
        rest_.remove_prefix(name.size());
        return name.empty() ? std::nullopt : std::optional(std::string(name));
    }

    // The longest of these names that stands here, though it may hold full stops itself.
    std::optional<std::size_t> take_one_of(const std::vector<std::string_view>& names) {
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < names.size(); ++i) {
            const bool ends = rest_.size() == names[i].size() ||
                              (rest_.size() > names[i].size() && rest_[names[i].size()] == '.');
            const bool here = !names[i].empty() && rest_.starts_with(names[i]) && ends;
            if (here && (!best || names[i].size() > names[*best].size())) {
                best = i;
            }
        }
        if (best) {
            rest_.remove_prefix(names[*best].size());
        }
        return best;
    }

  private:
    std::optional<std::string> take_quoted() {
        std::string name;
        for (std::size_t at = 1; at < rest_.size(); ++at) {
            if (rest_[at] == '"') {
                rest_.remove_prefix(at + 1);
                return name;
            }
            at += rest_[at] == '\\' && at + 1 < rest_.size() ? 1 : 0;
            name += rest_[at];
        }
        return std::nullopt;
    }

    std::string_view rest_;
};

std::vector<std::string_view> names_in(const Node& list) {
    std::vector<std::string_view> names;
    for (const Node& item : list.items) {
        const Node* name = item.kind == Node::Kind::table ? item.find("name") : nullptr;
        names.push_back(name != nullptr && name->kind == Node::Kind::text
                            ? std::string_view(name->text)
                            : std::string_view());
    }
    return names;
}

tl::unexpected<units::Errors> refuse(std::string_view key, Said found, Said remedy) {
    return units::fail(units::Error{
        .where = units::quote(key, 80), .found = std::move(found), .remedy = std::move(remedy)});
}

Said entries_of(const Node& list) {
    std::vector<Said> entries;
    const std::vector<std::string_view> names = names_in(list);
    for (std::size_t i = 0; i < names.size() && i < 20; ++i) {
        entries.emplace_back(names[i].empty() ? fmt::format("[{}]", i) : units::quote(names[i]));
    }
    return entries.empty() ? said<"there are none">()
                           : said<"there are {keys}">(
                                 words::joined(std::move(entries), words::List::Joint::comma));
}

// The entry of a list that the key names next; nothing when there is no such entry.
std::optional<std::size_t> entry_named(const Node& list, std::string_view label, KeyText& text) {
    if (text.at_index()) {
        const std::optional<std::size_t> index = text.take_index();
        return index && *index < list.items.size() ? index : std::nullopt;
    }
    text.pass_full_stop();
    const std::vector<std::string_view> names = names_in(list);
    if (const auto named = text.take_one_of(names)) {
        return named;
    }
    KeyText ahead = text;
    const std::optional<std::string> quoted = ahead.take_name();
    const auto found = quoted && !quoted->empty() ? std::ranges::find(names, *quoted) : names.end();
    if (found != names.end()) {
        text = ahead;
        return static_cast<std::size_t>(found - names.begin());
    }
    // What follows a name is inside the entry of that name; only a key may be meant without one.
    const bool names_an_entry = quoted && !ahead.at_end() && !is_key_of(label, *quoted);
    const bool may_be_meant = list.items.size() == 1 && !text.at_end() && !names_an_entry;
    return may_be_meant ? std::optional<std::size_t>(0) : std::nullopt;
}

// Goes on into an entry of a list.
units::Result<const Node*> into_entry(const Node& list, std::string_view key, KeyText& text,
                                      PlaceOfKey& place) {
    const std::optional<std::size_t> entry = entry_named(list, place.path, text);
    if (!entry) {
        return refuse(key,
                      said<"'{table}' has no such entry; {entries}">(place.path, entries_of(list)),
                      said<"name one by its name or by [0] for the first">());
    }
    place.passed.push_back({.node = &list, .left_by = ""});
    place.path += fmt::format("[{}]", *entry);
    return &list.items[*entry];
}

// Goes on by a name; null where nothing in the table has it.
units::Result<const Node*> into_named(const Node& table, std::string_view key, KeyText& text,
                                      PlaceOfKey& place) {
    text.pass_full_stop();
    const std::optional<std::string> name = text.take_name();
    if (!name) {
        return refuse(key, said<"this is not written like a key">(),
                      said<"write for instance pack.main.capacity or outage.lasts">());
    }
    if (table.kind != Node::Kind::table) {
        return refuse(key, said<"'{key}' is a single value, with nothing inside">(place.path),
                      said<"end the key there">());
    }
    place.passed.push_back({.node = &table, .left_by = *name});
    place.path += (place.path.empty() ? "" : ".") + *name;
    return table.find(*name);
}

// The rest of a key whose last name is not in the file.
units::Result<PlaceOfKey> with_absent(PlaceOfKey place, std::string_view key, KeyText& text) {
    place.absent.push_back(place.passed.back().left_by);
    while (!text.at_end()) {
        text.pass_full_stop();
        const std::optional<std::string> further = text.take_name();
        if (!further) {
            return refuse(key, said<"'{key}' is not there">(place.path),
                          said<"name an entry that is">());
        }
        place.absent.push_back(*further);
        place.path += '.' + *further;
    }
    return place;
}

}  // namespace

units::Result<PlaceOfKey> place_of_key(const Node& document, std::string_view key) {
    PlaceOfKey place;
    const Node* node = &document;
    KeyText text(key);
    while (!text.at_end() || place.passed.empty()) {
        const auto next = node->kind == Node::Kind::list ? into_entry(*node, key, text, place)
                                                         : into_named(*node, key, text, place);
        if (!next) {
            return units::fail(next.error());
        }
        if (*next == nullptr) {
            return with_absent(std::move(place), key, text);
        }
        node = *next;
    }
    place.value = node;
    return place;
}

}  // namespace scenario
