#include "fitting/wiring.hpp"

#include <algorithm>
#include <functional>
#include <initializer_list>
#include <limits>
#include <map>
#include <set>
#include <tuple>

#include "fitting/circuit.hpp"
#include "fitting/flows.hpp"
#include "fitting/silent.hpp"
#include "fitting/unit.hpp"
#include "fitting/whole.hpp"
#include "words/identity.hpp"

namespace fitting {

namespace {

using scenario::Circuit;
using scenario::Scenario;
using units::Current;
using units::Power;
using words::Said;
using words::said;

// Everything that one fit works on.
struct Fitting {
    const Scenario& scenario;
    const Draws& draws;
    const BuildUnit& unit;
    Fit& fit;
};

// Nothing that the file leaves open would move how bad it is.
bool fails_or_fits_for_sure(const Check& check) {
    return rank_of(check.best.value_or(check.verdict)) == rank_of(check.verdict);
}

bool feeds_any(const Circuit& circuit, std::initializer_list<std::string_view> names) {
    return std::ranges::any_of(names, [&circuit](std::string_view name) {
        return std::ranges::find(circuit.feeds, name) != circuit.feeds.end();
    });
}

Around around_of(const Fitting& fitting, const Circuit& circuit) {
    Around around{.inside = fitting.unit.inside, .top = fitting.unit.top};
    if (fitting.unit.inverter) {
        around.output = fitting.unit.inverter->output_voltage;
        around.inverter_power = fitting.unit.inverter->continuous;
    }
    for (const PackKind& kind : fitting.unit.packs) {
        if (kind.lead == &circuit) {
            around.pack_fuse = kind.fuse;
        }
    }
    for (const scenario::Charger& charger : fitting.scenario.chargers) {
        if (charger.kind == scenario::ChargerKind::vehicle && feeds_any(circuit, {charger.name})) {
            around.far_source = said<"the battery of the vehicle">();
        }
    }
    return around;
}

// Of this circuit and of all that hang on it.
CircuitDraw draw_with_followers(const Fitting& fitting, std::size_t index) {
    CircuitDraw sum = fitting.draws.circuits[index];
    const std::string& name = fitting.scenario.circuits[index].name;
    for (std::size_t i = 0; i < fitting.scenario.circuits.size(); ++i) {
        if (i != index && fitting.scenario.circuits[i].from == name) {
            const CircuitDraw after = draw_with_followers(fitting, i);
            sum.at_bus.continuous += after.at_bus.continuous;
            sum.at_bus.further += after.at_bus.further;
            sum.at_outlet.continuous += after.at_outlet.continuous;
            sum.at_outlet.further += after.at_outlet.further;
            sum.critical = sum.critical || after.critical;
            sum.starts_motors = sum.starts_motors || after.starts_motors;
        }
    }
    return sum;
}

// The lowest voltage the bus works at: the inverter's cut-off, or 10.5 V for each 12 V.
units::Voltage design_voltage(const BuildUnit& unit) {
    return unit.inverter ? unit.inverter->cutoff_voltage
                         : 0.875 * (unit.nominal / (12.8 * units::volt)) * 12.0 * units::volt;
}

// ---- Charging: both ways along a wire count.

// At the lowest voltage at which a controller that passes power works; one that passes current
// gives the panels' own.
Current panel_current(const Fitting& fitting) {
    const auto& controller = fitting.scenario.controller;
    const bool passes_current = controller && controller->kind == scenario::ControllerKind::pwm;
    Power power{};
    Current current{};
    for (const scenario::Panel& panel : fitting.scenario.panels) {
        const double count = panel.count;
        power += count * panel.power;
        if (panel.short_circuit_current) {
            current +=
                count / std::max(1, panel.in_series.value_or(1)) * *panel.short_circuit_current;
        }
    }
    if (controller && controller->input_limit) {
        power = std::min(power, *controller->input_limit);
    }
    const Current by_power = power / design_voltage(fitting.unit);
    Current most = passes_current && current > Current() ? current : by_power;
    if (controller && controller->output_limit) {
        most = std::min(most, *controller->output_limit);
    }
    return most;
}

// What this circuit and those that begin at its end charge with.
Current charging_through(const Fitting& fitting, std::size_t index) {
    const Circuit& circuit = fitting.scenario.circuits[index];
    Current sum{};
    for (const scenario::Charger& charger : fitting.scenario.chargers) {
        if (std::ranges::find(circuit.feeds, charger.name) != circuit.feeds.end()) {
            sum += charger.current;
        }
    }
    if (feeds_any(circuit, {"charge_controller", "charge controller", "panels", "panel"})) {
        sum += panel_current(fitting);
    }
    for (std::size_t i = 0; i < fitting.scenario.circuits.size(); ++i) {
        if (i != index && fitting.scenario.circuits[i].from == circuit.name) {
            sum += charging_through(fitting, i);
        }
    }
    return sum;
}

Current all_charging(const Fitting& fitting) {
    Current sum = panel_current(fitting);
    for (const scenario::Charger& charger : fitting.scenario.chargers) {
        sum += charger.current;
    }
    return sum;
}

// The larger of what is drawn through it and what charges through it.
void take_charging(Burden& burden, Current charging) {
    if (charging > burden.continuous + burden.further) {
        burden.continuous = charging;
        burden.further = Current();
        burden.charging = charging;
        burden.for_drop = std::max(burden.for_drop, charging);
    }
}

Burden main_burden(const Fitting& fitting, std::size_t index, const CircuitDraw& draw,
                   Burden burden) {
    const BuildUnit& unit = fitting.unit;
    burden.continuous = draw.at_bus.continuous / burden.design;
    burden.further = draw.at_bus.further / burden.design;
    if (unit.inverter) {
        const auto drawn = direct_power(*unit.inverter, unit.inverter->continuous);
        burden.continuous += drawn / burden.design;
        burden.for_drop = asked_at_most(fitting.fit.continuous->feed, fitting.fit.cutoff).main +
                          (draw.at_bus.continuous + draw.at_bus.further) / burden.nominal;
    }
    if (fitting.fit.surge) {
        const auto& surge = *fitting.fit.surge;
        const bool reaches =
            surge.state.how == wiring::Feeding::carries && surge.state.at_load >= burden.design;
        burden.surge = reaches ? surge.state.main : surge.feed.drawn / burden.design;
        burden.surge_lasts = fitting.scenario.inverter->surge_lasts.value_or(1.0 * units::second);
    }
    take_charging(burden, charging_through(fitting, index));
    return burden;
}

Burden lead_burden(const Fitting& fitting, const Circuit& circuit, Burden burden) {
    const BuildUnit& unit = fitting.unit;
    Current charging{};
    for (std::size_t k = 0; k < unit.packs.size(); ++k) {
        if (unit.packs[k].lead != &circuit) {
            continue;
        }
        burden.alike = std::max(burden.alike, unit.packs[k].count);
        const PackCurrents currents = pack_currents(unit, fitting.fit, k);
        if (currents.for_hours + currents.further > burden.continuous + burden.further) {
            burden.continuous = currents.for_hours;
            burden.further = currents.further;
        }
        burden.for_drop = std::max(burden.for_drop, currents.given.current);
        charging = std::max(charging, currents.taken);
        if (fitting.fit.surge) {
            const auto worst = worst_share(unit, fitting.fit.surge->feed, k);
            burden.surge = std::max(burden.surge, worst.current);
            burden.surge_lasts =
                fitting.scenario.inverter->surge_lasts.value_or(1.0 * units::second);
        }
    }
    take_charging(burden, charging);
    return burden;
}

Burden burden_of(const Fitting& fitting, std::size_t index) {
    const Circuit& circuit = fitting.scenario.circuits[index];
    const CircuitDraw draw = draw_with_followers(fitting, index);
    Burden burden{.role = role_of(fitting.scenario, circuit),
                  .nominal = fitting.unit.nominal,
                  .design = design_voltage(fitting.unit),
                  .critical = draw.critical};
    switch (burden.role) {
        case Role::main:
            return main_burden(fitting, index, draw, burden);
        case Role::pack_lead:
            return lead_burden(fitting, circuit, burden);
        case Role::charging:
        case Role::branch:
            burden.continuous = draw.at_bus.continuous / burden.design;
            burden.further = draw.at_bus.further / burden.design;
            burden.for_drop = (draw.at_bus.continuous + draw.at_bus.further) / burden.nominal;
            take_charging(burden, charging_through(fitting, index));
            return burden;
        case Role::ac:
            break;
    }
    if (fitting.unit.inverter) {
        burden.nominal = fitting.unit.inverter->output_voltage;
        burden.design = burden.nominal;
    } else {
        burden.nominal = burden.design = 120.0 * units::volt;
    }
    burden.continuous = draw.at_outlet.continuous / burden.design;
    burden.further = draw.at_outlet.further / burden.design;
    burden.for_drop = burden.continuous + burden.further;
    if (draw.starts_motors && fitting.scenario.inverter && fitting.scenario.inverter->surge) {
        burden.surge = *fitting.scenario.inverter->surge / burden.design;
        burden.surge_lasts = fitting.scenario.inverter->surge_lasts.value_or(1.0 * units::second);
    }
    return burden;
}

void solve(const Fitting& fitting) {
    const BuildUnit& unit = fitting.unit;
    const auto direct = fitting.draws.direct;
    fitting.fit.charging = all_charging(fitting);
    fitting.fit.direct_for_hours = direct.continuous / design_voltage(unit);
    fitting.fit.direct = fitting.fit.direct_for_hours + direct.further / design_voltage(unit);
    if (!unit.inverter) {
        return;
    }
    const Current branches = (direct.continuous + direct.further) / unit.nominal;
    const auto operating = [&](Power output) {
        Operating at{.feed = feed_of(unit, direct_power(*unit.inverter, output), branches)};
        at.state = wiring::fed(at.feed);
        return at;
    };
    fitting.fit.cutoff = unit.inverter->cutoff_voltage;
    fitting.fit.continuous = operating(unit.inverter->continuous);
    if (fitting.scenario.inverter->surge) {
        fitting.fit.surge = operating(*fitting.scenario.inverter->surge);
    }
}

void sort_by_number(std::vector<Check>& checks) {
    std::ranges::stable_sort(checks, {},
                             [](const Check& check) { return std::stoi(check.id.substr(1)); });
}

// ---- What may flow, where stiffness is not known.

// A pack of the kind, for what is aimed at.
Current aimed_at(const Fitting& fitting, const Lean& lean) {
    const PackCurrents currents = pack_currents(fitting.unit, fitting.fit, lean.kind);
    switch (lean.aim) {
        case Aim::given:
            return currents.given.current;
        case Aim::lasting:
            return currents.for_hours + currents.further;
        case Aim::asked:
            return wiring::least_rating(
                {.continuous = currents.for_hours, .further = currents.further});
        case Aim::surge:
            if (fitting.fit.surge)
                return worst_share(fitting.unit, fitting.fit.surge->feed, lean.kind).current;
            break;
        case Aim::stiff:
        case Aim::soft:
            break;
    }
    return {};
}

// The packs and the main path as stiff as the lean has them; solved.
void lean_to(const Fitting& fitting, BuildUnit& unit, const FlowSpans& spans, const Lean& lean) {
    for (std::size_t i = 0; i < unit.packs.size(); ++i)
        unit.packs[i].flow = lean.most ? spans.packs[i].high : spans.packs[i].low;
    unit.main_path = lean.most ? spans.main.high : spans.main.low;
    auto& flow = unit.packs[lean.kind].flow;
    const OhmSpan& span = spans.packs[lean.kind];
    if (lean.aim == Aim::stiff || lean.aim == Aim::soft) {
        flow = lean.aim == Aim::stiff ? span.low : span.high;
    } else {
        flow = extreme_in(span, lean.most, [&](units::Resistance own) {
            flow = own;
            solve(fitting);
            return aimed_at(fitting, lean);
        });
    }
    solve(fitting);
}

struct Leaning {
    const FlowSpans& spans;
    Lean lean;
};

struct Fitted {
    Fit fit;
    BuildUnit unit;
};

void take_unit(Fit& fit, const BuildUnit& unit) {
    fit.inside = unit.inside;
    fit.shut = unit.shut;
    fit.shed = unit.shed;
    fit.nominal = unit.nominal;
    fit.top = unit.top;
    fit.packs = unit.count;
}

// Each circuit by itself, with what flows in it.
void fit_circuits(const Fitting& fitting) {
    Fit& fit = fitting.fit;
    for (std::size_t i = 0; i < fitting.scenario.circuits.size(); ++i) {
        const Circuit& circuit = fitting.scenario.circuits[i];
        const Around around = around_of(fitting, circuit);
        CircuitState state =
            circuit_state(circuit, burden_of(fitting, i), around, &fit.assumptions);
        state.index = i;
        auto checks = circuit_checks(circuit, state, around);
        fit.checks.insert(fit.checks.end(), std::make_move_iterator(checks.begin()),
                          std::make_move_iterator(checks.end()));
        fit.circuits.push_back(std::move(state));
    }
}

Check told_twice(const scenario::Finding& differs) {
    return {.id = "C1",
            .circuit = "",
            .about = said<"{where}, given twice">(differs.where),
            .verdict = Verdict::may_not,
            .text = said<"Given twice: {what}.">(differs.text),
            .mend = words::as_sentence(differs.mend),
            .source = differs.source};
}

// What looks at several circuits, or at none.
void check_whole(const Fitting& fitting) {
    const auto& [scenario, draws, unit, fit] = fitting;
    check_guards_from_before(scenario, fit);
    check_order_of_fuses(scenario, fit);
    check_faults(scenario, unit, fit);
    check_inverter_voltage(scenario, fit);
    check_packs(scenario, unit, fit);
    check_loads(scenario, unit, fit);
    check_case(scenario, unit, fit);
    check_rest(scenario, draws, fit);
    for (const scenario::Finding& differs : unit.differs) {
        fit.checks.push_back(told_twice(differs));
    }
    sort_by_number(fit.checks);
}

// The build with every figure as it is given; what is silent has the models' likely value.
//   leaning   what flows is another matter: it is that of these spans
units::Result<Fitted> fitted(const Scenario& scenario, const Draws& draws,
                             const std::optional<Leaning>& leaning = std::nullopt) {
    Fit result;
    auto unit = build_unit(scenario, result.assumptions);
    if (!unit) {
        return units::fail(unit.error());
    }
    take_unit(result, *unit);
    const Fitting fitting{scenario, draws, *unit, result};
    solve(fitting);
    if (leaning) lean_to(fitting, *unit, leaning->spans, leaning->lean);
    fit_circuits(fitting);
    check_whole(fitting);
    return Fitted{std::move(result), *std::move(unit)};
}

units::Result<Fit> fit_of(const Scenario& scenario, const Draws& draws) {
    auto made = fitted(scenario, draws);
    if (!made) {
        return units::fail(std::move(made.error()));
    }
    return std::move(made->fit);
}

// ---- The worst and the best of what the file leaves open.

using Place = std::tuple<std::string, std::string, std::string, int>;

Place place_at(const Check& check, int nth) {
    return {check.id, check.circuit, words::identity_of(check.about), nth};
}

// A check by what it looks at; of several alike in one circuit, by their order.
std::map<Place, const Check*> by_place(const std::vector<Check>& checks) {
    std::map<Place, const Check*> places;
    for (const Check& check : checks) {
        int nth = 0;
        while (!places.emplace(place_at(check, nth), &check).second) {
            ++nth;
        }
    }
    return places;
}

// What is told of one place, and where in the ranges it was found.
struct Told {
    Check check;
    std::size_t found_in = 0;  // index of the completion
    std::map<std::string, Said> settled_by = {};
};

// A point of the ranges that is looked at; `lean` says of it how stiff packs and main path are.
struct Point {
    Completion completion;
    std::optional<Lean> lean = {};
};
using Points = std::vector<Point>;

// All likely first; then every pack soft, with a cut-off that is high and one that is low, and
// every pack stiff, likewise.
Points ends_of(bool harmful) {
    using Other = Completion::Other;
    return {{{harmful, Other::likely}},
            {{harmful, Other::high}},
            {{harmful, Other::low}},
            {{.harmful = harmful, .others = Other::high, .cutoff_high = false}},
            {{.harmful = harmful, .others = Other::low, .cutoff_high = true}}};
}

// How stiff everything may be, with the figures told.
FlowSpans spans_within(
    const Scenario& scenario, const std::vector<SilentFigure>& silent,
    const std::function<void(Scenario&)>& also = [](Scenario&) {}) {
    using Other = Completion::Other;
    std::vector<BuildUnit> units;
    for (const bool harmful : {true, false}) {
        for (const Other others : {Other::likely, Other::low, Other::high}) {
            auto there = completed(scenario, silent, {.harmful = harmful, .others = others});
            also(there);
            scenario::Assumptions told_elsewhere;
            if (auto unit = build_unit(there, told_elsewhere)) units.push_back(*std::move(unit));
        }
    }
    return flow_spans(units);
}

// Each kind of several singled out, which alike packs need not be: they are soft and stiff
// together.
Points leaning_points(const FlowSpans& spans, bool surge, bool harmful) {
    Points all;
    if (spans.packs.size() < 2) {
        return all;
    }
    for (std::size_t kind = 0; kind < spans.packs.size(); ++kind) {
        for (const Aim aim :
             {Aim::stiff, Aim::soft, Aim::given, Aim::lasting, Aim::asked, Aim::surge}) {
            if (aim == Aim::surge && !surge) continue;
            all.push_back({{.harmful = harmful,
                            .others = harmful ? Completion::Other::high : Completion::Other::low,
                            .cutoff_high = !harmful},
                           Lean{.kind = kind, .aim = aim, .most = harmful}});
        }
    }
    return all;
}

units::Result<Fitted> fitted_at(const Scenario& scenario, const Draws& draws,
                                const FlowSpans& spans, const Point& point) {
    return fitted(scenario, draws,
                  point.lean ? std::optional(Leaning{spans, *point.lean}) : std::nullopt);
}

std::map<Place, Told> worst_of_all(const std::vector<Fit>& fits) {
    std::map<Place, Told> told;
    for (std::size_t i = 0; i < fits.size(); ++i) {
        for (const auto& [place, check] : by_place(fits[i].checks)) {
            const auto known = told.find(place);
            if (known == told.end()) {
                told.emplace(place, Told{*check, i});
            } else if (rank_of(check->verdict) > rank_of(known->second.check.verdict)) {
                known->second = Told{*check, i};
            }
        }
    }
    return told;
}

void take_best(std::map<Place, Told>& told, const Fit& best) {
    const auto places = by_place(best.checks);
    for (auto& [place, one] : told) {
        const auto there = places.find(place);
        const Verdict found = there == places.end()
                                  ? Verdict::fits
                                  : there->second->best.value_or(there->second->verdict);
        if (rank_of(found) < rank_of(one.check.best.value_or(one.check.verdict))) {
            one.check.best = found;
        }
    }
}

// "circuit.lamps, 16 AWG wire, insulation"
Said place_of(const SilentFigure& figure) {
    return said<"{where}, {key}">(figure.where, figure.key);
}

// Which single figure would settle it, by trying.
void take_settling(std::map<Place, Told>& told, const Scenario& scenario, const Draws& draws,
                   const std::vector<SilentFigure>& silent, const Points& points) {
    for (std::size_t i = 0; i < points.size(); ++i) {
        const bool any = std::ranges::any_of(told, [i](const auto& entry) {
            return entry.second.found_in == i && !fails_or_fits_for_sure(entry.second.check);
        });
        if (!any) {
            continue;
        }
        const Scenario worst = completed(scenario, silent, points[i].completion);
        for (const SilentFigure& figure : silent) {
            for (const double end : {0.0, 1.0}) {
                const auto set = [&](Scenario& there) { figure.set(there, end); };
                Scenario other = worst;
                set(other);
                const auto spans =
                    points[i].lean ? spans_within(scenario, silent, set) : FlowSpans{};
                const auto made = fitted_at(other, draws, spans, points[i]);
                if (!made) {
                    continue;
                }
                const auto places = by_place(made->fit.checks);
                for (auto& [place, one] : told) {
                    if (one.found_in != i || fails_or_fits_for_sure(one.check)) {
                        continue;
                    }
                    const auto there = places.find(place);
                    const Verdict then =
                        there == places.end() ? Verdict::fits : there->second->verdict;
                    if (rank_of(then) < rank_of(one.check.verdict)) {
                        const Said figure_of = place_of(figure);
                        one.settled_by.emplace(words::identity_of(figure_of), figure_of);
                    }
                }
            }
        }
    }
}

// Packs that open one after another: which of them does so first changes within the ranges, so it
// is asked of the ranges themselves.
void take_cascade(std::map<Place, Told>& told, const FlowSpans& spans, const Fitted& worst,
                  const Fitted& best, units::Voltage lowest, units::Voltage highest) {
    if (!worst.fit.continuous || !best.fit.continuous) {
        return;
    }
    const Cascade cascade = cascade_within(spans, {.worst = worst.unit,
                                                   .best = best.unit,
                                                   .most = worst.fit.continuous->feed,
                                                   .least = best.fit.continuous->feed,
                                                   .lowest_cutoff = lowest,
                                                   .highest_cutoff = highest});
    const Place place{"C9", "", "cascade", 0};
    if (cascade.may && !told.contains(place)) {
        told.emplace(place, Told{.check = packs_open_in_turn(), .found_in = 0});
    }
    const auto one = told.find(place);
    if (one != told.end()) {
        one->second.check.best = cascade.surely ? Verdict::fails : Verdict::fits;
    }
}

Said with_doubt(const Told& told) {
    const Said& text = told.check.text;
    if (fails_or_fits_for_sure(told.check)) {
        return text;
    }
    if (told.settled_by.empty()) {
        return said<"{finding} That is the worst of what the file leaves open, not certain.">(text);
    }
    std::vector<Said> figures;
    for (const auto& [place, figure] : told.settled_by)
        figures.push_back(figure);
    return said<
        "{finding} That is the worst of what the file leaves open, not certain: say "
        "{figures}.">(text, words::joined(std::move(figures), words::List::Joint::or_each));
}

enum class Depth { quick, advising };

// The first end of what the file leaves open: what has one bad end is at it, the rest is likely.
units::Result<Fitted> fitted_first(const Scenario& scenario, const Draws& draws,
                                   const std::vector<SilentFigure>& silent) {
    auto first = fitted(completed(scenario, silent, ends_of(true).front().completion), draws);
    // What was put in may not go with what is stated: the file itself decides.
    return first ? std::move(first) : fitted(scenario, draws);
}

// What the ends of the ranges come to, one after another. The first is there from the beginning.
//   fits, made       of the harmful ends that could be fitted, and where they lie
//   worst            softest, where all that has one bad end is at it
//   best             of the harmless ends, the last
//   lowest, highest  cut-off of the inverter
class Ends {
  public:
    Ends(const Scenario& scenario, const Draws& draws, const std::vector<SilentFigure>& silent,
         Fitted&& first)
        : scenario_(scenario),
          draws_(draws),
          silent_(silent),
          spans_(spans_within(scenario, silent)) {
        take(std::move(first), ends_of(true).front());
    }

