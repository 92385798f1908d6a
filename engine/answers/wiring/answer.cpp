#include "answers/wiring/answer.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "answers/cautions.hpp"
#include "answers/shown.hpp"
#include "answers/wiring/tables.hpp"

namespace answers {

namespace {

using fitting::Check;
using fitting::CircuitState;
using fitting::Fit;
using fitting::Verdict;
using fitting::WayOut;

std::string with_dot(std::string words) {
    if (!words.empty() && words.back() != '.') {
        words += '.';
    }
    return words;
}

std::string in_a_row(const std::vector<std::string>& names) {
    std::string words;
    for (std::size_t i = 0; i < names.size(); ++i) {
        words += i == 0 ? "" : (i + 1 == names.size() ? " and " : ", ");
        words += names[i];
    }
    return words;
}

std::size_t count_of(const Fit& fit, Verdict verdict) {
    return static_cast<std::size_t>(std::ranges::count(fit.checks, verdict, &Check::verdict));
}

std::string first_sentence(const Fit& fit) {
    std::vector<std::string> failing;
    std::vector<std::string> perhaps;  // at the worst of what the file leaves open
    for (const CircuitState& circuit : fit.circuits) {
        if (fitting::worst_of(fit, circuit.name) == Verdict::fails) {
            const bool sure =
                fitting::word_for(fit, circuit.name) == fitting::word_for(Verdict::fails);
            (sure ? failing : perhaps).push_back(circuit.name);
        }
    }
    const auto circuits = fit.circuits.size();
    const auto doubts = count_of(fit, Verdict::may_not);
    const auto unknown = count_of(fit, Verdict::unknown);
    if (circuits == 0) {
        return "The file describes no circuit, so there is little to check.";
    }
    if (!failing.empty()) {
        const bool several = failing.size() > 1;
        return circuits == failing.size() && several
                   ? fmt::format("None of the {} circuits suits what is drawn through it.",
                                 circuits)
                   : fmt::format("{} circuit{} of {} do{} not suit what is drawn: {}.",
                                 several ? std::to_string(failing.size()) : std::string("One"),
                                 several ? "s" : "", circuits, several ? "" : "es",
                                 in_a_row(failing));
    }
    if (!perhaps.empty()) {
        return fmt::format(
            "Whether {} of {} circuit{} {} what is drawn the file leaves open; at the "
            "worst of it {} not: {}.",
            perhaps.size(), circuits, circuits == 1 ? "" : "s",
            perhaps.size() == 1 ? "suits" : "suit", perhaps.size() == 1 ? "it does" : "they do",
            in_a_row(perhaps));
    }
    if (count_of(fit, Verdict::fails) > 0) {
        return "The circuits suit what is drawn, but the unit as a whole does not.";
    }
    if (doubts + unknown > 0) {
        return fmt::format("Nothing fails in {} circuit{}; {} in doubt or not known.", circuits,
                           circuits == 1 ? "" : "s",
                           doubts + unknown == 1 ? std::string("one thing is")
                                                 : fmt::format("{} things are", doubts + unknown));
    }
    return fmt::format("All {} circuit{} suit what is drawn through them, by arithmetic.", circuits,
                       circuits == 1 ? "" : "s");
}

// The worst of what fails, and the first way out.
std::optional<std::string> second_sentence(const Fit& fit, const std::vector<WayOut>& ways) {
    const auto window = std::ranges::find_if(fit.checks, [](const Check& check) {
        return check.verdict == Verdict::fails && check.about == "window";
    });
    auto first = std::ranges::find_if(fit.checks, fitting::fails_for_sure);
    if (first == fit.checks.end()) {
        first = std::ranges::find(fit.checks, Verdict::fails, &Check::verdict);
    }
    const auto worst = window != fit.checks.end() ? window : first;
    if (worst == fit.checks.end()) {
        return std::nullopt;
    }
    std::string words = worst->circuit.empty() ? worst->text : worst->circuit + ": " + worst->text;
    const auto way = std::ranges::find(ways, worst->circuit, &WayOut::circuit);
    if (way != ways.end()) {
        words += " What would fit: " + with_dot(way->change);
    }
    return words;
}

std::optional<std::string> inverter_sentence(const Fit& fit) {
    if (!fit.continuous) {
        return std::nullopt;
    }
    const auto& state = fit.continuous->state;
    if (state.how != wiring::Feeding::carries) {
        return fmt::format(
            "The packs cannot feed the inverter's rating: the voltage collapses "
            "beyond {}.",
            in_words(state.largest));
    }
    return fmt::format(
        "At the inverter's rating {} flows and {} arrives at it (it switches off "
        "below {}).",
        in_words(state.main), in_words(state.at_load, 4), in_words(fit.cutoff));
}

// ---- Findings.

void add_ways(std::vector<PinnedFinding>& findings, const Fit& fit,
              const std::vector<WayOut>& ways) {
    for (const CircuitState& circuit : fit.circuits) {
        std::string words;
        for (const WayOut& way : ways) {
            if (way.circuit == circuit.name) {
                words +=
                    fmt::format("{}{} ({})", words.empty() ? "" : "; or ", way.change, way.result);
            }
        }
        // Into the first stop of this circuit, which is the one to be mended first.
        const std::string whole = "circuit " + circuit.name;
        const auto stop = std::ranges::find_if(findings, [&](const PinnedFinding& pinned) {
            const std::string& where = pinned.finding.where;
            return pinned.finding.severity == scenario::Severity::stop &&
                   (where == whole || where.starts_with(whole + ","));
        });
        if (words.empty() || stop == findings.end()) {
            continue;
        }
        stop->finding.mend = with_dot("What would fit: " + words);
    }
}

std::vector<PinnedFinding> findings_of(const Fit& fit, const std::vector<WayOut>& ways) {
    std::vector<PinnedFinding> findings;
    for (const Check& check : fit.checks) {
        if (auto finding = finding_of(check)) {
            findings.push_back(std::move(*finding));
        }
    }
    // Where no fuse fits at all, that is said before its consequences.
    std::ranges::stable_sort(findings, {}, [](const PinnedFinding& pinned) {
        return pinned.finding.text.starts_with("No fuse fits") ? 0 : 1;
    });
    sort_by_weight(findings);
    add_ways(findings, fit, ways);
    return findings;
}

}  // namespace

std::optional<PinnedFinding> finding_of(const Check& check) {
    if (check.verdict == Verdict::fits) {
        return std::nullopt;
    }
    std::string where = check.circuit.empty() ? "" : "circuit " + check.circuit;
    if (!check.about.empty() && check.about != "window") {
        where += (where.empty() ? "" : ", ") + check.about;
    }
    return PinnedFinding{.finding = {.severity = fitting::severity_of(check.verdict),
                                     .where = std::move(where),
                                     .text = with_dot(check.text),
                                     .mend = with_dot(check.mend),
                                     .source = check.id + ": " + check.source}};
}

Answer wiring_answer(const scenario::Scenario& scenario, const Fit& fit,
                     const std::vector<WayOut>& ways) {
    Answer answer{.question = "wiring",
                  .title = scenario.title,
                  .sentences = {first_sentence(fit)},
                  .values = wiring_values(fit),
                  .findings = findings_of(fit, ways),
                  .working = wiring_working(scenario, fit),
                  .assumptions = fit.assumptions,
                  .cautions = wiring_cautions(scenario, fit),
                  .series = wiring_series(fit, ways),
                  .wiring = wiring_diagram(scenario, fit),
                  .closing = std::string(closing_line)};
    for (auto& sentence : {second_sentence(fit, ways), inverter_sentence(fit)}) {
        if (sentence) {
            answer.sentences.push_back(*sentence);
        }
    }
    return answer;
}

}  // namespace answers
