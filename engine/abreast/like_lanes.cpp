#include "abreast/like_lanes.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cassert>
#include <cstdint>
#include <memory>

#include "abreast/ends.hpp"
#include "abreast/stride.hpp"
#include "battery/advance.hpp"
#include "battery/decay.hpp"
#include "battery/with_cut_off.hpp"
#include "outage/clock/current_source.hpp"
#include "outage/clock/packs.hpp"
#include "outage/clock/serving.hpp"

namespace abreast::lanes_detail {

void OwnPacks::set(std::size_t lane, const Prepared& pack) {
    per_total[lane] = pack.per_total;
    bound[lane] = pack.bound;
    bound_gain[lane] = pack.bound_gain;
    width[lane] = pack.width;
    head_gain[lane] = pack.head_gain;
    rate[lane] = pack.rate;
    inner[lane] = pack.inner;
    floor[lane] = pack.charge_floor;
    absorption[lane] = pack.absorption;
    empty[lane] = pack.empty_voltage;
    removed_above[lane] = pack.removed_above;
    filled_to[lane] = pack.filled_to;
    charging_empty[lane] = pack.charging_empty;
    charging_rise[lane] = pack.charging_rise;
    per_rated[lane] = pack.per_rated;
    charging_knee[lane] = pack.charging_knee;
    charging_beyond[lane] = pack.charging_beyond;
    as_rested_to[lane] = pack.as_rested_to;
    everywhere[lane] = pack.coulombic[0];
}

namespace {

using namespace units;
using outage::LimitedBy;

Build build_of(const outage::Bank& bank) {
    const auto& setup = bank.setup;
    return {.two_wells =
                setup.kinetics
                    .available<Share(1.0), .one_efficiency = setup.charging.coulombic.pieces() == 1,
                               .resists = setup.charging.resistance.when_empty>
                        Resistance{}};
}

// The packs of a lane on a day, ready to serve: through the inverter, and 12 V loads alone; with
// the highest voltage that cuts off in any step, so that what is far from it is far from each.
struct OneLane {
    const Outage* outage = nullptr;
    double lowest = 0.0;  // V; the highest that 12 V loads ask for in any step
    double needs = 0.0;   // V; likewise the inverter
    bool over = false;
    outage::Bank bank;
    Prepared with_inverter;
    Prepared direct;
};

class Block {
  public:
    Block(std::span<const Outage> outages, std::span<OwnEnding> endings, std::span<bool> decided,
          Width width, Watched* watched)
        : endings_(endings),
          decided_(decided),
          width_(width),
          running_(outages.size()),
          watched_(watched) {
        of_.resize(outages.size());
        packs_->build = build_of(outages.front().unit->bank);
        rate_ = outages.front().unit->bank.setup.kinetics.rate;
        one_rate_ = std::ranges::all_of(outages, [&](const Outage& outage) {
            return outage.unit->bank.setup.kinetics.rate == rate_;
        });
        for (std::size_t lane = 0; lane < outages.size(); ++lane) {
            of_[lane].outage = &outages[lane];
            of_[lane].lowest = outages[lane].most->lowest;
            of_[lane].needs = outages[lane].most->needs;
            const auto& wells = outages[lane].unit->bank.at_start;
            wells_[now_].removed[lane] = wells.removed / coulomb;
            wells_[now_].head[lane] = wells.head_difference / coulomb;
            state_.sun[lane] = 0.0;
            begin_day(lane, 0);
            const auto& bank = of_[lane].bank;
            if (wells.removed >= bank.usable)
                end(lane, {}, LimitedBy::usable);
            else if (outage::starts_empty(bank))
                end(lane, {}, LimitedBy::charge);
        }
    }

    void run(std::span<const Stretch> over, LaneCost& cost) {
        std::size_t step = over.size();
        std::size_t light = over.size();
        bool may_charge = false;
        for (const Stretch& stretch : over) {
            if (running_ == 0) return;
            show(stretch.begins);
            const bool first = &stretch == &over.front();
            if (stretch.day != day_) {
                day_ = stretch.day;
                for (std::size_t lane = 0; lane < of_.size(); ++lane)
                    if (!of_[lane].over) begin_day(lane, day_);
            }
            const bool asked = first || stretch.step != step;
            const bool lit = first || stretch.light != light;
            if (asked) ask(step = stretch.step, stretch);
            if (lit) shine(light = stretch.light);
            if (asked || lit) {
                may_charge = some_may_charge();
                hold_back();
            }
            own_stride(width_, wells_[now_], wells_[1 - now_], state_,
                       through_ ? state_.with_inverter : state_.direct, *packs_,
                       {.time = stretch.time,
                        .alike = one_rate_,
                        .decayed = battery::decay(rate_ / hertz * stretch.time)},
                       of_.size(), may_charge);
            now_ = 1 - now_;
            cost.steps += running_;
            if (watched_) take_sun(stretch.time);
            each_alone([&](std::size_t lane) {
                ++cost.one_by_one;
                take_alone(lane, stretch);
            });
        }
        if (!over.empty()) show(over.back().ends);
    }

