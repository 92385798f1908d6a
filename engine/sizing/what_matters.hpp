// How much each uncertain input moves the end of the outage.
#pragma once

#include <string>
#include <vector>

#include "outage/ready.hpp"
#include "units/quantities.hpp"

namespace sizing {

// One input at either end of its range, all others likely, the sky typical.
//   spread      how much longer it lasts at the better end than at the worse one
struct Influence {
    std::string input;     // "refrigerator"
    std::string what;      // what is moved, and how far: "18 W to 60 W while it runs"
    std::size_t load = 0;  // of the scenario; only where is_load
    bool is_load = false;
    units::Duration at_worst{};
    units::Duration at_best{};
    [[nodiscard]] units::Duration spread() const { return at_best - at_worst; }
};

// The one that moves it most comes first. Inputs without a range are left out, and those that make
// less than a minute's difference: all of them where it lasts through either way.
[[nodiscard]] std::vector<Influence> influences(const outage::Ready& ready);

}  // namespace sizing
