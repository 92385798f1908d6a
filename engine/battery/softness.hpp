// How much less an AGM pack gives the faster it is drawn, where its label tells one row only: along
// a line from a hard end over what is taken to a soft one. method.md (69)
#pragma once

#include "battery/pack_model.hpp"
#include "scenario/pack.hpp"

namespace battery {

// Nothing else tells how its charge depends on the rate.
[[nodiscard]] bool has_unknown_softness(const scenario::Pack& pack);

// The same pack with wells so far from those taken; its rated charge, and so every percent, stays.
//   pack       that the model was made of, of unknown softness
//   softness   -1 the hard end, 0 as taken, 1 the soft end; held to these
[[nodiscard]] PackModel with_softness(PackModel model, const scenario::Pack& pack, double softness);

}  // namespace battery
