// Why the system could not do something with a file.
#pragma once

#include "words/said.hpp"

namespace scenario {

// The system's number, as errno; of the rare ones in the words of the system, which are English.
[[nodiscard]] words::Said words_of_system(int error);

}  // namespace scenario
