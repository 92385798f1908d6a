// The scenario a request is about.
#pragma once

#include "command_line/request.hpp"
#include "command_line/run.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace command_line {

//   fails   with all that is wrong with the --set values, or all that is wrong with the file
[[nodiscard]] units::Result<scenario::ReadScenario> read_request(const Request& request,
                                                                 const Surroundings& around);

// The values of --set, KEY=VALUE each.
[[nodiscard]] units::Result<scenario::Overrides> overrides_of(const std::vector<std::string>& set);

}  // namespace command_line
