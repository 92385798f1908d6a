#include "estimate/lives.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <optional>

#include "abreast/own.hpp"
#include "abreast/watch.hpp"
#include "battery/cell/percent.hpp"
#include "estimate/ahead/switched_off.hpp"
#include "estimate/stretches.hpp"
#include "outage/clock/banks.hpp"
#include "outage/in_threads.hpp"
#include "outage/warmth.hpp"
#include "unit/built.hpp"

namespace estimate {

using namespace units;
using chance::Lived;
using chance::MemberEnd;
using chance::Values;

namespace {

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);
// The kind that each pack of the scenario is of: that of its name, or the one that is like it.
std::vector<std::size_t> kinds_of_packs(const scenario::Scenario& scenario,
                                        const std::string& folder, const outage::Ready& ready) {
    std::vector<std::size_t> kinds;
    scenario::Assumptions told_already;
    const auto warmth = outage::warmth_of(scenario, folder, told_already);
    const auto built = unit::built(scenario, warmth);
    for (std::size_t pack = 0; pack < scenario.packs.size(); ++pack) {
        std::size_t found = 0;
        for (std::size_t kind = 0; kind < ready.kinds.size(); ++kind) {
            if (ready.kinds[kind].name == scenario.packs[pack].name) {
                found = kind;
                break;
            }
            if (!built) continue;
            for (const unit::Packs& one : built->packs)
                if (one.index == pack && one.model->capacity == ready.kinds[kind].model->capacity &&
                    one.model->inner == ready.kinds[kind].model->inner &&
                    one.model->lead == ready.kinds[kind].model->lead)
                    found = kind;
        }
        kinds.push_back(found);
    }
    return kinds;
}

}  // namespace

// A part of the outage with the same packs throughout.
struct Lives::Stretch {
    Duration from{};
    outage::PackKinds kinds;
};

// The packs through their changes, for one member.
class Lives::Walk {
  public:
    Walk(const Lives& lives, const Lived& lived) : lives_(lives), lived_(lived) {
        const Story& story = lives.story_;
        for (std::size_t pack = 0; pack < story.at_start.size(); ++pack)
            if (story.at_start[pack] > 0 && !lives.kind_of_.empty())
                joined_.push_back({lives.kind_of_[pack], pack, story.at_start[pack], {}});
    }

    [[nodiscard]] Stretch stretch() const {
        Stretch made{.from = from_, .kinds = {}};
        if (lives_.kind_of_.empty()) {
            made.kinds = lived_.kinds;
            return made;
        }
        for (const Group& group : joined_) {
            const auto same = std::ranges::find_if(made.kinds, [&](const outage::PackKind& kind) {
                return kind.name == lived_.kinds[group.kind].name &&
                       (!group.charge ||
                        battery::rested_with(kind.model->capacity, *group.charge) ==
                            kind.model->at_start);
            });
            if (same != made.kinds.end()) {
                same->count += group.count;
                continue;
            }
            auto kind = with_charge(lived_.kinds[group.kind], group.charge);
            kind.count = group.count;
            kind.days = from_then_on(kind.days, from_);
            made.kinds.push_back(std::move(kind));
        }
        return made;
    }

    // Until the next change, or the end.
    [[nodiscard]] Duration until() const {
        const auto& changes = lives_.story_.pack_changes;
        return next_ < changes.size() ? changes[next_].at : lives_.world_->ready().outage.lasts;
    }
    [[nodiscard]] bool is_last() const { return next_ >= lives_.story_.pack_changes.size(); }

    // To the next stretch: all that are joined stand at this charge.
    void pass(StateOfCharge charge) {
        for (Group& group : joined_)
            group.charge = charge;
        const auto& changes = lives_.story_.pack_changes;
        from_ = until();
        while (next_ < changes.size() && changes[next_].at <= from_ + as_good_as_at_once)
            take(changes[next_++], charge);
    }

  private:
    const Lives& lives_;
    const Lived& lived_;
    Duration from_{};
    std::size_t next_ = 0;
    std::vector<Group> joined_;
    std::vector<Group> away_;

