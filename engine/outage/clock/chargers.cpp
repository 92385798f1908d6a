#include "outage/clock/chargers.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "battery/bank.hpp"
#include "battery/cell/percent.hpp"
#include "demand/power.hpp"
#include "motor/appliances/appliances.hpp"
#include "outage/clock/packs.hpp"
#include "units/said.hpp"

namespace outage {

namespace {

using namespace units;
using scenario::ChargerKind;
using scenario::Severity;
using words::Said;
using words::said;

constexpr Efficiency usual_efficiency{0.85};     // common practice, no source
constexpr PowerFactor usual_power_factor{0.65};  // without correction; common practice, no source
constexpr Duration longest_charge = 96.0 * hour;
constexpr Voltage usual_mains = 120.0 * volt;

Said practice() {
    return said<"common practice, no source">();
}

bool runs_at(const ChargerRuns& charger, Duration when) {
    return std::ranges::any_of(charger.on, [&](const demand::Span& span) {
        return span.from <= when && when < span.until;
    });
}

std::vector<battery::PackGroup> groups_at(const Unit& unit, StateOfCharge charge) {
    std::vector<Bank> banks{unit.bank};
    banks.insert(banks.end(), unit.others.begin(), unit.others.end());
    std::vector<battery::PackGroup> groups;
    for (const Bank& bank : banks) {
        auto setup = bank.setup;
        setup.stops = {};
        groups.push_back({setup, bank.count, battery::rested_with(bank.rated, charge)});
    }
    return groups;
}

// The apparent power of the heaviest motor start in the file.
struct Start {
    std::string name;
    ApparentPower apparent{};
};
Start heaviest_start(const scenario::Scenario& scenario, const std::vector<scenario::Load>& own) {
    Start heaviest;
    std::vector<scenario::Load> loads = scenario.loads;
    loads.insert(loads.end(), own.begin(), own.end());
    for (const auto& load : loads) {
        if (!load.motor || !load.motor->locked_rotor_current) continue;
        const auto mains = load.motor->voltage.value_or(usual_mains);
        const ApparentPower starts(mains * *load.motor->locked_rotor_current);
        if (starts > heaviest.apparent) heaviest = {load.name, starts};
    }
    return heaviest;
}

// What runs on the generator itself.
//   most   real power and volt-amperes at the upper end of what is known, all at once
struct OnGenerator {
    std::vector<scenario::Load> loads;
    std::vector<Said> names{};
    Power real{};
    ApparentPower most{};
    [[nodiscard]] Said listed() const { return words::joined(names, words::List::Joint::comma); }
};

OnGenerator on_generator(const scenario::Scenario& scenario) {
    OnGenerator own;
    for (scenario::Load load : scenario.on_generator) {
        load.from = scenario::Outlet::ac;
        scenario::Assumptions untold;
        if (load.like)
            if (auto filled = motor::filled_in(load, "")) load = std::move(filled->load);
        own.names.emplace_back(load.name);
        own.loads.push_back(load);
        const auto power = demand::load_power(load, "", untold);
        if (!power) continue;
        const Power real = static_cast<double>(load.count) * power->high;
        own.real += real;
        own.most = own.most + apparent_power(real, power->factor);
    }
    return own;
}

}  // namespace

std::vector<ChargerRuns> charger_runs(const scenario::Scenario& scenario, const VoltageAt& held_at,
                                      Voltage absorption, scenario::Assumptions& assumptions) {
    std::vector<ChargerRuns> runs;
    for (std::size_t i = 0; i < scenario.chargers.size(); ++i) {
        const auto& charger = scenario.chargers[i];
        const auto where = fmt::format("charger[{}]", i);
        ChargerRuns run{.name = charger.name, .kind = charger.kind};
        const Power at_most = charger.current * absorption;
        const Voltage charging = held_at(charger.current);
        run.offers = charger.current * charging;
        assumptions.push_back({where + ".current",
                               said<"offered as {power}: {current} at {voltage}, the packs half "
                                    "charged">(run.offers, charger.current, charging),
                               practice()});
        if (charger.kind != ChargerKind::vehicle) {
            if (!charger.efficiency)
                assumptions.push_back({where + ".efficiency",
                                       said<"taken as {value}">(amount(usual_efficiency)),
                                       practice()});
            if (!charger.power_factor)
                assumptions.push_back({where + ".power_factor",
                                       said<"taken as 0.65, a charger without correction">(),
                                       practice()});
            run.draws = at_most / charger.efficiency.value_or(usual_efficiency).value();
            run.apparent =
                apparent_power(run.draws, charger.power_factor.value_or(usual_power_factor));
        }
        if (charger.kind != ChargerKind::wall)
            run.on = demand::daily_spans(charger.hours, charger.days, scenario.outage.starts,
                                         scenario.outage.lasts);
        runs.push_back(std::move(run));
    }
    return runs;
}

std::vector<demand::DemandStep> with_chargers(const std::vector<demand::DemandStep>& steps,
                                              const std::vector<ChargerRuns>& chargers) {
    std::vector<Duration> changes;
    for (const auto& step : steps)
        changes.push_back(step.from);
    for (const auto& charger : chargers)
        for (const auto& span : charger.on) {
            changes.push_back(span.from);
            changes.push_back(span.until);
        }
    std::ranges::sort(changes);
    changes.erase(std::unique(changes.begin(), changes.end()), changes.end());
    std::vector<demand::DemandStep> merged;
    std::size_t at = 0;
    for (const Duration& change : changes) {
        while (at + 1 < steps.size() && steps[at + 1].from <= change)
            ++at;
        demand::DemandStep step = steps[at];
        step.from = change;
        for (const auto& charger : chargers)
            if (runs_at(charger, change)) step.charger += charger.offers;
        merged.push_back(step);
    }
    return merged;
}

std::optional<Duration> time_to_charge(const Unit& unit, Power offered, StateOfCharge from,
                                       StateOfCharge to) {
    const auto groups = groups_at(unit, from);
    battery::Bank bank(groups, Resistance{});
    Charge whole = static_cast<double>(unit.bank.count) * unit.bank.rated;
    for (const Bank& other : unit.others)
        whole += static_cast<double>(other.count) * other.rated;
    const battery::BankStops stops{.removed_below = to.complement().value() * whole};
    const auto step = bank.advance(stops, -offered, longest_charge);
    if (step.ending != battery::Ending::charge_restored) return std::nullopt;
    return step.time;
}

namespace {

// Collects what is found of one charger.
class Found {
  public:
    Found(const ChargerRuns& charger, scenario::Findings& findings)
        : where_(said<"charger {charger}">(charger.name)), findings_(findings) {}
    void add(Severity severity, Said text, Said mend) {
        findings_.push_back({severity, where_, std::move(text), std::move(mend), practice()});
    }

