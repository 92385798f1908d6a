#include "wiring/table_words.hpp"

#include <algorithm>
#include <array>

namespace wiring {

namespace {

using words::Said;
using words::said;

// In the order of the files: conductors, ampacity, fuses, connectors.
const auto& all() {
    static const std::array sayings{
        said<"[NEC] ch. 9 table 8; [Marine catalogue] for sae_cmil">(),
        said<"[IEC 60228] class 5">(),
        said<"[IEC 60228] class 5, two tables that agree">(),
        said<"[33 CFR 183.425] table 5">(),
        said<"[ISO 8820-3] scope: 32 V, 1 kA; [Blade sheets] of 35 and 40 A; the times at "
             "160 %, the earliest from 350 % on and all of smaller fuses from memory">(),
        said<"[ISO 8820-3] scope; [Blade sheets] of 20 to 80 A, but the latest time at 200 % "
             "there 50 s">(),
        said<"1 kA read in [Fuse article]; opening times taken from the 51 mm strip, from "
             "memory">(),
        said<"2 kA read in [Fuse article]; opening times and drop from memory">(),
        said<"6 kA at 32 V read in a builder's public notes; 2.7 kA of other makers from "
             "memory, the lower taken">(),
        said<"[Terminal fuse notes] 30 to 300 A, 10 kA at 14 V; 5 kA at 32 V and 2 kA at 58 "
             "V from memory">(),
        said<"20 kA at 125 V [ABYC E-11] as quoted; latest opening [UL 248-15] from memory; "
             "from 300 % on a third and three times of makers' mean curves, from memory">(),
        said<"[UL 248-14] as told in [Fuseology]; no direct-current rating without the "
             "maker's">(),
        said<"sizes as [NEC] 240.6(A) and smaller ones; nothing else without the maker's "
             "sheet">(),
        said<"[Two-pole 50 sheet]; rated voltage from memory">(),
        said<"1/0 AWG at most read in an assembly sheet of this size, which rates it 175 A; "
             "280 A by UL from memory">(),
        said<"[Two-pole 350 sheet]; rated voltage from memory">(),
        said<"[SAE J563] from memory; 10 A, and 16 V as of what hangs in a 12 V vehicle, are "
             "common practice, no source">()};
    return sayings;
}

}  // namespace

Said said_of_tables(const std::string& text) {
    const auto found =
        std::ranges::find_if(all(), [&](const Said& one) { return one.saying->english == text; });
    return found == all().end() ? Said(std::string(text)) : *found;
}

}  // namespace wiring
