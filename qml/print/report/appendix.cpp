#include "print/report/appendix.hpp"

#include "faces/paper.hpp"
#include "print/report/tables.hpp"

namespace printing {

namespace on_paper = faces::paper;

namespace {

using answers::Answer;
using words::said;

// Rows that were not told before.
QList<QStringList> new_rows(const Report& report, const Answer& answer, QList<QStringList>& told) {
    QList<QStringList> rows;
    for (const auto& step : answer.working) {
        const QStringList row{report.in_words(step.section), report.in_words(step.quantity),
                              report.in_words(step.value.shown), in_qt(step.formula),
                              report.in_words(step.source)};
        if (told.contains(row)) continue;
        told << row;
        rows << row;
    }
    return rows;
}

}  // namespace

void add_build(Report& report, const std::vector<const Answer*>& answers) {
    for (const Answer* answer : answers) {
        if (!answer->wiring || answer->wiring->boxes.empty()) continue;
        report.flow.turn();
        report.begin(on_paper::the_build(), in_report::heading, on_paper::the_build(), 0.0, 40.0);
        for (const Block& piece :
             wiring_plots(*answer->wiring, report.flow.room(), report.language))
            report.flow.add(piece, 4.0);
        report.flow.turn();
    }
}

bool stands_behind(const Plot& plot, const Answer& answer) {
    return plot.name.startsWith(u"course of ") ||
           (answer.builds && answer.builds->views.size() > 1 && plot.name == u"builds by price");
}

void add_further(Report& report, const std::vector<const Answer*>& answers) {
    bool begun = false;
    const auto begin = [&] {
        if (!begun)
            report.begin(on_paper::further(), in_report::sentence, on_paper::further(), 14.0, 120.0);
        begun = true;
    };
    for (const Answer* answer : answers) {
        for (const Plot& plot : plots_of(*answer, report.flow.width(), report.language)) {
            if (!stands_behind(plot, *answer)) continue;
            begin();
            report.flow.add(plot.title, in_report::heading, 8.0, 0.0, plot.block.height);
            report.flow.add(plot.block, 2.0);
        }
        for (const auto& series : answer->series) {
            if (!is_told(series) || !stands_behind(series)) continue;
            begin();
            add_series(report, series);
        }
    }
}

void add_working(Report& report, const std::vector<const Answer*>& answers) {
    QList<QStringList> told;
    const QStringList headings =
        report.row({on_paper::section_of_working(), on_paper::quantity(), said<"value">(),
                    on_paper::formula(), on_paper::value_from()});
    for (const Answer* answer : answers) {
        const auto rows = new_rows(report, *answer, told);
        if (rows.isEmpty()) continue;
        const bool first = rows.size() == told.size();
        if (first)
            report.begin(on_paper::working(), in_report::sentence, on_paper::working(), 14.0, 80.0);
        report.add(on_paper::name_of(answer->question), in_report::heading, 8.0, 0.0, 40.0);
        report.flow.add(headings, rows, in_report::table);
    }
}

void add_assumptions(Report& report, const std::vector<const Answer*>& answers) {
    QList<QStringList> rows;
    for (const Answer* answer : answers)
        for (const auto& assumption : answer->assumptions)
            if (const QStringList row =
                    report.row({scenario::place_of(assumption), assumption.text, assumption.source});
                !rows.contains(row))
                rows << row;
    if (rows.isEmpty()) return;
    report.begin(said<"Assumed, because the file is silent">(), in_report::sentence,
                 on_paper::assumptions(), 14.0, 60.0);
    report.flow.add(report.row({said<"key">(), on_paper::assumed(), on_paper::source()}), rows,
                    in_report::table);
}

}  // namespace printing
