// Two lanes at once; CMakeLists.txt says what this file is compiled for.
#include "sizing/stride_lanes.hpp"

namespace sizing::lanes_detail {

template Stride* stride_for<step::Two>(const Prepared&, bool);

}  // namespace sizing::lanes_detail
