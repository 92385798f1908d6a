// The shipped stride against one written by hand for each width of the processor: the same lanes,
// the same step, ten thousand times over; nanoseconds a lane step, and the ratio.
#include <cstdio>
#include <ctime>

#include "raw_kernel.hpp"

#include "scenario/file/read.hpp"
#include "sizing/builds/design.hpp"

namespace {

using namespace sizing;
using namespace abreast;
using namespace abreast::lanes_detail;

template <class Work>
double ns_a_step(const Work& work) {
    constexpr int times = 20000;
    double best = 1e12;
    for (int turn = 0; turn < 7; ++turn) {
        const auto begins = std::clock();
        for (int i = 0; i < times; ++i)
            work();
        best = std::min(best, 1e9 * double(std::clock() - begins) / CLOCKS_PER_SEC / times / 64.0);
    }
    return best;
}

}  // namespace

int main(int count, char** arguments) {
    const std::string file = count > 1 ? arguments[1] : "scenarios/ice_storm.toml";
    const auto read = scenario::read_scenario_file(file, {});
    if (!read) return 1;
    const auto design = make_design(read->scenario, {}, 16, 4);
    if (!design) return 1;
    const auto& world = design->lit;
    const auto& pack = world.days.front().front().with_inverter;
    // the hand-written one knows packs of one well and one efficiency
    if (pack.bound > 0.0 || std::isfinite(pack.coulombic_edge[1])) return 1;
    // Lanes half full and not at a knot; an eighth of them in the sun.
    LaneWells wells;
    LaneWells after;
    State state{};
    raw::Lanes raw_wells;
    raw::Lanes raw_after;
    raw::Given given;
    for (std::size_t lane = 0; lane < lanes; ++lane) {
        const auto& packs = world.days.front()[lane % 16];
        const double removed = (0.30 + 0.005 * double(lane)) * pack.total;
        const auto at = battery::state_of(pack, removed, 0.0);
        const auto& piece = pack.open_circuit->piece(at.available_piece);
        wells.removed[lane] = removed;
        wells.head[lane] = 0.0;
        wells.available[lane] = at.available;
        state.at_zero[lane] = piece.at_zero;
        state.slope[lane] = piece.slope;
        state.tolerance[lane] = battery::tolerance_on(pack, piece);
        state.available_low[lane] = state.bound_low[lane] = piece.low;
        state.available_high[lane] = state.bound_high[lane] = piece.high;
        state.count[lane] = packs.count;
        state.resistance[lane] = packs.direct.resistance;
        state.sun[lane] = lane % 8 == 0 ? 300.0 : 0.0;
        state.with_inverter.set(lane, packs.with_inverter);
    }
    raw_wells.removed = wells.removed;
    raw_wells.available = wells.available;
    given.at_zero = state.at_zero;
    given.slope = state.slope;
    given.tolerance = state.tolerance;
    given.low = state.available_low;
    given.high = state.available_high;
    given.count = state.count;
    given.resistance = state.resistance;
    given.sun = state.sun;
    given.near_voltage = state.with_inverter.near_voltage;
    given.near_per_watt = state.with_inverter.near_per_watt;
    given.limit_voltage = state.with_inverter.limit_voltage;
    given.limit_per_watt = state.with_inverter.limit_per_watt;
    Segment segment = world.segments.all.front();
    segment.taken = 120.0;
    given.time = segment.time;
    given.taken = segment.taken;
    given.per_total = pack.per_total;
    given.fill_per_ampere = segment.fill_per_ampere;
    given.coulombic = pack.coulombic.front();
    given.charge_floor = pack.charge_floor;
    given.absorption = pack.absorption;
    given.empty_voltage = pack.empty_voltage;
    given.removed_above = pack.removed_above;

    constexpr const char* names[] = {"2", "4", "8"};
    constexpr void (*by_hand[])(const raw::Lanes&, raw::Lanes&, const raw::Given&) = {
        raw::two, raw::four, raw::eight};
    for (const auto width : widths_here()) {
        const auto index = std::size_t(width);
        for (const bool sunlit : {true, false}) {
            if (!sunlit) state.sun = given.sun = {};
            const double shipped = ns_a_step([&] {
                stride(width, wells, after, state, state.with_inverter, pack, segment, lanes,
                       sunlit);
            });
            const double raw_ns = ns_a_step([&] { by_hand[index](raw_wells, raw_after, given); });
            std::size_t same = 0;
            for (std::size_t lane = 0; lane < lanes; ++lane)
                same += after.removed[lane] == raw_after.removed[lane] ? 1 : 0;
            std::printf(
                "%s at once, %s: shipped %.2f ns, by hand %.2f ns, ratio %.2f; %zu of %d "
                "lanes to the same bit\n",
                names[index], sunlit ? "by day  " : "by night", shipped, raw_ns, shipped / raw_ns,
                same, lanes);
        }
        for (std::size_t lane = 0; lane < lanes; lane += 8)
            state.sun[lane] = given.sun[lane] = 300.0;
    }
    return 0;
}
