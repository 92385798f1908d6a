// What did you understand of my file?
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "outage/load_uses.hpp"
#include "questions/asked.hpp"
#include "scenario/read.hpp"
#include "solar/weather_file.hpp"
#include "units/result.hpp"

namespace questions {

//   loads     as the outage plan resolves them; empty when the outage could not be planned
//   weather   where the place names a file of it
struct ReadFound {
    scenario::ReadScenario read;
    std::vector<outage::LoadUse> loads = {};
    std::optional<solar::WeatherYear> weather = {};
};

//   fails   where the weather file cannot be used
[[nodiscard]] units::Result<ReadFound> find(const scenario::ReadScenario& read,
                                            const ReadAsked& asked, const How& how);

}  // namespace questions
