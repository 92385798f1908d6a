// The unit as the clock sees it: packs behind one bus, and an inverter on it.
#pragma once

#include <optional>

#include "battery/prepared.hpp"
#include "battery/two_well.hpp"
#include "inverter/model.hpp"
#include "units/quantities.hpp"

namespace outage {

// Packs alike in everything, in parallel. All values are of one pack.
//   setup      its path is the pack's own lead and `count` times what all packs share
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
};

struct Unit {
    Bank bank;
    std::optional<inverter::Model> inverter;
};

// What the sun offers from one moment on, at the bus.
struct SunChange {
    units::Duration from{};
    units::Power offered{};
    units::Power clipped{};
};

}  // namespace outage
