#include "faces/sheet.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "answers/exhibits.hpp"
#include "faces/page.hpp"
#include "faces/pictures/pictures.hpp"
#include "faces/pictures/wiring_svg.hpp"
#include "faces/spoken.hpp"

namespace faces {

namespace {

using words::said;

constexpr std::string_view style =
    "@page{margin:12mm}*{box-sizing:border-box}body{font:1rem/1.4 sans-serif;color:#1b1b1b;"
    "background:#fff;max-width:56rem;margin:0 auto;padding:1rem}h1{font-size:1.5rem;"
    "margin:0 0 .3em}h2{font-size:1.15rem;margin:1.4em 0 .3em}.answer{font-size:1.2rem;"
    "margin:.3em 0}.wide{overflow-x:auto}table{border-collapse:collapse;width:100%;"
    "font-size:.88rem}th,td{border:1px solid #888;padding:.25em .4em;text-align:left;"
    "vertical-align:top}td.short{white-space:nowrap}thead{display:table-header-group}"
    "tr,li{break-inside:avoid}"
    "li{margin:.35em 0;overflow-wrap:anywhere}ul{padding-left:1.2em}.stop{font-weight:bold}"
    "svg{display:block;width:100%;height:auto}.paper{overflow-x:auto}.paper svg{width:auto;"
    "min-width:100%}.small{font-size:.85rem}"
    "summary{min-height:48px;padding:.7em 0;font-size:1.15rem;font-weight:bold}"
    "@media(prefers-color-scheme:dark){body{color:#eee;background:#000}.stop{color:#ffc878}"
    "th,td{border-color:#555}.paper{background:#fff}}"
    "@media print{body{font-size:10pt;color:#000;background:#fff;padding:0;max-width:none}"
    ".stop{color:#000}.aside{display:none}.small{font-size:8pt}.paper svg{width:100%}"
    "td.short{white-space:normal}}";

// Characters of a cell that stays on one line: "39.2 mV", "2026-01-14".
constexpr int short_cell = 12;

std::string cell_of(const answers::Column& column, std::size_t row,
                    const words::Language& language) {
    if (const words::Said* said_one = answers::words_at(column, row)) {
        const bool is_short = width_of(*said_one) <= short_cell;
        return (is_short ? "<td class=\"short\">" : "<td>") + in_xml(plain(*said_one)) + "</td>";
    }
    return "<td>" + number_shown(std::get<std::vector<double>>(column.points)[row], language) +
           "</td>";
}

std::size_t rows_of(const answers::Column& column) {
    return std::visit([](const auto& points) { return points.size(); }, column.points);
}

std::string heading_of(const answers::Column& column) {
    const std::string unit = unit_shown(column.unit);
    return "<th scope=\"col\">" +
           in_xml(plain(column.heading) + (unit.empty() ? "" : " [" + unit + "]")) + "</th>";
}

std::string table_of(const answers::Series& series, const words::Language& language) {
    std::string html = fmt::format("<h2>{}</h2>\n<div class=\"wide\"><table><thead><tr>",
                                   in_xml(plain(series.title)));
    for (const answers::Column& column : series.columns) {
        html += heading_of(column);
    }
    html += "</tr></thead><tbody>\n";
    for (std::size_t row = 0; !series.columns.empty() && row < rows_of(series.columns.front());
         ++row) {
        html += "<tr>";
        for (const answers::Column& column : series.columns) {
            html += cell_of(column, row, language);
        }
        html += "</tr>\n";
    }
    return html + "</tbody></table></div>\n";
}

words::Said word_for(scenario::Severity severity) {
    switch (severity) {
        case scenario::Severity::stop:
            return said<"STOP">();
        case scenario::Severity::caution:
            return said<"CAUTION">();
        case scenario::Severity::note:
            return said<"NOTE">();
    }
    return {};
}

std::string finding_in_html(const answers::PinnedFinding& pinned, const words::Language& language) {
    const auto& finding = pinned.finding;
    const bool stop = finding.severity == scenario::Severity::stop;
    return fmt::format(
        "<li class=\"{}\">{} {}: {}{}{}</li>\n", stop ? "stop" : "other",
        in_xml(words::in(language, word_for(finding.severity))),
        in_xml(finding.where.empty() ? words::in(language, said<"unit">()) : plain(finding.where)),
        in_xml(plain(finding.text)),
        finding.mend.empty() ? "" : " → " + in_xml(plain(finding.mend)),
        finding.source.empty()
            ? ""
            : " <span class=\"small\">(" + in_xml(plain(finding.source)) + ")</span>");
}

// The hours of the plot as a table, folded until it is asked for.
std::string hours_of(const answers::Answer& answer, const words::Language& language) {
    const auto hours = std::ranges::find(answer.series, "hours", &answers::Series::name);
    if (!answer.days || hours == answer.series.end()) return {};
    return fmt::format("<details class=\"aside\"><summary>{}</summary>\n{}</details>\n",
                       in_xml(words::in(language, said<"Hour by hour">())),
                       table_of(*hours, language));
}

// What each pin of the plot says.
std::string pins_of(const answers::DaysChart& chart) {
    if (chart.markers.empty()) return {};
    std::string html = "<ul class=\"small\">\n";
    for (const answers::Marker& marker : chart.markers) {
        html += fmt::format("<li><b>{}</b> {}</li>\n", marker.sign, in_xml(plain(marker.label)));
    }
    return html + "</ul>\n";
}

std::string head_of(const std::string& title, const answers::Answer& answer,
                    const words::Language& language) {
    return fmt::format(
        "<!DOCTYPE html>\n<html lang=\"{3}\"><head><meta charset=\"utf-8\"/><meta "
        "name=\"viewport\" "
        "content=\"width=device-width,initial-scale=1\"/><meta name=\"color-scheme\" "
        "content=\"light dark\"/><title>{0}: {1}</title>\n"
        "<style>{2}</style></head><body>\n<h1>{0}</h1>\n",
        in_xml(title), in_xml(answer.question), style, language.code());
}

// One overload a kind of exhibit.
struct OnThePage {
    const answers::Answer& answer;
    const std::string& title;
    const words::Language& language;

