#include "answers/compare/answer.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "answers/cautions.hpp"
#include "answers/compare/words.hpp"
#include "answers/shown.hpp"
#include "answers/start/words.hpp"
#include "answers/wiring/answer.hpp"
#include "answers/wiring/tables.hpp"
#include "units/quote.hpp"

namespace answers {

namespace {

using fitting::Change;
using fitting::Dirty;
using fitting::Moved;
using fitting::Reach;
using fitting::Verdict;
using scenario::Scenario;
using words::Said;
using words::said;
using words::said_of;

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

// No sum where a part does not say.
template <class Quantity>
Value sum_of(const Sum<Quantity>& sum, Said unknown) {
    if (sum.unknown > 0) {
        return {Absent{std::move(unknown)}};
    }
    return quantity_or_reason(shown(sum.amount), said<"the number is not finite">());
}

Value weight_in_all(const Scenario& scenario) {
    const auto sum = weight_of(scenario);
    return sum_of(sum,
                  said_of<"{n} part gives no weight", "{n} parts give no weight">(sum.unknown));
}

Value price_in_all(const Scenario& scenario) {
    const auto sum = price_of(scenario);
    return sum_of(sum, said_of<"{n} part gives no price", "{n} parts give no price">(sum.unknown));
}

// ---- Starting, before and after.

Quantity use_of(starting::Utilised used) {
    return {.value = used.value(), .unit = "1", .shown = in_percent(used)};
}

// A document of this project, the same in every language.
Said document(std::string_view name) {
    return said<"{document}">(name);
}

const questions::ComparedStart* start_of(const questions::ComparedBuild& build,
                                         const std::string& load) {
    const auto found = std::ranges::find(build.starts, load, &questions::ComparedStart::load);
    return found == build.starts.end() ? nullptr : &*found;
}

// Loads whose start moved: another verdict, or a use that differs by a percent of the limit.
std::vector<Said> start_sentences(const questions::ComparedBuild& before,
                                  const questions::ComparedBuild& after) {
    std::vector<Said> sentences;
    for (const questions::ComparedStart& now : after.starts) {
        const questions::ComparedStart* then = start_of(before, now.load);
        if (then == nullptr || then->verdict != now.verdict ||
            std::abs(then->worst.value() - now.worst.value()) >= 0.01) {
            sentences.push_back(start_in_words(then, now));
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
            {.finding = {
                 .severity = now.verdict == starting::StartVerdict::will_not_start
                                 ? scenario::Severity::stop
                                 : scenario::Severity::caution,
                 .where = said<"load {load}">(now.load),
                 .text = start_in_words(then, now),
                 .mend = said<"The answer about starts of the new file says what would help.">(),
                 .source = document("starting method.md")}});
    }
}

Said nothing_changed(const questions::CompareFound& found) {
    return found.keys.empty() ? said<"The two builds do not differ.">()
                              : said<"The two builds do not differ but for their titles.">();
}

std::vector<Said> sentences_of(const questions::CompareFound& found) {
    std::vector<Said> sentences;
    if (found.changes.empty()) {
        sentences.push_back(nothing_changed(found));
    } else {
        sentences.push_back(changes_in_words(found.changes));
        sentences.push_back(to_look_at_again(found));
    }
    for (const Moved& one : found.moved) {
        if (fitting::is_worse(one) && one.after == Verdict::fails) {
            sentences.push_back(
                said<"{circuit}: {finding}">(place_in_words(one.circuit), one.text));
            break;
        }
    }
    Said runtime = runtime_in_words(found.old_build, found.new_build);
    if (!runtime.empty()) {
        sentences.push_back(std::move(runtime));
    }
    for (Said& start : start_sentences(found.old_build, found.new_build)) {
        sentences.push_back(std::move(start));
    }
    return sentences;
}

// ---- Findings: what moved, with how bad it is now.

PinnedFinding finding_of(const Moved& moved) {
    const bool worse = fitting::is_worse(moved);
    const Said check = check_in_words(moved.check);
    const Said before = verdict_in_words(moved.before);
    const Said after = verdict_in_words(moved.after);
    return {
        .finding = {
            .severity = worse ? fitting::severity_of(*moved.after) : scenario::Severity::note,
            .where = place_in_words(moved.circuit),
            .text = worse ? said<"Worse than before: {check} ({before}, now {after}). {finding}">(
                                check, before, after, moved.text)
                          : said<"Better than before: {check} ({before}, now {after}). {finding}">(
                                check, before, after, moved.text),
            .mend = worse ? moved.mend : Said(),
            .source = said<"{document}, {check}">("fitting method.md", moved.check)}};
}

// What fails in the new build without having moved must not be lost in a list of differences.
std::optional<PinnedFinding> still_failing(const std::vector<Moved>& moved,
                                           const fitting::Fit& fit) {
    std::set<std::pair<std::string, std::string>> told;
    std::vector<Said> still;
    for (const fitting::Check& check : fit.checks) {
        const bool is_new = std::ranges::any_of(moved, [&](const Moved& one) {
            return one.check == check.id && one.circuit == check.circuit;
        });
        if (check.verdict == Verdict::fails && !is_new &&
            told.insert({check.id, check.circuit}).second) {
            still.push_back(said<"{checks} of {place}">(check_in_words(check.id),
                                                        place_in_words(check.circuit)));
        }
    }
    if (still.empty()) {
        return std::nullopt;
    }
    return PinnedFinding{
        .finding = {.severity = scenario::Severity::stop,
                    .where = said<"new build">(),
                    .text = said<"Still fails as before: {checks}.">(
                        words::joined(std::move(still), words::List::Joint::semicolon)),
                    .mend = said<"The answer about wiring of the new file says what fits.">(),
                    .source = document("fitting method.md")}};
}

std::optional<PinnedFinding> advice_on(const Change& change) {
    Said advice = fitting::advice_for(change);
    if (advice.empty()) {
        return std::nullopt;
    }
    return PinnedFinding{
        .finding = {.severity = scenario::Severity::note,
                    .where = place_in_words(change.circuit),
                    .text = said<"{^change}: {advice}">(change.words, std::move(advice)),
                    .mend = {},
                    .source = document("fitting/swaps.toml")}};
}

std::vector<PinnedFinding> findings_of(const questions::CompareFound& found) {
    std::vector<PinnedFinding> findings;
    add_starts(findings, found.old_build, found.new_build);
    for (const Moved& one : found.moved) {
        findings.push_back(finding_of(one));
    }
    if (auto still = still_failing(found.moved, found.new_build.fit)) {
        findings.push_back(*std::move(still));
    }
    for (const Change& change : found.changes) {
        if (auto advice = advice_on(change)) {
            findings.push_back(*std::move(advice));
        }
    }
    sort_by_weight(findings);
    return findings;
}

// ---- Values and tables.

template <class Old, class New>
Value pair_of(Old before, New after) {
    return {Members{{"old", said<"{?build}old">(), std::move(before)},
                    {"new", said<"{?build}new">(), std::move(after)}}};
}

Value lasts_of(const questions::ComparedBuild& build) {
    return build.plan ? quantity_or_reason(shown(build.plan->likely.lasts),
                                           said<"the number is not finite">())
                      : Value{Absent{build.why_no_plan}};
}

Value count_on_of(const questions::ComparedBuild& build) {
    return build.figures ? quantity_or_reason(shown(build.figures->count_on),
                                              said<"the number is not finite">())
                         : Value{Absent{build.why_no_plan}};
}

Value chance_of(const questions::ComparedBuild& build) {
    return build.figures
               ? quantity_or_reason(shown(build.figures->of), said<"the number is not finite">())
               : Value{Absent{build.why_no_plan}};
}

Value survives_of(const questions::ComparedBuild& build) {
    return build.plan ? Value{build.plan->likely.survives} : Value{Absent{build.why_no_plan}};
}

Value lowest_voltage_of(const questions::ComparedBuild& build) {
    return build.fit.continuous ? quantity_or_reason(shown(build.fit.continuous->state.at_load, 4),
                                                     said<"the number is not finite">())
                                : Value{Absent{said<"the build has no inverter">()}};
}

Value starts_of(const questions::ComparedBuild& build) {
    if (build.starts.empty()) {
        return {Absent{build.why_no_starts}};
    }
    Members members;
    for (const questions::ComparedStart& start : build.starts) {
        members.push_back(
            {start.load,
             said<"{load}">(start.load),
             {Members{{"verdict",
                       said<"verdict">(),
                       {Code{std::string(starting::name_of(start.verdict)), plain(start.verdict)}}},
                      {"binding",
                       said<"limit">(),
                       {Code{std::string(starting::name_of(start.binding)),
                             starting::in_words(start.binding)}}},
                      {"worst", said<"worst use">(), {use_of(start.worst)}}}}});
    }
    return {std::move(members)};
}

Value check_value(const std::string& check) {
    return {Code{check, check_in_words(check)}};
}

List changed_parts(const std::vector<Change>& changes) {
    List changed;
    for (const Change& change : changes) {
        changed.push_back({Members{{"kind", {}, {Code{change.kind, {}}}},
                                   {"circuit", said<"of">(), {place_in_words(change.circuit)}},
                                   {"change", said<"change">(), {change.words}}}});
    }
    return changed;
}

Said where_of(const Dirty& dirty) {
    switch (dirty.reach) {
        case Reach::here:
            return place_in_words(dirty.circuit);
        case Reach::trunk:
            return said<"trunk">();
        case Reach::everywhere:
            return said<"everywhere">();
    }
    return {};
}

List checks_to_redo(const std::set<Dirty>& dirty) {
    List recheck;
    for (const Dirty& one : dirty) {
        recheck.push_back({Members{{"check", said<"check">(), check_value(one.check)},
                                   {"where", said<"of">(), {where_of(one)}}}});
    }
    return recheck;
}

List moved_verdicts(const std::vector<Moved>& moved) {
    List moves;
    for (const Moved& one : moved) {
        moves.push_back({Members{{"check", said<"check">(), check_value(one.check)},
                                 {"circuit", said<"of">(), {place_in_words(one.circuit)}},
                                 {"before", said<"was">(), {verdict_in_words(one.before)}},
                                 {"after", said<"is">(), {verdict_in_words(one.after)}},
                                 {"worse", said<"worse">(), {fitting::is_worse(one)}},
                                 {"text", said<"what is found now">(), {one.text}}}});
    }
    return moves;
}

List questions_again(const std::vector<Change>& changes) {
    List ask_again;
    for (const std::string& question : questions_of(changes)) {
        ask_again.push_back({Code{question, question_in_words(question)}});
    }
    return ask_again;
}

Members values_of(const questions::CompareFound& found) {
    const auto& before = found.old_build;
    const auto& after = found.new_build;
    const Scenario& old_file = before.read.scenario;
    const Scenario& new_file = after.read.scenario;
    return {
        {"same", said<"no difference">(), {found.changes.empty() && found.moved.empty()}},
        {"changed", said<"what changed">(), {changed_parts(found.changes)}},
        {"recheck", said<"to be checked again">(), {checks_to_redo(found.dirty)}},
        {"ask_again", said<"to be asked again">(), {questions_again(found.changes)}},
        {"moved", said<"checks that are better or worse">(), {moved_verdicts(found.moved)}},
        {"count_on", said<"may be counted on for">(),
         pair_of(count_on_of(before), count_on_of(after))},
        {"chance", said<"chance to the end">(), pair_of(chance_of(before), chance_of(after))},
        {"lasts", said<"lasts on likely figures">(), pair_of(lasts_of(before), lasts_of(after))},
        {"survives", said<"lasts the whole outage">(),
         pair_of(survives_of(before), survives_of(after))},
        {"voltage_at_inverter", said<"voltage at the inverter, at its rating">(),
         pair_of(lowest_voltage_of(before), lowest_voltage_of(after))},
        {"starts", said<"starting">(), pair_of(starts_of(before), starts_of(after))},
        {"weight", said<"weight">(), pair_of(weight_in_all(old_file), weight_in_all(new_file))},
        {"price", said<"price">(), pair_of(price_in_all(old_file), price_in_all(new_file))}};
}

Column words_column(std::string name, Said heading, std::vector<Said> points) {
    return {.name = std::move(name),
            .heading = std::move(heading),
            .unit = "",
            .points = std::move(points)};
}

Series moved_table(const std::vector<Moved>& moved) {
    std::vector<Said> checks, circuits, befores, afters, texts;
    for (const Moved& one : moved) {
        checks.push_back(check_in_words(one.check));
        circuits.push_back(place_in_words(one.circuit));
        befores.push_back(verdict_in_words(one.before));
        afters.push_back(verdict_in_words(one.after));
        texts.push_back(one.text);
    }
    return {.name = "moved",
            .title = said<"Checks that are better or worse">(),
            .columns = {words_column("check", said<"check">(), checks),
                        words_column("circuit", said<"circuit">(), circuits),
                        words_column("before", said<"{?build}old">(), befores),
                        words_column("after", said<"{?build}new">(), afters),
                        words_column("text", said<"what is found now">(), texts)},
            .brief = !moved.empty()};
}

Series key_table(const std::vector<questions::ChangedKey>& keys) {
    const auto told = [](const questions::ChangedKey::Value& value) -> Code {
        return value.written.empty() ? Code{"-", "-"} : Code{value.written, value.said};
    };
    std::vector<Said> names;
    std::vector<Code> befores, afters;
    for (const questions::ChangedKey& key : keys) {
        names.push_back(said<"{key}">(key.key));
        befores.push_back(told(key.before));
        afters.push_back(told(key.after));
    }
    return {.name = "keys",
            .title = said<"Values of the files that differ">(),
            .columns = {words_column("key", said<"key">(), names),
                        {"old", said<"{?build}old">(), "", befores},
                        {"new", said<"{?build}new">(), "", afters}}};
}

}  // namespace

Answer compare_answer(const questions::CompareFound& found) {
    const auto& old_build = found.old_build;
    const auto& new_build = found.new_build;
    return {.question = "compare",
            .title = units::quote(old_build.read.file_name, 200) + " -> " +
                     units::quote(new_build.read.file_name, 200),
            .sentences = sentences_of(found),
            .values = values_of(found),
            .findings = findings_of(found),
            .working = wiring_working(new_build.read.scenario, new_build.fit),
            .assumptions = new_build.fit.assumptions,
            .cautions = wiring_cautions(new_build.read.scenario, new_build.fit),
            .series = {moved_table(found.moved), key_table(found.keys)},
            .wiring = wiring_diagram(new_build.read.scenario, new_build.fit),
            .closing = closing_line()};
}

}  // namespace answers
