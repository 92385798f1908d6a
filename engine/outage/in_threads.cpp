#include "outage/in_threads.hpp"

#include <algorithm>
#include <atomic>
#include <exception>
#include <new>
#include <system_error>
#include <thread>
#include <vector>

namespace outage {

namespace {

std::atomic<bool> one_thread{false};
std::atomic<bool> several{false};

// Takes numbers until there are no more, or until a call somewhere has failed.
class Numbers {
  public:
    Numbers(int count, const std::function<void(int)>& work) : count_(count), work_(work) {}

    void take() noexcept {
        while (!failed_) {
            const int number = next_++;
            if (number >= count_) return;
            try {
                work_(number);
            } catch (...) {
                if (!failed_.exchange(true)) failure_ = std::current_exception();
            }
        }
    }

    // To be called when no thread takes any more.
    void rethrow() const {
        if (failure_) std::rethrow_exception(failure_);
    }

  private:
    int count_;
    const std::function<void(int)>& work_;
    std::atomic<int> next_{0};
    std::atomic<bool> failed_{false};
    std::exception_ptr failure_;
};

unsigned threads_for(unsigned asked, int count) {
    if (one_thread) return 1;
    const unsigned all = asked > 0 ? asked : std::max(1U, std::thread::hardware_concurrency());
    return std::min(all, static_cast<unsigned>(std::max(1, count)));
}

}  // namespace

void for_each_number(int count, unsigned threads, const std::function<void(int)>& work) {
    Numbers numbers(count, work);
    {
        std::vector<std::jthread> others;
        const unsigned wanted = threads_for(threads, count) - 1;
        others.reserve(wanted);
        while (others.size() < wanted) {
            try {
                several = true;
                others.emplace_back([&numbers] { numbers.take(); });
            } catch (const std::system_error&) {
                break;  // no room for another: those that there are do the work
            } catch (const std::bad_alloc&) {
                break;
            }
        }
        numbers.take();
    }
    numbers.rethrow();
}

void take_one_thread() noexcept {
    one_thread = true;
}

bool took_several_threads() noexcept {
    return several;
}

}  // namespace outage
