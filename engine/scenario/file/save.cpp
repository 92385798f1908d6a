#include "scenario/file/save.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <span>

#include <fmt/format.h>

#include "scenario/file/reading.hpp"
#include "scenario/keys/forms.hpp"
#include "scenario/keys/place_of_key.hpp"
#include "scenario/keys/reference.hpp"
#include "units/quote.hpp"

namespace scenario {
namespace {

using Kind = Node::Kind;
using Form = Node::Form;
using words::Said;
using words::said;

tl::unexpected<units::Errors> refuse(std::string_view key, Said found, Said remedy) {
    return units::fail(units::Error{
        .where = units::quote(key, 80), .found = std::move(found), .remedy = std::move(remedy)});
}

// The text as a single value of the file; nothing when it is none, or more than one.
std::optional<Node> as_one_value(std::string_view text) {
    const std::string line = fmt::format("x = {}\n", text);
    const units::Result<Node> parsed = read_document(line, "");
    if (!parsed || parsed->entries.size() != 1) {
        return std::nullopt;
    }
    const Node& value = parsed->entries.front().value;
    const bool all_of_it = value.begin == 4 && value.end == 4 + text.size();
    return all_of_it && value.form != Form::header ? std::optional(value) : std::nullopt;
}

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r\n");
    return first == std::string_view::npos
               ? std::string_view()
               : text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

// The value as it stands after the =. Where text stood before, text follows.
std::string as_written(std::string_view value, const Node* before) {
    const std::string_view bare = trimmed(value);
    const std::optional<Node> one = as_one_value(bare);
    const bool structured =
        one && (one->kind == Kind::text || one->kind == Kind::list || one->kind == Kind::table);
    const bool text_before = before != nullptr && before->kind == Kind::text;
    return one && (structured || !text_before) ? std::string(bare) : in_quotes(value);
}

// "pack.count" of "pack[1].count".
std::string as_described(std::string_view path) {
    std::string key;
    bool inside = false;
    for (const char c : path) {
        if (c == '[') inside = true;
        if (!inside) key += c;
        if (c == ']') inside = false;
    }
    return key;
}

// Whole numbers, and true or false, never stand in quotes.
bool takes_no_text(std::string_view path) {
    const ToldKey* const told = told_key(as_described(path));
    return told != nullptr &&
           (told->shape.kind == Shape::Kind::whole || told->shape.kind == Shape::Kind::truth);
}

// The value as the key at this path takes it.
//   before   what it takes the place of; null where the key is absent
std::string written_for(std::string_view path, std::string_view value, const Node* before) {
    if (!takes_no_text(path)) return as_written(value, before);
    const std::optional<Node> one = as_one_value(trimmed(value));
    const bool quoted = one && one->kind == Kind::text && as_one_value(trimmed(one->text));
    return as_written(quoted ? std::string_view(one->text) : value, nullptr);
}

std::string key_as_written(std::string_view key) {
    const bool bare = !key.empty() && std::ranges::all_of(key, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               c == '_' || c == '-';
    });
    return bare ? std::string(key) : in_quotes(key);
}

std::string_view line_end_of(std::string_view text) {
    const std::size_t at = text.find('\n');
    return at != std::string_view::npos && at > 0 && text[at - 1] == '\r' ? "\r\n" : "\n";
}

std::size_t beginning_of_line(std::string_view text, std::size_t at) {
    const std::size_t before = at == 0 ? std::string_view::npos : text.rfind('\n', at - 1);
    return before == std::string_view::npos ? (text.starts_with("\xEF\xBB\xBF") ? 3 : 0)
                                            : before + 1;
}

// One past the line feed, or the end of the text.
std::size_t end_of_line(std::string_view text, std::size_t at) {
    const std::size_t feed = text.find('\n', at);
    return feed == std::string_view::npos ? text.size() : feed + 1;
}

std::string_view indentation_at(std::string_view text, std::size_t at) {
    const std::size_t begin = beginning_of_line(text, at);
    const std::size_t end = std::min(text.find_first_not_of(" \t", begin), text.size());
    return text.substr(begin, end - begin);
}

bool is_headed(const Node& node) {
    return node.form == Form::header && (node.kind == Kind::table || node.kind == Kind::list);
}

// One past the last byte of what stands in the table's own lines.
std::size_t end_of_own_lines(const Node& node) {
    std::size_t end = node.kind == Kind::table && node.form == Form::file ? 0 : node.end;
    if (node.form == Form::header && node.kind == Kind::table) {
        end = node.begin;
    }
    for (const Entry& entry : node.entries) {
        if (!is_headed(entry.value)) {
            end = std::max(end, node.form == Form::inside ? end : end_of_own_lines(entry.value));
        }
    }
    return end;
}

// Puts lines after the one that holds a place, each with its line end.
Change lines_after(std::string_view text, std::size_t at, std::string_view line) {
    const std::size_t end = end_of_line(text, at);
    const bool unfinished = end == text.size() && end > 0 && text[end - 1] != '\n';
    const std::string_view feed = line_end_of(text);
    return {
        .offset = end,
        .removed = 0,
        .inserted = unfinished ? fmt::format("{}{}", feed, line) : fmt::format("{}{}", line, feed)};
}

Change into_braces(const Node& table, std::string_view line) {
    if (table.entries.empty()) {
        return {.offset = table.begin + 1, .removed = 0, .inserted = std::string(line)};
    }
    std::size_t end = table.begin + 1;
    for (const Entry& entry : table.entries) {
        end = std::max(end, end_of_own_lines(entry.value));
    }
    return {.offset = end, .removed = 0, .inserted = fmt::format(", {}", line)};
}

Change into_file(std::string_view text, const Node& file, std::string_view line) {
    const Entry* last = nullptr;
    for (const Entry& entry : file.entries) {
        last = is_headed(entry.value) ? last : &entry;
    }
    if (last != nullptr) {
        return lines_after(text, end_of_own_lines(last->value), line);
    }
    const std::size_t begin = text.starts_with("\xEF\xBB\xBF") ? 3 : 0;
    return {
        .offset = begin, .removed = 0, .inserted = fmt::format("{}{}", line, line_end_of(text))};
}

// Tables of which a file may have several, and which a bare key therefore cannot begin.
bool is_one_of_several(std::string_view name) {
    constexpr std::array several = {"pack", "panel", "load", "circuit", "charger", "log"};
    return std::ranges::find(several, name) != several.end();
}

// The table a new key goes into, and what it is called in there.
struct NewKey {
    const Node* table = nullptr;
    std::vector<std::string> keys;  // one inside the other
    bool dotted = false;            // as its neighbours are written
};

// A table that grew from dotted keys has no place of its own: its keys belong to the one above.
NewKey new_key_at(const PlaceOfKey& place) {
    NewKey found{.keys = place.absent};
    std::size_t depth = place.passed.size() - 1;
    while (depth > 0 && place.passed[depth].node->kind == Kind::table &&
           place.passed[depth].node->form == Form::dotted) {
        --depth;
        found.keys.insert(found.keys.begin(), place.passed[depth].left_by);
    }
    found.table = place.passed[depth].node;
    found.dotted = depth + 1 < place.passed.size();
    return found;
}

// "a = {b = {c = value}}"
std::string one_inside_the_other(std::span<const std::string> keys, std::string text) {
    for (std::size_t i = keys.size(); i-- > 0;) {
        const std::string pair = fmt::format("{} = {}", key_as_written(keys[i]), text);
        text = i == 0 ? pair : '{' + pair + '}';
    }
    return text;
}

// "a.b.c = value"
std::string with_full_stops(std::span<const std::string> keys, const std::string& written) {
    std::vector<std::string> parts;
    std::ranges::transform(keys, std::back_inserter(parts),
                           [](const std::string& one) { return key_as_written(one); });
    return fmt::format("{} = {}", fmt::join(parts, "."), written);
}

// "[a]" at the end of the file, with the key below it.
Change with_header(std::string_view text, std::span<const std::string> keys,
                   const std::string& written) {
    const std::string_view feed = line_end_of(text);
    const bool unfinished = !text.empty() && !text.ends_with('\n');
    return {.offset = text.size(),
            .removed = 0,
            .inserted = fmt::format("{0}{0}[{1}]{2}{3}{2}", unfinished ? feed : "",
                                    key_as_written(keys.front()), feed,
                                    one_inside_the_other(keys.subspan(1), written))};
}

units::Result<Change> insertion(std::string_view text, const PlaceOfKey& place,
                                std::string_view key, std::string_view value) {
    const NewKey added = new_key_at(place);
    const Node& table = *added.table;
    if (table.kind != Kind::table) {
        return refuse(key, said<"this list has no place for a key">(),
                      said<"change the whole list">());
    }
    const std::string written = written_for(place.path, value, nullptr);
    if (table.form == Form::file && added.keys.size() > 1 && !added.dotted) {
        const std::string& name = added.keys.front();
        if (is_one_of_several(name)) {
            return refuse(key, said<"there is no [[{table}]] in this file">(name),
                          said<"add one, with a name, under [[{table}]]">(name));
        }
        return with_header(text, added.keys, written);
    }
    const std::string line = added.dotted ? with_full_stops(added.keys, written)
                                          : one_inside_the_other(added.keys, written);
    if (table.form == Form::inside) {
        return into_braces(table, line);
    }
    if (table.form == Form::file) {
        return into_file(text, table, line);
    }
    const std::size_t end = end_of_own_lines(table);
    return lines_after(text, end, fmt::format("{}{}", indentation_at(text, end), line));
}

units::Result<Node> document_of(std::string_view text) {
    return read_document(text, "");
}

// A change that breaks the file is a change that could not be made.
units::Result<std::string> made(std::string_view text, const Change& change, std::string_view key) {
    std::string result = changed(text, change);
    if (!read_document(result, "")) {
        return refuse(key, said<"the file could not be read any more with this value in it">(),
                      said<"change it in the file by hand">());
    }
    return result;
}

// One section of a headed table: from its header to the end of its last own line.
struct Section {
    std::size_t begin = 0;
    std::size_t end = 0;
};

void collect_sections(std::string_view text, const Node& node, std::vector<Section>& sections) {
    if (node.kind == Kind::table) {
        sections.push_back(
            {beginning_of_line(text, node.begin), end_of_line(text, end_of_own_lines(node))});
        for (const Entry& entry : node.entries) {
            if (is_headed(entry.value)) {
                collect_sections(text, entry.value, sections);
            }
        }
    } else {
        for (const Node& item : node.items) {
            collect_sections(text, item, sections);
        }
    }
}

bool is_blank_line(std::string_view text, std::size_t begin) {
    return begin < text.size() &&
           trimmed(text.substr(begin, end_of_line(text, begin) - begin)).empty();
}

// Without the sections, and without one of two blank lines that would meet.
std::string without_sections(std::string_view text, std::vector<Section> sections) {
    std::ranges::sort(sections, std::ranges::greater(), &Section::begin);
    std::string result(text);
    for (const Section& section : sections) {
        std::size_t end = section.end;
        const std::size_t above =
            section.begin == 0 ? 0 : beginning_of_line(result, section.begin - 1);
        const bool blank_above = section.begin == 0 || is_blank_line(result, above);
        if (blank_above && is_blank_line(result, end)) {
            end = end_of_line(result, end);
        }
        result.erase(section.begin, end - section.begin);
    }
    return result;
}

// The bytes of one item of a list inside a line, with the comma that parts it from the others.
Section item_with_comma(std::string_view text, const Node& list, std::size_t index) {
    Section section = {list.items[index].begin, list.items[index].end};
    if (index + 1 < list.items.size()) {
        section.end = list.items[index + 1].begin;
    } else if (index > 0) {
        section.begin = list.items[index - 1].end;
        const std::size_t close = list.end - 1;
        const std::size_t comma = text.find(',', section.end);
        section.end = comma < close ? comma + 1 : section.end;
    }
    return section;
}

}  // namespace

