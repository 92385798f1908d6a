#include "answers/outage/findings.hpp"

#include <algorithm>
#include <array>
#include <set>

#include "answers/clock_words.hpp"
#include "answers/outage/bank_findings.hpp"
#include "answers/outage/starts.hpp"
#include "answers/shown.hpp"
#include "demand/power.hpp"
#include "outage/rated_leads.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using outage::Course;
using outage::Event;
using outage::EventKind;
using outage::Plan;
using scenario::Scenario;
using scenario::Severity;
using units::Duration;
using words::Said;
using words::said;
using words::said_of;

Said from_the_course() {
    return said<"hour by hour over the outage">();
}

struct Finder {
    const Scenario& scenario;
    const Plan& plan;
    std::vector<PinnedFinding> findings;

    void add(Severity severity, words::Said where, words::Said text, words::Said mend,
             std::optional<Duration> at = {}, Said source = from_the_course()) {
        findings.push_back(
            {.finding = {.severity = severity,
                         .where = std::move(where),
                         .text = std::move(text),
                         .mend = std::move(mend),
                         .source = std::move(source)},
             .at = at,
             .when = at ? weekday_and_time(scenario.outage.starts + *at) : words::Said()});
    }

    const Event* first(EventKind kind) const {
        const auto found = std::ranges::find(plan.likely.events, kind, &Event::kind);
        return found == plan.likely.events.end() ? nullptr : &*found;
    }

    // The clause as a sentence, with how often it comes to that where it is more than once.
    Said so_often(Said clause, EventKind kind) const {
        const auto times = std::ranges::count(plan.likely.events, kind, &Event::kind);
        if (times <= 1) return words::as_sentence(std::move(clause));
        return said<"{what}, {times} times in all.">(std::move(clause), times);
    }
};

// ---- What stands in the way of the power itself.

// Watts against watts; where those fit, it is the volt-amperes that do not.
Said overload_in_words(const Finder& finder, units::Power asked) {
    const auto& inverter = finder.scenario.inverter;
    const auto watts = inverter ? inverter->continuous : units::Power{};
    if (asked > watts)
        return said<"The loads ask for {asked} and the inverter gives {given}">(in_words(asked),
                                                                                in_words(watts));
    const auto volt_amperes = inverter && inverter->continuous_apparent
                                  ? *inverter->continuous_apparent
                                  : units::ApparentPower(watts);
    return said<
        "The loads ask for {asked} at so low a power factor that the {rating} of the "
        "inverter do not carry them">(in_words(asked), in_words(volt_amperes));
}

void find_overload(Finder& finder) {
    if (const Event* event = finder.first(EventKind::inverter_overload)) {
        finder.add(
            Severity::stop, said<"inverter">(),
            finder.so_often(overload_in_words(finder, event->power), EventKind::inverter_overload),
            said<"Run the large loads one after another, or fit a larger inverter.">(), event->at);
    }
}

void find_undeliverable(Finder& finder) {
    if (const Event* event = finder.first(EventKind::cannot_be_delivered)) {
        finder.add(
            Severity::stop, said<"packs">(),
            finder.so_often(said<"{asked} is asked of the packs; they can give at most {given} "
                                 "before the voltage collapses">(in_words(event->power),
                                                                 in_words(event->at_most)),
                            EventKind::cannot_be_delivered),
            said<"Add a pack in parallel, shorten or thicken the leads, or drop a large load.">(),
            event->at);
    }
}

Said over_current_in_words(const Event& event) {
    if (!opens_late(event))
        return said<"A pack has to give {current}, more than its protection allows">(
            in_words(event.current));
    return said<
        "A pack has to give {current}, more than its protection allows for longer than "
        "{time}">(in_words(event.current), in_words(event.after, 2));
}

Said lower_the_draw() {
    return said<"Lower the draw. A larger fuse only where wire, switch and connector allow it.">();
}

void find_over_current(Finder& finder) {
    if (const Event* event = finder.first(EventKind::packs_over_current)) {
        finder.add(Severity::stop, said<"packs">(),
                   finder.so_often(over_current_in_words(*event), EventKind::packs_over_current),
                   said<"Add a pack in parallel or drop a large load at this hour.">(), event->at);
    }
    if (const Event* event = finder.first(EventKind::fuse_opens)) {
        finder.add(Severity::stop, said<"fuse">(),
                   said<"A fuse opens at {current}; what it feeds stays off until somebody "
                        "replaces it.">(current_that_opens(*event)),
                   event->current < units::Current()
                       ? said<"Charge with less. A larger fuse only where wire, switch and "
                              "connector allow it.">()
                       : lower_the_draw(),
                   event->at);
    }
}