    void take(const PackChange& change, StateOfCharge charge) {
        if (change.joined > 0) {
            Group group{lives_.kind_of_[change.pack], change.pack, change.joined, change.charge};
            const auto was =
                std::ranges::find(away_, change.pack, [](const Group& one) { return one.pack; });
            if (was != away_.end()) {
                if (!group.charge) group.charge = was->charge;
                away_.erase(was);
            }
            joined_.push_back(group);
            return;
        }
        int gone = -change.joined;
        away_.push_back({lives_.kind_of_[change.pack], change.pack, gone, charge});
        for (Group& group : joined_) {
            if (group.pack != change.pack) continue;
            const int taken = std::min(gone, group.count);
            group.count -= taken;
            gone -= taken;
        }
        std::erase_if(joined_, [](const Group& group) { return group.count == 0; });
    }
};

Result<Lives> Lives::of(const scenario::Scenario& scenario, const std::string& folder,
                        std::shared_ptr<const outage::Ready> ready, const Story& story,
                        const std::vector<demand::Spans>& off) {
    auto with_story = without_what_was_off(std::move(ready), story.off, off);
    auto world = chance::World::of(scenario, folder, with_story);
    if (!world) return fail(std::move(world.error()));
    Lives lives;
    lives.story_ = story;
    if (!story.pack_changes.empty()) lives.kind_of_ = kinds_of_packs(scenario, folder, *with_story);
    lives.world_ = std::make_shared<const chance::World>(std::move(*world));
    return lives;
}

namespace {

// Moments at which a member is looked at: those that are asked about, and the midnight before each,
// in order, each once.
std::vector<Duration> with_midnights(std::span<const Duration> at, LocalTime starts) {
    std::vector<Duration> moments;
    for (const Duration& time : at) {
        moments.push_back(time);
        moments.push_back(std::max(Duration{}, time - time_of_day(starts + time)));
    }
    std::ranges::sort(moments);
    moments.erase(std::ranges::unique(moments).begin(), moments.end());
    return moments;
}

// What packs have at a moment of a stretch.
State state_of(const outage::Look& look, const outage::PackKinds& kinds, const Ways& ways) {
    const auto& model = *kinds.front().model;
    return {.charge = look.charge,
            .rested = model.at_rest.voltage(
                battery::fill_with(model.kinetics, model.capacity, look.charge)),
            .unloaded = look.rested,
            .loaded = look.voltage,
            .resistance = ways.all,
            .inside = ways.inside};
}

}  // namespace

std::vector<State> Lives::states(Values values, std::span<const Duration> at) const {
    return states_of(world_->lived(values), at);
}

// At each of these moments, in order; sun since the start of the outage.
std::vector<State> Lives::seen_at(const Lived& lived, const std::vector<Duration>& moments) const {
    std::vector<State> states;
    Walk walk(*this, lived);
    State last;
    while (true) {
        const Stretch stretch = walk.stretch();
        std::vector<Duration> looks;
        const Energy sun_before = last.sun_taken;
        for (std::size_t i = states.size();
             i < moments.size() && (moments[i] < walk.until() || walk.is_last()); ++i)
            looks.push_back(moments[i] - stretch.from);
        const std::size_t asked = looks.size();
        if (!walk.is_last()) looks.push_back(walk.until() - stretch.from);
        if (stretch.kinds.empty()) {
            states.insert(states.end(), asked,
                          {.charge = last.charge, .sun_taken = last.sun_taken});
        } else {
            const auto ways = ways_of(stretch.kinds);
            const auto found = looked_at(*world_, lived, stretch.kinds, stretch.from, looks);
            for (std::size_t i = 0; i < found.size(); ++i) {
                last = state_of(found[i], stretch.kinds, ways);
                last.sun_taken = sun_before + found[i].sun_taken;
                if (i < asked) states.push_back(last);
            }
        }
        if (states.size() == moments.size()) return states;
        walk.pass(last.charge);
    }
}

