// The hooks of libFuzzer, the same for each target.
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "fuzz/target.hpp"

namespace {

std::string_view text_of(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

std::size_t put(const std::string& text, std::uint8_t* data, std::size_t most) {
    const std::size_t size = std::min(text.size(), most);
    std::copy_n(text.begin(), size, reinterpret_cast<char*>(data));
    return size;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    (void)fuzz::run(text_of(data, size));
    return 0;
}

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

// The library's own changes of bytes now and then, for what ours do not think of.
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size,
                                               std::size_t most, unsigned seed) {
    fuzz::Random random(seed);
    if (random() % 5 == 0) return LLVMFuzzerMutate(data, size, most);
    return put(fuzz::mutated(text_of(data, size), text_of(data, size), random), data, most);
}

extern "C" std::size_t LLVMFuzzerCustomCrossOver(const std::uint8_t* first, std::size_t first_size,
                                                 const std::uint8_t* second,
                                                 std::size_t second_size, std::uint8_t* data,
                                                 std::size_t most, unsigned seed) {
    fuzz::Random random(seed);
    return put(fuzz::mutated(text_of(first, first_size), text_of(second, second_size), random),
               data, most);
}
