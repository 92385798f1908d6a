#include "demand/kept_cold.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

#include "motor/appliances/appliances.hpp"

namespace demand {

namespace {

using scenario::KeepsCold;
using units::celsius;
using units::Duration;
using units::Temperature;

constexpr Duration forever = std::numeric_limits<double>::infinity() * units::second;

double degrees(Temperature room) {
    return std::max(0.0, units::in_celsius(room));
}

// Draw over the label's mean: the mean of 24 hourly pairs of [ICC 301] table C.3(2); (5).
double over_label(Temperature room) {
    return 0.2325 + 0.031275 * degrees(room);
}

// Warmth inside, and how far the condenser's end of the cycle lies below the room: ours; (6).
struct Cycle {
    double inside;
    double below_room;
};

Cycle cycle_of(KeepsCold kind) {
    switch (kind) {
        case KeepsCold::refrigerator:
            return {4.0, 24.0};
        case KeepsCold::freezer:
            return {-18.0, 40.0};
        case KeepsCold::refrigerator_freezer:
        case KeepsCold::nothing:
            break;
    }
    return {-5.0, 35.0};
}

// Leak over an efficiency that falls as the condenser warms; a tenth of the draw does not follow.
double steeper(KeepsCold kind, Temperature room) {
    const auto [inside, below_room] = cycle_of(kind);
    const auto lift = [&](double t) { return std::max(0.0, t - inside) * (t + below_room); };
    constexpr double reference = 25.0;
    return 0.1 + 0.9 * lift(degrees(room)) / lift(reference);
}

bool is_refrigeration(scenario::MotorKind kind) {
    return kind == scenario::MotorKind::compressor_rsir ||
           kind == scenario::MotorKind::compressor_csir;
}

double decayed(const ColdKeeper& keeper, Duration over) {
    return std::exp(-(over / keeper.time_constant));
}

// Where it would end up if it stayed on: below 0 where its capacity exceeds the leak.
double on_for_good(const ColdKeeper& keeper) {
    return 1.0 - keeper.capacity.value();
}

// The time integral of what moves from `before` to `after` towards `towards`.
Duration integral(const ColdKeeper& keeper, double towards, Warmed before, Warmed after,
                  Duration over) {
    return towards * over + (before.value() - after.value()) * keeper.time_constant;
}

// The state on its way through the outage.
class Way {
  public:
    explicit Way(const ColdKeeper& keeper) : keeper_(keeper) {}

    void off(Span span) {
        const Warmed after = warmed_after(keeper_, now_, span.until - span.from);
        course_.warm_time += integral(keeper_, 1.0, now_, after, span.until - span.from);
        course_.stretches.push_back(
            {.off = span, .before = now_, .after = after, .made_up_in = forever});
        reach(after);
    }
    void on(Span span) {
        const Duration needed = recovery_of(keeper_, now_);
        const Duration there = span.until - span.from;
        const bool back = needed <= there;
        const Duration recovering = back ? needed : there;
        const Warmed after = back ? Warmed(0.0) : cooled_after(keeper_, now_, there);
        course_.warm_time += integral(keeper_, on_for_good(keeper_), now_, after, recovering);
        if (recovering > Duration()) {
            course_.recovering.push_back({.from = span.from, .until = span.from + recovering});
        }
        if (recovering < there) {
            course_.steady.push_back({.from = span.from + recovering, .until = span.until});
        }
        if (back && !course_.stretches.empty()) {
            course_.stretches.back().made_up_in = needed;
        }
        reach(after);
    }
    [[nodiscard]] ColdCourse ended() {
        course_.at_end = now_;
        return std::move(course_);
    }

  private:
    ColdKeeper keeper_;
    Warmed now_;
    ColdCourse course_;

    void reach(Warmed after) {
        now_ = after;
        course_.warmest = std::max(course_.warmest, after);
    }
};

}  // namespace

KeepsCold keeps_cold(const scenario::Load& load) {
    if (load.keeps_cold) {
        return *load.keeps_cold;
    }
    const auto listed = motor::find_appliance(load.like.value_or(load.name));
    if (listed && (load.like || listed->keeps_cold != KeepsCold::nothing)) {
        return listed->keeps_cold;
    }
    return load.motor && is_refrigeration(load.motor->kind) ? KeepsCold::refrigerator_freezer
                                                            : KeepsCold::nothing;
}

Temperature room_of_labels() {
    return celsius((1.0 - 0.2325) / 0.031275);
}

units::Range<DrawRatio> draw_by_room(KeepsCold kind, Temperature room, Temperature reference) {
    assert(kind != KeepsCold::nothing);
    const double likely = over_label(room) / over_label(reference);
    const double far = steeper(kind, room) / steeper(kind, reference);
    return units::spanning(DrawRatio(std::min(likely, far)), DrawRatio(likely),
                           DrawRatio(std::max(likely, far)));
}

Temperature set_point_of(KeepsCold kind) {
    return kind == KeepsCold::freezer ? celsius(-18.0) : celsius(3.0);
}

Duration time_constant_of(KeepsCold kind) {
    return (kind == KeepsCold::freezer ? 38.0 : 25.0) * units::hour;
}

Warmed warmed_after(const ColdKeeper& keeper, Warmed before, Duration off) {
    return Warmed(1.0 - (1.0 - before.value()) * decayed(keeper, off));
}

Duration recovery_of(const ColdKeeper& keeper, Warmed before) {
    const double below = -on_for_good(keeper);
    if (!(before.value() > 0.0)) {
        return below < 0.0 ? forever : Duration();
    }
    return below > 0.0 ? keeper.time_constant * std::log1p(before.value() / below) : forever;
}

Warmed cooled_after(const ColdKeeper& keeper, Warmed before, Duration on) {
    const double end = on_for_good(keeper);
    return Warmed(end + (before.value() - end) * decayed(keeper, on));
}

ColdCourse cold_course(const ColdKeeper& keeper, const Spans& served, Duration lasts) {
    Way way(keeper);
    Duration now{};
    for (const Span& span : served) {
        if (now < span.from) {
            way.off({.from = now, .until = span.from});
        }
        way.on(span);
        now = span.until;
    }
    if (now < lasts) {
        way.off({.from = now, .until = lasts});
    }
    return way.ended();
}

Duration drawn_while_on(const ColdKeeper& keeper, const ColdCourse& course) {
    return keeper.capacity.value() * total(course.recovering) + total(course.steady);
}

Duration drawn_by_heat(const ColdKeeper& keeper, const ColdCourse& course, Duration lasts) {
    return lasts - course.warm_time - course.at_end.value() * keeper.time_constant;
}

}  // namespace demand