std::vector<State> Lives::states_of(const Lived& lived, std::span<const Duration> at) const {
    const LocalTime starts = world_->ready().outage.starts;
    const auto moments = with_midnights(at, starts);
    const auto seen = seen_at(lived, moments);
    const auto at_moment = [&](Duration time) -> const State& {
        return seen[std::size_t(std::ranges::lower_bound(moments, time) - moments.begin())];
    };
    std::vector<State> states;
    for (const Duration& time : at) {
        states.push_back(at_moment(time));
        states.back().sun_taken -=
            at_moment(std::max(Duration{}, time - time_of_day(starts + time))).sun_taken;
    }
    return states;
}

namespace {

// What a stretch tells, as a part of the whole outage.
void append(outage::Course& whole, const outage::Course& part, Duration from) {
    for (outage::Interval interval : part.intervals) {
        interval.from += from;
        interval.to += from;
        whole.intervals.push_back(interval);
    }
    for (outage::Event event : part.events) {
        event.at += from;
        whole.events.push_back(event);
    }
}

// A stretch without any pack: nothing is stored, nothing flows.
outage::Course nothing_joined(Duration length, Duration every) {
    outage::Course part;
    for (Duration at{}; at < length; at += every)
        part.intervals.push_back(
            {.from = at, .to = std::min(length, at + every), .flows = {}, .charge = {}});
    return part;
}

}  // namespace

outage::Course Lives::account(Values values, Duration every) const {
    const Lived lived = world_->lived(values);
    outage::Course whole;
    Walk walk(*this, lived);
    StateOfCharge charge;
    while (true) {
        const Stretch stretch = walk.stretch();
        const Duration length = std::max(walk.until() - stretch.from, as_good_as_at_once);
        if (stretch.kinds.empty()) {
            append(whole, nothing_joined(length, every), stretch.from);
        } else {
            const auto part = run_stretch(*world_, lived, stretch.kinds, stretch.from, length,
                                          {.every = every, .intervals = every});
            append(whole, part, stretch.from);
            charge = part.intervals.back().charge;
            whole.survives = part.survives;
            whole.limited_by = part.limited_by;
            whole.lasts = stretch.from + part.lasts;
        }
        if (walk.is_last()) return whole;
        walk.pass(charge);
    }
}

MemberEnd Lives::end_with_changes(const Lived& lived) const {
    // How full they are at each change.
    std::vector<Duration> changes;
    for (const PackChange& change : story_.pack_changes)
        changes.push_back(std::max(Duration{}, change.at - as_good_as_at_once));
    const auto there = states_of(lived, changes);
    Walk walk(*this, lived);
    std::size_t passed = 0;
    while (!walk.is_last()) {
        const Duration until = walk.until();
        while (passed + 1 < changes.size() && changes[passed] + 2.0 * as_good_as_at_once < until)
            ++passed;
        walk.pass(there[passed].charge);
    }
    const Stretch stretch = walk.stretch();
    if (stretch.kinds.empty())
        return {.lasts = stretch.from, .survives = false, .limited_by = outage::LimitedBy::charge};
    MemberEnd end = chance::end_in(run_stretch(*world_, lived, stretch.kinds, stretch.from,
                                               world_->ready().outage.lasts - stretch.from,
                                               {.trace = false, .after_failure = false}));
    end.lasts += stretch.from;
    return end;
}

namespace {

// Members as they are run side by side.
struct SideBySide {
    std::vector<outage::PackKinds> kinds;
    std::vector<outage::Unit> units;
    std::vector<abreast::Outage> outages;

