// Small files to ask questions of.
#pragma once

#include <string>
#include <string_view>

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace file_of {

[[nodiscard]] inline scenario::ReadScenario text(const std::string& content) {
    auto read = scenario::read_scenario(content, "asked.toml");
    EXPECT_TRUE(read) << (read ? "" : units::print(read.error().front()));
    return read ? *read : scenario::ReadScenario{};
}

// From midnight of 14 January 2026 on; what more the table holds follows.
[[nodiscard]] inline std::string outage(std::string_view lasts, std::string_view more = "") {
    return "format = 1\n[outage]\nstarts = 2026-01-14T00:00:00\nlasts = \"" + std::string(lasts) +
           "\"\n" + std::string(more) + "\n";
}

// 1280 Wh at 25 degC.
inline const std::string warm = "battery_temperature = \"25 degC\"";
inline const std::string a_pack =
    "[[pack]]\nname = \"main\"\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\n"
    "voltage = \"12.8 V\"\ncharge = \"100 %\"\n";

[[nodiscard]] inline std::string load(std::string_view name, std::string_view power,
                                      std::string_view more = "from = \"12V\"\n") {
    return "[[load]]\nname = \"" + std::string(name) + "\"\npower = \"" + std::string(power) +
           "\"\nevidence = \"metered\"\n" + std::string(more);
}

// An AC load, which needs the inverter that is not there.
inline const std::string a_kettle = "[[load]]\nname = \"kettle\"\npower = \"1 kW\"\n";

}  // namespace file_of
