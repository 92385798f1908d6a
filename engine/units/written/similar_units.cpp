#include <cctype>
#include <tuple>

#include "units/written/unit_table.hpp"

namespace units {

namespace {

std::string in_small_letters(std::string_view text) {
    std::string small(text);
    for (char& letter : small) {
        letter = static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
    }
    return small;
}

// Letters to insert, remove or exchange, or neighbours to swap, to make one of the other.
int edit_distance(std::string_view from, std::string_view to) {
    std::vector<std::vector<int>> distance(from.size() + 1, std::vector<int>(to.size() + 1));
    for (std::size_t i = 0; i <= from.size(); ++i) {
        for (std::size_t j = 0; j <= to.size(); ++j) {
            if (i == 0 || j == 0) {
                distance[i][j] = static_cast<int>(i + j);
                continue;
            }
            const int exchanged = distance[i - 1][j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
            distance[i][j] = std::min({exchanged, distance[i - 1][j] + 1, distance[i][j - 1] + 1});
            if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1]) {
                distance[i][j] = std::min(distance[i][j], distance[i - 2][j - 2] + 1);
            }
        }
    }
    return distance[from.size()][to.size()];
}

bool means_the_same(const NamedUnit& a, const NamedUnit& b) {
    return std::tie(a.dimension, a.numerator, a.denominator, a.shift) ==
           std::tie(b.dimension, b.numerator, b.denominator, b.shift);
}

}  // namespace

std::vector<std::string_view> similar_units(Dimension wanted, std::string_view misspelt) {
    struct Similar {
        int distance;
        bool another_kind;
        const NamedUnit* unit;
    };
    constexpr std::size_t longest = 16;  // no unit is longer; spares the comparison of long garbage
    if (misspelt.empty() || misspelt.size() > longest) {
        return {};
    }
    const std::string small = in_small_letters(misspelt);
    std::vector<Similar> found;
    for (const NamedUnit& unit : unit_table()) {
        if (unit.spelling.empty()) {
            continue;
        }
        const int distance = edit_distance(small, in_small_letters(unit.spelling));
        const int allowed = std::min(misspelt.size(), unit.spelling.size()) < 3 ? 0 : 1;
        if (distance <= allowed) {
            found.push_back({distance, unit.dimension != written_as(wanted), &unit});
        }
    }
    std::ranges::stable_sort(found, [](const Similar& a, const Similar& b) {
        return std::tie(a.distance, a.another_kind) < std::tie(b.distance, b.another_kind);
    });
    std::vector<std::string_view> spellings;
    std::vector<const NamedUnit*> named;
    for (const Similar& similar : found) {
        const bool as_good = similar.distance == found.front().distance &&
                             similar.another_kind == found.front().another_kind;
        const bool another_word_for_one = std::ranges::any_of(
            named, [&](const NamedUnit* unit) { return means_the_same(*unit, *similar.unit); });
        if (as_good && !another_word_for_one && spellings.size() < 3) {
            named.push_back(similar.unit);
            spellings.push_back(similar.unit->spelling);
        }
    }
    return spellings;
}

}  // namespace units
