#include "answers/sun/findings.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "answers/outage/findings.hpp"
#include "answers/shown.hpp"
#include "answers/sun/words.hpp"

namespace answers {

namespace {

using scenario::Scenario;
using scenario::Severity;
using words::Said;
using words::said;

struct Finder {
    const Scenario& scenario;
    const questions::SunResults& results;
    std::vector<PinnedFinding> findings = {};

    void add(Severity severity, Said where, Said text, Said mend, Said source = {}) {
        findings.push_back({.finding = {.severity = severity,
                                        .where = std::move(where),
                                        .text = words::as_sentence(std::move(text)),
                                        .mend = words::as_sentence(std::move(mend)),
                                        .source = std::move(source)}});
    }
};

// "On day 2, 3 and 4 of the outage …"
Said covered_on(const std::vector<int>& days) {
    if (days.size() == 1)
        return said<"on day {n} of the outage these panels are covered or stowed and give nothing">(
            days.front());
    std::vector<Said> each;
    for (const int day : days)
        each.push_back(said<"{n}">(day));
    return said<"on days {days} of the outage these panels are covered or stowed and give nothing">(
        words::joined(std::move(each), words::List::Joint::all));
}

// Days without any sun are worth a word: an answer with a zero must say why.
void find_dark_days(Finder& finder) {
    for (std::size_t i = 0; i < finder.scenario.panels.size(); ++i) {
        const auto& covered = finder.scenario.panels[i].covered_days;
        if (!covered.empty()) {
            finder.add(Severity::note, "panel[" + std::to_string(i) + "].covered_days",
                       covered_on(covered),
                       said<"clear off the snow when you can reach them without danger">());
        }
    }
    const auto& results = finder.results;
    const units::Energy offered =
        results.unit ? results.unit->sun.offered.high : results.recharge.whole.high;
    if (!results.setup.groups.empty() && offered < 1.0 * units::watt_hour) {
        finder.add(Severity::caution, said<"panels">(),
                   said<"the panels give nothing over this whole outage">(),
                   said<"plan without the sun: it does not rise, or the panels are covered or "
                        "taken in">());
    }
}

// The energies of weathers whose dull days give next to nothing.
void find_dull_start(Finder& finder) {
    const auto& days = finder.results.recharge.days;
    const bool storm = finder.scenario.outage.cause == scenario::Cause::storm;
    const bool forecast = !finder.scenario.outage.sky.empty();
    if (finder.results.setup.hours || !storm || forecast || days.empty()) {
        return;
    }
    finder.add(Severity::note, "outage.cause",
               said<"the storm's own day is taken as one of the dullest tenth of the month">(),
               said<"say {clear} or {unknown} where no storm begins it">("cause = \"clear\"",
                                                                         "\"unknown\""),
               said<"ours">());
}

void find_turned_away(Finder& finder) {
    if (!finder.results.unit) {
        return;
    }
    const auto& mean = finder.results.unit->sun.mean;
    const units::Energy offered = mean.offered();
    const auto much = [&](units::Energy share, double of) {
        return share > of * offered && share > 50.0 * units::watt_hour;
    };
    if (much(mean.clipped, 0.05)) {
        finder.add(Severity::note, said<"charge controller">(),
                   said<"the limits of the charge controller turn away {energy} beside the "
                        "{offered} that it passes on">(in_words(mean.clipped), in_words(offered)),
                   said<"a controller or input with a higher limit would pass it on">());
    }
    if (much(mean.full, 0.1)) {
        finder.add(Severity::note, said<"packs">(),
                   said<"{energy} of the {offered} offered is not taken: the packs are full, or "
                        "nearly so">(in_words(mean.full), in_words(offered)),
                   said<"move loads that can wait into the sunny hours">());
    }
    if (much(mean.too_cold, 0.1)) {
        finder.add(Severity::caution, said<"packs">(),
                   said<"{energy} of the {offered} offered is not taken: the packs are too cold "
                        "to charge">(in_words(mean.too_cold), in_words(offered)),
                   said<"keep the packs warm">());
    }
}

// How far a plane that stands still looks off the equator; nothing where it is turned in the day or
// lies nearly flat.
std::optional<units::Angle> off_the_equator(const solar::PanelGroup& group, bool north) {
    constexpr units::Angle nearly_flat = 15.0 * units::degree;
    if (group.aims.size() != 1 || group.aims.front().tilt < nearly_flat) {
        return std::nullopt;
    }
    const double off = group.aims.front().azimuth / units::degree - (north ? 180.0 : 0.0);
    return std::abs(std::remainder(off, 360.0)) * units::degree;
}

// Twelve means say nothing of mornings and afternoons. solar method.md (54)
void find_turned_aside(Finder& finder) {
    const auto& setup = finder.results.setup;
    if (setup.hours) {
        return;
    }
    std::optional<units::Angle> widest;
    for (const auto& group : setup.groups) {
        const auto off = off_the_equator(group, setup.site.at.latitude > units::Angle{});
        if (off && *off >= 30.0 * units::degree && *off <= 150.0 * units::degree) {
            widest = std::max(widest.value_or(*off), *off);
        }
    }
    if (!widest) {
        return;
    }
    finder.add(
        Severity::note, "panel.azimuth",
        said<"these panels look {angle} off the equator, and a place's monthly means say nothing "
             "of its mornings and afternoons: where fog or storms keep to one of them, panels "
             "turned like this give up to a third more or less">(units::amount_in(*widest, "°", 0)),
        said<"an hourly weather file of a station near by tells them apart">(),
        "solar/method.md (54)");
}

void find_gassing(Finder& finder) {
    if (!finder.results.unit || !gasses_away(finder.results.unit->plan.likely.ledger)) {
        return;
    }
    const auto& ledger = finder.results.unit->plan.likely.ledger;
    finder.add(Severity::note, said<"packs">(), gassing_in_words(ledger), instead_of_gassing(),
               said<"{method}, law from memory">("battery/method.md (42)"));
}

void find_no_unit(Finder& finder) {
    if (finder.results.unit || finder.results.setup.groups.empty()) {
        return;
    }
    finder.add(Severity::note, said<"packs">(),
               said<"this answer is for the panels alone, not for what takes their charge: {why}">(
                   finder.results.why_no_unit),
               said<"mend that to see how long it lasts and how many panels still help">());
}

}  // namespace

std::vector<PinnedFinding> sun_findings(const Scenario& scenario,
                                        const questions::SunResults& results) {
    Finder finder{.scenario = scenario, .results = results};
    for (const auto& finding : results.setup.findings) {
        finder.add(finding.severity, finding.where, finding.text, finding.mend, finding.source);
    }
    find_dark_days(finder);
    find_dull_start(finder);
    find_turned_away(finder);
    find_turned_aside(finder);
    find_gassing(finder);
    find_no_unit(finder);
    sort_by_weight(finder.findings);
    return std::move(finder.findings);
}

}  // namespace answers
