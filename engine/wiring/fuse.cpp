#include "wiring/fuse.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace wiring {

namespace {

using units::Current;
using units::Duration;

constexpr double continuous_factor = 1.25;  // [NEC] 210.20(A), 215.3

// One curve at a ratio: between its points, or I2t beyond the last; nothing left of the first.
std::optional<Duration> curve_at(const Envelope& envelope, double ratio,
                                 std::optional<Duration> OpeningPoint::*time) {
    const OpeningPoint* before = nullptr;
    for (const OpeningPoint& point : envelope) {
        if (!(point.*time)) {
            continue;
        }
        if (point.ratio >= ratio) {
            if (before == nullptr) {
                // Left of the first point it takes longer: a bound for the earliest, none for the
                // latest.
                const bool bound = time == &OpeningPoint::least || point.ratio == ratio;
                return bound ? point.*time : std::nullopt;
            }
            const double along =
                std::log(ratio / before->ratio) / std::log(point.ratio / before->ratio);
            return *(before->*time) * std::pow(*(point.*time) / *(before->*time), along);
        }
        before = &point;
    }
    if (before == nullptr) {
        return std::nullopt;
    }
    return *(before->*time) * (before->ratio / ratio) * (before->ratio / ratio);
}

const std::vector<Current>& sizes_of(const FuseFamily* family) {
    return family == nullptr ? standard_sizes() : family->sizes;
}

}  // namespace

Envelope envelope_of(const FuseFamily& family, Current rating) {
    if (family.opens_by_size.empty()) {
        return family.opens;
    }
    for (const FuseFamily::BySize& size : family.opens_by_size) {
        if (rating <= size.up_to) {
            Envelope envelope = family.opens;
            const auto insert = [&envelope](const OpeningPoint& point) {
                const auto behind =
                    std::ranges::upper_bound(envelope, point.ratio, {}, &OpeningPoint::ratio);
                envelope.insert(behind, point);
            };
            if (envelope.empty() || envelope.front().ratio > 1.0) {
                insert({1.0, std::nullopt, std::nullopt});
            }
            insert({1.35, std::nullopt, size.at_135});
            insert({2.0, std::nullopt, size.at_200});
            return envelope;
        }
    }
    return {};
}

Envelope envelope_of(const scenario::Fuse& fuse, const FuseFamily* family) {
    if (!fuse.opens.empty()) {
        std::vector<const scenario::OpeningTime*> rising;
        for (const scenario::OpeningTime& time : fuse.opens) {
            rising.push_back(&time);
        }
        std::ranges::sort(rising, {}, &scenario::OpeningTime::current);
        Envelope envelope{{1.0, std::nullopt, std::nullopt}};
        for (const scenario::OpeningTime* time : rising) {
            envelope.push_back({time->current / fuse.rating, time->least, time->most});
        }
        return envelope;
    }
    return family == nullptr ? Envelope{} : envelope_of(*family, fuse.rating);
}

OpeningSpan opening_at(const Envelope& envelope, double ratio) {
    const double holds_to = envelope.empty() ? 1.0 : envelope.front().ratio;
    if (ratio <= holds_to) {
        return {.holds = true, .least = std::nullopt, .most = std::nullopt};
    }
    return {.holds = false,
            .least = curve_at(envelope, ratio, &OpeningPoint::least),
            .most = curve_at(envelope, ratio, &OpeningPoint::most)};
}

Surge stands(const Envelope& envelope, Current rating, Current current, Duration lasts) {
    const OpeningSpan span = opening_at(envelope, current / rating);
    if (span.holds || (span.least && lasts < *span.least)) {
        return Surge::holds;
    }
    return span.most && lasts >= *span.most ? Surge::opens : Surge::may_open;
}

Current least_rating(const Asked& asked) {
    const double factor = asked.full_duty ? 1.0 : continuous_factor;
    const double hot = std::max(asked.hot, 0.01);
    return (factor * asked.continuous + asked.further) / hot;
}

FuseWindow fuse_window(const Asked& asked, std::optional<Current> weakest,
                       const FuseFamily* family) {
    FuseWindow window{.least = least_rating(asked), .most = weakest};
    for (const Current& size : sizes_of(family)) {
        // A size is enough within rounding of the last digit of what is asked.
        if (size < (1.0 - 1e-12) * window.least) {
            continue;
        }
        const Envelope envelope = family == nullptr ? Envelope{} : envelope_of(*family, size);
        const bool known = std::ranges::any_of(
            envelope, [](const OpeningPoint& point) { return point.least.has_value(); });
        if (known && asked.surge > Current() &&
            stands(envelope, size, asked.surge, asked.surge_lasts) != Surge::holds) {
            window.surge_sets_least = true;
            continue;
        }
        window.smallest = size;
        break;
    }
    for (const Current& size : sizes_of(family)) {
        if (!weakest || size <= (1.0 + 1e-12) * *weakest) {
            window.largest = size;
        }
    }
    return window;
}

std::optional<Current> breaks_at(const FuseFamily& family, units::Voltage voltage) {
    for (const BreakingPoint& point : family.breaks) {
        if (voltage <= point.voltage) {
            return point.current;
        }
    }
    return std::nullopt;
}

units::Share pulse_share(double pulses) {
    constexpr std::array<double, 4> shares{0.48, 0.38, 0.29, 0.22};
    const double decade = std::clamp(std::log10(std::max(pulses, 1.0)) - 2.0, 0.0, 3.0);
    const auto below = std::min<std::size_t>(static_cast<std::size_t>(decade), 2);
    const double along = decade - static_cast<double>(below);
    return units::Share(shares[below] + along * (shares[below + 1] - shares[below]));
}

}  // namespace wiring
