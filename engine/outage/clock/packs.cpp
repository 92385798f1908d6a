#include "outage/clock/packs.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "battery/levels.hpp"
#include "battery/with_cut_off.hpp"

namespace outage {

using namespace units;

namespace {

constexpr double charge_to_come_back = 0.05;  // of the rated charge; common practice, no source
constexpr Charge rounding = 1e-6 * coulomb;

}  // namespace

LikePacks::LikePacks(const Unit& unit)
    : unit_(unit),
      bank_(on_day(unit, 0, 0)),
      count_(unit.bank.count),
      inner_share_(0.0),
      wells_(unit.bank.at_start),
      overload_(bank_),
      charging_(Overload::of_charging(bank_)),
      watched_(charging_.levels() > 0),
      resting_(bank_) {
    prepare();
}

void LikePacks::prepare() {
    inner_share_ = bank_.setup.inner / (bank_.setup.inner + bank_.setup.path);
    const auto serving_with = [&](battery::Stops stops) {
        Serving made;
        stops.cut_off = cut_off_of(false, lowest_, needs_);
        made.direct = prepared(stops);
        if (unit_.inverter) stops.voltage_above = unit_.inverter->restart_voltage;
        made.inverter_rested = prepared(stops);
        stops.voltage_above.reset();
        stops.cut_off = cut_off_of(true, lowest_, needs_);
        made.ac = prepared(stops);
        return made;
    };
    auto stops = protection(bank_);
    serving_ = serving_with(stops);
    idle_ = prepared({.filled_to = counts_as_full * bank_.rated});
    waiting_ = idle_;
    overloaded_.clear();
    for (std::size_t passed = 1; overload_.timed() && passed <= overload_.levels(); ++passed) {
        stops.current_above = overload_.watched(passed);
        overloaded_.push_back(serving_with(stops));
    }
    set_limits();
}

template <class Visit>
void LikePacks::each_serving(Visit visit) {
    const auto visit_all = [&](Serving& serving) {
        visit(serving.ac, true);
        visit(serving.direct, false);
        visit(serving.inverter_rested, false);
    };
    visit_all(serving_);
    for (Serving& beyond : overloaded_)
        visit_all(beyond);
}

// The charge at which a leg ends, as the packs stand now.
void LikePacks::set_limits() {
    constexpr Charge never = std::numeric_limits<double>::infinity() * coulomb;
    const Charge above = usable_passed_ ? never : bank_.usable;
    Charge below = waits_below_.value_or(-never);
    if (usable_passed_) below = std::max(below, bank_.usable - charge_to_come_back * bank_.rated);
    each_serving([&](battery::Prepared& pack, bool) {
        pack.removed_above = above / coulomb;
        pack.removed_below = below / coulomb;
    });
    waiting_.removed_below = below / coulomb;
}

void LikePacks::lowest_is(Voltage lowest, Voltage needs) {
    if (lowest == lowest_ && needs == needs_) return;
    lowest_ = lowest;
    needs_ = needs;
    each_serving([&](battery::Prepared& pack, bool through_inverter) {
        const Voltage cut_off = cut_off_of(through_inverter, lowest, needs);
        if (pack.cut_off != cut_off / volt) battery::set_cut_off(pack, cut_off);
    });
}

void LikePacks::pass_usable() {
    usable_passed_ = true;
    set_limits();
}

Restored LikePacks::restored() {
    Restored restored;
    const Charge back = charge_to_come_back * bank_.rated;
    restored.usable = usable_passed_ && wells_.removed <= bank_.usable - back + rounding;
    restored.charge = waits_below_ && wells_.removed <= *waits_below_ + rounding;
    if (restored.usable) usable_passed_ = false;
    if (restored.charge) waits_below_.reset();
    set_limits();
    return restored;
}

bool LikePacks::nothing_left() const {
    const Charge total = bank_.setup.kinetics.total;
    return wells_.removed >= (bank_.setup.reachable.value() - nothing_worth) * total;
}

bool LikePacks::may_rise(Power power) const {
    if (power <= Power{}) return true;
    const auto& pack = serving_.direct;
    const Current out = operating_point(Duty::serving_direct, power).current / count_;
    return pack.exchange * (wells_.head_difference / coulomb) > out / ampere ||
           resting_.still_rises(out);
}

battery::OperatingPoint LikePacks::shown(Duty duty, Power power) const {
    auto point = operating_point(duty, power);
    if (!blown_) point.voltage += resting_.back_by(bank_, wells_, point.current / count_);
    return point;
}

bool LikePacks::gives(Duty duty, Power power, Voltage above, bool borne) {
    const auto point = shown(duty, power);
    if (!point.possible || point.voltage <= above) return false;
    if (power <= Power{}) return true;
    const Current out = point.current / count_;
    const auto limit = first_limit(bank_);
    if (borne && limit && out >= *limit) return false;
    const auto& pack = at(duty);
    return voltage_at_rest(duty) / volt > battery::empty_level(pack, out / ampere) + 1e-6 ||
           pack.exchange * (wells_.head_difference / coulomb) > out / ampere;
}

bool LikePacks::gives_rested(Duty duty, Power power, Voltage above) const {
    LikePacks rested = *this;
    rested.wells_.head_difference = Charge{};
    rested.resting_ = Resting(bank_);
    return rested.gives(duty, power, above, false);
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
    more.charge += first.charge;
    more.in_paths += first.in_paths;
    more.largest = std::max(more.largest, first.largest);
    return more;
}

}  // namespace

