// What holds for every refrigerator, room and set of hours. More of them:
// CANDLEMARK_COLD_COURSES=10000.
#include "demand/kept_cold.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <random>

#include <gtest/gtest.h>

#include "demand/demand.hpp"

namespace {

using namespace demand;
using scenario::KeepsCold;
using units::celsius;
using units::Duration;
using units::hour;
using units::minute;

int courses_to_draw() {
    const char* wished = std::getenv("CANDLEMARK_COLD_COURSES");
    return wished != nullptr ? std::atoi(wished) : 500;
}

class Drawn {
  public:
    explicit Drawn(unsigned seed) : bits_(seed) {}
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits_);
    }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(bits_); }
    KeepsCold kind() {
        return std::array{KeepsCold::refrigerator, KeepsCold::refrigerator_freezer,
                          KeepsCold::freezer}[static_cast<std::size_t>(whole(0, 2))];
    }
    // On and off in turns, of minutes to half a day, some of them none.
    Spans served(Duration lasts) {
        Spans spans;
        Duration at = whole(0, 1) * between(0.0, 12.0) * hour;
        while (at < lasts) {
            const Duration until = std::min(lasts, at + between(0.01, 12.0) * hour);
            spans.push_back({.from = at, .until = until});
            at = until + between(0.01, 12.0) * hour;
        }
        return spans;
    }

  private:
    std::mt19937_64 bits_;
};

constexpr Duration lasts = 96.0 * hour;

TEST(kept_cold, energy_by_time_on_is_that_by_heat) {
    Drawn drawn(1);
    for (int i = 0; i < courses_to_draw(); ++i) {
        const ColdKeeper keeper{drawn.between(5.0, 45.0) * hour,
                                DrawRatio(drawn.between(0.5, 6.0))};
        const ColdCourse course = cold_course(keeper, drawn.served(lasts), lasts);
        ASSERT_NEAR(drawn_while_on(keeper, course) / hour,
                    drawn_by_heat(keeper, course, lasts) / hour, 1e-9)
            << i;
        ASSERT_GE(course.at_end.value(), 0.0) << i;
        ASSERT_LT(course.warmest.value(), 1.0) << i;
    }
}

TEST(kept_cold, more_hours_on_never_draw_less) {
    Drawn drawn(2);
    for (int i = 0; i < courses_to_draw(); ++i) {
        const ColdKeeper keeper{drawn.between(5.0, 45.0) * hour,
                                DrawRatio(drawn.between(0.5, 6.0))};
        const Spans few = drawn.served(lasts);
        const Spans more = either(few, drawn.served(lasts));
        const ColdCourse of_few = cold_course(keeper, few, lasts);
        const ColdCourse of_more = cold_course(keeper, more, lasts);
        ASSERT_LE(drawn_while_on(keeper, of_few) / hour,
                  drawn_while_on(keeper, of_more) / hour + 1e-9)
            << i;
        ASSERT_LE(of_more.warmest.value(), of_few.warmest.value() + 1e-12) << i;
        ASSERT_LE(drawn_while_on(keeper, of_more) / hour,
                  std::max(1.0, keeper.capacity.value()) * (lasts / hour) + 1e-9)
            << i;
    }
}

TEST(kept_cold, a_warmer_room_never_draws_less) {
    Drawn drawn(3);
    for (int i = 0; i < courses_to_draw(); ++i) {
        const KeepsCold kind = drawn.kind();
        const auto reference = celsius(drawn.between(5.0, 40.0));
        const double cool = drawn.between(-20.0, 55.0);
        const double warm = drawn.between(cool, 60.0);
        const auto in_cool = draw_by_room(kind, celsius(cool), reference);
        const auto in_warm = draw_by_room(kind, celsius(warm), reference);
        ASSERT_LE(in_cool.low(), in_warm.low());
        ASSERT_LE(in_cool.likely(), in_warm.likely());
        ASSERT_LE(in_cool.high(), in_warm.high());
    }
}

// Through the whole demand: at each end of the range and at each moment.
TEST(kept_cold, a_warmer_room_or_more_hours_never_ask_for_less_of_the_unit) {
    Drawn drawn(4);
    const auto energy = [](const Demand& demand, Case which) {
        const auto steps = demand_steps(demand, which);
        units::Energy sum{};
        for (std::size_t i = 0; i < steps.size(); ++i)
            sum += steps[i].ac *
                   ((i + 1 < steps.size() ? steps[i + 1].from : demand.lasts) - steps[i].from);
        return sum / units::watt_hour;
    };
    for (int i = 0; i < courses_to_draw() / 5; ++i) {
        scenario::Load load;
        load.name = "cold box";
        load.keeps_cold = drawn.kind();
        if (drawn.whole(0, 1) == 0)
            load.draw =
                scenario::MeteredUse{drawn.between(500.0, 3000.0) * units::watt_hour, 24.0 * hour};
        else
            load.draw = scenario::YearlyLabel{drawn.between(20.0, 120.0) * units::watt};
        if (drawn.whole(0, 2) > 0) {
            const double every = drawn.between(20.0, 90.0);
            load.runs = scenario::DutyCycle{drawn.between(0.1, 1.0) * every * minute,
                                            every * minute, 5.0 * minute};
        }
        scenario::Scenario scenario;
        scenario.outage.starts = units::LocalTime(20'000.0 * units::day + 18.0 * hour);
        scenario.outage.lasts = 3.0 * units::day;
        scenario.inverter.emplace().continuous = 2400.0 * units::watt;
        if (drawn.whole(0, 1) == 0)
            scenario.inverter->off = {{.from = (drawn.whole(0, 23) + 0.0) * hour,
                                       .until = (drawn.whole(0, 22) + 0.5) * hour}};
        const double cool = drawn.between(5.0, 45.0);
        load.room = celsius(cool);
        scenario.loads = {load};
        const Demand in_cool = plan_demand(scenario).value();
        scenario.loads[0].room = celsius(drawn.between(cool, 50.0));
        const Demand in_warm = plan_demand(scenario).value();
        for (const Case which : {Case::low, Case::likely, Case::high})
            ASSERT_LE(energy(in_cool, which), energy(in_warm, which) * (1.0 + 1e-12) + 1e-9) << i;
        const Demand& of = in_warm;
        ASSERT_LE(energy(of, Case::low), energy(of, Case::likely) * (1.0 + 1e-12));
        ASSERT_LE(energy(of, Case::likely), energy(of, Case::high) * (1.0 + 1e-12));
    }
}

}  // namespace
