// What did you understand of my file?
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "outage/told/load_uses.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "solar/weather/weather_summary.hpp"
#include "units/result.hpp"

namespace questions {

// A weather file as a whole.
//   odd            what is odd in it
//   temperatures   mean of each month, where it has any
struct WeatherRead {
    solar::WeatherYear year;
    solar::WeatherSummary sums;
    std::vector<solar::Oddity> odd;
    std::optional<std::array<units::Temperature, 12>> temperatures = {};
};

//   loads     as the outage plan resolves them; empty when the outage could not be planned
//   weather   where the place names a file of it
struct ReadFound {
    scenario::ReadScenario read;
    std::vector<outage::LoadUse> loads = {};
    std::optional<WeatherRead> weather = {};
};

//   fails   where the weather file cannot be used
[[nodiscard]] units::Result<ReadFound> find(const scenario::ReadScenario& read,
                                            const ReadAsked& asked, const How& how);

}  // namespace questions
