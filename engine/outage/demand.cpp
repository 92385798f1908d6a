#include "outage/demand.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <numeric>

#include <fmt/format.h>

#include "units/text.hpp"

namespace outage {

namespace {

using units::Duration;
using units::Power;

units::Errors unusable(const scenario::Load& load, const std::string& where) {
    units::Errors errors;
    if (load.count < 1) {
        errors.push_back({where + ".count", fmt::format("{}", load.count), "give 1 or more"});
    }
    if (std::ranges::any_of(load.days, [](int day) { return day < 1; })) {
        errors.push_back(
            {where + ".days", "a day below 1", "count from 1, the day on which the outage starts"});
    }
    if (load.runs && load.runs->every < units::second) {
        errors.push_back({where + ".runs.every", units::show(load.runs->every),
                          "give a cycle of a second or more"});
    }
    return errors;
}

Duration phase_of(const scenario::Load& load, const std::string& where,
                  scenario::Assumptions& assumed) {
    if (load.runs->starts_at) {
        return *load.runs->starts_at;
    }
    const Duration phase = usual_phase(load.name, load.runs->every);
    assumed.push_back({where + ".runs.starts_at",
                       "its cycle starts " + units::show(phase) +
                           " into the outage, so that like cycles do not all start together",
                       "common practice, no source"});
    return phase;
}

// Items of a cycling load start one after another, evenly over the cycle.
std::vector<Strand> strands_of(const scenario::Load& load, const Spans& hours,
                               const std::string& where, scenario::Assumptions& assumed) {
    if (!load.runs) {
        return {{.items = load.count, .on = hours}};
    }
    const Duration phase = phase_of(load, where, assumed);
    std::vector<Strand> strands;
    for (int item = 0; item < load.count; ++item) {
        const Duration later =
            std::floor(item * (load.runs->every / units::second) / load.count) * units::second;
        strands.push_back(
            {.items = 1, .on = cycle_spans(hours, load.runs->on, load.runs->every, phase + later)});
    }
    return strands;
}

Spans inverter_hours(const scenario::Scenario& scenario) {
    if (!scenario.inverter) {
        return {};
    }
    const scenario::Outage& outage = scenario.outage;
    const Spans whole = daily_spans({}, {}, outage.starts, outage.lasts);
    if (scenario.inverter->off.empty()) {
        return whole;
    }
    return without(whole, daily_spans(scenario.inverter->off, {}, outage.starts, outage.lasts));
}

PlannedLoad planned(const scenario::Load& load, LoadPower power, const std::string& where,
                    const scenario::Outage& outage, Demand& demand) {
    PlannedLoad result{.name = load.name,
                       .from = load.from,
                       .priority = load.priority,
                       .count = load.count,
                       .power = std::move(power),
                       .may_run = daily_spans(load.hours, load.days, outage.starts, outage.lasts),
                       .refused = {},
                       .strands = {}};
    Spans served = result.may_run;
    if (load.from == scenario::Outlet::ac) {
        served = common(result.may_run, demand.inverter_on);
        result.refused = without(result.may_run, demand.inverter_on);
    }
    result.strands = strands_of(load, served, where, demand.assumptions);
    return result;
}

Power chosen(const LoadPower& power, Case which) {
    switch (which) {
        case Case::low:
            return power.low;
        case Case::likely:
            return power.likely;
        case Case::high:
            return power.high;
    }
    return power.likely;
}

// What one strand adds to a step while it is on.
struct Share {
    const Strand* strand = nullptr;
    Power ac{};
    Power reactive{};
    Power direct{};
    Power direct_useful{};
};

Share share_of(const PlannedLoad& load, const Strand& strand, Case which) {
    const Power useful = static_cast<double>(strand.items) * chosen(load.power, which);
    if (load.from != scenario::Outlet::ac) {
        return {.strand = &strand,
                .direct = useful / load.power.converter.value(),
                .direct_useful = useful};
    }
    const double factor = load.power.factor.value();
    return {.strand = &strand,
            .ac = useful,
            .reactive = useful * std::sqrt(1.0 / (factor * factor) - 1.0)};
}

// In an order of their own, so that sums do not hang on the order of the file.
std::vector<Share> shares_of(const Demand& demand, Case which) {
    std::vector<Share> shares;
    for (const PlannedLoad& load : demand.loads) {
        for (const Strand& strand : load.strands) {
            shares.push_back(share_of(load, strand, which));
        }
    }
    const auto key = [](const Share& share) {
        return std::array{share.ac.value(), share.reactive.value(), share.direct.value(),
                          share.direct_useful.value()};
    };
    std::ranges::stable_sort(shares, {}, key);
    return shares;
}

struct Change {
    Duration at{};
    std::size_t strand = 0;
};

void append_changes(const Spans& spans, std::size_t strand, std::vector<Change>& changes) {
    for (const Span& span : spans) {
        changes.push_back({span.from, strand});
        changes.push_back({span.until, strand});
    }
}

// Every strand's changes are sorted already: merge neighbours, then pairs of pairs, and so on.
std::vector<Change> merged(std::vector<Change> changes, std::vector<std::size_t> runs) {
    const auto earlier = [](const Change& a, const Change& b) { return a.at < b.at; };
    std::vector<Change> other(changes.size());
    while (runs.size() > 2) {
        std::vector<std::size_t> longer{0};
        for (std::size_t i = 0; i + 1 < runs.size(); i += 2) {
            const auto begin = changes.begin();
            const auto first = begin + static_cast<std::ptrdiff_t>(runs[i]);
            const auto middle = begin + static_cast<std::ptrdiff_t>(runs[i + 1]);
            const auto last =
                i + 2 < runs.size() ? begin + static_cast<std::ptrdiff_t>(runs[i + 2]) : middle;
            std::merge(first, middle, middle, last,
                       other.begin() + static_cast<std::ptrdiff_t>(runs[i]), earlier);
            longer.push_back(static_cast<std::size_t>(last - begin));
        }
        changes.swap(other);
        runs = std::move(longer);
    }
    return changes;
}

DemandStep step_at(Duration from, const std::vector<Share>& shares, const std::vector<char>& on) {
    DemandStep step{.from = from, .inverter_on = on[shares.size()] != 0};
    Power reactive{};
    for (std::size_t i = 0; i < shares.size(); ++i) {
        if (on[i] != 0) {
            step.ac += shares[i].ac;
            reactive += shares[i].reactive;
            step.direct += shares[i].direct;
            step.direct_useful += shares[i].direct_useful;
        }
    }
    step.ac_reactive = units::ReactivePower(reactive);
    return step;
}

void append(std::vector<DemandStep>& steps, DemandStep step) {
    if (!steps.empty()) {
        DemandStep as_before = steps.back();
        as_before.from = step.from;
        if (as_before == step) {
            return;
        }
    }
    steps.push_back(step);
}

}  // namespace

units::Result<Demand> plan_demand(const scenario::Scenario& scenario) {
    Demand demand{.lasts = scenario.outage.lasts,
                  .inverter_on = inverter_hours(scenario),
                  .loads = {},
                  .assumptions = {}};
    units::Errors errors;
    if (!(scenario.outage.lasts > Duration())) {
        errors.push_back(
            {"outage.lasts", "no time", "give how long the outage lasts, such as 3 d"});
    }
    const auto collect = [&errors](const units::Errors& more) {
        errors.insert(errors.end(), more.begin(), more.end());
    };
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        const scenario::Load& load = scenario.loads[i];
        const std::string where = fmt::format("load[{}]", i);
        units::Result<LoadPower> power = load_power(load, where, demand.assumptions);
        const units::Errors unusable_times = unusable(load, where);
        if (!power) {
            collect(power.error());
        }
        collect(unusable_times);
        if (load.from == scenario::Outlet::ac && !scenario.inverter) {
            errors.push_back({"inverter", load.name + " needs one and there is none",
                              "describe the inverter, or give the load from = \"12V\" or \"usb\""});
        }
        if (power && unusable_times.empty()) {
            demand.loads.push_back(
                planned(load, std::move(*power), where, scenario.outage, demand));
        }
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return demand;
}

std::vector<DemandStep> demand_steps(const Demand& demand, Case which) {
    const std::vector<Share> shares = shares_of(demand, which);
    std::vector<Change> changes;
    std::vector<std::size_t> runs{0};
    for (std::size_t i = 0; i <= shares.size(); ++i) {
        append_changes(i < shares.size() ? shares[i].strand->on : demand.inverter_on, i, changes);
        runs.push_back(changes.size());
    }
    changes = merged(std::move(changes), std::move(runs));
    std::vector<DemandStep> steps;
    steps.reserve(changes.size() + 1);
    std::vector<char> on(shares.size() + 1, 0);
    auto change = changes.begin();
    for (Duration now{}; now < demand.lasts;) {
        for (; change != changes.end() && change->at <= now; ++change) {
            on[change->strand] ^= 1;
        }
        append(steps, step_at(now, shares, on));
        now = change != changes.end() ? change->at : demand.lasts;
    }
    return steps;
}

std::vector<LoadUse> load_uses(const Demand& demand) {
    std::vector<LoadUse> uses;
    for (const PlannedLoad& load : demand.loads) {
        const double count = load.count;
        Duration of_all_items{};
        for (const Strand& strand : load.strands) {
            of_all_items += static_cast<double>(strand.items) * total(strand.on);
        }
        const units::Energy wanted = load.power.likely * of_all_items;
        uses.push_back({.name = load.name,
                        .from = load.from,
                        .priority = load.priority,
                        .count = load.count,
                        .running_low = count * load.power.low,
                        .running = count * load.power.likely,
                        .running_high = count * load.power.high,
                        .wanted = wanted,
                        .per_day = wanted * (units::day / demand.lasts),
                        .on_time = of_all_items / count,
                        .from_what = load.power.from_what});
    }
    return uses;
}

}  // namespace outage
