#include "outage/plan.hpp"

#include <algorithm>
#include <map>

#include "outage/clock/work.hpp"
#include "outage/ready.hpp"
#include "outage/told/freezing_findings.hpp"
#include "outage/told/idle_findings.hpp"
#include "outage/told/who_goes_without.hpp"
#include "solar/sun_position.hpp"
#include "words/said.hpp"

namespace outage {

namespace {

using namespace units;
using words::said;

// More than a person would build; enough to say that packs alone do not help.
constexpr int more_packs_tried = 16;

// The ends of the band are drawn, not summed.
constexpr Duration band_step = 15.0 * minute;

// So that a course of months with loads that cycle by the minute keeps a bounded trace.
constexpr double most_trace_points = 50'000.0;

// Sunrises and sunsets of the outage, for whoever draws the nights.
std::vector<Event> sun_events(const solar::Site& site, const scenario::Outage& outage) {
    std::vector<Event> events;
    const auto add = [&](const std::optional<LocalTime>& when, EventKind kind) {
        if (!when) return;
        const Duration at = *when - outage.starts;
        if (at >= Duration{} && at <= outage.lasts) events.push_back({.at = at, .kind = kind});
    };
    const auto last = outage.starts + outage.lasts;
    for (auto day_start = midnight_before(outage.starts); day_start <= last;
         day_start = day_start + day) {
        const auto light = solar::rise_and_set(site.at, day_start, site.utc_offset);
        add(light.rises, EventKind::sunrise);
        add(light.sets, EventKind::sunset);
    }
    return events;
}

void add_sun_events(Course& course, const Ready& ready) {
    if (!ready.site) return;
    const auto more = sun_events(*ready.site, ready.outage);
    course.events.insert(course.events.end(), more.begin(), more.end());
    std::stable_sort(course.events.begin(), course.events.end(),
                     [](const Event& a, const Event& b) { return a.at < b.at; });
}

std::vector<SunDay> sun_days(const std::vector<SunOfDay>& days) {
    std::vector<SunDay> told;
    for (std::size_t i = 0; i < days.size(); ++i)
        told.push_back({.day = static_cast<int>(i) + 1,
                        .offered = days[i].offered,
                        .taken = days[i].taken,
                        .clipped = days[i].clipped,
                        .unused = days[i].unused});
    return told;
}

Energy usable_at_start(const Ready& ready) {
    const auto& unit = ready.units[static_cast<std::size_t>(End::likely)];
    const auto of_bank = [](const Bank& bank) {
        const auto& setup = bank.setup;
        const battery::Wells at_limit{.removed = std::max(bank.usable, bank.at_start.removed)};
        const auto one =
            battery::stored_energy(setup.kinetics, *setup.open_circuit, bank.at_start) -
            battery::stored_energy(setup.kinetics, *setup.open_circuit, at_limit);
        return static_cast<double>(bank.count) * one;
    };
    Energy sum = of_bank(unit.bank);
    for (const Bank& bank : unit.others)
        sum += of_bank(bank);
    return sum;
}

std::vector<std::string> bank_names(const Unit& unit) {
    std::vector<std::string> names{unit.bank.name};
    for (const Bank& bank : unit.others)
        names.push_back(bank.name);
    return names;
}

// Once for each chemistry: the charge that is known is that of all packs.
void add_freezing(Plan& plan, const Ready& ready) {
    std::vector<scenario::Chemistry> told;
    for (const PackKind& kind : ready.kinds) {
        const auto chemistry = kind.model->chemistry;
        if (kind.count < 1 || std::ranges::find(told, chemistry) != told.end()) continue;
        told.push_back(chemistry);
        const auto found = freezing_findings({.where = said<"pack {pack}">(kind.name),
                                              .chemistry = chemistry,
                                              .warmth = ready.warmth},
                                             plan.likely, ready.outage.starts);
        plan.findings.insert(plan.findings.end(), found.begin(), found.end());
    }
}

// Whether clocks on the wall may be an hour ahead of standard time: from the second Sunday of March
// to the first of November at the widest [tz database], half a year off in the south.
bool in_summer_time(const Ready& ready, LocalTime when) {
    const auto date = date_of(when);
    const auto month = static_cast<unsigned>(date.month());
    const auto day = static_cast<unsigned>(date.day());
    const bool north = !ready.site || ready.site->at.latitude >= Angle{};
    if (!north) return month >= 9 || month <= 4;
    return (month > 3 || (month == 3 && day >= 8)) && (month < 11 || (month == 11 && day <= 7));
}

void add_summer_time(Plan& plan, const Ready& ready) {
    const auto starts = ready.outage.starts;
    if (!in_summer_time(ready, starts) && !in_summer_time(ready, starts + ready.outage.lasts))
        return;
    plan.findings.push_back({.severity = scenario::Severity::note,
                             .where = "outage.starts",
                             .text = said<"times are standard time; clocks that are put forward "
                                          "show an hour later in summer">(),
                             .mend = said<"add the hour when reading them, or take it off when "
                                          "giving outage.starts and the hours of loads">(),
                             .source = said<"{source}">("solar/method.md")});
}

// The same course with the inverter's other way to come back.
void add_other_restart(Plan& plan, const Ready& ready) {
    const auto likely = static_cast<std::size_t>(End::likely);
    if (!ready.units[likely].inverter) return;
    plan.by_hand = ready.units[likely].inverter->restart == scenario::Restart::by_hand;
    const bool went_off = std::ranges::any_of(plan.likely.out, [](const Without& out) {
        return out.part == the_inverter &&
               (out.why == LimitedBy::charge || out.why == LimitedBy::low_voltage);
    });
    if (!went_off) return;
    Unit other = ready.units[likely];
    other.inverter->restart =
        plan.by_hand ? scenario::Restart::by_itself : scenario::Restart::by_hand;
    plan.without_otherwise = run(other, ready.steps[likely], ready.sun[likely], ready.outage.lasts,
                                 ready.midnight, {.trace = false}, nullptr, &ready.parts[likely])
                                 .without;
}

bool differ(const Course& a, const Course& b) {
    return abs(a.lasts - b.lasts) > 1.0 * second || a.survives != b.survives ||
           abs(a.ledger.stored_at_end - b.ledger.stored_at_end) > 1.0 * watt_hour;
}

}  // namespace

Plan::Plan() = default;
Plan::Plan(const Plan& other) = default;
Plan::Plan(Plan&& other) noexcept = default;
Plan& Plan::operator=(const Plan& other) = default;
Plan& Plan::operator=(Plan&& other) noexcept = default;
Plan::~Plan() = default;

Plan plan_outage(const Ready& ready) {
    Plan plan;
    std::vector<SunOfDay> days;
    const Duration lasts = ready.outage.lasts;
    const Duration interval = interval_of(lasts);
    const Duration every = lasts > 10.0 * day ? lasts / most_trace_points : Duration{};
    plan.likely = run(ready, End::likely, {.every = every, .intervals = interval}, &days);
    plan.starts = motor_starts(ready, plan.likely);
    plan.earliest = run(ready, End::earliest, {.every = band_step, .intervals = interval});
    plan.latest = run(ready, End::latest, {.every = band_step, .intervals = interval});
    add_sun_events(plan.likely, ready);
    plan.uncertain = differ(plan.earliest, plan.likely) || differ(plan.latest, plan.likely);
    plan.loads = load_uses(ready.demand);
    tell_who_goes_without(plan.loads, ready.demand, plan.likely);
    plan.ladder = ladder_of(ready, plan.likely);
    add_other_restart(plan, ready);
    plan.sun = sun_days(days);
    const auto& unit = ready.units[static_cast<std::size_t>(End::likely)];
    if (unit.inverter) plan.inverter_idle = unit.inverter->losses.idle;
    plan.packs = count_of(ready.kinds);
    plan.bank_names = bank_names(unit);
    plan.leads = rated_leads(ready.kinds);
    plan.main_limits = ready.main_limits;
    for (const unit::Branch& branch : ready.branches)
        plan.branch_names.push_back(branch.name);
    if (!plan.likely.survives) plan.more_packs = lasts_with_more_packs(ready, more_packs_tried);
    plan.usable_at_start = usable_at_start(ready);
    plan.coldest = ready.coldest;
    plan.findings = ready.findings;
    if (unit.inverter) {
        const auto idle = idle_findings(ready.demand, *unit.inverter, plan.likely);
        plan.findings.insert(plan.findings.end(), idle.begin(), idle.end());
    }
    add_freezing(plan, ready);
    add_summer_time(plan, ready);
    plan.assumptions = ready.assumptions;
    return plan;
}

Result<Plan> plan_outage(const scenario::Scenario& scenario, const std::string& folder) {
    const auto ready = make_ready(scenario, folder);
    if (!ready) return fail(ready.error());
    return plan_outage(*ready);
}

std::vector<MorePacks> lasts_with_more_packs(const Ready& ready, int most) {
    std::map<int, MorePacks> tried;
    const auto likely = static_cast<std::size_t>(End::likely);
    const int now = count_of(ready.kinds);
    const auto survives_with = [&](int more) {
        const auto course =
            run(with_packs(ready, End::likely, now + more), ready.steps[likely], ready.sun[likely],
                ready.outage.lasts, ready.midnight, {.trace = false, .after_failure = false},
                nullptr, guarded_loads(ready, End::likely));
        tried[more] = {.packs = now + more, .lasts = course.lasts, .survives = course.survives};
        return course.survives;
    };
    // More packs never last less long (tests/properties/outage_clock.cpp), so halving finds it.
    int too_few = 1;
    int enough = most;
    if (!survives_with(1) && most > 1 && survives_with(most)) {
        while (enough - too_few > 1) {
            const int middle = (too_few + enough) / 2;
            (survives_with(middle) ? enough : too_few) = middle;
        }
    }
    std::vector<MorePacks> longer;
    for (const auto& [more, ending] : tried) {
        longer.push_back(ending);
        if (ending.survives) break;
    }
    return longer;
}

}  // namespace outage
