#include "print/report_layout.hpp"

#include <algorithm>
#include <set>

#include <fmt/format.h>

#include "print/flow.hpp"
#include "print/plots.hpp"

namespace printing {

namespace {

using answers::Answer;
using answers::Series;

constexpr Type body{.size = 10.0};
constexpr Type strong{.size = 10.0, .bold = true};
constexpr Type sentence{.size = 13.0, .bold = true};
constexpr Type heading{.size = 11.0, .bold = true};
constexpr Type asked{.size = 12.0};
constexpr Type title{.size = 18.0, .bold = true};
constexpr Type table_type{.size = 9.0};
constexpr double widest_upright = 600.0;  // points, of a page that stands upright
constexpr std::size_t most_rows = 60;     // longer tables are for --as csv

std::string cell_of(const answers::Column& column, std::size_t row) {
    if (const auto* words = std::get_if<std::vector<std::string>>(&column.points))
        return (*words)[row];
    return fmt::format("{:.4g}", std::get<std::vector<double>>(column.points)[row]);
}

std::size_t rows_of(const Series& series) {
    return series.columns.empty() ? 0
                                  : std::visit([](const auto& points) { return points.size(); },
                                               series.columns.front().points);
}

void add_series(Flow& flow, const Series& series) {
    std::vector<std::string> headings;
    for (const auto& column : series.columns)
        headings.push_back(column.heading + (column.unit.empty() || column.unit == "1"
                                                 ? ""
                                                 : " [" + column.unit + "]"));
    std::vector<std::vector<std::string>> rows;
    const std::size_t all = rows_of(series);
    for (std::size_t row = 0; row < std::min(all, most_rows); ++row) {
        rows.emplace_back();
        for (const auto& column : series.columns)
            rows.back().push_back(cell_of(column, row));
    }
    if (rows.empty()) return;
    flow.add(series.title, heading, 10.0, 0.0, 40.0);
    flow.add(headings, rows, table_type);
    if (all > most_rows)
        flow.add(fmt::format("and {} more rows: --as csv has them.", all - most_rows), table_type);
}

void add_findings(Flow& flow, const Answer& answer) {
    if (answer.findings.empty()) return;
    flow.add("Findings", heading, 10.0, 0.0, 30.0);
    for (const auto& pinned : answer.findings) {
        const auto& finding = pinned.finding;
        const std::string word = finding.severity == scenario::Severity::stop      ? "STOP"
                                 : finding.severity == scenario::Severity::caution ? "Caution"
                                                                                   : "Note";
        flow.add(fmt::format("{}{}{}: {}", word, pinned.when.empty() ? "" : " " + pinned.when,
                             finding.where.empty() ? "" : ", " + finding.where, finding.text),
                 finding.severity == scenario::Severity::stop ? strong : body, 3.0);
        if (!finding.mend.empty()) flow.add("→ " + finding.mend, body, 0.0, 12.0);
        if (!finding.source.empty()) flow.add(finding.source, table_type, 0.0, 12.0);
    }
}

void add_working(Flow& flow, const Answer& answer) {
    if (answer.working.empty()) return;
    flow.add("Working", heading, 10.0, 0.0, 40.0);
    std::vector<std::vector<std::string>> rows;
    for (const auto& row : answer.working)
        rows.push_back({row.section, row.quantity, row.value.shown, row.formula, row.source});
    flow.add({"part", "quantity", "value", "formula", "from"}, rows, table_type);
}

void add_assumptions(Flow& flow, const Answer& answer) {
    if (answer.assumptions.empty()) return;
    flow.add("Assumed, because the file is silent", heading, 10.0, 0.0, 30.0);
    std::vector<std::vector<std::string>> rows;
    for (const auto& assumption : answer.assumptions)
        rows.push_back({assumption.where, assumption.text, assumption.source});
    flow.add({"key", "taken", "source"}, rows, table_type);
}

// A build is much wider than it is tall: its page lies across.
void add_wiring_across(Flow& flow, const Answer& answer, const QString& of) {
    flow.turn();
    flow.add(of.toStdString(), heading);
    flow.add(wiring_plot(*answer.wiring, flow.width()), 2.0);
    flow.turn();
}

void add_plots(Flow& flow, const Answer& answer) {
    for (const Plot& plot : plots_of(answer, flow.width())) {
        if (plot.name == u"wiring" && flow.width() < widest_upright) {
            add_wiring_across(flow, answer, plot.title);
            continue;
        }
        flow.add(plot.title.toStdString(), heading, 10.0, 0.0, plot.block.height);
        flow.add(plot.block, 2.0);
    }
}

void add_cautions(Flow& flow, const std::vector<const Answer*>& answers) {
    std::set<std::string> told;
    flow.add("Beware", sentence, 14.0, 0.0, 40.0);
    for (const Answer* answer : answers)
        for (const auto& caution : answer->cautions)
            if (told.insert(caution.hazard).second)
                flow.add(fmt::format("{}: {} {}", caution.hazard, caution.text, caution.source),
                         body, 3.0);
    flow.add(std::string(answers::closing_line), strong, 8.0);
}

void add_answer(Flow& flow, const Answer& answer) {
    for (std::size_t number = 0; number < answer.sentences.size(); ++number)
        flow.add(answer.sentences[number], number == 0 ? sentence : body, 3.0);
    if (answer.defect) flow.add("A fault of this program: " + *answer.defect, strong, 3.0);
    add_plots(flow, answer);
    add_findings(flow, answer);
    for (const Series& series : answer.series)
        if (series.brief || series.name == "loads" || series.name == "links")
            add_series(flow, series);
    add_working(flow, answer);
    add_assumptions(flow, answer);
}

}  // namespace

QList<Sheet> lay_out(const Book& book, Paper paper) {
    Flow flow(size_of(paper), book.title + "; " + book.made);
    flow.add(book.title, title);
    flow.add(book.made, body);
    std::vector<const Answer*> answers;
    for (const Chapter& chapter : book.chapters) {
        flow.add(chapter.asks, asked, 18.0, 0.0, 60.0);
        if (chapter.answer) {
            add_answer(flow, *chapter.answer);
            answers.push_back(&*chapter.answer);
        } else {
            flow.add(chapter.why_not, body, 3.0);
        }
    }
    add_cautions(flow, answers);
    return flow.pages();
}

QList<Sheet> lay_out_wiring(const Answer& wiring, const std::string& made, Paper paper) {
    const std::string name = wiring.title.empty() ? "Wiring" : wiring.title;
    Flow flow(size_of(paper).transposed(), name + ", wiring; " + made);
    flow.add(name + ", wiring", title);
    add_answer(flow, wiring);
    add_cautions(flow, {&wiring});
    return flow.pages();
}

}  // namespace printing
