// Makes the n-th call of this thread to the system, or for memory, fail: the calls through which a
// file is saved are defined anew in the test's own program and handed on while nothing is to fail.
#pragma once

#include <map>
#include <string>

namespace failing {

enum class How {
    once,        // the n-th call alone
    ever_after,  // and every one after it
    short_once,  // a write, half; other calls are left alone
    killed       // the process ends by SIGKILL instead of making the call
};

struct Calls {
    long made = 0;                      // calls that could have failed
    std::map<std::string, int> failed;  // by name
};

// Counts this thread's calls from now on; the n-th fails with the error. n = 0 fails none.
void begin(long n, int error, How how);
// Calls are handed on again.
Calls end();

// Whether it is the turn of a call for memory to fail.
bool memory_fails();

}  // namespace failing
