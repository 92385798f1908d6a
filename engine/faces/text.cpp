#include "faces/text.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "answers/exhibits.hpp"
#include "faces/bars.hpp"
#include "faces/candle.hpp"
#include "faces/days_plot.hpp"
#include "faces/spoken.hpp"
#include "faces/start_plot.hpp"
#include "units/quote.hpp"

namespace faces {

namespace {

using scenario::Severity;
using words::said;
using words::said_of;

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
    // A face's own words.
    [[nodiscard]] std::string own(const words::Said& said) const { return in(look, said); }
};

// ---- The first lines and the picture.

void write_top(Page& page, const answers::Answer& answer) {
    if (!answer.title.empty()) {
        page.line(inked(shortened(answer.title, page.look.width), Ink::faint, page.look));
    }
    bool first = true;
    for (const auto& sentence : answer.sentences) {
        page.paragraph(plain(sentence), "", first ? Ink::strong : Ink::plain);
        first = false;
    }
}

void write_picture(Page& page, const answers::DaysChart& chart) {
    const int rows = page.look.full ? 12 : 8;
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
        labels +=
            fmt::format("{}{} {}", labels.empty() ? "" : "; ", marker.sign, plain(marker.label));
    }
    if (!labels.empty()) {
        page.paragraph(labels, "", Ink::plain, page.look.full ? 100 : 2);
    }
}

// ---- Values.

