#include "chance/draw.hpp"

#include <Random123/philox.h>
#include <numeric>
#include <utility>

namespace chance {

namespace {

using Words = std::array<std::uint32_t, 4>;

// Counter i of a column.
class Counters {
  public:
    Counters(Block block, std::uint64_t name)
        : key_{{std::uint32_t(block.seed), std::uint32_t(block.seed >> 32)}},
          block_(block.number),
          name_(name) {}

    [[nodiscard]] Words words(std::uint32_t i) const {
        const auto drawn = r123::Philox4x32{}(
            {{block_, std::uint32_t(name_), std::uint32_t(name_ >> 32), i}}, key_);
        return {drawn[0], drawn[1], drawn[2], drawn[3]};
    }

  private:
    r123::Philox4x32::key_type key_;
    std::uint32_t block_;
    std::uint64_t name_;
};

constexpr std::uint32_t counters_of_the_order = 16;

// Which 64th each lane has.
std::array<int, lanes> order_of(const Counters& counters) {
    std::array<std::uint32_t, lanes> words{};
    for (std::uint32_t i = 0; i < counters_of_the_order; ++i) {
        const Words four = counters.words(i);
        std::copy(four.begin(), four.end(), words.begin() + 4 * i);
    }
    std::array<int, lanes> order{};
    std::iota(order.begin(), order.end(), 0);
    for (std::size_t last = lanes - 1; last > 0; --last) {
        const std::uint64_t word = words[lanes - 1 - last];
        std::swap(order[last], order[(word * (last + 1)) >> 32]);
    }
    return order;
}

// 46 bits and a half: with the six of the 64th exactly what a double holds.
double within(const Words& words) {
    const std::uint64_t bits = (std::uint64_t(words[1]) << 32 | words[0]) >> 18;
    return (double(bits) + 0.5) * 0x1p-46;
}

}  // namespace

std::uint64_t hash_of(std::string_view name) {
    std::uint64_t hash = 0xcbf29ce484222325;
    for (const char letter : name)
        hash = (hash ^ static_cast<unsigned char>(letter)) * 0x100000001b3;
    return hash;
}

Column drawn(Block block, std::string_view name) {
    const Counters counters(block, hash_of(name));
    const auto order = order_of(counters);
    Column column{};
    for (std::uint32_t lane = 0; lane < std::uint32_t(lanes); ++lane)
        column[lane] =
            (order[lane] + within(counters.words(counters_of_the_order + lane))) / double(lanes);
    return column;
}

}  // namespace chance
