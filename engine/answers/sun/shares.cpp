#include "answers/sun/shares.hpp"

#include "answers/shown.hpp"

namespace answers {

Members sun_shares(const sizing::SunShares& shares, double part) {
    const auto value_of = [part](units::Energy energy) {
        return quantity_or_reason(shown(energy * part), "the number is not finite");
    };
    return {{"offered", "offered at the battery", value_of(shares.offered())},
            {"used", "straight into loads", value_of(shares.used)},
            {"stored", "into the packs", value_of(shares.stored)},
            {"lost", "of it not stored in charging", value_of(shares.lost)},
            {"too_cold", "not taken: too cold to charge", value_of(shares.too_cold)},
            {"full", "not taken: full, or tapering", value_of(shares.full)},
            {"clipped", "turned away by the controller", value_of(shares.clipped)}};
}

}  // namespace answers
