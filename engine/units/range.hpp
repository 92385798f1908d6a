// What is not known exactly: both ends and the likeliest value. An unknown is a range, never a
// guess at a point, and ranges of several sources are not averaged.
#pragma once

#include <functional>
#include <utility>

namespace units {

// low <= likely <= high in whatever order the owner names (amount, or burden on the unit).
template <class T>
struct Range {
    T low{};
    T likely{};
    T high{};

    friend bool operator==(const Range&, const Range&) = default;
};

template <class T>
[[nodiscard]] constexpr Range<T> exactly(T value) {
    return {value, value, value};
}

// function(low), function(likely), function(high). Further ranges go along, end with end.
template <class Function, class First, class... Others>
[[nodiscard]] auto each(Function&& function, const Range<First>& first,
                        const Range<Others>&... others) {
    using Value = std::invoke_result_t<Function&, const First&, const Others&...>;
    return Range<Value>{function(first.low, others.low...), function(first.likely, others.likely...),
                        function(first.high, others.high...)};
}

template <class T>
[[nodiscard]] constexpr bool overlap(const Range<T>& a, const Range<T>& b) {
    return !(a.high < b.low) && !(b.high < a.low);
}

}  // namespace units
