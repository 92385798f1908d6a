// Where what later parts of the engine refuse stands in the file: they name the key alone.
#pragma once

#include "scenario/file/read.hpp"

namespace scenario {

// The errors with file and line of the key they name, or of the table it would stand in; with the
// override instead where one set it. What has a file already stays as it is.
[[nodiscard]] units::Errors placed(units::Errors errors, const ReadScenario& read);

}  // namespace scenario