  private:
    Said where_;
    scenario::Findings& findings_;
};

void tell_generator(const OnGenerator& own, const std::vector<ChargerRuns>& chargers,
                    scenario::Findings& findings) {
    if (own.loads.empty()) return;
    const bool any_generator = std::ranges::any_of(chargers, [](const ChargerRuns& charger) {
        return charger.kind == ChargerKind::generator;
    });
    findings.push_back(
        {any_generator ? Severity::note : Severity::caution, said<"generator">(),
         any_generator
             ? said<"{loads} on the generator: {power} and {apparent_power} at most, none of it "
                    "from the packs, and only while it runs">(own.listed(), own.real, own.most)
             : said<"{loads} on the generator: {power} and {apparent_power} at most, none of it "
                    "from the packs, and only while it runs; no [[charger]] of kind generator "
                    "says when">(own.listed(), own.real, own.most),
         said<"food kept cold needs it for a third of the day or more">(), practice()});
}

// Whether the generator bears the charger, what runs beside it, and a start beside the charger.
void tell_burden(const ChargerRuns& charger, ApparentPower bears, const OnGenerator& own,
                 const Start& start, Found& found) {
    if (charger.apparent + own.most > bears && own.most > ApparentPower())
        found.add(charger.apparent > bears || own.most > bears ? Severity::stop : Severity::caution,
                  said<"{loads} beside the charger ask for up to {power}, and the generator gives "
                       "{rating}">(own.listed(), charger.apparent + own.most, bears),
                  said<"do not run all of it at once, or set the charger to a lower current">());
    if (charger.apparent > bears)
        found.add(Severity::stop,
                  said<"it draws {power} at {apparent_power}, and the generator gives {rating}">(
                      charger.draws, charger.apparent, bears),
                  said<"set the charger to a lower current, or take one with power factor "
                       "correction">());
    else if (charger.apparent + start.apparent > bears && start.apparent > ApparentPower())
        found.add(
            Severity::caution,
            said<"with the charger at {charger} the start of {load} ({start}) is more than the "
                 "generator's {rating}">(charger.apparent, start.name, start.apparent, bears),
            said<"stop the charger while that motor starts on the generator">());
}

void tell_time(const ChargerRuns& charger, const Unit& unit, Found& found) {
    const StateOfCharge low(0.2);
    const auto most = time_to_charge(unit, charger.offers, low, StateOfCharge(0.8));
    const auto last = time_to_charge(unit, charger.offers, low, StateOfCharge(0.95));
    if (most && last)
        found.add(Severity::note,
                  said<"brings the packs from 20 to 80 % in {most}, to 95 % in {last}, when "
                       "nothing else is drawn">(amount(*most, 2), amount(*last, 2)),
                  said<"run it from low to four fifths: the last fifth is slow">());
    else
        found.add(Severity::caution,
                  said<"does not bring the packs from 20 to 95 % within four days">(),
                  said<"look at its current, at the packs' charge limits, and at their "
                       "temperature">());
}

}  // namespace

scenario::Findings charger_findings(const scenario::Scenario& scenario,
                                    const std::vector<ChargerRuns>& chargers, const Unit& unit) {
    scenario::Findings findings;
    const OnGenerator own = on_generator(scenario);
    const Start start = heaviest_start(scenario, own.loads);
    tell_generator(own, chargers, findings);
    for (std::size_t i = 0; i < chargers.size(); ++i) {
        Found found(chargers[i], findings);
        if (chargers[i].kind == ChargerKind::wall) {
            found.add(Severity::note,
                      said<"the wall gives nothing while the power is out: it is not counted">(),
                      said<"charge the packs full when an outage is announced">());
            continue;
        }
        const auto& rating = scenario.chargers[i].generator_rating;
        if (rating && chargers[i].kind == ChargerKind::generator)
            tell_burden(chargers[i], *rating, own, start, found);
        tell_time(chargers[i], unit, found);
    }
    return findings;
}

}  // namespace outage
