#include "answers/wiring/answer.hpp"

#include <algorithm>
#include <set>

#include "answers/cautions.hpp"
#include "answers/wiring/tables.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using fitting::Check;
using fitting::CircuitState;
using fitting::Fit;
using fitting::Verdict;
using fitting::WayOut;
using words::Said;
using words::said;
using words::said_of;
using Joint = words::List::Joint;

std::size_t count_of(const Fit& fit, Verdict verdict) {
    return static_cast<std::size_t>(std::ranges::count(fit.checks, verdict, &Check::verdict));
}

Said these_fail(const std::vector<Said>& failing, std::size_t circuits) {
    if (circuits == failing.size() && failing.size() > 1) {
        return said<"None of the {n} circuits suits what is drawn through it.">(circuits);
    }
    return said_of<"One circuit of {all} does not suit what is drawn: {circuits}.",
                   "{n} circuits of {all} do not suit what is drawn: {circuits}.">(
        failing.size(), circuits, words::joined(failing, Joint::all));
}

Said these_may_fail(const std::vector<Said>& perhaps, std::size_t circuits) {
    const Said named = words::joined(perhaps, Joint::all);
    if (circuits == 1) {
        return said<
            "Whether the one circuit suits what is drawn the file leaves open; at the worst "
            "of it it does not: {circuit}.">(named);
    }
    return said_of<
        "Whether {n} of {all} circuits suits what is drawn the file leaves open; at the "
        "worst of it it does not: {circuits}.",
        "Whether {n} of {all} circuits suit what is drawn the file leaves open; at the "
        "worst of it they do not: {circuits}.">(perhaps.size(), circuits, named);
}

Said no_circuit_fails(const Fit& fit) {
    const auto circuits = fit.circuits.size();
    if (count_of(fit, Verdict::fails) > 0) {
        return said<"The circuits suit what is drawn, but the unit as a whole does not.">();
    }
    const auto open = count_of(fit, Verdict::may_not) + count_of(fit, Verdict::unknown);
    if (open > 0) {
        const Said doubt =
            said_of<"one thing is in doubt or not known", "{n} things are in doubt or not known">(
                open);
        return said_of<"Nothing fails in {n} circuit; {doubt}.",
                       "Nothing fails in {n} circuits; {doubt}.">(circuits, doubt);
    }
    return said_of<"The one circuit suits what is drawn through it, by arithmetic.",
                   "All {n} circuits suit what is drawn through them, by arithmetic.">(circuits);
}

Said first_sentence(const Fit& fit) {
    std::vector<Said> failing;
    std::vector<Said> perhaps;  // at the worst of what the file leaves open
    for (const CircuitState& circuit : fit.circuits) {
        if (fitting::worst_of(fit, circuit.name) == Verdict::fails) {
            (fitting::fails_for_sure(fit, circuit.name) ? failing : perhaps)
                .push_back(circuit.name);
        }
    }
    if (fit.circuits.empty()) {
        return said<"The file describes no circuit, so there is little to check.">();
    }
    return !failing.empty()   ? these_fail(failing, fit.circuits.size())
           : !perhaps.empty() ? these_may_fail(perhaps, fit.circuits.size())
                              : no_circuit_fails(fit);
}

// The worst of what fails, and the first way out.
std::optional<Said> second_sentence(const Fit& fit, const std::vector<WayOut>& ways) {
    const auto window = std::ranges::find_if(fit.checks, [](const Check& check) {
        return check.verdict == Verdict::fails && check.about == fitting::about_window();
    });
    auto first = std::ranges::find_if(
        fit.checks, [](const Check& check) { return fitting::fails_for_sure(check); });
    if (first == fit.checks.end()) {
        first = std::ranges::find(fit.checks, Verdict::fails, &Check::verdict);
    }
    const auto worst = window != fit.checks.end() ? window : first;
    if (worst == fit.checks.end()) {
        return std::nullopt;
    }
    const Said finding = worst->circuit.empty()
                             ? worst->text
                             : said<"{circuit}: {finding}">(worst->circuit, worst->text);
    const auto way = std::ranges::find(ways, worst->circuit, &WayOut::circuit);
    return way == ways.end() ? finding
                             : said<"{finding} What would fit: {change}.">(finding, way->change);
}

std::optional<Said> inverter_sentence(const Fit& fit) {
    if (!fit.continuous) {
        return std::nullopt;
    }
    const auto& state = fit.continuous->state;
    if (state.how != wiring::Feeding::carries) {
        return said<
            "The packs cannot feed the inverter's rating: the voltage collapses beyond "
            "{power}.">(state.largest);
    }
    return said<
        "At the inverter's rating {current} flows and {voltage} arrives at it (it switches "
        "off below {cutoff}).">(state.main, units::amount(state.at_load, 4), fit.cutoff);
}

// ---- Findings.

// "a 5 A fuse instead of 10 A (then …); or …"; nothing where nothing fits.
Said ways_in_words(const std::string& circuit, const std::vector<WayOut>& ways) {
    Said all;
    for (const WayOut& way : ways) {
        if (way.circuit != circuit) continue;
        Said one = said<"{change} ({result})">(way.change, way.result);
        all = all.empty() ? std::move(one)
                          : said<"{ways}; or {another}">(std::move(all), std::move(one));
    }
    return all;
}

std::vector<PinnedFinding> findings_of(const Fit& fit, const std::vector<WayOut>& ways) {
    std::vector<const Check*> checks;
    for (const Check& check : fit.checks)
        checks.push_back(&check);
    // Where no fuse fits at all, that is said before its consequences.
    std::ranges::stable_sort(checks, {}, [](const Check* check) {
        return check->about == fitting::about_window() ? 0 : 1;
    });
    std::vector<PinnedFinding> findings;
    std::set<std::string> mended;
    for (const Check* check : checks) {
        auto pinned = finding_of(*check);
        if (!pinned) continue;
        // Into the first stop of this circuit, which is the one to be mended first.
        const bool stop = pinned->finding.severity == scenario::Severity::stop;
        if (stop && !check->circuit.empty() && mended.insert(check->circuit).second) {
            if (const Said fit_ways = ways_in_words(check->circuit, ways); !fit_ways.empty()) {
                pinned->finding.mend = said<"What would fit: {ways}.">(fit_ways);
            }
        }
        findings.push_back(std::move(*pinned));
    }
    sort_by_weight(findings);
    return findings;
}

Said place_of(const Check& check) {
    const bool part = !check.about.empty() && check.about != fitting::about_window();
    if (check.circuit.empty()) return part ? check.about : Said();
    return part ? said<"circuit {circuit}, {part}">(check.circuit, check.about)
                : said<"circuit {circuit}">(check.circuit);
}

}  // namespace

std::optional<PinnedFinding> finding_of(const Check& check) {
    if (check.verdict == Verdict::fits) {
        return std::nullopt;
    }
    return PinnedFinding{.finding = {.severity = fitting::severity_of(check.verdict),
                                     .where = place_of(check),
                                     .text = check.text,
                                     .mend = check.mend,
                                     .source = said<"{check}: {source}">(check.id, check.source)}};
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
                  .closing = closing_line()};
    for (auto& sentence : {second_sentence(fit, ways), inverter_sentence(fit)}) {
        if (sentence) {
            answer.sentences.push_back(*sentence);
        }
    }
    return answer;
}

}  // namespace answers
