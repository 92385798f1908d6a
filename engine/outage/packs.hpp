// The packs as the clock drives them: like ones lumped to one, unlike ones each with its own wells
// on one bus. Both have the same functions; the clock is written once for either.
#pragma once

#include <optional>
#include <vector>

#include "battery/advance.hpp"
#include "battery/bank.hpp"
#include "outage/serving.hpp"
#include "outage/unit.hpp"

namespace outage {

// What the packs are asked to do, and so what ends a leg.
enum class Duty { serving_ac, serving_direct, inverter_rested, idle, waiting };

//   in_paths        of energy.in_resistance, what is lost beyond the packs' terminals
//   pack, at_pack   which bank, where one of several ended the leg, and the current of one pack
//   current         out of all packs
struct Leg {
    units::Duration time{};
    battery::Ending ending = battery::Ending::completed;
    std::size_t pack = 0;
    battery::EnergyFlow energy;
    units::Energy in_paths{};
    units::Voltage voltage{};
    units::Current at_pack{};
    units::Current largest{};
    units::Power at_most{};
};

// What becomes of a pack that ended a leg.
enum class Opened {
    all,  // it was the last that gave: the supply ends
    one,  // others go on
};

class LikePacks {
  public:
    explicit LikePacks(const Unit& unit);

    [[nodiscard]] Leg advance(Duty duty, units::Power power, units::Duration time);
    [[nodiscard]] battery::OperatingPoint operating_point(Duty duty, units::Power power) const;
    [[nodiscard]] units::Voltage voltage_at_rest(Duty duty) const {
        return operating_point(duty, {}).voltage;
    }
    [[nodiscard]] units::Energy stored() const;
    [[nodiscard]] units::StateOfCharge charge() const;
    [[nodiscard]] bool beyond_usable() const { return wells_.removed >= most_removed(unit_.bank); }
    // What the ending of a leg by a pack opens; likewise for a current beyond a limit.
    Opened open(const Leg&, units::Power) { return Opened::all; }
    [[nodiscard]] bool blows(std::size_t) const { return fuse_is_first(unit_.bank); }
    void wait_for_charge();
    void come_back() {}
    void demand_is(units::Power) {}
    // Banks that have come back of themselves since this was asked last.
    [[nodiscard]] std::vector<std::size_t> closed_again() { return {}; }
    [[nodiscard]] std::size_t banks() const { return 1; }

  private:
    const Unit& unit_;
    double count_;
    double inner_share_;
    battery::Wells wells_;
    battery::Prepared serving_ac_;
    battery::Prepared serving_direct_;
    battery::Prepared inverter_rested_;
    battery::Prepared idle_;
    battery::Prepared waiting_;

    [[nodiscard]] battery::Prepared prepared(const battery::Stops& stops) const;
    [[nodiscard]] const battery::Prepared& at(Duty duty) const {
        switch (duty) {
            case Duty::serving_ac:
                return serving_ac_;
            case Duty::serving_direct:
                return serving_direct_;
            case Duty::inverter_rested:
                return inverter_rested_;
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

    [[nodiscard]] Leg advance(Duty duty, units::Power power, units::Duration time);
    [[nodiscard]] battery::OperatingPoint operating_point(Duty duty, units::Power power);
    [[nodiscard]] units::Voltage voltage_at_rest(Duty) { return bank_.voltage_at_rest(); }
    // Out of one pack of the bank, at the operating point asked for last.
    [[nodiscard]] units::Current current_of(std::size_t bank) const {
        return bank_.current_of(bank);
    }
    [[nodiscard]] units::Energy stored() const { return bank_.stored_to_rounding(); }
    [[nodiscard]] units::StateOfCharge charge() const;
    [[nodiscard]] bool beyond_usable() const { return bank_.removed() >= most_removed_of_all(); }
    Opened open(const Leg& leg, units::Power demanded);
    [[nodiscard]] bool blows(std::size_t bank) const { return fuse_is_first(banks_[bank]); }
    void wait_for_charge();
    // Everything that is not blown gives again.
    void come_back();
    // Packs that opened on more than this close again.
    void demand_is(units::Power demanded);
    [[nodiscard]] std::vector<std::size_t> closed_again();
    [[nodiscard]] std::size_t banks() const { return banks_.size(); }

  private:
    enum class State { closed, empty, over_current, blown };

    std::vector<Bank> banks_;
    std::optional<units::Voltage> cut_off_;
    std::optional<units::Voltage> restart_;
    battery::Bank bank_;
    std::vector<State> states_;
    std::vector<units::Power> opened_at_;
    std::vector<std::size_t> closed_again_;
    units::Charge waits_below_{};
    units::Charge usable_{};  // of all packs, likewise the next
    units::Charge rated_{};

    [[nodiscard]] battery::BankStops stops(Duty duty) const;
    [[nodiscard]] units::Charge most_removed_of_all() const;
    void set(std::size_t bank, State state);
};

// ---- LikePacks, inline: the clock's inner loop.

inline Leg LikePacks::advance(Duty duty, units::Power power, units::Duration time) {
    const auto step = battery::advance(at(duty), wells_, power / count_, time);
    wells_ = step.wells;
    return {.time = step.time,
            .ending = step.ending,
            .energy = {.delivered = count_ * step.energy.delivered,
                       .accepted = count_ * step.energy.accepted,
                       .unaccepted = count_ * step.energy.unaccepted,
                       .in_resistance = count_ * step.energy.in_resistance,
                       .between_wells = count_ * step.energy.between_wells,
                       .in_charging = count_ * step.energy.in_charging},
            .in_paths = (1.0 - inner_share_) * count_ * step.energy.in_resistance,
            .voltage = step.voltage,
            .at_pack = step.largest,
            .largest = step.largest,
            .at_most = count_ * step.at_most};
}

inline battery::OperatingPoint LikePacks::operating_point(Duty duty, units::Power power) const {
    auto point = battery::operating_point(at(duty), wells_, power / count_);
    point.current *= count_;
    return point;
}

}  // namespace outage
