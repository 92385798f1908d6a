#include "abreast/own.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cassert>
#include <cstdint>

#include "abreast/bank_lanes.hpp"
#include "abreast/bank_stride.hpp"
#include "abreast/ends.hpp"
#include "abreast/like_lanes.hpp"
#include "abreast/watch.hpp"
#include "outage/clock/clock.hpp"
#include "outage/clock/inverter_draw.hpp"
#include "outage/clock/overload.hpp"
#include "outage/clock/serving.hpp"

namespace abreast {

namespace {

using namespace units;
using outage::LimitedBy;

// Whether both go from stretch to stretch together.
bool in_step(const Outage& one, const Outage& other) {
    const auto& a = *one.unit;
    const auto& b = *other.unit;
    const auto from = [](const auto& x, const auto& y) { return x.from == y.from; };
    if (a.others.size() != b.others.size()) return false;
    if (a.others.empty() && !lanes_detail::built_alike(a, b)) return false;
    if (a.inverter.has_value() != b.inverter.has_value()) return false;
    const bool known = one.demand.data() == other.demand.data() ||
                       (one.pattern != nullptr && one.pattern == other.pattern);
    if (!known && !switch_together(one.demand, other.demand)) return false;
    return std::ranges::equal(one.sun, other.sun, from) && std::ranges::equal(a.days, b.days, from);
}

// Whether a fuse may carry too much of what charges the packs: timed by the clock.
bool fuse_may_open_on_charge(const outage::Unit& unit) {
    for (std::size_t i = 0; i <= unit.others.size(); ++i)
        if (outage::Overload::of_charging(i == 0 ? unit.bank : unit.others[i - 1]).levels() > 0)
            return true;
    return false;
}

// Whether so much is asked of the inverter that the fuse in front of it may open.
bool main_fuse_may_open(const Outage& outage) {
    const auto& unit = *outage.unit;
    if (!unit.main_fuse || !unit.inverter) return false;
    const auto bears = outage::Overload(*unit.main_fuse).watched();
    return outage.most->at_inverter * watt > *bears * unit.inverter->cutoff_voltage;
}

// Whether the panels pass on a current, whatever the voltage of the bus: the lanes of packs that
// differ know powers.
bool passes_current(const Outage& outage) {
    return std::ranges::any_of(outage.sun,
                               [](const auto& light) { return light.passes > Current{}; });
}

bool has_lanes(const Outage& outage) {
    const auto& unit = *outage.unit;
    return unit.others.size() < most_kinds && outage.guarded == nullptr &&
           (unit.others.empty() || !passes_current(outage)) && !main_fuse_may_open(outage) &&
           !fuse_may_open_on_charge(unit);
}

// The inverter's draw hangs on few things, and the same loads come on together again and again.
class InverterDraws {
  public:
    explicit InverterDraws(const outage::Unit& unit) : unit_(unit) {}

    const outage::InverterDraw& of(const demand::DemandStep& step) {
        const auto bits = [](double value) { return std::bit_cast<std::uint64_t>(value); };
        const std::uint64_t mixed =
            (bits(step.ac / watt) * 3 + bits(step.ac_reactive / ReactivePower(watt))) *
            0x9e3779b97f4a7c15;
        Known& known = known_[mixed >> (64 - places_bits)];
        if (!known.step || !alike(*known.step, step)) {
            known.draw = outage::drawn_by_inverter(unit_, step);
            known.step = step;
        }
        return known.draw;
    }

  private:
    static constexpr int places_bits = 6;
    struct Known {
        std::optional<demand::DemandStep> step;
        outage::InverterDraw draw;
    };

    const outage::Unit& unit_;
    std::array<Known, 1 << places_bits> known_{};

