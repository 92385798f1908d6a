// Lets a failing test say "12.5 V" instead of "8-byte object".
#pragma once

#include <ostream>

#include "units/quantities.hpp"
#include "units/result.hpp"
#include "units/time.hpp"

namespace boost::units {

// gtest looks in the namespace of the type.
template <class Unit>
void PrintTo(const quantity<Unit, double>& quantity, std::ostream* out) {
    *out << quantity.value() << " (SI)";
}

}  // namespace boost::units

namespace units {

template <class Meaning>
void PrintTo(const Fraction<Meaning>& fraction, std::ostream* out) {
    *out << fraction.value();
}

template <class Clock>
void PrintTo(const TimePoint<Clock>& time, std::ostream* out) {
    *out << time.since_1970().value() << " s after 1970";
}

void PrintTo(const Error& error, std::ostream* out);

}  // namespace units
