#include "motor/appliances/appliance_words.hpp"

#include <algorithm>
#include <array>

namespace motor {

namespace {

using words::Said;
using words::said;

// In the order of the file: names, notes, sources.
const auto& all() {
    static const std::array sayings{
        said<"refrigerator">(),
        said<"old refrigerator">(),
        said<"variable-speed refrigerator">(),
        said<"auto-defrost heater">(),
        said<"chest freezer">(),
        said<"upright freezer">(),
        said<"mini fridge">(),
        said<"sump pump 1/3 hp">(),
        said<"sump pump 1/2 hp">(),
        said<"utility pump 1/6 hp">(),
        said<"well pump 1/2 hp">(),
        said<"well pump 230 V">(),
        said<"jet pump 1/2 hp">(),
        said<"furnace blower 1/3 hp">(),
        said<"variable-speed furnace blower">(),
        said<"gas furnace controls">(),
        said<"window air conditioner 10,000 Btu/h">(),
        said<"window air conditioner 5,000 Btu/h">(),
        said<"microwave oven">(),
        said<"CPAP without heat">(),
        said<"CPAP with heated humidifier">(),
        said<"BiPAP">(),
        said<"oxygen concentrator 5 L/min">(),
        said<"home ventilator">(),
        said<"modem and router">(),
        said<"phone charger">(),
        said<"laptop">(),
        said<"LED lamp">(),
        said<"LED television">(),
        said<"ceiling fan">(),
        said<"box fan">(),
        said<"circular saw">(),
        said<"corded drill">(),
        said<"tool battery charger">(),
        said<"air compressor 1/2 hp">(),
        said<"air compressor 1 hp">(),
        said<"coffee maker">(),
        said<"space heater">(),
        said<"garage door opener">(),
        said<"clothes washer">(),
        said<"slow cooker">(),
        said<"toaster">(),
        said<"about 18 cubic feet, made since 2000; in a warm room duty grows by a fifth to a "
             "half">(),
        said<"add it to a frost-free refrigerator or freezer">(),
        said<"about 15 cubic feet, manual defrost">(),
        said<"frost-free, 24 cubic feet">(),
        said<"how often it runs is up to the water; count the starts in an hour on a wet day">(),
        said<"two-wire, 115 V; on for 1 to 3 minutes at a time">(),
        said<"cannot be run from a 120 V unit, however strong its inverter">(),
        said<"inducer, igniter and controls without the blower; a hot-surface igniter takes the "
             "high value for 30 to 60 s; some controls refuse a quasi-square wave">(),
        said<"leave it off for 3 to 5 minutes before it starts again">(),
        said<"what it draws, not the 700 to 1,000 W it cooks with; its transformer takes up to 1.3 "
             "times that when switched on">(),
        said<"8 h a night; many machines take a 12 V lead, which saves the inverter's own draw">(),
        said<"8 h a night; humidifier and heated tube off stretches the battery two- to "
             "threefold">(),
        said<"8 h a night">(),
        said<"runs all the time; read its plate, and ask the supplier about cylinders: no battery "
             "box is a life-support device">(),
        said<"runs all the time; no battery box is a life-support device">(),
        said<"too little to wake an inverter from its search mode; 12 V models can do without the "
             "inverter">(),
        said<"2 to 4 h a day">(),
        said<"as bright as 60 W of filament; about 5 h of an evening">(),
        said<"32 to 55 inch">(),
        said<"free of the wood when it starts; a blade that binds draws as much as one at rest">(),
        said<"about 1 h a pack">(),
        said<"let the air out of its head before it starts; a 1,500 W generator failed to start "
             "one of 400 W">(),
        said<"let the air out of its head before it starts">(),
        said<"about 10 min a brew">(),
        said<"the dearest warmth there is from a battery">(),
        said<"1/4 to 1/2 hp, about 15 s; most doors also open by hand">(),
        said<"about 45 min a load; without its water heater">(),
        said<"[Refrigerator utility sheet] 450 kWh/yr; [10 CFR 430.32]; duty [DOE appliances]; "
             "start [Co-op generator table], [Extension generator article]">(),
        said<"planner's default">(),
        said<"[Carolina co-op usage table] 80 W mean new, 160 W at 20 years; [10 CFR 430.32]">(),
        said<"start [Co-op generator table]; run planner's default">(),
        said<"[Newspaper utility tables]; [NEC] Table 430.248">(),
        said<"[NEC] Table 430.248; [Generator manuals]">(),
        said<"[Submersible handbook] 64.4 A locked, from memory; [Co-op generator table] start "
             "1,950 W">(),
        said<"[NEC] Table 430.248">(),
        said<"[DOE appliances] 750-1,100 W; [Newspaper utility tables] 1,000 W for 650 W of "
             "cooking; power factor planner's default">(),
        said<"several pages that agree, no authority behind them">(),
        said<"[One metered CPAP] mean 34 W, 15-90 W">(),
        said<"[Ventilator guidance] 200-400 W; low end planner's default">(),
        said<"[UK household study] modem 5.4-8.4 W, router 3.9-9.3 W">(),
        said<"[DOE appliances] window fan 55-250 W">(),
        said<"[Welding-generator handbook] 900 W; electrical contractor's list 1,000-2,500 W">()};
    return sayings;
}

}  // namespace

Said said_of_appliances(const std::string& text) {
    const auto found =
        std::ranges::find_if(all(), [&](const Said& one) { return one.saying->english == text; });
    return found == all().end() ? Said(std::string(text)) : *found;
}

}  // namespace motor
