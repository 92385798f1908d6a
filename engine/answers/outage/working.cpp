#include "answers/outage/working.hpp"

#include <fmt/format.h>

#include "answers/shown.hpp"

namespace answers {

namespace {

using outage::Ledger;
using outage::Plan;

constexpr std::string_view account = "outage method.md (3)";
constexpr std::string_view idle_account = "outage method.md (4)";

void add(std::vector<WorkingRow>& rows, std::string section, std::string what, Quantity value,
         std::string_view formula, std::string source) {
    rows.push_back({.section = std::move(section),
                    .quantity = std::move(what),
                    .value = std::move(value),
                    .formula = std::string(formula),
                    .source = std::move(source)});
}

std::string_view outlet_in_words(scenario::Outlet outlet) {
    switch (outlet) {
        case scenario::Outlet::ac:
            return "AC";
        case scenario::Outlet::twelve_volt:
            return "12 V";
        case scenario::Outlet::usb:
            return "USB";
        case scenario::Outlet::generator:
            return "generator";
    }
    return "";
}

void add_loads(std::vector<WorkingRow>& rows, const Plan& plan) {
    units::Energy all{};
    for (const auto& load : plan.loads) {
        all += load.wanted;
    }
    for (const auto& load : plan.loads) {
        const std::string many = load.count > 1 ? fmt::format("{} x ", load.count) : "";
        const bool sharp = load.running_low == load.running_high;
        add(rows, "Loads",
            fmt::format("{}{} while on ({}){}", many, load.name, outlet_in_words(load.from),
                        sharp ? ""
                              : fmt::format(", {} to {}", in_words(load.running_low),
                                            in_words(load.running_high))),
            shown(load.running), "", load.from_what);
        add(rows, "Loads",
            fmt::format(
                "{}{}, a mean day{}", many, load.name,
                all > units::Energy{}
                    ? fmt::format(", {} of all loads", in_words(units::Share(load.wanted / all), 2))
                    : ""),
            shown(load.per_day), account, fmt::format("on for {}", in_words(load.on_time)));
    }
}

void add_inverter(std::vector<WorkingRow>& rows, const Plan& plan) {
    const Ledger& ledger = plan.likely.ledger;
    add(rows, "Inverter", "draw with nothing plugged in", shown(plan.inverter_idle), "",
        "inverter.idle");
    add(rows, "Inverter", "that draw over the hours it is on", shown(ledger.idle), idle_account,
        "inverter.idle");
    add(rows, "Inverter", "conversion", shown(ledger.inverter_loss - ledger.idle),
        "inverter method.md", "inverter.efficiency");
}

void add_sun(std::vector<WorkingRow>& rows, const Plan& plan) {
    const Ledger& ledger = plan.likely.ledger;
    if (plan.sun.empty()) {
        return;
    }
    add(rows, "Sun", "turned away by the charge controller", shown(ledger.sun_clipped),
        "solar method.md", "charge_controller");
    add(rows, "Sun", "offered at the battery", shown(ledger.sun_offered), "solar method.md",
        "panel and place");
    add(rows, "Sun", "straight into loads", shown(ledger.sun_used), account, "");
    add(rows, "Sun", "into the packs", shown(ledger.sun_stored), account, "");
    add(rows, "Sun", "not taken", shown(ledger.sun_unused), account, "");
}

void add_account(std::vector<WorkingRow>& rows, const Plan& plan) {
    const Ledger& ledger = plan.likely.ledger;
    const auto line = [&](std::string what, units::Energy energy) {
        add(rows, "Energy account", std::move(what), shown(energy), account, "");
    };
    line("left to use at the start", plan.usable_at_start);
    line("stored at the start", ledger.stored_at_start);
    line("from the sun, used and stored", ledger.sun_used + ledger.sun_stored);
    line("to the loads", ledger.loads);
    line("lost in the inverter", ledger.inverter_loss);
    line("lost in 12 V and USB adaptors", ledger.converter_loss);
    line("lost in leads, connectors and main cable", ledger.wiring_loss);
    line("lost in the packs", ledger.battery_loss);
    line("of it not stored in charging", ledger.charging_loss);
    line("stored at the end", ledger.stored_at_end);
    line("not explained by the lines above", ledger.residual);
    line("wanted and not served", ledger.unserved);
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
