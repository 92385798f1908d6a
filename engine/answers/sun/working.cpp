#include "answers/sun/working.hpp"

#include "answers/shown.hpp"
#include "answers/sun/words.hpp"

namespace answers {

namespace {

using words::Said;
using words::said;

struct Rows {
    std::vector<WorkingRow> rows = {};
    Said section = {};

    void add(Said quantity, Quantity value, std::string formula, Said source = {}) {
        rows.push_back({.section = section,
                        .quantity = std::move(quantity),
                        .value = std::move(value),
                        .formula = std::move(formula),
                        .source = std::move(source)});
    }
};

void add_sky(Rows& rows, const questions::SunResults& results) {
    const auto& site = results.setup.site;
    const auto& place = results.place;
    rows.section = said<"{place}, {day}">(site.name, day_label(results.day.midnight));
    rows.add(said<"latitude">(), shown(site.at.latitude), "", "place");
    rows.add(said<"declination of the sun">(), shown(place.declination), "solar method.md (5)");
    rows.add(said<"sun above the horizon">(), shown(place.above_horizon), "solar method.md (8)");
    rows.add(said<"level ground outside the air, the day">(), shown(place.outside),
             "solar method.md (14)");
    rows.add(said<"clearness, mean of the month">(), plain_number(place.clearness.value(), 3),
             "solar method.md (14)", site.source);
    rows.add(said<"level ground, mean day of the month">(),
             shown(place.outside * place.clearness.value()), "solar method.md (14)");
}

Said rated_power(const solar::PanelGroup& group) {
    const Said how = stands(group.aims);
    if (how.empty()) return said<"{n} x rated power">(group.count);
    return said<"{n} x rated power, {stands}">(group.count, how);
}

void add_panels(Rows& rows, const questions::SunResults& results) {
    rows.section = said<"Panels">();
    for (std::size_t i = 0; i < results.setup.groups.size(); ++i) {
        const auto& group = results.setup.groups[i];
        const auto& model = group.model;
        rows.add(rated_power(group), shown(model.rated_power), "", "panel.power");
        rows.add(said<"deratings together">(), plain_number(model.derating.value(), 3),
                 "solar method.md (30)");
        rows.add(said<"power lost a kelvin above {temperature}">(units::celsius(25.0)),
                 plain_number(-model.power_coefficient.value(), 4), "solar method.md (30)");
        rows.add(said<"cells in full sun and {temperature} of air">(units::celsius(0.0)),
                 shown(results.cells_in_full_sun[i]), "solar method.md (29)");
    }
    const auto& controller = results.setup.controller;
    rows.section = said<"Charge controller">();
    rows.add(said<"efficiency">(), plain_number(controller.efficiency.value(), 3),
             "solar method.md (33)", "charge_controller");
    if (controller.input_limit) {
        rows.add(said<"input limit of all panels">(), shown(*controller.input_limit),
                 "solar method.md (33)", "charge_controller.input_limit");
    }
    if (controller.output_limit) {
        rows.add(said<"current limit into the battery">(), shown(*controller.output_limit),
                 "solar method.md (33)", "charge_controller.output_limit");
    }
}

void add_recharge(Rows& rows, const scenario::Scenario& scenario,
                  const questions::SunResults& results) {
    rows.section = said<"Recharge">();
    const auto& whole = results.recharge.whole;
    const std::string formula = results.unit          ? "sizing method.md (8)"
                                : results.setup.hours ? "solar method.md (46)"
                                                      : "solar method.md (40) to (43)";
    if (results.unit) {
        rows.add(said<"members">(), plain_number(results.unit->sun.members, 0), formula);
    } else {
        rows.add(said<"weathers">(), plain_number(results.recharge.weathers, 0), formula);
    }
    rows.add(said<"whole outage, nine times in ten at least">(), shown(whole.low), formula);
    rows.add(said<"whole outage, likely">(), shown(whole.likely), formula);
    rows.add(said<"whole outage, one time in ten more than">(), shown(whole.high), formula);
    rows.add(said<"whole outage, mean">(), shown(whole.mean), formula);
    rows.add(said<"the mean, for each day">(), shown(whole.mean / outage_days(scenario)), "");
    if (!results.unit) {
        return;
    }
    const auto& ledger = results.unit->plan.likely.ledger;
    rows.section = said<"The likely course">();
    rows.add(said<"offered at the battery">(), shown(ledger.sun_offered), "outage method.md (3)");
    rows.add(said<"straight into loads">(), shown(ledger.sun_used), "outage method.md (3)");
    rows.add(said<"into the packs">(), shown(ledger.sun_stored), "outage method.md (3)");
    rows.add(said<"of it not stored in charging">(), shown(ledger.charging_loss),
             "battery method.md (42)");
    rows.add(said<"not taken: full, tapering or too cold">(), shown(ledger.sun_unused),
             "outage method.md (3)");
    rows.add(said<"turned away before that by the controller">(), shown(ledger.sun_clipped),
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
