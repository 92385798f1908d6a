#include "demand/demand.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include <fmt/format.h>

#include "demand/search_mode.hpp"
#include "demand/size.hpp"
#include "motor/appliances/appliances.hpp"
#include "scenario/file/set_aside.hpp"
#include "units/said.hpp"

namespace demand {

namespace {

using units::Duration;
using units::Power;
using words::said;

units::Errors unusable(const scenario::Load& load, const std::string& where) {
    units::Errors errors;
    if (load.count < 1) {
        errors.push_back({where + ".count", said<"{n}">(load.count), said<"give 1 or more">()});
    }
    if (std::ranges::any_of(load.days, [](int day) { return day < 1; })) {
        errors.push_back({where + ".days", said<"a day below 1">(),
                          said<"count from 1, the day on which the outage starts">()});
    }
    if (load.runs && load.runs->every < units::second) {
        errors.push_back({where + ".runs.every", said<"{cycle}">(load.runs->every),
                          said<"give a cycle of a second or more">()});
    }
    return errors;
}

// What a load's usual phase follows from: its own figures, never its name or its place.
std::string figures_of(const scenario::Load& load, const LoadPower& power) {
    return fmt::format("{:.6g} W {:.6g} of {:.6g} s", power.likely / units::watt,
                       load.runs->on / units::second, load.runs->every / units::second);
}

// Loads of the same figures start apart, by how many of them came before.
class Phases {
  public:
    Duration usual(const scenario::Load& load, const LoadPower& power) {
        constexpr double apart = 0.6180339887498949;  // the golden section spreads any number
        const std::string figures = figures_of(load, power);
        const Duration every = load.runs->every;
        const double first = usual_phase(figures, every) / every;
        const double share = std::fmod(first + apart * alike_[figures]++, 1.0);
        return std::floor(share * (every / units::second)) * units::second;
    }

