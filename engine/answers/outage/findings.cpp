#include "answers/outage/findings.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <set>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "answers/outage/bank_findings.hpp"
#include "answers/outage/starts.hpp"
#include "answers/shown.hpp"
#include "demand/power.hpp"
#include "outage/rated_leads.hpp"

namespace answers {

namespace {

using outage::Course;
using outage::Event;
using outage::EventKind;
using outage::Plan;
using scenario::Scenario;
using scenario::Severity;
using units::Duration;

constexpr std::string_view from_the_course = "hour by hour over the outage";

struct Finder {
    const Scenario& scenario;
    const Plan& plan;
    std::vector<PinnedFinding> findings;

    void add(Severity severity, std::string where, std::string text, std::string mend,
             std::optional<Duration> at = {}, std::string_view source = from_the_course) {
        findings.push_back(
            {.finding = {.severity = severity,
                         .where = std::move(where),
                         .text = std::move(text),
                         .mend = std::move(mend),
                         .source = std::string(source)},
             .at = at,
             .when = at ? weekday_and_time(scenario.outage.starts + *at) : std::string()});
    }

    const Event* first(EventKind kind) const {
        const auto found = std::ranges::find(plan.likely.events, kind, &Event::kind);
        return found == plan.likely.events.end() ? nullptr : &*found;
    }

