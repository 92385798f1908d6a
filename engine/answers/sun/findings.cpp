#include "answers/sun/findings.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "answers/outage/findings.hpp"
#include "answers/shown.hpp"
#include "answers/sun/words.hpp"

namespace answers {

namespace {

using scenario::Scenario;
using scenario::Severity;

std::string as_sentence(std::string words) {
    if (words.empty()) {
        return words;
    }
    words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    if (words.back() != '.') {
        words += '.';
    }
    return words;
}

struct Finder {
    const Scenario& scenario;
    const questions::SunResults& results;
    std::vector<PinnedFinding> findings = {};

    void add(Severity severity, std::string where, std::string text, std::string mend,
             std::string source = "") {
        findings.push_back({.finding = {.severity = severity,
                                        .where = std::move(where),
                                        .text = as_sentence(std::move(text)),
                                        .mend = as_sentence(std::move(mend)),
                                        .source = std::move(source)}});
    }
};

// Days without any sun are worth a word: an answer with a nought must say why.
void find_dark_days(Finder& finder) {
    for (std::size_t i = 0; i < finder.scenario.panels.size(); ++i) {
        const auto& covered = finder.scenario.panels[i].covered_days;
        if (!covered.empty()) {
            finder.add(Severity::note, fmt::format("panel[{}].covered_days", i),
                       fmt::format("on day {} of the outage these panels are covered or stowed "
                                   "and give nothing",
                                   fmt::join(covered, ", ")),
                       "Clear snow off as soon as it is safe to reach them");
        }
    }
    const auto& results = finder.results;
    const units::Energy offered =
        results.unit ? results.unit->sun.offered.high : results.recharge.whole.high;
    if (!results.setup.groups.empty() && offered < 1.0 * units::watt_hour) {
        finder.add(Severity::caution, "panel", "the panels give nothing over this whole outage",
                   "Plan without the sun: it does not rise, or the panels are covered or taken in");
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
               "the storm's own day is taken as one of the dullest tenth of the month",
               "Say cause = \"clear\" or \"unknown\" where no storm begins it", "ours");
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
        finder.add(Severity::note, "charge_controller",
                   fmt::format("the controller's limits turn away {} beside {} offered",
                               in_words(mean.clipped), in_words(offered)),
                   "A controller or input with a higher limit would pass it");
    }
    if (much(mean.full, 0.1)) {
        finder.add(Severity::note, "pack",
                   fmt::format("{} of {} offered is not taken: the packs are full, or taper",
                               in_words(mean.full), in_words(offered)),
                   "Move loads that can wait into the sunny hours");
    }
    if (much(mean.too_cold, 0.1)) {
        finder.add(Severity::caution, "pack",
                   fmt::format("{} of {} offered is not taken: the packs are too cold to charge",
                               in_words(mean.too_cold), in_words(offered)),
                   "Keep the packs warm");
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
        fmt::format("these panels look {:.0f} degrees off the equator, and a place's monthly "
                    "means say nothing of its mornings and afternoons: where fog or storms "
                    "keep to one of them, panels so turned give up to a third more or less",
                    *widest / units::degree),
        "An hourly weather file of a station near by tells them apart", "solar/method.md (54)");
}

void find_gassing(Finder& finder) {
    if (!finder.results.unit || !gasses_away(finder.results.unit->plan.likely.ledger)) {
        return;
    }
    const auto& ledger = finder.results.unit->plan.likely.ledger;
    finder.add(Severity::note, "pack",
               fmt::format("{} of what the packs take is not stored: the fuller lead-acid is, the "
                           "more of its charge turns to gas and heat",
                           in_words(ledger.charging_loss)),
               std::string(instead_of_gassing), "battery/method.md (42), law from memory");
}

void find_no_unit(Finder& finder) {
    if (finder.results.unit || finder.results.setup.groups.empty()) {
        return;
    }
    finder.add(Severity::note, "pack",
               fmt::format("only the panels are answered for, not what takes their charge: {}",
                           finder.results.why_no_unit),
               "Mend that to see how long it lasts and how many panels still help");
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
