#include "command_line/reference/sayings_text.hpp"

#include <algorithm>
#include <set>
#include <utility>
#include <vector>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "faces/paper.hpp"  // its sayings are said by no face of the command
#include "words/catalogue.hpp"
#include "words/saying.hpp"

namespace command_line {

namespace {

using words::Catalogue;
using words::Saying;

// A basic string of TOML. [TOML 1.0] "String"
std::string in_quotes(std::string_view text) {
    std::string quoted = "\"";
    for (const char letter : text) {
        if (letter == '\n') {
            quoted += "\\n";
            continue;
        }
        if (letter == '"' || letter == '\\') quoted += '\\';
        quoted += letter;
    }
    return quoted + "\"";
}

std::string as_of(const Catalogue::Entry* entry, bool changes_with_number) {
    if (entry == nullptr) return changes_with_number ? R"(["", ""])" : R"("")";
    std::vector<std::string> forms;
    for (const std::string& form : entry->as)
        forms.push_back(in_quotes(form));
    return forms.size() == 1 ? forms.front() : fmt::format("[{}]", fmt::join(forms, ", "));
}

const Catalogue::Entry* entry_of(const Catalogue* catalogue, const Saying& saying) {
    if (catalogue == nullptr) return nullptr;
    const auto found = catalogue->entries().find(saying.english);
    const bool has = found != catalogue->entries().end() && found->second.many == saying.many;
    return has ? &found->second : nullptr;
}

std::string written(const Saying& saying, const Catalogue::Entry* entry) {
    std::string text = fmt::format("[[say]]\nenglish = {}\n", in_quotes(saying.english));
    if (!saying.many.empty()) text += fmt::format("many = {}\n", in_quotes(saying.many));
    return text + fmt::format("as = {}\n\n", as_of(entry, !saying.many.empty()));
}

// By the English; a saying that several libraries say is there once.
std::vector<const Saying*> in_order() {
    std::vector<const Saying*> all = words::all_sayings();
    const auto key = [](const Saying* one) { return std::pair(one->english, one->many); };
    std::ranges::sort(all, {}, key);
    const auto again = std::ranges::unique(all, {}, key);
    all.erase(again.begin(), again.end());
    return all;
}

std::string heading(std::string_view code, const Catalogue* catalogue) {
    const std::string name = catalogue == nullptr ? "" : std::string(catalogue->name());
    const std::string own_code = catalogue == nullptr ? "" : std::string(code);
    return fmt::format("[language]\ncode = {}\nname = {}\ndecimal_mark = {}\nplural = {}\n\n",
                       in_quotes(own_code), in_quotes(name),
                       in_quotes(catalogue == nullptr ? "." : catalogue->decimal_mark()),
                       in_quotes(catalogue == nullptr ? "one, other" : catalogue->plural()));
}

// Entries that no saying has, and what could not be read.
std::string wrong_with(const Catalogue& catalogue, const std::vector<const Saying*>& sayings) {
    std::set<std::pair<std::string_view, std::string_view>> said;
    for (const Saying* one : sayings)
        said.emplace(one->english, one->many);
    std::string text;
    for (const auto& [english, entry] : catalogue.entries()) {
        if (!said.contains({english, entry.many}))
            text += fmt::format("# orphan: {}\n", in_quotes(english));
    }
    for (const std::string& fault : catalogue.faults())
        text += fmt::format("# fault: {}\n", fault);
    return text;
}

}  // namespace

std::string sayings_text(std::string_view code) {
    const Catalogue* catalogue = words::catalogue_of(code);
    const auto sayings = in_order();
    std::string text = heading(code, catalogue);
    for (const Saying* one : sayings) {
        const auto* entry = entry_of(catalogue, *one);
        if (entry != nullptr || one->has_words()) text += written(*one, entry);
    }
    if (catalogue != nullptr) text += wrong_with(*catalogue, sayings);
    return text;
}

}  // namespace command_line
