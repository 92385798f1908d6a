#define CANDLEMARK_RAW four
#include "raw_kernel.inc"
