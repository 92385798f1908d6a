#include "words/saying.hpp"

namespace words {

namespace {

constinit const Enrolled* newest = nullptr;

bool is_letter(char letter) {
    const auto byte = static_cast<unsigned char>(letter);
    return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') || byte >= 0x80;
}

}  // namespace

bool Saying::has_words() const {
    std::size_t from = 0;
    for (Hole hole = next_hole(english, 0); hole.opens != std::string_view::npos;
         hole = next_hole(english, hole.past)) {
        const auto between = english.substr(from, hole.opens - from);
        if (std::ranges::any_of(between, is_letter)) return true;
        from = hole.past;
    }
    return std::ranges::any_of(english.substr(from), is_letter);
}

Enrolled::Enrolled(const Saying& saying) : saying_(&saying), next_(newest) {
    newest = this;
}

std::vector<const Saying*> all_sayings() {
    std::vector<const Saying*> all;
    for (const Enrolled* one = newest; one != nullptr; one = one->next_) {
        all.push_back(one->saying_);
    }
    return all;
}

}  // namespace words
