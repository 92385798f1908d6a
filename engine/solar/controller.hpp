// The charge controller between the panels and the battery.
#pragma once

#include <optional>
#include <span>

#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/panel.hpp"
#include "solar/panel.hpp"
#include "units/quantities.hpp"

namespace solar {

struct ControllerModel {
    scenario::ControllerKind kind = scenario::ControllerKind::mppt;
    units::Efficiency efficiency{0.95};                   // of an MPPT controller; a PWM one has 1
    std::optional<units::Power> input_limit;              // of the unit's solar input, all panels
    std::optional<units::Current> output_limit;           // into the battery
    std::optional<units::Voltage> voltage_limit;          // open-circuit voltage it withstands
    units::Voltage battery_voltage = 13.2 * units::volt;  // while charging, at the controller
};

// The controller a scenario describes, or an MPPT one when it describes none.
[[nodiscard]] ControllerModel controller_model(
    const std::optional<scenario::ChargeController>& controller,
    scenario::Assumptions& assumptions);

// What reaches the battery, and what the limits kept from it.
struct Offer {
    units::Power power{};      // at the battery terminals
    units::Power clipped{};    // would have reached the battery without the limits
    units::Current current{};  // into the battery, at the model's battery voltage
};

// Panels in one light. Sum the groups before the limits: they share one controller.
//   power    of all panels at their best voltage;   for MPPT
//   current  of all panels at the battery's voltage; for PWM
struct PanelsGive {
    units::Power power{};
    units::Current current{};
    friend PanelsGive operator+(PanelsGive a, PanelsGive b) {
        return {.power = a.power + b.power, .current = a.current + b.current};
    }
};

[[nodiscard]] Offer through_controller(const ControllerModel& controller,
                                       PanelsGive panels);  // (33)

// Panels in series on the coldest morning against what the controller withstands. (34)
//   gives  a stop when above the limit, a caution within 5 % of it, nothing otherwise or when no
//          limit is known
[[nodiscard]] scenario::Findings cold_voltage_check(const ControllerModel& controller,
                                                    const PanelModel& panel, int in_series,
                                                    units::Temperature coldest);

}  // namespace solar
