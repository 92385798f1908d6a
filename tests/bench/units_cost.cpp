// The charge step on quantities beside the same arithmetic on plain doubles, for callgrind to
// count (units_cost.sh). Both must also give the same bits.
#include <cstdio>
#include <cstring>

#include "battery/two_well.hpp"

namespace {

using namespace units;

constexpr int steps = 200'000;

// The same lines as battery::after, with every unit struck out.
struct PlainWells {
    double removed;
    double head_difference;
};

struct PlainKinetics {
    double total;
    double available;
    double rate;
};

inline PlainWells plain_after(const PlainKinetics& kinetics, PlainWells wells, double current,
                              double time) {
    const battery::Decay heads = battery::decay(kinetics.rate * time);
    const double head_gain = kinetics.available < 1.0 ? 1.0 / kinetics.available : 0.0;
    return {wells.removed + current * time,
            wells.head_difference * heads.left + current * time * (head_gain * heads.once)};
}

// The step's length changes, so that nothing can be lifted out of the loop.
double seconds_of(int step) {
    return 30.0 + static_cast<double>(step % 97) * 11.0;
}

}  // namespace

extern "C" {

__attribute__((noinline)) void charge_steps_on_quantities(const battery::Kinetics& given,
                                                          battery::Wells& end) {
    const battery::Kinetics kinetics = given;
    battery::Wells wells;
    for (int step = 0; step < steps; ++step) {
        const Current current = (step % 2 == 0 ? 7.0 : -6.5) * ampere;
        wells = battery::after(kinetics, wells, current, seconds_of(step) * second);
    }
    end = wells;
}

__attribute__((noinline)) void charge_steps_on_doubles(const PlainKinetics& given,
                                                       PlainWells& end) {
    const PlainKinetics kinetics = given;
    PlainWells wells{0.0, 0.0};
    for (int step = 0; step < steps; ++step) {
        const double current = step % 2 == 0 ? 7.0 : -6.5;
        wells = plain_after(kinetics, wells, current, seconds_of(step));
    }
    end = wells;
}
}

int main() {
    const battery::Kinetics kinetics{
        .total = 113.0 * ampere_hour, .available = Share(0.345), .rate = 1.02 * per_hour};
    battery::Wells wells;
    PlainWells plain{0.0, 0.0};
    charge_steps_on_quantities(kinetics, wells);
    charge_steps_on_doubles({113.0 * 3600.0, 0.345, 1.02 * (per_hour / hertz)}, plain);
    const double on_quantities[] = {wells.removed / coulomb, wells.head_difference / coulomb};
    const double on_doubles[] = {plain.removed, plain.head_difference};
    const bool same = std::memcmp(on_quantities, on_doubles, sizeof on_doubles) == 0;
    std::printf("same bits: %s\n", same ? "yes" : "no");
    return same ? 0 : 1;
}
