#include "abreast/bank_lanes.hpp"

#include <algorithm>
#include <cassert>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "abreast/alone.hpp"
#include "abreast/bank_stride.hpp"
#include "abreast/ends.hpp"
#include "battery/bank.hpp"
#include "battery/step/tolerances.hpp"
#include "outage/clock/packs.hpp"
#include "outage/clock/serving.hpp"

namespace abreast::lanes_detail {

namespace {

using namespace units;
using outage::LimitedBy;

// As the packs of the clock that no current has worn: outage::UnlikePacks.
battery::Arrangement watched(const outage::Bank& bank) {
    auto setup = bank.setup;
    setup.stops = {.pack_cut_off = bank.cut_off, .current_above = outage::first_limit(bank)};
    return setup;
}

std::size_t kinds_of(const outage::Unit& unit) {
    return unit.others.size() + 1;
}

// W at the bus.
double offered(std::span<const outage::SunChange> sun, std::size_t light) {
    return sun.empty() ? 0.0 : double(sun[light].offered / watt);
}

// What the glance at thresholds needs to know of the packs of a day: see BankLanes.
struct Far {
    double ohms = 0.0;
    double cut_off = 0.0;  // of the packs
};

Far far_of(const outage::Unit& unit, std::size_t day) {
    Far far;
    double conductance = 0.0;
    for (std::size_t k = 0; k < kinds_of(unit); ++k) {
        const auto bank = outage::on_day(unit, k, day);
        const double resistance = std::max<double>(battery::step::least_resistance,
                                                   (bank.setup.inner + bank.setup.path) / ohm);
        conductance += bank.count / resistance;
        if (bank.cut_off) far.cut_off = std::max<double>(far.cut_off, *bank.cut_off / volt);
    }
    far.ohms = 1.0 / conductance;
    return far;
}

// What a unit is in the lanes before anything has happened.
struct Fresh {
    const outage::Unit* unit;
    battery::Bank bank;
    Far far;
    Charge usable{};
    Charge rated{};
    Charge most_removed{};
};

Fresh fresh_of(const outage::Unit& unit) {
    std::vector<battery::PackGroup> groups;
    Charge usable{};
    Charge rated{};
    Charge most_removed{};
    for (std::size_t k = 0; k < kinds_of(unit); ++k) {
        const auto bank = outage::on_day(unit, k, 0);
        const double count = bank.count;
        groups.push_back({watched(bank), bank.count, bank.at_start});
        usable += count * bank.usable;
        rated += count * bank.rated;
        most_removed += count * outage::most_removed(bank);
    }
    return {&unit,       battery::Bank(groups, Resistance{}), far_of(unit, 0), usable, rated,
            most_removed};
}

//   job   its place among the outages
struct OneLane {
    std::size_t job = 0;
    const Outage* outage = nullptr;
    const Fresh* fresh = nullptr;
    std::optional<battery::Bank> bank;
    bool over = false;
    double sun_taken = 0.0;  // J, where somebody watches
};

// Where one kind of pack of a lane has come to.
struct WellsOfKind {
    double removed = 0.0;
    double head = 0.0;
    double available = 0.0;
    double below = 0.0;
    double taking = 0.0;
    double held = 0.0;
};

// A lane on its way through a stretch that is too long for one step.
//   length          that the last step ended with
//   removed, wells  where it began
struct InParts {
    std::size_t lane = 0;
    double passed = 0.0;
    double length = 0.0;
    double removed = 0.0;
    std::array<WellsOfKind, most_kinds> wells = {};
};

// Rounding must not let a glance pass what the step itself would stop at.
constexpr double a_hair_more = 1.0 + 1e-9;

class Block {
  public:
    Block(std::span<const Outage> outages, std::span<OwnEnding> endings, std::span<bool> decided,
          Width width, Watched* watched)
        : endings_(endings),
          decided_(decided),
          width_(width),
          running_(outages.size()),
          watched_(watched) {
        const auto& first = *outages.front().unit;
        lanes_->kinds = kinds_of(first);
        lanes_->tolerance = battery::default_tolerance / volt;
        lanes_->all_rules = false;
        of_.resize(outages.size());
        fresh_.reserve(outages.size());
        for (std::size_t lane = 0; lane < outages.size(); ++lane) {
            of_[lane].job = lane;
            of_[lane].outage = &outages[lane];
            of_[lane].fresh = &fresh(*outages[lane].unit);
            of_[lane].bank.emplace(of_[lane].fresh->bank);
            begin(lane);
        }
        const auto rate_of = [](const outage::Unit& unit, std::size_t k) {
            return (k == 0 ? unit.bank : unit.others[k - 1]).setup.kinetics.rate;
        };
        for (std::size_t k = 0; k < lanes_->kinds; ++k) {
            rates_[k] = rate_of(first, k) / hertz;
            one_rate_[k] = std::ranges::all_of(outages, [&](const Outage& outage) {
                return rate_of(*outage.unit, k) == rate_of(first, k);
            });
        }
    }

