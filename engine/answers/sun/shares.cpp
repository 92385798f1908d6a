#include "answers/sun/shares.hpp"

#include "answers/shown.hpp"

namespace answers {

using words::said;

Members sun_shares(const sizing::SunShares& shares, double part) {
    const auto value_of = [part](units::Energy energy) {
        return quantity_or_reason(shown(energy * part), said<"the number is not finite">());
    };
    return {{"offered", said<"offered at the battery">(), value_of(shares.offered())},
            {"used", said<"straight into loads">(), value_of(shares.used)},
            {"stored", said<"into the packs">(), value_of(shares.stored)},
            {"lost", said<"of it not stored in charging">(), value_of(shares.lost)},
            {"too_cold", said<"not taken: too cold to charge">(), value_of(shares.too_cold)},
            {"full", said<"not taken: full, or tapering">(), value_of(shares.full)},
            {"clipped", said<"turned away by the controller">(), value_of(shares.clipped)}};
}

}  // namespace answers
