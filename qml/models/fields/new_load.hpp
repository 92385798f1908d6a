// A load put at the end of a scenario's text.
#pragma once

#include <string>

#include "motor/appliances/appliances.hpp"
#include "scenario/load.hpp"
#include "units/result.hpp"

namespace touch {

// As the library describes it, every figure written out so that it can be seen and changed.
[[nodiscard]] scenario::Load load_like(const motor::Appliance& appliance);

[[nodiscard]] units::Result<std::string> with_load(const std::string& text,
                                                   const scenario::Load& load);

}  // namespace touch
