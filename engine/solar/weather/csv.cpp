#include "solar/weather/csv.hpp"

#include <charconv>
#include <cmath>

namespace solar {

namespace {

std::string_view trimmed(std::string_view cell) {
    while (!cell.empty() && (cell.front() == ' ' || cell.front() == '\t'))
        cell.remove_prefix(1);
    while (!cell.empty() && (cell.back() == ' ' || cell.back() == '\t'))
        cell.remove_suffix(1);
    return cell;
}

}  // namespace

std::string_view take_line(std::string_view& text) {
    const std::size_t end = text.find('\n');
    std::string_view line = text.substr(0, end);
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    return line;
}

void split_cells(std::string_view line, std::vector<std::string_view>& cells) {
    cells.clear();
    for (;;) {
        while (!line.empty() && line.front() == ' ')
            line.remove_prefix(1);
        if (!line.empty() && line.front() == '"') {
            std::size_t end = 1;
            while (end < line.size() &&
                   (line[end] != '"' || (end + 1 < line.size() && line[end + 1] == '"')))
                end += line[end] == '"' ? 2u : 1u;
            cells.push_back(line.substr(1, std::min(end, line.size()) - 1));
            const std::size_t comma = line.find(',', std::min(end, line.size()));
            if (comma == std::string_view::npos) return;
            line.remove_prefix(comma + 1);
            continue;
        }
        const std::size_t comma = line.find(',');
        cells.push_back(trimmed(line.substr(0, comma)));
        if (comma == std::string_view::npos) return;
        line.remove_prefix(comma + 1);
    }
}

std::optional<double> number(std::string_view cell) {
    if (!cell.empty() && cell.front() == '+') cell.remove_prefix(1);
    double value = 0.0;
    const auto [end, fault] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (fault != std::errc{} || end != cell.data() + cell.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

}  // namespace solar
