#include "starting/inverter.hpp"

#include <cmath>

#include "motor/waveform.hpp"
#include "units/said.hpp"

namespace starting {

using namespace units;
using words::Said;
using words::said;

namespace {

// Manuals print 10.0 to 11.0 V for a usual 10.5 V: [Inverter manuals].
Ends<Voltage> cutoff_of(const scenario::Inverter& described, const inverter::Model& model) {
    if (described.cutoff_voltage) return exactly(model.cutoff_voltage);
    const double around = 0.5 / 10.5;
    return {(1.0 - around) * model.cutoff_voltage, model.cutoff_voltage,
            (1.0 + around) * model.cutoff_voltage};
}

// 0 to 1 s where nothing is said of it: common practice, no source.
Ends<Duration> delay_of(const scenario::Inverter& described) {
    if (described.cutoff_delay) return exactly(*described.cutoff_delay);
    return {1.0 * second, 0.0 * second, 0.0 * second};
}

Ends<ApparentPower> surge_of(const scenario::Inverter& described) {
    const ApparentPower continuous(described.continuous);
    if (described.surge) return exactly(ApparentPower(*described.surge));
    return {2.0 * continuous, 2.0 * continuous, continuous};
}

// Pulse widths of a half to two thirds, method.md of motor (14).
Ends<Share> fundamental_of(scenario::Waveform waveform) {
    if (waveform == scenario::Waveform::sine) return exactly(Share(1.0));
    const Share wide = motor::fundamental_of_quasi_square(motor::PulseWidth(2.0 / 3.0));
    const Share half = motor::fundamental_of_quasi_square(motor::PulseWidth(0.5));
    return {wide, Share(0.5 * (wide.value() + half.value())), half};
}

// Holds its output down to 11 V of a 12 V bank: [Inverter manuals], one maker says that below it
// motors may fail to start.
constexpr double gives_way_at = 11.0 / 12.8;

Said turned_by(const Ends<Share>& fundamental) {
    const auto percent = [](double share) { return words::with_decimals(100.0 * share, 0); };
    const double least = fundamental.high.value();
    const double most = fundamental.low.value();
    return said<
        "{low} to {high} % of its voltage turns a motor, so {low_torque} to {high_torque} % of "
        "the torque">(percent(least), percent(most), percent(std::pow(least, 2.0)),
                      percent(std::pow(most, 2.0)));
}

void tell(const scenario::Inverter& described, InverterSide& side) {
    const auto note = [&](const char* where, Said text, Said source) {
        side.assumptions.push_back({where, std::move(text), std::move(source)});
    };
    const Said practice = said<"common practice, no source">();
    if (!described.when_overloaded)
        note("inverter.when_overloaded", said<"holds its voltage until it trips">(), practice);
    if (!described.case_temperature)
        note("inverter.case_temperature",
             said<"at most {temperature} at its case, where it carries its rating">(celsius(40.0)),
             practice);
    if (!described.cutoff_voltage)
        note("inverter.cutoff_voltage",
             said<"switches off between {low} and {high}">(
                 words::with_decimals(side.cutoff.low / volt, 1),
                 amount_in(side.cutoff.high, "V", 1)),
             said<"[Inverter manuals] low-voltage tables">());
    if (!described.cutoff_delay)
        note("inverter.cutoff_delay",
             said<"may switch off at once, or ride through a dip of 1 s">(), practice);
    if (described.waveform == scenario::Waveform::quasi_square)
        note("inverter.waveform", turned_by(side.fundamental),
             said<"method.md of motor (14); pulse widths common practice, no source">());
}

}  // namespace

InverterSide inverter_side(const scenario::Inverter& described, const inverter::Model& model,
                           Voltage bus, scenario::Assumptions told) {
    InverterSide side{.model = model, .assumptions = std::move(told)};
    const auto heat = described.case_temperature.value_or(celsius(40.0));
    side.continuous = inverter::derated(side.model.continuous, heat);
    side.continuous_apparent = inverter::derated(side.model.continuous_apparent, heat);
    side.surge = surge_of(described);
    side.overload = inverter::overload_curves(described);
    side.cutoff = cutoff_of(described, side.model);
    side.cutoff_delay = delay_of(described);
    side.fundamental = fundamental_of(side.model.waveform);
    side.when_overloaded = described.when_overloaded.value_or(scenario::WhenOverloaded::trips);
    side.gives_way_below = gives_way_at * bus;
    side.surge_stated = described.surge.has_value();
    side.cutoff_stated = described.cutoff_voltage.has_value();
    side.delay_stated = described.cutoff_delay.has_value();
    tell(described, side);
    side.assumptions.insert(side.assumptions.end(), side.overload.assumptions.begin(),
                            side.overload.assumptions.end());
    return side;
}

Result<InverterSide> inverter_side(const scenario::Inverter& described, Voltage bus) {
    scenario::Assumptions told;
    const auto model = inverter::model_of(described, bus, told);
    if (!model) return fail(model.error());
    return inverter_side(described, *model, bus, std::move(told));
}

}  // namespace starting
