#include "demand/hours.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>

namespace demand {

namespace {

using units::Duration;

constexpr Duration none{};

// Adds a span behind the others, joining it to the last where they touch.
void append(Spans& spans, Span span) {
    if (!(span.from < span.until)) {
        return;
    }
    if (!spans.empty() && span.from <= spans.back().until) {
        spans.back().until = std::max(spans.back().until, span.until);
    } else {
        spans.push_back(span);
    }
}

Spans in_order(Spans spans) {
    std::ranges::sort(spans, {}, &Span::from);
    Spans joined;
    for (const Span& span : spans) {
        append(joined, span);
    }
    return joined;
}

}  // namespace

Spans daily_spans(const std::vector<units::DailySpan>& hours, const std::vector<int>& days,
                  units::LocalTime starts, Duration lasts) {
    static const std::vector<units::DailySpan> all_hours{{.from = none, .until = units::day}};
    const Duration into_first_day = units::time_of_day(starts);
    const int last_day = static_cast<int>(std::ceil((into_first_day + lasts) / units::day));
    Spans spans;
    for (int number = 0; number <= last_day; ++number) {  // 0: a night that began before the outage
        if (!days.empty() && std::ranges::find(days, number) == days.end()) {
            continue;
        }
        const Duration midnight = static_cast<double>(number - 1) * units::day - into_first_day;
        for (const units::DailySpan& span : hours.empty() ? all_hours : hours) {
            const Duration over_midnight = span.until <= span.from ? units::day : none;
            spans.push_back({.from = std::max(none, midnight + span.from),
                             .until = std::min(lasts, midnight + span.until + over_midnight)});
        }
    }
    return in_order(std::move(spans));
}

Spans cycle_spans(const Spans& within, Duration on, Duration every, Duration phase) {
    assert(none < on && on <= every);
    if (on == every) {
        return within;
    }
    Spans spans;
    for (const Span& span : within) {
        double k = std::floor((span.from - phase - on) / every);
        for (Duration start = phase + k * every; start < span.until; start = phase + k * every) {
            append(spans, {.from = std::max(span.from, start),
                           .until = std::min(span.until, phase + on + k * every)});
            k += 1.0;
        }
    }
    return spans;
}

Spans common(const Spans& a, const Spans& b) {
    Spans spans;
    for (auto i = a.begin(), j = b.begin(); i != a.end() && j != b.end();) {
        append(spans, {.from = std::max(i->from, j->from), .until = std::min(i->until, j->until)});
        (i->until < j->until ? i : j)++;
    }
    return spans;
}

Spans either(const Spans& a, const Spans& b) {
    Spans spans = a;
    spans.insert(spans.end(), b.begin(), b.end());
    return in_order(std::move(spans));
}

Spans without(const Spans& spans, const Spans& removed) {
    Spans rest;
    auto gap = removed.begin();
    for (Span span : spans) {
        while (gap != removed.end() && gap->until <= span.from) {
            ++gap;
        }
        for (auto inside = gap; inside != removed.end() && inside->from < span.until; ++inside) {
            append(rest, {.from = span.from, .until = inside->from});
            span.from = inside->until;
        }
        append(rest, span);
    }
    return rest;
}

Duration total(const Spans& spans) {
    Duration sum = none;
    for (const Span& span : spans) {
        sum += span.until - span.from;
    }
    return sum;
}

Duration usual_phase(std::string_view name, Duration every) {
    // Fowler-Noll-Vo hash with a mixing step behind it: short names differ in few bits.
    std::uint64_t hash = 14695981039346656037ULL;
    for (const char letter : name) {
        hash = (hash ^ static_cast<unsigned char>(letter)) * 1099511628211ULL;
    }
    hash = (hash ^ (hash >> 31)) * 0x9E3779B97F4A7C15ULL;
    const double share = static_cast<double>(hash >> 11) * 0x1.0p-53;
    return std::floor(share * (every / units::second)) * units::second;
}

}  // namespace demand
