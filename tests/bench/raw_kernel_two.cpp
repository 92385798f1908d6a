#define CANDLEMARK_RAW two
#include "raw_kernel.inc"
