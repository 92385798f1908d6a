#include "starting/plan.hpp"

#include <algorithm>
#include <numeric>

#include "motor/appliances/appliances.hpp"
#include "scenario/file/set_aside.hpp"
#include "units/said.hpp"

namespace starting {

using namespace units;
using words::Said;
using words::said;

namespace {

// A pause in which voltages recover and a person can see that it runs: common practice, no source.
constexpr Duration least_wait = 10.0 * second;

Judgement judge_direct(const DirectMotor& motor, const Background& others, const StartScene& scene,
                       const DirectSource& source) {
    const InverterSide* inverter = scene.inverter ? &*scene.inverter : nullptr;
    return judge(draw_of(motor.starting, motor.time, others, inverter), inverter, source);
}

// The same bank with every pack at this charge.
std::optional<DirectSource> at_charge(const StartScene& scene, StateOfCharge charge) {
    auto bank = bank_of(scene.built, charge);
    if (!bank) return std::nullopt;
    DirectSource source = scene.bank.source;
    source.branches = std::move(bank->source.branches);
    return source;
}

// The charge to which the bank may fall before the verdict gets worse.
std::optional<StateOfCharge> lowest_charge(const StartScene& scene, const JudgeBehind& judge,
                                           StartVerdict verdict) {
    const auto verdict_at = [&](double charge) {
        const auto source = at_charge(scene, StateOfCharge(charge));
        return source ? judge(*source).verdict : StartVerdict::will_not_start;
    };
    const double now = scene.bank.charge.value();
    double low = 0.0;
    double high = now;
    if (verdict_at(low) <= verdict) return StateOfCharge(0.0);
    if (verdict_at(high) > verdict) return std::nullopt;
    while (high - low > 0.005) {
        const double middle = 0.5 * (low + high);
        (verdict_at(middle) <= verdict ? high : low) = middle;
    }
    return StateOfCharge(high);
}

void add_what_if(LoadStart& start, Said change, const Judgement& judged) {
    start.what_ifs.push_back({std::move(change), judged.verdict, judged.binding});
}

std::optional<DirectSource> full(const StartScene& scene) {
    if (scene.bank.charge >= StateOfCharge(0.995)) return std::nullopt;
    return at_charge(scene, StateOfCharge(1.0));
}

std::optional<StartingMotor> softened(const scenario::Load& load, const LoadRun& run,
                                      const std::string& where, const InverterSide& inverter) {
    if (load.motor->soft_start.value_or(false)) return std::nullopt;
    scenario::Load other = load;
    other.motor->soft_start = true;
    auto motor = starting_motor(other, where, run.draw, inverter, run.drives);
    return motor ? std::optional(*std::move(motor)) : std::nullopt;
}

void try_what_ifs(const scenario::Scenario& scenario, const StartScene& scene, const LoadRun& run,
                  std::size_t index, const StartQuestion& question, LoadStart& start) {
    if (const auto source = full(scene)) {
        StartQuestion other = question;
        other.source = *source;
        add_what_if(start, said<"with the packs full">(), judge_start(other));
    }
    if (question.background.real.high > Power{} || question.background.direct.high > Power{}) {
        StartQuestion other = question;
        other.background = {};
        add_what_if(start, said<"with everything else off">(), judge_start(other));
    }
    if (const auto motor = softened(scenario.loads[index], run, start.where, question.inverter)) {
        StartQuestion other = question;
        other.motors = {*motor};
        add_what_if(start, said<"with a soft-start device">(), judge_start(other));
    }
    StartQuestion more = question;
    more.source = with_last(question.source, question.source.branches.back().count + 1);
    add_what_if(start, said<"with one pack more">(), judge_start(more));
}

void refuse_to_start(LoadStart& start) {
    start.judged.verdict = StartVerdict::will_not_start;
    start.judged.binding = Constraint::voltage_class;
    start.packs.because = Constraint::voltage_class;
    start.packs.at_best = StartVerdict::will_not_start;
}

// A motor on the bus; gives how it is judged behind other packs.
JudgeBehind start_on_the_bus(const StartScene& scene, std::size_t index, const Background& others,
                             LoadStart& start) {
    start.on_the_bus = true;
    start.run_up.likely.time = scene.direct[index]->time;
    const JudgeBehind judge_behind = [&scene, index, others](const DirectSource& source) {
        return judge_direct(*scene.direct[index], others, scene, source);
    };
    start.judged = judge_behind(scene.bank.source);
    return judge_behind;
}

// A motor behind the inverter; gives how it is judged behind other packs.
JudgeBehind start_behind_inverter(const scenario::Scenario& scenario, const StartScene& scene,
                                  const LoadRun& run, std::size_t index, const Background& others,
                                  LoadStart& start) {
    const StartQuestion question{.motors = {*scene.motors[index]},
                                 .background = others,
                                 .inverter = *scene.inverter,
                                 .source = scene.bank.source};
    start.judged = judge_start(question);
    start.demand = question.motors.front().demand;
    start.run_up = question.motors.front().at_full_voltage;
    start.suffers_from_waveform = start.judged.draw.waveform_in_doubt;
    if (start.judged.verdict == StartVerdict::marginal) start.settling = settle_with(question);
    try_what_ifs(scenario, scene, run, index, question, start);
    start.course = course_of(question);
    return [question](const DirectSource& source) {
        return judge_start(question.motors, question.background, question.inverter, source);
    };
}

LoadStart start_of(const scenario::Scenario& scenario, const StartScene& scene,
                   std::span<const LoadRun> runs, std::size_t index) {
    const auto& load = scenario.loads[index];
    LoadStart start{.name = load.name,
                    .where = scenario::key_of(load, index),
                    .refused = scene.refused[index],
                    .medical = motor::is_medical(load)};
    if (start.refused) {
        refuse_to_start(start);
        return start;
    }
    const auto others = beside(scenario, scene, index);
    for (std::size_t i = 0; i < scenario.loads.size(); ++i)
        if (i != index && !scene.refused[i] && may_run_together(load, scenario.loads[i]))
            start.beside.push_back(scenario.loads[i].name);
    const JudgeBehind judge_behind =
        scene.direct[index]
            ? start_on_the_bus(scene, index, others, start)
            : start_behind_inverter(scenario, scene, runs[index], index, others, start);
    start.packs = packs_needed(scene.bank.source, judge_behind);
    if (start.judged.verdict != StartVerdict::will_not_start)
        start.down_to = lowest_charge(scene, judge_behind, start.judged.verdict);
    return start;
}

// Electronics ramp up; they count with what they draw while they run.
bool has_run_up(const StartScene& scene, std::size_t load) {
    return scene.motors[load] && scene.motors[load]->locked.kind != scenario::MotorKind::electronic;
}

std::optional<std::size_t> largest_motor(const StartScene& scene) {
    std::optional<std::size_t> largest;
    for (std::size_t i = 0; i < scene.motors.size(); ++i)
        if (has_run_up(scene, i) &&
            (!largest || scene.motors[i]->demand.likely.apparent >
                             scene.motors[*largest]->demand.likely.apparent))
            largest = i;
    return largest;
}

// All items of every motor behind the inverter whose hours meet those of the largest, and what else
// runs beside them.
struct Together {
    std::vector<StartingMotor> motors;
    Background others;
};

Together all_together(const scenario::Scenario& scenario, const StartScene& scene) {
    Together together;
    const auto largest = largest_motor(scene);
    if (!largest) return together;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        if (!may_run_together(scenario.loads[*largest], scenario.loads[i])) continue;
        for (int item = 0; item < scenario.loads[i].count; ++item) {
            if (has_run_up(scene, i))
                together.motors.push_back(*scene.motors[i]);
            else if (!scene.refused[i] && !scene.direct[i])
                together.others = together.others + scene.items[i];
        }
    }
    return together;
}

// The largest first, while nothing else that starts is on yet.
void stagger(const scenario::Scenario& scenario, const StartScene& scene, StartPlan& plan) {
    std::vector<std::size_t> order;
    const auto largest = largest_motor(scene);
    for (std::size_t i = 0; i < scenario.loads.size(); ++i)
        if (has_run_up(scene, i) && may_run_together(scenario.loads[*largest], scenario.loads[i]))
            order.push_back(i);
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
        return scene.motors[a]->demand.likely.apparent > scene.motors[b]->demand.likely.apparent;
    });
    Background running = all_together(scenario, scene).others;
    double strained = 0.0;
    for (const std::size_t i : order) {
        const std::vector<StartingMotor> one{*scene.motors[i]};
        StaggeredStart next{
            .load = i, .judged = judge_start(one, running, *scene.inverter, scene.bank.source)};
        const auto* duration = next.judged.of(Constraint::surge_duration);
        strained += duration == nullptr ? 0.0 : duration->used.high().value();
        next.wait = std::max(2.0 * one.front().at_full_voltage.high.time, least_wait);
        for (int item = 0; item < scenario.loads[i].count; ++item)
            running = running + scene.items[i];
        plan.staggered.push_back(std::move(next));
    }
    // What the overload has cost the inverter comes back only with a long rest.
    if (strained > comfortable(Constraint::surge_duration).value())
        for (auto& next : plan.staggered)
            next.wait = std::max(next.wait, inverter::recovery_rest());
}

