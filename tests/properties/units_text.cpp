#include <limits>

#include "units/clock.hpp"
#include "units/quote.hpp"
#include "units/size.hpp"
#include "units/text.hpp"

namespace {

using namespace units;

// A finite double of any size: half of them from all bit patterns, half a rounded everyday number.
double any_number() {
    if (*rc::gen::arbitrary<bool>()) {
        const auto digits = *rc::gen::inRange<std::int64_t>(-999'999, 999'999);
        return static_cast<double>(digits) / std::pow(10.0, *rc::gen::inRange(0, 9));
    }
    const auto mantissa = *rc::gen::inRange<std::int64_t>(-(1LL << 53), (1LL << 53) + 1);
    const auto exponent = *rc::gen::inRange(-1100, 920);
    return std::ldexp(static_cast<double>(mantissa), exponent);
}

template <Written Quantity>
double number_within_range() {
    constexpr Dimension dimension = DimensionOf<Quantity>::value;
    if constexpr (dimension == Dimension::fraction || dimension == Dimension::probability ||
                  dimension == Dimension::power_factor) {
        const double size = std::abs(any_number());
        return size <= 1.0 ? size : 1.0 / size;
    } else if constexpr (dimension == Dimension::temperature) {
        return std::abs(any_number());
    } else {
        return any_number();
    }
}

template <class Quantity>
class EveryQuantity : public testing::Test {};

using Quantities = testing::Types<Power, ApparentPower, ReactivePower, Energy, Charge, Voltage,
                                  Current, Resistance, Temperature, TemperatureDifference, Duration,
                                  Length, Area, Volume, Mass, Angle, Irradiance, Irradiation,
                                  Frequency, AngularVelocity, Torque, Inertia, Force, StateOfCharge,
                                  Efficiency, PowerFactor, Probability, Share, Price>;
TYPED_TEST_SUITE(EveryQuantity, Quantities);

TYPED_TEST(EveryQuantity, reads_back_exactly_what_was_printed) {
    EXPECT_TRUE(rc::check([] {
        const double value = number_within_range<TypeParam>();
        const std::string text = print(from_si<TypeParam>(value));
        const Result<TypeParam> read = units::read<TypeParam>(text);
        RC_LOG() << text;
        RC_ASSERT(read.has_value());
        RC_ASSERT(in_si(*read) == value);
    }));
}

TYPED_TEST(EveryQuantity, is_shown_rounded_and_never_as_a_negative_nothing) {
    EXPECT_TRUE(rc::check([] {
        const double value = number_within_range<TypeParam>();
        const std::string text = show(from_si<TypeParam>(value));
        RC_LOG() << text;
        RC_ASSERT(text.find('-') == std::string::npos || text.find("e-") != std::string::npos);
        RC_ASSERT(!text.starts_with("−") || text.find_first_of("123456789") != std::string::npos);
        RC_ASSERT(text.find("nan") == std::string::npos && text.find("inf") == std::string::npos);
    }));
}

// What is shown with three digits is within half a unit of the third one: one part in 200 at worst.
template <Written Quantity>
void expect_shown_to_three_digits(double smallest, double largest) {
    EXPECT_TRUE(rc::check([&] {
        const double exponent = *rc::gen::inRange(0, 10'000) / 10'000.0;
        const double value = smallest * std::pow(largest / smallest, exponent);
        const std::string text = show(from_si<Quantity>(value));
        RC_LOG() << text;
        const Result<Quantity> read = units::read<Quantity>(text);
        RC_ASSERT(read.has_value());
        RC_ASSERT(std::abs(in_si(*read) - value) <= 0.00501 * value);
    }));
}

TEST(shown, is_close_to_the_value) {
    expect_shown_to_three_digits<Power>(1e-3, 1e9);
    expect_shown_to_three_digits<Energy>(3.6, 3.6e12);
    expect_shown_to_three_digits<Charge>(3.6, 3.6e6);
    expect_shown_to_three_digits<Current>(1e-6, 1e5);
    expect_shown_to_three_digits<Resistance>(1e-6, 1e8);
    expect_shown_to_three_digits<Length>(1e-3, 1e5);
    expect_shown_to_three_digits<Area>(1e-6, 1e3);
    expect_shown_to_three_digits<Mass>(1e-3, 1e5);
    expect_shown_to_three_digits<Irradiation>(3.6e3, 3.6e7);
    expect_shown_to_three_digits<Duration>(1e-3, 48.0 * 3600.0);
}

std::string any_bytes() {
    const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::oneOf(
        rc::gen::arbitrary<std::string>(),
        rc::gen::element<std::string>("1", "9", ".", ",", "/", " ", "-", "e", "1e999", "W", "kWh",
                                      "h", "d", "m2", "%", "°C", "Ω", "½", "\xff", "\xe2\x80",
                                      "AWG", "0", "T", ":", "2026-01-14")));
    std::string text;
    for (const std::string& piece : pieces) {
        text += piece;
    }
    return text;
}

template <class T>
void expect_value_or_fit_words(const Result<T>& read) {
    if (read) {
        return;
    }
    RC_ASSERT(!read.error().empty());
    for (const Error& error : read.error()) {
        RC_ASSERT(!error.found.empty() && !error.remedy.empty());
        const std::string text = print(error);
        RC_ASSERT(text.size() < 600U);
        for (std::string_view rest = text; !rest.empty();) {
            const int length = utf8_length(rest);
            RC_ASSERT(length > 0);
            RC_ASSERT(length > 1 || static_cast<unsigned char>(rest.front()) >= 0x20);
            rest.remove_prefix(static_cast<std::size_t>(length));
        }
    }
}

TEST(any_bytes, give_a_finite_value_or_words_fit_to_be_shown) {
    EXPECT_TRUE(rc::check([] {
        const std::string text = any_bytes();
        const auto wanted =
            static_cast<Dimension>(*rc::gen::inRange(0, static_cast<int>(Dimension::price) + 1));
        const Result<double> value = read_si(wanted, text);
        RC_ASSERT(!value || std::isfinite(*value));
        expect_value_or_fit_words(value);
        expect_value_or_fit_words(read<WireSize>(text));
        expect_value_or_fit_words(read<LocalTime>(text));
        expect_value_or_fit_words(read<DailySpan>(text));
        expect_value_or_fit_words(read_time_of_day(text));
    }));
}

TEST(wire_size_text, reads_back_exactly_what_was_printed) {
    EXPECT_TRUE(rc::check([] {
        const double area = std::max(std::abs(any_number()), 1e-12);
        const WireSize section = area * square_metre;
        RC_ASSERT(*read<WireSize>(print(section)) == section);
        const WireSize gauge =
            AmericanGauge{*rc::gen::inRange(thickest_gauge.number, thinnest_gauge.number + 1)};
        RC_ASSERT(*read<WireSize>(print(gauge)) == gauge);
    }));
}

TEST(clock_text, reads_back_what_was_printed) {
    EXPECT_TRUE(rc::check([] {
        const auto second_of_time =
            *rc::gen::inRange<std::int64_t>(-62'135'596'800, 253'402'300'800);
        const LocalTime time = LocalTime(static_cast<double>(second_of_time) * second);
        RC_ASSERT(*read<LocalTime>(print(time)) == time);
        const int from = *rc::gen::inRange(0, 1440);
        const int until = (from + *rc::gen::inRange(1, 1440)) % 1440;
        const DailySpan span = {.from = static_cast<double>(from) * minute,
                                .until = static_cast<double>(until) * minute};
        RC_ASSERT(*read<DailySpan>(print(span)) == span);
        RC_ASSERT(holds(span, span.from) && !holds(span, span.until));
    }));
}

}  // namespace
