// The hazards of building, mending and using the wiring of a unit.
#include "answers/cautions.hpp"

#include <algorithm>

#include "answers/wiring/answer.hpp"

namespace answers {

namespace {

using words::said;

const Caution never_larger = {
    .hazard = said<"A fuse that blows">(),
    .text =
        said<"Never put in a larger fuse because one has blown. Find out why, then reckon anew.">(),
    .source = said<"common practice, no source">()};

const Caution live_inside = {
    .hazard = said<"Work inside the case">(),
    .text = said<
        "Loads off, main switch off, packs unplugged, fuse out, in this order. Where negative is "
        "tied to metal it comes off first and on last. Insulated tools, no rings, cover live "
        "lugs, wait for the inverter's capacitors. A pack stays live when unplugged.">(),
    .source = said<"common practice, no source">()};

const Caution plug_in = {
    .hazard = said<"Plugging packs in">(),
    .text =
        said<"Packs at unequal voltage push tens of amperes into one another. Bring them to equal "
             "voltage first, and switch the inverter off: its empty capacitors spark.">(),
    .source = said<"common practice, no source">()};

const Caution lid = {.hazard = said<"Heat">(),
                     .text = said<"Open the lid, or run the fan, whenever the inverter works.">(),
                     .source = "wiring method.md (12)"};

const Caution not_for_shipping = {
    .hazard = said<"Transport">(),
    .text = said<
        "A home-built lithium pack has not passed the transport tests: do not ship it and do not "
        "fly with it.">(),
    .source = "[49 CFR 173.185]"};

const Caution over_fifty_volts = {
    .hazard = said<"Electric shock from the packs">(),
    .text = said<"While charging the packs reach 50 V or more: guard every live part.">(),
    .source = "[OSHA 1910.303](g)(2)(i)"};

const Caution who_decides = {
    .hazard = said<"For a licensed electrician">(),
    .text = said<
        "Any tie to house wiring, the bonding of the neutral, earthing, whatever stays installed "
        "in a dwelling, panels on a roof, and vehicles or boats.">(),
    .source = said<"common practice, no source">()};

}  // namespace

std::vector<Caution> wiring_cautions(const scenario::Scenario& scenario, const fitting::Fit& fit) {
    std::vector<Caution> cautions{never_larger, live_inside};
    if (fit.packs > 1) {
        cautions.push_back(plug_in);
    }
    if (scenario.inverter) {
        cautions.push_back(lid);
    }
    const bool lithium = std::ranges::any_of(scenario.packs, [](const scenario::Pack& pack) {
        return pack.chemistry == scenario::Chemistry::lifepo4;
    });
    if (lithium) {
        cautions.push_back(not_for_shipping);
    }
    if (fit.top >= 50.0 * units::volt) {
        cautions.push_back(over_fifty_volts);
    }
    for (Caution& general : cautions_for(scenario)) {
        cautions.push_back(std::move(general));
    }
    cautions.push_back(who_decides);
    return cautions;
}

}  // namespace answers
