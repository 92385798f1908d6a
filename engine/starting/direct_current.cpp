#include "starting/direct_current.hpp"

#include "units/said.hpp"

namespace starting {

using namespace units;
using words::said;

namespace {

// The inrush of a 12 V motor is over within 0.1 to 0.3 s: common practice, no source.
constexpr Duration inrush = 0.3 * second;
// A pull lasts; protections that act within seconds see it whole.
constexpr Duration pull_lasts = 60.0 * second;

Result<DirectMotor> winch(const scenario::Motor& described, const std::string& where,
                          Current rated) {
    const motor::Winch sheet{.at_rated_pull = rated, .rated_pull = motor::newton};
    auto current = motor::current_at(sheet, described.pull->value() * motor::newton,
                                     described.rope_layer.value_or(1));
    if (!current) {
        Error error = current.error().front();
        error.where = where + (error.where == "layer" ? ".rope_layer" : ".pull");
        return fail(std::move(error));
    }
    return DirectMotor{
        .starting = more_is_harder(*current),
        .working = more_is_harder(*current),
        .time = pull_lasts,
        .assumptions = {{where + ".pull",
                         said<"stuck, the winch draws {current}, 1.2 times its rated current">(
                             amount_in(motor::stalled_current(sheet), "A", 0)),
                         said<"common practice, no source">()}}};
}

}  // namespace

Result<DirectMotor> direct_motor(const scenario::Load& load, const std::string& where,
                                 const RunningDraw& running, Voltage nominal) {
    const auto& described = *load.motor;
    const auto at_motor = where + ".motor";
    const bool has_power = running.real.likely() > Power{};
    if (!described.full_load_current && !has_power)
        return fail(
            {.where = at_motor + ".full_load_current",
             .found = said<"nothing says how much current this motor draws">(),
             .remedy = said<"give full_load_current, such as {example}, or power">("\"8 A\"")});
    const Current rated = described.full_load_current.value_or(running.real.likely() / nominal);
    if (described.pull) return winch(described, at_motor, rated);
    return DirectMotor{
        .starting = more_is_harder(motor::starting_current(rated)),
        .working = exactly(rated),
        .time = inrush,
        .assumptions = {{at_motor,
                         said<"draws 2 to 6 times its rated current for 0.3 s when switched on">(),
                         said<"common practice, no source">()}}};
}

}  // namespace starting
