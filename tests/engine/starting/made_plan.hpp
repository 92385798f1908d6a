// Plans of starts made from the text of a file.
#pragma once

#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "starting/plan.hpp"

namespace made_plan {

// Four lithium packs and an inverter of 3 kW at 120 V, with these loads.
inline scenario::Scenario with_loads(const std::string& loads) {
    const auto read = scenario::read_scenario(R"(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 d"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
count = 4
[inverter]
continuous = "3000 W"
surge = "6000 W"
surge_lasts = "5 s"
cutoff_voltage = "10.5 V"
output_voltage = "120 V"
)" + loads,
                                              "plan.toml");
    EXPECT_TRUE(read) << (read ? "" : units::print(read.error().front()));
    return read ? read->scenario : scenario::Scenario{};
}

// Each load at the power it states, at power factor 1.
inline std::vector<starting::LoadRun> runs_of(const scenario::Scenario& plan) {
    std::vector<starting::LoadRun> runs;
    for (const scenario::Load& load : plan.loads)
        runs.push_back(
            {.draw = {.real = units::exactly(std::get<scenario::StatedPower>(*load.draw).power)}});
    return runs;
}

}  // namespace made_plan
