// Four lanes at once; CMakeLists.txt says what this file is compiled for.
#include "abreast/stride_lanes.hpp"

namespace abreast::lanes_detail {

template Stride* stride_for<step::Four>(const Build&, bool);
template OwnStride* own_stride_for<step::Four>(const Build&, bool);

}  // namespace abreast::lanes_detail
