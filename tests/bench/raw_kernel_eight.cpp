#define CANDLEMARK_RAW eight
#include "raw_kernel.inc"
