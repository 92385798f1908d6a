// What ends an outage, of what its packs come to: outage::Clock says it of the part of the supply
// that goes out first.
#pragma once

#include "abreast/own.hpp"
#include "outage/course.hpp"

namespace abreast::lanes_detail {

//   why       of the packs
//   nothing   is left in them
[[nodiscard]] outage::LimitedBy limited_by(const Need& asked, outage::LimitedBy why, bool nothing);

}  // namespace abreast::lanes_detail
