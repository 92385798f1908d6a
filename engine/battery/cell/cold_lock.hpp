// How much of a pack's charge the cold keeps back, by how fast it is drawn: what is locked at one
// current comes free at a lower one. method.md (20) to (22), (54)
#pragma once

#include <array>
#include <cstddef>
#include <span>

#include "scenario/pack.hpp"
#include "units/quantities.hpp"

namespace battery {

// Straight between at most six rates, level beyond the first and the last.
class ColdLock {
  public:
    static constexpr std::size_t most_knots = 6;

    //   rate     current over the rated charge
    //   locked   part of the charge, not falling from one rate to the next
    struct Knot {
        units::Frequency rate{};
        units::Share locked{};
    };

    // Nothing is locked.
    ColdLock() = default;
    // One share at every rate.
    explicit ColdLock(units::Share locked);
    //   knots   one to six, in order of their rates
    //   rated   above zero
    ColdLock(std::span<const Knot> knots, units::Charge rated);

    [[nodiscard]] bool by_rate() const { return locked_[0] != locked_[count_ - 1]; }
    [[nodiscard]] double least() const { return locked_[0]; }
    [[nodiscard]] double most() const { return locked_[count_ - 1]; }
    // Of a pack that holds so many times the charge.
    [[nodiscard]] ColdLock of_more_charge(double times) const {
        ColdLock more = *this;
        for (double& rate : more.amperes_)
            rate *= times;
        return more;
    }
    [[nodiscard]] units::Share at(units::Current current) const {
        return units::Share(at_amperes(current / units::ampere));
    }
    [[nodiscard]] double at_amperes(double current) const {
        std::size_t next = 0;
        while (next < count_ && amperes_[next] < current)
            ++next;
        if (next == 0) return locked_[0];
        if (next == count_) return locked_[count_ - 1];
        const double part = (current - amperes_[next - 1]) / (amperes_[next] - amperes_[next - 1]);
        return locked_[next - 1] + part * (locked_[next] - locked_[next - 1]);
    }

    friend bool operator==(const ColdLock&, const ColdLock&) = default;

  private:
    std::array<double, most_knots> amperes_{};
    std::array<double, most_knots> locked_{};
    std::size_t count_ = 1;
};

// Of a pack of this rated charge at the temperature of its cells; never the whole of it.
//   source  LiFePO4 (20), AGM [AGM temperature table] and [AGM 100 Ah sheet], gel [Lead-acid support page], flooded [IEEE 485]
[[nodiscard]] ColdLock cold_lock(scenario::Chemistry chemistry, units::Temperature temperature,
                                 units::Charge rated);

}  // namespace battery
