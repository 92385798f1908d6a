// The packs as the clock drives them: like ones lumped to one, unlike ones each with its own wells
// on one bus. Both have the same functions; the clock is written once for either.
#pragma once

#include <optional>
#include <vector>

#include "battery/advance.hpp"
#include "battery/bank.hpp"
#include "outage/clock/overload.hpp"
#include "outage/clock/resting.hpp"
#include "outage/clock/serving.hpp"
#include "outage/unit.hpp"

namespace outage {

// What the packs are asked to do, and so what ends a leg.
enum class Duty { serving_ac, serving_direct, inverter_rested, idle, waiting };

//   charge          out of all packs together, at the bus; negative where it charges
//   in_paths        of energy.in_resistance, what is lost beyond the packs' terminals
//   pack, at_pack   which bank, where one of several ended the leg, and the current of one pack
//   opens           what opens, where the ending is that of a current
struct Leg {
    units::Duration time{};
    battery::Ending ending = battery::Ending::completed;
    std::size_t pack = 0;
    battery::EnergyFlow energy;
    units::Charge charge{};
    units::Energy in_paths{};
    units::Voltage voltage{};
    units::Current at_pack{};
    units::Current largest{};
    units::Power at_most{};
    Overload::Standing opens;
};

// What becomes of a pack that ended a leg.
enum class Opened {
    all,  // it was the last that gave: what is asked cannot be met
    one,  // others go on
};

// What has been charged back so far that it counts: below the usable limit, and since the time
// that wait_for_charge was called last.
struct Restored {
    bool usable = false;
    bool charge = false;
};

// Of the charge that can be had, a unit with no more than this is empty for everybody: the last of
// it lies where the voltage falls away. Ours; 2.8 V a cell, "about 3 %".
inline constexpr double nothing_worth = 0.03;

class LikePacks {
  public:
    explicit LikePacks(const Unit& unit);

    [[nodiscard]] Leg advance(Duty duty, units::Power power, units::Duration time);
    // What advancing would give; the packs stay as they are.
    [[nodiscard]] Leg tried(Duty duty, units::Power power, units::Duration time) const;
    [[nodiscard]] battery::OperatingPoint operating_point(Duty duty, units::Power power) const;
    [[nodiscard]] units::Voltage voltage_at(Duty duty, units::Power power) const {
        return operating_point(duty, power).voltage;
    }
    [[nodiscard]] units::Voltage voltage_at_rest(Duty duty) const {
        return operating_point(duty, {}).voltage;
    }
    // What a meter shows with this power taken: packs that next to nothing is drawn from have come
    // back since they were drawn. battery/method.md (70)
    [[nodiscard]] battery::OperatingPoint shown(Duty duty, units::Power power) const;
    [[nodiscard]] units::Energy stored() const;
    [[nodiscard]] units::StateOfCharge charge() const;
    [[nodiscard]] bool beyond_usable() const { return wells_.removed >= bank_.usable; }
    [[nodiscard]] bool starts_empty() const { return wells_.removed >= most_removed(bank_); }
    // What the ending of a leg by a pack opens; likewise for a current beyond a limit.
    Opened open(const Leg& leg, units::Power) {
        blown_ = leg.opens.fuse;
        watched_ = watched_ || blown_;
        return Opened::all;
    }
    // The opening was tried a moment ago and is no news.
    [[nodiscard]] bool opened_again() const { return false; }
    // The usable limit ends no leg until a twentieth of the charge beneath it is back.
    void pass_usable();
    // A twentieth of the charge from now on is worth an ending.
    void wait_for_charge();
    [[nodiscard]] Restored restored();
    void come_back() { overload_.forget(); }
    // Protections that opened on their current close, for what was too much is gone.
    void close_after_current() { overload_.forget(); }
    // Packs whose wells have come back while less was drawn give again.
    void ask_again() {}
    [[nodiscard]] bool any_gives() const { return true; }
    [[nodiscard]] bool all_ended() const { return false; }  // a leg ends before that
    void demand_is(units::Power) {}
    // The voltages at the bus that 12 V loads bear, and that the inverter needs.
    void lowest_is(units::Voltage lowest, units::Voltage needs);
    // Not even the least could be met for long, not after a rest either.
    [[nodiscard]] bool nothing_left() const;
    // Whether the voltage may rise while this is drawn: by charge, or from well to well.
    [[nodiscard]] bool may_rise(units::Power power) const;
    // Whether this can be had for more than a moment, at more than this voltage.
    //   borne   and forever, by protections and fuses
    [[nodiscard]] bool gives(Duty duty, units::Power power, units::Voltage above, bool borne);
    // The same after a rest without end.
    [[nodiscard]] bool gives_rested(Duty duty, units::Power power, units::Voltage above) const;
    // The unit's day of this number: its temperature from now on.
    void begin_day(std::size_t day);
    // Banks that have come back of themselves since this was asked last.
    [[nodiscard]] std::vector<std::size_t> closed_again() { return {}; }
    [[nodiscard]] std::size_t banks() const { return 1; }
    [[nodiscard]] const Strain& strain() const { return overload_.strain(); }
    // The most that one pack has given and taken so far, by bank.
    [[nodiscard]] std::vector<PackCurrents> currents() const { return {currents_}; }

