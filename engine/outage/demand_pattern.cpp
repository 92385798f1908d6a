#include "outage/demand_pattern.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>
#include <set>

#include "outage/clock/branches.hpp"
#include "outage/parts.hpp"

namespace outage {

namespace {

using namespace units;

constexpr std::size_t summed_together = 64;  // as demand_steps sums them

struct Sum {
    Power ac{};
    Power reactive{};
    Power direct{};
    Power useful{};

    Sum& operator+=(const Sum& other) {
        ac += other.ac;
        reactive += other.reactive;
        direct += other.direct;
        useful += other.useful;
        return *this;
    }
};

// All that the loads switch at, and the inverter.
std::vector<Duration> switchings(const demand::Demand& demand, demand::Case which) {
    std::set<Duration> times{Duration{}};
    const auto add = [&](const demand::Spans& spans) {
        for (const demand::Span& span : spans) {
            times.insert(span.from);
            times.insert(span.until);
        }
    };
    add(demand.inverter_on);
    for (const demand::PlannedLoad& load : demand.loads)
        for (const demand::Strand& strand : demand::strands_at(load, which))
            add(strand.on);
    return {times.begin(), times.lower_bound(demand.lasts)};
}

// Goes along spans in order of time.
class Along {
  public:
    explicit Along(const demand::Spans& spans) : spans_(&spans) {}

    bool on(Duration now) {
        while (at_ < spans_->size() && (*spans_)[at_].until <= now)
            ++at_;
        return at_ < spans_->size() && (*spans_)[at_].from <= now;
    }

  private:
    const demand::Spans* spans_;
    std::size_t at_ = 0;
};

// The same from its moment on, whatever the moment.
bool alike(const demand::DemandStep& one, demand::DemandStep other) {
    other.from = one.from;
    return one == other;
}

}  // namespace

//   draws    of each part
//   of_all   its place among all parts in the order of the sums
//   of_load  among those of its load; of_way likewise, by way
struct DemandPattern::Drawn {
    std::vector<Sum> draws;
    std::vector<std::size_t> of_all;
    std::vector<std::size_t> of_load;
    std::vector<std::vector<std::size_t>> of_way;

