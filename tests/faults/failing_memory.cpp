// Memory that is refused when it is its turn. The sanitizer has its own memory.
#if !defined(__SANITIZE_ADDRESS__)
#include <cstdlib>
#include <new>

#include "failing_calls.hpp"

void* operator new(std::size_t size) {
    void* const memory = failing::memory_fails() ? nullptr : std::malloc(size);
    if (memory == nullptr) {
        throw std::bad_alloc();
    }
    return memory;
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}
#endif