    static bool alike(const demand::DemandStep& one, const demand::DemandStep& other) {
        return one.ac == other.ac && one.ac_reactive == other.ac_reactive &&
               one.inverter_on == other.inverter_on && one.asleep == other.asleep;
    }
};

// What is not known of them yet.
//   gives   what they point to then
std::vector<std::vector<Need>> made_ready(std::vector<Outage>& all) {
    std::vector<std::vector<Need>> worked_out;
    worked_out.reserve(all.size());
    for (Outage& each : all) {
        if (each.needs.empty())
            each.needs = worked_out.emplace_back(needs_of(*each.unit, each.demand));
        if (!each.most) each.most = most_of(each.needs);
    }
    return worked_out;
}

// The first of those that wait, and as many as go from stretch to stretch with it; they wait no
// longer.
std::vector<std::size_t> taken_together(std::vector<std::size_t>& waiting,
                                        const std::vector<Outage>& all) {
    std::vector<std::size_t> whose;
    std::erase_if(waiting, [&](std::size_t i) {
        if (whose.size() == std::size_t(lanes)) return false;
        if (!whose.empty() && !in_step(all[whose.front()], all[i])) return false;
        whose.push_back(i);
        return true;
    });
    return whose;
}

OwnEnding by_clock(const Outage& outage, Duration lasts, Duration midnight) {
    const auto course =
        outage::run(*outage.unit, outage.demand, outage.sun, lasts, midnight,
                    {.trace = false, .after_failure = false}, nullptr, outage.guarded);
    return {.lasts = course.lasts, .survives = course.survives, .limited_by = course.limited_by};
}

}  // namespace

std::vector<Need> needs_of(const outage::Unit& unit, std::span<const demand::DemandStep> demand) {
    std::vector<Need> needs;
    needs.reserve(demand.size());
    InverterDraws draws(unit);
    for (const auto& step : demand) {
        const auto& draw = draws.of(step);
        needs.push_back({.taken = (draw.at_bus() + step.direct) / watt,
                         .at_inverter = draw.at_terminals / watt,
                         .direct = step.direct / watt,
                         .charger = step.charger / watt,
                         .lowest = step.lowest / volt,
                         .needs = draw.needs / volt,
                         .through_inverter = unit.inverter && step.inverter_on,
                         .carried = draw.carried});
    }
    return needs;
}

MostNeeded most_of(std::span<const Need> needs) {
    const auto most = [&](double Need::*of) { return std::ranges::max(needs, {}, of).*of; };
    return {.at_inverter = most(&Need::at_inverter),
            .lowest = most(&Need::lowest),
            .needs = most(&Need::needs)};
}

bool switch_together(std::span<const demand::DemandStep> one,
                     std::span<const demand::DemandStep> other) {
    return std::ranges::equal(one, other, [](const auto& x, const auto& y) {
        return x.from == y.from && x.inverter_on == y.inverter_on;
    });
}

namespace lanes_detail {

LimitedBy limited_by(const Need& asked, LimitedBy why, bool nothing) {
    constexpr double as_good_as_equal = 1e-3;  // V; as the clock has it
    bool direct_first = !asked.through_inverter;
    if (asked.through_inverter && asked.direct > 0.0) {
        direct_first =
            asked.lowest > asked.needs + as_good_as_equal ||
            (asked.lowest > asked.needs - as_good_as_equal && asked.direct > asked.at_inverter);
    }
    return direct_first && nothing ? LimitedBy::charge : why;
}

}  // namespace lanes_detail

namespace {

// What was seen of a block goes to where it belongs.
void put_back(std::vector<std::vector<Seen>>& seen, lanes_detail::Watched& of_block,
              const std::vector<std::size_t>& whose) {
    for (std::size_t i = 0; i < whose.size(); ++i)
        seen[whose[i]] = std::move(of_block.seen[i]);
}

//   seen   one an outage, filled; nullptr: nobody watches
void run_all(std::span<const Outage> outages, Duration lasts, Duration midnight,
             std::span<OwnEnding> endings, LaneCost& counted, Width width,
             std::span<const Duration> at, std::vector<std::vector<Seen>>* seen) {
    assert(endings.size() == outages.size());
    std::vector<Outage> all(outages.begin(), outages.end());
    const auto worked_out = made_ready(all);
    std::vector<std::size_t> waiting;
    const auto clock = [&](std::size_t i) {
        endings[i] = by_clock(all[i], lasts, midnight);
        ++counted.by_clock;
    };
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (has_lanes(all[i]))
            waiting.push_back(i);
        else
            clock(i);
    }
    std::array<OwnEnding, lanes> ended;
    std::array<bool, lanes> decided{};
    while (!waiting.empty()) {
        const auto whose = taken_together(waiting, all);
        std::vector<Outage> block;
        for (const std::size_t i : whose)
            block.push_back(all[i]);
        const auto over = lanes_detail::stretches(block.front(), lasts, at);
        const std::size_t count = block.size();
        lanes_detail::Watched watched{.at = at, .seen = std::vector<std::vector<Seen>>(count)};
        const auto run =
            block.front().unit->others.empty() ? lanes_detail::run_likes : lanes_detail::run_banks;
        run(block, over, lasts, std::span(ended).first(count), std::span(decided).first(count),
            counted, width, seen ? &watched : nullptr);
        if (seen) put_back(*seen, watched, whose);
        for (std::size_t i = 0; i < count; ++i) {
            if (decided[i])
                endings[whose[i]] = ended[i];
            else
                clock(whose[i]);
        }
    }
}

Width widest() {
    static const Width width = widths_here().back();
    return width;
}

}  // namespace

void run_own(std::span<const Outage> outages, Duration lasts, Duration midnight,
             std::span<OwnEnding> endings, LaneCost* cost, std::optional<Width> width) {
    LaneCost uncounted;
    run_all(outages, lasts, midnight, endings, cost ? *cost : uncounted, width.value_or(widest()),
            {}, nullptr);
}

std::vector<std::vector<Seen>> run_watched(std::span<const Outage> outages, Duration lasts,
                                           Duration midnight, std::span<const Duration> at,
                                           std::span<OwnEnding> endings) {
    std::vector<std::vector<Seen>> seen(outages.size());
    LaneCost uncounted;
    run_all(outages, lasts, midnight, endings, uncounted, widest(), at, &seen);
    return seen;
}

}  // namespace abreast