    void run(std::span<const Stretch> over, LaneCost& cost) {
        over_ = over;
        std::size_t step = over.size();
        std::size_t light = over.size();
        for (at_ = 0; at_ < over.size() && running_ > 0; ++at_) {
            const Stretch& stretch = over[at_];
            show(stretch.begins);
            close_ranks();
            if (stretch.day != day_) begin_day(stretch.day);
            if (at_ == 0 || stretch.step != step) ask(step = stretch.step, stretch);
            if (at_ == 0 || stretch.light != light) shine(light = stretch.light);
            BankStretch common{
                .time = stretch.time, .through_inverter = through_, .alike = one_rate_};
            for (std::size_t k = 0; k < lanes_->kinds; ++k)
                common.decayed[k] = battery::decay(rates_[k] * stretch.time);
            if (watched_) hold_back();
            bank_stride(width_, *lanes_, common, of_.size());
            cost.steps += running_;
            if (watched_) take_sun(stretch.time);
            take_in_parts(common);
            for (const InParts& lane : held_back_) {
                back_to_the_beginning(lane);
                lanes_->alone[lane.lane] = double(BankStep::disturbed);
            }
            each_alone(alone(), [&](std::size_t lane) {
                if (of_[lane].over) return;
                ++cost.one_by_one;
                take_alone(lane, stretch);
            });
        }
        if (!over.empty()) show(over.back().ends);
    }

    void finish(Duration lasts) {
        for (const OneLane& of : of_)
            if (!of.over) endings_[of.job] = {.lasts = lasts, .survives = true};
    }

  private:
    std::span<OwnEnding> endings_;
    std::span<bool> decided_;
    Width width_;
    std::size_t running_;
    Watched* watched_;
    std::unique_ptr<BankLanes> lanes_ = std::make_unique<BankLanes>();
    std::vector<OneLane> of_;
    std::vector<std::unique_ptr<Fresh>> fresh_;
    std::vector<InParts> parts_;
    std::vector<InParts> held_back_;          // where those stood that take the stretch alone
    std::array<double, most_kinds> rates_{};  // of the first lane's kinds
    std::array<bool, most_kinds> one_rate_{};
    std::span<const Stretch> over_;
    std::size_t at_ = 0;
    std::size_t day_ = 0;
    bool through_ = false;

