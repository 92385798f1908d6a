// Motors straight on the 12 V bus: winches by their pull, pumps by their rated current.
#pragma once

#include <string>

#include "scenario/load.hpp"
#include "starting/start.hpp"

namespace starting {

struct DirectMotor {
    units::Ends<units::Current> starting{};  // from the bus, by burden
    units::Ends<units::Current> working{};   // once it turns
    units::Duration time{};                  // of the inrush
    scenario::Assumptions assumptions{};
};

// A motor with `pull` is a winch: its full_load_current is that at its rated pull, and what it
// draws lasts. Any other is known by its full_load_current, or by its power over 12 V.
//   fails    at "<where>.motor…" where nothing tells its current, or the pull is too much
[[nodiscard]] units::Result<DirectMotor> direct_motor(const scenario::Load& load,
                                                      const std::string& where,
                                                      const RunningDraw& running,
                                                      units::Voltage nominal);

}  // namespace starting
