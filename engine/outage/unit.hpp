// The unit as the clock sees it: packs behind one bus, and an inverter on it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "battery/cell/two_well.hpp"
#include "battery/prepared.hpp"
#include "inverter/model.hpp"
#include "scenario/pack.hpp"
#include "units/quantities.hpp"
#include "wiring/fuse.hpp"

namespace outage {

// Packs alike in everything, in parallel. All values are of one pack.
//   setup      its path is the pack's own lead
//   rated      charge the maker states, which the 5 % of a restart refers to
//   usable     charge that may be taken out
struct Bank {
    battery::Arrangement setup;
    int count = 1;
    units::Charge rated{};
    units::Charge usable{};
    std::optional<units::Voltage> cut_off;         // the pack's own protection
    std::optional<units::Current> current_limit;   // continuous
    std::vector<scenario::PulseLimit> pulse = {};  // beyond it, each for its time
    std::optional<units::Current> fuse;
    wiring::Envelope fuse_opens = {};  // empty where only its rating is known
    double fuse_kept = 1.0;            // share of its rating that the warmth of the case leaves
    battery::Wells at_start;
    std::string name;
};

// What the temperature of a day makes of a bank.
struct BankOfDay {
    units::Resistance inner{};
    units::Share reachable{1.0};
    battery::ColdLock locked = {};
    battery::Charging charging;
    std::optional<units::Current> current_limit;
    std::vector<scenario::PulseLimit> pulse = {};
};

//   banks   the first, then the others
struct DayOfUnit {
    units::Duration from{};
    std::vector<BankOfDay> banks;
};

// A fuse or breaker on a way that all packs share.
struct MainFuse {
    units::Current rating{};
    wiring::Envelope opens = {};  // empty where only its rating is known
    double kept = 1.0;            // share of its rating that the warmth of the case leaves
};

//   main_fuse   between the bus and the inverter
//   others   banks that differ from the first, on the same bus
//   main_path   from the bus to the inverter, both conductors: carries its current alone
//   days     in order, the first from 0; empty where the packs keep one temperature. The banks
//            themselves are at the mean of the days then.
struct Unit {
    Bank bank;
    std::vector<Bank> others = {};
    units::Resistance main_path{};
    std::optional<inverter::Model> inverter;
    std::optional<MainFuse> main_fuse = {};
    std::vector<DayOfUnit> days = {};
};

// What the sun offers from one moment on, at the bus.
//   passes   of a controller that passes on a current, whatever the voltage of the bus: that
//            current; offered and clipped are then at the voltage the controller is reckoned at
struct SunChange {
    units::Duration from{};
    units::Power offered{};
    units::Power clipped{};
    units::Current passes{};
};

}  // namespace outage