void tell_of_waveform(const scenario::Scenario& scenario, StartPlan& plan) {
    if (!plan.inverter || plan.inverter->model.waveform == scenario::Waveform::sine) return;
    for (const auto& load : scenario.loads) {
        if (load.from != scenario::Outlet::ac || !motor::is_medical(load)) continue;
        plan.findings.push_back(
            {.severity = scenario::Severity::stop,
             .where = said<"load {load}">(load.name),
             .text = said<"a medical device is not for a quasi-square wave">(),
             .mend = said<"use an inverter with a sine wave, or a 12 V supply of its maker">(),
             .source = said<"[Inverter manuals], several name medical devices">()});
    }
    for (const auto& start : plan.loads) {
        if (!start.suffers_from_waveform || start.medical) continue;
        plan.findings.push_back(
            {.severity = scenario::Severity::caution,
             .where = said<"load {load}">(start.name),
             .text = said<"a quasi-square wave leaves 81 to 91 % of the torque and heats motors "
                          "with a capacitor or a compressor: at best it may start">(),
             .mend = said<"use an inverter with a sine wave">(),
             .source = said<"method.md of motor (14); [Inverter manuals]">()});
    }
}

// Thresholds of search modes lie between 5 and 50 W: common practice, no source.
constexpr Power highest_usual_threshold = 50.0 * watt;