    // Of those that are on and wanted, in the order and the blocks in which demand_steps sums.
    //   on      in the order of all parts, which is that of each load's and each way's as well
    template <class Wanted>
    [[nodiscard]] Sum sum(std::span<const std::size_t> on, const std::vector<std::size_t>& place,
                          Wanted wanted) const {
        Sum total;
        Sum block;
        std::size_t number = 0;
        for (const std::size_t part : on) {
            if (!wanted(part)) continue;
            if (place[part] / summed_together != number) {
                number = place[part] / summed_together;
                total += block;
                block = {};
            }
            block += draws[part];
        }
        total += block;
        return total;
    }
};

DemandPattern::DemandPattern(const Ready& ready, const demand::Demand& demand, End end)
    : nominal_(ready.nominal), chargers_(ready.chargers) {
    const demand::Case which = end == End::earliest ? demand::Case::high
                               : end == End::likely ? demand::Case::likely
                                                    : demand::Case::low;
    if (demand.search_threshold) return;
    take_loads(ready, demand, which);
    take_moments(demand, which);
    usable_ = true;
    // what this does not know of would show here
    std::vector<Power> drawn;
    for (const demand::PlannedLoad& load : demand.loads)
        drawn.push_back(which == demand::Case::high     ? load.power.high
                        : which == demand::Case::likely ? load.power.likely
                                                        : load.power.low);
    const auto steps = with(drawn);
    usable_ = steps && *steps == steps_of(ready, demand, end);
}

void DemandPattern::take_loads(const Ready& ready, const demand::Demand& demand,
                               demand::Case which) {
    for (const unit::Branch& branch : ready.branches) {
        ways_.push_back(branch.resistance);
        auto& fed = fed_.emplace_back();
        for (const demand::PlannedLoad& load : demand.loads)
            fed.push_back(load.from != scenario::Outlet::ac &&
                          std::ranges::find(branch.feeds, load.name) != branch.feeds.end());
    }
    for (std::size_t i = 0; i < demand.loads.size(); ++i) {
        const demand::PlannedLoad& load = demand.loads[i];
        const bool ac = load.from == scenario::Outlet::ac;
        const double factor = load.power.factor.value();
        for (const demand::Strand& strand : demand::strands_at(load, which))
            parts_.push_back({.load = i,
                              .ac = ac,
                              .times = static_cast<double>(strand.items) * strand.of_power.value(),
                              .reactive = std::sqrt(1.0 / (factor * factor) - 1.0),
                              .converter = load.power.converter.value()});
        if (ac || load.strands.empty()) continue;
        Direct direct{
            .load = i, .lowest = load.lowest.value_or(usual_lowest(nominal_)), .ways = {}};
        for (std::size_t way = 0; way < ways_.size(); ++way)
            if (fed_[way][i]) direct.ways.push_back(way);
        directs_.push_back(std::move(direct));
    }
}

void DemandPattern::take_moments(const demand::Demand& demand, demand::Case which) {
    std::vector<Along> strands;
    for (const demand::PlannedLoad& load : demand.loads)
        for (const demand::Strand& strand : demand::strands_at(load, which))
            strands.emplace_back(strand.on);
    Along inverter(demand.inverter_on);
    std::map<Together, std::size_t> known;
    for (const Duration& now : switchings(demand, which)) {
        Together together{.inverter_on = inverter.on(now), .on = {}};
        for (std::size_t part = 0; part < strands.size(); ++part)
            if (strands[part].on(now)) together.on.push_back(part);
        const auto [found, added] = known.try_emplace(together, together_.size());
        if (added) together_.push_back(std::move(together));
        moments_.push_back({.from = now, .together = found->second});
    }
}

// What the circuits lose, and how low the bus may come. As with_branches and with_lowest have it.
void DemandPattern::add_ways(demand::DemandStep& step, const Together& together,
                             const Drawn& drawn) const {
    for (std::size_t way = 0; way < ways_.size(); ++way) {
        const Power direct =
            drawn
                .sum(together.on, drawn.of_way[way],
                     [&](std::size_t part) { return bool(fed_[way][parts_[part].load]); })
                .direct;
        const Power lost = at_end_of(ways_[way], nominal_, direct).lost;
        step.direct += lost;
        step.in_branches += lost;
    }
    std::vector<Power> at_bus;
    at_bus.reserve(directs_.size());
    std::vector<Power> flows(ways_.size());
    for (const Direct& load : directs_) {
        at_bus.push_back(drawn
                             .sum(together.on, drawn.of_load,
                                  [&](std::size_t part) { return parts_[part].load == load.load; })
                             .direct);
        for (const std::size_t way : load.ways)
            flows[way] += at_bus.back();
    }
    for (std::size_t i = 0; i < directs_.size(); ++i) {
        if (!(at_bus[i] > Power{})) continue;
        Voltage drop{};
        for (const std::size_t way : directs_[i].ways)
            drop += ways_[way] * (flows[way] / directs_[i].lowest);
        step.lowest = std::max<Voltage>(step.lowest, directs_[i].lowest + drop);
    }
}

demand::DemandStep DemandPattern::step_of(const Together& together, const Drawn& drawn) const {
    const Sum sum = drawn.sum(together.on, drawn.of_all, [](std::size_t) { return true; });
    return {.ac = sum.ac,
            .ac_reactive = ReactivePower(sum.reactive),
            .direct = sum.direct,
            .direct_useful = sum.useful,
            .inverter_on = together.inverter_on};
}

DemandPattern::Drawn DemandPattern::drawn_by(std::span<const Power> loads) const {
    Drawn drawn;
    for (const Part& part : parts_) {
        const Power useful = part.times * loads[part.load];
        drawn.draws.push_back(part.ac ? Sum{.ac = useful, .reactive = useful * part.reactive}
                                      : Sum{.direct = useful / part.converter, .useful = useful});
    }
    std::vector<std::size_t> order(parts_.size());
    std::iota(order.begin(), order.end(), 0);
    std::ranges::stable_sort(order, {}, [&](std::size_t part) {
        const Sum& draw = drawn.draws[part];
        return std::array{draw.ac, draw.reactive, draw.direct, draw.useful};
    });
    drawn.of_all.resize(parts_.size());
    drawn.of_load.resize(parts_.size());
    drawn.of_way.assign(ways_.size(), std::vector<std::size_t>(parts_.size()));
    std::vector<std::size_t> next_of_load(loads.size());
    std::vector<std::size_t> next_of_way(ways_.size());
    for (std::size_t at = 0; at < order.size(); ++at) {
        const std::size_t part = order[at];
        const std::size_t load = parts_[part].load;
        drawn.of_all[part] = at;
        drawn.of_load[part] = next_of_load[load]++;
        for (std::size_t way = 0; way < ways_.size(); ++way)
            if (fed_[way][load]) drawn.of_way[way][part] = next_of_way[way]++;
    }
    return drawn;
}

std::optional<std::vector<demand::DemandStep>> DemandPattern::with(
    std::span<const Power> loads) const {
    if (!usable_) return std::nullopt;
    const Drawn drawn = drawn_by(loads);
    std::vector<demand::DemandStep> plain;  // by what is on together
    std::vector<demand::DemandStep> whole;  // with what the circuits do
    plain.reserve(together_.size());
    whole.reserve(together_.size());
    Together in_order;
    for (const Together& together : together_) {
        in_order = together;
        std::ranges::sort(in_order.on, {}, [&](std::size_t part) { return drawn.of_all[part]; });
        plain.push_back(step_of(in_order, drawn));
        whole.push_back(plain.back());
        if (!directs_.empty()) add_ways(whole.back(), in_order, drawn);
    }
    std::vector<demand::DemandStep> steps;
    steps.reserve(moments_.size());
    const demand::DemandStep* before = nullptr;  // of plain
    for (const Moment& moment : moments_) {
        const demand::DemandStep& step = whole[moment.together];
        if (before && *before == plain[moment.together]) {
            if (alike(steps.back(), step)) continue;
            return std::nullopt;  // joined before the circuits are counted
        }
        before = &plain[moment.together];
        steps.push_back(step);
        steps.back().from = moment.from;
    }
    if (chargers_.empty()) return steps;
    return with_chargers(steps, chargers_);
}

}  // namespace outage
