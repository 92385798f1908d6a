// Logs read in tests, and what is said of them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "scenario/file/read.hpp"
#include "scenario/log.hpp"

namespace log_sample {

// Four days from 2026-01-14T18:00:00; main, three of expansion, and loads.
inline std::string with_log(std::string_view log) {
    std::string text(sample::ice_storm);
    text += '\n';
    text += log;
    return text;
}

inline std::vector<scenario::LogEntry> read_log(std::string_view log) {
    const auto read = scenario::read_scenario(with_log(log), "plan.toml");
    if (!read) {
        for (const auto& error : read.error())
            ADD_FAILURE() << units::print(error);
        return {};
    }
    for (const auto& warning : read->warnings)
        ADD_FAILURE() << units::print(warning);
    return read->scenario.log;
}

// What is wrong with a log, each error in one line.
inline std::string wrong_with(std::string_view log) {
    const auto read = scenario::read_scenario(with_log(log), "plan.toml");
    std::string text;
    if (!read)
        for (const auto& error : read.error())
            text += units::print(error) + "\n";
    return text;
}

inline std::string warned_of(std::string_view log) {
    const auto read = scenario::read_scenario(with_log(log), "plan.toml");
    EXPECT_TRUE(read.has_value());
    std::string text;
    if (read)
        for (const auto& warning : read->warnings)
            text += units::print(warning) + "\n";
    return text;
}

inline constexpr std::string_view every_kind = R"([[log]]
at = 2026-01-15T21:30:00
pack = "main"
reads = "12.90 V"
under = "150 W"

[[log]]
at = 2026-01-15T06:00:00
reads = "13.2 V"
rested = "8 h"

[[log]]
at = 2026-01-15T07:00:00
pack = "main"
shows = "62 %"

[[log]]
at = 2026-01-15T18:00:00
load = "refrigerator"
metered = { energy = "1.15 kWh", over = "24 h" }

[[log]]
at = 2026-01-15T16:30:00
sun = "420 Wh"
sky = "grey"

[[log]]
at = 2026-01-15T20:00:00
keeps = "freezer"
temperature = "-11 degC"

[[log]]
at = 2026-01-15T20:05:00
happened = "switched off"
load = "refrigerator"

[[log]]
at = 2026-01-15T20:30:00
happened = "pack left"
pack = "expansion"
count = 1

[[log]]
at = 2026-01-15T23:00:00
happened = "pack back"
pack = "expansion"
shows = "100 %"

[[log]]
at = 2026-01-15T23:30:00
happened = "expected back"
by = 2026-01-17T12:00:00

[[log]]
at = 2026-01-15T23:40:00
strikes = 2026-01-15T07:00:00
pack = "main"
)";

}  // namespace log_sample
