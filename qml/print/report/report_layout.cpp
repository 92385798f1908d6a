#include "print/report/report_layout.hpp"

#include <algorithm>

#include "faces/paper.hpp"
#include "print/report/appendix.hpp"
#include "print/plots.hpp"
#include "print/report/report.hpp"
#include "print/report/tables.hpp"

namespace printing {

namespace on_paper = faces::paper;

namespace {

using answers::Answer;
using answers::Series;
using words::said;

using namespace in_report;

words::Said sign_of(scenario::Severity severity) {
    switch (severity) {
        case scenario::Severity::stop:
            return said<"STOP">();
        case scenario::Severity::caution:
            return said<"Caution">();
        case scenario::Severity::note:
            break;
    }
    return said<"Note">();
}

// "Caution, Thursday 03:00, inverter: it switches off."
words::Said with_place_and_time(const answers::PinnedFinding& pinned) {
    const auto& finding = pinned.finding;
    return said<"{place}: {fault}">(
        words::joined({sign_of(finding.severity), pinned.when, finding.where},
                      words::List::Joint::comma),
        finding.text);
}

// What mends it, and the source of the rule.
QString mend_and_source(const Report& report, const scenario::Finding& finding) {
    QStringList parts;
    if (!finding.mend.empty()) parts << QStringLiteral("→ ") + report.in_words(finding.mend);
    if (!finding.source.empty())
        parts << QLatin1Char('(') + report.in_words(finding.source) + QLatin1Char(')');
    return parts.join(QLatin1Char(' '));
}

// What an earlier chapter told is not told again.
void add_findings(Report& report, const Answer& answer, QStringList& told) {
    bool begun = false;
    for (const auto& pinned : answer.findings) {
        const QString words = report.in_words(with_place_and_time(pinned));
        if (told.contains(words)) continue;
        told << words;
        if (!begun) report.add(said<"Findings">(), heading, 8.0, 0.0, 30.0);
        begun = true;
        const bool stop = pinned.finding.severity == scenario::Severity::stop;
        report.flow.add(words, stop ? strong : body, 2.0);
        report.flow.add(mend_and_source(report, pinned.finding), body, 0.0, 12.0);
    }
}

void add_plots(Report& report, const Answer& answer) {
    Flow& flow = report.flow;
    for (const Plot& plot : plots_of(answer, flow.width(), report.language)) {
        if (plot.name == u"wiring" || stands_behind(plot, answer)) continue;
        flow.add(plot.title, heading, 8.0, 0.0, plot.block.height);
        flow.add(plot.block, 2.0);
    }
}

void add_cautions(Report& report, const std::vector<const Answer*>& answers) {
    QStringList told;
    report.add(said<"Beware">(), sentence, 14.0, 0.0, 40.0);
    for (const Answer* answer : answers)
        for (const auto& caution : answer->cautions) {
            const QString hazard = report.in_words(caution.hazard);
            if (told.contains(hazard)) continue;
            told << hazard;
            report.add(said<"{place}: {fault}">(caution.hazard,
                                                words::joined({caution.text, caution.source},
                                                              words::List::Joint::space)),
                       body, 3.0);
        }
    report.add(answers::closing_line(), strong, 8.0);
}

void add_answer(Report& report, const Answer& answer, QStringList& told) {
    for (std::size_t number = 0; number < answer.sentences.size(); ++number)
        report.add(answer.sentences[number], number == 0 ? sentence : body, 3.0);
    if (answer.defect) report.add(on_paper::fault(*answer.defect), strong, 3.0);
    add_plots(report, answer);
    add_findings(report, answer, told);
    for (const Series& series : answer.series)
        if (is_told(series) && !stands_behind(series)) add_series(report, series);
}

// "Contents: How long 1 · How many 3 · Working 9".
void add_contents(Report& report, const Headings& headings) {
    QStringList told;
    for (const Heading& each : headings)
        told << QStringLiteral("%1 %2").arg(each.name).arg(each.page);
    report.flow.add(QStringLiteral("%1: %2").arg(report.in_words(on_paper::contents()),
                                                 told.join(QStringLiteral(" · "))),
                    body, 4.0);
}

// What stands at the foot of each page.
QString foot_of(const QString& name, const std::string& made) {
    return QStringLiteral("%1; %2").arg(name, in_qt(made));
}

// The chapters, then what stands behind them. The contents tell the pages of a report that was set
// before.
Report set(const Book& book, Paper paper, const words::Language& language,
           const Headings& contents) {
    Report report{Flow(size_of(paper), foot_of(in_qt(book.title), book.made)), language};
    report.flow.add(in_qt(book.title), title);
    report.flow.add(in_qt(book.made), body);
    add_contents(report, contents);
    std::vector<const Answer*> answers;
    QStringList told;
    for (const Chapter& chapter : book.chapters) {
        report.begin(chapter.asks, asked, on_paper::name_of(chapter.question), 14.0, 60.0);
        if (chapter.answer) {
            add_answer(report, *chapter.answer, told);
            answers.push_back(&*chapter.answer);
        } else {
            report.add(chapter.why_not, body, 3.0);
        }
    }
    add_cautions(report, answers);
    report.flow.new_page();
    add_build(report, answers);
    add_further(report, answers);
    add_working(report, answers);
    add_assumptions(report, answers);
    return report;
}

}  // namespace

QList<Sheet> lay_out(const Book& book, Paper paper, const words::Language& language) {
    constexpr int most_times = 4;  // longer numbers of pages may take a line more
    Headings contents;
    for (int time = 0; time < most_times; ++time) {
        const Report report = set(book, paper, language, contents);
        if (report.headings == contents) return report.flow.pages();
        contents = report.headings;
    }
    return set(book, paper, language, contents).flow.pages();
}

QList<Sheet> lay_out_wiring(const Answer& wiring, const std::string& made, Paper paper,
                            const words::Language& language) {
    const words::Said unit = wiring.title.empty() ? on_paper::wiring() : words::Said(wiring.title);
    const QString name = in_qt(language, on_paper::wiring_of(unit));
    Report report{Flow(size_of(paper).transposed(), foot_of(name, made)), language};
    report.flow.add(name, title);
    if (wiring.wiring)
        for (const Block& piece : wiring_plots(*wiring.wiring, report.flow.room(), language))
            report.flow.add(piece, 4.0);
    QStringList told;
    add_answer(report, wiring, told);
    add_further(report, {&wiring});
    add_working(report, {&wiring});
    add_assumptions(report, {&wiring});
    add_cautions(report, {&wiring});
    return report.flow.pages();
}

}  // namespace printing
