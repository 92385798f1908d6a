#include "notes/names.hpp"

#include <algorithm>
#include <array>

namespace notes {
namespace {

struct Name {
    std::string name;
    std::vector<std::string> words;
    bool pack = false;
};

std::vector<Name> names_of(const scenario::Scenario& scenario) {
    std::vector<Name> names;
    for (const auto& pack : scenario.packs)
        names.push_back({pack.name, split(small_letters(pack.name)), true});
    for (const auto* loads : {&scenario.loads, &scenario.on_generator})
        for (const auto& load : *loads)
            names.push_back({load.name, split(small_letters(load.name)), false});
    // Longer ones first, so that "main" is not found in "main lights".
    std::ranges::stable_sort(names, std::greater{},
                             [](const Name& name) { return name.words.size(); });
    return names;
}

// Words that mean something else in a line.
bool is_a_word_of_the_line(std::string_view word) {
    constexpr std::array words{"pack",  "packs",  "load", "the",  "and",    "sun", "sky",
                               "meter", "on",     "off",  "back", "left",   "of",  "with",
                               "from",  "supply", "fuse", "room", "outside"};
    return std::ranges::find(words, word) != words.end();
}

void set(Named& named, const Name& name) {
    (name.pack ? named.pack : named.load) = name.name;
}

bool is_set(const Named& named, const Name& name) {
    return (name.pack ? named.pack : named.load).has_value();
}

}  // namespace

Named take_names(Words& words, const scenario::Scenario& scenario) {
    Named named;
    const auto names = names_of(scenario);
    for (const Name& name : names) {
        const auto at = words.find(name.words);
        if (!at || is_set(named, name)) continue;
        set(named, name);
        // A pack and a load may have the same name: what the line tells decides between them.
        for (const Name& other : names)
            if (&other != &name && other.words == name.words && !is_set(named, other))
                set(named, other);
        words.take(*at, name.words.size());
    }
    if (named.pack || named.load) return named;
    for (std::size_t at = 0; at < words.size(); ++at) {
        const std::string_view word = words.plain(at);
        if (word.size() < 3 || is_a_word_of_the_line(word)) continue;
        const auto has_it = [&](const Name& name) {
            return std::ranges::find(name.words, word) != name.words.end();
        };
        if (std::ranges::count_if(names, has_it) != 1) continue;
        set(named, *std::ranges::find_if(names, has_it));
        words.take(at);
        return named;
    }
    return named;
}

}  // namespace notes