    // Given up, with false, at the first that does not pass.
    bool take_harmful(const Passes& passes) {
        const Points points = points_at(true);
        for (std::size_t i = 1; i < points.size(); ++i) {
            auto fit = at(points[i]);
            if (!fit) continue;
            if (!passes(fit->fit)) return false;
            take(*std::move(fit), points[i]);
        }
        return true;
    }

    // The worst of the harmful ends, and with it the best that the harmless ones make of it.
    std::map<Place, Told> told(Depth depth) {
        auto told = worst_of_all(fits_);
        std::optional<Fitted> best;
        for (const Point& point : points_at(false)) {
            auto fit = at(point);
            if (!fit) continue;
            see_cutoff(fit->fit);
            take_best(told, fit->fit);
            best = *std::move(fit);
        }
        if (best) take_cascade(told, spans_, *worst_, *best, lowest_, highest_);
        if (depth == Depth::advising) take_settling(told, scenario_, draws_, silent_, made_);
        return told;
    }

    // That of the likely values, but for a short, which is the largest of any end.
    Fit likely() && {
        Fit result = std::move(fits_.front());
        for (const Fit& other : fits_) {
            if (other.prospective > result.prospective) {
                result.prospective = other.prospective;
            }
        }
        return result;
    }

  private:
    const Scenario& scenario_;
    const Draws& draws_;
    const std::vector<SilentFigure>& silent_;
    FlowSpans spans_;
    std::vector<Fit> fits_;
    Points made_;
    std::optional<Fitted> worst_;
    units::Voltage lowest_ = std::numeric_limits<units::Voltage>::infinity();
    units::Voltage highest_{};

