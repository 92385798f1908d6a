#include "answers/sun/working.hpp"

#include <fmt/format.h>

#include "answers/shown.hpp"
#include "answers/sun/words.hpp"

namespace answers {

namespace {

struct Rows {
    std::vector<WorkingRow> rows = {};
    std::string section = {};

    void add(std::string quantity, Quantity value, std::string formula, std::string source = "") {
        rows.push_back({.section = section,
                        .quantity = std::move(quantity),
                        .value = std::move(value),
                        .formula = std::move(formula),
                        .source = std::move(source)});
    }
};

Quantity plain(double value, int decimals) {
    return {.value = value, .unit = "1", .shown = fmt::format("{:.{}f}", value, decimals)};
}

void add_sky(Rows& rows, const questions::SunResults& results) {
    const auto& site = results.setup.site;
    const auto midnight = results.day.midnight;
    const auto noon = solar::solar_noon(site.at.longitude, midnight, site.utc_offset);
    const auto tilt_of_earth = solar::declination(units::instant(noon, site.utc_offset));
    const auto outside = solar::extraterrestrial_day(site.at.latitude, tilt_of_earth,
                                                     units::day_of_year(units::date_of(midnight)));
    const auto clearness = site.mean_clearness(midnight);
    const auto light = solar::rise_and_set(site.at, midnight, site.utc_offset);
    rows.section = fmt::format("{}, {}", site.name, day_label(midnight));
    rows.add("latitude", shown(site.at.latitude), "", "place");
    rows.add("declination of the sun", shown(tilt_of_earth), "solar method.md (5)");
    rows.add("sun above the horizon", shown(light.lasts), "solar method.md (8)");
    rows.add("level ground outside the air, the day", shown(outside), "solar method.md (14)");
    rows.add("clearness, mean of the month", plain(clearness.value(), 3), "solar method.md (14)",
             site.source);
    rows.add("level ground, mean day of the month", shown(outside * clearness.value()),
             "solar method.md (14)");
}

void add_panels(Rows& rows, const questions::SunResults& results) {
    rows.section = "Panels";
    for (const auto& group : results.setup.groups) {
        const auto& model = group.model;
        rows.add(fmt::format("{} x rated power, {}", group.count, stands(group.aims)),
                 shown(model.rated_power), "", "panel.power");
        rows.add("deratings together", plain(model.derating.value(), 3), "solar method.md (30)");
        rows.add("power lost a kelvin above 25 °C", plain(-model.power_coefficient.value(), 4),
                 "solar method.md (30)");
        rows.add("cells in full sun and 0 °C of air",
                 shown(solar::cell_temperature(model, 1000.0 * units::watt_per_square_metre,
                                               units::celsius(0.0))),
                 "solar method.md (29)");
    }
    const auto& controller = results.setup.controller;
    rows.section = "Charge controller";
    rows.add("efficiency", plain(controller.efficiency.value(), 3), "solar method.md (33)",
             "charge_controller");
    if (controller.input_limit) {
        rows.add("input limit of all panels", shown(*controller.input_limit),
                 "solar method.md (33)", "charge_controller.input_limit");
    }
    if (controller.output_limit) {
        rows.add("current limit into the battery", shown(*controller.output_limit),
                 "solar method.md (33)", "charge_controller.output_limit");
    }
}

void add_recharge(Rows& rows, const scenario::Scenario& scenario,
                  const questions::SunResults& results) {
    rows.section = "Recharge";
    const auto& whole = results.recharge.whole;
    const std::string formula = results.unit          ? "sizing method.md (8)"
                                : results.setup.hours ? "solar method.md (46)"
                                                      : "solar method.md (40) to (43)";
    if (results.unit) {
        rows.add("members", plain(results.unit->sun.members, 0), formula);
    } else {
        rows.add("weathers", plain(results.recharge.weathers, 0), formula);
    }
    rows.add("whole outage, nine times in ten at least", shown(whole.low), formula);
    rows.add("whole outage, likely", shown(whole.likely), formula);
    rows.add("whole outage, one time in ten more than", shown(whole.high), formula);
    rows.add("whole outage, mean", shown(whole.mean), formula);
    rows.add("the mean, for each day", shown(whole.mean / outage_days(scenario)), "");
    if (!results.unit) {
        return;
    }
    const auto& ledger = results.unit->plan.likely.ledger;
    rows.section = "The likely course";
    rows.add("offered at the battery", shown(ledger.sun_offered), "outage method.md (3)");
    rows.add("straight into loads", shown(ledger.sun_used), "outage method.md (3)");
    rows.add("into the packs", shown(ledger.sun_stored), "outage method.md (3)");
    rows.add("of it not stored in charging", shown(ledger.charging_loss), "battery method.md (42)");
    rows.add("not taken: full, tapering or too cold", shown(ledger.sun_unused),
             "outage method.md (3)");
    rows.add("turned away before that by the controller", shown(ledger.sun_clipped),
             "solar method.md (33)");
}

}  // namespace

std::vector<WorkingRow> sun_working(const scenario::Scenario& scenario,
                                    const questions::SunResults& results) {
    Rows rows;
    if (results.setup.groups.empty()) {
        return rows.rows;
    }
    add_sky(rows, results);
    add_panels(rows, results);
    add_recharge(rows, scenario, results);
    return rows.rows;
}

}  // namespace answers
