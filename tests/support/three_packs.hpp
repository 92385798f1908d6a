// A plan of three packs that is lived through, and short lines for its log.
#pragma once

#include <memory>
#include <string>
#include <string_view>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "estimate/outlook.hpp"
#include "outage/ready.hpp"
#include "scenario/file/read.hpp"
#include "units/clock.hpp"

namespace three_packs {

using namespace units;

// Two days and a half on three packs; 100 W and 60 W through an inverter, and a lamp.
inline constexpr std::string_view plan = R"(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "60 h"
battery_temperature = "20 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
voltage = "12.8 V"
charge = "100 %"
[[pack]]
name = "expansion"
count = 2
[inverter]
continuous = "1000 W"
idle = "10 W"
[[load]]
name = "freezer"
label = "440 kWh/yr"
evidence = "label"
priority = 2
[[load]]
name = "blower"
power = "30 W"
evidence = "guess"
priority = 3
[[load]]
name = "breathing machine"
from = "12V"
power = "12 W"
evidence = "metered"
medical = true
priority = 1
)";

inline scenario::Scenario with(std::string_view log) {
    const auto read = scenario::read_scenario(std::string(plan) + std::string(log), "plan.toml");
    if (!read) {
        for (const auto& error : read.error())
            ADD_FAILURE() << units::print(error);
        return {};
    }
    return read->scenario;
}

inline std::shared_ptr<const outage::Ready> ready_of(const scenario::Scenario& scenario) {
    auto ready = outage::make_ready(scenario);
    EXPECT_TRUE(ready.has_value());
    return std::make_shared<const outage::Ready>(std::move(*ready));
}

inline estimate::Outlook outlook(std::string_view log, const char* now, bool steps = false,
                                 unsigned threads = 0) {
    const auto scenario = with(log);
    const auto made = estimate::outlook_of(
        scenario, "", ready_of(scenario),
        {.now = *units::read_local_time(now), .threads = threads, .steps = steps});
    EXPECT_TRUE(made.has_value());
    return made ? *made : estimate::Outlook{};
}

inline constexpr const char* start = "2026-01-14T18:00:00";
inline constexpr const char* next_noon = "2026-01-15T12:00:00";

inline std::string shows(const char* at, int percent) {
    return fmt::format("[[log]]\nat = {}\nshows = \"{} %\"\n", at, percent);
}

inline std::string meter(const char* load, const char* energy) {
    return fmt::format(
        "[[log]]\nat = 2026-01-15T12:00:00\nload = \"{}\"\nmetered = {{ energy = \"{}\", over = "
        "\"18 h\" }}\n",
        load, energy);
}

}  // namespace three_packs
