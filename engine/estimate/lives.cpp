#include "estimate/lives.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <optional>

#include "abreast/own.hpp"
#include "unit/built.hpp"

#include "battery/percent.hpp"
#include "outage/banks.hpp"
#include "outage/clock.hpp"
#include "outage/in_threads.hpp"
#include "outage/warmth.hpp"

namespace estimate {

using namespace units;
using chance::Lived;
using chance::MemberEnd;
using chance::Values;

namespace {

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);
constexpr Duration as_good_as_at_once = 1e-3 * second;

void take_off(outage::PlannedLoad& load, const outage::Spans& off) {
    for (auto* strands : {&load.strands, &load.strands_low, &load.strands_high}) {
        for (outage::Strand& strand : *strands)
            strand.on = outage::without(strand.on, off);
        std::erase_if(*strands, [](const outage::Strand& strand) { return strand.on.empty(); });
    }
    load.may_run = outage::without(load.may_run, off);
}

// The plan with what was switched off; itself where nothing was.
std::shared_ptr<const outage::Ready> without_what_was_off(
    std::shared_ptr<const outage::Ready> ready, const std::vector<outage::Spans>& story,
    const std::vector<outage::Spans>& more) {
    const auto empty = [](const outage::Spans& spans) { return spans.empty(); };
    if (std::ranges::all_of(story, empty) && std::ranges::all_of(more, empty)) return ready;
    auto made = std::make_shared<outage::Ready>(*ready);
    for (std::size_t i = 0; i < made->demand.loads.size(); ++i) {
        outage::Spans off = i < story.size() ? story[i] : outage::Spans{};
        if (i < more.size()) off = outage::either(off, more[i]);
        if (!off.empty()) take_off(made->demand.loads[i], off);
    }
    for (const auto end : {outage::End::earliest, outage::End::likely, outage::End::latest})
        made->steps[static_cast<std::size_t>(end)] = outage::steps_of(*made, made->demand, end);
    return made;
}

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

template <class Step>
std::vector<Step> from_then_on(const std::vector<Step>& steps, Duration at) {
    std::vector<Step> made;
    for (const Step& step : steps) {
        if (!made.empty() && step.from <= at) made.clear();
        made.push_back(step);
        made.back().from = std::max(Duration{}, step.from - at);
    }
    return made;
}

// With a step of its own at each of these times, so that the clock looks there.
std::vector<outage::DemandStep> looked_at(std::vector<outage::DemandStep> steps,
                                          std::span<const Duration> at) {
    for (const Duration& time : at) {
        const auto next = std::ranges::upper_bound(steps, time, {}, &outage::DemandStep::from);
        if (next == steps.begin() || std::prev(next)->from == time) continue;
        outage::DemandStep step = *std::prev(next);
        step.from = time;
        steps.insert(next, step);
    }
    return steps;
}

outage::PackKind with_charge(outage::PackKind kind, std::optional<StateOfCharge> charge) {
    if (!charge) return kind;
    const auto at = [&](const battery::PackModel& model) {
        auto made = std::make_shared<battery::PackModel>(model);
        made->at_start = battery::rested_with(model.capacity, *charge);
        return made;
    };
    kind.model = at(*kind.model);
    for (auto& of_day : kind.days)
        of_day.model = at(*of_day.model);
    return kind;
}

void shift_days(outage::PackKind& kind, Duration at) {
    kind.days = from_then_on(kind.days, at);
}

// From a local midnight on, or the start.
Energy taken_since(const outage::Course& course, Duration from, Duration until) {
    Energy taken{};
    for (std::size_t i = 0; i + 1 < course.trace.size(); ++i) {
        const Duration begins = std::max(from, course.trace[i].at);
        const Duration ends = std::min(until, course.trace[i + 1].at);
        if (ends > begins) taken += course.trace[i].sun_taken * (ends - begins);
    }
    return taken;
}

const outage::TracePoint& point_at(const outage::Course& course, Duration at) {
    assert(!course.trace.empty());
    const auto next = std::ranges::upper_bound(course.trace, at + as_good_as_at_once, {},
                                               &outage::TracePoint::at);
    return next == course.trace.begin() ? course.trace.front() : *std::prev(next);
}

// The ways of all packs side by side, with what they share.
struct Ways {
    Resistance all{};
    Resistance inside{};
};
Ways ways_of(const outage::PackKinds& kinds, Resistance shared) {
    double siemens = 0.0;
    double inner_siemens = 0.0;
    for (const outage::PackKind& kind : kinds) {
        const double inner = std::max(1e-9, double(kind.model->inner / ohm));
        siemens += kind.count / (inner + double(kind.model->lead / ohm));
        inner_siemens += kind.count / inner;
    }
    if (!(siemens > 0.0)) return {};
    return {.all = shared + 1.0 / siemens * ohm, .inside = 1.0 / inner_siemens * ohm};
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
            shift_days(kind, from_);
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
                        const std::vector<outage::Spans>& off) {
    auto with_story = without_what_was_off(std::move(ready), story.off, off);
    auto world = chance::World::of(scenario, folder, with_story);
    if (!world) return fail(std::move(world.error()));
    Lives lives;
    lives.story_ = story;
    if (!story.pack_changes.empty()) lives.kind_of_ = kinds_of_packs(scenario, folder, *with_story);
    lives.world_ = std::make_shared<const chance::World>(std::move(*world));
    return lives;
}

std::vector<State> Lives::states(Values values, std::span<const Duration> at) const {
    const auto& ready = world_->ready();
    const Lived lived = world_->lived(values);
    std::vector<State> states;
    Walk walk(*this, lived);
    StateOfCharge charge;
    while (states.size() < at.size()) {
        const Stretch stretch = walk.stretch();
        const Duration until = std::min(walk.until(), at.back());
        const Duration length = std::max(until - stretch.from, as_good_as_at_once);
        std::vector<Duration> times;
        for (const Duration& time : at)
            if (time >= stretch.from) times.push_back(time - stretch.from);
        outage::Course course;
        Ways ways;
        if (!stretch.kinds.empty() && outage::count_of(stretch.kinds) > 0) {
            auto unit = outage::unit_of(stretch.kinds, ready.shared_path);
            unit.inverter = lived.inverter;
            unit.main_fuse = ready.units[likely].main_fuse;
            const auto steps = looked_at(from_then_on(lived.steps, stretch.from), times);
            const auto sun = from_then_on(lived.sun, stretch.from);
            const Duration midnight =
                std::fmod(double((ready.midnight - stretch.from + 400.0 * day) / second),
                          86'400.0) *
                second;
            course = outage::run(unit, steps, sun, length, midnight, {});
            ways = ways_of(stretch.kinds, ready.shared_path);
            charge = course.trace.back().charge;
        }
        while (states.size() < at.size() && (at[states.size()] < walk.until() || walk.is_last())) {
            const Duration here = at[states.size()] - stretch.from;
            State state{.charge = charge, .resistance = ways.all, .inside = ways.inside};
            if (!course.trace.empty()) {
                const auto& point = point_at(course, here);
                const auto& model = *stretch.kinds.front().model;
                state.charge = point.charge;
                state.rested = model.at_rest.voltage(
                    battery::fill_with(model.kinetics, model.capacity, point.charge));
                state.unloaded = point.rested;
                state.loaded = point.voltage;
                const Duration since_midnight =
                    time_of_day(ready.outage.starts + at[states.size()]);
                state.sun_taken = taken_since(course, here - since_midnight, here);
            }
            states.push_back(state);
        }
        if (walk.is_last()) break;
        walk.pass(charge);
    }
    return states;
}

MemberEnd Lives::end_with_changes(Values values) const {
    const auto& ready = world_->ready();
    const Lived lived = world_->lived(values);
    Walk walk(*this, lived);
    // How full they are at each change.
    std::vector<Duration> changes;
    for (const PackChange& change : story_.pack_changes)
        changes.push_back(std::max(Duration{}, change.at - as_good_as_at_once));
    const auto there = states(values, changes);
    std::size_t passed = 0;
    while (!walk.is_last()) {
        const Duration until = walk.until();
        while (passed + 1 < changes.size() && changes[passed] + as_good_as_at_once < until)
            ++passed;
        walk.pass(there[passed].charge);
    }
    const Stretch stretch = walk.stretch();
    if (stretch.kinds.empty())
        return {.lasts = stretch.from, .survives = false, .limited_by = outage::LimitedBy::charge};
    auto unit = outage::unit_of(stretch.kinds, ready.shared_path);
    unit.inverter = lived.inverter;
    unit.main_fuse = ready.units[likely].main_fuse;
    const Duration midnight =
        std::fmod(double((ready.midnight - stretch.from + 400.0 * day) / second), 86'400.0) *
        second;
    const auto steps = from_then_on(lived.steps, stretch.from);
    const auto sun = from_then_on(lived.sun, stretch.from);
    const auto course = outage::run(unit, steps, sun, ready.outage.lasts - stretch.from, midnight,
                                    {.trace = false, .after_failure = false});
    MemberEnd end = chance::end_in(course);
    end.lasts += stretch.from;
    return end;
}

void Lives::ends_of_block(const std::vector<std::vector<double>>& values, std::size_t first,
                          std::span<MemberEnd> ends) const {
    const auto& ready = world_->ready();
    std::vector<Lived> lived;
    std::vector<outage::PackKinds> kinds;
    std::vector<outage::Unit> units;
    std::vector<abreast::Outage> outages;
    lived.reserve(ends.size());
    kinds.reserve(ends.size());
    units.reserve(ends.size());
    for (std::size_t i = 0; i < ends.size(); ++i) {
        lived.push_back(world_->lived(values[first + i]));
        kinds.push_back(outage::with_count(lived.back().kinds, world_->packs()));
        auto& unit = units.emplace_back(outage::unit_of(kinds.back(), ready.shared_path));
        unit.inverter = lived.back().inverter;
        unit.main_fuse = ready.units[likely].main_fuse;
        outages.push_back({.unit = &unit,
                           .demand = lived.back().steps,
                           .sun = lived.back().sun,
                           .guarded = outage::or_none(lived.back().guarded)});
    }
    std::vector<abreast::OwnEnding> endings(ends.size());
    abreast::run_own(outages, ready.outage.lasts, ready.midnight, endings);
    for (std::size_t i = 0; i < ends.size(); ++i)
        ends[i] = {.lasts = endings[i].lasts,
                   .survives = endings[i].survives,
                   .limited_by = endings[i].limited_by};
}

std::vector<MemberEnd> Lives::ends(const std::vector<std::vector<double>>& values,
                                   unsigned threads) const {
    std::vector<MemberEnd> ends(values.size());
    if (!story_.pack_changes.empty()) {
        outage::for_each_number(static_cast<int>(values.size()), threads, [&](int i) {
            ends[std::size_t(i)] = end_with_changes(values[std::size_t(i)]);
        });
        return ends;
    }
    constexpr std::size_t block = chance::lanes;
    const std::size_t blocks = (values.size() + block - 1) / block;
    outage::for_each_number(static_cast<int>(blocks), threads, [&](int number) {
        const std::size_t first = std::size_t(number) * block;
        const std::size_t count = std::min(block, values.size() - first);
        ends_of_block(values, first, std::span(ends).subspan(first, count));
    });
    return ends;
}

}  // namespace estimate
