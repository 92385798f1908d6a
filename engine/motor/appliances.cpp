#include "motor/appliances.hpp"

#include <cassert>

#include "motor/appliances_text.hpp"
#include "scenario/set_aside.hpp"
#include "units/text.hpp"

namespace motor {

const std::vector<Appliance>& appliances() {
    static const std::vector<Appliance> library = [] {
        auto read = read_appliances(appliances_text);
        assert(read && "appliances.toml is a part of the program; its test reads it");
        return read.value_or(std::vector<Appliance>{});
    }();
    return library;
}

namespace {

void say(LikenedLoad& likened, const std::string& where, std::string_view key, std::string what) {
    likened.assumptions.push_back({fmt::format("{}.{}", where, key),
                                   fmt::format("{}, as a {}", what, likened.appliance.name),
                                   likened.appliance.source});
}

units::Duration total_of(const std::vector<units::DailySpan>& hours) {
    units::Duration sum{};
    for (const units::DailySpan& span : hours) {
        sum += units::length_of(span);
    }
    return sum;
}

void fill_in_use(LikenedLoad& likened, const std::string& where) {
    scenario::Load& load = likened.load;
    const Appliance& appliance = likened.appliance;
    if (!load.draw) {
        load.draw = scenario::StatedPower{appliance.run.likely()};
        load.listed_power = appliance.run;
        load.evidence = load.evidence.value_or(scenario::Evidence::guess);
        say(likened, where, "power",
            fmt::format("{} when on ({} to {})", units::show(appliance.run.likely()),
                        units::show(appliance.run.low()), units::show(appliance.run.high())));
    }
    const bool cold = appliance.keeps_cold != scenario::KeepsCold::nothing;
    const bool no_hours = load.hours.empty() && load.days.empty();
    const bool cycles = !load.runs && (cold || no_hours);
    if (appliance.medical && no_hours && !appliance.hours.empty()) {
        std::string usual;
        for (const units::DailySpan& span : appliance.hours) {
            usual += (usual.empty() ? "" : ", ") + units::print(span);
        }
        say(likened, where, "hours",
            fmt::format("on at all hours, though usually at {}: who is ill may need it by day; "
                        "give hours where it is not",
                        usual));
    } else if (!load.runs && no_hours && !appliance.hours.empty()) {
        load.hours = appliance.hours;
        load.usual_hours = true;
        std::string hours;
        for (const units::DailySpan& span : load.hours) {
            hours += (hours.empty() ? "" : ", ") + units::print(span);
        }
        say(likened, where, "hours",
            fmt::format("on {} a day, at {}", units::show(total_of(load.hours)), hours));
    }
    if (cycles && appliance.duty && appliance.every && appliance.duty->likely().value() < 1.0) {
        const units::Duration every = appliance.every->likely();
        const units::Duration on = appliance.duty->likely().value() * every;
        load.runs = scenario::DutyCycle{.on = on, .every = every, .starts_at = {}};
        say(likened, where, "runs",
            fmt::format("on for {} in {}", units::show(on), units::show(every)));
    }
}

void fill_in_kind(LikenedLoad& likened, const std::string& where) {
    scenario::Load& load = likened.load;
    const Appliance& appliance = likened.appliance;
    if (!load.motor && appliance.motor) {
        load.motor = appliance.motor;
        const bool alternating = appliance.motor->kind != scenario::MotorKind::direct_current;
        say(likened, where, "motor",
            fmt::format("a {} motor",
                        alternating ? traits_of(appliance.motor->kind).name : "direct-current"));
    }
    if (!load.power_factor && appliance.power_factor) {
        load.power_factor = appliance.power_factor;
        say(likened, where, "power_factor",
            fmt::format("power factor {}", appliance.power_factor->value()));
    }
    if (!load.medical && appliance.medical) {
        load.medical = true;
        say(likened, where, "medical", "somebody's health depends on it");
    }
    if (!load.keeps_cold) {
        load.keeps_cold = appliance.keeps_cold;
    }
}

// The part of the time that it is on, as a cycle: that of its kind, or a usual one.
void cycle_of_duty(scenario::Load& load, const Appliance* appliance, const std::string& where,
                   scenario::Assumptions& assumptions) {
    if (!load.duty || load.runs) {
        return;
    }
    constexpr units::Duration usual = 45.0 * units::minute;  // common practice, no source
    const bool listed = appliance != nullptr && appliance->every;
    const units::Duration every = listed ? appliance->every->likely() : usual;
    const units::Duration on = std::max<units::Duration>(units::second, load.duty->value() * every);
    load.runs = scenario::DutyCycle{.on = on, .every = every, .starts_at = {}};
    assumptions.push_back({where + ".runs",
                           fmt::format("on for {} in {}", units::show(on), units::show(every)),
                           listed ? appliance->source : "common practice, no source"});
}

}  // namespace

bool is_medical(const scenario::Load& load) {
    if (load.medical || !load.like) {
        return load.medical.value_or(false);
    }
    const auto found = find_appliance(*load.like);
    return found && found->medical;
}

units::Result<LikenedLoad> filled_in(const scenario::Load& load, const std::string& where) {
    assert(load.like && "filled_in is for loads that say what they are like");
    auto found = find_appliance(*load.like);
    if (!found) {
        units::Error error = found.error().front();
        error.where = where + ".like";
        return units::fail(std::move(error));
    }
    LikenedLoad likened{.load = load, .appliance = *std::move(found), .assumptions = {}};
    cycle_of_duty(likened.load, &likened.appliance, where, likened.assumptions);
    fill_in_use(likened, where);
    fill_in_kind(likened, where);
    return likened;
}

units::Result<LikenedScenario> with_appliances(scenario::Scenario scenario) {
    LikenedScenario likened;
    units::Errors errors;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        scenario::Load& load = scenario.loads[i];
        if (!load.like) {
            cycle_of_duty(load, nullptr, scenario::key_of(load, i), likened.assumptions);
            continue;
        }
        auto filled = filled_in(load, scenario::key_of(load, i));
        if (!filled) {
            errors.insert(errors.end(), filled.error().begin(), filled.error().end());
            continue;
        }
        load = std::move(filled->load);
        likened.assumptions.insert(likened.assumptions.end(), filled->assumptions.begin(),
                                   filled->assumptions.end());
        likened.drives.resize(scenario.loads.size());
        likened.drives[i] = filled->appliance.drives;
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    likened.drives.resize(scenario.loads.size());
    likened.scenario = std::move(scenario);
    return likened;
}

}  // namespace motor