    SideBySide(const chance::World& world, std::span<const Lived> lived) {
        const auto& ready = world.ready();
        kinds.reserve(lived.size());
        units.reserve(lived.size());
        for (const Lived& one : lived) {
            kinds.push_back(outage::with_count(one.kinds, world.packs()));
            auto& unit = units.emplace_back(outage::unit_of(kinds.back(), ready.main_path));
            unit.inverter = one.inverter;
            unit.main_fuse = ready.units[likely].main_fuse;
            outages.push_back({.unit = &unit,
                               .demand = one.steps,
                               .sun = one.sun,
                               .guarded = outage::or_none(one.guarded)});
        }
    }
};

MemberEnd end_of(const abreast::OwnEnding& ending) {
    return {.lasts = ending.lasts, .survives = ending.survives, .limited_by = ending.limited_by};
}

// The step that holds at a moment, from the beginning.
template <class Step>
std::vector<Step> holding_at(const std::vector<Step>& steps, Duration at) {
    if (steps.empty()) return {};
    const auto next = std::ranges::upper_bound(steps, at, {}, &Step::from);
    std::vector<Step> one{next == steps.begin() ? *next : *std::prev(next)};
    one.front().from = {};
    return one;
}

std::vector<Duration> times_of(std::span<const Moment> moments) {
    std::vector<Duration> times;
    for (const Moment& moment : moments)
        times.push_back(moment.at);
    return times;
}

// What packs whose wells stand so have, as it is seen without asking what flows.
outage::Look glance_at(const outage::Unit& unit, const abreast::Seen& seen) {
    double removed = 0.0;
    double rated = 0.0;
    for (std::size_t bank = 0; bank < seen.wells.size(); ++bank) {
        const auto& of = bank == 0 ? unit.bank : unit.others[bank - 1];
        removed += of.count * (seen.wells[bank].removed / coulomb);
        rated += of.count * (of.rated / coulomb);
    }
    return {.charge = StateOfCharge(std::max(0.0, 1.0 - removed / rated)),
            .sun_taken = seen.sun_taken};
}

// What packs whose wells stand so have at a moment.
outage::Look look_at(outage::Unit unit, const Lived& lived, const abreast::Seen& seen,
                     Duration at) {
    for (std::size_t bank = 0; bank < seen.wells.size(); ++bank)
        (bank == 0 ? unit.bank : unit.others[bank - 1]).at_start = seen.wells[bank];
    unit.days = from_then_on(unit.days, at);
    const Duration now{};
    auto look = outage::look(unit, holding_at(lived.steps, at), holding_at(lived.sun, at), day,
                             std::span(&now, 1))
                    .front();
    look.sun_taken = seen.sun_taken;
    return look;
}

}  // namespace

void Lives::ends_of_block(std::span<const Lived> lived, std::span<MemberEnd> ends) const {
    const auto& ready = world_->ready();
    const SideBySide all(*world_, lived);
    std::vector<abreast::OwnEnding> endings(ends.size());
    abreast::run_own(all.outages, ready.outage.lasts, ready.midnight, endings);
    std::ranges::transform(endings, ends.begin(), end_of);
}

void Lives::whole_of_block(std::span<const Lived> lived, std::span<const Moment> at, Duration until,
                           std::span<Life> whole) const {
    const auto& ready = world_->ready();
    const LocalTime starts = ready.outage.starts;
    const SideBySide all(*world_, lived);
    const auto times = times_of(at);
    const auto moments = with_midnights(times, starts);
    std::vector<abreast::OwnEnding> endings(whole.size());
    const auto seen = abreast::run_watched(all.outages, until, ready.midnight, moments, endings);
    const auto place_of = [&](Duration time) {
        return std::size_t(std::ranges::lower_bound(moments, time) - moments.begin());
    };
    for (std::size_t i = 0; i < whole.size(); ++i) {
        whole[i].end = end_of(endings[i]);
        // Who has failed before then is run by the clock, which goes on.
        if (seen[i].size() < moments.size()) {
            whole[i].states = states_of(lived[i], times);
            continue;
        }
        const Ways ways = ways_of(all.kinds[i]);
        for (const Moment& moment : at) {
            const auto& then = seen[i][place_of(moment.at)];
            const Duration midnight =
                std::max(Duration{}, moment.at - time_of_day(starts + moment.at));
            const auto look = moment.voltages ? look_at(all.units[i], lived[i], then, moment.at)
                                              : glance_at(all.units[i], then);
            auto& state = whole[i].states.emplace_back(state_of(look, all.kinds[i], ways));
            state.sun_taken = then.sun_taken - seen[i][place_of(midnight)].sun_taken;
        }
    }
}