void find_main_fuse(Finder& finder) {
    if (const Event* event = finder.first(EventKind::main_fuse_opens)) {
        finder.add(Severity::stop, said<"inverter">(),
                   said<"The fuse in front of the inverter opens at {current}; everything behind "
                        "it stays off until somebody replaces it.">(in_words(event->current)),
                   lower_the_draw(), event->at);
    }
}

void find_branch_fuses(Finder& finder) {
    std::set<std::size_t> found;
    for (const Event& event : finder.plan.likely.events) {
        if (event.kind != EventKind::branch_fuse_opens || !found.insert(event.branch).second) {
            continue;
        }
        finder.add(Severity::stop,
                   said<"circuit {circuit}">(finder.plan.branch_names.at(event.branch)),
                   said<"Its fuse opens at {current}; everything behind it stays off until "
                        "somebody replaces it.">(in_words(event.current)),
                   lower_the_draw(), event.at);
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
        Severity::caution, said<"packs">(),
        said<"A pack gives up to {current}, for up to {time} at a stretch above the {rating} it "
             "bears forever.">(in_words(strain.most), in_words(strain.longest, 2),
                               in_words(strain.above)),
        said<"It rests on the pulse you give for the pack, or on when its fuse opens at the "
             "earliest. Add a pack, or let large loads run one after another.">(),
        std::nullopt, "pack.pulse; outage/method.md (13)");
}

// A plug opens nothing: it overheats; and a switch likewise.
Said hot_mend(const outage::HotPart& hot, Said or_else) {
    if (hot.part.by == unit::Limiter::connector)
        return said<
            "Nothing opens at that current: the plug heats. Take a larger one, "
            "{or_else}.">(std::move(or_else));
    return said<
        "Nothing opens at that current: the switch heats. Take a larger one, "
        "{or_else}.">(std::move(or_else));
}

void find_hot_lead(Finder& finder, const outage::HotPart& hot) {
    const Said where = said<"pack {pack}">(hot.pack);
    const auto part = unit::word_for(hot.part.by);
    const Said carries = in_words(hot.carries);
    const Said rated = in_words(hot.part.most.value);
    const Said source = said<"pack.connector or circuit.links, the maker's rating">();
    if (hot.flow == unit::Flow::out_of_pack)
        finder.add(Severity::stop, where,
                   said<"A pack gives up to {current} through a {part} rated {rating}.">(
                       carries, part, rated),
                   hot_mend(hot, said<"add a pack, or drop a large load">()), std::nullopt, source);
    else
        finder.add(Severity::stop, where,
                   said<"A pack is charged with up to {current} through a {part} rated "
                        "{rating}.">(carries, part, rated),
                   hot_mend(hot, said<"add a pack, or charge with less">()), std::nullopt, source);
}

void find_hot_parts(Finder& finder) {
    const auto& likely = finder.plan.likely;
    for (const auto& hot : outage::hot_parts(finder.plan.leads, likely.pack_currents))
        find_hot_lead(finder, hot);
    for (const auto& hot : outage::hot_parts(finder.plan.main_limits, likely.highest_main_current))
        finder.add(
            Severity::stop, said<"inverter">(),
            said<"Up to {current} flows to it through a {part} rated {rating}.">(
                in_words(hot.carries), unit::word_for(hot.part.by), in_words(hot.part.most.value)),
            hot_mend(hot, said<"or drop a large load">()), std::nullopt,
            said<"circuit.links, the maker's rating">());
}

void find_low_voltage(Finder& finder) {
    if (const Event* event = finder.first(EventKind::inverter_off_empty)) {
        finder.add(Severity::caution, said<"inverter">(),
                   finder.so_often(
                       said<"The packs cannot carry {power} any more; what draws less goes on">(
                           in_words(event->power)),
                       EventKind::inverter_off_empty),
                   said<"Add a pack, or drop the largest load at this hour.">(), event->at);
    }
    if (const Event* event = finder.first(EventKind::inverter_off_low_voltage)) {
        finder.add(Severity::caution, said<"inverter">(),
                   finder.so_often(said<"The inverter switches off on low voltage">(),
                                   EventKind::inverter_off_low_voltage),
                   said<"Add a pack, shorten or thicken the main cable, or drop a load at this "
                        "hour.">(),
                   event->at);
    }
}

void find_empty_packs(Finder& finder) {
    const std::array endings{
        std::pair{EventKind::packs_empty, said<"The packs are empty">()},
        std::pair{
            EventKind::packs_at_usable_limit,
            said<"The packs are as far down as you allow; nothing is switched off by that">()},
        std::pair{EventKind::packs_cut_off, said<"The packs' own low-voltage protection opens">()}};
    for (const auto& [kind, text] : endings) {
        if (const Event* event = finder.first(kind)) {
            finder.add(Severity::caution, said<"packs">(), finder.so_often(text, kind),
                       said<"Add packs or panels, or switch off comfort and work loads from the "
                            "first hour.">(),
                       event->at);
        }
    }
}

