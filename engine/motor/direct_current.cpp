#include "motor/direct_current.hpp"

#include <algorithm>

#include "units/said.hpp"

namespace motor {

using words::said;

using units::Current;
using units::Force;
using units::Range;

units::Result<Range<Current>> current_at(const Winch& winch, Force pull, int layer) {
    constexpr int most_layers = 9;
    constexpr double lost_a_layer = 0.1;  // [Winch sheets]
    if (layer < 1 || layer > most_layers) {
        return units::fail({.where = "layer",
                            .found = said<"layer {layer} of the rope">(layer),
                            .remedy = said<"count the layers on the drum from 1; at most 9">()});
    }
    const Force rated = (1.0 - lost_a_layer * (layer - 1)) * winch.rated_pull;
    if (pull > rated || pull < 0.0 * newton) {
        return units::fail(
            {.where = "pull",
             .found = said<"a pull of {pull}, but on layer {layer} this winch pulls {rated}">(
                 units::amount_in(pull, "N", 0), layer, units::amount_in(rated, "N", 0)),
             .remedy =
                 said<"pull less, run more rope out, or double the line through a pulley">()});
    }
    // Printed currents of light pulls lie up to 8 % above the line at the likely no-load current.
    constexpr double above_the_line = 1.15;
    const auto on_the_line = [&](Current no_load) -> Current {
        return no_load + pull / rated * (winch.at_rated_pull - no_load);
    };
    return units::spanning<Current>(on_the_line(winch.no_load.low()),
                                    on_the_line(winch.no_load.likely()),
                                    above_the_line * on_the_line(winch.no_load.high()));
}

Current stalled_current(const Winch& winch) {
    constexpr double over_rated_pull = 1.2;  // common practice, no source
    return over_rated_pull * winch.at_rated_pull;
}

Current stalled_current(units::Voltage open_circuit, units::Voltage brushes,
                        units::Resistance source, units::Resistance motor) {
    const units::Voltage left = std::max(open_circuit - brushes, 0.0 * units::volt);
    return left / (source + motor);
}

Range<Current> starting_current(Current rated) {
    return units::spanning<Current>(2.0 * rated, 4.0 * rated, 6.0 * rated);
}

}  // namespace motor