    // To who watches: where those that have not failed have come to, when such a moment is there.
    void show(double now) {
        for (; watched_ != nullptr && watched_->is_due(now); ++watched_->next)
            for (std::size_t lane = 0; lane < of_.size(); ++lane) {
                if (of_[lane].over) continue;
                leave(lane);
                Seen seen{.wells = {}, .sun_taken = of_[lane].sun_taken * joule};
                for (std::size_t k = 0; k < lanes_->kinds; ++k)
                    seen.wells.push_back(of_[lane].bank->wells(k));
                watched_->seen[of_[lane].job].push_back(std::move(seen));
            }
    }
    // All that the sun offers is taken, but where a lane is taken alone, and where no pack may be
    // charged, for the cold.
    [[nodiscard]] double taken_by_all(std::size_t lane, double time) const {
        const double sun = lanes_->sun[lane];
        if (lanes_->any_takes[lane] != 0.0) return sun * time;
        return taken_of_sun(sun, lanes_->charger[lane], lanes_->taken[lane], time, 0.0);
    }
    // Those whose packs may not take all that the sun has left over, were it one kind that takes
    // it: the bank alone tells how much they took.
    void hold_back() {
        held_back_.clear();
        for (std::size_t lane = 0; lane < of_.size(); ++lane) {
            if (of_[lane].over || !(lanes_->sun[lane] > 0.0) || lanes_->any_takes[lane] == 0.0)
                continue;
            double most = std::numeric_limits<double>::infinity();
            for (std::size_t k = 0; k < lanes_->kinds; ++k)
                most = std::min(most, -lanes_->of[k].count[lane] * lanes_->of[k].floor[lane]);
            if (leaves_some(lanes_->sun[lane] + lanes_->charger[lane] - lanes_->taken[lane], most,
                            lanes_->absorption[lane]))
                held_back_.push_back(in_parts(lane));
        }
    }
    void take_sun(double time) {
        for (std::size_t lane = 0; lane < of_.size(); ++lane)
            of_[lane].sun_taken += taken_by_all(lane, time);
    }

    const Fresh& fresh(const outage::Unit& unit) {
        for (const auto& known : fresh_)
            if (known->unit == &unit) return *known;
        return *fresh_.emplace_back(std::make_unique<Fresh>(fresh_of(unit)));
    }

    const Need& need(std::size_t lane, std::size_t step) const {
        return of_[lane].outage->needs[step];
    }

    // Lanes that have ended give way to those at the back, where that saves a stride of eight.
    void close_ranks() {
        constexpr std::size_t at_once = 8;
        const auto strides = [](std::size_t count) { return (count + at_once - 1) / at_once; };
        if (strides(running_) == strides(of_.size())) return;
        for (std::size_t lane = 0; lane < of_.size();) {
            if (!of_[lane].over) {
                ++lane;
                continue;
            }
            const std::size_t last = of_.size() - 1;
            if (lane != last) {
                of_[lane] = std::move(of_[last]);
                lanes_->move(last, lane);
            }
            of_.pop_back();
        }
    }

    InParts in_parts(std::size_t lane) const {
        InParts part{.lane = lane, .removed = lanes_->removed[lane]};
        for (std::size_t k = 0; k < lanes_->kinds; ++k) {
            const KindLanes& kind = lanes_->of[k];
            part.wells[k] = {kind.removed[lane], kind.head[lane],   kind.available[lane],
                             kind.below[lane],   kind.taking[lane], kind.held[lane]};
        }
        return part;
    }
    void back_to_the_beginning(const InParts& part) {
        lanes_->removed[part.lane] = part.removed;
        for (std::size_t k = 0; k < lanes_->kinds; ++k) {
            KindLanes& kind = lanes_->of[k];
            const WellsOfKind& wells = part.wells[k];
            kind.removed[part.lane] = wells.removed;
            kind.head[part.lane] = wells.head;
            kind.available[part.lane] = wells.available;
            kind.below[part.lane] = wells.below;
            kind.taking[part.lane] = wells.taking;
            kind.held[part.lane] = wells.held;
        }
    }

    // What became of a part, as battery::Bank goes on from it; whether there is another.
    bool goes_on(InParts& part, double until) {
        using battery::step::shortest;
        const std::size_t lane = part.lane;
        const double moved = lanes_->moved[lane];
        const double time = lanes_->time[lane];
        const double left = until - part.passed;
        const double by = 0.9 * lanes_->tolerance / moved;
        switch (lanes_->became(lane)) {
            case BankStep::done:
                part.length = moved > 0.0 ? time * std::min(4.0, by)
                                          : std::numeric_limits<double>::infinity();
                part.length = std::max(part.length, shortest);
                part.passed = time >= left ? until : part.passed + time;
                lanes_->time[lane] = std::min(until - part.passed, part.length);
                return part.passed < until;
            case BankStep::too_long:
                if (time <= shortest) break;
                part.length = std::max(shortest, time * std::max(0.05, by));
                lanes_->time[lane] = part.length;
                for (std::size_t k = 0; k < lanes_->kinds; ++k) {
                    KindLanes& kind = lanes_->of[k];
                    kind.taking[lane] = kind.tried_taking[lane];
                    kind.held[lane] = kind.tried_held[lane];
                }
                return true;
            case BankStep::disturbed:
                break;
        }
        back_to_the_beginning(part);
        lanes_->alone[lane] = double(BankStep::disturbed);
        return false;
    }

