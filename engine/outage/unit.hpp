// The unit as the clock sees it: packs behind one bus, and an inverter on it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "battery/prepared.hpp"
#include "battery/two_well.hpp"
#include "inverter/model.hpp"
#include "units/quantities.hpp"

namespace outage {

// Packs alike in everything, in parallel. All values are of one pack.
//   setup      its path is the pack's own lead and, where all packs of the unit are alike, `count`
//              times what all packs share
//   rated      charge the maker states, which the 5 % of a restart refers to
//   usable     charge that may be taken out
struct Bank {
    battery::Arrangement setup;
    int count = 1;
    units::Charge rated{};
    units::Charge usable{};
    std::optional<units::Voltage> cut_off;        // the pack's own protection
    std::optional<units::Current> current_limit;  // continuous
    std::optional<units::Current> fuse;
    battery::Wells at_start;
    std::string name;
};

//   others   banks that differ from the first, on the same bus
//   shared   carries the current of all packs; nought where it is in the path of alike ones
struct Unit {
    Bank bank;
    std::vector<Bank> others = {};
    units::Resistance shared{};
    std::optional<inverter::Model> inverter;
};

// What the sun offers from one moment on, at the bus.
struct SunChange {
    units::Duration from{};
    units::Power offered{};
    units::Power clipped{};
    bool loads_only = false;  // the packs are too cold to be charged
};

}  // namespace outage