std::vector<Lives::Life> Lives::whole(const std::vector<std::vector<double>>& values,
                                      std::span<const Moment> at, unsigned threads) const {
    if (story_.pack_changes.empty())
        return whole_until(values, at, world_->ready().outage.lasts, threads);
    std::vector<Life> whole(values.size());
    outage::for_each_number(static_cast<int>(values.size()), threads, [&](int i) {
        const Lived lived = world_->lived(values[std::size_t(i)]);
        whole[std::size_t(i)] = {.states = states_of(lived, times_of(at)),
                                 .end = end_with_changes(lived)};
    });
    return whole;
}

std::vector<std::vector<State>> Lives::states(const std::vector<std::vector<double>>& values,
                                              std::span<const Moment> at, unsigned threads) const {
    std::vector<std::vector<State>> states(values.size());
    if (story_.pack_changes.empty()) {
        auto lives = whole_until(values, at, at.back().at, threads);
        std::ranges::transform(lives, states.begin(),
                               [](Life& life) { return std::move(life.states); });
        return states;
    }
    outage::for_each_number(static_cast<int>(values.size()), threads, [&](int i) {
        states[std::size_t(i)] = states_of(world_->lived(values[std::size_t(i)]), times_of(at));
    });
    return states;
}

std::vector<Lives::Life> Lives::whole_until(const std::vector<std::vector<double>>& values,
                                            std::span<const Moment> at, Duration until,
                                            unsigned threads) const {
    std::vector<Life> whole(values.size());
    constexpr std::size_t block = chance::lanes;
    const std::size_t blocks = (values.size() + block - 1) / block;
    outage::for_each_number(static_cast<int>(blocks), threads, [&](int number) {
        const std::size_t first = std::size_t(number) * block;
        const std::size_t count = std::min(block, values.size() - first);
        std::vector<Lived> of_block;
        of_block.reserve(count);
        for (std::size_t i = 0; i < count; ++i)
            of_block.push_back(world_->lived(values[first + i]));
        whole_of_block(of_block, at, until, std::span(whole).subspan(first, count));
    });
    return whole;
}

std::vector<Lived> Lives::lived(const std::vector<std::vector<double>>& values,
                                unsigned threads) const {
    std::vector<Lived> made(values.size());
    outage::for_each_number(static_cast<int>(values.size()), threads, [&](int i) {
        made[std::size_t(i)] = world_->lived(values[std::size_t(i)]);
    });
    return made;
}

std::vector<MemberEnd> Lives::ends(const std::vector<std::vector<double>>& values, unsigned threads,
                                   std::span<const Lived> before) const {
    std::vector<MemberEnd> ends(values.size());
    // Loads are always worked out anew: these are switched off otherwise.
    const chance::SwitchedOff other_loads{true};
    const auto lived = [&](std::size_t i) {
        return before.empty()
                   ? world_->lived(values[i])
                   : world_->lived(values[i], {},
                                   {.lived = before[i], .values = values[i], .off = other_loads});
    };
    if (!story_.pack_changes.empty()) {
        outage::for_each_number(static_cast<int>(values.size()), threads, [&](int i) {
            ends[std::size_t(i)] = end_with_changes(lived(std::size_t(i)));
        });
        return ends;
    }
    constexpr std::size_t block = chance::lanes;
    const std::size_t blocks = (values.size() + block - 1) / block;
    outage::for_each_number(static_cast<int>(blocks), threads, [&](int number) {
        const std::size_t first = std::size_t(number) * block;
        const std::size_t count = std::min(block, values.size() - first);
        std::vector<Lived> of_block;
        of_block.reserve(count);
        for (std::size_t i = 0; i < count; ++i)
            of_block.push_back(lived(first + i));
        ends_of_block(of_block, std::span(ends).subspan(first, count));
    });
    return ends;
}

}  // namespace estimate