    // Lanes for which the stretch is too long take it in parts, each of a length of its own, as
    // its bank would; where a part meets something the bank takes all of the stretch.
    void take_in_parts(BankStretch stretch) {
        parts_.clear();
        each_alone(alone(), [&](std::size_t lane) {
            if (of_[lane].over) return;
            if (lanes_->became(lane) == BankStep::too_long) parts_.push_back(in_parts(lane));
        });
        if (parts_.empty()) return;
        stretch.own_time = true;
        lanes_->goes.fill(0.0);
        for (const InParts& part : parts_) {
            lanes_->goes[part.lane] = 1.0;
            lanes_->time[part.lane] = stretch.time;
        }
        for (;;) {
            std::erase_if(parts_, [&](InParts& part) {
                if (goes_on(part, stretch.time)) return false;
                lanes_->goes[part.lane] = 0.0;
                return true;
            });
            if (parts_.empty()) return;
            bank_stride(width_, *lanes_, stretch, of_.size());
        }
    }

    std::span<const double> alone() const { return std::span(lanes_->alone).first(of_.size()); }

    void begin(std::size_t lane) {
        const Fresh& fresh = *of_[lane].fresh;
        lanes_->removed_above[lane] = fresh.usable / coulomb;
        lanes_->filled_to[lane] = outage::counts_as_full * fresh.rated / coulomb;
        lanes_->sun[lane] = 0.0;
        stand(lane);
        look_far(lane, fresh.far);
        const Charge removed = of_[lane].bank->removed();
        if (removed >= fresh.usable)
            end(lane, {}, LimitedBy::usable);
        else if (removed >= fresh.most_removed)
            end(lane, {}, LimitedBy::charge);
    }

    void look_far(std::size_t lane, const Far& far) {
        const MostNeeded& most = *of_[lane].outage->most;
        const auto highest = [&](bool through) {
            const Voltage cut_off =
                outage::cut_off_of(through, most.lowest * volt, most.needs * volt);
            return std::max<double>(far.cut_off, cut_off / volt) * a_hair_more;
        };
        lanes_->ohms[lane] = far.ohms * a_hair_more;
        lanes_->cut_off_with_inverter[lane] = highest(true);
        lanes_->cut_off_direct[lane] = highest(false);
    }

    void begin_day(std::size_t day) {
        day_ = day;
        for (std::size_t lane = 0; lane < of_.size(); ++lane) {
            if (of_[lane].over) continue;
            leave(lane);
            for (std::size_t k = 0; k < lanes_->kinds; ++k)
                of_[lane].bank->refit(k, watched(outage::on_day(*of_[lane].outage->unit, k, day)));
            stand(lane);
            look_far(lane, far_of(*of_[lane].outage->unit, day));
        }
    }

    void ask(std::size_t step, const Stretch& stretch) {
        through_ = need(0, step).through_inverter;
        for (std::size_t lane = 0; lane < of_.size(); ++lane) {
            const Need& asked = need(lane, step);
            lanes_->taken[lane] = asked.taken;
            lanes_->charger[lane] = asked.charger;
            if (!asked.carried && !of_[lane].over)
                end(lane, stretch.begins * second, LimitedBy::inverter_limit);
        }
    }

    // A lane that has ended stays in the shade.
    void shine(std::size_t light) {
        for (std::size_t lane = 0; lane < of_.size(); ++lane) {
            const OneLane& of = of_[lane];
            lanes_->sun[lane] = of.over ? 0.0 : offered(of.outage->sun, light);
        }
    }