// Loads that never wake an inverter in search mode; where nothing is said of such a mode, those
// that need it switched off.
void tell_of_search_mode(const scenario::Scenario& scenario, const StartScene& scene,
                         StartPlan& plan) {
    if (!scenario.inverter) return;
    const auto& threshold = scenario.inverter->search_threshold;
    std::vector<words::Said> may_not_wake;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        const auto& load = scenario.loads[i];
        const Power draws = scene.items[i].real.likely;
        if (load.from != scenario::Outlet::ac || load.motor ||
            draws >= threshold.value_or(highest_usual_threshold))
            continue;
        if (!threshold) {
            may_not_wake.emplace_back(load.name);
            continue;
        }
        plan.findings.push_back(
            {.severity = scenario::Severity::caution,
             .where = said<"load {load}">(load.name),
             .text = said<"in search mode the inverter does not wake for {draw}; it stays off "
                          "until something draws {threshold}">(amount_in(draws, "W", 0),
                                                               amount_in(*threshold, "W", 0)),
             .mend = said<"switch search mode off, or feed it from a 12 V or USB outlet">(),
             .source = said<"{source}">("[Inverter manuals]")});
    }
    if (threshold || plan.loads.empty()) return;
    plan.assumptions.push_back(
        {"inverter.search_threshold",
         may_not_wake.empty()
             ? said<"has no search mode, or it is switched off">()
             : said<"has no search mode, or it is switched off; in such a mode it may never wake "
                    "for the {loads}">(
                   words::joined(std::move(may_not_wake), words::List::Joint::comma)),
         said<"common practice, no source">()});
}

// Below this at the bus what runs on 12 V may drop out; its own lowest voltage is in no file:
// adaptors for vehicles take 9 to 11 V, common practice, no source.
constexpr Voltage surely_enough = 11.0 * volt;

// Converters hold their output stiffly: they draw the more current the lower the bus falls, until
// they drop out.
void tell_of_twelve_volt_loads(const scenario::Scenario& scenario, StartPlan& plan) {
    Voltage lowest = surely_enough;
    const LoadStart* hardest = nullptr;
    for (const auto& start : plan.loads) {
        if (start.refused) continue;
        const Voltage bus = spanning(start.judged.bus).low();
        if (bus < lowest) {
            lowest = bus;
            hardest = &start;
        }
    }
    if (hardest == nullptr) return;
    std::vector<words::Said> names;
    bool medical = false;
    for (const auto& load : scenario.loads) {
        if (load.from == scenario::Outlet::ac || load.motor) continue;
        names.emplace_back(load.name);
        medical = medical || motor::is_medical(load);
    }
    if (names.empty()) return;
    plan.findings.push_back(
        {.severity = medical ? scenario::Severity::caution : scenario::Severity::note,
         .where = said<"12 V loads">(),
         .text = said<"while the {load} starts, the 12 V bus may fall to {voltage}; whether what "
                      "is on it goes on at that voltage is not known: {loads}">(
             hardest->name, amount_in(lowest, "V", 1),
             words::joined(std::move(names), words::List::Joint::comma)),
         .mend = said<"read the lowest input voltage on each adaptor; those for vehicles take 9 to "
                      "11 V">(),
         .source = said<"common practice, no source">()});
}

}  // namespace

Result<StartPlan> plan_starts(const scenario::Scenario& scenario, std::span<const LoadRun> runs) {
    auto scene = start_scene(scenario, runs);
    if (!scene) return fail(std::move(scene.error()));
    StartPlan plan{.packs = packs_of(scene->bank.source),
                   .charge = scene->bank.charge,
                   .emf = equivalent(scene->bank.source, End::likely).emf,
                   .inverter = scene->inverter,
                   .source = scene->bank.source,
                   .assumptions = scene->assumptions,
                   .findings = scene->findings};
    for (std::size_t i = 0; i < scenario.loads.size(); ++i)
        if (scene->motors[i] || scene->direct[i] || scene->refused[i])
            plan.loads.push_back(start_of(scenario, *scene, runs, i));
    const auto together = all_together(scenario, *scene);
    if (together.motors.size() > 1) {
        const auto judge_all = [&](const DirectSource& source) {
            return judge_start(together.motors, together.others, *scene->inverter, source);
        };
        plan.together = judge_all(scene->bank.source);
        plan.packs_together = packs_needed(scene->bank.source, judge_all);
        stagger(scenario, *scene, plan);
    }
    tell_of_waveform(scenario, plan);
    tell_of_search_mode(scenario, *scene, plan);
    tell_of_twelve_volt_loads(scenario, plan);
    return plan;
}

}  // namespace starting
