#include "answers/compare/answer.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include <fmt/format.h>

#include "answers/cautions.hpp"
#include "answers/chance_words.hpp"
#include "answers/shown.hpp"
#include "answers/start/answer.hpp"
#include "answers/wiring/answer.hpp"
#include "answers/wiring/tables.hpp"
#include "fitting/swap.hpp"
#include "scenario/listing.hpp"
#include "units/quote.hpp"

namespace answers {

namespace {

using fitting::Change;
using fitting::Dirty;
using fitting::Moved;
using fitting::Reach;
using fitting::Verdict;
using scenario::Scenario;

// ---- Keys that differ.

struct KeyChange {
    std::string key;
    std::string before;
    std::string after;
};

std::vector<KeyChange> keys_that_differ(const scenario::ReadScenario& before,
                                        const scenario::ReadScenario& after) {
    std::map<std::string, std::string> old_values;
    for (const auto& key : scenario::listing(before)) {
        old_values[key.key] = key.value;
    }
    std::vector<KeyChange> changes;
    std::set<std::string> seen;
    for (const auto& key : scenario::listing(after)) {
        seen.insert(key.key);
        const auto old = old_values.find(key.key);
        const std::string was = old == old_values.end() ? "" : old->second;
        if (was != key.value) {
            changes.push_back({key.key, was, key.value});
        }
    }
    for (const auto& [key, value] : old_values) {
        if (!seen.contains(key) && !value.empty()) {
            changes.push_back({key, value, ""});
        }
    }
    return changes;
}

// ---- Weight and price: unknown stays unknown.

template <class Quantity>
struct Sum {
    Quantity amount{};
    int unknown = 0;  // parts that do not say

