// How stiff packs and main path may be, as far as the file leaves that open, and which of it drives
// the most, and the least, through a pack. method.md, "What the file leaves open".
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "fitting/unit.hpp"
#include "fitting/wiring.hpp"
#include "units/quantities.hpp"

namespace fitting {

struct OhmSpan {
    units::Resistance low{};
    units::Resistance high{};
};

//   packs   of each kind, its inside with its lead
struct FlowSpans {
    std::vector<OhmSpan> packs;
    OhmSpan main;
};
// Over all these ways to complete the file; each has the same kinds of pack.
[[nodiscard]] FlowSpans flow_spans(const std::vector<BuildUnit>& units);

// What of a pack is to be as large, or as small, as the spans allow.
//   given     at the inverter's rating
//   lasting   the same at the lowest voltage, at which its fuse and lead are reckoned
//   asked     the rating that its fuse is asked for by that
//   surge     at the inverter's surge
//   stiff, soft   none of these: the pack's own end of its span
enum class Aim { given, lasting, asked, surge, stiff, soft };

// One kind of pack singled out: all other packs and the main path help whatever is aimed at.
struct Lean {
    std::size_t kind = 0;
    Aim aim = Aim::given;
    bool most = true;
};

// The resistance of the kind, within its span, for which this is largest, or smallest. More current
// flows out of a stiffer pack, but a unit that gets softer asks for more; so the largest may lie
// between the ends.
[[nodiscard]] units::Resistance extreme_in(
    const OhmSpan& span, bool most, const std::function<units::Current(units::Resistance)>& of);

// Whether packs may open one after another, by their own protections, anywhere in the spans; and
// whether they do everywhere. Neither becomes less narrow by knowing more.
struct Cascade {
    bool may = false;
    bool surely = false;
};
//   worst, best   the harmful and the harmless ends of what has one bad end: limits, what is drawn
//   cutoff        of the inverter, from its lowest to its highest
struct CascadeAsked {
    const BuildUnit& worst;
    const BuildUnit& best;
    const wiring::Feed& most;
    const wiring::Feed& least;
    units::Voltage lowest_cutoff{};
    units::Voltage highest_cutoff{};
};
[[nodiscard]] Cascade cascade_within(const FlowSpans& spans, const CascadeAsked& asked);

}  // namespace fitting
