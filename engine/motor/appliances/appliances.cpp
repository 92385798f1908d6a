#include "motor/appliances/appliances.hpp"

#include <cassert>

#include "motor/appliances/appliance_words.hpp"
#include "motor/appliances/appliances_text.hpp"
#include "scenario/file/set_aside.hpp"
#include "units/said.hpp"

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

using words::Said;
using words::said;

void say(LikenedLoad& likened, const std::string& where, std::string_view key, Said what) {
    likened.assumptions.push_back(
        {fmt::format("{}.{}", where, key),
         said<"{what}, as a {appliance}">(std::move(what), name_in_words(likened.appliance)),
         likened.appliance.source});
}

units::Duration total_of(const std::vector<units::DailySpan>& hours) {
    units::Duration sum{};
    for (const units::DailySpan& span : hours) {
        sum += units::length_of(span);
    }
    return sum;
}

Said one_after_another(const std::vector<units::DailySpan>& hours) {
    std::vector<Said> spans;
    for (const units::DailySpan& span : hours) {
        spans.emplace_back(units::print(span));
    }
    return words::joined(std::move(spans), words::List::Joint::comma);
}

Said on_and_off(units::Duration on, units::Duration every) {
    return said<"on for {time} in {cycle}">(on, every);
}

void fill_in_draw(LikenedLoad& likened, const std::string& where) {
    scenario::Load& load = likened.load;
    const Appliance& appliance = likened.appliance;
    if (load.draw) {
        return;
    }
    load.draw = scenario::StatedPower{appliance.run.likely()};
    load.listed_power = appliance.run;
    load.evidence = load.evidence.value_or(scenario::Evidence::guess);
    say(likened, where, "power",
        said<"{power} when on ({low} to {high})">(appliance.run.likely(), appliance.run.low(),
                                                  appliance.run.high()));
}

// Usual hours, but not of what somebody's health may depend on at others.
void fill_in_hours(LikenedLoad& likened, const std::string& where) {
    scenario::Load& load = likened.load;
    const Appliance& appliance = likened.appliance;
    if (appliance.hours.empty()) {
        return;
    }
    if (appliance.medical) {
        say(likened, where, "hours",
            said<"on at all hours, though usually at {hours}: who is ill may need it by day; give "
                 "hours where it is not">(one_after_another(appliance.hours)));
    } else if (!load.runs) {
        load.hours = appliance.hours;
        load.usual_hours = true;
        say(likened, where, "hours",
            said<"on {time} a day, at {hours}">(total_of(load.hours),
                                                one_after_another(load.hours)));
    }
}

void fill_in_cycle(LikenedLoad& likened, const std::string& where) {
    const Appliance& appliance = likened.appliance;
    if (!appliance.duty || !appliance.every || !(appliance.duty->likely().value() < 1.0)) {
        return;
    }
    const units::Duration every = appliance.every->likely();
    const units::Duration on = appliance.duty->likely().value() * every;
    likened.load.runs = scenario::DutyCycle{.on = on, .every = every, .starts_at = {}};
    say(likened, where, "runs", on_and_off(on, every));
}

void fill_in_use(LikenedLoad& likened, const std::string& where) {
    fill_in_draw(likened, where);
    const scenario::Load& load = likened.load;
    const bool cold = likened.appliance.keeps_cold != scenario::KeepsCold::nothing;
    const bool no_hours = load.hours.empty() && load.days.empty();
    const bool cycles = !load.runs && (cold || no_hours);
    if (no_hours) {
        fill_in_hours(likened, where);
    }
    if (cycles) {
        fill_in_cycle(likened, where);
    }
}

void fill_in_kind(LikenedLoad& likened, const std::string& where) {
    scenario::Load& load = likened.load;
    const Appliance& appliance = likened.appliance;
    if (!load.motor && appliance.motor) {
        load.motor = appliance.motor;
        say(likened, where, "motor", said<"a {kind} motor">(in_words(appliance.motor->kind)));
    }
    if (!load.power_factor && appliance.power_factor) {
        load.power_factor = appliance.power_factor;
        say(likened, where, "power_factor",
            said<"power factor {factor}">(
                words::Number{.value = appliance.power_factor->value(), .digits = 6}));
    }
    if (!load.medical && appliance.medical) {
        load.medical = true;
        say(likened, where, "medical", said<"somebody's health depends on it">());
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
    assumptions.push_back({where + ".runs", on_and_off(on, every),
                           listed ? appliance->source : said<"common practice, no source">()});
}

}  // namespace

words::Said name_in_words(const Appliance& appliance) {
    return said_of_appliances(appliance.name);
}

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