std::string changed(std::string_view text, const Change& change) {
    std::string result(text);
    result.replace(change.offset, change.removed, change.inserted);
    return result;
}

units::Result<Change> change_of_value(std::string_view text, const Node& document,
                                      std::string_view key, std::string_view value) {
    units::Result<PlaceOfKey> place = place_of_key(document, trimmed(key));
    if (!place) {
        return units::fail(place.error());
    }
    if (trimmed(value).empty()) {
        return refuse(key, said<"there is no value">(),
                      said<"write KEY=VALUE, such as pack.main.count=2">());
    }
    if (place->value == nullptr) {
        return insertion(text, *place, key, value);
    }
    const Node& old = *place->value;
    if (is_headed(old) || (old.kind == Kind::table && old.form != Form::inside)) {
        return refuse(key, said<"this is a whole table">(), said<"name one of its keys">());
    }
    return Change{.offset = old.begin,
                  .removed = old.end - old.begin,
                  .inserted = written_for(place->path, value, &old)};
}

units::Result<std::string> with_value(std::string_view text, std::string_view key,
                                      std::string_view value) {
    const units::Result<Node> document = document_of(text);
    if (!document) {
        return units::fail(document.error());
    }
    const units::Result<Change> change = change_of_value(text, *document, key, value);
    if (!change) {
        return units::fail(change.error());
    }
    return made(text, *change, key);
}

