#include "demand/findings.hpp"

#include <algorithm>

#include "demand/cold_findings.hpp"
#include "demand/search_mode.hpp"
#include "motor/supply_voltage.hpp"
#include "units/said.hpp"

namespace demand {

namespace {

using scenario::Finding;
using scenario::Findings;
using scenario::Outlet;
using scenario::Severity;
using units::Duration;
using words::Said;
using words::said;

Said practice() {
    return said<"common practice, no source">();
}

// The shortest reading that a cycling load's mean may rest on: common practice, no source.
constexpr Duration shortest_reading = 12.0 * units::hour;

Said of_load(const std::string& name) {
    return said<"load {load}">(name);
}

words::Moment on_the_clock(units::LocalTime time) {
    return units::moment(time, words::Moment::Form::weekday_date_clock);
}

// Loads that would run at hours in which the inverter is switched off.
void find_refused(const scenario::Scenario& scenario, const Demand& demand, Findings& findings) {
    for (std::size_t i = 0; i < demand.loads.size(); ++i) {
        const PlannedLoad& load = demand.loads[i];
        const bool medical = is_medical(scenario.loads[i]);
        // What hours off are to food is told with its clock, in cold_findings.
        if (load.refused.empty() || (load.cold && !medical)) {
            continue;
        }
        const Span& first = load.refused.front();
        const units::LocalTime starts = scenario.outage.starts;
        findings.push_back(
            {.severity = medical ? Severity::stop : Severity::caution,
             .where = of_load(load.name),
             .text = said<"may run for {time} in which the inverter is switched off, first from "
                          "{from} to {until}; it gets nothing then">(
                 total(load.refused), on_the_clock(starts + first.from),
                 on_the_clock(starts + first.until)),
             .mend = said<"change its hours or the inverter's, or run it from 12 V">(),
             .source = practice()});
    }
}

bool minds_the_waveform(const scenario::Load& load) {
    return has_compressor(load) ||
           (load.motor && load.motor->kind == scenario::MotorKind::permanent_split_fan);
}

void find_waveform(const scenario::Load& load, Findings& findings) {
    const bool medical = is_medical(load);
    if (load.from != Outlet::ac || (!medical && !minds_the_waveform(load))) {
        return;
    }
    findings.push_back(
        {.severity = medical ? Severity::stop : Severity::caution,
         .where = of_load(load.name),
         .text = medical ? said<"a medical device on a quasi-square wave: makers warn that it may "
                                "fail">()
                         : said<"a compressor or capacitor motor on a quasi-square wave: it runs "
                                "hotter, with less torque, and may not start">(),
         .mend = said<"use a sine-wave inverter, or the device's own 12 V lead">(),
         .source = said<"[Inverter manuals] waveform warnings">()});
}

// Draws that are known less well than they look.
void find_doubtful_draw(const scenario::Load& load, Findings& findings) {
    if (!load.draw) {
        return;
    }
    const auto* const metered = std::get_if<scenario::MeteredUse>(&*load.draw);
    if (metered && metered->over < shortest_reading && (load.runs || load.motor)) {
        findings.push_back(
            {.severity = Severity::caution,
             .where = of_load(load.name),
             .text = said<"metered over {time} only: its cycles and defrosting may be missed">(
                 metered->over),
             .mend = said<"run the meter for 24 h, defrosting included">(),
             .source = practice()});
    }
    if (!std::holds_alternative<scenario::Nameplate>(*load.draw)) {
        return;
    }
    if (has_compressor(load) && !load.runs) {
        findings.push_back(
            {.severity = Severity::caution,
             .where = of_load(load.name),
             .text =
                 said<"the nameplate is counted at all hours, though it cycles: far more than it "
                      "uses">(),
             .mend = said<"meter it for 24 h, or give its cycle; refrigerators run about a third "
                          "of the time">(),
             .source = said<"[DOE appliances] refrigerator rule">()});
    } else {
        findings.push_back(
            {.severity = Severity::note,
             .where = of_load(load.name),
             .text = said<"the nameplate tells the most it takes, not what it uses">(),
             .mend = said<"meter it to narrow the range">(),
             .source = practice()});
    }
}

// The same loads with every cycle at its on-time: what may coincide.
Demand at_their_worst(const Demand& demand) {
    Demand worst = demand;
    const Spans whole{{.from = Duration(), .until = demand.lasts}};
    for (PlannedLoad& load : worst.loads) {
        DrawRatio most(1.0);
        for (const Strand& strand : load.strands) {
            most = std::max(most, strand.of_power);
        }
        const Spans& any = load.from == Outlet::ac ? demand.inverter_on : whole;
        load.strands = {{.items = load.count,
                         .on = load.usual_hours ? any : without(load.may_run, load.refused),
                         .of_power = most}};
        load.strands_low.clear();
        load.strands_high.clear();
    }
    return worst;
}

// The same rule as that of a start.
void find_other_voltage(const scenario::Load& load, const inverter::Model& inverter,
                        Findings& findings) {
    const auto refused = motor::refused_by_voltage(load, "", inverter.output_voltage);
    if (!refused) return;
    findings.push_back({.severity = Severity::stop,
                        .where = of_load(load.name),
                        .text = said<"{fault}; its draw is counted as if it ran">(refused->found),
                        .mend = refused->remedy,
                        .source = said<"motor method.md, Demand">()});
}

void find_coincident_peak(const scenario::Scenario& scenario, const Demand& demand,
                          const inverter::Model& inverter, Findings& findings) {
    const Demand worst = at_their_worst(demand);
    const std::vector<DemandStep> steps = demand_steps(worst, Case::likely);
    const auto apparent = [](const DemandStep& step) {
        return inverter::apparent(step.ac, step.ac_reactive);
    };
    const auto peak = std::ranges::max_element(steps, {}, apparent);
    if (peak == steps.end() || inverter::carries(inverter, peak->ac, apparent(*peak))) {
        return;
    }
    std::vector<Said> together;
    for (const PlannedLoad& load : worst.loads) {
        const Spans now{{.from = peak->from, .until = peak->from + units::second}};
        if (load.from == Outlet::ac && !common(load.strands.front().on, now).empty()) {
            together.emplace_back(load.name);
        }
    }
    const bool one_alone = together.size() == 1;
    const Said where = one_alone ? said<"load {load}">(together.front()) : said<"inverter">();
    findings.push_back(
        {.severity = one_alone ? Severity::stop : Severity::caution,
         .where = where,
         .text = said<"{loads} may run together at {time}: {power}, {apparent_power}; it carries "
                      "{rating} and {apparent_rating}">(
             words::joined(std::move(together), words::List::Joint::comma),
             on_the_clock(scenario.outage.starts + peak->from), peak->ac, apparent(*peak),
             inverter.continuous, inverter.continuous_apparent),
         .mend = said<"run them one after another, or use a larger inverter">(),
         .source = said<"the inverter's continuous rating">()});
}

void find_never_running(const PlannedLoad& load, Findings& findings) {
    if (load.may_run.empty()) {
        findings.push_back({.severity = Severity::note,
                            .where = of_load(load.name),
                            .text = said<"never runs in this outage">(),
                            .mend = said<"check its hours and days">(),
                            .source = practice()});
    }
}

}  // namespace

Findings demand_findings(const scenario::Scenario& scenario, const Demand& demand,
                         const std::optional<inverter::Model>& inverter) {
    Findings findings;
    find_refused(scenario, demand, findings);
    const Findings unwoken = search_mode_findings(scenario, demand);
    findings.insert(findings.end(), unwoken.begin(), unwoken.end());
    if (inverter) {
        find_coincident_peak(scenario, demand, *inverter, findings);
    }
    for (const scenario::Load& load : scenario.loads) {
        if (inverter) {
            find_other_voltage(load, *inverter, findings);
        }
        if (inverter && inverter->waveform == scenario::Waveform::quasi_square) {
            find_waveform(load, findings);
        }
        find_doubtful_draw(load, findings);
    }
    for (const PlannedLoad& load : demand.loads) {
        find_never_running(load, findings);
    }
    for (Finding& finding : cold_findings(scenario, demand, inverter)) {
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace demand