    std::string how_often(EventKind kind) const {
        const auto times = std::ranges::count(plan.likely.events, kind, &Event::kind);
        return times > 1 ? fmt::format(", {} times in all", times) : "";
    }
};

// ---- What stands in the way of the power itself.

void find_overload(Finder& finder) {
    if (const Event* event = finder.first(EventKind::inverter_overload)) {
        const auto watts =
            finder.scenario.inverter ? finder.scenario.inverter->continuous : units::Power{};
        const auto volt_amperes =
            finder.scenario.inverter && finder.scenario.inverter->continuous_apparent
                ? *finder.scenario.inverter->continuous_apparent
                : units::ApparentPower(watts);
        const auto often = finder.how_often(EventKind::inverter_overload);
        // Watts against watts; where those fit, it is the volt-amperes that do not.
        finder.add(
            Severity::stop, "inverter",
            event->power > watts
                ? fmt::format("The loads ask for {} and the inverter gives {}{}.",
                              in_words(event->power), in_words(watts), often)
                : fmt::format("The loads ask for {} at so low a power factor that the {} of the "
                              "inverter do not carry them{}.",
                              in_words(event->power), in_words(volt_amperes), often),
            "Run the large loads one after another, or fit a larger inverter.", event->at);
    }
}

void find_undeliverable(Finder& finder) {
    if (const Event* event = finder.first(EventKind::cannot_be_delivered)) {
        finder.add(Severity::stop, "packs",
                   fmt::format("{} is asked of the packs; they can give at most {} before the "
                               "voltage collapses{}.",
                               in_words(event->power), in_words(event->at_most),
                               finder.how_often(EventKind::cannot_be_delivered)),
                   "Add a pack in parallel, shorten or thicken the leads, or drop a large load.",
                   event->at);
    }
}

void find_over_current(Finder& finder) {
    if (const Event* event = finder.first(EventKind::packs_over_current)) {
        finder.add(Severity::stop, "packs",
                   fmt::format("A pack has to give {}, more than its protection allows{}{}.",
                               in_words(event->current),
                               after_words(*event).empty()
                                   ? ""
                                   : fmt::format(" for longer than {}", in_words(event->after, 2)),
                               finder.how_often(EventKind::packs_over_current)),
                   "Add a pack in parallel or drop a large load at this hour.", event->at);
    }
    if (const Event* event = finder.first(EventKind::fuse_opens)) {
        finder.add(
            Severity::stop, "fuse",
            fmt::format("A fuse opens at {}{}{}; what it feeds stays off until somebody "
                        "replaces it.",
                        in_words(abs(event->current)),
                        event->current < units::Current() ? " of charge" : "", after_words(*event)),
            event->current < units::Current()
                ? "Charge with less. A larger fuse only where wire, switch and connector "
                  "allow it."
                : "Lower the draw. A larger fuse only where wire, switch and connector allow it.",
            event->at);
    }
}

void find_main_fuse(Finder& finder) {
    if (const Event* event = finder.first(EventKind::main_fuse_opens)) {
        finder.add(Severity::stop, "inverter",
                   fmt::format("The fuse in front of the inverter opens at {}; everything behind "
                               "it stays off until somebody replaces it.",
                               in_words(event->current)),
                   "Lower the draw. A larger fuse only where wire, switch and connector allow it.",
                   event->at);
    }
}

void find_branch_fuses(Finder& finder) {
    std::set<std::size_t> told;
    for (const Event& event : finder.plan.likely.events) {
        if (event.kind != EventKind::branch_fuse_opens || !told.insert(event.branch).second) {
            continue;
        }
        finder.add(Severity::stop, "circuit " + finder.plan.branch_names.at(event.branch),
                   fmt::format("Its fuse opens at {}; everything behind it stays off until "
                               "somebody replaces it.",
                               in_words(event.current)),
                   "Lower the draw. A larger fuse only where wire, switch and connector allow it.",
                   event.at);
    }
}

// Stood, and so no failure; but nothing to build a plan on.
void find_strain(Finder& finder) {
    const auto& strain = finder.plan.likely.strain;
    const bool opened = finder.first(EventKind::packs_over_current) != nullptr ||
                        finder.first(EventKind::fuse_opens) != nullptr ||
                        finder.first(EventKind::one_over_current) != nullptr ||
                        finder.first(EventKind::one_fuse_opens) != nullptr;
    if (opened || strain.longest < 1.0 * units::second) {
        return;
    }
    finder.add(
        Severity::caution, "packs",
        fmt::format("A pack gives up to {}, for up to {} at a stretch above the {} it bears "
                    "for ever.",
                    in_words(strain.most), in_words(strain.longest, 2), in_words(strain.above)),
        "It rests on the pulse you give for the pack, or on when its fuse opens at the "
        "earliest. Add a pack, or let large loads run one after another.",
        std::nullopt, "pack.pulse; outage/method.md (13)");
}

// A plug opens nothing: it overheats; and a switch likewise.
std::string hot_mend(const outage::HotPart& hot, std::string_view or_else) {
    return fmt::format("Nothing opens at that current: the {} heats. Take a larger one, {}.",
                       hot.part.by == unit::Limiter::connector ? "plug" : "switch", or_else);
}

constexpr std::string_view rated_by_maker = "pack.connector or circuit.links, the maker's rating";

void find_hot_lead(Finder& finder, const outage::HotPart& hot) {
    const std::string where = "pack " + hot.pack;
    const auto part = unit::word_for(hot.part.by);
    const std::string carries = in_words(hot.carries);
    const std::string rated = in_words(hot.part.most.value);
    if (hot.flow == unit::Flow::out_of_pack)
        finder.add(
            Severity::stop, where,
            fmt::format("A pack gives up to {} through a {} rated {}.", carries, part, rated),
            hot_mend(hot, "add a pack, or drop a large load"), std::nullopt,
            std::string(rated_by_maker));
    else
        finder.add(Severity::stop, where,
                   fmt::format("A pack is charged with up to {} through a {} rated {}.", carries,
                               part, rated),
                   hot_mend(hot, "add a pack, or charge with less"), std::nullopt,
                   std::string(rated_by_maker));
}

void find_hot_parts(Finder& finder) {
    const auto& likely = finder.plan.likely;
    for (const auto& hot : outage::hot_parts(finder.plan.leads, likely.pack_currents))
        find_hot_lead(finder, hot);
    for (const auto& hot : outage::hot_parts(finder.plan.main_limits, likely.highest_main_current))
        finder.add(Severity::stop, "inverter",
                   fmt::format("Up to {} flows to it through a {} rated {}.", in_words(hot.carries),
                               unit::word_for(hot.part.by), in_words(hot.part.most.value)),
                   hot_mend(hot, "or drop a large load"), std::nullopt,
                   "circuit.links, the maker's rating");
}

void find_low_voltage(Finder& finder) {
    if (const Event* event = finder.first(EventKind::inverter_off_empty)) {
        finder.add(
            Severity::caution, "inverter",
            fmt::format("The packs cannot carry {} any more; what draws less goes on{}.",
                        in_words(event->power), finder.how_often(EventKind::inverter_off_empty)),
            "Add a pack, or drop the largest load at this hour.", event->at);
    }
    if (const Event* event = finder.first(EventKind::inverter_off_low_voltage)) {
        finder.add(Severity::caution, "inverter",
                   fmt::format("The inverter switches off on low voltage{}.",
                               finder.how_often(EventKind::inverter_off_low_voltage)),
                   "Add a pack, shorten or thicken the main cable, or drop a load at this hour.",
                   event->at);
    }
}

void find_empty_packs(Finder& finder) {
    struct Ending {
        EventKind kind;
        std::string_view text;
    };
    constexpr std::array endings{
        Ending{EventKind::packs_empty, "The packs are empty"},
        Ending{EventKind::packs_at_usable_limit,
               "The packs are as far down as you allow; nothing is switched off by that"},
        Ending{EventKind::packs_cut_off, "The packs' own low-voltage protection opens"}};
    for (const auto& ending : endings) {
        if (const Event* event = finder.first(ending.kind)) {
            finder.add(Severity::caution, "packs",
                       fmt::format("{}{}.", ending.text, finder.how_often(ending.kind)),
                       "Add packs or panels, or switch off comfort and work loads from the first "
                       "hour.",
                       event->at);
        }
    }
}

// ---- Who goes without.

void find_loads_without(Finder& finder) {
    const Course& course = finder.plan.likely;
    std::vector<std::string> others;
    Duration first = finder.scenario.outage.lasts;
    for (std::size_t i = 0; i < finder.plan.loads.size(); ++i) {
        const auto& use = finder.plan.loads[i];
        if (use.goes_without.empty()) {
            continue;
        }
        const auto& gap = use.goes_without.front();
        const bool medical =
            i < finder.scenario.loads.size() && demand::is_medical(finder.scenario.loads[i]);
        if (medical) {
            finder.add(Severity::stop, "load " + use.name,
                       fmt::format("Life and health: {} has no supply from this hour on, or for a "
                                   "part of what follows.",
                                   use.name),
                       "Plan a second way for it before anything else, and add packs until it "
                       "lasts.",
                       gap.from);
        } else {
            others.push_back(use.name);
            first = std::min(first, gap.from);
        }
    }
    if (!others.empty()) {
        finder.add(Severity::caution, "loads",
                   fmt::format("Without supply for {} in all, {} not served: {}.",
                               in_words(course.without, 2), in_words(course.ledger.unserved),
                               fmt::join(others, ", ")),
                   "See how far more packs carry, or drop what can wait.", first);
    }
}

std::string part_in_words(const Plan& plan, std::size_t part) {
    if (part == outage::the_inverter) return "What the inverter feeds";
    return part < plan.loads.size() ? plan.loads[part].name : "The 12 V loads";
}

// What a rest would bring back, though nobody asks for it.
void find_rests(Finder& finder) {
    const auto starts = finder.scenario.outage.starts;
    for (const auto& rest : finder.plan.likely.after_rest) {
        const auto who = part_in_words(finder.plan, rest.part);
        if (rest.lasts > Duration{})
            finder.add(Severity::note, "loads",
                       fmt::format("{}: out at {}; after a rest, from {}, it would run for {}.",
                                   who, weekday_and_time(starts + rest.out),
                                   weekday_and_time(starts + rest.from), in_words(rest.lasts, 2)),
                       "Switch it on again then, should you need it.", rest.out,
                       "hour by hour over the outage; outage/method.md (15)");
        else
            finder.add(Severity::note, "loads",
                       fmt::format("{}: out at {}; no rest brings it back, only charge does.", who,
                                   weekday_and_time(starts + rest.out)),
                       "Charge the packs, or draw less.", rest.out,
                       "hour by hour over the outage; outage/method.md (15)");
    }
}

// Which way the inverter comes back was assumed: what the other way gives.
void find_other_restart(Finder& finder) {
    const auto& plan = finder.plan;
    const bool silent = finder.scenario.inverter && !finder.scenario.inverter->restart;
    if (!plan.without_otherwise || !silent) {
        return;
    }
    finder.add(Severity::note, "inverter",
               fmt::format("After it goes off it is taken to be switched off and on by hand: "
                           "something goes without for {} in all. If it comes back by itself at "
                           "its restart voltage, for {}.",
                           in_words(plan.likely.without, 2), in_words(*plan.without_otherwise, 2)),
               "Give inverter.restart, \"by hand\" or \"by itself\", as its manual says.");
}

// ---- What is lost or close.

// Below this much charge at the end, a little more cold or cloud ends it early.
constexpr double little_left = 0.10;  // common practice, no source

void find_low_margin(Finder& finder) {
    const Course& course = finder.plan.likely;
    if (course.survives && !course.trace.empty() &&
        course.trace.back().charge.value() < little_left) {
        finder.add(Severity::caution, "packs",
                   fmt::format("Only {} of the charge is left at the end.",
                               in_words(course.trace.back().charge, 2)),
                   "Add a pack, or drop a load, to have something in hand.",
                   finder.scenario.outage.lasts, "common practice, no source");
    }
}

}  // namespace

bool gasses_away(const outage::Ledger& ledger) {
    return ledger.charging_loss > 0.1 * (ledger.sun_offered + ledger.charger_offered) &&
           ledger.charging_loss > 50.0 * units::watt_hour;
}

namespace {

bool too_cold_to_charge(const scenario::Pack& pack, units::Temperature temperature) {
    const auto coldest = pack.coldest_charge.value_or(units::celsius(0.0));
    return pack.chemistry == scenario::Chemistry::lifepo4 && temperature <= coldest;
}

void find_cold_charging(Finder& finder) {
    const auto& temperature = finder.scenario.outage.battery_temperature;
    const auto& ledger = finder.plan.likely.ledger;
    if (!temperature || finder.scenario.panels.empty()) {
        return;
    }
    for (const auto& pack : finder.scenario.packs) {
        if (too_cold_to_charge(pack, *temperature)) {
            finder.add(Severity::caution, "pack " + pack.name,
                       fmt::format("LiFePO4 at {} takes no charge; {} of sun is lost.",
                                   in_words(*temperature), in_words(ledger.sun_unused)),
                       "Keep the packs in a warm room.", std::nullopt,
                       "pack.coldest_charge, 0 degC unless given");
            return;
        }
    }
}

void find_unused_sun(Finder& finder) {
    const auto& ledger = finder.plan.likely.ledger;
    const auto& temperature = finder.scenario.outage.battery_temperature;
    const bool cold = temperature && std::ranges::any_of(finder.scenario.packs, [&](auto& pack) {
                          return too_cold_to_charge(pack, *temperature);
                      });
    if (!cold && ledger.sun_unused > 0.1 * ledger.sun_offered &&
        ledger.sun_unused > 50.0 * units::watt_hour) {
        const Event* full = finder.first(EventKind::packs_full);
        finder.add(Severity::note, "panels",
                   fmt::format("{} of {} from the sun finds the packs full.",
                               in_words(ledger.sun_unused), in_words(ledger.sun_offered)),
                   "Move loads that can wait into the sunny hours, or add a pack.",
                   full ? std::optional(full->at) : std::nullopt);
    }
    if (gasses_away(ledger)) {
        finder.add(Severity::note, "packs",
                   fmt::format("{} of what the packs take is not stored: the fuller lead-acid is, "
                               "the more of its charge turns to gas and heat.",
                               in_words(ledger.charging_loss)),
                   fmt::format("{}.", instead_of_gassing), std::nullopt,
                   "battery/method.md (42), law from memory");
    }
    if (ledger.sun_clipped > 0.05 * ledger.sun_offered &&
        ledger.sun_clipped > 50.0 * units::watt_hour) {
        finder.add(Severity::note, "charge_controller",
                   fmt::format("The charge controller turns away {} that the panels could give.",
                               in_words(ledger.sun_clipped)),
                   "A controller with a higher input limit would pass it.");
    }
}

// Idle draw that takes more than this of all that leaves the packs is worth a word.
constexpr double much_idle = 0.15;  // common practice, no source

void find_idle_draw(Finder& finder) {
    const auto& ledger = finder.plan.likely.ledger;
    // what charging did not store was never there to be used
    const auto spent = ledger.loads + ledger.inverter_loss + ledger.converter_loss +
                       ledger.wiring_loss + ledger.battery_loss - ledger.charging_loss;
    if (ledger.idle > much_idle * spent && spent > units::Energy{}) {
        finder.add(Severity::note, "inverter",
                   fmt::format("With nothing plugged in the inverter still draws {}: {} over the "
                               "outage, {} of all that is used.",
                               in_words(finder.plan.inverter_idle), in_words(ledger.idle),
                               in_words(units::Share(ledger.idle / spent), 2)),
                   "Switch it off in hours without AC loads, and feed small loads from 12 V or "
                   "USB.");
    }
}

// Findings of other parts follow "where:" and begin small; on a screen they stand alone.
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

}  // namespace

std::vector<PinnedFinding> outage_findings(const Scenario& scenario, const Plan& plan,
                                           std::span<const sizing::StartState> starts) {
    Finder finder{.scenario = scenario, .plan = plan, .findings = {}};
    for (auto finding : plan.findings) {
        finding.text = as_sentence(std::move(finding.text));
        finding.mend = as_sentence(std::move(finding.mend));
        finder.findings.push_back({.finding = std::move(finding)});
    }
    find_loads_without(finder);
    find_rests(finder);
    find_other_restart(finder);
    find_overload(finder);
    find_undeliverable(finder);
    find_over_current(finder);
    find_main_fuse(finder);
    find_branch_fuses(finder);
    find_strain(finder);
    find_hot_parts(finder);
    for (auto& finding : bank_findings(scenario, plan)) {
        finder.findings.push_back(std::move(finding));
    }
    find_low_voltage(finder);
    find_empty_packs(finder);
    find_low_margin(finder);
    find_cold_charging(finder);
    find_unused_sun(finder);
    find_idle_draw(finder);
    for (auto& finding : outage_start_findings(scenario, plan, starts))
        finder.findings.push_back(std::move(finding));
    sort_by_weight(finder.findings);
    return std::move(finder.findings);
}

namespace {

std::string_view words_for(EventKind kind) {
    switch (kind) {
        case EventKind::inverter_off_low_voltage:
            return "the inverter switches off on low voltage";
        case EventKind::inverter_on_again:
            return "the inverter is on again";
        case EventKind::inverter_overload:
            return "more is asked than the inverter gives";
        case EventKind::inverter_overload_over:
            return "the overload is over";
        case EventKind::inverter_switched_off:
            return "the inverter is switched off by its hours";
        case EventKind::inverter_switched_on:
            return "the inverter is switched on by its hours";
        case EventKind::packs_empty:
            return "the packs are empty";
        case EventKind::packs_at_usable_limit:
            return "the packs reach the usable limit";
        case EventKind::packs_cut_off:
            return "the packs' own protection opens";
        case EventKind::packs_over_current:
            return "a pack gives more than its limit";
        case EventKind::fuse_opens:
            return "a fuse opens";
        case EventKind::main_fuse_opens:
            return "the fuse in front of the inverter opens";
        case EventKind::branch_fuse_opens:
            return "the fuse of a 12 V circuit opens";
        case EventKind::cannot_be_delivered:
            return "more is asked than the packs can give";
        case EventKind::supply_back:
            return "the supply is back";
        case EventKind::load_off:
            return "a 12 V load goes out";
        case EventKind::load_on_again:
            return "a 12 V load is on again";
        case EventKind::inverter_off_empty:
            return "the packs cannot carry the inverter any more";
        case EventKind::packs_full:
            return "the packs are full";
        case EventKind::one_empty:
            return "one pack is empty, the others go on";
        case EventKind::one_cut_off:
            return "one pack's own protection opens, the others go on";
        case EventKind::one_over_current:
            return "one pack opens on its current, the others go on";
        case EventKind::one_fuse_opens:
            return "one pack's fuse opens, the others go on";
        case EventKind::one_back:
            return "a pack gives again";
        case EventKind::sunrise:
            return "sunrise";
        case EventKind::sunset:
            return "sunset";
    }
    return "";
}

}  // namespace

std::string words_for(const Plan& plan, const Event& event) {
    if (event.kind == EventKind::branch_fuse_opens && event.branch < plan.branch_names.size())
        return fmt::format("the fuse of circuit {} opens", plan.branch_names[event.branch]);
    const bool of_load =
        event.kind == EventKind::load_off || event.kind == EventKind::load_on_again;
    if (!of_load || event.load >= plan.loads.size()) return std::string(words_for(event.kind));
    return fmt::format("{}: {}", event.kind == EventKind::load_off ? "out" : "on again",
                       plan.loads[event.load].name);
}

}  // namespace answers
