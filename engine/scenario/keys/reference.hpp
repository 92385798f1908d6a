// Every key of the file format, told from its description: what it means, takes, what holds where
// it is absent, and how the screens show it.
#pragma once

#include <string_view>

#include "scenario/keys/keys.hpp"

namespace scenario {

// In the order of the format; a table stands before its keys.
[[nodiscard]] const ToldKeys& reference();

// "load.metered.energy"; null where no key is named so.
//   of   the part it belongs to where one list holds several kinds, "fuse"; else empty
[[nodiscard]] const ToldKey* told_key(std::string_view key, std::string_view of = {});

}  // namespace scenario
