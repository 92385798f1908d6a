#include "notes/words.hpp"

#include "units/written/plain_letters.hpp"

namespace notes {

std::string small_letters(std::string_view text) {
    std::string small(text);
    for (char& c : small)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return small;
}

std::vector<std::string> split(std::string_view text) {
    std::vector<std::string> parts;
    std::string part;
    for (const char c : text) {
        if (c != ' ' && c != '\t') {
            part += c;
        } else if (!part.empty()) {
            parts.push_back(std::move(part));
            part.clear();
        }
    }
    if (!part.empty()) parts.push_back(std::move(part));
    return parts;
}

Words::Words(std::string_view line) {
    for (std::string& part : split(units::in_plain_letters(line))) {
        while (part.size() > 1 && (part.back() == ',' || part.back() == '.' || part.back() == ';' ||
                                   part.back() == ':'))
            part.pop_back();
        words_.push_back({.written = part, .plain = small_letters(part)});
    }
}

std::string_view Words::plain(std::size_t at) const {
    return is_free(at) ? std::string_view(words_[at].plain) : std::string_view();
}

void Words::take(std::size_t at, std::size_t count) {
    for (std::size_t i = at; i < at + count && i < words_.size(); ++i)
        words_[i].taken = true;
}

std::optional<std::size_t> Words::find(const std::vector<std::string>& phrase) const {
    if (phrase.empty()) return std::nullopt;
    for (std::size_t at = 0; at + phrase.size() <= words_.size(); ++at) {
        bool same = true;
        for (std::size_t i = 0; i < phrase.size() && same; ++i)
            same = is_free(at + i) && words_[at + i].plain == phrase[i];
        if (same) return at;
    }
    return std::nullopt;
}

bool Words::take_phrase(std::string_view phrase) {
    const auto parts = split(phrase);
    const auto at = find(parts);
    if (at) take(*at, parts.size());
    return at.has_value();
}

void Words::take_all(const std::vector<std::string_view>& words) {
    for (Word& word : words_)
        for (const std::string_view one : words)
            if (word.plain == one) word.taken = true;
}

std::vector<std::string> Words::left() const {
    std::vector<std::string> left;
    for (const Word& word : words_)
        if (!word.taken) left.push_back(word.written);
    return left;
}

}  // namespace notes
