// Which entries of a log hold, and in what order.
#include <algorithm>
#include <cmath>
#include <string>

#include "scenario/log.hpp"

namespace scenario {
namespace {

// The order at one instant, whatever the order in the file.
struct Rank {
    units::LocalTime at;
    bool done = false;
    std::string text;

    friend bool operator<(const Rank& a, const Rank& b) {
        if (!(a.at == b.at)) return a.at < b.at;
        return std::pair(a.done, a.text) < std::pair(b.done, b.text);
    }
    friend bool operator==(const Rank& a, const Rank& b) {
        return a.at == b.at && a.text == b.text;
    }
};

}  // namespace

units::Voltage half_last_digit(const VoltageShown& shown) {
    return 0.5 * std::pow(10.0, -shown.decimals) * units::volt;
}

bool is_struck_by(const LogEntry& entry, const LogEntry& by) {
    if (!by.strikes || entry.strikes || !(entry.at == *by.strikes)) return false;
    if (by.pack && entry.pack != by.pack) return false;
    if (by.load && entry.load != by.load) return false;
    if (by.keeps && entry.keeps != by.keeps) return false;
    return !by.sun || entry.sun.has_value();
}

std::vector<std::size_t> standing(const std::vector<LogEntry>& log) {
    std::vector<const LogEntry*> striking;
    for (const LogEntry& entry : log)
        if (entry.strikes) striking.push_back(&entry);
    std::vector<std::pair<Rank, std::size_t>> ranked;
    for (std::size_t i = 0; i < log.size(); ++i) {
        const LogEntry& entry = log[i];
        const bool struck = std::ranges::any_of(
            striking, [&](const LogEntry* by) { return is_struck_by(entry, *by); });
        if (entry.strikes || struck) continue;
        ranked.emplace_back(
            Rank{.at = entry.at, .done = entry.happened.has_value(), .text = print(entry)}, i);
    }
    std::ranges::sort(ranked);
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < ranked.size(); ++i)
        if (i == 0 || !(ranked[i].first == ranked[i - 1].first)) places.push_back(ranked[i].second);
    return places;
}

}  // namespace scenario
