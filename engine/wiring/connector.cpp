#include "wiring/connector.hpp"

#include <algorithm>
#include <cmath>

namespace wiring {

using words::said;

ConnectorRating rating_of(const scenario::Connector& connector, const ConnectorRow* row) {
    ConnectorRating held{.rating = connector.rating,
                         .by = said<"as you state it">(),
                         .source = "circuit.links.connector",
                         .reliability = Reliability::builder};
    if (row == nullptr) {
        return held;
    }
    const auto lower_to = [&](const std::optional<units::Current>& listed, words::Said by) {
        if (listed && *listed < held.rating) {
            held = {.rating = *listed,
                    .by = std::move(by),
                    .source = row->source,
                    .reliability = row->reliability};
        }
    };
    const bool both = row->ul && row->csa;
    if (connector.listing != "csa") {
        lower_to(row->ul, both ? said<"its UL listing">() : said<"its rating by the maker">());
    }
    if (connector.listing != "ul") {
        lower_to(row->csa, connector.listing
                               ? said<"its CSA listing">()
                               : said<"its CSA listing, the lower of two since none is chosen">());
    }
    return held;
}

double contact_factor(units::Temperature hottest, units::Temperature around) {
    const double room = (hottest - around) / units::kelvin;
    const double tabled = (hottest - units::celsius(25.0)) / units::kelvin;
    if (room <= 0.0 || tabled <= 0.0) {
        return 0.0;
    }
    return std::min(1.0, std::sqrt(room / tabled));
}

PlugIn plugged_together(units::Voltage first, units::Resistance of_first, units::Voltage second,
                        units::Resistance of_second, units::Current allowed) {
    const auto loop = of_first + of_second;
    return {.current = (first - second) / loop, .largest_difference = allowed * loop};
}

}  // namespace wiring
