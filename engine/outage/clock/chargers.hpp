// Chargers other than the sun: when they run, what they offer at the bus, what they ask of a
// generator. method.md (11), (12)
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "demand/demand.hpp"
#include "outage/unit.hpp"
#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"

namespace outage {

//   offers     at the bus, while it runs
//   draws      from the generator, while it gives all it can
//   on         when it runs; never for a wall charger, which the outage has silenced
struct ChargerRuns {
    std::string name;
    scenario::ChargerKind kind{};
    units::Power offers{};
    units::Power draws{};
    units::ApparentPower apparent{};
    demand::Spans on;
};

using VoltageAt = std::function<units::Voltage(units::Current)>;

//   held_at   the voltage at which a current is offered: that of packs half charged that take it
[[nodiscard]] std::vector<ChargerRuns> charger_runs(const scenario::Scenario& scenario,
                                                    const VoltageAt& held_at,
                                                    units::Voltage absorption,
                                                    scenario::Assumptions& assumptions);

// The same steps, with what all chargers together offer.
[[nodiscard]] std::vector<demand::DemandStep> with_chargers(
    const std::vector<demand::DemandStep>& steps, const std::vector<ChargerRuns>& chargers);

// Until a bank at this charge has risen to that, the charger running all the while and nothing
// else; nothing when it does not within four days.
[[nodiscard]] std::optional<units::Duration> time_to_charge(const Unit& unit, units::Power offered,
                                                            units::StateOfCharge from,
                                                            units::StateOfCharge to);

// A generator that its charger, or the charger and the start of a motor, overloads; a wall charger
// in an outage; how long a charge takes.
[[nodiscard]] scenario::Findings charger_findings(const scenario::Scenario& scenario,
                                                  const std::vector<ChargerRuns>& chargers,
                                                  const Unit& unit);

}  // namespace outage