    void end(std::size_t lane, Duration lasts, LimitedBy why) {
        of_[lane].over = true;
        --running_;
        endings_[of_[lane].job] = {.lasts = lasts, .survives = false, .limited_by = why};
    }
    void leave_to_the_clock(std::size_t lane) {
        of_[lane].over = true;
        --running_;
        decided_[of_[lane].job] = false;
    }

    // From the bank into the lane: what a day or a count makes of it, and where it has come to.
    void stand(std::size_t lane) {
        auto& quiet = of_[lane].bank->quiet();
        const auto& block = quiet.first_block();
        lanes_->absorption[lane] = quiet.absorption();
        lanes_->fill_tolerance = quiet.fill_tolerance();
        lanes_->drift_tolerance = quiet.drift_tolerance();
        lanes_->any_takes[lane] = 0.0;
        for (std::size_t k = 0; k < lanes_->kinds; ++k) {
            KindLanes& to = lanes_->of[k];
            const auto put = [&](Lane<double>& into, const auto& from) { into[lane] = from[k]; };
            put(to.count, block.count);
            put(to.per_count, block.per_count);
            put(to.resistance, block.resistance);
            put(to.inner, block.inner);
            put(to.width, block.width);
            put(to.bound, block.bound);
            put(to.bound_gain, block.bound_gain);
            put(to.head_gain, block.head_gain);
            put(to.rate, block.rate);
            put(to.per_total, block.per_total);
            put(to.gives, block.gives);
            put(to.takes, block.takes);
            put(to.floor, block.floor);
            put(to.charging_empty, block.charging_empty);
            put(to.charging_rise, block.charging_rise);
            put(to.per_rated, block.per_rated);
            put(to.knee, block.knee);
            if (block.takes[k] > 0.0) lanes_->any_takes[lane] = 1.0;
            if (block.bound[k] != 0.0 || block.charging_empty[k] != 0.0) lanes_->all_rules = true;
        }
        stand_there(lane);
    }
    void stand_there(std::size_t lane) {
        auto& quiet = of_[lane].bank->quiet();
        const auto& block = quiet.first_block();
        lanes_->removed[lane] = quiet.removed();
        lanes_->limit_drop[lane] = std::numeric_limits<double>::infinity();
        for (std::size_t k = 0; k < lanes_->kinds; ++k) {
            KindLanes& to = lanes_->of[k];
            const auto put = [&](Lane<double>& into, const auto& from) { into[lane] = from[k]; };
            put(to.coulombic, block.coulombic);
            put(to.empty, block.empty);
            put(to.counted_slope, block.counted_slope);
            put(to.at_zero, block.at_zero);
            put(to.slope, block.slope);
            put(to.low, block.low);
            put(to.high, block.high);
            put(to.bound_low, block.bound_low);
            put(to.bound_high, block.bound_high);
            put(to.least_removed, block.least_removed);
            put(to.most_removed, block.most_removed);
            put(to.removed, block.removed);
            put(to.head, block.head);
            put(to.available, block.available);
            put(to.below, block.below);
            to.stands_above[lane] = block.stands_above[k] != 0 ? 1.0 : 0.0;
            to.taking[lane] = block.mean.way.taking[k] != 0 ? 1.0 : 0.0;
            to.held[lane] = block.mean.way.held[k] != 0 ? 1.0 : 0.0;
            const double ohms =
                std::max<double>(battery::step::least_resistance, to.resistance[lane]);
            lanes_->limit_drop[lane] =
                std::min(lanes_->limit_drop[lane], ohms * block.current_above[k] / a_hair_more);
        }
    }
    // And back.
    void leave(std::size_t lane) {
        auto& bank = *of_[lane].bank;
        auto& block = bank.quiet().first_block();
        for (std::size_t k = 0; k < lanes_->kinds; ++k) {
            const KindLanes& from = lanes_->of[k];
            block.removed[k] = from.removed[lane];
            block.head[k] = from.head[lane];
            block.available[k] = from.available[lane];
            block.below[k] = from.below[lane];
            block.mean.way.taking[k] = from.taking[lane] != 0.0 ? -1 : 0;
            block.mean.way.held[k] = from.held[lane] != 0.0 ? -1 : 0;
        }
        bank.went_on_quietly(lanes_->removed[lane]);
    }

