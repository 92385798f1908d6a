// The library of appliances and tools, appliances.toml, for loads that say what they are like.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "motor/driven_load.hpp"
#include "motor/locked_rotor.hpp"
#include "scenario/assumption.hpp"
#include "scenario/load.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "units/result.hpp"
#include "words/said.hpp"

namespace motor {

struct ListedStarts {
    ListedStart low;
    ListedStart high;
};

struct Appliance {
    std::string name;
    std::vector<std::string> also;   // further names it goes by
    units::Range<units::Power> run;  // real power while on
    std::optional<units::PowerFactor> power_factor;
    std::optional<units::Range<units::Share>> duty;
    std::optional<units::Range<units::Duration>> every;
    std::optional<scenario::Motor> motor;
    std::optional<DrivenLoad> drives;
    std::optional<ListedStarts> listed_start;
    scenario::Outlet from = scenario::Outlet::ac;
    bool medical = false;
    scenario::KeepsCold keeps_cold = scenario::KeepsCold::nothing;
    std::vector<units::DailySpan> hours;  // in which it is usually on; empty: all
    words::Said note;                     // may be empty
    words::Said source;
};

// All of them, in the order of the file.
[[nodiscard]] const std::vector<Appliance>& appliances();

// Reads text in the form of appliances.toml, every error with its line.
[[nodiscard]] units::Result<std::vector<Appliance>> read_appliances(std::string_view text);

// Its name, as one of the list.
[[nodiscard]] words::Said name_in_words(const Appliance& appliance);

// By name; capital letters and repeated blanks do not count.
//   fails  with up to three names that come close
[[nodiscard]] units::Result<Appliance> find_appliance(std::string_view name);

// Stated so, or by its row in the list; never by its priority.
[[nodiscard]] bool is_medical(const scenario::Load& load);

struct LikenedLoad {
    scenario::Load load;  // with what it left open filled in
    Appliance appliance;
    scenario::Assumptions assumptions;
};

// What the load says itself stands; its draw, cycle, usual hours, motor, power factor, medical use
// and what it keeps cold are filled in where it is silent. What is medical is on at all hours where
// the load has none. A load with hours or a cycle of its own
// keeps them; one that keeps something cold has its cycle within its hours.
//   takes  a load that has `like`
//   fails  at "<where>.like"
[[nodiscard]] units::Result<LikenedLoad> filled_in(const scenario::Load& load,
                                                   const std::string& where);

struct LikenedScenario {
    scenario::Scenario scenario;
    scenario::Assumptions assumptions;
    std::vector<std::optional<DrivenLoad>> drives;  // one a load, where the list tells it
};

// Every load that says what it is like, filled in; the others as they are, but for the cycle of a
// duty. Done twice, it changes
// and tells nothing the second time.
//   fails  at "load[i].like"
[[nodiscard]] units::Result<LikenedScenario> with_appliances(scenario::Scenario scenario);

}  // namespace motor
