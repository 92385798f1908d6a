// Everything the sun answer tells, worked out: for the command and for the touch program.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "answers/sun/answer.hpp"
#include "units/result.hpp"

namespace answers {

inline constexpr int usual_sun_weathers = 2000;

struct SunQuestion {
    std::string folder = {};  // against which place.weather_file is taken
    std::uint64_t seed = 1;
    int weathers = usual_sun_weathers;    // drawn where no unit can be planned
    std::optional<int> members = {};      // of the chance; absent: as many as is usual
    std::optional<int> most_panels = {};  // absent: four more than there are, at least six
    bool with_counts = true;  // false leaves out the counts of panels, which take longest
};

//   fails  where the place or the weather file cannot be used; a unit that cannot be planned is
//          left out, with the reason
[[nodiscard]] units::Result<SunResults> sun_results(const scenario::Scenario& scenario,
                                                    const SunQuestion& question);

}  // namespace answers