std::string words_of(const answers::Value& value, const Look& look) {
    struct WordsOf {
        const Look& look;
        std::string operator()(const answers::Absent& absent) const {
            return "- (" + plain(absent.reason) + ")";
        }
        std::string operator()(bool yes) const {
            return in(look, yes ? said<"yes">() : said<"no">());
        }
        std::string operator()(std::int64_t count) const { return std::to_string(count); }
        std::string operator()(const answers::Quantity& quantity) const {
            return plain(quantity.shown);
        }
        std::string operator()(const std::string& text) const { return text; }
        std::string operator()(const answers::Code& code) const { return plain(code.said); }
        std::string operator()(const words::Said& text) const { return plain(text); }
        std::string operator()(const answers::List& list) const {
            std::string words;
            for (const auto& entry : list) {
                words += (words.empty() ? "" : "; ") + words_of(entry, look);
            }
            return words;
        }
        std::string operator()(const answers::Members& members) const {
            std::string words;
            for (const auto& member : members) {
                if (answers::is_for_programs(member)) continue;
                words += fmt::format("{}{}{}{}", words.empty() ? "" : ", ", plain(member.label),
                                     member.label.empty() ? "" : " ", words_of(member.value, look));
            }
            return words;
        }
    };
    return std::visit(WordsOf{look}, value.held);
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

std::string spaces(int count) {
    return std::string(static_cast<std::size_t>(count), ' ');
}

std::string name_of(const answers::Member& member) {
    return member.label.empty() ? member.key : plain(member.label);
}

// Nothing of its kind, such as times at which a load goes without.
bool is_empty_list(const answers::Value& value) {
    const auto* list = std::get_if<answers::List>(&value.held);
    return list != nullptr && list->empty();
}

std::string on_one_line(const answers::Members& fields, const Look& look) {
    std::string words;
    for (const auto& field : fields)
        if (!answers::is_for_programs(field) && !is_empty_list(field.value))
            words += fmt::format("{}{} {}", words.empty() ? "" : ", ", name_of(field),
                                 words_of(field.value, look));
    return words;
}

void write_values(Page& page, const answers::Members& members, int indent);

void write_entry(Page& page, const answers::Value& entry, int indent) {
    const auto* fields = std::get_if<answers::Members>(&entry.held);
    if (fields != nullptr && holds_more(*fields)) return write_values(page, *fields, indent);
    page.paragraph(fields == nullptr ? words_of(entry, page.look) : on_one_line(*fields, page.look),
                   spaces(indent));
}

// The value behind `first`, which is its label; what does not go on that line follows below.
void write_value(Page& page, const std::string& first, const answers::Value& value, int indent) {
    if (const auto* members = std::get_if<answers::Members>(&value.held)) {
        if (is_range(*members))
            return page.paragraph(page.own(said<"{low}, likely {likely}, at most {high}">(
                                      words_of((*members)[0].value, page.look),
                                      words_of((*members)[1].value, page.look),
                                      words_of((*members)[2].value, page.look))),
                                  first);
        page.line(first);
        return write_values(page, *members, indent + 2);
    }
    if (is_empty_list(value)) return page.paragraph(page.own(said<"none">()), first);
    const auto* list = std::get_if<answers::List>(&value.held);
    if (list == nullptr) return page.paragraph(words_of(value, page.look), first);
    if (list->size() > most_entries_in_text)
        return page.paragraph(page.own(said<"{n} entries: see --as json">(list->size())), first);
    page.line(first);
    for (const auto& entry : *list)
        write_entry(page, entry, indent + 2);
}

void write_values(Page& page, const answers::Members& members, int indent) {
    for (const auto& member : members)
        if ((!member.aside || page.look.full) && !answers::is_for_programs(member))
            write_value(page, spaces(indent) + padded(name_of(member), 42 - indent) + " ",
                        member.value, indent);
}

std::vector<std::string> cells_of(const answers::Column& column, const words::Language& language) {
    std::vector<std::string> cells;
    if (const auto* numbers = std::get_if<std::vector<double>>(&column.points)) {
        for (const double number : *numbers)
            cells.push_back(number_shown(std::abs(number) < 1e-6 ? 0.0 : number, language));
        return cells;
    }
    for (std::size_t row = 0; const auto* said_one = answers::words_at(column, row); ++row)
        cells.push_back(plain(*said_one));
    return cells;
}

// A column as it is printed: its heading, then a cell a row.
struct Printed {
    std::string heading;
    std::vector<std::string> cells;
};

// "stored in the packs [Wh]"
std::string heading_of(const answers::Column& column) {
    const std::string unit = unit_shown(column.unit);
    return plain(column.heading) + (unit.empty() ? "" : " [" + unit + "]");
}

std::vector<Printed> printed(const answers::Series& series, const words::Language& language) {
    std::vector<Printed> columns;
    for (const auto& column : series.columns)
        columns.push_back({heading_of(column), cells_of(column, language)});
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

// As wide as they like, where what is shortened anyway gives up what the last needs; else as narrow
// as their cells are, with headings over several lines; empty where the page does not hold that
// either.
std::vector<int> widths_on(int page, const std::vector<Printed>& columns) {
    constexpr int narrowest_last = 6;
    std::vector<int> liked;
    std::vector<int> narrow;
    for (const auto& column : columns) {
        const int cells = widest_of(column.cells);
        liked.push_back(std::min(std::max(cells, width_of(column.heading)), page / 2));
        narrow.push_back(std::min(std::max(cells, longest_word_of(column.heading)), page / 2));
    }
    const int of_last = std::clamp(widest_of(columns.back().cells), narrowest_last, 8);  // wrapped
    const int missing = all_but_last(liked) + of_last - page;
    const auto widest = std::max_element(liked.begin(), liked.end() - 1);
    if (missing > 0 && liked.size() > 1 && *widest == page / 2 && missing < page / 8)
        *widest -= missing;
    if (all_but_last(liked) + of_last <= page) return liked;
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
    page.heading(plain(series.title));
    const auto columns = printed(series, page.look.language);
    if (columns.empty()) return;
    const auto widths = widths_on(page.look.width, columns);
    if (widths.empty() && series.brief) return write_in_words(page, columns);
    if (widths.empty()) {
        page.paragraph(
            page.own(said<"This table is wider than the page; --as json has it, and --as csv the "
                          "first table of an answer.">()));
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

// A picture made of lines, below a blank one.
void write_drawn(Page& page, const std::vector<std::string>& drawn) {
    page.line();
    for (const auto& line : drawn)
        page.line(line);
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

void write_key_of_starts(Page& page) {
    page.line();
    page.line(page.own(
        page.look.ascii
            ? said<"Share of each limit that a start uses: # surely  = likely  - at most, | "
                   "limit">()
            : said<"Share of each limit that a start uses: █ surely  ▓ likely  ░ at most, │ the "
                   "limit">()));
}

// ---- The exhibits.

// One overload a kind of exhibit.
struct Written {
    Page& page;
    const answers::Answer& answer;

    void operator()(const answers::DaysChart* one) const { write_picture(page, *one); }
    void operator()(const answers::BuildsView*) const {}  // sentences and tables have the chances
    void operator()(const answers::BarChart* one) const {
        write_drawn(page, drawn_bars(*one, page.look));
    }
    void operator()(const answers::DayCurves* one) const {
        write_drawn(page, drawn_curves(*one, page.look));
    }
    // A block for each: its bars, and the course of the motor. The first tells what bars mean.
    void operator()(const answers::StartChart* one) const {
        constexpr std::size_t bars_on_a_screen = 4;
        if (one == &answer.starts.front()) write_key_of_starts(page);
        write_drawn(page, start_plot(*one, page.look.full ? 0 : bars_on_a_screen, page.look));
    }
    void operator()(const answers::WiringDiagram*) const {}  // its tables have every link
    void operator()(const answers::Account* one) const { write_account(page, *one); }
    void operator()(const answers::Series* one) const {
        const bool picture_says_it = answer.days.has_value();
        if (!picture_says_it && (one->brief || page.look.full)) write_table(page, *one);
    }
};

// Where no picture and no table says them better.
bool has_values_on_a_screen(const answers::Answer& answer) {
    return !answer.days && !answer.wiring && answer.bars.empty() && answer.question != "start";
}

// ---- Findings and what stands behind the answer.

words::Said sign_of(Severity severity) {
    switch (severity) {
        case Severity::stop:
            return said<"STOP">();
        case Severity::caution:
            return said<"Caution">();
        case Severity::note:
            return said<"Note">();
    }
    return {};
}

// As wide as its widest word and a space, so that the words behind it begin below each other.
int signs_width(const Look& look) {
    int widest = 0;
    for (const auto severity : {Severity::stop, Severity::caution, Severity::note})
        widest = std::max(widest, width_of(in(look, sign_of(severity))));
    return widest + 1;
}

Ink ink_of(Severity severity) {
    return severity == Severity::stop      ? Ink::stop
           : severity == Severity::caution ? Ink::caution
                                           : Ink::plain;
}

std::string place_and_time(const answers::PinnedFinding& pinned) {
    const std::string where = plain(pinned.finding.where);
    const std::string when = plain(pinned.when);
    return when.empty() || where.empty() ? when + where : when + ", " + where;
}

// Nobody may have to ask for more to learn what is dangerous or fails.
bool is_urgent(const answers::PinnedFinding& pinned) {
    return pinned.finding.severity != Severity::note;
}

void write_finding(Page& page, const answers::PinnedFinding& pinned) {
    const auto& finding = pinned.finding;
    const std::string where = place_and_time(pinned);
    const int sign = signs_width(page.look);
    const bool whole = page.look.full || is_urgent(pinned);
    page.paragraph((where.empty() ? "" : where + ": ") + plain(finding.text),
                   padded(page.own(sign_of(finding.severity)), sign), ink_of(finding.severity),
                   whole ? 1000 : 2);
    const std::string indent = spaces(sign);
    if (whole && !finding.mend.empty()) {
        page.paragraph(plain(finding.mend), indent + "-> ");
    }
    if (page.look.full && !finding.source.empty()) {
        page.paragraph(page.own(said<"source: {source}">(finding.source)), indent, Ink::faint);
    }
}

// What a screen shows of the findings: each stop, and a few of the rest.
constexpr std::size_t most_cautions_on_a_screen = 5;
constexpr std::size_t most_notes_on_a_screen = 3;

struct Findings {
    std::vector<const answers::PinnedFinding*> urgent;
    std::vector<const answers::PinnedFinding*> notes;
    std::size_t left_out = 0;
};

Findings findings_of(const answers::Answer& answer, bool full) {
    Findings shown;
    std::size_t cautions = 0;
    for (const auto& each : answer.findings) {
        const bool urgent = is_urgent(each);
        if (each.finding.severity == Severity::caution) ++cautions;
        const bool too_many = urgent ? cautions > most_cautions_on_a_screen &&
                                           each.finding.severity == Severity::caution
                                     : shown.notes.size() >= most_notes_on_a_screen;
        if (!full && too_many)
            ++shown.left_out;
        else
            (urgent ? shown.urgent : shown.notes).push_back(&each);
    }
    return shown;
}

void write_findings(Page& page, const std::vector<const answers::PinnedFinding*>& findings) {
    if (findings.empty()) return;
    page.line();
    for (const auto* each : findings)
        write_finding(page, *each);
}

// Pictures, what is urgent, the figures, the tables.
void write_exhibits(Page& page, const answers::Answer& answer, const Findings& findings) {
    const auto exhibits = answers::exhibits_of(answer);
    const auto is_drawn = [](const answers::Exhibit& exhibit) {
        return !std::holds_alternative<const answers::Account*>(exhibit) &&
               !std::holds_alternative<const answers::Series*>(exhibit);
    };
    const auto is_table = [](const answers::Exhibit& exhibit) {
        return std::holds_alternative<const answers::Series*>(exhibit);
    };
    const Written write{page, answer};
    const auto figures = std::ranges::find_if_not(exhibits, is_drawn);
    const auto tables = std::ranges::find_if(exhibits, is_table);
    for (auto one = exhibits.begin(); one != figures; ++one)
        std::visit(write, *one);
    write_findings(page, findings.urgent);
    for (auto one = figures; one != tables; ++one)
        std::visit(write, *one);
    if (!page.look.full && has_values_on_a_screen(answer)) {
        page.line();
        write_values(page, answer.values, 0);
    }
    for (auto one = tables; one != exhibits.end(); ++one)
        std::visit(write, *one);
}

void write_counts(Page& page, const answers::Answer& answer, std::size_t findings_left_out) {
    std::vector<words::Said> rest;
    if (findings_left_out > 0) {
        rest.push_back(said_of<"{n} more finding", "{n} more findings">(findings_left_out));
    }
    if (!answer.assumptions.empty()) {
        rest.push_back(said_of<"{n} assumption", "{n} assumptions">(answer.assumptions.size()));
    }
    if (!answer.working.empty()) {
        rest.push_back(said<"the working">());
    }
    page.line();
    using words::List;
    page.paragraph(page.own(rest.empty() ? said<"Add --full to see everything.">()
                                         : said<"Add --full to see {what}.">(
                                               words::joined(std::move(rest), List::Joint::all))));
    std::vector<words::Said> hazards;
    for (const auto& caution : answer.cautions)
        hazards.push_back(caution.hazard);
    if (hazards.empty()) return;
    page.paragraph(page.own(
        said<"Beware: {hazards}.">(words::joined(std::move(hazards), List::Joint::comma))));
}

void write_working(Page& page, const answers::Answer& answer) {
    words::Said section;
    for (const auto& row : answer.working) {
        if (row.section != section) {
            section = row.section;
            page.heading(page.own(said<"Working: {section}">(section)));
        }
        std::string behind = row.formula;
        if (!row.source.empty()) {
            behind += (behind.empty() ? "" : "; ") + plain(row.source);
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
        page.heading(page.own(said<"All figures">()));
        write_values(page, answer.values, 0);
    }
    write_working(page, answer);
    if (!answer.assumptions.empty()) {
        page.heading(page.own(said<"Assumed, because the file is silent">()));
    }
    for (const auto& assumption : answer.assumptions) {
        page.paragraph(fmt::format("{}: {} ({})", plain(scenario::place_of(assumption)),
                                   plain(assumption.text), plain(assumption.source)),
                       "- ");
    }
    if (!answer.cautions.empty()) {
        page.heading(page.own(said<"Beware">()));
    }
    for (const auto& caution : answer.cautions) {
        page.paragraph(fmt::format("{}: {} ({})", plain(caution.hazard), plain(caution.text),
                                   plain(caution.source)),
                       "- ");
    }
}

}  // namespace

std::string in_text(const answers::Answer& unspoken, const Look& look) {
    const answers::Answer answer = spoken(unspoken, look);
    Page page{.look = look};
    page.look.width = std::max(look.width, narrowest_page);
    write_top(page, answer);
    const auto findings = findings_of(answer, look.full);
    write_exhibits(page, answer, findings);
    write_findings(page, findings.notes);
    if (look.full) {
        write_the_rest(page, answer);
    } else {
        write_counts(page, answer, findings.left_out);
    }
    page.line();
    page.paragraph(plain(answer.closing));
    return look.ascii ? in_ascii(page.text) : page.text;
}

}  // namespace faces