// A current above what is borne forever: on, until something opens. method.md (13)
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
    waits_below_ = wells_.removed - charge_to_come_back * bank_.rated;
    set_limits();
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
      bank_(groups_of(banks_), Resistance{}),
      states_(banks_.size(), State::closed),
      opened_at_(banks_.size()),
      overloads_(overloads_of(banks_)),
      tried_(banks_.size(), false) {
    for (const Bank& bank : banks_) {
        charging_.push_back(Overload::of_charging(bank));
        resting_.emplace_back(bank);
        watched_ = watched_ || charging_.back().levels() > 0;
        usable_ += static_cast<double>(bank.count) * bank.usable;
        rated_ += static_cast<double>(bank.count) * bank.rated;
    }
    if (unit.inverter) restart_ = unit.inverter->restart_voltage;
}

UnlikePacks::UnlikePacks(const Unit& unit, std::size_t day, battery::Bank bank)
    : UnlikePacks(unit) {
    if (day > 0) begin_day(day);
    bank_ = std::move(bank);
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
    if (duty == Duty::idle) return stops;
    stops.removed_below = ends_below();
    if (duty == Duty::waiting) return stops;
    if (!usable_passed_) stops.removed_above = usable_;
    const Voltage cut_off = cut_off_of(duty == Duty::serving_ac, lowest_, needs_);
    if (cut_off > Voltage{}) stops.cut_off = cut_off;
    if (duty == Duty::inverter_rested) stops.voltage_above = restart_;
    return stops;
}

std::optional<Charge> UnlikePacks::ends_below() const {
    auto below = waits_below_;
    const Charge of_usable = usable_ - charge_to_come_back * rated_;
    if (usable_passed_) below = below ? std::max(*below, of_usable) : of_usable;
    return below;
}

Restored UnlikePacks::restored() {
    Restored restored;
    const Charge removed = bank_.removed();
    restored.usable =
        usable_passed_ && removed <= usable_ - charge_to_come_back * rated_ + rounding;
    restored.charge = waits_below_ && removed <= *waits_below_ + rounding;
    if (restored.usable) usable_passed_ = false;
    if (restored.charge) waits_below_.reset();
    return restored;
}

bool UnlikePacks::nothing_left() const {
    Charge left{};
    Charge total{};
    for (std::size_t i = 0; i < banks_.size(); ++i) {
        if (states_[i] == State::blown || states_[i] == State::low) continue;
        const double count = banks_[i].count;
        const Charge all = banks_[i].setup.kinetics.total;
        total += count * all;
        left += count * std::max(Charge{},
                                 banks_[i].setup.reachable.value() * all - bank_.wells(i).removed);
    }
    return left <= nothing_worth * total;
}

bool UnlikePacks::all_ended() const {
    return std::ranges::all_of(
        states_, [](State state) { return state == State::empty || state == State::low; });
}

bool UnlikePacks::may_rise(Power power) const {
    if (power <= Power{}) return true;
    for (std::size_t i = 0; i < banks_.size(); ++i)
        if (bank_.wells(i).head_difference > Charge{} || resting_[i].still_rises({})) return true;
    return false;
}

