// Loaded before the program's own libraries: lets the n-th allocation with `new` fail, and, where
// asked, every later one. CANDLEMARK_FAILING=n, CANDLEMARK_FAILING_ON=1; CANDLEMARK_COUNT=1 writes
// how many there were to standard error at the end.
#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <new>

namespace {

long number_in(const char* name) {
    const char* text = std::getenv(name);
    return text == nullptr ? -1 : std::atol(text);
}

// The first allocation may come before this file's own statics are made.
std::atomic<long>& allocations() {
    static std::atomic<long> count{0};
    return count;
}

bool fails(long number) {
    static const long failing = number_in("CANDLEMARK_FAILING");
    static const bool and_on = number_in("CANDLEMARK_FAILING_ON") > 0;
    return failing >= 0 && (number == failing || (and_on && number > failing));
}

const struct Counted {
    ~Counted() {
        if (number_in("CANDLEMARK_COUNT") > 0) std::fprintf(stderr, "%ld\n", allocations().load());
    }
} counted;

}  // namespace

// As the standard asks of every such function: the handler first, then the exception.
void* operator new(std::size_t size) {
    bool failing = fails(allocations()++);
    while (true) {
        void* memory = failing ? nullptr : std::malloc(size > 0 ? size : 1);
        if (memory != nullptr) return memory;
        const std::new_handler handler = std::get_new_handler();
        if (handler == nullptr) throw std::bad_alloc();
        handler();
        failing = false;
    }
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}
