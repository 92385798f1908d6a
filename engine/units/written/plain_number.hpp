// A number for people: rounded, and written out.
#pragma once

#include <string>

namespace units {

// 26850 stays "26850" and is never "2.685e+04"; "0.0042"; "0" where it rounds to nothing.
//   takes    a finite number; significant, 1 to 15
[[nodiscard]] std::string plain_number(double number, int significant = 4);

}  // namespace units
