#include "answers/outage/working.hpp"

#include "answers/shown.hpp"

namespace answers {

namespace {

using outage::Ledger;
using outage::Plan;
using words::Said;
using words::said;

constexpr std::string_view account = "outage method.md (3)";
constexpr std::string_view idle_account = "outage method.md (4)";

void add(std::vector<WorkingRow>& rows, Said section, Said what, Quantity value,
         std::string_view formula, Said source) {
    rows.push_back({.section = std::move(section),
                    .quantity = std::move(what),
                    .value = std::move(value),
                    .formula = std::string(formula),
                    .source = std::move(source)});
}

Said outlet_in_words(scenario::Outlet outlet) {
    switch (outlet) {
        case scenario::Outlet::ac:
            return said<"AC">();
        case scenario::Outlet::twelve_volt:
            return said<"12 V">();
        case scenario::Outlet::usb:
            return said<"USB">();
        case scenario::Outlet::generator:
            return said<"generator">();
    }
    return {};
}

Said while_on(const outage::LoadUse& load, const Said& name) {
    const Said outlet = outlet_in_words(load.from);
    if (load.running_low == load.running_high)
        return said<"{load} while on ({outlet})">(name, outlet);
    return said<"{load} while on ({outlet}), {low} to {high}">(
        name, outlet, in_words(load.running_low), in_words(load.running_high));
}

void add_loads(std::vector<WorkingRow>& rows, const Plan& plan) {
    units::Energy all{};
    for (const auto& load : plan.loads) {
        all += load.wanted;
    }
    for (const auto& load : plan.loads) {
        const Said name =
            load.count > 1 ? said<"{n} x {load}">(load.count, load.name) : Said(load.name);
        const Said a_day = all > units::Energy{}
                               ? said<"{load}, a mean day, {share} of all loads">(
                                     name, in_words(units::Share(load.wanted / all), 2))
                               : said<"{load}, a mean day">(name);
        add(rows, said<"Loads">(), while_on(load, name), shown(load.running), "", load.from_what);
        add(rows, said<"Loads">(), a_day, shown(load.per_day), account,
            said<"on for {time}">(in_words(load.on_time)));
    }
}

void add_inverter(std::vector<WorkingRow>& rows, const Plan& plan) {
    const Ledger& ledger = plan.likely.ledger;
    add(rows, said<"Inverter">(), said<"draw with nothing plugged in">(), shown(plan.inverter_idle),
        "", "inverter.idle");
    add(rows, said<"Inverter">(), said<"that draw over the hours it is on">(), shown(ledger.idle),
        idle_account, "inverter.idle");
    add(rows, said<"Inverter">(), said<"conversion">(), shown(ledger.inverter_loss - ledger.idle),
        "inverter method.md", "inverter.efficiency");
}

void add_sun(std::vector<WorkingRow>& rows, const Plan& plan) {
    const Ledger& ledger = plan.likely.ledger;
    if (plan.sun.empty()) {
        return;
    }
    add(rows, said<"Sun">(), said<"turned away by the charge controller">(),
        shown(ledger.sun_clipped), "solar method.md", "charge_controller");
    add(rows, said<"Sun">(), said<"offered at the battery">(), shown(ledger.sun_offered),
        "solar method.md", said<"panel and place">());
    add(rows, said<"Sun">(), said<"straight into loads">(), shown(ledger.sun_used), account, "");
    add(rows, said<"Sun">(), said<"into the packs">(), shown(ledger.sun_stored), account, "");
    add(rows, said<"Sun">(), said<"not taken">(), shown(ledger.sun_unused), account, "");
}

void add_account(std::vector<WorkingRow>& rows, const Plan& plan) {
    const Ledger& ledger = plan.likely.ledger;
    const auto line = [&](Said what, units::Energy energy) {
        add(rows, said<"Energy account">(), std::move(what), shown(energy), account, "");
    };
    line(said<"left to use at the start">(), plan.usable_at_start);
    line(said<"stored at the start">(), ledger.stored_at_start);
    line(said<"from the sun, used and stored">(), ledger.sun_used + ledger.sun_stored);
    line(said<"to the loads">(), ledger.loads);
    line(said<"lost in the inverter">(), ledger.inverter_loss);
    line(said<"lost in 12 V and USB adaptors">(), ledger.converter_loss);
    line(said<"lost in leads, connectors and main cable">(), ledger.wiring_loss);
    line(said<"lost in the packs">(), ledger.battery_loss);
    line(said<"of it not stored in charging">(), ledger.charging_loss);
    line(said<"stored at the end">(), ledger.stored_at_end);
    line(said<"not explained by the lines above">(), ledger.residual);
    line(said<"wanted and not served">(), ledger.unserved);
}

}  // namespace

std::vector<WorkingRow> outage_working(const Plan& plan) {
    std::vector<WorkingRow> rows;
    add_loads(rows, plan);
    add_inverter(rows, plan);
    add_sun(rows, plan);
    add_account(rows, plan);
    return rows;
}

}  // namespace answers
