#include "report/sheet.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "report/wiring_svg.hpp"
#include "units/plain_number.hpp"

namespace report {

namespace {

constexpr std::string_view style =
    "@page{margin:12mm}body{font:12pt sans-serif;color:#000;background:#fff;max-width:60em;"
    "margin:0 auto;padding:1em}h1{font-size:20pt;margin:0 0 .3em}h2{font-size:14pt;"
    "margin:1.2em 0 .3em}.answer{font-size:15pt}table{border-collapse:collapse;width:100%;"
    "font-size:10.5pt}th,td{border:1px solid #000;padding:.25em .4em;text-align:left;"
    "vertical-align:top}thead{display:table-header-group}tr,li{break-inside:avoid}"
    ".stop{font-weight:bold}svg{width:100%;height:auto}.small{font-size:9.5pt}";

std::string cell_of(const Column& column, std::size_t row) {
    if (const auto* words = std::get_if<std::vector<std::string>>(&column.points)) {
        return in_xml((*words)[row]);
    }
    return units::plain_number(std::get<std::vector<double>>(column.points)[row]);
}

std::size_t rows_of(const Column& column) {
    return std::visit([](const auto& points) { return points.size(); }, column.points);
}

std::string table_of(const Series& series) {
    std::string html = fmt::format("<h2>{}</h2>\n<table><thead><tr>", in_xml(series.title));
    for (const Column& column : series.columns) {
        html += fmt::format(
            "<th scope=\"col\">{}{}</th>", in_xml(column.heading),
            column.unit.empty() || column.unit == "1" ? "" : " [" + in_xml(column.unit) + "]");
    }
    html += "</tr></thead><tbody>\n";
    for (std::size_t row = 0; !series.columns.empty() && row < rows_of(series.columns.front());
         ++row) {
        html += "<tr>";
        for (const Column& column : series.columns) {
            html += "<td>" + cell_of(column, row) + "</td>";
        }
        html += "</tr>\n";
    }
    return html + "</tbody></table>\n";
}

std::string finding_in_html(const PinnedFinding& pinned) {
    const auto& finding = pinned.finding;
    const bool stop = finding.severity == scenario::Severity::stop;
    std::string word(word_for(finding.severity));
    std::ranges::transform(word, word.begin(), [](unsigned char letter) {
        return static_cast<char>(std::toupper(letter));
    });
    return fmt::format("<li class=\"{}\">{} {}: {}{}{}</li>\n", stop ? "stop" : "other", word,
                       in_xml(finding.where.empty() ? "unit" : finding.where), in_xml(finding.text),
                       finding.mend.empty() ? "" : " &rarr; " + in_xml(finding.mend),
                       finding.source.empty()
                           ? ""
                           : " <span class=\"small\">(" + in_xml(finding.source) + ")</span>");
}

}  // namespace

std::string in_html(const Answer& answer) {
    const std::string title = answer.title.empty() ? answer.question : answer.title;
    std::string html = fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>{0}: {1}</title>\n"
        "<style>{2}</style></head><body>\n<h1>{0}</h1>\n",
        in_xml(title), in_xml(answer.question), style);
    for (const std::string& sentence : answer.sentences) {
        html += fmt::format("<p class=\"answer\">{}</p>\n", in_xml(sentence));
    }
    if (answer.wiring) {
        html += in_svg(*answer.wiring, title);
    }
    for (const Series& series : answer.series) {
        if (series.brief || series.name == "links" || series.name == "ways") {
            html += table_of(series);
        }
    }
    html += "<h2>Findings</h2>\n<ul>\n";
    for (const PinnedFinding& pinned : answer.findings) {
        html += finding_in_html(pinned);
    }
    html += "</ul>\n<h2>Assumed, because the file is silent</h2>\n<ul class=\"small\">\n";
    for (const auto& assumption : answer.assumptions) {
        html += fmt::format("<li>{}: {} ({})</li>\n", in_xml(assumption.where),
                            in_xml(assumption.text), in_xml(assumption.source));
    }
    html += "</ul>\n<h2>Beware</h2>\n<ul>\n";
    for (const Caution& caution : answer.cautions) {
        html +=
            fmt::format("<li><b>{}.</b> {}</li>\n", in_xml(caution.hazard), in_xml(caution.text));
    }
    return html + fmt::format("</ul>\n<p><b>{}</b></p>\n</body></html>\n", in_xml(answer.closing));
}

}  // namespace report
