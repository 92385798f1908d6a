// "What does this voltage reading mean?" A reading is an interval of charge, and sometimes none.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
#include "words/said.hpp"

namespace handling {

// What was read, and how.
//   reads       at the terminals, or at the bus where packs are joined
//   error       how far the reading may be off either way: half its last digit and the meter's own
//   power       drawn while it was read, at the packs; absent: nothing
//   rested_for  since it was last charged or used
//   pack        whose charge it tells; absent: all packs, joined
struct Reading {
    units::Voltage reads{};
    units::Voltage error{};
    std::optional<units::Power> power = {};
    std::optional<units::Duration> rested_for = {};
    std::optional<std::string> pack = {};
};

//   low, likely, high   charge (battery/cell/percent.hpp), after rest; likely is the middle of what the
//   reading allows, and is
//                       not to be told where `readable` is false
//   readable            the interval is narrower than a third of the charge, and none of it lies on
//                       the plateau of LiFePO4, where no one charge is likelier than the next
//   plateau             some of it does
//   beyond              below 0: what a slow draw still gets
//   locked              the last of the charge, which at this temperature cannot be drawn
//   rested              the voltage that the reading comes to without the load
//   slope               volts for one hundredth of the charge there
//   now_low, now_high   under load: the part that feeds the terminals, which the voltage limits
struct ChargeRead {
    units::StateOfCharge low;
    units::StateOfCharge likely;
    units::StateOfCharge high;
    units::Charge beyond{};
    units::StateOfCharge locked{};
    units::Temperature temperature;
    bool readable = true;
    bool plateau = false;
    units::Voltage rested{};
    units::Voltage error{};
    units::Voltage per_hundredth{};
    units::Current current{};
    units::Resistance resistance{};
    std::optional<units::StateOfCharge> now_low;
    std::optional<units::StateOfCharge> now_high;
    scenario::Chemistry chemistry{};
    words::Said what;  // "pack main" or "all packs"
    scenario::Findings findings;
    scenario::Assumptions assumptions;
};

//   fails    where there is no such pack, packs of different chemistries share the reading, or the
//            voltage is none that they can have
//   source   battery/method.md (40)
[[nodiscard]] units::Result<ChargeRead> gauge(const scenario::Scenario& scenario,
                                              const Reading& reading);

// The same scenario with every pack that was read at this charge.
[[nodiscard]] scenario::Scenario at_charge(scenario::Scenario scenario, const Reading& reading,
                                           units::StateOfCharge charge);

}  // namespace handling
