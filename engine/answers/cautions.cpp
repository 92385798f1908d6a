#include "answers/cautions.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "demand/power.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using scenario::Chemistry;
using scenario::Scenario;
using words::said;

bool any_pack(const Scenario& scenario, auto test) {
    return std::ranges::any_of(scenario.packs, test);
}

bool is_charged(const Scenario& scenario) {
    return !scenario.panels.empty() || !scenario.chargers.empty();
}

bool burns_fuel(const scenario::Charger& charger) {
    return charger.kind != scenario::ChargerKind::wall;
}

bool is_lithium(const scenario::Pack& pack) {
    return pack.chemistry == Chemistry::lifepo4;
}

bool is_lead_acid(const scenario::Pack& pack) {
    return !is_lithium(pack);
}

std::string lower_case(std::string text) {
    std::ranges::transform(text, text.begin(), [](unsigned char letter) {
        return static_cast<char>(std::tolower(letter));
    });
    return text;
}

const Caution medical_dependence = {
    .hazard = said<"Medical loads">(),
    .text = said<
        "This unit is not a life-support device. Have a second way for every load somebody's "
        "life or health depends on: ask the equipment supplier and the doctor now, sign up with "
        "the utility's medical registry, and go to help before the packs are empty.">(),
    .source = said<"common practice, no source">()};

const Caution electric_shock = {
    .hazard = said<"Electric shock">(),
    .text = said<
        "The inverter's outlets can kill like those of the wall. Keep the case closed and dry, "
        "use cords with a ground pin, and a ground-fault outlet outdoors or where it is damp.">(),
    .source = said<"{source}">("[NEC] 210.8")};

const Caution fault_current = {
    .hazard = said<"Fire">(),
    .text =
        said<"A short circuit draws hundreds to thousands of amperes from a pack and sets cables "
             "alight. Fuse every pack at its own terminal with a fuse that can interrupt that "
             "current, take off rings and watches, and work with the main switch open.">(),
    .source = said<"common practice, no source">()};

const Caution carbon_monoxide = {
    .hazard = said<"Carbon monoxide">(),
    .text = said<"Exhaust kills without a smell. Run a generator or a car outdoors only, at least "
                 "{distance} from doors, windows and vents, with a carbon monoxide alarm indoors.">(
        units::amount_in(6.096 * units::metre, "m", 0)),
    .source = said<"{source}">("[FEMA generators]")};

const Caution backfeed = {
    .hazard = said<"Backfeed">(),
    .text =
        said<"Never feed house wiring without a transfer device: it puts the lines outside under "
             "voltage and can kill those who repair them. A load wired into the house needs a "
             "transfer switch or an inlet fitted by an electrician.">(),
    .source = said<"{source}">("[CDC backfeed]")};

const Caution hydrogen = {
    .hazard = said<"Hydrogen">(),
    .text =
        said<"Lead-acid packs give off hydrogen while they charge, flooded ones the most. Open or "
             "vent a closed case to the outside, and keep flames and sparks away.">(),
    .source = said<"common practice, no source">()};

const Caution lithium_charging = {
    .hazard = said<"Lithium charging in the cold">(),
    .text =
        said<"Do not charge LiFePO4 packs at or below {temperature}: lithium plates out and the "
             "pack is damaged for good. Bring them into a warm room first.">(
            units::to_the_degree(units::celsius(0.0))),
    .source = said<"{source}, charging from {temperature}">(
        "[LFP 100 sheet]", units::to_the_degree(units::celsius(0.0)))};

}  // namespace

bool is_usually_hard_wired(const scenario::Load& load) {
    constexpr std::array<std::string_view, 6> words{"furnace", "blower", "boiler",
                                                    "pump",    "burner", "water heater"};
    const std::string name = lower_case(load.name + " " + load.like.value_or(""));
    return load.from == scenario::Outlet::ac &&
           std::ranges::any_of(words, [&name](std::string_view word) {
               return name.find(word) != std::string::npos;
           });
}

std::vector<Caution> cautions_for(const Scenario& scenario) {
    std::vector<Caution> cautions;
    const auto add_if = [&cautions](bool touched, const Caution& caution) {
        if (touched) {
            cautions.push_back(caution);
        }
    };
    add_if(std::ranges::any_of(scenario.loads, demand::is_medical), medical_dependence);
    add_if(scenario.inverter.has_value(), electric_shock);
    add_if(std::ranges::any_of(scenario.loads, is_usually_hard_wired), backfeed);
    add_if(std::ranges::any_of(scenario.chargers, burns_fuel), carbon_monoxide);
    add_if(!scenario.packs.empty(), fault_current);
    add_if(any_pack(scenario, is_lead_acid) && is_charged(scenario), hydrogen);
    add_if(any_pack(scenario, is_lithium) && is_charged(scenario), lithium_charging);
    return cautions;
}

}  // namespace answers
