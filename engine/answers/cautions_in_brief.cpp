#include "answers/cautions_in_brief.hpp"

#include <algorithm>
#include <array>

#include "units/said.hpp"

namespace answers {

namespace {

using words::said;
using words::saying;

struct Brief {
    const words::Saying* hazard;
    words::Said text;
};

const std::array<Brief, 7> briefs{{
    {&saying<"Medical loads">,
     said<"This unit is not a life-support device: have a second way.">()},
    {&saying<"Electric shock">,
     said<"The outlets can kill like those of the wall: keep the case closed and dry.">()},
    {&saying<"Fire">,
     said<"A short circuit sets cables alight: fuse every pack at its own terminal.">()},
    {&saying<"Carbon monoxide">,
     said<"Exhaust kills without a smell: run engines outdoors only, far from windows.">()},
    {&saying<"Backfeed">, said<"Never feed house wiring without a transfer device: it can kill "
                               "those who repair the lines.">()},
    {&saying<"Hydrogen">,
     said<"Lead-acid packs give off hydrogen while they charge: vent the case, keep flames "
          "away.">()},
    {&saying<"Lithium charging in the cold">,
     said<"Do not charge LiFePO4 packs at or below {temperature}: it damages them for good.">(
         units::celsius(0.0))},
}};

}  // namespace

words::Said in_brief(const Caution& caution) {
    const auto* const found = std::ranges::find(briefs, caution.hazard.saying, &Brief::hazard);
    return found == briefs.end() ? words::Said() : found->text;
}

}  // namespace answers
