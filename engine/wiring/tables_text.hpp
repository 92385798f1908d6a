// The tables of this folder, compiled in.
#pragma once

#include <string_view>

namespace wiring {

extern const std::string_view conductors_text;
extern const std::string_view ampacity_text;
extern const std::string_view fuses_text;
extern const std::string_view connectors_text;

}  // namespace wiring