  private:
    std::map<std::string, int> alike_;
};

Duration phase_of(const scenario::Load& load, const LoadPower& power, Phases& phases,
                  const std::string& where, scenario::Assumptions& assumed) {
    if (load.runs->starts_at) {
        return *load.runs->starts_at;
    }
    const Duration phase = phases.usual(load, power);
    assumed.push_back({where + ".runs.starts_at",
                       said<"its cycle starts {time} into the outage, so that like cycles do not "
                            "all start together">(phase),
                       said<"common practice, no source">()});
    return phase;
}

// When a load of cycles starts its first one, and in how many groups its items do.
struct Cycles {
    Duration phase{};
    int groups = 1;
};

Cycles cycles_of(const scenario::Load& load, const LoadPower& power, Phases& phases,
                 const std::string& where, scenario::Assumptions& assumed) {
    if (!load.runs) {
        return {};
    }
    const Duration phase = phase_of(load, power, phases, where, assumed);
    const int groups = std::min(load.count, most_strands);
    if (groups < load.count) {
        assumed.push_back({where + ".count",
                           said<"its {n} items switch in {groups} groups, evenly over the cycle">(
                               load.count, groups),
                           said<"common practice, no source">()});
    }
    return {.phase = phase, .groups = groups};
}

// Items of a cycling load start one after another, evenly over the cycle; very many of them in
// groups, whose sum over a cycle is the same.
std::vector<Strand> strands_of(const scenario::Load& load, const Cycles& cycles, const Spans& hours,
                               Duration on) {
    if (!load.runs) {
        return {{.items = load.count, .on = hours}};
    }
    std::vector<Strand> strands;
    const int groups = cycles.groups;
    for (int group = 0; group < groups; ++group) {
        const Duration later =
            std::floor(group * (load.runs->every / units::second) / groups) * units::second;
        strands.push_back({.items = (group + 1) * load.count / groups - group * load.count / groups,
                           .on = cycle_spans(hours, on, load.runs->every, cycles.phase + later)});
    }
    return strands;
}

// Without pause until the cold is made up for, then in its cycle.
std::vector<Strand> cold_strands(const scenario::Load& load, const Cycles& cycles,
                                 const ColdPace& pace, const ColdCourse& course) {
    std::vector<Strand> strands = strands_of(load, cycles, course.steady, pace.on);
    const bool alike = pace.steady == pace.recovering;
    for (Strand& strand : strands) {
        strand.of_power = pace.steady;
        if (alike) {
            strand.on = either(strand.on, course.recovering);
        }
    }
    if (!alike && !course.recovering.empty()) {
        strands.push_back(
            {.items = load.count, .on = course.recovering, .of_power = pace.recovering});
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
                    const scenario::Outage& outage, Phases& phases, Demand& demand) {
    PlannedLoad result{
        .name = load.name,
        .from = load.from,
        .priority = load.priority,
        .rank = rank_of(load),
        .count = load.count,
        .has_motor = load.motor.has_value() && load.motor->kind != scenario::MotorKind::electronic,
        .power = std::move(power),
        .lowest = load.lowest_voltage,
        .may_run = daily_spans(load.hours, load.days, outage.starts, outage.lasts),
        .usual_hours = load.usual_hours,
        .refused = {},
        .unwoken = {},
        .strands = {}};
    Spans served = result.may_run;
    if (load.from == scenario::Outlet::ac) {
        served = common(result.may_run, demand.inverter_on);
        result.refused = without(result.may_run, demand.inverter_on);
    }
    const Cycles cycles = cycles_of(load, result.power, phases, where, demand.assumptions);
    auto plan = cold_plan(load, outage, where, demand.assumptions);
    if (!plan) {
        result.strands = strands_of(load, cycles, served, load.runs ? load.runs->on : Duration());
        return result;
    }
    const auto at = [&](std::size_t end) {
        const ColdPace& pace = plan->paces[end];
        return cold_strands(load, cycles, pace, cold_course(pace.keeper, served, outage.lasts));
    };
    result.strands_low = at(0);
    result.strands = at(1);
    result.strands_high = at(2);
    result.cold =
        KeptCold{.plan = *plan, .course = cold_course(plan->paces[1].keeper, served, outage.lasts)};
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

// What is drawn together.
struct Powers {
    Power ac{};
    Power reactive{};
    Power direct{};
    Power direct_useful{};
};

// What one strand adds to a step while it is on.
struct Share {
    const Strand* strand = nullptr;
    Powers draw;
};

Share share_of(const PlannedLoad& load, const Strand& strand, Case which) {
    const Power useful =
        static_cast<double>(strand.items) * strand.of_power.value() * chosen(load.power, which);
    if (load.from != scenario::Outlet::ac) {
        const Power at_the_bus = useful / load.power.converter.value();
        return {&strand, {.direct = at_the_bus, .direct_useful = useful}};
    }
    const double factor = load.power.factor.value();
    return {&strand, {.ac = useful, .reactive = useful * std::sqrt(1.0 / (factor * factor) - 1.0)}};
}

// In an order of their own, so that sums do not depend on the order of the file.
std::vector<Share> shares_of(const Demand& demand, Case which) {
    std::vector<Share> shares;
    for (const PlannedLoad& load : demand.loads) {
        for (const Strand& strand : strands_at(load, which)) {
            shares.push_back(share_of(load, strand, which));
        }
    }
    const auto key = [](const Share& share) {
        return std::array{share.draw.ac, share.draw.reactive, share.draw.direct,
                          share.draw.direct_useful};
    };
    std::ranges::stable_sort(shares, {}, key);
    return shares;
}

// Walks along one strand's switching moments.
class Walk {
  public:
    explicit Walk(const Spans& spans) : spans_(&spans) {}

    [[nodiscard]] bool on() const { return passed_ % 2 != 0; }

    // The next moment at which it switches; `otherwise` behind the last.
    [[nodiscard]] Duration next(Duration otherwise) const {
        if (passed_ / 2 == spans_->size()) {
            return otherwise;
        }
        const Span& span = (*spans_)[passed_ / 2];
        return on() ? span.until : span.from;
    }
    void pass() { ++passed_; }

  private:
    const Spans* spans_;
    std::size_t passed_ = 0;
};

Powers& operator+=(Powers& sum, const Powers& draw) {
    sum.ac += draw.ac;
    sum.reactive += draw.reactive;
    sum.direct += draw.direct;
    sum.direct_useful += draw.direct_useful;
    return sum;
}

// What the strands draw and when the next of them switches. Summed anew at each change, nothing is
// carried along that could drift; in blocks, of which only those are looked at that changed.
class Switchboard {
  public:
    explicit Switchboard(std::size_t strands)
        : drawn_(strands),
          next_(strands),
          sum_of_((strands + block - 1) / block),
          first_of_(sum_of_.size()) {}

    [[nodiscard]] std::size_t blocks() const { return sum_of_.size(); }
    [[nodiscard]] std::size_t begin(std::size_t of) const { return of * block; }
    [[nodiscard]] std::size_t end(std::size_t of) const {
        return std::min(drawn_.size(), (of + 1) * block);
    }
    [[nodiscard]] Duration first_of(std::size_t of) const { return first_of_[of]; }
    [[nodiscard]] Duration next(std::size_t strand) const { return next_[strand]; }

    void set(std::size_t strand, Duration next, const Powers& drawn) {
        next_[strand] = next;
        drawn_[strand] = drawn;
    }
    void changed(std::size_t of) {
        Powers sum;
        Duration first = next_[begin(of)];
        for (std::size_t i = begin(of); i < end(of); ++i) {
            sum += drawn_[i];
            first = std::min(first, next_[i]);
        }
        sum_of_[of] = sum;
        first_of_[of] = first;
    }
    [[nodiscard]] Powers sum() const {
        Powers sum;
        for (const Powers& of_block : sum_of_) {
            sum += of_block;
        }
        return sum;
    }
    [[nodiscard]] Duration first() const { return *std::ranges::min_element(first_of_); }

  private:
    static constexpr std::size_t block = 64;

    std::vector<Powers> drawn_;   // nothing while a strand is off
    std::vector<Duration> next_;  // zero: each is looked at when the outage starts
    std::vector<Powers> sum_of_;  // of each block
    std::vector<Duration> first_of_;
};

void append(std::vector<DemandStep>& steps, Duration from, const Powers& sum, bool inverter_on) {
    const DemandStep step{.from = from,
                          .ac = sum.ac,
                          .ac_reactive = units::ReactivePower(sum.reactive),
                          .direct = sum.direct,
                          .direct_useful = sum.direct_useful,
                          .inverter_on = inverter_on};
    if (!steps.empty()) {
        DemandStep as_before = steps.back();
        as_before.from = from;
        if (as_before == step) {
            return;
        }
    }
    steps.push_back(step);
}

std::size_t most_steps(const Demand& demand, Case which) {
    std::size_t spans = demand.inverter_on.size();
    for (const PlannedLoad& load : demand.loads) {
        for (const Strand& strand : strands_at(load, which)) {
            spans += strand.on.size();
        }
    }
    return 2 * spans + 1;
}

units::Errors faults_of_outage(const scenario::Scenario& scenario) {
    if (scenario.outage.lasts > Duration()) {
        return too_many_switchings(scenario);
    }
    return {
        {"outage.lasts", said<"no time">(), said<"give how long the outage lasts, such as 3 d">()}};
}

void add_all(const units::Errors& more, units::Errors& errors) {
    errors.insert(errors.end(), more.begin(), more.end());
}

// Plans one load into the demand, or says what is wrong with it.
void plan_load(const scenario::Scenario& scenario, std::size_t place, Phases& phases,
               Demand& demand, units::Errors& errors) {
    const scenario::Load& load = scenario.loads[place];
    const std::string where = scenario::key_of(load, place);
    units::Result<LoadPower> power = load_power(load, where, demand.assumptions);
    const units::Errors unusable_times = unusable(load, where);
    if (!power) {
        add_all(power.error(), errors);
    }
    add_all(unusable_times, errors);
    if (load.from == scenario::Outlet::ac && !scenario.inverter) {
        errors.push_back({"inverter", said<"{load} needs one and there is none">(load.name),
                          said<"describe the inverter, or give the load {first} or {second}">(
                              "from = \"12V\"", "\"usb\"")});
    }
    if (power && unusable_times.empty()) {
        demand.loads.push_back(
            planned(load, std::move(*power), where, scenario.outage, phases, demand));
    }
}

}  // namespace

units::Result<Demand> plan_demand(const scenario::Scenario& written) {
    auto likened = motor::with_appliances(written);
    if (!likened) {
        return units::fail(std::move(likened.error()));
    }
    const scenario::Scenario& scenario = likened->scenario;
    Demand demand{
        .lasts = scenario.outage.lasts,
        .inverter_on = inverter_hours(scenario),
        .search_threshold = scenario.inverter ? scenario.inverter->search_threshold : std::nullopt,
        .loads = {},
        .assumptions = std::move(likened->assumptions)};
    units::Errors errors = faults_of_outage(scenario);
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    Phases phases;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        plan_load(scenario, i, phases, demand, errors);
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    leave_asleep(demand);
    return demand;
}

std::vector<DemandStep> demand_steps(const Demand& demand, Case which) {
    const std::vector<Share> shares = shares_of(demand, which);
    std::vector<Walk> walks;
    for (const Share& share : shares) {
        walks.emplace_back(share.strand->on);
    }
    walks.emplace_back(demand.inverter_on);
    Switchboard board(walks.size());
    std::vector<DemandStep> steps;
    steps.reserve(most_steps(demand, which));
    for (Duration now{}; now < demand.lasts; now = board.first()) {
        for (std::size_t block = 0; block < board.blocks(); ++block) {
            if (board.first_of(block) > now) {
                continue;
            }
            for (std::size_t i = board.begin(block); i < board.end(block); ++i) {
                if (board.next(i) > now) {
                    continue;
                }
                if (walks[i].next(demand.lasts) <= now) {
                    walks[i].pass();
                }
                const bool draws = i < shares.size() && walks[i].on();
                board.set(i, walks[i].next(demand.lasts), draws ? shares[i].draw : Powers{});
            }
            board.changed(block);
        }
        append(steps, now, board.sum(), walks.back().on());
    }
    if (demand.search_threshold) {
        return with_search_mode(std::move(steps), *demand.search_threshold);
    }
    return steps;
}

const std::vector<Strand>& strands_at(const PlannedLoad& load, Case which) {
    const bool nothing = load.strands.empty();
    if (which == Case::low && !nothing && !load.strands_low.empty()) {
        return load.strands_low;
    }
    if (which == Case::high && !nothing && !load.strands_high.empty()) {
        return load.strands_high;
    }
    return load.strands;
}

}  // namespace demand
