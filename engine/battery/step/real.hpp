// What a pack's step computes with: one double, or as many as the processor takes at once. An
// expression means the same for both; comparisons of many give a mask.
#pragma once

#include <cmath>
#include <cstddef>
#include <type_traits>

#if defined(__SSE2__)
#include <immintrin.h>
#endif

// Lanes are never passed in registers: everything that takes one is inlined.
#pragma GCC diagnostic ignored "-Wpsabi"

namespace battery::step {

using Two [[gnu::vector_size(16)]] = double;
using Four [[gnu::vector_size(32)]] = double;
using Eight [[gnu::vector_size(64)]] = double;

template <class Real>
inline constexpr bool one = std::is_arithmetic_v<Real>;
template <class Real>
inline constexpr std::size_t lanes_of = one<Real> ? 1 : sizeof(Real) / sizeof(double);

// The same number in every lane.
template <class Real>
[[nodiscard, gnu::always_inline]] constexpr Real all(double number) {
    if constexpr (one<Real>)
        return number;
    else
        return Real{} + number;
}

template <class Real>
[[nodiscard, gnu::always_inline]] inline Real root_of(Real x) {
    if constexpr (one<Real>) return std::sqrt(x);
#if defined(__AVX512F__)
    else if constexpr (sizeof(Real) == 64)
        return (Real)_mm512_sqrt_pd((__m512d)x);
#endif
#if defined(__AVX__)
    else if constexpr (sizeof(Real) == 32)
        return (Real)_mm256_sqrt_pd((__m256d)x);
#endif
#if defined(__SSE2__)
    else if constexpr (sizeof(Real) == 16)
        return (Real)_mm_sqrt_pd((__m128d)x);
#endif
    else {
        Real roots{};
        for (std::size_t lane = 0; lane < lanes_of<Real>; ++lane)
            roots[lane] = std::sqrt(x[lane]);
        return roots;
    }
}

// Lane by lane the first where the mask holds, else the second.
[[nodiscard, gnu::always_inline]] constexpr double select(bool mask, double a, double b) {
    return mask ? a : b;
}
template <class Mask, class A, class B>
requires(!one<Mask>)
    [[nodiscard, gnu::always_inline]] inline auto select(const Mask& mask, const A& a, const B& b) {
    if constexpr (one<A> && one<B>) {
        using Real = std::conditional_t<sizeof(Mask) == 16, Two,
                                        std::conditional_t<sizeof(Mask) == 32, Four, Eight>>;
        return mask ? all<Real>(a) : all<Real>(b);
    } else if constexpr (one<A>) {
        return mask ? all<B>(a) : b;
    } else if constexpr (one<B>) {
        return mask ? a : all<A>(b);
    } else {
        return mask ? a : b;
    }
}

// Several conditions that must hold together. Of many, 1 or 0 a lane, each kept only while the next
// also holds: selects, no branches and no masks to keep.
[[nodiscard, gnu::always_inline]] constexpr bool both(bool holds, bool also) {
    return holds && also;
}
template <class Real, class Mask>
requires(!one<Real>) [[nodiscard, gnu::always_inline]] inline Real
    both(const Real& holds, const Mask& also) {
    return also ? holds : Real{};
}
[[nodiscard, gnu::always_inline]] constexpr bool either(bool holds, bool other) {
    return holds || other;
}
template <class Real, class Mask>
requires(!one<Real>) [[nodiscard, gnu::always_inline]] inline Real
    either(const Real& holds, const Mask& other) {
    return other ? all<Real>(1.0) : holds;
}
// What conditions begin with.
template <class Real>
[[nodiscard, gnu::always_inline]] constexpr auto holds() {
    if constexpr (one<Real>)
        return true;
    else
        return all<Real>(1.0);
}

}  // namespace battery::step
