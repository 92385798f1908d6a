// The overload curve of an inverter, for every input.
#include "inverter/overload.hpp"

namespace {

using namespace inverter;
using units::second;
using units::watt;

double between(double low, double high) {
    return low + (high - low) * (*rc::gen::inRange(0, 1000001) / 1e6);
}

OverloadCurve any_curve() {
    std::vector<OverloadPoint> points;
    double multiple = 1.0;
    double seconds = between(10.0, 600.0);
    for (int i = *rc::gen::inRange(1, 6); i > 0; --i) {
        multiple += between(0.05, 0.6);
        points.push_back({LoadMultiple(multiple), seconds * second});
        seconds *= between(0.01, 1.0);
    }
    return *overload_curve(points);
}

TEST(inverter_overload, a_heavier_overload_is_never_held_for_longer) {
    EXPECT_TRUE(rc::check([] {
        const auto curve = any_curve();
        const LoadMultiple light(between(0.5, 4.0));
        const LoadMultiple heavy(light.value() + between(0.0, 2.0));
        const auto longer = hold_time(curve, light);
        const auto shorter = hold_time(curve, heavy);
        if (longer) {
            RC_ASSERT(shorter.has_value());
            RC_ASSERT(*shorter <= *longer * (1.0 + 1e-12));
        }
    }));
}

TEST(inverter_overload, an_overload_cut_into_pieces_strains_as_much) {
    EXPECT_TRUE(rc::check([] {
        const auto curve = any_curve();
        const LoadMultiple multiple(between(0.8, 3.0));
        const auto lasts = between(0.01, 5.0) * second;
        const auto cut = between(0.0, 1.0) * lasts;
        const auto whole = strain_of(curve, std::vector<OverloadStep>{{multiple, lasts}});
        const auto pieces =
            strain_of(curve, std::vector<OverloadStep>{{multiple, cut}, {multiple, lasts - cut}});
        RC_ASSERT(std::abs(whole.used.value() - pieces.used.value()) <=
                  1e-9 * (1.0 + whole.used.value()));
        RC_ASSERT(whole.above_curve == pieces.above_curve);
    }));
}

TEST(inverter_overload, a_longer_surge_never_strains_more) {
    EXPECT_TRUE(rc::check([] {
        scenario::Inverter unit;
        unit.continuous = 3000.0 * watt;
        unit.surge = between(3000.0, 9000.0) * watt;
        unit.surge_lasts = between(0.01, 20.0) * second;
        const auto brief = overload_curves(unit);
        unit.surge_lasts = *unit.surge_lasts + between(0.0, 30.0) * second;
        const auto lasting = overload_curves(unit);
        const std::vector<OverloadStep> start{
            {LoadMultiple(between(0.5, 3.0)), between(0.01, 3.0) * second}};
        RC_ASSERT(strain_of(lasting.curve.low, start).used <=
                  strain_of(brief.curve.low, start).used);
        RC_ASSERT(strain_of(lasting.curve.low, start).above_curve ==
                  strain_of(brief.curve.low, start).above_curve);
    }));
}

}  // namespace