// ---- Who goes without.

void find_loads_without(Finder& finder) {
    const Course& course = finder.plan.likely;
    std::vector<Said> others;
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
            finder.add(Severity::stop, said<"load {load}">(use.name),
                       said<"Life and health: {load} has no supply from this hour on, or for a "
                            "part of what follows.">(use.name),
                       said<"Plan a second way for it before anything else, and add packs until it "
                            "lasts.">(),
                       gap.from);
        } else {
            others.emplace_back(use.name);
            first = std::min(first, gap.from);
        }
    }
    if (!others.empty()) {
        finder.add(Severity::caution, said<"loads">(),
                   said<"Without supply for {time} in all, {energy} not served: {loads}.">(
                       in_words(course.without, 2), in_words(course.ledger.unserved),
                       words::joined(std::move(others), words::List::Joint::comma)),
                   said<"See how far more packs carry, or drop what can wait.">(), first);
    }
}

Said part_in_words(const Plan& plan, std::size_t part) {
    if (part == outage::the_inverter) return said<"What the inverter feeds">();
    if (part < plan.loads.size()) return plan.loads[part].name;
    return said<"The 12 V loads">();
}

// What a rest would bring back, though nobody asks for it.
void find_rests(Finder& finder) {
    const auto starts = finder.scenario.outage.starts;
    const Said source = said<"hour by hour over the outage; {method}">("outage/method.md (15)");
    for (const auto& rest : finder.plan.likely.after_rest) {
        const auto who = part_in_words(finder.plan, rest.part);
        const auto out = weekday_and_time(starts + rest.out);
        if (rest.lasts > Duration{})
            finder.add(Severity::note, said<"loads">(),
                       said<"{load}: out at {when}; after a rest, from {later}, it would run for "
                            "{time}.">(who, out, weekday_and_time(starts + rest.from),
                                       in_words(rest.lasts, 2)),
                       said<"Switch it on again then, should you need it.">(), rest.out, source);
        else
            finder.add(
                Severity::note, said<"loads">(),
                said<"{load}: out at {when}; no rest brings it back, only charge does.">(who, out),
                said<"Charge the packs, or draw less.">(), rest.out, source);
    }
}

// Which way the inverter comes back was assumed: what the other way gives.
void find_other_restart(Finder& finder) {
    const auto& plan = finder.plan;
    const bool silent = finder.scenario.inverter && !finder.scenario.inverter->restart;
    if (!plan.without_otherwise || !silent) {
        return;
    }
    finder.add(Severity::note, said<"inverter">(),
               said<"After it goes off it is taken to be switched off and on by hand: something "
                    "goes without for {time} in all. If it comes back by itself at its restart "
                    "voltage, for {otherwise}.">(in_words(plan.likely.without, 2),
                                                 in_words(*plan.without_otherwise, 2)),
               said<"Give inverter.restart, \"by hand\" or \"by itself\", as its manual says.">());
}

// ---- What is lost or close.

// Below this much charge at the end, a little more cold or cloud ends it early.
constexpr double little_left = 0.10;  // common practice, no source

void find_low_margin(Finder& finder) {
    const Course& course = finder.plan.likely;
    if (course.survives && !course.trace.empty() &&
        course.trace.back().charge.value() < little_left) {
        finder.add(Severity::caution, said<"packs">(),
                   said<"Only {charge} of the charge is left at the end.">(
                       in_words(course.trace.back().charge, 2)),
                   said<"Add a pack, or drop a load, to have something in hand.">(),
                   finder.scenario.outage.lasts, said<"common practice, no source">());
    }
}

}  // namespace

bool gasses_away(const outage::Ledger& ledger) {
    return ledger.charging_loss > 0.1 * (ledger.sun_offered + ledger.charger_offered) &&
           ledger.charging_loss > 50.0 * units::watt_hour;
}

Said instead_of_gassing() {
    return said<
        "Move loads that can wait into the sunny hours, or add a pack; let the gas out of "
        "the case">();
}

