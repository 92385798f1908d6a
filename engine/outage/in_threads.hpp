// The same work for many numbers, on several threads.
#pragma once

#include <functional>

namespace outage {

// Calls work(number) once for each number from 0 to count - 1. Which thread takes which number
// does not matter as long as each call writes only what is its own.
//   threads   0 takes as many as the machine has; fewer where no more can be started
//   fails     with what the first failing call threw, once every thread has ended; numbers that
//             were not begun by then are left out
void for_each_number(int count, unsigned threads, const std::function<void(int)>& work);

// From now on every call takes one thread, whatever it asks for: the least memory there is.
void take_one_thread() noexcept;

// Whether any call of this program has started a thread so far.
[[nodiscard]] bool took_several_threads() noexcept;

}  // namespace outage
