#include "starting/motor.hpp"

#include <algorithm>

#include "motor/appliances/appliances.hpp"
#include "motor/supply_voltage.hpp"

namespace starting {

using namespace units;
using scenario::MotorKind;

namespace {

bool suffers_from_harmonics(MotorKind kind) {
    switch (kind) {
        case MotorKind::permanent_split_fan:
        case MotorKind::permanent_split_compressor:
        case MotorKind::compressor_rsir:
        case MotorKind::compressor_csir:
            return true;
        default:
            return false;
    }
}

// The kind's own times, longer as the torque falls.
Duration usual_time(const StartingMotor& starting, End end, double voltage_share) {
    const auto usual = at(motor::traits_of(starting.locked.kind).time_to_speed, end);
    return usual / std::max(voltage_share * voltage_share, 0.01);
}

}  // namespace

motor::Source seen_by_motor(motor::Source source, Share fundamental,
                            const std::optional<Range<Share>>& softened, End end) {
    // What lets least through leaves the least torque, and is the heavier burden here.
    if (softened) source = motor::softened(std::move(source), at(*softened, opposite(end)));
    if (fundamental == Share(1.0)) return source;
    return [source = std::move(source), fundamental](const motor::Drawn& drawn) -> Voltage {
        return fundamental.value() * source(drawn);
    };
}

RunUp run_up(const StartingMotor& starting, End end, const motor::Source& source,
             Share fundamental) {
    const auto seen = seen_by_motor(source, fundamental, starting.locked.let_through, end);
    const motor::Drawn at_rest{starting.locked.rated_voltage, at(starting.locked.current, end),
                               at(starting.locked.power_factor, end)};
    const double share = std::min<double>(1.0, seen(at_rest) / starting.locked.rated_voltage);
    if (!starting.cases) return {.time = usual_time(starting, end, share)};
    const auto& burden = at(starting.cases->burden, end);
    const auto found = motor::start(burden.motor, burden.load, seen);
    const Share used(found.torque_used.value());
    if (!found.time_to_speed)
        return {.comes_up = false, .time = given_up_after, .torque_used = used};
    // What the motor turns and how heavy it is, nobody measured: the kind's longest time stands.
    const Duration time = end == End::high
                              ? std::max(*found.time_to_speed, usual_time(starting, end, share))
                              : *found.time_to_speed;
    return {.comes_up = true, .time = time, .torque_used = used};
}

Result<StartingMotor> starting_motor(const scenario::Load& load, const std::string& where,
                                     const RunningDraw& running, const InverterSide& inverter,
                                     std::optional<motor::DrivenLoad> drives) {
    const motor::Installation at_home{.where = where + ".motor",
                                      .supply = inverter.model.output_voltage,
                                      .running_power = running.real.likely() > Power{}
                                                           ? std::optional(running.real)
                                                           : std::nullopt,
                                      .running_power_factor = load.power_factor};
    scenario::Motor described = *load.motor;
    described.voltage = motor::plate_voltage(load);
    auto locked = motor::locked_rotor(described, at_home);
    if (!locked) return fail(std::move(locked.error()));
    StartingMotor starting{.name = load.name,
                           .where = where,
                           .locked = *std::move(locked),
                           .running = running,
                           .medical = motor::is_medical(load),
                           .sensitive_to_waveform = suffers_from_harmonics(load.motor->kind)};
    starting.assumptions = starting.locked.assumptions;
    starting.findings = starting.locked.findings;
    starting.demand = motor::demand_at(starting.locked, inverter.model.output_voltage);
    const auto output = motor::shaft_output(
        *load.motor, at_home.running_power ? std::optional(running.real.likely()) : std::nullopt);
    if (output) {
        starting.cases = motor::start_cases(starting.locked, {.output = *output, .drives = drives},
                                            where + ".motor");
        if (starting.cases)
            starting.assumptions.insert(starting.assumptions.end(),
                                        starting.cases->assumptions.begin(),
                                        starting.cases->assumptions.end());
    }
    starting.at_full_voltage = for_each_end([&](End end) {
        return run_up(starting, end, motor::holding(inverter.model.output_voltage),
                      at(inverter.fundamental, end));
    });
    return starting;
}

}  // namespace starting
