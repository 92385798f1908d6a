#include "estimate/lives.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <optional>

#include "abreast/own.hpp"
#include "battery/percent.hpp"
#include "estimate/stretches.hpp"
#include "estimate/switched_off.hpp"
#include "outage/banks.hpp"
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

// What packs have at a moment of a stretch.
//   at   after the stretch begins; since_midnight, or since the start of the outage
State state_at(const outage::Course& course, const outage::PackKinds& kinds, const Ways& ways,
               Duration at, Duration since_midnight) {
    const auto& point = point_at(course, at);
    const auto& model = *kinds.front().model;
    return {.charge = point.charge,
            .rested = model.at_rest.voltage(
                battery::fill_with(model.kinetics, model.capacity, point.charge)),
            .unloaded = point.rested,
            .loaded = point.voltage,
            .resistance = ways.all,
            .inside = ways.inside,
            .sun_taken = taken_between(course, at - since_midnight, at)};
}

}  // namespace

std::vector<State> Lives::states(Values values, std::span<const Duration> at) const {
    const auto& ready = world_->ready();
    const Lived lived = world_->lived(values);
    std::vector<State> states;
    Walk walk(*this, lived);
    StateOfCharge charge;
    while (states.size() < at.size()) {
        const Stretch stretch = walk.stretch();
        std::vector<Duration> looked;
        for (const Duration& time : at)
            if (time >= stretch.from) looked.push_back(time - stretch.from);
        const Duration until = std::min(walk.until(), at.back());
        std::optional<outage::Course> course;
        if (!stretch.kinds.empty()) {
            course = run_stretch(*world_, lived, stretch.kinds, stretch.from,
                                 std::max(until - stretch.from, as_good_as_at_once), looked, {});
            charge = course->trace.back().charge;
        }
        const Ways ways = ways_of(stretch.kinds);
        while (states.size() < at.size() && (at[states.size()] < walk.until() || walk.is_last())) {
            const Duration here = at[states.size()];
            states.push_back(course ? state_at(*course, stretch.kinds, ways, here - stretch.from,
                                               time_of_day(ready.outage.starts + here))
                                    : State{.charge = charge});
        }
        if (walk.is_last()) break;
        walk.pass(charge);
    }
    return states;
}

MemberEnd Lives::end_with_changes(Values values) const {
    const Lived lived = world_->lived(values);
    // How full they are at each change.
    std::vector<Duration> changes;
    for (const PackChange& change : story_.pack_changes)
        changes.push_back(std::max(Duration{}, change.at - as_good_as_at_once));
    const auto there = states(values, changes);
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
                                               world_->ready().outage.lasts - stretch.from, {},
                                               {.trace = false, .after_failure = false}));
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
        auto& unit = units.emplace_back(outage::unit_of(kinds.back(), ready.main_path));
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
