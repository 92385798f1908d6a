#include "solar/controller.hpp"

#include "units/said.hpp"

namespace solar {

namespace {

using namespace units;
using words::said;

}  // namespace

ControllerModel controller_model(const std::optional<scenario::ChargeController>& controller,
                                 scenario::Assumptions& assumptions) {
    ControllerModel model;
    if (!controller)
        assumptions.push_back({"charge_controller",
                               said<"an MPPT controller without a limit of its own">(),
                               said<"ours; name the controller to have its limits counted">()});
    const scenario::ChargeController given = controller.value_or(scenario::ChargeController{});
    model.kind = given.kind;
    model.input_limit = given.input_limit;
    model.output_limit = given.output_limit;
    model.voltage_limit = given.voltage_limit;
    if (model.kind == scenario::ControllerKind::pwm) {
        model.efficiency = given.efficiency.value_or(Efficiency(1.0));
    } else if (given.efficiency) {
        model.efficiency = *given.efficiency;
    } else {
        assumptions.push_back({"charge_controller.efficiency",
                               said<"0.95; 0.90 to 0.98 is found">(),
                               said<"common practice, no source">()});
    }
    return model;
}

Offer through_controller(const ControllerModel& controller, PanelsGive panels) {
    const Voltage battery = controller.battery_voltage;
    const Power unlimited = controller.kind == scenario::ControllerKind::mppt
                                ? panels.power * controller.efficiency.value()
                                : battery * panels.current * controller.efficiency.value();
    Power power = unlimited;
    if (controller.input_limit) {
        // Counted where the panels plug in: what the controller then loses comes off after it.
        power = std::min(power, *controller.input_limit * controller.efficiency.value());
    }
    if (controller.output_limit) power = std::min<Power>(power, *controller.output_limit * battery);
    return {.power = power, .clipped = unlimited - power, .current = power / battery};
}

scenario::Findings cold_voltage_check(const ControllerModel& controller, const PanelModel& panel,
                                      int in_series, Temperature coldest) {
    if (!controller.voltage_limit) return {};
    const Voltage limit = *controller.voltage_limit;
    const Voltage cold = double(in_series) * open_circuit_voltage_at(panel, coldest);
    if (cold <= 0.95 * limit) return {};
    const bool too_high = cold > limit;
    return {
        {.severity = too_high ? scenario::Severity::stop : scenario::Severity::caution,
         .where = said<"charge controller">(),
         .text = words::said_of<"one panel reaches {voltage} open-circuit at {temperature}; the "
                                "controller withstands {limit}",
                                "{n} panels in series reach {voltage} open-circuit at "
                                "{temperature}; the controller withstands {limit}">(
             in_series, amount_in(cold, "V", 1), to_the_degree(coldest), amount_in(limit, "V", 1)),
         .mend = too_high
                     ? said<"put fewer panels in series, or a controller for a higher voltage">()
                     : said<"leave a margin of 5 %: fewer panels in series, or a controller for a "
                            "higher voltage">(),
         .source = said<"{source}">("solar/method.md (34)")}};
}

}  // namespace solar