    [[nodiscard]] units::Result<Fitted> at(const Point& point) const {
        return fitted_at(completed(scenario_, silent_, point.completion), draws_, spans_, point);
    }

    void see_cutoff(const Fit& of) {
        lowest_ = std::min(lowest_, of.cutoff);
        highest_ = std::max(highest_, of.cutoff);
    }

    [[nodiscard]] Points points_at(bool harmful) const {
        Points all = ends_of(harmful);
        const bool surge = !fits_.empty() && fits_.front().surge.has_value();
        const Points leaning = leaning_points(spans_, surge, harmful);
        all.insert(all.end(), leaning.begin(), leaning.end());
        return all;
    }

    void take(Fitted&& fit, const Point& point) {
        see_cutoff(fit.fit);
        fits_.push_back(fit.fit);
        made_.push_back(point);
        if (!worst_ || point.completion.others == Completion::Other::high) worst_ = std::move(fit);
    }
};

// In the order of the file; what only another end of the ranges asks comes after.
std::vector<Check> in_order_of(const std::vector<Check>& file, std::map<Place, Told> told) {
    std::vector<Check> checks;
    const auto tell = [&](Told&& one) {
        one.check.text = with_doubt(one);
        checks.push_back(std::move(one.check));
    };
    std::map<std::tuple<std::string, std::string, std::string>, int> count;
    for (const Check& check : file) {
        const auto [id, circuit, about, first] = place_at(check, 0);
        const int nth = first + count[{id, circuit, about}]++;
        const auto one = told.find(place_at(check, nth));
        tell(std::move(one->second));
        told.erase(one);
    }
    for (auto& [place, one] : told) {
        tell(std::move(one));
    }
    return checks;
}

// What the models took for what is silent, and the ends that the checks took of it.
scenario::Assumptions assumptions_of(const Scenario& scenario, const Draws& draws,
                                     const std::vector<SilentFigure>& silent,
                                     scenario::Assumptions of_the_end) {
    const auto as_given = fit_of(scenario, draws);
    auto assumptions = as_given ? as_given->assumptions : std::move(of_the_end);
    for (const SilentFigure& figure : silent) {
        assumptions.push_back({.where = {},
                               .text = figure.harm == Harm::either
                                           ? said<"{range}: checks take the worse end">(figure.text)
                                           : said<"{range}: the worse end is taken">(figure.text),
                               .source = figure.source,
                               .named = place_of(figure)});
    }
    return assumptions;
}

//   passes   asked at each harmful end in turn, and of the whole; nothing where it says no
units::Result<std::optional<Fit>> fit_within(const Scenario& scenario, const Draws& draws,
                                             Depth depth, const Passes& passes) {
    const auto silent = silent_figures(scenario);
    auto first = fitted_first(scenario, draws, silent);
    if (!first) {
        return units::fail(std::move(first.error()));
    }
    if (!passes(first->fit)) {
        return std::nullopt;
    }
    Ends ends(scenario, draws, silent, *std::move(first));
    if (!ends.take_harmful(passes)) {
        return std::nullopt;
    }
    auto told = ends.told(depth);
    Fit result = std::move(ends).likely();
    result.checks = in_order_of(result.checks, std::move(told));
    if (!passes(result)) {
        return std::nullopt;  // packs that open in turn are no single end's
    }
    sort_by_number(result.checks);
    result.assumptions = assumptions_of(scenario, draws, silent, std::move(result.assumptions));
    return result;
}

units::Result<Fit> whole_fit(const Scenario& scenario, const Draws& draws, Depth depth) {
    auto made = fit_within(scenario, draws, depth, [](const Fit&) { return true; });
    if (!made) {
        return units::fail(std::move(made.error()));
    }
    return **std::move(made);
}

}  // namespace

units::Result<Fit> fit(const Scenario& scenario, const Draws& draws) {
    return whole_fit(scenario, draws, Depth::advising);
}

units::Result<Fit> quick_fit(const Scenario& scenario, const Draws& draws) {
    return whole_fit(scenario, draws, Depth::quick);
}

units::Result<std::optional<Fit>> fit_if(const Scenario& scenario, const Draws& draws,
                                         const Passes& passes) {
    return fit_within(scenario, draws, Depth::quick, passes);
}

units::Result<Fit> first_fit(const Scenario& scenario, const Draws& draws) {
    auto first = fitted_first(scenario, draws, silent_figures(scenario));
    if (!first) {
        return units::fail(std::move(first.error()));
    }
    return std::move(first->fit);
}

bool fails_for_sure(const Check& check) {
    return check.verdict == Verdict::fails && check.best.value_or(check.verdict) == Verdict::fails;
}

bool fails_for_sure(const Fit& fit, std::string_view circuit) {
    return std::ranges::any_of(fit.checks, [circuit](const Check& check) {
        return check.circuit == circuit && fails_for_sure(check);
    });
}

scenario::Severity severity_of(Verdict verdict) {
    switch (verdict) {
        case Verdict::fails:
            return scenario::Severity::stop;
        case Verdict::may_not:
        case Verdict::unknown:
            return scenario::Severity::caution;
        case Verdict::fits:
        case Verdict::asked:
        case Verdict::deferred:
            break;
    }
    return scenario::Severity::note;
}

int rank_of(Verdict verdict) {
    switch (severity_of(verdict)) {
        case scenario::Severity::stop:
            return 2;
        case scenario::Severity::caution:
            return 1;
        case scenario::Severity::note:
            break;
    }
    return 0;
}

Said word_for(Verdict verdict) {
    switch (verdict) {
        case Verdict::fits:
            return said<"fits">();
        case Verdict::may_not:
            return said<"doubtful">();
        case Verdict::fails:
            return said<"fails">();
        case Verdict::unknown:
            return said<"unknown">();
        case Verdict::asked:
            return said<"ask">();
        case Verdict::deferred:
            return said<"deferred">();
    }
    return said<"unknown">();
}

Said word_for(const Check& check) {
    return check.verdict == Verdict::fails && !fails_for_sure(check) ? said<"may fail">()
                                                                     : word_for(check.verdict);
}

Said word_for(const Fit& fit, std::string_view circuit) {
    const Verdict worst = worst_of(fit, circuit);
    return worst == Verdict::fails && !fails_for_sure(fit, circuit) ? said<"may fail">()
                                                                    : word_for(worst);
}

Verdict worst_of(const Fit& fit, std::string_view circuit) {
    Verdict worst = Verdict::fits;
    for (const Check& check : fit.checks) {
        if (check.circuit == circuit &&
            (rank_of(check.verdict) > rank_of(worst) ||
             (worst == Verdict::unknown && check.verdict == Verdict::may_not))) {
            worst = check.verdict;
        }
    }
    return worst;
}

}  // namespace fitting
