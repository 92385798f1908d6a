#include "fuzz/target.hpp"

#include <cstdio>
#include <cstdlib>
#include <map>

namespace fuzz {

namespace {

std::map<std::string, long, std::less<>>& counted() {
    static std::map<std::string, long, std::less<>> all;
    return all;
}

}  // namespace

void must(bool holds, std::string_view words) {
    if (holds) return;
    std::fprintf(stderr, "fuzz: %.*s\n", static_cast<int>(words.size()), words.data());
    std::abort();
}

void count(std::string_view what) {
    ++counted().try_emplace(std::string(what), 0).first->second;
}

std::string counts() {
    std::string words;
    for (const auto& [what, times] : counted())
        words += ", " + std::to_string(times) + " " + what;
    return words;
}

// FNV-1a, 64 bits.
std::uint64_t mark_of(std::string_view text) {
    std::uint64_t mark = 14695981039346656037ULL;
    bool in_figure = false;
    for (const char letter : text) {
        const bool figure = (letter >= '0' && letter <= '9') || (in_figure && letter == '.');
        if (!figure || !in_figure)
            mark = (mark ^ (figure ? std::uint64_t{'0'} : std::uint64_t(std::uint8_t(letter)))) *
                   1099511628211ULL;
        in_figure = figure;
    }
    return mark;
}

}  // namespace fuzz