    void add(const std::optional<Quantity>& each, int count) {
        if (count == 0) {
            return;
        }
        if (each) {
            amount = amount + static_cast<double>(count) * *each;
        } else {
            ++unknown;
        }
    }
};

Sum<units::Mass> weight_of(const Scenario& scenario) {
    Sum<units::Mass> sum;
    for (const auto& pack : scenario.packs) {
        sum.add(pack.weight, pack.count);
    }
    for (const auto& panel : scenario.panels) {
        sum.add(panel.weight, panel.count);
    }
    for (const auto& circuit : scenario.circuits) {
        if (circuit.weight) {
            sum.add(circuit.weight, 1);
        }
    }
    return sum;
}

Sum<units::Price> price_of(const Scenario& scenario) {
    Sum<units::Price> sum;
    for (const auto& pack : scenario.packs) {
        sum.add(pack.price, pack.count);
    }
    for (const auto& panel : scenario.panels) {
        sum.add(panel.price, panel.count);
    }
    for (const auto& circuit : scenario.circuits) {
        if (circuit.price) {
            sum.add(circuit.price, 1);
        }
    }
    return sum;
}

template <class Quantity>
Value value_or_unknown(const Sum<Quantity>& sum, std::string_view what) {
    if (sum.unknown > 0) {
        return {
            Absent{fmt::format("{} part{} give{} no {}", sum.unknown, sum.unknown == 1 ? "" : "s",
                               sum.unknown == 1 ? "s" : "", what)}};
    }
    return quantity_or_reason(shown(sum.amount), "the number is not finite");
}

// ---- Sentences.

std::string place(const std::string& circuit) {
    return circuit.empty() ? std::string("the unit") : circuit;
}

std::string verdict_words(const std::optional<Verdict>& verdict) {
    return verdict ? std::string(word_for(*verdict)) : "absent";
}

std::string changes_in_words(const std::vector<Change>& changes) {
    std::string words;
    for (const Change& change : changes) {
        words += fmt::format("{}{}{}", words.empty() ? "" : "; ",
                             change.circuit.empty() ? "" : change.circuit + ": ", change.words);
    }
    return words;
}

// "C1, C2, C8 of lamps; C4 everywhere"
std::string dirty_in_words(const std::set<Dirty>& dirty) {
    std::map<std::string, std::vector<std::string>> by_place;
    for (const Dirty& one : dirty) {
        const std::string where = one.reach == Reach::here ? "of " + place(one.circuit)
                                  : one.reach == Reach::trunk
                                      ? "of the main path, the packs' leads and the outlets"
                                      : "everywhere";
        by_place[where].push_back(one.check);
    }
    std::string words;
    for (auto& [where, ids] : by_place) {
        std::ranges::sort(ids, {}, [](const std::string& id) { return std::stoi(id.substr(1)); });
        words += fmt::format("{}{} {}", words.empty() ? "" : "; ", fmt::join(ids, ", "), where);
    }
    return words;
}

std::set<std::string> questions_of(const std::vector<Change>& changes) {
    std::set<std::string> questions;
    for (const Change& change : changes) {
        const auto asked = fitting::questions_of(change);
        questions.insert(asked.begin(), asked.end());
    }
    return questions;
}

std::string questions_in_words(const std::vector<Change>& changes) {
    return fmt::format("{}", fmt::join(questions_of(changes), ", "));
}

std::optional<std::string> runtime_sentence(const questions::ComparedBuild& before,
                                            const questions::ComparedBuild& after) {
    if (!before.figures || !after.figures) {
        return std::nullopt;
    }
    const auto lasts = [](const questions::ComparedBuild& build) {
        const chance::Figures& figures = *build.figures;
        return counted_on_to_the_end(build.read.scenario.outage, figures)
                   ? "to the end, " + chance_in_words(figures)
                   : fmt::format("{} {}, to the end {}", in_words(figures.count_on, 2),
                                 goal_in_words(figures.goal), chance_in_words(figures));
    };
    const std::string old_words = lasts(before);
    const std::string new_words = lasts(after);
    if (old_words == new_words) {
        return fmt::format("Both last {}.", new_words);
    }
    return fmt::format("The new build lasts {}; the old one {}.", new_words, old_words);
}

// ---- Starting, before and after.

Quantity use_of(starting::Utilised used) {
    return {.value = used.value(),
            .unit = "1",
            .shown = used.value() > 9.99 ? std::string("> 999 %")
                                         : fmt::format("{:.0f} %", 100.0 * used.value())};
}

std::string_view start_words(starting::StartVerdict verdict) {
    switch (verdict) {
        case starting::StartVerdict::starts:
            return "starts";
        case starting::StartVerdict::marginal:
            return "is in doubt";
        case starting::StartVerdict::will_not_start:
            return "does not start";
    }
    return "";
}

const questions::ComparedStart* start_of(const questions::ComparedBuild& build,
                                         const std::string& load) {
    const auto found = std::ranges::find(build.starts, load, &questions::ComparedStart::load);
    return found == build.starts.end() ? nullptr : &*found;
}

std::string start_sentence(const questions::ComparedStart* before,
                           const questions::ComparedStart& after) {
    return fmt::format(
        "{} {}: {} of its tightest limit, {}{}.", after.load, start_words(after.verdict),
        use_of(after.worst).shown, starting::in_words(after.binding),
        before == nullptr ? std::string(" (it was not there before)")
                          : fmt::format(" (before: it {}, {})", start_words(before->verdict),
                                        use_of(before->worst).shown));
}

// Loads whose start moved: another verdict, or a use that differs by a percent of the limit.
std::vector<std::string> start_sentences(const questions::ComparedBuild& before,
                                         const questions::ComparedBuild& after) {
    std::vector<std::string> sentences;
    for (const questions::ComparedStart& now : after.starts) {
        const questions::ComparedStart* then = start_of(before, now.load);
        if (then == nullptr || then->verdict != now.verdict ||
            std::abs(then->worst.value() - now.worst.value()) >= 0.01) {
            sentences.push_back(start_sentence(then, now));
        }
    }
    return sentences;
}

void add_starts(std::vector<PinnedFinding>& findings, const questions::ComparedBuild& before,
                const questions::ComparedBuild& after) {
    for (const questions::ComparedStart& now : after.starts) {
        const questions::ComparedStart* then = start_of(before, now.load);
        const auto was = then == nullptr ? starting::StartVerdict::starts : then->verdict;
        if (now.verdict <= was) {
            continue;
        }
        findings.push_back(
            {.finding = {.severity = now.verdict == starting::StartVerdict::will_not_start
                                         ? scenario::Severity::stop
                                         : scenario::Severity::caution,
                         .where = "load " + now.load,
                         .text = start_sentence(then, now),
                         .mend = "Ask candlemark start of the new file for what would help.",
                         .source = "starting method.md"}});
    }
}

std::string moved_in_words(const std::vector<Moved>& moved) {
    const auto worse = std::ranges::count_if(moved, fitting::is_worse);
    const auto others = static_cast<std::ptrdiff_t>(moved.size()) - worse;
    if (moved.empty()) {
        return "No verdict moved.";
    }
    const auto told = [](std::ptrdiff_t count, std::string_view how) {
        return count == 0 ? fmt::format("no verdict got {}", how)
                          : fmt::format("{} verdict{} got {}", count, count == 1 ? "" : "s", how);
    };
    return worse == 0 ? fmt::format("None got worse, {}.", told(others, "better"))
                      : fmt::format("{}, {}.", told(worse, "worse"), told(others, "better"));
}

std::vector<std::string> sentences_of(const std::vector<Change>& changes,
                                      const std::vector<KeyChange>& keys,
                                      const std::set<Dirty>& dirty, const std::vector<Moved>& moved,
                                      const questions::ComparedBuild& before,
                                      const questions::ComparedBuild& after) {
    std::vector<std::string> sentences;
    if (changes.empty()) {
        sentences.push_back(keys.empty() ? "The two builds do not differ."
                                         : "The two builds do not differ but for their titles.");
    } else {
        sentences.push_back("What changed: " + changes_in_words(changes) + ".");
        const std::string again = questions_in_words(changes);
        sentences.push_back((dirty.empty() ? std::string("No part of the wiring differs. ")
                                           : "To be rechecked: " + dirty_in_words(dirty) + ". ") +
                            moved_in_words(moved) +
                            (again.empty() ? "" : " To be asked again: " + again + "."));
    }
    for (const Moved& one : moved) {
        if (fitting::is_worse(one) && one.after == Verdict::fails) {
            sentences.push_back(place(one.circuit) + ": " + one.text);
            break;
        }
    }
    if (const auto runtime = runtime_sentence(before, after)) {
        sentences.push_back(*runtime);
    }
    for (std::string& start : start_sentences(before, after)) {
        sentences.push_back(std::move(start));
    }
    return sentences;
}

// ---- Findings: what moved, with how bad it is now.

std::vector<PinnedFinding> findings_of(const std::vector<Moved>& moved,
                                       const std::vector<Change>& changes,
                                       const questions::ComparedBuild& before,
                                       const questions::ComparedBuild& after) {
    const fitting::Fit& fit = after.fit;
    std::vector<PinnedFinding> findings;
    add_starts(findings, before, after);
    for (const Moved& one : moved) {
        const bool worse = fitting::is_worse(one);
        const std::string from = verdict_words(one.before);
        const std::string to = verdict_words(one.after);
        findings.push_back(
            {.finding = {
                 .severity = worse ? fitting::severity_of(*one.after) : scenario::Severity::note,
                 .where = place(one.circuit),
                 .text = fmt::format("{} {}: it was '{}' and is '{}' now. {}", one.check,
                                     worse ? "got worse" : "got better", from, to, one.text),
                 .mend = worse ? one.mend : "",
                 .source = "fitting method.md, " + one.check}});
    }
    // What fails in the new build without having moved must not be lost in a list of differences.
    std::set<std::string> still;
    for (const fitting::Check& check : fit.checks) {
        if (check.verdict == Verdict::fails && std::ranges::none_of(moved, [&](const Moved& one) {
                return one.check == check.id && one.circuit == check.circuit;
            })) {
            still.insert(check.id + " of " + place(check.circuit));
        }
    }
    if (!still.empty()) {
        findings.push_back(
            {.finding = {.severity = scenario::Severity::stop,
                         .where = "new build",
                         .text = fmt::format("Still fails as before: {}.", fmt::join(still, ", ")),
                         .mend = "Ask candlemark wiring of the new file.",
                         .source = "fitting method.md"}});
    }
    for (const Change& change : changes) {
        const auto say = fitting::advice_for(change);
        if (!say.empty()) {
            findings.push_back({.finding = {.severity = scenario::Severity::note,
                                            .where = place(change.circuit) + ", " + change.kind,
                                            .text = std::string(say),
                                            .mend = "",
                                            .source = "fitting/swaps.toml"}});
        }
    }
    sort_by_weight(findings);
    return findings;
}

// ---- Values and tables.

template <class Old, class New>
Value pair_of(Old before, New after) {
    return {Members{{"old", "old", std::move(before)}, {"new", "new", std::move(after)}}};
}

Value lasts_of(const questions::ComparedBuild& build) {
    return build.plan ? quantity_or_reason(shown(build.plan->likely.lasts), "not finite")
                      : Value{Absent{build.why_no_plan}};
}

Value count_on_of(const questions::ComparedBuild& build) {
    return build.figures ? quantity_or_reason(shown(build.figures->count_on), "not finite")
                         : Value{Absent{build.why_no_plan}};
}

Value chance_of(const questions::ComparedBuild& build) {
    return build.figures ? quantity_or_reason(shown(build.figures->of), "not finite")
                         : Value{Absent{build.why_no_plan}};
}

Value survives_of(const questions::ComparedBuild& build) {
    return build.plan ? Value{build.plan->likely.survives} : Value{Absent{build.why_no_plan}};
}

Value lowest_voltage_of(const questions::ComparedBuild& build) {
    return build.fit.continuous
               ? quantity_or_reason(shown(build.fit.continuous->state.at_load, 4), "not finite")
               : Value{Absent{"the build has no inverter"}};
}

Value starts_of(const questions::ComparedBuild& build) {
    if (build.starts.empty()) {
        return {Absent{build.why_no_starts}};
    }
    Members members;
    for (const questions::ComparedStart& start : build.starts) {
        members.push_back(
            {start.load,
             start.load,
             {Members{{"verdict", "", {std::string(starting::name_of(start.verdict))}},
                      {"binding", "limit", {std::string(starting::name_of(start.binding))}},
                      {"worst", "worst use", {use_of(start.worst)}}}}});
    }
    return {std::move(members)};
}

Members values_of(const std::vector<Change>& changes, const std::set<Dirty>& dirty,
                  const std::vector<Moved>& moved, const questions::ComparedBuild& before,
                  const questions::ComparedBuild& after) {
    List changed;
    for (const Change& change : changes) {
        changed.push_back({Members{{"kind", "", {change.kind}},
                                   {"circuit", "of", {place(change.circuit)}},
                                   {"change", "", {change.words}}}});
    }
    List recheck;
    for (const Dirty& one : dirty) {
        recheck.push_back({Members{{"check", "", {one.check}},
                                   {"where",
                                    "",
                                    {one.reach == Reach::here    ? place(one.circuit)
                                     : one.reach == Reach::trunk ? std::string("trunk")
                                                                 : std::string("everywhere")}}}});
    }
    List moves;
    for (const Moved& one : moved) {
        moves.push_back({Members{{"check", "", {one.check}},
                                 {"circuit", "of", {place(one.circuit)}},
                                 {"before", "was", {verdict_words(one.before)}},
                                 {"after", "is", {verdict_words(one.after)}},
                                 {"worse", "worse", {fitting::is_worse(one)}},
                                 {"text", "", {one.text}}}});
    }
    List ask_again;
    for (const std::string& question : questions_of(changes)) {
        ask_again.push_back({question});
    }
    return {
        {"same", "no difference", {changes.empty() && moved.empty()}},
        {"changed", "what changed", {std::move(changed)}},
        {"recheck", "to be rechecked", {std::move(recheck)}},
        {"ask_again", "to be asked again", {std::move(ask_again)}},
        {"moved", "verdicts that moved", {std::move(moves)}},
        {"count_on", "may be counted on for", pair_of(count_on_of(before), count_on_of(after))},
        {"chance", "chance to the end", pair_of(chance_of(before), chance_of(after))},
        {"lasts", "lasts on likely figures", pair_of(lasts_of(before), lasts_of(after))},
        {"survives", "lasts the whole outage", pair_of(survives_of(before), survives_of(after))},
        {"voltage_at_inverter", "voltage at the inverter, at its rating",
         pair_of(lowest_voltage_of(before), lowest_voltage_of(after))},
        {"starts", "starting", pair_of(starts_of(before), starts_of(after))},
        {"weight", "weight",
         pair_of(value_or_unknown(weight_of(before.read.scenario), "weight"),
                 value_or_unknown(weight_of(after.read.scenario), "weight"))},
        {"price", "price",
         pair_of(value_or_unknown(price_of(before.read.scenario), "price"),
                 value_or_unknown(price_of(after.read.scenario), "price"))}};
}

Column words(std::string name, std::string heading, std::vector<std::string> points) {
    return {.name = std::move(name),
            .heading = std::move(heading),
            .unit = "",
            .points = std::move(points)};
}

Series moved_table(const std::vector<Moved>& moved) {
    std::vector<std::string> ids, circuits, befores, afters, texts;
    for (const Moved& one : moved) {
        ids.push_back(one.check);
        circuits.push_back(place(one.circuit));
        befores.push_back(verdict_words(one.before));
        afters.push_back(verdict_words(one.after));
        texts.push_back(one.text);
    }
    return {.name = "moved",
            .title = "Verdicts that moved",
            .columns = {words("check", "check", ids), words("circuit", "circuit", circuits),
                        words("before", "old", befores), words("after", "new", afters),
                        words("text", "what is found now", texts)},
            .brief = !moved.empty()};
}

Series key_table(const std::vector<KeyChange>& keys) {
    std::vector<std::string> names, befores, afters;
    for (const KeyChange& key : keys) {
        names.push_back(key.key);
        befores.push_back(key.before.empty() ? "-" : key.before);
        afters.push_back(key.after.empty() ? "-" : key.after);
    }
    return {.name = "keys",
            .title = "Values of the files that differ",
            .columns = {words("key", "key", names), words("old", "old", befores),
                        words("new", "new", afters)}};
}

}  // namespace

Answer compare_answer(const questions::ComparedBuild& old_build,
                      const questions::ComparedBuild& new_build) {
    const auto changes = fitting::changes_between(old_build.read.scenario, new_build.read.scenario);
    const auto keys = keys_that_differ(old_build.read, new_build.read);
    const auto moved = fitting::moved_verdicts(old_build.fit, new_build.fit);
    std::set<Dirty> dirty;
    for (const Change& change : changes) {
        dirty.merge(fitting::dirtied_by(change));
    }
    return {.question = "compare",
            .title = fmt::format("{} -> {}", units::quote(old_build.read.file_name, 200),
                                 units::quote(new_build.read.file_name, 200)),
            .sentences = sentences_of(changes, keys, dirty, moved, old_build, new_build),
            .values = values_of(changes, dirty, moved, old_build, new_build),
            .findings = findings_of(moved, changes, old_build, new_build),
            .working = wiring_working(new_build.read.scenario, new_build.fit),
            .assumptions = new_build.fit.assumptions,
            .cautions = wiring_cautions(new_build.read.scenario, new_build.fit),
            .series = {moved_table(moved), key_table(keys)},
            .wiring = wiring_diagram(new_build.read.scenario, new_build.fit),
            .closing = std::string(closing_line)};
}

}  // namespace answers
