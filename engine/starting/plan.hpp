// Every motor of a scenario: does it start, what binds, and what would help.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "scenario/scenario.hpp"
#include "starting/course.hpp"
#include "starting/direct_current.hpp"
#include "starting/packs.hpp"
#include "starting/settle.hpp"

namespace starting {

// The same start under one changed condition.
struct WhatIf {
    words::Said change;  // "with a soft-start device"
    StartVerdict verdict{};
    Constraint binding{};
};

struct LoadStart {
    std::string name;
    std::string where;                      // "load[2]"
    std::optional<units::Error> refused{};  // another voltage than the unit's: never, whatever else
    bool on_the_bus = false;                // a 12 V motor
    Judgement judged{};                     // while all else that may run with it runs
    units::Ends<motor::Demand> demand{};    // of the motor alone
    units::Ends<RunUp> run_up{};
    PacksNeeded packs{};
    std::optional<Settling> settling{};  // for a marginal one
    std::vector<WhatIf> what_ifs{};
    std::optional<units::StateOfCharge> down_to{};  // charge of the bank to which the verdict holds
    std::vector<StartInstant> course{};
    std::vector<std::string> beside{};  // what else was taken as on
    bool medical = false;
    bool suffers_from_waveform = false;
};

// One of several motors, in the order of the advice.
struct StaggeredStart {
    std::size_t load = 0;    // index into StartPlan::loads
    Judgement judged{};      // with those before it running
    units::Duration wait{};  // before the next is switched on
};

struct StartPlan {
    std::vector<LoadStart> loads{};
    std::optional<Judgement> together{};  // all motors in one instant, where there are several
    PacksNeeded packs_together{};
    std::vector<StaggeredStart> staggered{};
    int packs = 0;
    units::StateOfCharge charge{};
    units::Voltage emf{};
    std::optional<InverterSide> inverter{};
    DirectSource source{};
    scenario::Assumptions assumptions{};
    scenario::Findings findings{};
};

// How the loads run beside one another, one entry a load of the scenario.
struct LoadRun {
    RunningDraw draw{};  // of one item, at its plug
    units::Efficiency converter{1.0};
    std::optional<motor::DrivenLoad> drives{};
};

// The parts of a scenario's starts, made once: for the plan, and for whoever asks of many moments.
struct StartScene {
    std::vector<std::optional<StartingMotor>> motors{};  // by load; absent for what has no start
    std::vector<std::optional<DirectMotor>> direct{};
    std::vector<std::optional<units::Error>> refused{};
    std::vector<Background> items{};  // one item of each load, running
    unit::Unit built{};
    Bank bank{};
    std::optional<InverterSide> inverter{};
    units::Temperature temperature{};
    scenario::Assumptions assumptions{};
    scenario::Findings findings{};
};

//   fails    where the bank, the inverter or a motor's plate cannot be used, each at its key
[[nodiscard]] units::Result<StartScene> start_scene(const scenario::Scenario& scenario,
                                                    std::span<const LoadRun> runs);

[[nodiscard]] units::Result<StartPlan> plan_starts(const scenario::Scenario& scenario,
                                                   std::span<const LoadRun> runs);

// Whether the hours of two loads ever meet.
[[nodiscard]] bool may_run_together(const scenario::Load& a, const scenario::Load& b);

// What is on while one item of this load starts: low is what is never off, high all that may be on.
[[nodiscard]] Background beside(const scenario::Scenario& scenario, const StartScene& scene,
                                std::size_t load);

}  // namespace starting