    void finish(Duration lasts) {
        for (std::size_t lane = 0; lane < of_.size(); ++lane)
            if (!of_[lane].over) endings_[lane] = {.lasts = lasts, .survives = true};
    }

  private:
    std::span<OwnEnding> endings_;
    std::span<bool> decided_;
    Width width_;
    std::size_t running_;
    Watched* watched_;
    Lane<double> sun_taken_{};  // J, where somebody watches
    std::array<LaneWells, 2> wells_;
    std::size_t now_ = 0;
    State state_;
    std::unique_ptr<OwnPacks> packs_ = std::make_unique<OwnPacks>();
    std::vector<OneLane> of_;
    Lane<const outage::SunChange*> lights_{};
    Lane<bool> passing_{};
    Lane<bool> beside_{};  // steps alone, whatever it meets
    bool some_are_beside_ = false;
    Frequency rate_{};  // of the first
    bool one_rate_ = true;
    std::size_t day_ = 0;
    bool through_ = false;

    // To who watches: where those that have not failed have come to, when such a moment is there.
    void show(double now) {
        for (; watched_ != nullptr && watched_->is_due(now); ++watched_->next)
            for (std::size_t lane = 0; lane < of_.size(); ++lane)
                if (!of_[lane].over)
                    watched_->seen[lane].push_back(
                        {.wells = {{.removed = wells_[now_].removed[lane] * coulomb,
                                    .head_difference = wells_[now_].head[lane] * coulomb}},
                         .sun_taken = sun_taken_[lane] * joule});
    }
    // All that the sun offers is taken, but where a lane is taken alone.
    void take_sun(double time) {
        for (std::size_t lane = 0; lane < of_.size(); ++lane)
            sun_taken_[lane] += state_.sun[lane] * time;
    }

    const Need& need(std::size_t lane, std::size_t step) const {
        return of_[lane].outage->needs[step];
    }

    void begin_day(std::size_t lane, std::size_t day) {
        OneLane& of = of_[lane];
        const auto& unit = *of.outage->unit;
        of.bank = outage::on_day(unit, 0, day);
        of.with_inverter = outage::serving(of.bank, true, of.lowest * volt, of.needs * volt);
        of.direct = outage::serving(of.bank, false, of.lowest * volt, {});
        state_.count[lane] = of.bank.count;
        state_.resistance[lane] = of.direct.resistance;
        state_.with_inverter.set(lane, of.with_inverter);
        state_.direct.set(lane, of.direct);
        packs_->set(lane, of.direct);
        packs_->drift_tolerance = of.direct.drift_tolerance;
        stand(lane, wells_[now_].removed[lane], wells_[now_].head[lane]);
    }

    void ask(std::size_t step, const Stretch& stretch) {
        through_ = need(0, step).through_inverter;
        for (std::size_t lane = 0; lane < of_.size(); ++lane) {
            const Need& asked = need(lane, step);
            packs_->taken[lane] = asked.taken;
            packs_->charger[lane] = asked.charger;
            if (!asked.carried && !of_[lane].over)
                end(lane, stretch.begins * second, LimitedBy::inverter_limit);
        }
    }

    // A lane that has ended stays in the shade. A current that is passed on makes a power that the
    // packs' voltage decides: such a lane steps alone.
    void shine(std::size_t light) {
        passing_.fill(false);
        for (std::size_t lane = 0; lane < of_.size(); ++lane) {
            state_.sun[lane] = 0.0;
            const auto sun = of_[lane].outage->sun;
            if (of_[lane].over || sun.empty()) continue;
            lights_[lane] = &sun[light];
            if (sun[light].passes > Current{})
                passing_[lane] = true;
            else
                state_.sun[lane] = sun[light].offered / watt;
        }
    }

    // Beside the others go lanes whose power their voltage decides, and, where somebody watches,
    // those whose packs may not take all that the sun has left over: a step of a lane alone tells
    // how much they took.
    void hold_back() {
        some_are_beside_ = false;
        for (std::size_t lane = 0; lane < of_.size(); ++lane) {
            beside_[lane] =
                passing_[lane] ||
                (watched_ != nullptr && state_.sun[lane] > 0.0 &&
                 leaves_some(state_.sun[lane] + packs_->charger[lane] - packs_->taken[lane],
                             -state_.count[lane] * packs_->floor[lane], packs_->absorption[lane]));
            some_are_beside_ = some_are_beside_ || beside_[lane];
        }
    }

    bool some_may_charge() const {
        for (std::size_t lane = 0; lane < of_.size(); ++lane)
            if (state_.sun[lane] + packs_->charger[lane] > packs_->taken[lane]) return true;
        return false;
    }

    // Lanes whose step must be taken alone, eight looked at together.
    template <class Visit>
    void each_alone(Visit visit) {
        for (std::size_t begins = 0; begins < of_.size(); begins += 8) {
            const std::size_t ends = std::min(begins + 8, of_.size());
            std::uint64_t any = 0;
            for (std::size_t lane = begins; lane < ends; ++lane)
                any |= std::bit_cast<std::uint64_t>(state_.alone[lane]);
            if (any == 0 && !some_are_beside_) continue;
            for (std::size_t lane = begins; lane < ends; ++lane)
                if ((state_.alone[lane] != 0.0 || beside_[lane]) && !of_[lane].over) visit(lane);
        }
    }

