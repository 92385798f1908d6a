#include "outage/packs.hpp"

namespace outage {

using namespace units;

namespace {

constexpr double charge_to_come_back = 0.05;  // of the rated charge; common practice, no source

}  // namespace

LikePacks::LikePacks(const Unit& unit)
    : unit_(unit),
      count_(unit.bank.count),
      inner_share_(unit.bank.setup.inner / (unit.bank.setup.inner + unit.bank.setup.path)),
      wells_(unit.bank.at_start) {
    const auto& bank = unit_.bank;
    serving_direct_ = serving(unit, false);
    serving_ac_ = serving(unit, true);
    auto stops = protection(bank);
    if (unit_.inverter) stops.voltage_above = unit_.inverter->restart_voltage;
    inverter_rested_ = prepared(stops);
    idle_ = prepared({.filled_to = counts_as_full * bank.rated});
    waiting_ = idle_;
}

battery::Prepared LikePacks::prepared(const battery::Stops& stops) const {
    auto setup = unit_.bank.setup;
    setup.stops = stops;
    return battery::prepare(setup);
}

Energy LikePacks::stored() const {
    const auto& setup = unit_.bank.setup;
    return count_ * battery::stored_energy(setup.kinetics, *setup.open_circuit, wells_);
}

StateOfCharge LikePacks::charge() const {
    return StateOfCharge(std::max(0.0, 1.0 - wells_.removed / unit_.bank.rated));
}

void LikePacks::wait_for_charge() {
    const auto& bank = unit_.bank;
    auto stops = battery::Stops{.filled_to = counts_as_full * bank.rated};
    stops.removed_below =
        std::min(wells_.removed, most_removed(bank)) - charge_to_come_back * bank.rated;
    waiting_ = prepared(stops);
}

namespace {

std::vector<Bank> all_banks(const Unit& unit) {
    std::vector<Bank> banks{unit.bank};
    banks.insert(banks.end(), unit.others.begin(), unit.others.end());
    return banks;
}

std::vector<battery::PackGroup> groups_of(const std::vector<Bank>& banks) {
    std::vector<battery::PackGroup> groups;
    for (const Bank& bank : banks) {
        auto setup = bank.setup;
        setup.stops = {.pack_cut_off = bank.cut_off, .current_above = first_limit(bank)};
        groups.push_back({setup, bank.count, bank.at_start});
    }
    return groups;
}

}  // namespace

UnlikePacks::UnlikePacks(const Unit& unit)
    : banks_(all_banks(unit)),
      bank_(groups_of(banks_), unit.shared),
      states_(banks_.size(), State::closed),
      opened_at_(banks_.size()) {
    for (const Bank& bank : banks_) {
        usable_ += static_cast<double>(bank.count) * bank.usable;
        rated_ += static_cast<double>(bank.count) * bank.rated;
    }
    if (!unit.inverter) return;
    cut_off_ = unit.inverter->cutoff_voltage;
    restart_ = unit.inverter->restart_voltage;
}

Charge UnlikePacks::most_removed_of_all() const {
    Charge sum{};
    for (const Bank& bank : banks_)
        sum += static_cast<double>(bank.count) * most_removed(bank);
    return sum;
}

StateOfCharge UnlikePacks::charge() const {
    return StateOfCharge(std::max(0.0, 1.0 - bank_.removed() / rated_));
}

battery::BankStops UnlikePacks::stops(Duty duty) const {
    battery::BankStops stops{.filled_to = counts_as_full * rated_};
    if (duty == Duty::waiting) stops.removed_below = waits_below_;
    if (duty == Duty::waiting || duty == Duty::idle) return stops;
    stops.removed_above = usable_;
    if (duty == Duty::serving_ac) stops.cut_off = cut_off_;
    if (duty == Duty::inverter_rested) stops.voltage_above = restart_;
    return stops;
}

Leg UnlikePacks::advance(Duty duty, Power power, Duration time) {
    Leg leg;
    const auto step = bank_.advance(stops(duty), power, time);
    leg = {.time = step.time,
           .ending = step.ending,
           .pack = step.pack,
           .energy = step.energy,
           .in_paths = step.in_paths,
           .voltage = step.voltage,
           .at_pack = step.at_pack,
           .largest = step.largest,
           .at_most = step.at_most};
    if (step.ending == battery::Ending::pack_restored) {
        set(step.pack, State::closed);
        closed_again_.push_back(step.pack);
    }
    return leg;
}

battery::OperatingPoint UnlikePacks::operating_point(Duty, Power power) {
    return bank_.operating_point(power);
}

void UnlikePacks::set(std::size_t bank, State state) {
    states_[bank] = state;
    const bool closed = state == State::closed;
    bank_.let(bank, closed, closed || state == State::empty);
    if (state == State::empty)
        bank_.restore_below(bank,
                            bank_.wells(bank).removed - charge_to_come_back * banks_[bank].rated);
    else
        bank_.restore_below(bank, std::nullopt);
}

Opened UnlikePacks::open(const Leg& leg, Power demanded) {
    if (leg.ending == battery::Ending::current_limit) {
        set(leg.pack, blows(leg.pack) ? State::blown : State::over_current);
        opened_at_[leg.pack] = demanded;
    } else {
        set(leg.pack, State::empty);
    }
    return bank_.any_gives() ? Opened::one : Opened::all;
}

void UnlikePacks::wait_for_charge() {
    waits_below_ = std::min(bank_.removed(), most_removed_of_all()) - charge_to_come_back * rated_;
}

void UnlikePacks::come_back() {
    for (std::size_t i = 0; i < banks_.size(); ++i)
        if (states_[i] != State::blown) set(i, State::closed);
}

void UnlikePacks::demand_is(Power demanded) {
    for (std::size_t i = 0; i < banks_.size(); ++i)
        if (states_[i] == State::over_current && demanded < opened_at_[i]) {
            set(i, State::closed);
            closed_again_.push_back(i);
        }
}

std::vector<std::size_t> UnlikePacks::closed_again() {
    return std::exchange(closed_again_, {});
}

}  // namespace outage
