// When a fuse opens, and which ratings suit a circuit.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scenario/circuit.hpp"
#include "units/quantities.hpp"
#include "wiring/tables.hpp"

namespace wiring {

// The span of times in which it opens. No `least`: the earliest is not known. No `most`: it may
// never open.
struct OpeningSpan {
    bool holds = false;  // within what it carries for ever
    std::optional<units::Duration> least;
    std::optional<units::Duration> most;
};

// The envelope of one fuse: rising multiples of its rating; empty where nothing is known of it.
using Envelope = std::vector<OpeningPoint>;
[[nodiscard]] Envelope envelope_of(const FuseFamily& family, units::Current rating);
[[nodiscard]] Envelope envelope_of(const scenario::Fuse& fuse, const FuseFamily* family);

// At a multiple of the rating; method.md (7). Straight between points on logarithmic scales, the
// earliest and the latest curve apart; below the first point it holds; beyond the last I2t stays.
[[nodiscard]] OpeningSpan opening_at(const Envelope& envelope, double ratio);

enum class Surge { holds, may_open, opens };

// Whether it stands a current for a time. Nothing known: may open above its rating.
[[nodiscard]] Surge stands(const Envelope& envelope, units::Current rating, units::Current current,
                           units::Duration lasts);

// What a circuit asks of its fuse.
struct Asked {
    units::Current continuous{};  // for 3 h or more
    units::Current further{};     // beside it, for shorter times
    units::Current surge{};       // for `surge_lasts`; zero: none
    units::Duration surge_lasts{};
    bool full_duty = false;  // the fuse is marked to carry its rating for ever
    double hot = 1.0;        // share of its rating that a hot fuse keeps
};

// The least rating by the continuous rule alone; method.md (8).
[[nodiscard]] units::Current least_rating(const Asked& asked);

// Ratings that suit. Either end is absent where no made size reaches it.
struct FuseWindow {
    units::Current least{};                  // F_min by load
    std::optional<units::Current> most{};    // F_max by the weakest link; absent: no link is known
    std::optional<units::Current> smallest;  // made size
    std::optional<units::Current> largest;   // made size
    bool surge_sets_least = false;

    [[nodiscard]] bool empty() const { return !smallest || !largest || *smallest > *largest; }
};
[[nodiscard]] FuseWindow fuse_window(const Asked& asked, std::optional<units::Current> weakest,
                                     const FuseFamily* family);

// What the fuse breaks at a direct voltage; nothing where it is not known to break any there.
[[nodiscard]] std::optional<units::Current> breaks_at(const FuseFamily& family,
                                                      units::Voltage voltage);

// Share of the melting I2t that a surge may use when it comes so often, 10 s apart.
//   source  [Fuseology] 100: 48 %, 1,000: 38 %, 10,000: 29 %, 100,000: 22 %; between on a log scale
[[nodiscard]] units::Share pulse_share(double pulses);

}  // namespace wiring