  private:
    struct Serving {
        battery::Prepared ac, direct, inverter_rested;
    };

    const Unit& unit_;
    Bank bank_;
    double count_;
    double inner_share_;
    battery::Wells wells_;
    Overload overload_;
    Overload charging_;     // the fuse, where what is charged may be too much for it
    bool watched_ = false;  // there is such a fuse
    bool blown_ = false;
    Serving serving_;
    std::vector<Serving> overloaded_;  // by levels passed, from one
    battery::Prepared idle_;
    battery::Prepared waiting_;
    units::Voltage lowest_{};
    units::Voltage needs_{};
    bool usable_passed_ = false;
    std::optional<units::Charge> waits_below_;
    Resting resting_;
    PackCurrents currents_;

    void prepare();
    void set_limits();
    template <class Visit>
    void each_serving(Visit visit);
    [[nodiscard]] battery::Prepared prepared(const battery::Stops& stops) const;
    [[nodiscard]] Leg step(const battery::Prepared& pack, units::Power power, units::Duration time);
    [[nodiscard]] Leg stand(Leg so_far, Duty duty, units::Power power, units::Duration time);
    [[nodiscard]] Leg charge(Duty duty, units::Power power, units::Duration time);
    [[nodiscard]] Leg cut_off_from(Duty duty, units::Power power, units::Duration time);
    [[nodiscard]] const battery::Prepared& at(Duty duty, std::size_t passed = 0) const {
        const Serving& serving = passed == 0 ? serving_ : overloaded_[passed - 1];
        switch (duty) {
            case Duty::serving_ac:
                return serving.ac;
            case Duty::serving_direct:
                return serving.direct;
            case Duty::inverter_rested:
                return serving.inverter_rested;
            case Duty::idle:
                return idle_;
            case Duty::waiting:
                break;
        }
        return waiting_;
    }
};

class UnlikePacks {
  public:
    explicit UnlikePacks(const Unit& unit);
    // Packs of this unit that have come so far, on this of its days, without any of them opening.
    UnlikePacks(const Unit& unit, std::size_t day, battery::Bank bank);

    [[nodiscard]] Leg advance(Duty duty, units::Power power, units::Duration time);
    // What advancing would give; the packs stay as they are.
    [[nodiscard]] Leg tried(Duty duty, units::Power power, units::Duration time) const {
        UnlikePacks trial = *this;
        return trial.advance(duty, power, time);
    }
    [[nodiscard]] battery::OperatingPoint operating_point(Duty duty, units::Power power);
    [[nodiscard]] units::Voltage voltage_at(Duty duty, units::Power power) const {
        UnlikePacks trial = *this;
        return trial.operating_point(duty, power).voltage;
    }
    [[nodiscard]] units::Voltage voltage_at_rest(Duty) { return bank_.voltage_at_rest(); }
    [[nodiscard]] battery::OperatingPoint shown(Duty duty, units::Power power);
    // Out of one pack of the bank, at the operating point asked for last.
    [[nodiscard]] units::Current current_of(std::size_t bank) const {
        return bank_.current_of(bank);
    }
    [[nodiscard]] units::Energy stored() const { return bank_.stored_to_rounding(); }
    [[nodiscard]] units::StateOfCharge charge() const;
    [[nodiscard]] bool beyond_usable() const { return bank_.removed() >= usable_; }
    [[nodiscard]] bool starts_empty() const { return bank_.removed() >= most_removed_of_all(); }
    Opened open(const Leg& leg, units::Power demanded);
    [[nodiscard]] bool opened_again() const { return opened_again_; }
    void pass_usable() { usable_passed_ = true; }
    void wait_for_charge();
    [[nodiscard]] Restored restored();
    void ask_again();
    [[nodiscard]] bool any_gives() const { return bank_.any_gives(); }
    // Each is empty or open on low voltage, and has not come back.
    [[nodiscard]] bool all_ended() const;
    void lowest_is(units::Voltage lowest, units::Voltage needs) {
        lowest_ = lowest;
        needs_ = needs;
    }
    [[nodiscard]] bool nothing_left() const;
    [[nodiscard]] bool may_rise(units::Power power) const;
    [[nodiscard]] bool gives(Duty duty, units::Power power, units::Voltage above, bool borne);
    [[nodiscard]] bool gives_rested(Duty duty, units::Power power, units::Voltage above) const;
    // Everything that is not blown gives again.
    void come_back();
    void close_after_current();
    // Packs that opened on more than this close again.
    void demand_is(units::Power demanded);
    void begin_day(std::size_t day);
    [[nodiscard]] std::vector<std::size_t> closed_again();
    [[nodiscard]] std::size_t banks() const { return banks_.size(); }
    [[nodiscard]] const Strain& strain() const;
    [[nodiscard]] std::vector<PackCurrents> currents() const;