bool UnlikePacks::gives(Duty duty, Power power, Voltage above, bool borne) {
    if (!bank_.any_gives() && power > Power{}) return false;
    const auto point = shown(duty, power);
    if (!point.possible || point.voltage <= above) return false;
    bool from_a_well = power <= Power{};
    for (std::size_t i = 0; i < banks_.size(); ++i) {
        if (states_[i] != State::closed) continue;
        const auto limit = first_limit(banks_[i]);
        if (borne && limit && current_of(i) >= *limit) return false;
        const auto& kinetics = banks_[i].setup.kinetics;
        const auto& setup = banks_[i].setup;
        const double locked = setup.locked.by_rate() ? setup.locked.at(current_of(i)).value()
                                                     : setup.reachable.complement().value();
        from_a_well = from_a_well ||
                      battery::available_fill(kinetics, bank_.wells(i)).value() > locked + 1e-6;
    }
    return from_a_well;
}

// Each levels within itself; what then flows from one to another is left out.
bool UnlikePacks::gives_rested(Duty duty, Power power, Voltage above) const {
    UnlikePacks rested = *this;
    const Duration long_enough = 1.0 * day;
    rested.ask_again();
    (void)rested.step(Duty::idle, Power{}, long_enough);
    rested.ask_again();
    return rested.gives(duty, power, above, false);
}

// Of packs that stopped giving because a well was empty, those whose other well has filled it.
void UnlikePacks::ask_again() {
    for (std::size_t i = 0; i < banks_.size(); ++i) {
        if (states_[i] != State::empty || tried_[i]) continue;
        const auto& kinetics = banks_[i].setup.kinetics;
        const bool fills = kinetics.available < Share(1.0) && kinetics.rate > Frequency{};
        const double locked = banks_[i].setup.reachable.complement().value();
        const auto wells = bank_.wells(i);
        if (!fills || !(wells.head_difference > Charge{})) continue;
        if (battery::fill(kinetics, wells).value() <= locked + nothing_worth) continue;
        set(i, State::closed);
        tried_[i] = true;
    }
}

Leg UnlikePacks::step(Duty duty, Power power, Duration time) {
    std::vector<Charge> removed;
    if (std::ranges::any_of(resting_, &Resting::comes_back))
        for (std::size_t i = 0; i < banks_.size(); ++i)
            removed.push_back(bank_.wells(i).removed);
    const auto step = bank_.advance(stops(duty), power, time);
    if (!removed.empty()) pass_rest(removed, step.time);
    return {.time = step.time,
            .ending = step.ending,
            .pack = step.pack,
            .energy = step.energy,
            .charge = step.charge,
            .in_paths = step.in_paths,
            .voltage = step.voltage,
            .at_pack = step.at_pack,
            .largest = step.largest,
            .at_most = step.at_most};
}

