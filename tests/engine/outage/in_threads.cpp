#include "outage/in_threads.hpp"

#include <atomic>
#include <new>
#include <stdexcept>
#include <thread>
#include <vector>

namespace {

using outage::for_each_number;

TEST(in_threads, each_number_is_taken_once) {
    for (const unsigned threads : {0U, 1U, 2U, 5U, 64U}) {
        std::vector<int> taken(100, 0);
        for_each_number(100, threads, [&](int number) { ++taken[std::size_t(number)]; });
        EXPECT_EQ(taken, std::vector<int>(100, 1)) << threads;
    }
    for_each_number(0, 4, [](int) { FAIL(); });
}

TEST(in_threads, what_a_call_throws_arrives_once_all_threads_have_ended) {
    for (const unsigned threads : {1U, 2U, 8U}) {
        std::atomic<int> inside{0};
        try {
            for_each_number(1000, threads, [&](int number) {
                ++inside;
                std::this_thread::yield();
                --inside;
                if (number >= 3) throw std::runtime_error("number " + std::to_string(number));
            });
            ADD_FAILURE() << "nothing arrived with " << threads << " threads";
        } catch (const std::runtime_error& error) {
            EXPECT_THAT(error.what(), testing::StartsWith("number "));
        }
        EXPECT_EQ(inside, 0);
    }
}

TEST(in_threads, the_thread_that_asked_may_fail_too) {
    const auto asking = std::this_thread::get_id();
    std::atomic<bool> failed{false};
    EXPECT_THROW(for_each_number(1000, 4,
                                 [&](int) {
                                     if (std::this_thread::get_id() == asking) {
                                         failed = true;
                                         throw std::bad_alloc();
                                     }
                                     // Or the others may have done it all before it comes.
                                     while (!failed)
                                         std::this_thread::yield();
                                 }),
                 std::bad_alloc);
}

TEST(in_threads, after_a_failure_no_further_number_is_begun) {
    std::atomic<int> begun{0};
    EXPECT_THROW(for_each_number(1'000'000, 1,
                                 [&](int) {
                                     ++begun;
                                     throw std::bad_alloc();
                                 }),
                 std::bad_alloc);
    EXPECT_EQ(begun, 1);
}

}  // namespace
