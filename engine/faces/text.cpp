#include "faces/text.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "faces/bars.hpp"
#include "faces/candle.hpp"
#include "faces/days_plot.hpp"
#include "faces/start_plot.hpp"
#include "units/clock.hpp"
#include "units/plain_number.hpp"
#include "units/quote.hpp"

namespace faces {

namespace {

using scenario::Severity;

// Lines gathered for one look; nothing is written before all of it is there.
struct Page {
    Look look;
    std::string text = {};

    void line(std::string_view words = "") {
        std::string whole(words);
        whole.erase(whole.find_last_not_of(' ') + 1);
        if (width_of(without_colour(whole)) > look.width) {
            broken(without_colour(whole));
        } else {
            text += whole + "\n";
        }
    }
    // A line that is too long for a narrow page goes on below, further in.
    void broken(std::string_view whole) {
        const auto begin = std::min(whole.find_first_not_of(' '), whole.size());
        const std::string first(std::min<std::size_t>(begin, 8), ' ');
        const auto lines = wrapped(whole.substr(begin), look.width - 2, first);
        for (std::size_t place = 0; place < lines.size(); ++place)
            text += (place == 0 ? "" : "  ") + lines[place] + "\n";
    }
    void paragraph(std::string_view words, std::string_view first = "", Ink ink = Ink::plain,
                   std::size_t most_lines = 1000) {
        auto lines = wrapped(words, look.width, first);
        if (lines.size() > most_lines) {
            lines.resize(most_lines);
            lines.back() = shortened(lines.back() + " ...", look.width);
        }
        for (const auto& each : lines) {
            line(inked(each, ink, look));
        }
    }
    void heading(std::string_view words) {
        line();
        line(inked(words, Ink::strong, look));
    }
};

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

// ---- The first lines and the picture.

void write_top(Page& page, const answers::Answer& answer) {
    if (!answer.title.empty()) {
        page.line(inked(shortened(answer.title, page.look.width), Ink::faint, page.look));
    }
    bool first = true;
    for (const auto& sentence : answer.sentences) {
        page.paragraph(sentence, "", first ? Ink::strong : Ink::plain);
        first = false;
    }
}

void write_picture(Page& page, const answers::Answer& answer, int rows) {
    const answers::DaysChart& chart = *answer.days;
    if (chart.at.empty() || chart.lasts <= 0.0) {
        return;
    }
    const auto left = candle(chart.burns.half, chart.lasts, rows, page.look);
    const auto right = days_plot(chart, page.look.width - candle_width, rows, page.look);
    page.line();
    page.line(left.front() + std::string(10, ' ') + plot_key(chart, page.look));
    for (std::size_t row = 0; row < right.size(); ++row) {
        page.line((row + 1 < left.size() ? left[row + 1] : std::string(candle_width, ' ')) +
                  right[row]);
    }
    std::string labels;
    for (const auto& marker : chart.markers) {
        labels += fmt::format("{}{} {}", labels.empty() ? "" : "; ", marker.sign, marker.label);
    }
    if (!labels.empty()) {
        page.paragraph(labels, "", Ink::plain, page.look.full ? 100 : 2);
    }
}

// ---- Values.

std::string words_of(const answers::Value& value) {
    struct WordsOf {
        std::string operator()(const answers::Absent& absent) const {
            return "- (" + absent.reason + ")";
        }
        std::string operator()(bool yes) const { return yes ? "yes" : "no"; }
        std::string operator()(std::int64_t count) const { return std::to_string(count); }
        std::string operator()(const answers::Quantity& quantity) const { return quantity.shown; }
        std::string operator()(const std::string& text) const { return text; }
        std::string operator()(const answers::List& list) const {
            std::string words;
            for (const auto& entry : list) {
                words += (words.empty() ? "" : "; ") + words_of(entry);
            }
            return words;
        }
        std::string operator()(const answers::Members& members) const {
            std::string words;
            for (const auto& member : members) {
                words += fmt::format("{}{}{}{}", words.empty() ? "" : ", ", member.label,
                                     member.label.empty() ? "" : " ", words_of(member.value));
            }
            return words;
        }
    };
    return std::visit(WordsOf{}, value.held);
}

// At least, likely and at most of one quantity, which go on one line.
bool is_range(const answers::Members& members) {
    constexpr std::array<std::string_view, 3> keys{"low", "likely", "high"};
    return std::ranges::equal(members, keys, {}, &answers::Member::key);
}

// A table within a table of tables: it does not go on one line.
bool holds_more(const answers::Members& members) {
    return std::ranges::any_of(members, [](const answers::Member& member) {
        const auto* inner = std::get_if<answers::Members>(&member.value.held);
        return inner != nullptr && std::ranges::any_of(*inner, [](const answers::Member& deeper) {
                   return std::holds_alternative<answers::Members>(deeper.value.held);
               });
    });
}

constexpr std::size_t most_entries_in_text = 24;

void write_values(Page& page, const answers::Members& members, int indent) {
    for (const auto& member : members) {
        if (member.aside && !page.look.full) {
            continue;
        }
        const std::string first =
            std::string(static_cast<std::size_t>(indent), ' ') +
            padded(member.label.empty() ? member.key : member.label, 42 - indent) + " ";
        const auto* inner = std::get_if<answers::Members>(&member.value.held);
        if (inner != nullptr && is_range(*inner)) {
            page.paragraph(fmt::format("{}, likely {}, at most {}", words_of((*inner)[0].value),
                                       words_of((*inner)[1].value), words_of((*inner)[2].value)),
                           first);
        } else if (inner != nullptr) {
            page.line(first);
            write_values(page, *inner, indent + 2);
        } else if (const auto* list = std::get_if<answers::List>(&member.value.held)) {
            if (list->size() > most_entries_in_text) {
                page.paragraph(fmt::format("{} entries: see --as json", list->size()), first);
                continue;
            }
            page.line(first);
            for (const auto& entry : *list) {
                const auto* fields = std::get_if<answers::Members>(&entry.held);
                if (fields != nullptr && holds_more(*fields)) {
                    write_values(page, *fields, indent + 2);
                    continue;
                }
                std::string words;
                for (const auto& field : fields == nullptr ? answers::Members{} : *fields) {
                    words += fmt::format("{}{} {}", words.empty() ? "" : ", ",
                                         field.label.empty() ? field.key : field.label,
                                         words_of(field.value));
                }
                page.paragraph(fields == nullptr ? words_of(entry) : words,
                               std::string(static_cast<std::size_t>(indent) + 2, ' '));
            }
        } else {
            page.paragraph(words_of(member.value), first);
        }
    }
}

std::vector<std::string> cells_of(const answers::Column& column) {
    if (const auto* words = std::get_if<std::vector<std::string>>(&column.points)) {
        return *words;
    }
    std::vector<std::string> cells;
    for (const double number : std::get<std::vector<double>>(column.points)) {
        cells.push_back(units::plain_number(std::abs(number) < 1e-6 ? 0.0 : number));
    }
    return cells;
}

// A column as it is printed: its heading, then a cell a row.
struct Printed {
    std::string heading;
    std::vector<std::string> cells;
};

std::vector<Printed> printed(const answers::Series& series) {
    std::vector<Printed> columns;
    for (const auto& column : series.columns)
        columns.push_back({column.unit.empty() || column.unit == "1"
                               ? column.heading
                               : fmt::format("{} [{}]", column.heading, column.unit),
                           cells_of(column)});
    return columns;
}

int widest_of(const std::vector<std::string>& cells) {
    int widest = 0;
    for (const auto& cell : cells)
        widest = std::max(widest, width_of(cell));
    return widest;
}

int longest_word_of(std::string_view text) {
    int longest = 0;
    while (!text.empty()) {
        const auto space = text.find(' ');
        longest = std::max(longest, width_of(text.substr(0, space)));
        text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
    }
    return longest;
}

// As many words a line as there is room for, at least one.
std::vector<std::string> in_lines(std::string_view heading, int room) {
    std::vector<std::string> lines;
    while (!heading.empty()) {
        const auto space = heading.find(' ');
        const auto word = heading.substr(0, space);
        if (lines.empty() || width_of(lines.back()) + 1 + width_of(word) > room)
            lines.emplace_back(word);
        else
            lines.back() += " " + std::string(word);
        heading.remove_prefix(space == std::string_view::npos ? heading.size() : space + 1);
    }
    return lines;
}

// What all columns but the last take, each with its gap; the last takes what room is left.
int all_but_last(const std::vector<int>& widths) {
    int taken = 0;
    for (std::size_t place = 0; place + 1 < widths.size(); ++place)
        taken += widths[place] + 2;
    return taken;
}

// As wide as they like; else as narrow as their cells are, with headings over several lines; empty
// where the page does not hold that either.
std::vector<int> widths_on(int page, const std::vector<Printed>& columns) {
    constexpr int narrowest_last = 6;
    std::vector<int> liked;
    std::vector<int> narrow;
    for (const auto& column : columns) {
        const int cells = widest_of(column.cells);
        liked.push_back(std::min(std::max(cells, width_of(column.heading)), page / 2));
        narrow.push_back(std::min(std::max(cells, longest_word_of(column.heading)), page / 2));
    }
    if (all_but_last(liked) + narrowest_last <= page) return liked;
    if (all_but_last(narrow) + std::max(narrowest_last, narrow.back()) <= page) return narrow;
    return {};
}

// The headings, over as many lines as the longest takes.
void write_headings(Page& page, const std::vector<Printed>& columns,
                    const std::vector<int>& widths) {
    std::vector<std::vector<std::string>> headings;
    std::size_t most = 0;
    for (std::size_t place = 0; place < columns.size(); ++place) {
        const bool last = place + 1 == columns.size();
        const int room = last ? page.look.width - all_but_last(widths) : widths[place];
        headings.push_back(in_lines(columns[place].heading, room));
        most = std::max(most, headings.back().size());
    }
    for (std::size_t row = 0; row < most; ++row) {
        std::string line;
        for (std::size_t place = 0; place < headings.size(); ++place)
            line +=
                padded(row < headings[place].size() ? headings[place][row] : "", widths[place]) +
                "  ";
        page.line(line);
    }
}

// Each row as a sentence: "lamps: priority 3, spares a day 135 Wh".
void write_in_words(Page& page, const std::vector<Printed>& columns) {
    for (std::size_t row = 0; row < columns.front().cells.size(); ++row) {
        std::string words = columns.front().cells[row];
        for (std::size_t place = 1; place < columns.size(); ++place)
            words += fmt::format("{} {} {}", place == 1 ? ":" : ",", columns[place].heading,
                                 columns[place].cells[row]);
        page.paragraph(words, "  ");
    }
}

// The columns side by side; the last takes what room is left and wraps.
void write_table(Page& page, const answers::Series& series) {
    page.heading(series.title);
    const auto columns = printed(series);
    if (columns.empty()) return;
    const auto widths = widths_on(page.look.width, columns);
    if (widths.empty() && series.brief) return write_in_words(page, columns);
    if (widths.empty()) {
        page.paragraph(
            "This table is wider than the page; --as json has it, and --as csv the first "
            "table of an answer.");
        return;
    }
    write_headings(page, columns, widths);
    for (std::size_t row = 0; row < columns.front().cells.size(); ++row) {
        std::string line;
        for (std::size_t place = 0; place + 1 < columns.size(); ++place)
            line +=
                padded(shortened(columns[place].cells[row], widths[place]), widths[place]) + "  ";
        page.paragraph(columns.back().cells[row], line);
    }
}

void write_bars(Page& page, const answers::Answer& answer) {
    for (const auto& chart : answer.bars) {
        page.line();
        for (const auto& line : drawn_bars(chart, page.look)) {
            page.line(line);
        }
    }
    if (!answer.curves) {
        return;
    }
    page.line();
    for (const auto& line : drawn_curves(*answer.curves, page.look)) {
        page.line(line);
    }
}

void write_tables(Page& page, const answers::Answer& answer) {
    for (const auto& series : answer.series) {
        if (series.brief || page.look.full) {
            write_table(page, series);
        }
    }
}

// Side by side, or below each other on a narrow page.
void write_account(Page& page, const answers::Account& account) {
    const bool side_by_side = page.look.width >= 60;
    const int half = side_by_side ? page.look.width / 2 : page.look.width + 6;
    const auto entry = [&](const std::vector<answers::Account::Entry>& column, std::size_t row) {
        return row < column.size() ? padded(column[row].label, half - 16) +
                                         right_aligned(column[row].amount.shown, 10)
                                   : std::string();
    };
    page.line();
    for (std::size_t row = 0; side_by_side && row < account.from.size(); ++row)
        page.line(padded(entry(account.from, row), half) + entry(account.to, row));
    if (side_by_side) return;
    for (const auto* column : {&account.from, &account.to})
        for (std::size_t row = 0; row < column->size(); ++row)
            page.line(entry(*column, row));
}

// One block a start: its bars, and the course of the motor.
void write_starts(Page& page, const answers::Answer& answer) {
    constexpr std::size_t bars_on_a_screen = 4;
    if (!answer.starts.empty()) {
        page.line();
        page.line("Share of each limit that a start uses: " +
                  std::string(page.look.ascii ? "# surely  = likely  - at most, | limit"
                                              : "█ surely  ▓ likely  ░ at most, │ the limit"));
    }
    for (const auto& chart : answer.starts) {
        page.line();
        for (const auto& each : start_plot(chart, page.look.full ? 0 : bars_on_a_screen, page.look))
            page.line(each);
    }
}

// ---- Findings and what stands behind the answer.

std::string sign_of(Severity severity) {
    switch (severity) {
        case Severity::stop:
            return "STOP    ";
        case Severity::caution:
            return "Caution ";
        case Severity::note:
            return "Note    ";
    }
    return "";
}

Ink ink_of(Severity severity) {
    return severity == Severity::stop      ? Ink::stop
           : severity == Severity::caution ? Ink::caution
                                           : Ink::plain;
}

std::string place_and_time(const answers::PinnedFinding& pinned) {
    const std::string& where = pinned.finding.where;
    if (pinned.when.empty() || where.empty()) {
        return pinned.when + where;
    }
    return pinned.when + ", " + where;
}

void write_finding(Page& page, const answers::PinnedFinding& pinned) {
    const auto& finding = pinned.finding;
    const std::string where = place_and_time(pinned);
    page.paragraph((where.empty() ? "" : where + ": ") + finding.text, sign_of(finding.severity),
                   ink_of(finding.severity), page.look.full ? 100 : 2);
    if (!page.look.full) {
        return;
    }
    const std::string indent(8, ' ');
    if (!finding.mend.empty()) {
        page.paragraph(finding.mend, indent + "-> ");
    }
    if (!finding.source.empty()) {
        page.paragraph("source: " + finding.source, indent, Ink::faint);
    }
}

constexpr std::size_t most_findings_on_a_screen = 3;

void write_findings(Page& page, const answers::Answer& answer) {
    if (answer.findings.empty()) {
        return;
    }
    page.line();
    const std::size_t shown = page.look.full
                                  ? answer.findings.size()
                                  : std::min(answer.findings.size(), most_findings_on_a_screen);
    for (std::size_t place = 0; place < shown; ++place) {
        write_finding(page, answer.findings[place]);
    }
}

void write_counts(Page& page, const answers::Answer& answer) {
    const std::size_t more =
        answer.findings.size() - std::min(answer.findings.size(), most_findings_on_a_screen);
    std::vector<std::string> rest;
    if (more > 0) {
        rest.push_back(counted(more, "more finding", "more findings"));
    }
    if (!answer.assumptions.empty()) {
        rest.push_back(counted(answer.assumptions.size(), "assumption", "assumptions"));
    }
    if (!answer.working.empty()) {
        rest.push_back("the working");
    }
    page.line();
    page.paragraph(rest.empty() ? "Add --full to see everything."
                                : fmt::format("Add --full to see {}.", fmt::join(rest, ", ")));
    std::string hazards;
    for (const auto& caution : answer.cautions) {
        hazards += (hazards.empty() ? "" : ", ") + caution.hazard;
    }
    if (!hazards.empty()) {
        page.paragraph("Beware: " + hazards + ".");
    }
}

void write_working(Page& page, const answers::Answer& answer) {
    std::string section;
    for (const auto& row : answer.working) {
        if (row.section != section) {
            section = row.section;
            page.heading("Working: " + section);
        }
        std::string behind = row.formula;
        if (!row.source.empty()) {
            behind += (behind.empty() ? "" : "; ") + row.source;
        }
        const int label = std::max(page.look.width - 42, 30);
        const auto lines = wrapped(row.quantity, label);
        for (std::size_t place = 0; place + 1 < lines.size(); ++place) {
            page.line(lines[place]);
        }
        page.paragraph(behind,
                       padded(lines.back(), label) + right_aligned(row.value.shown, 11) + "  ");
    }
}

void write_the_rest(Page& page, const answers::Answer& answer) {
    if (!answer.values.empty()) {
        page.heading("All figures");
        write_values(page, answer.values, 0);
    }
    write_working(page, answer);
    if (!answer.assumptions.empty()) {
        page.heading("Assumed, because the file is silent");
    }
    for (const auto& assumption : answer.assumptions) {
        page.paragraph(
            fmt::format("{}: {} ({})", assumption.where, assumption.text, assumption.source), "- ");
    }
    if (!answer.cautions.empty()) {
        page.heading("Beware");
    }
    for (const auto& caution : answer.cautions) {
        page.paragraph(fmt::format("{}: {} ({})", caution.hazard, caution.text, caution.source),
                       "- ");
    }
}

}  // namespace

std::string in_text(const answers::Answer& answer, const Look& look) {
    Page page{.look = look};
    page.look.width = std::max(look.width, narrowest_page);
    write_top(page, answer);
    if (answer.days) {
        write_picture(page, answer, look.full ? 12 : 8);
        if (answer.account) write_account(page, *answer.account);
    } else if (answer.question == "start") {
        write_starts(page, answer);
        if (look.full) write_tables(page, answer);
    } else {
        write_bars(page, answer);
        if (!look.full && !answer.wiring && answer.bars.empty()) {  // their tables say it better
            page.line();
            write_values(page, answer.values, 0);
        }
        write_tables(page, answer);
    }
    write_findings(page, answer);
    if (look.full) {
        write_the_rest(page, answer);
    } else {
        write_counts(page, answer);
    }
    page.line();
    page.paragraph(answer.closing);
    return look.ascii ? in_ascii(page.text) : page.text;
}

}  // namespace faces