    std::string operator()(const answers::DaysChart* one) const {
        return drawn(one) + pins_of(*one);
    }
    std::string operator()(const answers::BuildsView* one) const { return drawn(one); }
    std::string operator()(const answers::BarChart* one) const { return drawn(one); }
    std::string operator()(const answers::DayCurves* one) const { return drawn(one); }
    std::string operator()(const answers::StartChart* one) const { return drawn(one); }
    std::string operator()(const answers::WiringDiagram* one) const {
        return "<div class=\"paper\">" + in_svg(*one, title, language) + "</div>\n";
    }
    std::string operator()(const answers::Account*) const { return {}; }  // the hours add up to it
    std::string operator()(const answers::Series* one) const {
        const bool shown = one->brief || one->name == "links" || one->name == "ways";
        return shown ? table_of(*one, language) : std::string();
    }

  private:
    std::string drawn(const answers::Exhibit& one) const {
        const auto drawing = drawing_of(one, answer, language);
        return drawing ? in_svg(*drawing) : std::string();
    }
};

std::string exhibits_in_html(const answers::Answer& answer, const std::string& title,
                             const words::Language& language) {
    std::string html;
    for (const auto& exhibit : answers::exhibits_of(answer))
        html += std::visit(OnThePage{answer, title, language}, exhibit);
    return html;
}

// The heading of a part of the page.
std::string heading(const words::Said& words, const words::Language& language) {
    return "<h2>" + in_xml(words::in(language, words)) + "</h2>\n";
}

std::string findings_of(const answers::Answer& answer, const words::Language& language) {
    if (answer.findings.empty()) return {};
    std::string html = heading(said<"Findings">(), language) + "<ul>\n";
    for (const answers::PinnedFinding& pinned : answer.findings)
        html += finding_in_html(pinned, language);
    return html + "</ul>\n";
}

std::string assumptions_of(const answers::Answer& answer, const words::Language& language) {
    if (answer.assumptions.empty()) return {};
    std::string html =
        fmt::format("<details class=\"aside\"><summary>{}</summary>\n<ul class=\"small\">\n",
                    in_xml(words::in(language, said<"Assumed, because the file is silent">())));
    for (const auto& assumption : answer.assumptions)
        html += fmt::format("<li>{}: {} ({})</li>\n", in_xml(plain(scenario::place_of(assumption))),
                            in_xml(plain(assumption.text)), in_xml(plain(assumption.source)));
    return html + "</ul></details>\n";
}

std::string cautions_of(const answers::Answer& answer, const words::Language& language) {
    if (answer.cautions.empty()) return {};
    std::string html = heading(said<"Beware">(), language) + "<ul>\n";
    for (const answers::Caution& caution : answer.cautions)
        html += fmt::format("<li><b>{}.</b> {}</li>\n", in_xml(plain(caution.hazard)),
                            in_xml(plain(caution.text)));
    return html + "</ul>\n";
}

}  // namespace

std::string in_html(const answers::Answer& unspoken, const words::Language& language) {
    const answers::Answer answer = spoken(unspoken, language);
    const std::string title = answer.title.empty() ? answer.question : answer.title;
    std::string html = head_of(title, answer, language);
    for (const words::Said& sentence : answer.sentences)
        html += fmt::format("<p class=\"answer\">{}</p>\n", in_xml(plain(sentence)));
    html += exhibits_in_html(answer, title, language) + findings_of(answer, language) +
            assumptions_of(answer, language) + hours_of(answer, language) +
            cautions_of(answer, language);
    return html + fmt::format("<p><b>{}</b></p>\n</body></html>\n", in_xml(plain(answer.closing)));
}

}  // namespace faces