    void end(std::size_t lane, Duration lasts, LimitedBy why) {
        of_[lane].over = true;
        --running_;
        endings_[lane] = {.lasts = lasts, .survives = false, .limited_by = why};
    }
    void leave_to_the_clock(std::size_t lane) {
        of_[lane].over = true;
        --running_;
        decided_[lane] = false;
    }

    void stand(std::size_t lane, double removed, double head) {
        const auto& pack = of_[lane].direct;
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

    // As outage::LikePacks::nothing_left.
    static bool nothing_left(const outage::Bank& bank, const battery::Wells& wells) {
        return wells.removed >=
               (bank.setup.reachable.value() - outage::nothing_worth) * bank.setup.kinetics.total;
    }

    // W at the bus of a current that is passed on, on the mean over a leg; as outage::Clock has it.
    double passed(std::size_t lane, const Prepared& pack, const battery::Wells& wells,
                  const Need& asked, Duration leg) const {
        const auto& sun = *lights_[lane];
        const double count = state_.count[lane];
        const Power without = (asked.taken - asked.charger) * watt;
        const Power now = outage::power_passed(sun.passes, without, sun.offered, [&](Power net) {
            return battery::operating_point(pack, wells, net / count).voltage;
        });
        return outage::power_passed(
                   sun.passes, without, now,
                   [&](Power net) {
                       const auto step = battery::advance(pack, wells, net / count, leg);
                       return outage::mean_voltage(outage::leg_of(step, count, 1.0));
                   }) /
               watt;
    }

    // The general step of a pack: knots, turns, thresholds. Ends the lane at its first failure.
    void take_alone(std::size_t lane, const Stretch& stretch) {
        using battery::Ending;
        OneLane& of = of_[lane];
        const Need& asked = need(lane, stretch.step);
        Prepared& pack = through_ ? of.with_inverter : of.direct;
        const Voltage cut_off =
            outage::cut_off_of(through_, asked.lowest * volt, asked.needs * volt);
        if (pack.cut_off != cut_off / volt) battery::set_cut_off(pack, cut_off);
        // where the stride began: it knows nothing of a current that is passed on
        const LaneWells& from = wells_[1 - now_];
        battery::Wells wells{.removed = from.removed[lane] * coulomb,
                             .head_difference = from.head[lane] * coulomb};
        // Instants as the clock counts them, so that they end in the same bits.
        const Duration until = stretch.ends * second;
        Duration now = stretch.begins * second;
        if (watched_) sun_taken_[lane] -= state_.sun[lane] * stretch.time;
        while (now < until) {
            const double sun =
                passing_[lane] ? passed(lane, pack, wells, asked, until - now) : state_.sun[lane];
            const Power net = (asked.taken - (sun + asked.charger)) * watt;
            const auto step = battery::advance(pack, wells, net / state_.count[lane], until - now);
            wells = step.wells;
            sun_taken_[lane] += taken_of_sun(sun, asked.charger, asked.taken, step.time / second,
                                             state_.count[lane] * (step.energy.accepted / joule));
            if (step.ending == Ending::completed) break;
            now = std::min(until, now + step.time);
            const auto ends_by = [&](LimitedBy why, bool empty) {
                end(lane, now, limited_by(asked, why, empty));
            };
            switch (step.ending) {
                case Ending::full:
                    continue;
                case Ending::usable_limit:
                    end(lane, now, LimitedBy::usable);
                    return;
                case Ending::cut_off:
                    ends_by(LimitedBy::low_voltage, nothing_left(of.bank, wells));
                    return;
                case Ending::cannot_be_delivered: {
                    const bool empty = nothing_left(of.bank, wells);
                    ends_by(empty ? LimitedBy::charge : LimitedBy::low_voltage, empty);
                    return;
                }
                case Ending::available_well_empty:
                    ends_by(LimitedBy::charge, nothing_left(of.bank, wells));
                    return;
                case Ending::pack_cut_off:
                    end(lane, now, LimitedBy::low_voltage);
                    return;
                default:
                    leave_to_the_clock(lane);
                    return;
            }
        }
        stand(lane, wells.removed / coulomb, wells.head_difference / coulomb);
    }
};

}  // namespace

bool built_alike(const outage::Unit& one, const outage::Unit& other) {
    return build_of(one.bank) == build_of(other.bank);
}

void run_likes(std::span<const Outage> outages, std::span<const Stretch> over, Duration lasts,
               std::span<OwnEnding> endings, std::span<bool> decided, LaneCost& cost, Width width,
               Watched* watched) {
    assert(outages.size() <= std::size_t(lanes) && endings.size() == outages.size());
    std::ranges::fill(decided, true);
    Block block(outages, endings, decided, width, watched);
    block.run(over, cost);
    block.finish(lasts);
}

}  // namespace abreast::lanes_detail
