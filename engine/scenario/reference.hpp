// Every key of the file format, told from its description: what it means, takes, and what holds
// where it is absent.
#pragma once

#include <string>
#include <vector>

#include "scenario/keys.hpp"

namespace scenario {

// In the order of the format; a table stands before its keys.
[[nodiscard]] const ToldKeys& reference();

}  // namespace scenario
