// One end of a range, named by its burden on the unit.
#pragma once

#include <array>

#include "units/range.hpp"

namespace starting {

enum class End { low, likely, high };

inline constexpr std::array all_ends{End::low, End::likely, End::high};

[[nodiscard]] constexpr End opposite(End end) {
    return end == End::low ? End::high : end == End::high ? End::low : End::likely;
}

template <class T>
[[nodiscard]] constexpr const T& at(const units::Ends<T>& ends, End end) {
    return end == End::low ? ends.low : end == End::likely ? ends.likely : ends.high;
}

template <class T>
[[nodiscard]] constexpr T& at(units::Ends<T>& ends, End end) {
    return end == End::low ? ends.low : end == End::likely ? ends.likely : ends.high;
}

// Of what is the harder the more there is of it.
template <class T>
[[nodiscard]] constexpr const T& at(const units::Range<T>& range, End end) {
    return end == End::low ? range.low() : end == End::likely ? range.likely() : range.high();
}

// function(End::low), function(End::likely), function(End::high)
template <class Function>
[[nodiscard]] auto for_each_end(Function&& function) {
    using Value = std::invoke_result_t<Function&, End>;
    return units::Ends<Value>{function(End::low), function(End::likely), function(End::high)};
}

}  // namespace starting