    battery::BankStops stops(std::size_t lane, const Need& asked) const {
        const Fresh& fresh = *of_[lane].fresh;
        battery::BankStops stops{.removed_above = fresh.usable,
                                 .filled_to = outage::counts_as_full * fresh.rated};
        const Voltage cut_off =
            outage::cut_off_of(asked.through_inverter, asked.lowest * volt, asked.needs * volt);
        if (cut_off > Voltage{}) stops.cut_off = cut_off;
        return stops;
    }

    // As outage::UnlikePacks::nothing_left, while none has opened.
    bool nothing_left(std::size_t lane) const {
        const auto& unit = *of_[lane].outage->unit;
        Charge left{};
        Charge total{};
        for (std::size_t k = 0; k < lanes_->kinds; ++k) {
            const auto bank = outage::on_day(unit, k, day_);
            const double count = bank.count;
            const Charge all = bank.setup.kinetics.total;
            total += count * all;
            left += count * std::max(Charge{}, bank.setup.reachable.value() * all -
                                                   of_[lane].bank->wells(k).removed);
        }
        return left <= outage::nothing_worth * total;
    }

    // The general step of the bank: knots, turns, thresholds. Ends the lane at its first failure.
    void take_alone(std::size_t lane, const Stretch& stretch) {
        using battery::Ending;
        leave(lane);
        auto& bank = *of_[lane].bank;
        const Need& asked = need(lane, stretch.step);
        const Power power =
            (lanes_->taken[lane] - (lanes_->sun[lane] + lanes_->charger[lane])) * watt;
        // Instants as the clock counts them, so that they end in the same bits.
        const Duration until = stretch.ends * second;
        Duration now = stretch.begins * second;
        const double sun = lanes_->sun[lane];
        const double charger = lanes_->charger[lane];
        of_[lane].sun_taken -= watched_ != nullptr ? taken_by_all(lane, stretch.time) : 0.0;
        while (now < until) {
            const auto step = bank.advance(stops(lane, asked), power, until - now);
            of_[lane].sun_taken += taken_of_sun(sun, charger, asked.taken, step.time / second,
                                                step.energy.accepted / joule);
            if (step.ending == Ending::completed) break;
            now = std::min(until, now + step.time);
            switch (step.ending) {
                case Ending::full:
                    continue;
                case Ending::usable_limit:
                    end(lane, now, LimitedBy::usable);
                    return;
                case Ending::cut_off:
                    end(lane, now, limited_by(asked, LimitedBy::low_voltage, nothing_left(lane)));
                    return;
                case Ending::cannot_be_delivered: {
                    const bool empty = nothing_left(lane);
                    end(lane, now,
                        limited_by(asked, empty ? LimitedBy::charge : LimitedBy::low_voltage,
                                   empty));
                    return;
                }
                case Ending::available_well_empty:
                case Ending::pack_cut_off:
                    go_on_without(lane, step, now);
                    return;
                default:
                    leave_to_the_clock(lane);
                    return;
            }
        }
        stand_there(lane);
    }

    // Whether what ended a leg ends the lane, where a pack may open and the others give.
    bool ends_with(std::size_t lane, outage::UnlikePacks& packs, const outage::Leg& leg,
                   const Need& asked, Duration now) {
        using battery::Ending;
        const Power taken = asked.taken * watt;
        const auto by = [&](LimitedBy why) {
            end(lane, now, why);
            return true;
        };
        const auto limited = [&](LimitedBy why) {
            return by(limited_by(asked, why, packs.nothing_left()));
        };
        switch (leg.ending) {
            case Ending::completed:
            case Ending::full:
            case Ending::pack_restored:
                return false;
            case Ending::available_well_empty:
            case Ending::pack_cut_off:
                if (packs.open(leg, taken) != outage::Opened::all) return false;
                if (leg.ending == Ending::pack_cut_off) return by(LimitedBy::low_voltage);
                if (taken > Power{}) return limited(LimitedBy::charge);
                break;  // what flows among them; nobody goes without
            case Ending::usable_limit:
                return by(LimitedBy::usable);
            case Ending::cut_off:
                return limited(LimitedBy::low_voltage);
            case Ending::cannot_be_delivered:
                return limited(packs.nothing_left() || packs.all_ended() ? LimitedBy::charge
                                                                         : LimitedBy::low_voltage);
            default:
                break;
        }
        leave_to_the_clock(lane);
        return true;
    }

