// What nearly every file of the engine includes; compiled once.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <fmt/format.h>

#include "units/quantities.hpp"
#include "units/result.hpp"