units::Result<std::string> with_values(std::string_view text, const std::vector<KeyValue>& values) {
    std::string result(text);
    units::Errors errors;
    for (const auto& [key, value] : values) {
        units::Result<std::string> next = with_value(result, key, value);
        if (next) {
            result = std::move(*next);
        } else {
            std::ranges::move(next.error(), std::back_inserter(errors));
        }
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return result;
}

units::Result<std::string> without_value(std::string_view text, std::string_view key) {
    const units::Result<Node> document = document_of(text);
    if (!document) {
        return units::fail(document.error());
    }
    const units::Result<PlaceOfKey> place = place_of_key(*document, trimmed(key));
    if (!place) {
        return units::fail(place.error());
    }
    const Passed& last = place->passed.back();
    const Entry* entry = place->value == nullptr ? nullptr : last.node->entry(last.left_by);
    if (entry == nullptr || is_headed(entry->value) || entry->value.form == Form::dotted) {
        return refuse(key, said<"there is no single value to take out here">(),
                      said<"name a key that is in the file">());
    }
    Change change = {
        .offset = entry->begin, .removed = entry->value.end - entry->begin, .inserted = ""};
    if (last.node->form == Form::inside) {
        const auto index = static_cast<std::size_t>(entry - last.node->entries.data());
        const std::size_t count = last.node->entries.size();
        if (index + 1 < count) {
            change.removed = last.node->entries[index + 1].begin - change.offset;
        } else if (index > 0) {
            change.offset = last.node->entries[index - 1].value.end;
            change.removed = entry->value.end - change.offset;
        }
    } else {
        change.offset = beginning_of_line(text, entry->begin);
        change.removed = end_of_line(text, entry->value.end) - change.offset;
    }
    return made(text, change, key);
}

units::Result<std::string> with_table(std::string_view text, std::string_view name,
                                      const std::vector<KeyValue>& values) {
    const units::Result<Node> document = document_of(text);
    if (!document) {
        return units::fail(document.error());
    }
    const Node* list = document->find(name);
    const std::string_view feed = line_end_of(text);
    std::vector<std::string> lines;
    for (const auto& [key, value] : values) {
        lines.push_back(fmt::format("{} = {}", key_as_written(key), as_written(value, nullptr)));
    }
    if (list != nullptr && list->kind == Kind::list && list->form == Form::inside) {
        const std::string item = fmt::format("{{{}}}", fmt::join(lines, ", "));
        if (list->items.empty()) {
            return made(text, {.offset = list->begin + 1, .removed = 0, .inserted = item}, name);
        }
        return made(text, {.offset = list->items.back().end, .removed = 0, .inserted = ", " + item},
                    name);
    }
    if (list != nullptr && list->kind != Kind::list) {
        return refuse(name, said<"found [{table}], though there may be several">(name),
                      said<"write [[{table}]] in double brackets">(name));
    }
    std::size_t after = text.size();
    if (list != nullptr) {
        std::vector<Section> sections;
        collect_sections(text, list->items.back(), sections);
        after = std::ranges::max(sections, {}, &Section::end).end;
    }
    const std::string_view before = text.substr(0, after);
    const bool first = trimmed(before).empty();
    std::string block =
        first ? "" : std::string(before.ends_with('\n') ? "" : feed) + std::string(feed);
    block += fmt::format("[[{}]]{}", key_as_written(name), feed);
    for (const std::string& line : lines) {
        block += line;
        block += feed;
    }
    return made(text, {.offset = after, .removed = 0, .inserted = block}, name);
}

units::Result<std::string> without_table(std::string_view text, std::string_view entry) {
    const units::Result<Node> document = document_of(text);
    if (!document) {
        return units::fail(document.error());
    }
    const units::Result<PlaceOfKey> place = place_of_key(*document, trimmed(entry));
    if (!place) {
        return units::fail(place.error());
    }
    if (place->value == nullptr || place->value->kind != Kind::table ||
        place->value->form == Form::dotted) {
        return refuse(entry, said<"there is no such table">(),
                      said<"name an entry, such as load.refrigerator">());
    }
    std::vector<Section> sections;
    if (is_headed(*place->value)) {
        collect_sections(text, *place->value, sections);
        const std::string result = without_sections(text, std::move(sections));
        return made(result, {}, entry);
    }
    const Node& list = *place->passed.back().node;
    if (list.kind != Kind::list) {
        return without_value(text, entry);
    }
    const auto index = static_cast<std::size_t>(place->value - list.items.data());
    const Section item = item_with_comma(text, list, index);
    return made(text, {.offset = item.begin, .removed = item.end - item.begin, .inserted = ""},
                entry);
}

}  // namespace scenario
