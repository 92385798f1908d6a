#include <algorithm>
#include <cctype>
#include <numeric>
#include <utility>

#include "motor/appliances/appliances.hpp"
#include "words/said.hpp"

namespace motor {

namespace {

using words::Said;
using words::said;

// Lower case, single blanks.
std::string plain(std::string_view name) {
    std::string text;
    for (const char c : name) {
        const auto letter = static_cast<unsigned char>(c);
        if (std::isspace(letter) == 0) {
            text += static_cast<char>(std::tolower(letter));
        } else if (!text.empty() && text.back() != ' ') {
            text += ' ';
        }
    }
    while (!text.empty() && text.back() == ' ') {
        text.pop_back();
    }
    return text;
}

// Letters to insert, drop or change to make one of the other [Levenshtein].
std::size_t letters_apart(const std::string& a, const std::string& b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = std::exchange(row[0], i + 1);
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({changed, row[j] + 1, row[j + 1] + 1});
        }
    }
    return row.back();
}

// The larger the farther: the share of letters that differ, less when one name holds the other.
double distance(const std::string& wanted, const std::string& name) {
    const double apart = static_cast<double>(letters_apart(wanted, name)) /
                         static_cast<double>(std::max(wanted.size(), name.size()));
    const bool holds = wanted.size() >= 3 && (name.find(wanted) != std::string::npos ||
                                              wanted.find(name) != std::string::npos);
    return holds ? 0.3 * apart : apart;
}

double distance_to(const std::string& wanted, const Appliance& appliance) {
    double least = distance(wanted, plain(appliance.name));
    for (const std::string& name : appliance.also) {
        least = std::min(least, distance(wanted, plain(name)));
    }
    return least;
}

std::vector<Said> close_names(const std::string& wanted) {
    constexpr double farthest = 0.6;
    constexpr std::size_t most = 3;
    std::vector<std::pair<double, std::string>> near;
    for (const Appliance& appliance : appliances()) {
        const double apart = distance_to(wanted, appliance);
        if (apart <= farthest) {
            near.emplace_back(apart, appliance.name);
        }
    }
    std::stable_sort(near.begin(), near.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Said> names;
    for (std::size_t i = 0; i < std::min(most, near.size()); ++i) {
        names.push_back(said<"\"{name}\"">(near[i].second));
    }
    return names;
}

}  // namespace

units::Result<Appliance> find_appliance(std::string_view name) {
    const std::string wanted = plain(name);
    for (const Appliance& appliance : appliances()) {
        const bool also =
            std::any_of(appliance.also.begin(), appliance.also.end(),
                        [&](const std::string& other) { return plain(other) == wanted; });
        if (also || plain(appliance.name) == wanted) {
            return appliance;
        }
    }
    const auto names = wanted.empty() ? std::vector<Said>{} : close_names(wanted);
    return units::fail({.where = "",
                        .found = said<"no appliance in the library is called \"{name}\"">(name),
                        .remedy = names.empty() ? said<"give its power, or one of the names in "
                                                       "appliances.toml">()
                                                : said<"did you mean {similar}?">(words::joined(
                                                      names, words::List::Joint::or_each))});
}

}  // namespace motor
