#include "answers/packs/answer.hpp"

#include <algorithm>

#include <fmt/format.h>

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

Value whole(int number) {
    return {static_cast<std::int64_t>(number)};
}

template <class Written>
Value value_of(Written quantity) {
    return quantity_or_reason(shown(quantity), "the number is not finite");
}

void add_figures(Members& members, const chance::Figures& figures, bool timed) {
    members.push_back({"chance", "chance of lasting", value_of(figures.of)});
    members.push_back({"chance_low", "at least, 19 times in 20", value_of(figures.low)});
    members.push_back({"chance_high", "at most, 19 times in 20", value_of(figures.high)});
    members.push_back({"members", "members run", whole(figures.members)});
    const auto add = [&](const char* key, const char* label, units::Duration time) {
        members.push_back(
            {key, label, timed ? value_of(time) : Value{Absent{"only the chance was counted"}}});
    };
    add("count_on", "may be counted on for, with the chance asked for", figures.count_on);
    add("nine_in_ten", "nine in ten last longer", figures.nine_in_ten);
    add("half", "half last longer", figures.half);
    add("one_in_ten", "one in ten lasts longer", figures.one_in_ten);
}

Members members_of(const Build& build) {
    Members members{{"packs", "packs", whole(build.packs)},
                    {"panels", "panels", whole(build.panels)}};
    add_figures(members, build.figures, build.timed);
    members.push_back({"weight", "packs and panels weigh",
                       build.bill.weight ? value_of(*build.bill.weight)
                                         : Value{Absent{"some pack or panel has no weight"}}});
    members.push_back({"price", "packs and panels cost",
                       build.bill.price
                           ? Value{Quantity{build.bill.price->amount(), "1",
                                            fmt::format("{:.0f}", build.bill.price->amount())}}
                           : Value{Absent{"some pack or panel has no price"}}});
    members.push_back({"trips", "walks to carry them",
                       build.bill.trips
                           ? whole(*build.bill.trips)
                           : Value{Absent{"needs every weight and goal.carry_at_most"}}});
    return members;
}

Value build_or_reason(const std::optional<Build>& build, const char* reason) {
    if (!build) return {Absent{reason}};
    return {members_of(*build)};
}

Value grid(const sizing::Grid& all) {
    List list;
    for (const Cell& cell : all.cells) {
        Members members{{"packs", "packs", whole(cell.packs)},
                        {"panels", "panels", whole(cell.panels)}};
        add_figures(members, cell.figures, cell.timed);
        list.push_back({std::move(members)});
    }
    return {std::move(list)};
}

Members values_of(const scenario::Scenario& scenario, const questions::PacksFound& found) {
    const auto& builds = found.builds;
    Members values;
    values.push_back({"feasible", "something meets the goal", {builds.feasible}});
    values.push_back({"goal", "chance asked for", value_of(builds.goal)});
    if (builds.with_these_panels) {
        const auto& build = *builds.with_these_panels;
        for (auto& member : members_of(build))
            values.push_back(std::move(member));
        values.push_back({"to_build", "packs to build beside those in the case",
                          whole(packs_to_build(scenario, build.packs))});
    } else {
        const Absent reason{"no number of packs meets the goal with these panels"};
        for (const char* key : {"packs", "chance", "weight", "price"})
            values.push_back({key, key, {reason}});
        values.push_back({"panels", "panels", whole(found.panels)});
        values.push_back(
            {"members", "members run", whole(found.grid.cells.front().figures.members)});
    }
    if (found.starts)
        values.push_back(
            {"packs_to_start", "packs that the motors need to start", whole(found.starts->packs)});
    const char* none = "none meets the goal, or some figure is not given";
    const auto aside = [&](const char* key, const char* label, Value value) {
        values.push_back({key, label, std::move(value), true});
    };
    aside("of_the_file", "as the file has it",
          build_or_reason(found.of_the_file, "it lies beyond the builds looked at"));
    aside("one_fewer", "one pack fewer", build_or_reason(builds.one_fewer, none));
    aside("one_more", "one pack more", build_or_reason(builds.one_more, none));
    aside("cheapest", "cheapest", build_or_reason(builds.cheapest, none));
    aside("lightest", "lightest", build_or_reason(builds.lightest, none));
    aside("fewest_trips", "fewest walks", build_or_reason(builds.fewest_trips, none));
    aside("grid", "every build tried", grid(found.grid));
    return values;
}

