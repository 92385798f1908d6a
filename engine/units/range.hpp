// What is not known exactly: both ends and the likeliest value. An unknown is a range, never a
// guess at a point, and ranges of several sources are not averaged.
#pragma once

#include <concepts>
#include <functional>
#include <type_traits>
#include <utility>

namespace units {

// Any one value; both a range of no width and ends that are alike.
template <class T>
struct Exact;

// low <= likely <= high, whatever it was made of.
template <std::totally_ordered T>
class Range {
  public:
    constexpr Range() = default;  // no width, at nothing

    // From the lowest to the highest of the three.
    [[nodiscard]] static constexpr Range spanning(T one, T likely, T other) {
        Range range;
        range.low_ = other < one ? other : one;
        range.high_ = other < one ? one : other;
        if (likely < range.low_) range.low_ = likely;
        if (range.high_ < likely) range.high_ = likely;
        range.likely_ = std::move(likely);
        return range;
    }

    [[nodiscard]] constexpr const T& low() const { return low_; }
    [[nodiscard]] constexpr const T& likely() const { return likely_; }
    [[nodiscard]] constexpr const T& high() const { return high_; }

    friend bool operator==(const Range&, const Range&) = default;

  private:
    T low_{};
    T likely_{};
    T high_{};
};

// One value at each end of something else that is not known, such as a burden on the unit: `low`
// where that is least, `high` where it is most. The values themselves stand in any order and need
// not have one.
template <class T>
struct Ends {
    T low{};
    T likely{};
    T high{};

    friend bool operator==(const Ends&, const Ends&) = default;
};

template <class T>
struct Exact {
    T value;

    template <std::same_as<T> Ordered>
    constexpr operator Range<Ordered>() const {
        return Range<Ordered>::spanning(value, value, value);
    }
    constexpr operator Ends<T>() const { return {value, value, value}; }
};

template <class T>
[[nodiscard]] constexpr Exact<T> exactly(T value) {
    return {std::move(value)};
}

template <class T>
[[nodiscard]] constexpr Range<T> spanning(T one, T likely, T other) {
    return Range<T>::spanning(std::move(one), std::move(likely), std::move(other));
}

// All that lies between the ends.
template <class T>
[[nodiscard]] constexpr Range<T> spanning(const Ends<T>& ends) {
    return Range<T>::spanning(ends.low, ends.likely, ends.high);
}

// The more of it, the more of a burden.
template <class T>
[[nodiscard]] constexpr Ends<T> more_is_harder(const Range<T>& range) {
    return {range.low(), range.likely(), range.high()};
}

template <class T>
[[nodiscard]] constexpr Ends<T> less_is_harder(const Range<T>& range) {
    return {range.high(), range.likely(), range.low()};
}

// function(low), function(likely), function(high), end with end.
template <class Function, class First, class... Others>
[[nodiscard]] constexpr auto each(Function&& function, const Ends<First>& first,
                                  const Ends<Others>&... others) {
    using Value =
        std::remove_cvref_t<std::invoke_result_t<Function&, const First&, const Others&...>>;
    return Ends<Value>{function(first.low, others.low...), function(first.likely, others.likely...),
                       function(first.high, others.high...)};
}

// The range of a function that rises or falls throughout.
template <class Function, class T>
[[nodiscard]] constexpr auto each(Function&& function, const Range<T>& range) {
    return spanning(each(function, more_is_harder(range)));
}

template <class T>
[[nodiscard]] constexpr bool overlap(const Range<T>& a, const Range<T>& b) {
    return !(a.high() < b.low()) && !(b.high() < a.low());
}

}  // namespace units
