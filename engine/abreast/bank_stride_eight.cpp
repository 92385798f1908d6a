// Eight banks at once; CMakeLists.txt says what this file is compiled for.
#include "abreast/bank_stride_lanes.hpp"

namespace abreast::lanes_detail {

template BankStride* bank_stride_for<step::Eight>(std::size_t, bool);

}  // namespace abreast::lanes_detail
