#include "faces/sheet.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "faces/pictures.hpp"
#include "faces/wiring_svg.hpp"
#include "units/plain_number.hpp"

namespace faces {

namespace {

constexpr std::string_view style =
    "@page{margin:12mm}*{box-sizing:border-box}body{font:1rem/1.4 sans-serif;color:#1b1b1b;"
    "background:#fff;max-width:56rem;margin:0 auto;padding:1rem}h1{font-size:1.5rem;"
    "margin:0 0 .3em}h2{font-size:1.15rem;margin:1.4em 0 .3em}.answer{font-size:1.2rem;"
    "margin:.3em 0}.wide{overflow-x:auto}table{border-collapse:collapse;width:100%;"
    "font-size:.88rem}th,td{border:1px solid #888;padding:.25em .4em;text-align:left;"
    "vertical-align:top}thead{display:table-header-group}tr,li{break-inside:avoid}"
    "li{margin:.35em 0;overflow-wrap:anywhere}ul{padding-left:1.2em}.stop{font-weight:bold}"
    "svg{display:block;width:100%;height:auto}.small{font-size:.85rem}"
    "summary{min-height:48px;padding:.7em 0;font-size:1.15rem;font-weight:bold}"
    "@media(prefers-color-scheme:dark){body{color:#eee;background:#000}.stop{color:#ffc878}"
    "th,td{border-color:#555}.paper{background:#fff}}"
    "@media print{body{font-size:10pt;color:#000;background:#fff;padding:0;max-width:none}"
    ".stop{color:#000}.aside{display:none}.small{font-size:8pt}}";

std::string cell_of(const answers::Column& column, std::size_t row) {
    if (const auto* words = std::get_if<std::vector<std::string>>(&column.points)) {
        return in_xml((*words)[row]);
    }
    return units::plain_number(std::get<std::vector<double>>(column.points)[row]);
}

std::size_t rows_of(const answers::Column& column) {
    return std::visit([](const auto& points) { return points.size(); }, column.points);
}

std::string table_of(const answers::Series& series) {
    std::string html =
        fmt::format("<h2>{}</h2>\n<div class=\"wide\"><table><thead><tr>", in_xml(series.title));
    for (const answers::Column& column : series.columns) {
        html += fmt::format(
            "<th scope=\"col\">{}{}</th>", in_xml(column.heading),
            column.unit.empty() || column.unit == "1" ? "" : " [" + in_xml(column.unit) + "]");
    }
    html += "</tr></thead><tbody>\n";
    for (std::size_t row = 0; !series.columns.empty() && row < rows_of(series.columns.front());
         ++row) {
        html += "<tr>";
        for (const answers::Column& column : series.columns) {
            html += "<td>" + cell_of(column, row) + "</td>";
        }
        html += "</tr>\n";
    }
    return html + "</tbody></table></div>\n";
}

std::string finding_in_html(const answers::PinnedFinding& pinned) {
    const auto& finding = pinned.finding;
    const bool stop = finding.severity == scenario::Severity::stop;
    std::string word(answers::word_for(finding.severity));
    std::ranges::transform(word, word.begin(), [](unsigned char letter) {
        return static_cast<char>(std::toupper(letter));
    });
    return fmt::format("<li class=\"{}\">{} {}: {}{}{}</li>\n", stop ? "stop" : "other", word,
                       in_xml(finding.where.empty() ? "unit" : finding.where), in_xml(finding.text),
                       finding.mend.empty() ? "" : " → " + in_xml(finding.mend),
                       finding.source.empty()
                           ? ""
                           : " <span class=\"small\">(" + in_xml(finding.source) + ")</span>");
}

// The hours of the plot as a table, folded until it is asked for.
std::string hours_of(const answers::Answer& answer) {
    const auto hours = std::ranges::find(answer.series, "hours", &answers::Series::name);
    if (!answer.days || hours == answer.series.end()) return {};
    return "<details class=\"aside\"><summary>Hour by hour</summary>\n" + table_of(*hours) +
           "</details>\n";
}

// What each pin of the plot says.
std::string pins_of(const answers::DaysChart& chart) {
    if (chart.markers.empty()) return {};
    std::string html = "<ul class=\"small\">\n";
    for (const answers::Marker& marker : chart.markers) {
        html += fmt::format("<li><b>{}</b> {}</li>\n", marker.sign, in_xml(marker.label));
    }
    return html + "</ul>\n";
}

std::string head_of(const std::string& title, const answers::Answer& answer) {
    return fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><meta name=\"viewport\" "
        "content=\"width=device-width,initial-scale=1\"/><meta name=\"color-scheme\" "
        "content=\"light dark\"/><title>{0}: {1}</title>\n"
        "<style>{2}</style></head><body>\n<h1>{0}</h1>\n",
        in_xml(title), in_xml(answer.question), style);
}

// The days come first, their pins under them.
std::string pictures_of(const answers::Answer& answer, const std::string& title) {
    std::string html;
    for (const Drawing& drawing : drawings_of(answer)) {
        const bool of_the_days = answer.days && html.empty();
        html += in_svg(drawing);
        if (of_the_days) html += pins_of(*answer.days);
    }
    if (answer.wiring) html += "<div class=\"paper\">" + in_svg(*answer.wiring, title) + "</div>\n";
    return html;
}

std::string tables_of(const answers::Answer& answer) {
    std::string html;
    for (const answers::Series& series : answer.series)
        if (series.brief || series.name == "links" || series.name == "ways")
            html += table_of(series);
    return html;
}

std::string assumptions_of(const answers::Answer& answer) {
    std::string html =
        "<details class=\"aside\"><summary>Assumed, because the file is silent</summary>\n"
        "<ul class=\"small\">\n";
    for (const auto& assumption : answer.assumptions)
        html += fmt::format("<li>{}: {} ({})</li>\n", in_xml(assumption.where),
                            in_xml(assumption.text), in_xml(assumption.source));
    return html + "</ul></details>\n";
}

std::string cautions_of(const answers::Answer& answer) {
    std::string html = "<h2>Beware</h2>\n<ul>\n";
    for (const answers::Caution& caution : answer.cautions)
        html +=
            fmt::format("<li><b>{}.</b> {}</li>\n", in_xml(caution.hazard), in_xml(caution.text));
    return html + "</ul>\n";
}

}  // namespace

std::string in_html(const answers::Answer& answer) {
    const std::string title = answer.title.empty() ? answer.question : answer.title;
    std::string html = head_of(title, answer);
    for (const std::string& sentence : answer.sentences)
        html += fmt::format("<p class=\"answer\">{}</p>\n", in_xml(sentence));
    html += pictures_of(answer, title) + tables_of(answer) + "<h2>Findings</h2>\n<ul>\n";
    for (const answers::PinnedFinding& pinned : answer.findings)
        html += finding_in_html(pinned);
    html += "</ul>\n" + assumptions_of(answer) + hours_of(answer) + cautions_of(answer);
    return html + fmt::format("<p><b>{}</b></p>\n</body></html>\n", in_xml(answer.closing));
}

}  // namespace faces