void UnlikePacks::pass_rest(const std::vector<Charge>& removed_before, Duration time) {
    for (std::size_t i = 0; i < banks_.size(); ++i)
        resting_[i].pass(bank_.wells(i).removed - removed_before[i], time);
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
    for (std::size_t i = 0; leg.time > Duration{} && i < tried_.size(); ++i)
        if (tried_[i]) {
            tried_[i] = false;
            closed_again_.push_back(i);
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

std::vector<PackCurrents> UnlikePacks::currents() const {
    std::vector<PackCurrents> all;
    for (std::size_t i = 0; i < banks_.size(); ++i) {
        const auto borne = bank_.borne(i);
        all.push_back({borne.given, borne.taken});
    }
    return all;
}

std::vector<Current> UnlikePacks::currents_at(Power power) {
    (void)bank_.operating_point(power);
    std::vector<Current> currents(banks_.size());
    for (std::size_t i = 0; i < banks_.size(); ++i)
        currents[i] = bank_.current_of(i);
    return currents;
}

// What opens first at these currents, of what is drawn and of what charges.
UnlikePacks::Due UnlikePacks::due(const std::vector<Current>& currents) {
    Due first;
    const auto look = [&](const Overload::Standing& standing, std::size_t whose) {
        if (standing.still < first.standing.still) first = {standing, whose};
    };
    for (std::size_t i = 0; i < banks_.size(); ++i) {
        auto& overload = overloads_[i];
        if (!overload.running()) continue;
        const auto passed = overload.passed();
        overload.settle(currents[i]);
        if (overload.passed() != passed) refit(i);
        look(overload.standing(currents[i]), i);
    }
    for (std::size_t i = 0; watched_ && i < banks_.size(); ++i) {
        auto& fuse = charging_[i];
        fuse.settle(-currents[i]);
        fuse.rise_to(-currents[i]);
        look(fuse.standing(-currents[i]), i);
    }
    return first;
}

// Time passes for what runs: at the larger of the currents before and after it.
void UnlikePacks::pass_overloads(const std::vector<Current>& before, Duration time) {
    for (std::size_t i = 0; i < banks_.size(); ++i)
        if (overloads_[i].running())
            overloads_[i].pass(std::max(before[i], bank_.current_of(i)), time);
    for (std::size_t i = 0; watched_ && i < banks_.size(); ++i)
        charging_[i].pass(std::max(-before[i], -bank_.current_of(i)), time);
}

// As LikePacks::stand, for each bank by its own current; the one that is due first opens first.
Leg UnlikePacks::stand(Leg so_far, Duty duty, Power power, Duration time) {
    for (;;) {
        const auto currents = currents_at(power);
        const Due first = due(currents);
        if (first.standing.still <= at_once) {
            so_far.ending = battery::Ending::current_limit;
            so_far.pack = first.whose;
            so_far.at_pack = currents[first.whose];
            so_far.opens = first.standing;
            return so_far;
        }
        const Leg more =
            step(duty, power, std::min(time - so_far.time, until_looked_at(first.standing)));
        (void)bank_.operating_point(power);
        pass_overloads(currents, more.time);
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

// Each that rests lifts the bus by its share of what conducts.
battery::OperatingPoint UnlikePacks::shown(Duty duty, Power power) {
    auto point = operating_point(duty, power);
    if (std::ranges::none_of(resting_, &Resting::comes_back)) return point;
    double conducts = 0.0;
    Voltage lifted{};
    for (std::size_t i = 0; i < banks_.size(); ++i) {
        if (states_[i] != State::closed) continue;
        const auto& setup = banks_[i].setup;
        const double here = banks_[i].count / std::max<double>(battery::step::least_resistance,
                                                               (setup.inner + setup.path) / ohm);
        conducts += here;
        lifted += here * resting_[i].back_by(banks_[i], bank_.wells(i), current_of(i));
    }
    if (conducts > 0.0) point.voltage += lifted / conducts;
    return point;
}

void UnlikePacks::set(std::size_t bank, State state) {
    states_[bank] = state;
    const bool closed = state == State::closed;
    const bool discharged = state == State::empty || state == State::low;
    bank_.let(bank, closed, closed || discharged);
    overloads_[bank].forget();
    refit(bank);
    if (discharged)
        bank_.restore_below(bank,
                            bank_.wells(bank).removed - charge_to_come_back * banks_[bank].rated);
    else
        bank_.restore_below(bank, std::nullopt);
}

Opened UnlikePacks::open(const Leg& leg, Power demanded) {
    opened_again_ = tried_[leg.pack];
    tried_[leg.pack] = false;
    if (leg.ending == battery::Ending::current_limit) {
        set(leg.pack, leg.opens.fuse ? State::blown : State::over_current);
        opened_at_[leg.pack] = demanded;
    } else {
        opened_at_[leg.pack] = demanded;
        set(leg.pack, leg.ending == battery::Ending::pack_cut_off ? State::low : State::empty);
    }
    return bank_.any_gives() ? Opened::one : Opened::all;
}

void UnlikePacks::wait_for_charge() {
    waits_below_ = bank_.removed() - charge_to_come_back * rated_;
}

void UnlikePacks::come_back() {
    for (std::size_t i = 0; i < banks_.size(); ++i) {
        if (states_[i] == State::closed || states_[i] == State::blown) continue;
        set(i, State::closed);
        closed_again_.push_back(i);
    }
}

void UnlikePacks::close_after_current() {
    for (std::size_t i = 0; i < banks_.size(); ++i)
        if (states_[i] == State::over_current) {
            set(i, State::closed);
            closed_again_.push_back(i);
        }
}

void UnlikePacks::demand_is(Power demanded) {
    for (std::size_t i = 0; i < banks_.size(); ++i) {
        // of what the cold locks a gentler draw gets more
        const bool unlocks = states_[i] == State::empty && banks_[i].setup.locked.by_rate();
        if ((states_[i] == State::over_current || unlocks) && demanded < opened_at_[i]) {
            set(i, State::closed);
            closed_again_.push_back(i);
        }
    }
}

std::vector<std::size_t> UnlikePacks::closed_again() {
    return std::exchange(closed_again_, {});
}

}  // namespace outage
