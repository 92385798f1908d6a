#include "fuzz/changes.hpp"

#include <array>
#include <cctype>
#include <cstdlib>

#include <fmt/format.h>

namespace fuzz {

namespace {

bool is_figure(char letter) {
    return std::isdigit(static_cast<unsigned char>(letter)) != 0;
}

struct Stretch {
    std::size_t begin = 0;
    std::size_t size = 0;
};

// The figures of a text with their decimals: "12.8" of "12.8 V".
std::vector<Stretch> figures_of(std::string_view text) {
    std::vector<Stretch> found;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (!is_figure(text[at])) continue;
        const std::size_t begin = at;
        while (at < text.size() && (is_figure(text[at]) || text[at] == '.'))
            ++at;
        found.push_back({.begin = begin, .size = at - begin});
    }
    return found;
}

constexpr std::array<std::string_view, 16> odd_figures{
    "0",   "-1",    "1",      "0.001", "1e-9",
    "1e9", "1e300", "1e-300", "-0.0",  "0.5",
    "24",  "60",    "100",    "1000",  "99999999999999999999",
    "nan"};
constexpr std::array<double, 12> factors{0.01, 0.1, 0.5, 0.9, 0.999, 1.001,
                                         1.1,  2.0, 3.0, 10., 100.,  -1.0};

}  // namespace

std::size_t below(std::size_t count, Random& random) {
    return static_cast<std::size_t>(random() % count);
}

std::vector<std::string> parts_of(std::string_view text, char between) {
    std::vector<std::string> parts;
    while (true) {
        const auto end = text.find(between);
        parts.emplace_back(text.substr(0, end));
        if (end == std::string_view::npos) return parts;
        text.remove_prefix(end + 1);
    }
}

std::string joined(const std::vector<std::string>& parts, char between) {
    std::string text;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i > 0) text += between;
        text += parts[i];
    }
    return text;
}

std::string with_bytes_changed(std::string text, Random& random) {
    if (text.empty()) return "x";
    const std::size_t at = below(text.size(), random);
    const std::size_t size = 1 + below(8, random);
    switch (random() % 5) {
        case 0:
            text[at] = static_cast<char>(text[at] ^ (1 << (random() % 8)));
            break;
        case 1:
            text.insert(at, 1, static_cast<char>(random()));
            break;
        case 2:
            text.erase(at, size);
            break;
        case 3:
            text.insert(at, text.substr(at, size));
            break;
        default:
            text.insert(below(text.size(), random), text.substr(at, 4 * size));
    }
    return text;
}

std::string with_figure_changed(const std::string& text, Random& random) {
    const auto figures = figures_of(text);
    if (figures.empty()) return text;
    const Stretch figure = one_of(figures, random);
    const std::string old = text.substr(figure.begin, figure.size);
    std::string changed(one_of(odd_figures, random));
    const auto way = random() % 8;
    if (way < 4) {  // half to twice, as a person would vary it
        const double share = 0.5 + 1.5 * static_cast<double>(random() % 1000) / 1000.0;
        changed = fmt::format("{:.4g}", std::strtod(old.c_str(), nullptr) * share);
    } else if (way == 4) {
        changed =
            fmt::format("{:.6g}", std::strtod(old.c_str(), nullptr) * one_of(factors, random));
    } else if (way < 7) {
        changed = fmt::format("{}", std::atol(old.c_str()) + (random() % 2 == 0 ? 1 : -1));
    }
    return text.substr(0, figure.begin) + changed + text.substr(figure.begin + figure.size);
}

}  // namespace fuzz