Said gassing_in_words(const outage::Ledger& ledger) {
    return said<
        "{energy} of what the packs take is not stored: the fuller lead-acid is, the more "
        "of its charge turns to gas and heat.">(in_words(ledger.charging_loss));
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
            finder.add(
                Severity::caution, said<"pack {pack}">(pack.name),
                said<"LiFePO4 at {temperature} takes no charge; {energy} of sun is lost.">(
                    in_words(*temperature), in_words(ledger.sun_unused)),
                said<"Keep the packs in a warm room.">(), std::nullopt,
                said<"pack.coldest_charge, {temperature} unless given">(units::celsius(0.0)));
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
        finder.add(Severity::note, said<"panels">(),
                   said<"{unused} of {offered} from the sun finds the packs full.">(
                       in_words(ledger.sun_unused), in_words(ledger.sun_offered)),
                   said<"Move loads that can wait into the sunny hours, or add a pack.">(),
                   full ? std::optional(full->at) : std::nullopt);
    }
    if (gasses_away(ledger)) {
        finder.add(Severity::note, said<"packs">(), gassing_in_words(ledger),
                   words::as_sentence(instead_of_gassing()), std::nullopt,
                   said<"{method}, law from memory">("battery/method.md (42)"));
    }
    if (ledger.sun_clipped > 0.05 * ledger.sun_offered &&
        ledger.sun_clipped > 50.0 * units::watt_hour) {
        finder.add(Severity::note, "charge_controller",
                   said<"The charge controller turns away {energy} that the panels could give.">(
                       in_words(ledger.sun_clipped)),
                   said<"A controller with a higher input limit would pass it.">());
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
        finder.add(Severity::note, said<"inverter">(),
                   said<"With nothing plugged in the inverter still draws {power}: {energy} over "
                        "the outage, {share} of all that is used.">(
                       in_words(finder.plan.inverter_idle), in_words(ledger.idle),
                       in_words(units::Share(ledger.idle / spent), 2)),
                   said<"Switch it off in hours without AC loads, and feed small loads from 12 V "
                        "or USB.">());
    }
}

}  // namespace

std::vector<PinnedFinding> outage_findings(const Scenario& scenario, const Plan& plan,
                                           const questions::OutageStarts& starts) {
    Finder finder{.scenario = scenario, .plan = plan, .findings = {}};
    for (auto finding : plan.findings) {
        finding.text = words::as_sentence(std::move(finding.text));
        finding.mend = words::as_sentence(std::move(finding.mend));
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
    for (auto& finding : outage_start_findings(scenario, starts))
        finder.findings.push_back(std::move(finding));
    sort_by_weight(finder.findings);
    return std::move(finder.findings);
}

namespace {

Said words_for(EventKind kind) {
    switch (kind) {
        case EventKind::inverter_off_low_voltage:
            return said<"the inverter switches off on low voltage">();
        case EventKind::inverter_on_again:
            return said<"the inverter is on again">();
        case EventKind::inverter_overload:
            return said<"more is asked than the inverter gives">();
        case EventKind::inverter_overload_over:
            return said<"the overload is over">();
        case EventKind::inverter_switched_off:
            return said<"the inverter is switched off by its hours">();
        case EventKind::inverter_switched_on:
            return said<"the inverter is switched on by its hours">();
        case EventKind::packs_empty:
            return said<"the packs are empty">();
        case EventKind::packs_at_usable_limit:
            return said<"the packs reach the usable limit">();
        case EventKind::packs_cut_off:
            return said<"the packs' own protection opens">();
        case EventKind::packs_over_current:
            return said<"a pack gives more than its limit">();
        case EventKind::fuse_opens:
            return said<"a fuse opens">();
        case EventKind::main_fuse_opens:
            return said<"the fuse in front of the inverter opens">();
        case EventKind::branch_fuse_opens:
            return said<"the fuse of a 12 V circuit opens">();
        case EventKind::cannot_be_delivered:
            return said<"more is asked than the packs can give">();
        case EventKind::supply_back:
            return said<"the sun has charged enough to go on">();
        case EventKind::load_off:
            return said<"a 12 V load goes out">();
        case EventKind::load_on_again:
            return said<"a 12 V load is on again">();
        case EventKind::inverter_off_empty:
            return said<"the packs cannot carry the inverter any more">();
        case EventKind::packs_full:
            return said<"the packs are full">();
        case EventKind::one_empty:
            return said<"one pack is empty, the others go on">();
        case EventKind::one_cut_off:
            return said<"one pack's own protection opens, the others go on">();
        case EventKind::one_over_current:
            return said<"one pack opens on its current, the others go on">();
        case EventKind::one_fuse_opens:
            return said<"one pack's fuse opens, the others go on">();
        case EventKind::one_back:
            return said<"a pack gives again">();
        case EventKind::sunrise:
            return said<"sunrise">();
        case EventKind::sunset:
            return said<"sunset">();
    }
    return {};
}

}  // namespace

Said words_for(const Plan& plan, const Event& event) {
    if (event.kind == EventKind::branch_fuse_opens && event.branch < plan.branch_names.size())
        return said<"the fuse of circuit {circuit} opens">(plan.branch_names[event.branch]);
    if (event.load < plan.loads.size()) {
        const auto& load = plan.loads[event.load].name;
        if (event.kind == EventKind::load_off) return said<"out: {load}">(load);
        if (event.kind == EventKind::load_on_again) return said<"on again: {load}">(load);
    }
    return words_for(event.kind);
}

}  // namespace answers
