#include "outage/packs.hpp"

namespace outage {

using namespace units;

namespace {

constexpr double charge_to_come_back = 0.05;  // of the rated charge; common practice, no source

}  // namespace

LikePacks::LikePacks(const Unit& unit)
    : unit_(unit),
      bank_(on_day(unit, 0, 0)),
      count_(unit.bank.count),
      inner_share_(0.0),
      wells_(unit.bank.at_start),
      overload_(bank_),
      charging_(Overload::of_charging(bank_)),
      watched_(charging_.levels() > 0) {
    prepare();
}

void LikePacks::prepare() {
    inner_share_ = bank_.setup.inner / (bank_.setup.inner + bank_.setup.path);
    serving_.direct = serving(bank_, unit_.inverter, false);
    serving_.ac = serving(bank_, unit_.inverter, true);
    auto stops = protection(bank_);
    if (unit_.inverter) stops.voltage_above = unit_.inverter->restart_voltage;
    serving_.inverter_rested = prepared(stops);
    idle_ = prepared({.filled_to = counts_as_full * bank_.rated});
    waiting_ = prepared({.removed_below = waits_below_, .filled_to = counts_as_full * bank_.rated});
    overloaded_.clear();
    if (!overload_.timed()) return;
    for (std::size_t passed = 1; passed <= overload_.levels(); ++passed) {
        Serving beyond;
        stops = protection(bank_);
        stops.current_above = overload_.watched(passed);
        beyond.direct = prepared(stops);
        if (unit_.inverter) stops.voltage_above = unit_.inverter->restart_voltage;
        beyond.inverter_rested = prepared(stops);
        stops.voltage_above.reset();
        if (unit_.inverter) stops.cut_off = unit_.inverter->cutoff_voltage;
        beyond.ac = prepared(stops);
        overloaded_.push_back(beyond);
    }
}

void LikePacks::begin_day(std::size_t day) {
    bank_ = on_day(unit_, 0, day);
    overload_ = Overload(bank_, overload_);
    charging_ = Overload::of_charging(bank_).after(charging_);
    watched_ = charging_.levels() > 0 || blown_;
    prepare();
}

battery::Prepared LikePacks::prepared(const battery::Stops& stops) const {
    auto setup = bank_.setup;
    setup.stops = stops;
    return battery::prepare(setup);
}

namespace {

// Some of a leg and then more of it, which says how it ends.
Leg then(const Leg& first, Leg more) {
    more.time += first.time;
    more.energy.delivered += first.energy.delivered;
    more.energy.accepted += first.energy.accepted;
    more.energy.unaccepted += first.energy.unaccepted;
    more.energy.in_resistance += first.energy.in_resistance;
    more.energy.between_wells += first.energy.between_wells;
    more.energy.in_charging += first.energy.in_charging;
    more.in_paths += first.in_paths;
    more.largest = std::max(more.largest, first.largest);
    return more;
}

}  // namespace

// A current above what is borne for ever: on, until something opens. method.md (13)
Leg LikePacks::stand(Leg so_far, Duty duty, Power power, Duration time) {
    for (;;) {
        const auto before = operating_point(duty, power);
        const Current now = before.current / count_;
        overload_.settle(now);
        const auto standing = overload_.standing(now);
        if (standing.still <= at_once) {
            so_far.ending = battery::Ending::current_limit;
            so_far.opens = standing;
            return so_far;
        }
        const Duration left = time - so_far.time;
        const Leg more = step(at(duty, overload_.timed() ? overload_.passed() : 0), power,
                              std::min(left, until_looked_at(standing)));
        overload_.pass(std::max(now, more.at_pack), more.time);
        so_far = then(so_far, more);
        if (more.ending == battery::Ending::current_limit)
            overload_.rise();
        else if (more.ending != battery::Ending::completed || so_far.time >= time)
            return so_far;
    }
}

// Behind a fuse that has opened nothing flows: all that is offered is left over.
Leg LikePacks::cut_off_from(Duty duty, Power power, Duration time) {
    Leg leg = step(at(duty), Power{}, time);
    leg.energy.unaccepted += -power * leg.time;
    return leg;
}

// What charges the packs goes through their fuses: on, until one opens. method.md (13)
Leg LikePacks::charge(Duty duty, Power power, Duration time) {
    if (blown_) return cut_off_from(duty, power, time);
    Leg so_far;
    for (;;) {
        const Current into = -operating_point(duty, power).current / count_;
        charging_.settle(into);
        charging_.rise_to(into);
        const auto standing = charging_.standing(into);
        if (standing.still <= at_once) {
            so_far.ending = battery::Ending::current_limit;
            so_far.opens = standing;
            so_far.at_pack = -into;
            return so_far;
        }
        const Leg more =
            step(at(duty), power, std::min(time - so_far.time, until_looked_at(standing)));
        charging_.pass(std::max(into, more.largest), more.time);
        so_far = then(so_far, more);
        if (more.ending != battery::Ending::completed || so_far.time >= time) return so_far;
    }
}

Energy LikePacks::stored() const {
    const auto& setup = bank_.setup;
    return count_ * battery::stored_energy(setup.kinetics, *setup.open_circuit, wells_);
}

StateOfCharge LikePacks::charge() const {
    return StateOfCharge(std::max(0.0, 1.0 - wells_.removed / bank_.rated));
}

void LikePacks::wait_for_charge() {
    waits_below_ =
        std::min(wells_.removed, most_removed(bank_)) - charge_to_come_back * bank_.rated;
    waiting_ = prepared({.removed_below = waits_below_, .filled_to = counts_as_full * bank_.rated});
}

namespace {

std::vector<Bank> all_banks(const Unit& unit, std::size_t day) {
    std::vector<Bank> banks;
    for (std::size_t i = 0; i <= unit.others.size(); ++i)
        banks.push_back(on_day(unit, i, day));
    return banks;
}

battery::Arrangement watched(const Bank& bank, const Overload& overload) {
    auto setup = bank.setup;
    setup.stops = {.pack_cut_off = bank.cut_off, .current_above = overload.watched()};
    return setup;
}

std::vector<Overload> overloads_of(const std::vector<Bank>& banks) {
    std::vector<Overload> overloads;
    for (const Bank& bank : banks)
        overloads.emplace_back(bank);
    return overloads;
}

std::vector<battery::PackGroup> groups_of(const std::vector<Bank>& banks) {
    std::vector<battery::PackGroup> groups;
    for (const Bank& bank : banks)
        groups.push_back({watched(bank, Overload(bank)), bank.count, bank.at_start});
    return groups;
}

}  // namespace

UnlikePacks::UnlikePacks(const Unit& unit)
    : unit_(unit),
      banks_(all_banks(unit, 0)),
      bank_(groups_of(banks_), unit.shared),
      states_(banks_.size(), State::closed),
      opened_at_(banks_.size()),
      overloads_(overloads_of(banks_)) {
    for (const Bank& bank : banks_) {
        charging_.push_back(Overload::of_charging(bank));
        watched_ = watched_ || charging_.back().levels() > 0;
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

Leg UnlikePacks::step(Duty duty, Power power, Duration time) {
    const auto step = bank_.advance(stops(duty), power, time);
    return {.time = step.time,
            .ending = step.ending,
            .pack = step.pack,
            .energy = step.energy,
            .in_paths = step.in_paths,
            .voltage = step.voltage,
            .at_pack = step.at_pack,
            .largest = step.largest,
            .at_most = step.at_most};
}

Leg UnlikePacks::advance(Duty duty, Power power, Duration time) {
    Leg leg;
    if (!any_running_ && !watched_) leg = step(duty, power, time);
    if (leg.ending == battery::Ending::current_limit) {
        overloads_[leg.pack].rise();
        refit(leg.pack);
        any_running_ = true;
    }
    if (any_running_ || watched_) {
        leg = stand(leg, duty, power, time);
        look_who_runs();
    }
    if (leg.ending == battery::Ending::pack_restored) {
        set(leg.pack, State::closed);
        closed_again_.push_back(leg.pack);
    }
    return leg;
}

void UnlikePacks::look_who_runs() {
    any_running_ = std::ranges::any_of(overloads_, &Overload::running);
}

void UnlikePacks::refit(std::size_t bank) {
    bank_.refit(bank, watched(banks_[bank], overloads_[bank]));
}

void UnlikePacks::begin_day(std::size_t day) {
    for (std::size_t i = 0; i < banks_.size(); ++i) {
        banks_[i] = on_day(unit_, i, day);
        overloads_[i] = Overload(banks_[i], overloads_[i]);
        charging_[i] = Overload::of_charging(banks_[i]).after(charging_[i]);
        refit(i);
    }
    look_who_runs();
}

const Strain& UnlikePacks::strain() const {
    return std::ranges::max_element(overloads_, {},
                                    [](const auto& one) { return one.strain().longest; })
        ->strain();
}

// As LikePacks::stand, for each bank by its own current; the one that is due first opens first.
Leg UnlikePacks::stand(Leg so_far, Duty duty, Power power, Duration time) {
    std::vector<Current> currents(banks_.size());
    for (;;) {
        Overload::Standing first;
        std::size_t whose = 0;
        (void)bank_.operating_point(power);
        for (std::size_t i = 0; i < banks_.size(); ++i)
            currents[i] = bank_.current_of(i);
        for (std::size_t i = 0; i < banks_.size(); ++i) {
            auto& overload = overloads_[i];
            if (!overload.running()) continue;
            const auto passed = overload.passed();
            overload.settle(currents[i]);
            if (overload.passed() != passed) refit(i);
            const auto standing = overload.standing(currents[i]);
            if (standing.still < first.still) {
                first = standing;
                whose = i;
            }
        }
        for (std::size_t i = 0; watched_ && i < banks_.size(); ++i) {
            auto& fuse = charging_[i];
            fuse.settle(-currents[i]);
            fuse.rise_to(-currents[i]);
            const auto standing = fuse.standing(-currents[i]);
            if (standing.still < first.still) {
                first = standing;
                whose = i;
            }
        }
        if (first.still <= at_once) {
            so_far.ending = battery::Ending::current_limit;
            so_far.pack = whose;
            so_far.at_pack = currents[whose];
            so_far.opens = first;
            return so_far;
        }
        const Leg more = step(duty, power, std::min(time - so_far.time, until_looked_at(first)));
        (void)bank_.operating_point(power);
        for (std::size_t i = 0; i < banks_.size(); ++i)
            if (overloads_[i].running())
                overloads_[i].pass(std::max(currents[i], bank_.current_of(i)), more.time);
        for (std::size_t i = 0; watched_ && i < banks_.size(); ++i)
            charging_[i].pass(std::max(-currents[i], -bank_.current_of(i)), more.time);
        so_far = then(so_far, more);
        if (more.ending == battery::Ending::current_limit) {
            overloads_[more.pack].rise();
            refit(more.pack);
        } else if (more.ending != battery::Ending::completed || so_far.time >= time) {
            return so_far;
        }
    }
}

battery::OperatingPoint UnlikePacks::operating_point(Duty, Power power) {
    return bank_.operating_point(power);
}

void UnlikePacks::set(std::size_t bank, State state) {
    states_[bank] = state;
    const bool closed = state == State::closed;
    bank_.let(bank, closed, closed || state == State::empty);
    overloads_[bank].forget();
    refit(bank);
    if (state == State::empty)
        bank_.restore_below(bank,
                            bank_.wells(bank).removed - charge_to_come_back * banks_[bank].rated);
    else
        bank_.restore_below(bank, std::nullopt);
}

Opened UnlikePacks::open(const Leg& leg, Power demanded) {
    if (leg.ending == battery::Ending::current_limit) {
        set(leg.pack, leg.opens.fuse ? State::blown : State::over_current);
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
