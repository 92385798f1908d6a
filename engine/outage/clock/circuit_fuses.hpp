// The fuses that the clock watches besides those of the packs: in front of the inverter, and of the
// circuits of 12 V loads. method.md (13)
#pragma once

#include <functional>
#include <utility>
#include <vector>

#include "outage/clock/overload.hpp"
#include "outage/parts.hpp"
#include "outage/told/account.hpp"
#include "outage/unit.hpp"

namespace outage {

// The voltage of the bus at this moment, for who needs it.
using BusVoltage = std::function<units::Voltage()>;

class MainPathFuse {
  public:
    explicit MainPathFuse(const Unit& unit);
    // Until it opens or is to be looked at again; nothing where it opens now.
    [[nodiscard]] units::Duration stands(const Taken& taken, const BusVoltage& voltage);
    // In the main path, when it was looked at last.
    [[nodiscard]] units::Current carries() const { return carries_; }
    // A leg has passed.
    void pass(const Taken& taken, units::Voltage voltage, units::Duration time);

  private:
    const Unit& unit_;
    Overload stands_;
    units::Current carries_{};
};

class BranchFuses {
  public:
    //   parts   nothing: no circuit has one
    explicit BranchFuses(const Parts* parts);
    [[nodiscard]] bool any() const { return !fuses_.empty(); }
    // The first to open or to be looked at again, and which it is.
    //   is_in   whether a part counts, by its place in Parts::direct
    [[nodiscard]] std::pair<units::Duration, std::size_t> stand(
        units::Duration now, const BusVoltage& voltage,
        const std::function<bool(std::size_t)>& is_in);
    [[nodiscard]] units::Current carries(std::size_t way) const { return fuses_[way].carries; }
    void open(std::size_t way) { fuses_[way].stands = Overload(); }
    void pass(units::Duration time);

  private:
    //   lowest    of the voltages that its loads bear
    //   carries   at this moment, where it is looked at
    struct Fuse {
        Overload stands;
        units::Voltage lowest{};
        units::Current carries{};
    };
    const Parts* ways_of_;
    std::vector<Fuse> fuses_;  // in the order of Parts::ways; empty where none may open
};

}  // namespace outage
