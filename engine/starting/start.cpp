#include "starting/start.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "starting/fuse_in_time.hpp"

namespace starting {

using namespace units;

namespace {

constexpr double most_told = 1000.0;

Utilised told(double used) {
    return Utilised(std::isfinite(used) ? std::clamp(used, 0.0, most_told) : most_told);
}

Utilised over(double demand, double capability) {
    if (!(demand > 0.0)) return Utilised(0.0);
    return capability > 0.0 ? told(demand / capability) : Utilised(most_told);
}

struct RealAndReactive {
    Power real{};
    Power reactive{};

    [[nodiscard]] ApparentPower apparent() const {
        return inverter::apparent(real, ReactivePower(reactive));
    }
};

RealAndReactive of(const Background& background, End end) {
    return {at(background.real, end), at(background.reactive, end).amount()};
}

// A motor at rest with the current of one end and the power factor of another.
RealAndReactive at_rest(const StartingMotor& motor, End end, End factor_end) {
    const double factor = at(motor.locked.power_factor, factor_end).value();
    const Power apparent = at(motor.demand, end).apparent.amount();
    return {factor * apparent, std::sqrt(1.0 - factor * factor) * apparent};
}

RealAndReactive running(const StartingMotor& motor, End end) {
    const double factor = motor.running.factor.value();
    const Power real = at(motor.running.real, end);
    return {real, std::sqrt(1.0 / (factor * factor) - 1.0) * real};
}

RealAndReactive operator+(const RealAndReactive& a, const RealAndReactive& b) {
    return {a.real + b.real, a.reactive + b.reactive};
}

RealAndReactive all_at_rest(std::span<const StartingMotor> motors, const Background& background,
                            End end, End factor_end) {
    RealAndReactive sum = of(background, end);
    for (const auto& motor : motors)
        sum = sum + at_rest(motor, end, factor_end);
    return sum;
}

// Watts beside volt-amperes: the largest of both uses of a rating.
Utilised of_rating(const RealAndReactive& asked, Power watts, ApparentPower volt_amperes) {
    return std::max(over(asked.apparent() / volt_ampere, volt_amperes / volt_ampere),
                    over(asked.real / watt, watts / watt));
}

// The apparent power of one end, whatever power factors of the range meet: adding resistive loads
// to a motor is heaviest at its highest factor, adding lagging ones at theirs.
ApparentPower apparent_at(std::span<const StartingMotor> motors, const Background& background,
                          End end) {
    if (end == End::likely) return all_at_rest(motors, background, end, end).apparent();
    ApparentPower found = all_at_rest(motors, background, end, end).apparent();
    for (const End factor_end : all_ends) {
        const auto candidate = all_at_rest(motors, background, end, factor_end).apparent();
        found = end == End::high ? std::max(found, candidate) : std::min(found, candidate);
    }
    return found;
}

// Damage summed over the start: each motor a pulse as long as its run-up, method.md of inverter.
Utilised strain(std::span<const StartingMotor> motors, const std::vector<RunUp>& run_ups,
                const Background& background, const InverterSide& inverter, End end,
                ApparentPower largest) {
    std::vector<std::size_t> order(motors.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, {}, [&](std::size_t i) { return run_ups[i].time; });
    const End factor_end = end;
    RealAndReactive asked = all_at_rest(motors, background, end, factor_end);
    // The worst factors, or a fold-back; held at exactly its rating it must not count as above it.
    constexpr double rounding = 1e-9;
    const double to_largest = (1.0 - rounding) * (largest / asked.apparent());
    // More than the curve knows is more than it gives, and counts against the surge power: the time
    // is that of what it can give.
    const auto& curve = at(inverter.overload.curve, opposite(end));
    const auto most = inverter::largest_multiple(curve);
    std::vector<inverter::OverloadStep> steps;
    Duration before{};
    for (const std::size_t i : order) {
        const double multiple =
            to_largest * std::max<double>(asked.apparent() / inverter.continuous_apparent,
                                          asked.real / inverter.continuous);
        steps.push_back(
            {std::min(inverter::LoadMultiple(multiple), most), run_ups[i].time - before});
        before = run_ups[i].time;
        const auto rest = at_rest(motors[i], end, factor_end);
        const auto runs = running(motors[i], end);
        asked = {asked.real - rest.real + runs.real,
                 asked.reactive - rest.reactive + runs.reactive};
    }
    return told(inverter::strain_of(curve, steps).used.value());
}

// What it gives for an instant: its surge, and no more than its curve knows of at this heat.
struct Surge {
    ApparentPower apparent;
    Power real{};
};
Surge surge_at(const InverterSide& inverter, End end) {
    const double most =
        inverter::largest_multiple(at(inverter.overload.curve, opposite(end))).value();
    const ApparentPower stated = at(inverter.surge, end);
    return {std::min(stated, most * inverter.continuous_apparent),
            std::min<Power>(stated.amount(), most * inverter.continuous)};
}

Current others_at(const Background& background, End end, Voltage nominal) {
    return of(background, end).apparent().amount() / nominal;
}

// What the inverter does to its voltage, by how it behaves. A loss of a tenth stands for what it
// needs itself while it sags.
motor::Source source_at(const Background& background, const InverterSide& inverter,
                        const DirectSource& source, End end) {
    const Voltage nominal = inverter.model.output_voltage;
    switch (inverter.when_overloaded) {
        case scenario::WhenOverloaded::trips:
            break;
        case scenario::WhenOverloaded::folds_back:
            return motor::folding_back(nominal, surge_at(inverter, end).apparent.amount() / nominal,
                                       others_at(background, end, nominal));
        case scenario::WhenOverloaded::sags: {
            const Equivalent behind = equivalent(source, end);
            const Power on_bus = at(background.direct, end);
            const auto direct = [=, losses = inverter.model](Power real) -> std::optional<Voltage> {
                const auto asked =
                    inverter::dc_power(losses, std::max(real, Power{}), ApparentPower(real));
                const auto point = at_power(behind, asked + on_bus);
                return point.possible ? std::optional(point.voltage) : std::nullopt;
            };
            return motor::limited_by_direct_voltage(nominal, nominal / inverter.gives_way_below,
                                                    of(background, end).real, direct);
        }
    }
    return motor::holding(nominal);
}

RunUp run_up_at(const StartingMotor& motor, const Background& others, const InverterSide& inverter,
                const DirectSource& source, End end) {
    if (inverter.when_overloaded == scenario::WhenOverloaded::trips)
        return at(motor.at_full_voltage, end);
    return run_up(motor, end, source_at(others, inverter, source, end),
                  at(inverter.fundamental, end));
}

// For one motor among several, the others at rest are so much more that is on.
Background beside(std::span<const StartingMotor> motors, const Background& background,
                  std::size_t without) {
    Background others = background;
    for (std::size_t i = 0; i < motors.size(); ++i) {
        if (i == without) continue;
        for (const End end : all_ends) {
            const auto rest = at_rest(motors[i], end, end);
            at(others.real, end) += rest.real;
            at(others.reactive, end) = at(others.reactive, end) + ReactivePower(rest.reactive);
        }
    }
    return others;
}

// How long the packs carry it: of the motors that ask for a fifth of the largest or more, the
// slowest. A small one that ramps for half a minute does not stretch the others.
Duration time_of(std::span<const StartingMotor> motors, const std::vector<RunUp>& run_ups,
                 End end) {
    ApparentPower largest;
    for (const auto& motor : motors)
        largest = std::max(largest, at(motor.demand, end).apparent);
    Duration slowest{};
    for (std::size_t i = 0; i < motors.size(); ++i)
        if (at(motors[i].demand, end).apparent >= 0.2 * largest)
            slowest = std::max(slowest, run_ups[i].time);
    return slowest;
}

Utilised after_start(std::span<const StartingMotor> motors, const Background& background,
                     const InverterSide& inverter, End end) {
    RealAndReactive asked = of(background, end);
    for (const auto& motor : motors)
        asked = asked + running(motor, end);
    return of_rating(asked, inverter.continuous, inverter.continuous_apparent);
}

constexpr double surely_needs_a_surge_time = 1.5;  // of the rating

// ---- The direct side.

struct DirectEnd {
    DirectPoint point;
    Equivalent source;
};

Utilised low_voltage(const DirectEnd& direct, const StartDraw& draw, const InverterSide& inverter,
                     End end) {
    const double emf = direct.source.emf / volt;
    const double cutoff = at(inverter.cutoff, end) / volt;
    if (!(emf > cutoff)) return Utilised(most_told);
    const double used = (emf - direct.point.voltage / volt) / (emf - cutoff);
    // A dip that is over before the delay is through does not switch it off.
    const double delay = at(inverter.cutoff_delay, end) / second;
    const double of_delay = delay > 0.0 ? double(at(draw.time, end) / second) / delay : most_told;
    return direct.point.possible ? told(std::min(used, std::max(of_delay, 0.0))) : told(used);
}

Utilised collapse(const DirectEnd& direct, Power asked) {
    return direct.point.at_most > Power{}  ? over(asked / watt, direct.point.at_most / watt)
           : direct.source.emf > Voltage{} ? Utilised(0.0)
                                           : Utilised(most_told);
}

struct PackUse {
    Utilised used;
    Current current{};
    bool limited = false;
};

PackUse hardest_pack(const DirectSource& source, const DirectEnd& direct, const StartDraw& draw,
                     End end) {
    PackUse hardest{.used = Utilised(0.0)};
    for (const auto& branch : source.branches) {
        const Current current = of_one_pack(source, branch, end, direct.point.bus);
        const auto allowed = at(allowed_for(branch.limits, at(draw.time, end)), opposite(end));
        const Utilised used = allowed ? over(current / ampere, *allowed / ampere) : Utilised(0.0);
        hardest.limited = hardest.limited || allowed.has_value();
        if (used > hardest.used || hardest.current == Current{}) {
            hardest.used = std::max(hardest.used, used);
            hardest.current = current;
        }
    }
    return hardest;
}

// Heating current over its mean, since the power of one phase pulsates: 1 where the inverter's
// input smooths it, method.md, Constraints.
double ripple(PowerFactor factor, End end) {
    if (end == End::low || !(factor.value() > 0.0)) return 1.0;
    const double most = largest_ripple(factor);
    return end == End::high ? most : std::sqrt(most);
}

Utilised of_main_fuse(Current rating, const DirectEnd& direct, const StartDraw& draw, End end) {
    const double rippling =
        draw.through_inverter ? ripple(at(draw.factor, opposite(end)), end) : 1.0;
    const Current melting =
        at(melting_current(rating, std::max(at(draw.time, end), 0.001 * second)), opposite(end));
    return over(rippling * (direct.point.current / ampere), melting / ampere);
}

std::optional<Utilised> hardest_fuse(const DirectSource& source, const DirectEnd& direct,
                                     const StartDraw& draw, End end) {
    std::optional<Utilised> hardest;
    for (const auto& branch : source.branches) {
        if (!branch.fuse) continue;
        const Current current = of_one_pack(source, branch, end, direct.point.bus);
        const double rippling =
            draw.through_inverter ? ripple(at(draw.factor, opposite(end)), end) : 1.0;
        const Current melting =
            at(melting_current(*branch.fuse, std::max(at(draw.time, end), 0.001 * second)),
               opposite(end));
        const Utilised used = over(rippling * (current / ampere), melting / ampere);
        hardest = std::max(hardest.value_or(used), used);
    }
    if (source.main_fuse) {
        const Utilised used = of_main_fuse(*source.main_fuse, direct, draw, end);
        hardest = std::max(hardest.value_or(used), used);
    }
    return hardest;
}

// Contacts carry more than their rating for seconds: once to twice it, common practice, no source.
Utilised contact(Current rating, Current carries, End end) {
    const double times = end == End::high ? 1.0 : end == End::likely ? 1.5 : 2.0;
    return over(carries / ampere, times * (rating / ampere));
}

// Of the main path and of the packs' leads, the one worked hardest.
std::optional<Utilised> hardest_contact(const DirectSource& source, const DirectEnd& direct,
                                        End end) {
    std::optional<Utilised> hardest;
    if (source.main_contact) hardest = contact(*source.main_contact, direct.point.current, end);
    for (const auto& branch : source.branches) {
        if (!branch.contact) continue;
        const Current current = of_one_pack(source, branch, end, direct.point.bus);
        const Utilised used = contact(*branch.contact, current, end);
        hardest = std::max(hardest.value_or(used), used);
    }
    return hardest;
}

}  // namespace

std::string_view name_of(Constraint constraint) {
    constexpr std::array names{"voltage_class", "surge_power", "surge_duration", "torque",
                               "after_start",   "low_voltage", "collapse",       "pack_current",
                               "fuse",          "connector"};
    return names[static_cast<std::size_t>(constraint)];
}

words::Said in_words(Constraint constraint) {
    using words::said;
    static const std::array all{
        said<"voltage of the motor">(),      said<"surge of the inverter">(),
        said<"time the surge is held">(),    said<"torque of the motor">(),
        said<"inverter once it runs">(),     said<"low-voltage cut-off">(),
        said<"power the packs can give">(),  said<"current limit of the packs">(),
        said<"fuse of packs or inverter">(), said<"connector or switch">()};
    return all[static_cast<std::size_t>(constraint)];
}

std::string_view name_of(StartVerdict verdict) {
    constexpr std::array names{"starts", "marginal", "will_not_start"};
    return names[static_cast<std::size_t>(verdict)];
}

bool is_on_the_battery_side(Constraint constraint) {
    return constraint >= Constraint::low_voltage;
}

Utilised comfortable(Constraint constraint) {
    constexpr double of_torque = 1.0 / 1.2;
    constexpr double of_a_source = 0.90;
    return Utilised(constraint == Constraint::torque ? of_torque : of_a_source);
}

Background operator+(const Background& a, const Background& b) {
    Background sum = a;
    for (const End end : all_ends) {
        at(sum.real, end) += at(b.real, end);
        at(sum.reactive, end) = at(sum.reactive, end) + at(b.reactive, end);
        at(sum.direct, end) += at(b.direct, end);
    }
    sum.plain_sum = sum.plain_sum + b.plain_sum;
    return sum;
}

Background background_of(const RunningDraw& running, int items) {
    const double count = items;
    const double factor = running.factor.value();
    const double reactive = std::sqrt(1.0 / (factor * factor) - 1.0);
    Background background{.plain_sum = ApparentPower(count * running.real.likely() / factor)};
    background.real =
        each([&](Power real) -> Power { return count * real; }, more_is_harder(running.real));
    background.reactive =
        each([&](Power real) { return ReactivePower(reactive * real); }, background.real);
    return background;
}

const Utilisation* Judgement::of(Constraint constraint) const {
    const auto found = std::ranges::find(used, constraint, &Utilisation::constraint);
    return found == used.end() ? nullptr : &*found;
}

namespace {

// How far each constraint of the inverter and the motors is used, end by end.
struct InverterStrains {
    Ends<Utilised> surge, duration, torque, after;
};

// What the inverter is asked for, or gives of it.
struct Given {
    ApparentPower apparent;
    Power real;
};

// It gives its limit and no more; whether that is enough, the torque says.
Given folded_back(const Given& asked, ApparentPower limit) {
    if (!(asked.apparent > limit)) return asked;
    const double share = limit / asked.apparent;
    return {limit, share * share * asked.real};
}

std::vector<RunUp> run_ups_at(std::span<const StartingMotor> motors, const Background& background,
                              const InverterSide& inverter, const DirectSource& source, End end) {
    std::vector<RunUp> run_ups;
    for (std::size_t i = 0; i < motors.size(); ++i)
        run_ups.push_back(
            run_up_at(motors[i], beside(motors, background, i), inverter, source, end));
    return run_ups;
}

void note_given(StartDraw& draw, const Given& given, const Background& background,
                const InverterSide& inverter, End end) {
    at(draw.apparent, end) = given.apparent;
    at(draw.real, end) = given.real;
    at(draw.surge, end) = surge_at(inverter, end).apparent;
    at(draw.direct_power, end) =
        inverter::dc_power(inverter.model, given.real, given.apparent) + at(background.direct, end);
    at(draw.factor, end) = PowerFactor(std::min<double>(1.0, given.real / given.apparent.amount()));
}

void draw_at(StartDraw& draw, InverterStrains& used, std::span<const StartingMotor> motors,
             const Background& background, const InverterSide& inverter, const DirectSource& source,
             End end) {
    const auto asked = all_at_rest(motors, background, end, end);
    Given given{apparent_at(motors, background, end), asked.real};
    const auto limit = surge_at(inverter, end);
    at(used.surge, end) = std::max(over(given.apparent / volt_ampere, limit.apparent / volt_ampere),
                                   over(given.real / watt, limit.real / watt));
    if (inverter.when_overloaded == scenario::WhenOverloaded::folds_back) {
        at(used.surge, end) = std::min(at(used.surge, end), comfortable(Constraint::surge_power));
        given = folded_back(given, limit.apparent);
    }
    const std::vector<RunUp> run_ups = run_ups_at(motors, background, inverter, source, end);
    for (const RunUp& run_up : run_ups)
        at(used.torque, end) = std::max(at(used.torque, end), told(run_up.torque_used.value()));
    at(draw.time, end) = time_of(motors, run_ups, end);
    // What it does not give at all, it does not hold for a time either.
    at(used.duration, end) = strain(motors, run_ups, background, inverter, end, given.apparent);
    if (at(used.surge, end) > Utilised(1.0))
        at(used.duration, end) = std::min(at(used.duration, end), at(used.surge, end));
    at(used.after, end) = after_start(motors, background, inverter, end);
    note_given(draw, given, background, inverter, end);
}

bool is_surge_time_in_doubt(const StartDraw& draw, const InverterSide& inverter) {
    return !inverter.overload.duration_known &&
           draw.apparent.high / inverter.continuous_apparent >
               std::max(surely_needs_a_surge_time, inverter.overload.known_up_to.value());
}

}  // namespace

StartDraw draw_of(std::span<const StartingMotor> motors, const Background& background,
                  const InverterSide& inverter, const DirectSource& source) {
    StartDraw draw{.plain_sum = background.plain_sum};
    for (const auto& motor : motors) {
        draw.plain_sum = draw.plain_sum + motor.demand.likely.apparent;
        draw.waveform_in_doubt |= motor.sensitive_to_waveform &&
                                  inverter.model.waveform == scenario::Waveform::quasi_square;
    }
    InverterStrains used;
    for (const End end : all_ends)
        draw_at(draw, used, motors, background, inverter, source, end);
    draw.surge_time_in_doubt = is_surge_time_in_doubt(draw, inverter);
    draw.used = {{Constraint::surge_power, spanning(used.surge)},
                 {Constraint::surge_duration, spanning(used.duration)},
                 {Constraint::torque, spanning(used.torque)},
                 {Constraint::after_start, spanning(used.after)}};
    return draw;
}

motor::Source likely_source(const StartingMotor& motor, const Background& background,
                            const InverterSide& inverter, const DirectSource& source) {
    return seen_by_motor(source_at(background, inverter, source, End::likely),
                         inverter.fundamental.likely, motor.locked.let_through, End::likely);
}

StartDraw draw_of(Ends<Current> starting, Duration time, const Background& background,
                  const InverterSide* inverter) {
    StartDraw draw{.direct_current = starting, .time = exactly(time), .through_inverter = false};
    for (const End end : all_ends) {
        const auto asked = of(background, end);
        const bool on = inverter != nullptr && asked.real > Power{};
        at(draw.direct_power, end) =
            (on ? inverter::dc_power(inverter->model, asked.real, asked.apparent()) : Power{}) +
            at(background.direct, end);
        at(draw.apparent, end) = asked.apparent();
        at(draw.real, end) = asked.real;
        at(draw.factor, end) = PowerFactor(1.0);
        draw.through_inverter = draw.through_inverter || on;
    }
    return draw;
}

StartVerdict verdict_of(std::span<const Utilisation> used) {
    bool comfortable_all = true;
    for (const auto& each : used) {
        if (each.used.low() > Utilised(1.0)) return StartVerdict::will_not_start;
        comfortable_all = comfortable_all && each.used.high() <= comfortable(each.constraint);
    }
    return comfortable_all ? StartVerdict::starts : StartVerdict::marginal;
}

namespace {

// What is overstepped comes before what is only close: first by how surely it is overstepped, at
// every end of what is not known, at the likely one, or at the worst; then by how far at that end.
std::pair<int, double> weight_in_the_verdict(const Utilisation& each) {
    const auto limit = Utilised(1.0);
    if (each.used.low() > limit) return {3, each.used.low().value()};
    if (each.used.likely() > limit) return {2, each.used.likely().value()};
    if (each.used.high() > limit) return {1, each.used.high().value()};
    return {0, each.used.high().value() / comfortable(each.constraint).value()};
}

Constraint binding_of(std::span<const Utilisation> used) {
    // Ties go by the order of the constraints: the first of the largest.
    const auto binding = std::ranges::max_element(used, {}, weight_in_the_verdict);
    return binding == used.end() ? Constraint::surge_power : binding->constraint;
}

// How far each constraint of the direct side is used, end by end.
struct DirectStrains {
    Ends<Utilised> low, collapses, packs, fuse, contacts;
    bool through_inverter = false;
    bool limited = false;    // the packs have a limit
    bool fused = false;      // a fuse lies in the way
    bool contacted = false;  // a connector or switch does
};

void strain_at(DirectStrains& strains, Judgement& found, const InverterSide* inverter,
               const DirectSource& source, End end) {
    const StartDraw& draw = found.draw;
    const Equivalent behind = equivalent(source, end);
    const DirectEnd direct{
        at_power_and_current(behind, at(draw.direct_power, end), at(draw.direct_current, end)),
        behind};
    if (strains.through_inverter) at(strains.low, end) = low_voltage(direct, draw, *inverter, end);
    at(strains.collapses, end) = collapse(direct, at(draw.direct_power, end));
    const PackUse hardest = hardest_pack(source, direct, draw, end);
    at(strains.packs, end) = hardest.used;
    strains.limited = strains.limited || hardest.limited;
    if (const auto used = hardest_fuse(source, direct, draw, end)) {
        at(strains.fuse, end) = *used;
        strains.fused = true;
    }
    if (const auto used = hardest_contact(source, direct, end)) {
        at(strains.contacts, end) = *used;
        strains.contacted = true;
    }
    at(found.voltage, end) = direct.point.voltage;
    at(found.bus, end) = direct.point.bus;
    at(found.current, end) = direct.point.current;
    at(found.pack_current, end) = hardest.current;
    found.emf = behind.emf;
    found.collapses = !direct.point.possible;
}

void add_used(Judgement& found, const DirectStrains& strains) {
    const auto add = [&](Constraint constraint, const Ends<Utilised>& used) {
        found.used.push_back({constraint, spanning(used)});
    };
    if (strains.through_inverter) add(Constraint::low_voltage, strains.low);
    add(Constraint::collapse, strains.collapses);
    if (strains.limited) add(Constraint::pack_current, strains.packs);
    if (strains.fused) add(Constraint::fuse, strains.fuse);
    if (strains.contacted) add(Constraint::connector, strains.contacts);
}

}  // namespace

Judgement judge(const StartDraw& draw, const InverterSide* inverter, const DirectSource& source) {
    Judgement found{.used = draw.used, .draw = draw};
    DirectStrains strains{.through_inverter = inverter != nullptr && draw.through_inverter};
    for (const End end : all_ends)
        strain_at(strains, found, inverter, source, end);
    add_used(found, strains);
    found.verdict = verdict_of(found.used);
    if (found.verdict == StartVerdict::starts &&
        (draw.surge_time_in_doubt || draw.waveform_in_doubt)) {
        found.verdict = StartVerdict::marginal;
        found.binding = draw.surge_time_in_doubt ? Constraint::surge_duration : Constraint::torque;
        return found;
    }
    found.binding = binding_of(found.used);
    return found;
}

Judgement judge_start(std::span<const StartingMotor> motors, const Background& background,
                      const InverterSide& inverter, const DirectSource& source) {
    return judge(draw_of(motors, background, inverter, source), &inverter, source);
}

}  // namespace starting
