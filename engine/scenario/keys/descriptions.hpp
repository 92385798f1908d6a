// Where the description of each table is found: one function a table, each in the .cpp of its part.
#pragma once

#include "scenario/keys/keys.hpp"
#include "scenario/scenario.hpp"

namespace scenario {

template <class Table>
[[nodiscard]] const Description<Table>& describe();

template <>
const Description<Outage>& describe<Outage>();
template <>
const Description<Place>& describe<Place>();
template <>
const Description<TwoWellNumbers>& describe<TwoWellNumbers>();
template <>
const Description<PulseLimit>& describe<PulseLimit>();
template <>
const Description<RateRow>& describe<RateRow>();
template <>
const Description<Pack>& describe<Pack>();
template <>
const Description<EfficiencyPoint>& describe<EfficiencyPoint>();
template <>
const Description<HeldOverload>& describe<HeldOverload>();
template <>
const Description<Inverter>& describe<Inverter>();
template <>
const Description<Aim>& describe<Aim>();
template <>
const Description<ShadedHours>& describe<ShadedHours>();
template <>
const Description<Panel>& describe<Panel>();
template <>
const Description<ChargeController>& describe<ChargeController>();
template <>
const Description<Charger>& describe<Charger>();
template <>
const Description<MeteredUse>& describe<MeteredUse>();
template <>
const Description<Nameplate>& describe<Nameplate>();
template <>
const Description<DutyCycle>& describe<DutyCycle>();
template <>
const Description<Motor>& describe<Motor>();
template <>
const Description<Load>& describe<Load>();
template <>
const Description<OpeningTime>& describe<OpeningTime>();
template <>
const Description<Fuse>& describe<Fuse>();
template <>
const Description<Switch>& describe<Switch>();
template <>
const Description<Wire>& describe<Wire>();
template <>
const Description<Connector>& describe<Connector>();
template <>
const Description<SocketOutlet>& describe<SocketOutlet>();
template <>
const Description<Case>& describe<Case>();
template <>
const Description<Circuit>& describe<Circuit>();
template <>
const Description<Storage>& describe<Storage>();
template <>
const Description<Goal>& describe<Goal>();
template <>
const Description<Clock>& describe<Clock>();
template <>
const Description<LogEntry>& describe<LogEntry>();
template <>
const Description<Scenario>& describe<Scenario>();

}  // namespace scenario
