#include "answers/packs/answer.hpp"

#include <algorithm>

#include "answers/cautions.hpp"
#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "answers/packs/builds_chart.hpp"
#include "answers/packs/sentences.hpp"
#include "answers/packs/series.hpp"
#include "answers/shown.hpp"
#include "demand/power.hpp"

namespace answers {

namespace {

using scenario::Finding;
using scenario::Severity;
using sizing::Build;
using sizing::Cell;
using words::Said;
using words::said;
using words::said_of;

Value whole(int number) {
    return {static_cast<std::int64_t>(number)};
}

template <class Written>
Value value_of(Written quantity) {
    return quantity_or_reason(shown(quantity), said<"the number is not finite">());
}

void add_figures(Members& members, const chance::Figures& figures, bool timed) {
    members.push_back({"chance", said<"chance of lasting">(), value_of(figures.of)});
    members.push_back({"chance_low", said<"at least, 19 times in 20">(), value_of(figures.low)});
    members.push_back({"chance_high", said<"at most, 19 times in 20">(), value_of(figures.high)});
    members.push_back({"members", said<"members run">(), whole(figures.members)});
    const auto add = [&](const char* key, Said label, units::Duration time) {
        members.push_back(
            {key, std::move(label),
             timed ? value_of(time) : Value{Absent{said<"only the chance was counted">()}}});
    };
    add("count_on", said<"may be counted on for, with the chance asked for">(), figures.count_on);
    add("nine_in_ten", said<"nine in ten last longer">(), figures.nine_in_ten);
    add("half", said<"half last longer">(), figures.half);
    add("one_in_ten", said<"one in ten lasts longer">(), figures.one_in_ten);
}

Members members_of(const Build& build) {
    Members members{{"packs", said<"packs">(), whole(build.packs)},
                    {"panels", said<"panels">(), whole(build.panels)}};
    add_figures(members, build.figures, build.timed);
    members.push_back({"weight", said<"packs and panels weigh">(),
                       build.bill.weight
                           ? value_of(*build.bill.weight)
                           : Value{Absent{said<"some pack or panel has no weight">()}}});
    members.push_back({"price", said<"packs and panels cost">(),
                       build.bill.price
                           ? Value{plain_number(build.bill.price->amount(), 0)}
                           : Value{Absent{said<"some pack or panel has no price">()}}});
    members.push_back({"trips", said<"walks to carry them">(),
                       build.bill.trips
                           ? whole(*build.bill.trips)
                           : Value{Absent{said<"needs every weight and goal.carry_at_most">()}}});
    return members;
}

Value build_or_reason(const std::optional<Build>& build, Said reason) {
    if (!build) return {Absent{std::move(reason)}};
    return {members_of(*build)};
}

Value grid(const sizing::Grid& all) {
    List list;
    for (const Cell& cell : all.cells) {
        Members members{{"packs", said<"packs">(), whole(cell.packs)},
                        {"panels", said<"panels">(), whole(cell.panels)}};
        add_figures(members, cell.figures, cell.timed);
        list.push_back({std::move(members)});
    }
    return {std::move(list)};
}

Members values_of(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    const auto& builds = found.builds;
    Members values;
    values.push_back({"feasible", said<"a build meets the goal">(), {builds.feasible}});
    values.push_back({"goal", said<"chance asked for">(), value_of(builds.goal)});
    if (builds.with_these_panels) {
        const auto& build = *builds.with_these_panels;
        for (auto& member : members_of(build))
            values.push_back(std::move(member));
        values.push_back({"to_build", said<"packs to build beside those in the case">(),
                          whole(packs_to_build(scenario, build.packs))});
    } else {
        const Absent reason{said<"no number of packs meets the goal with these panels">()};
        values.push_back({"packs", said<"packs">(), {reason}});
        values.push_back({"chance", said<"chance">(), {reason}});
        values.push_back({"weight", said<"weight">(), {reason}});
        values.push_back({"price", said<"price">(), {reason}});
        values.push_back({"panels", said<"panels">(), whole(found.panels)});
        values.push_back(
            {"members", said<"members run">(), whole(found.grid.cells.front().figures.members)});
    }
    if (found.starts)
        values.push_back({"packs_to_start", said<"packs that the motors need to start">(),
                          whole(found.starts->packs)});
    const Said none = said<"none meets the goal, or some figure is not given">();
    const auto aside = [&](const char* key, Said label, Value value) {
        values.push_back({key, std::move(label), std::move(value), true});
    };
    aside("of_the_file", said<"as the file has it">(),
          build_or_reason(found.of_the_file, said<"it lies beyond the builds looked at">()));
    aside("one_fewer", said<"one pack fewer">(), build_or_reason(builds.one_fewer, none));
    aside("one_more", said<"one pack more">(), build_or_reason(builds.one_more, none));
    aside("cheapest", said<"cheapest">(), build_or_reason(builds.cheapest, none));
    aside("lightest", said<"lightest">(), build_or_reason(builds.lightest, none));
    aside("fewest_trips", said<"fewest walks">(), build_or_reason(builds.fewest_trips, none));
    aside("grid", said<"every build tried">(), grid(found.grid));
    return values;
}

void add(std::vector<PinnedFinding>& findings, Severity severity, Said where, Said text, Said mend,
         Said source) {
    findings.push_back({.finding = {.severity = severity,
                                    .where = std::move(where),
                                    .text = std::move(text),
                                    .mend = std::move(mend),
                                    .source = std::move(source)}});
}

void add_close_call(std::vector<PinnedFinding>& findings, const questions::PacksFound& found) {
    if (!found.builds.with_these_panels) return;
    const auto& figures = found.builds.with_these_panels->figures;
    if (figures.low > found.builds.goal) return;
    add(findings, Severity::note, "packs",
        said<"It is close: {chance} against a goal of {goal}. Counting more cases may put it "
             "on either side.">(chance_and_interval(figures), goal_in_words(found.builds.goal)),
        said<"build one pack more, or one panel more">(), "chance/method.md (11)");
}

void add_starts(std::vector<PinnedFinding>& findings, const questions::PacksFound& found) {
    if (!found.starts) return;
    const auto& starts = *found.starts;
    if (starts.packs > 1)
        add(findings, Severity::note, "pack",
            said<"{load} needs {packs} packs to start for sure, whatever the weather; builds with "
                 "fewer are not counted as meeting the goal.">(starts.load, starts.packs),
            said<"see the answer about starts">(), "starting/method.md (5)");
    if (starts.never.empty()) return;
    const Said loads =
        words::joined({starts.never.begin(), starts.never.end()}, words::List::Joint::comma);
    add(findings, Severity::caution, "load",
        starts.never.size() == 1
            ? said<"No number of packs makes it sure that {load} starts: the limit lies "
                   "elsewhere.">(loads)
            : said<"No number of packs makes it sure that {loads} start: the limit lies "
                   "elsewhere.">(loads),
        said<"see the answer about starts for what stands in the way">(), "starting/method.md (5)");
}

bool spending_is_bounded(const scenario::Scenario& scenario) {
    return scenario.goal && scenario.goal->spend_at_most;
}

// The first entry of packs or panels that leaves a figure out, by its key.
template <class Member, class OfPanel>
std::string left_out(const scenario::Scenario& scenario, Member of_pack, OfPanel of_panel) {
    for (std::size_t i = 0; i < scenario.packs.size(); ++i)
        if (!(scenario.packs[i].*of_pack)) return "pack[" + std::to_string(i) + "]";
    for (std::size_t i = 0; i < scenario.panels.size(); ++i)
        if (!(scenario.panels[i].*of_panel)) return "panel[" + std::to_string(i) + "]";
    return "";
}

void add_unknown_figures(std::vector<PinnedFinding>& findings, const scenario::Scenario& scenario) {
    const auto priceless = left_out(scenario, &scenario::Pack::price, &scenario::Panel::price);
    if (!priceless.empty())
        add(findings, Severity::note, priceless + ".price",
            said<"{part} has no price, so no build with it is called the cheapest.">(priceless),
            said<"give every {packs} and {panels} a price">("[[pack]]", "[[panel]]"), {});
    if (!priceless.empty() && spending_is_bounded(scenario))
        add(findings, Severity::caution, "goal.spend_at_most",
            said<"Builds with {part} could not be held against what may be spent: it has no "
                 "price.">(priceless),
            said<"give it a price">(), {});
    const auto weightless = left_out(scenario, &scenario::Pack::weight, &scenario::Panel::weight);
    if (!weightless.empty())
        add(findings, Severity::note, weightless + ".weight",
            said<"{part} has no weight, so no build with it is called the lightest.">(weightless),
            said<"give every {packs} and {panels} a weight">("[[pack]]", "[[panel]]"), {});
    if (sizing::something_is_too_heavy(scenario))
        add(findings, Severity::caution, "goal.carry_at_most",
            said<"One pack or panel alone is heavier than what is to be carried at most.">(),
            said<"build smaller packs, or carry it by two">(), {});
}

bool has_cold_food(const scenario::Load& load) {
    return demand::has_compressor(load);
}

void add_food(std::vector<PinnedFinding>& findings, const scenario::Scenario& scenario) {
    if (std::ranges::none_of(scenario.loads, has_cold_food)) return;
    add(findings, Severity::note, said<"loads">(),
        said<"Switched off and kept shut, a refrigerator keeps food for about 4 h, a full freezer "
             "for 48 h, a half-full one for 24 h. What was above {warm} for more than 2 h "
             "goes.">(units::celsius(4.0)),
        said<"freeze water in bottles before the storm; open the doors as little as you can">(),
        said<"{source} safety in power outages">("[USDA food]"));
    add(findings, Severity::note, said<"loads">(),
        said<"Running a refrigerator a quarter of the time does not save three quarters: the heat "
             "that came in must be taken out again. What is saved is the inverter's own draw "
             "meanwhile, and what a warmer inside lets in less.">(),
        {}, said<"energy balance of a cold room; common practice, no source">());
}

// How far was looked, where that is less than is usual.
void add_how_far(std::vector<PinnedFinding>& findings, const questions::LookedAt& most) {
    if (!most.fewer) return;
    const Said text =
        most.panels > 0
            ? said<
                  "Only builds of up to {packs} packs and {panels} panels were looked at: where "
                  "nobody knows how long the outage lasts each is run by itself.">(most.packs,
                                                                                   most.panels)
            : said<
                  "Only builds of up to {packs} packs were looked at: where nobody knows how long "
                  "the outage lasts each is run by itself.">(most.packs);
    add(findings, Severity::note, said<"packs">(), text,
        said<"For all with up to {packs} packs and {panels} panels give {option} and wait.">(
            questions::usual_most_packs, questions::usual_most_panels,
            "--members " + std::to_string(chance::lanes)),
        "sizing/method.md (3)");
}

Said nothing_meets_it(const sizing::Grid& grid, bool for_so_much) {
    const Said most =
        said<"{packs} and {panels}">(said_of<"{n} pack", "{n} packs">(grid.most_packs),
                                     said_of<"{n} panel", "{n} panels">(grid.most_panels));
    return for_so_much ? said<"No build up to {build} for what may be spent meets the goal.">(most)
                       : said<"No build up to {build} meets the goal.">(most);
}

std::vector<PinnedFinding> findings_of(const scenario::Scenario& scenario,
                                       const outage::Ready& ready,
                                       const questions::PacksFound& found) {
    std::vector<PinnedFinding> findings;
    if (!found.builds.feasible)
        add(findings, Severity::stop, "goal.chance",
            nothing_meets_it(found.grid, spending_is_bounded(scenario)),
            said<"leave out loads from the bottom of the list of priorities, plan for a shorter "
                 "time, or add another source">(),
            "sizing/method.md (3)");
    else if (!found.builds.with_these_panels)
        add(findings, Severity::caution, "panel[0].count",
            spending_is_bounded(scenario)
                ? said<"With these panels no number of packs meets the goal for what may be "
                       "spent.">()
                : said<"More packs alone do not meet the goal; the sun must give more back.">(),
            said<"add panels, or see which loads the list switches off first">(),
            "sizing/method.md (3)");
    add_close_call(findings, found);
    add_starts(findings, found);
    add_unknown_figures(findings, scenario);
    add_food(findings, scenario);
    add_how_far(findings, found.looked_at);
    for (const auto& finding : ready.findings)
        findings.push_back({.finding = finding});
    sort_by_weight(findings);
    return findings;
}

std::vector<WorkingRow> working_of(const questions::PacksFound& found) {
    const auto& grid = found.grid;
    const auto count = [](double number) { return plain_number(number, 0); };
    std::vector<WorkingRow> rows{
        {said<"Builds">(), said<"builds looked at">(), count(double(grid.cells.size())),
         "sizing method.md (3)", ""},
        {said<"Builds">(), said<"outages run for them">(), count(double(grid.outages_run)),
         "sizing method.md (3)", said<"the same members for each build">()}};
    if (const auto& build = found.builds.with_these_panels) {
        rows.push_back({said<"Chance">(), said<"members run">(), count(build->figures.members),
                        "chance method.md (1) to (4)", said<"seed {seed}">(found.seed)});
        rows.push_back({said<"Chance">(), said<"of these lasted to the end, share">(),
                        shown(build->figures.of), "chance method.md (10)", ""});
    }
    return rows;
}

scenario::Assumptions assumptions_of(const scenario::Scenario& scenario, const outage::Ready& ready,
                                     const questions::PacksFound& found) {
    scenario::Assumptions assumptions = ready.assumptions;
    if (!scenario.goal || !scenario.goal->chance)
        assumptions.push_back(
            {"goal.chance",
             found.builds.goal > units::Probability(0.9)
                 ? said<"somebody's health depends on it: 99 times in a hundred">()
                 : said<"nine times in ten is enough">(),
             said<"ours">()});
    if (found.grid.most_panels == 0)
        assumptions.push_back({"panel", said<"no panel is described, so none is counted">(),
                               said<"add a {table} table">("[[panel]]")});
    return assumptions;
}

}  // namespace

Answer packs_answer(const questions::PacksFound& found) {
    const auto& scenario = found.scenario;
    const auto& ready = *found.ready;
    return {.question = "packs",
            .title = scenario.title,
            .sentences = packs_sentences(scenario, found),
            .values = values_of(scenario, found),
            .findings = findings_of(scenario, ready, found),
            .working = working_of(found),
            .assumptions = assumptions_of(scenario, ready, found),
            .cautions = cautions_for(scenario),
            .series = packs_series(found),
            .closing = closing_line(),
            .builds = builds_chart(found)};
}

}  // namespace answers