    // A pack has opened and the others give: on to the end by the packs of the clock.
    void go_on_without(std::size_t lane, const battery::BankAdvanced& met, Duration now) {
        const auto& outage = *of_[lane].outage;
        outage::UnlikePacks packs(*outage.unit, day_, std::move(*of_[lane].bank));
        outage::Leg leg{.time = met.time,
                        .ending = met.ending,
                        .pack = met.pack,
                        .voltage = met.voltage,
                        .at_pack = met.at_pack,
                        .largest = met.largest};
        std::size_t day = day_;
        for (const Stretch& stretch : over_.subspan(at_)) {
            const Need& asked = outage.needs[stretch.step];
            const Duration until = stretch.ends * second;
            while (day < stretch.day)
                packs.begin_day(++day);
            packs.lowest_is(asked.lowest * volt, asked.needs * volt);
            if (!asked.carried) {
                end(lane, now, LimitedBy::inverter_limit);
                return;
            }
            const double sun = offered(outage.sun, stretch.light);
            const Power net = (asked.taken - (sun + asked.charger)) * watt;
            const auto duty =
                asked.through_inverter ? outage::Duty::serving_ac : outage::Duty::serving_direct;
            for (;;) {
                if (ends_with(lane, packs, leg, asked, now)) return;
                if (!(now < until)) break;
                packs.demand_is(asked.taken * watt);
                (void)packs.closed_again();
                leg = packs.advance(duty, net, until - now);
                now = leg.ending == battery::Ending::completed ? until
                                                               : std::min(until, now + leg.time);
            }
        }
        of_[lane].over = true;
        --running_;
        endings_[of_[lane].job] = {.lasts = over_.back().ends * second, .survives = true};
    }
};

}  // namespace

std::vector<Stretch> stretches(const Outage& outage, Duration lasts,
                               std::span<const Duration> watched) {
    std::vector<Stretch> made;
    made.reserve(outage.demand.size() + outage.sun.size() + outage.unit->days.size());
    const auto& days = outage.unit->days;
    std::size_t step = 0;
    std::size_t light = 0;
    std::size_t day = 0;
    for (Duration now{}; now < lasts;) {
        Duration next = lasts;
        if (day + 1 < days.size()) next = std::min(next, days[day + 1].from);
        if (step + 1 < outage.demand.size()) next = std::min(next, outage.demand[step + 1].from);
        if (light + 1 < outage.sun.size()) next = std::min(next, outage.sun[light + 1].from);
        while (!watched.empty() && watched.front() <= now)
            watched = watched.subspan(1);
        if (!watched.empty()) next = std::min(next, watched.front());
        if (next > now)
            made.push_back({.time = (next - now) / second,
                            .begins = now / second,
                            .ends = next / second,
                            .step = step,
                            .light = light,
                            .day = day});
        now = next;
        while (step + 1 < outage.demand.size() && outage.demand[step + 1].from <= now)
            ++step;
        while (light + 1 < outage.sun.size() && outage.sun[light + 1].from <= now)
            ++light;
        while (day + 1 < days.size() && days[day + 1].from <= now)
            ++day;
    }
    return made;
}

void run_banks(std::span<const Outage> outages, std::span<const Stretch> over, Duration lasts,
               std::span<OwnEnding> endings, std::span<bool> decided, LaneCost& cost, Width width,
               Watched* watched) {
    assert(outages.size() <= std::size_t(lanes) && endings.size() == outages.size());
    std::ranges::fill(decided, true);
    Block block(outages, endings, decided, width, watched);
    block.run(over, cost);
    block.finish(lasts);
}

}  // namespace abreast::lanes_detail
