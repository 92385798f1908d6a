#include "abreast/lanes.hpp"

#include <algorithm>
#include <cassert>
#include <span>

#include "abreast/alone.hpp"
#include "battery/advance.hpp"
#include "battery/with_cut_off.hpp"

namespace abreast {

namespace {

using battery::Prepared;
using namespace lanes_detail;

class Block {
  public:
    Block(const LaneWorld& world, std::span<const LaneJob> jobs, std::span<LaneEnding> endings,
          Width width)
        : world_(world), jobs_(jobs), endings_(endings), width_(width), running_(jobs.size()) {
        for (std::size_t lane = 0; lane < jobs.size(); ++lane) {
            state_.sun[lane] = 0.0;
            failed_[lane] = false;
            wells_[now_].removed[lane] = world.at_start.removed / units::coulomb;
            wells_[now_].head[lane] = world.at_start.head_difference / units::coulomb;
        }
        begin_day(0);
    }

    void run(LaneCost* cost) {
        int sun_step = -1;
        for (const Segment& segment : world_.segments.all) {
            if (running_ == 0) return;
            if (segment.sun_step != sun_step) shine(sun_step = segment.sun_step);
            if (segment.day != day_) begin_day(segment.day);
            // Any number of packs: what the stride reads of it is the same for all.
            const auto& any = today().front();
            const bool may_charge = brightest_ + segment.charger > segment.taken;
            if (segment.through_inverter)
                stride(width_, wells_[now_], wells_[1 - now_], state_, state_.with_inverter,
                       any.with_inverter, segment, jobs_.size(), may_charge);
            else
                stride(width_, wells_[now_], wells_[1 - now_], state_, state_.direct, any.direct,
                       segment, jobs_.size(), may_charge);
            now_ = 1 - now_;
            if (cost) cost->steps += running_;
            each_alone(std::span(state_.alone).first(jobs_.size()), [&](std::size_t lane) {
                if (failed_[lane]) return;
                if (cost) ++cost->one_by_one;
                take_alone(lane, segment);
            });
        }
    }

    void finish() {
        const units::Duration horizon = world_.segments.horizon;
        for (std::size_t lane = 0; lane < jobs_.size(); ++lane)
            if (!failed_[lane])
                endings_[lane] = {.lasts = horizon, .survives = world_.segments.lasts};
    }

  private:
    const LaneWorld& world_;
    std::span<const LaneJob> jobs_;
    std::span<LaneEnding> endings_;
    Width width_;
    std::size_t running_;
    std::array<LaneWells, 2> wells_;
    std::size_t now_ = 0;
    State state_;
    Lane<bool> failed_;
    double brightest_ = 0.0;  // of the lanes' sun, W
    int day_ = 0;

    const std::vector<ReadyPacks>& today() const {
        return world_.days[static_cast<std::size_t>(day_)];
    }
    const ReadyPacks& packs_of(std::size_t lane) const {
        return today()[static_cast<std::size_t>(jobs_[lane].packs - 1)];
    }

    void begin_day(int day) {
        day_ = day;
        for (std::size_t lane = 0; lane < jobs_.size(); ++lane) {
            const auto& packs = packs_of(lane);
            state_.count[lane] = packs.count;
            state_.resistance[lane] = packs.direct.resistance;
            state_.with_inverter.set(lane, packs.with_inverter);
            state_.direct.set(lane, packs.direct);
            stand(lane, wells_[now_].removed[lane], wells_[now_].head[lane]);
        }
    }

    // A lane that has failed stays in the shade.
    void shine(int step) {
        brightest_ = 0.0;
        for (std::size_t lane = 0; lane < jobs_.size(); ++lane) {
            const bool lit = !jobs_[lane].sun.empty() && !failed_[lane];
            const double sun = lit ? jobs_[lane].sun[static_cast<std::size_t>(step)] : 0.0;
            state_.sun[lane] = sun;
            brightest_ = std::max(brightest_, sun);
        }
    }

    void stand(std::size_t lane, double removed, double head) {
        const auto& pack = packs_of(lane).direct;
        const auto at = battery::state_of(pack, removed, head);
        const auto& available = pack.open_circuit->piece(at.available_piece);
        const auto& bound = pack.open_circuit->piece(at.bound_piece);
        wells_[now_].removed[lane] = removed;
        wells_[now_].head[lane] = head;
        wells_[now_].available[lane] = at.available;
        state_.at_zero[lane] = available.at_zero;
        state_.slope[lane] = available.slope;
        state_.tolerance[lane] = battery::tolerance_on(pack, available);
        state_.available_low[lane] = available.low;
        state_.available_high[lane] = available.high;
        state_.bound_low[lane] = bound.low;
        state_.bound_high[lane] = bound.high;
        state_.coulombic[lane] = battery::coulombic(pack, at);
        state_.least_removed[lane] = battery::next_charging_piece(pack, at);
        state_.most_removed[lane] = pack.coulombic_edge[at.charging_piece];
    }

    // The general step: knots, turns, thresholds. Ends the lane at the first failure.
    void take_alone(std::size_t lane, const Segment& segment) {
        const auto& packs = packs_of(lane);
        Prepared pack = segment.through_inverter ? packs.with_inverter : packs.direct;
        if (pack.cut_off != segment.cut_off)
            battery::set_cut_off(pack, segment.cut_off * units::volt);
        const double offered = state_.sun[lane] + segment.charger;
        const units::Power power = (segment.taken - offered) / state_.count[lane] * units::watt;
        battery::Wells wells{.removed = wells_[now_].removed[lane] * units::coulomb,
                             .head_difference = wells_[now_].head[lane] * units::coulomb};
        // Instants as the clock counts them, so that they end in the same bits.
        const units::Duration end = segment.ends * units::second;
        units::Duration now = segment.begins * units::second;
        while (now < end) {
            const auto step = battery::advance(pack, wells, power, end - now);
            wells = step.wells;
            if (step.ending == battery::Ending::completed) break;
            now = std::min(end, now + step.time);
            if (step.ending == battery::Ending::full) continue;
            failed_[lane] = true;
            --running_;
            endings_[lane] = {
                .lasts = now,
                .undecided = packs.timed && step.ending == battery::Ending::current_limit};
            return;
        }
        stand(lane, wells.removed / units::coulomb, wells.head_difference / units::coulomb);
    }
};

}  // namespace

void run_lanes(const LaneWorld& world, std::span<const LaneJob> jobs, std::span<LaneEnding> endings,
               LaneCost* cost, std::optional<Width> width) {
    assert(jobs.size() <= static_cast<std::size_t>(lanes) && endings.size() == jobs.size());
    if (world.already_empty) {
        std::fill(endings.begin(), endings.end(), LaneEnding{});
        return;
    }
    static const Width widest = widths_here().back();
    Block block(world, jobs, endings, width.value_or(widest));
    block.run(cost);
    block.finish();
}

}  // namespace abreast