void add(std::vector<PinnedFinding>& findings, Severity severity, std::string where,
         std::string text, std::string mend, std::string source) {
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
        fmt::format("It is close: {} against a goal of {}. More members may put it on either "
                    "side.",
                    chance_and_interval(figures), goal_in_words(found.builds.goal)),
        "build one pack more, or one panel more", "chance/method.md (11)");
}

void add_starts(std::vector<PinnedFinding>& findings, const questions::PacksFound& found) {
    if (!found.starts) return;
    const auto& starts = *found.starts;
    if (starts.packs > 1)
        add(findings, Severity::note, "pack",
            fmt::format("{} {} packs to start for sure, whatever the weather; builds with fewer "
                        "are not counted as meeting the goal.",
                        starts.load, starts.packs),
            "see candlemark start", "starting/method.md (5)");
    if (!starts.never.empty())
        add(findings, Severity::caution, "load",
            fmt::format("No number of packs makes it sure that {} start{}: the limit lies "
                        "elsewhere.",
                        fmt::join(starts.never, ", "), starts.never.size() == 1 ? "s" : ""),
            "see candlemark start for what stands in the way", "starting/method.md (5)");
}

bool spending_is_bounded(const scenario::Scenario& scenario) {
    return scenario.goal && scenario.goal->spend_at_most;
}

// The first entry of packs or panels that leaves a figure out, by its key.
template <class Member, class OfPanel>
std::string left_out(const scenario::Scenario& scenario, Member of_pack, OfPanel of_panel) {
    for (std::size_t i = 0; i < scenario.packs.size(); ++i)
        if (!(scenario.packs[i].*of_pack)) return fmt::format("pack[{}]", i);
    for (std::size_t i = 0; i < scenario.panels.size(); ++i)
        if (!(scenario.panels[i].*of_panel)) return fmt::format("panel[{}]", i);
    return "";
}

void add_unknown_figures(std::vector<PinnedFinding>& findings, const scenario::Scenario& scenario) {
    const auto add_for = [&](const std::string& entry, const char* key, const char* best) {
        if (entry.empty()) return;
        add(findings, Severity::note, fmt::format("{}.{}", entry, key),
            fmt::format("{} has no {}, so no build with it is called the {}.", entry, key, best),
            fmt::format("give every [[pack]] and [[panel]] a {}", key), "");
    };
    const auto priceless = left_out(scenario, &scenario::Pack::price, &scenario::Panel::price);
    add_for(priceless, "price", "cheapest");
    if (!priceless.empty() && spending_is_bounded(scenario))
        add(findings, Severity::caution, "goal.spend_at_most",
            fmt::format("Builds with {} could not be held against what may be spent: it has no "
                        "price.",
                        priceless),
            "give it a price", "");
    add_for(left_out(scenario, &scenario::Pack::weight, &scenario::Panel::weight), "weight",
            "lightest");
    if (sizing::something_is_too_heavy(scenario))
        add(findings, Severity::caution, "goal.carry_at_most",
            "One pack or panel alone is heavier than what is to be carried at most.",
            "build smaller packs, or carry it by two", "");
}

bool has_cold_food(const scenario::Load& load) {
    return demand::has_compressor(load);
}

