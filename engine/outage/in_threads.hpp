// The same work for many numbers, on several threads.
#pragma once

#include <algorithm>
#include <thread>
#include <vector>

namespace outage {

// Calls work(number) once for each number from 0 to count - 1. Which thread takes which number is
// of no account as long as each call writes only what is its own.
//   threads  0 takes as many as the machine has
template <class Work>
void for_each_number(int count, unsigned threads, const Work& work) {
    if (threads == 0) threads = std::max(1U, std::thread::hardware_concurrency());
    const auto every = [&](unsigned first) {
        for (int number = static_cast<int>(first); number < count;
             number += static_cast<int>(threads))
            work(number);
    };
    std::vector<std::jthread> others;
    for (unsigned thread = 1; thread < threads; ++thread)
        others.emplace_back(every, thread);
    every(0);
}

}  // namespace outage
