// The bytes of a file, read whole.
#pragma once

#include <string>

#include "units/result.hpp"

namespace scenario {

//   fails   when the file is missing, a folder, not readable, or larger than document.hpp allows
[[nodiscard]] units::Result<std::string> bytes_of_file(const std::string& path);

// The folder a file lies in, against which paths inside it are taken; "." for a bare name.
[[nodiscard]] std::string folder_of(const std::string& path);

}  // namespace scenario