void add_food(std::vector<PinnedFinding>& findings, const scenario::Scenario& scenario) {
    if (std::ranges::none_of(scenario.loads, has_cold_food)) return;
    add(findings, Severity::note, "loads",
        "Switched off and kept shut, a refrigerator keeps food for about 4 h, a full freezer for "
        "48 h, a half-full one for 24 h. What was above 4 degC (40 degF) for more than 2 h goes.",
        "freeze water in bottles before the storm; open the doors as little as you can",
        "[USDA food] safety in power outages");
    add(findings, Severity::note, "loads",
        "Running a refrigerator a quarter of the time does not save three quarters: the heat that "
        "came in must be taken out again. What is saved is the inverter's own draw meanwhile, and "
        "what a warmer inside lets in less.",
        "", "energy balance of a cold room; common practice, no source");
}

// How far was looked, where that is less than is usual.
void add_how_far(std::vector<PinnedFinding>& findings, const questions::LookedAt& most) {
    if (!most.fewer) return;
    const std::string panels = most.panels > 0 ? fmt::format(" and {} panels", most.panels) : "";
    add(findings, Severity::note, "packs",
        fmt::format("Only builds of up to {} packs{} were looked at: where nobody knows how long "
                    "the outage lasts each is run by itself.",
                    most.packs, panels),
        fmt::format("For all with up to {} packs and {} panels give --members {} and wait.",
                    questions::usual_most_packs, questions::usual_most_panels, chance::lanes),
        "sizing/method.md (3)");
}

std::vector<PinnedFinding> findings_of(const scenario::Scenario& scenario,
                                       const outage::Ready& ready,
                                       const questions::PacksFound& found) {
    std::vector<PinnedFinding> findings;
    if (!found.builds.feasible)
        add(findings, Severity::stop, "goal.chance",
            fmt::format("No build up to {} pack{} and {} panel{}{} meets the goal.",
                        found.grid.most_packs, found.grid.most_packs == 1 ? "" : "s",
                        found.grid.most_panels, found.grid.most_panels == 1 ? "" : "s",
                        spending_is_bounded(scenario) ? " for what may be spent" : ""),
            "leave out loads from the bottom of the list of priorities, plan for a shorter time, "
            "or add another source",
            "sizing/method.md (3)");
    else if (!found.builds.with_these_panels)
        add(findings, Severity::caution, "panel[0].count",
            spending_is_bounded(scenario)
                ? "With these panels no number of packs meets the goal for what may be spent."
                : "More packs alone do not meet the goal; the sun must give more back.",
            "add panels, or see which loads the list switches off first", "sizing/method.md (3)");
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
    const auto count = [](double number) {
        return Quantity{number, "1", fmt::format("{:.0f}", number)};
    };
    std::vector<WorkingRow> rows{{"Builds", "builds looked at", count(double(grid.cells.size())),
                                  "sizing method.md (3)", ""},
                                 {"Builds", "outages run for them", count(double(grid.outages_run)),
                                  "sizing method.md (3)", "the same members for each build"}};
    if (const auto& build = found.builds.with_these_panels) {
        rows.push_back({"Chance", "members run", count(build->figures.members),
                        "chance method.md (1) to (4)", fmt::format("seed {}", found.seed)});
        rows.push_back({"Chance", "of these lasted to the end, share", shown(build->figures.of),
                        "chance method.md (10)", ""});
    }
    return rows;
}

scenario::Assumptions assumptions_of(const scenario::Scenario& scenario, const outage::Ready& ready,
                                     const questions::PacksFound& found) {
    scenario::Assumptions assumptions = ready.assumptions;
    if (!scenario.goal || !scenario.goal->chance)
        assumptions.push_back({"goal.chance",
                               found.builds.goal > units::Probability(0.9)
                                   ? "somebody's health hangs on it: 99 times in a hundred"
                                   : "nine times in ten is enough",
                               "ours"});
    if (found.grid.most_panels == 0)
        assumptions.push_back(
            {"panel", "no panel is described, so none is counted", "add a [[panel]] table"});
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
            .closing = std::string(closing_line),
            .builds = builds_chart(found)};
}

}  // namespace answers
