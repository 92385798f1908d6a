#include "words/language.hpp"

#include <array>

#include "words/amount.hpp"
#include "words/catalogue.hpp"

namespace words {

std::string_view Language::code() const {
    return catalogue == nullptr ? "en" : catalogue->code();
}

std::string_view Language::decimal_mark() const {
    return catalogue == nullptr ? "." : catalogue->decimal_mark();
}

const Language& english() {
    static const Language language{};
    return language;
}

std::vector<std::string_view> language_codes() {
    std::vector<std::string_view> codes{"en"};
    for (const std::string_view code : catalogue_codes())
        codes.push_back(code);
    return codes;
}

std::optional<Language> language(std::string_view code) {
    const std::string_view bare = code.substr(0, code.find_first_of("_.-@"));
    if (bare == "en" || bare == "C" || bare == "POSIX") return Language{};
    const Catalogue* catalogue = catalogue_of(bare);
    if (catalogue == nullptr) return std::nullopt;
    return Language{.catalogue = catalogue};
}

std::string_view own_name(const Language& language) {
    return language.catalogue == nullptr ? "English" : language.catalogue->name();
}

namespace {

// By the first part that is a count; one where there is none.
std::int64_t number_of(const Said& said) {
    for (const Part& part : said.parts) {
        if (const auto* count = std::get_if<Count>(&part.held())) return count->number;
    }
    return 1;
}

std::string in(const Language& language, const List& list) {
    using enum List::Joint;
    std::string text;
    const std::size_t count = list.items.size();
    for (std::size_t i = 0; i < count; ++i) {
        const std::string item = words::in(language, list.items[i]);
        if (i == 0) {
            text = item;
            continue;
        }
        const bool last = i + 1 == count;
        if (last && list.joint == all) {
            text = words::in(language, said<"{first} and {last}">(text, item));
        } else if (list.joint == or_each || (last && list.joint == either)) {
            text = words::in(language, said<"{first} or {last}">(text, item));
        } else {
            const std::array<std::string_view, 8> between{"",   " ",  ", ", "; ",
                                                          ", ", ", ", "",   "\n"};
            text += between[static_cast<std::size_t>(list.joint)];
            text += item;
        }
    }
    return text;
}

std::string in(const Language&, const Name& name) {
    return name.text;
}

void make_capital(std::string& text, std::size_t at) {
    if (at >= text.size()) return;
    // The letters of Latin-1 beyond ASCII lie 32 apart as well, behind the byte C3 of UTF-8.
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const bool latin = byte(at) == 0xC3 && at + 1 < text.size() && byte(at + 1) >= 0xA0 &&
                       byte(at + 1) <= 0xBE && byte(at + 1) != 0xB7;
    if (latin) ++at;
    if (latin || (byte(at) >= 'a' && byte(at) <= 'z')) text[at] = static_cast<char>(byte(at) - 32);
}

// A sentence within a sentence brings its own full stop: there are never two.
void append(std::string& result, std::string_view text) {
    const bool ended =
        !result.empty() && std::string_view(".!?").find(result.back()) != std::string_view::npos;
    if (ended && text.starts_with('.')) text.remove_prefix(1);
    result += text;
}

std::string filled(const Language& language, std::string_view text, const Said& said) {
    std::string result;
    std::size_t from = 0;
    for (Hole hole = next_hole(text, 0); hole.opens != std::string_view::npos;
         hole = next_hole(text, hole.past)) {
        append(result, text.substr(from, hole.opens - from));
        from = hole.past;
        if (hole.text_instead != '\0') {
            result += hole.text_instead;
            continue;
        }
        if (hole.comment) continue;
        const std::size_t index = said.saying->parts.index_of(hole.name);
        if (index >= said.parts.size()) continue;
        const std::size_t begins = result.size();
        result += std::visit([&](const auto& part) { return in(language, part); },
                             said.parts[index].held());
        if (hole.capital) make_capital(result, begins);
    }
    append(result, text.substr(from));
    return result;
}

}  // namespace

std::string in(const Language& language, const Said& said) {
    const std::int64_t number = number_of(said);
    if (language.catalogue != nullptr) {
        const std::string_view text = language.catalogue->text_of(*said.saying, number);
        if (!text.empty()) return filled(language, text, said);
        if (said.saying->has_words()) return in(english(), said);
    }
    const bool many = number != 1 && !said.saying->many.empty();
    return filled(language, many ? said.saying->many : said.saying->english, said);
}

}  // namespace words
