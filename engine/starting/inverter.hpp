// The inverter as a starting motor meets it: ratings at the case's heat, overload in time, cut-off.
#pragma once

#include "inverter/model.hpp"
#include "inverter/overload.hpp"
#include "scenario/assumption.hpp"
#include "scenario/inverter.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "units/result.hpp"

namespace starting {

// All ranges by burden: high is the harder one on the start.
struct InverterSide {
    inverter::Model model{};
    units::Power continuous{};                    // at the temperature of the case
    units::ApparentPower continuous_apparent{};   // likewise
    units::Ends<units::ApparentPower> surge{};    // low is the largest
    inverter::OverloadCurves overload{};          // curve.low holds for the shortest time
    units::Ends<units::Voltage> cutoff{};         // high cuts off the soonest
    units::Ends<units::Duration> cutoff_delay{};  // high is the shortest
    units::Ends<units::Share> fundamental{};      // of the output's root mean square
    scenario::WhenOverloaded when_overloaded = scenario::WhenOverloaded::trips;
    units::Voltage gives_way_below{};  // at its terminals, for one that sags with the bank
    bool surge_stated = false;
    bool cutoff_stated = false;
    bool delay_stated = false;
    scenario::Assumptions assumptions{};
};

//   model    of what is described, as the built unit has it
//   told     what the model had to take; goes before what the start takes besides
[[nodiscard]] InverterSide inverter_side(const scenario::Inverter& described,
                                         const inverter::Model& model, units::Voltage bus,
                                         scenario::Assumptions told);

// The same where there is no unit around it.
//   fails    as inverter::model_of
[[nodiscard]] units::Result<InverterSide> inverter_side(const scenario::Inverter& described,
                                                        units::Voltage bus);

}  // namespace starting