  private:
    enum class State { closed, empty, low, over_current, blown };

    const Unit& unit_;
    std::vector<Bank> banks_;
    std::optional<units::Voltage> restart_;
    units::Voltage lowest_{};
    units::Voltage needs_{};
    bool usable_passed_ = false;
    battery::Bank bank_;
    std::vector<State> states_;
    std::vector<units::Power> opened_at_;
    std::vector<Overload> overloads_;
    std::vector<Overload> charging_;  // their fuses, for what charges them
    bool watched_ = false;            // some fuse may carry too much of it
    bool any_running_ = false;  // of these; looked at again after each time something is stood
    std::vector<std::size_t> closed_again_;
    std::vector<bool> tried_;  // closed again by ask_again, and has not given yet
    bool opened_again_ = false;
    std::optional<units::Charge> waits_below_;
    std::vector<Resting> resting_;
    units::Charge usable_{};  // of all packs, likewise the next
    units::Charge rated_{};

    [[nodiscard]] battery::BankStops stops(Duty duty) const;
    [[nodiscard]] units::Charge most_removed_of_all() const;
    void look_who_runs();
    [[nodiscard]] Leg step(Duty duty, units::Power power, units::Duration time);
    void pass_rest(const std::vector<units::Charge>& removed_before, units::Duration time);
    // The overload that opens first, and which bank's it is.
    struct Due {
        Overload::Standing standing;
        std::size_t whose = 0;
    };
    [[nodiscard]] std::vector<units::Current> currents_at(units::Power power);
    [[nodiscard]] Due due(const std::vector<units::Current>& currents);
    void pass_overloads(const std::vector<units::Current>& before, units::Duration time);
    [[nodiscard]] Leg stand(Leg so_far, Duty duty, units::Power power, units::Duration time);
    void refit(std::size_t bank);
    void set(std::size_t bank, State state);
    [[nodiscard]] std::optional<units::Charge> ends_below() const;
};

// ---- LikePacks, inline: the clock's inner loop.

// A leg of packs that go as one, from the step of one of them.
//   inner_share   of what is lost in a pack and its path, inside the pack
[[nodiscard]] inline Leg leg_of(const battery::Advanced& step, double count, double inner_share) {
    return {.time = step.time,
            .ending = step.ending,
            .energy = {.delivered = count * step.energy.delivered,
                       .accepted = count * step.energy.accepted,
                       .unaccepted = count * step.energy.unaccepted,
                       .in_resistance = count * step.energy.in_resistance,
                       .between_wells = count * step.energy.between_wells,
                       .in_charging = count * step.energy.in_charging},
            .charge = count * (step.charge_out - step.charge_in),
            .in_paths = (1.0 - inner_share) * count * step.energy.in_resistance,
            .voltage = step.voltage,
            .at_pack = step.largest,
            .largest = step.largest,
            .at_most = count * step.at_most};
}

inline Leg LikePacks::step(const battery::Prepared& pack, units::Power power,
                           units::Duration time) {
    const auto step = battery::advance(pack, wells_, power / count_, time);
    wells_ = step.wells;
    auto& borne = power < units::Power{} ? currents_.taken : currents_.given;
    if (step.time > units::Duration{}) borne = std::max(borne, step.largest);
    if (resting_.comes_back()) resting_.pass(step.charge_out - step.charge_in, step.time);
    return leg_of(step, count_, inner_share_);
}

inline Leg LikePacks::tried(Duty duty, units::Power power, units::Duration time) const {
    if (!overload_.running() && !(watched_ && power < units::Power{})) [[likely]] {
        const auto step = battery::advance(at(duty), wells_, power / count_, time);
        if (step.ending != battery::Ending::current_limit) [[likely]]
            return leg_of(step, count_, inner_share_);
    }
    LikePacks trial = *this;
    return trial.advance(duty, power, time);
}

inline Leg LikePacks::advance(Duty duty, units::Power power, units::Duration time) {
    if (overload_.running()) [[unlikely]]
        return stand({}, duty, power, time);
    if (watched_ && power < units::Power{}) [[unlikely]]
        return charge(duty, power, time);
    Leg leg = step(at(duty), power, time);
    if (leg.ending != battery::Ending::current_limit) [[likely]]
        return leg;
    overload_.rise();
    return stand(leg, duty, power, time);
}

inline battery::OperatingPoint LikePacks::operating_point(Duty duty, units::Power power) const {
    if (blown_) power = units::Power{};
    auto point = battery::operating_point(at(duty), wells_, power / count_);
    point.current *= count_;
    return point;
}

}  // namespace outage
