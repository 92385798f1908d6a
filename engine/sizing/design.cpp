#include "sizing/design.hpp"

#include <algorithm>
#include <array>
#include <cassert>

#include "outage/serving.hpp"
#include "solar/recharge.hpp"

namespace sizing {

namespace {

using namespace units;

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);

ReadyPacks ready_packs(const outage::Ready& ready, int count) {
    const auto unit = outage::with_packs(ready, outage::End::likely, count);
    return {.count = count,
            .with_inverter = outage::serving(unit, true),
            .direct = outage::serving(unit, false)};
}

LaneWorld world(const outage::Ready& ready, const Skies& skies, int most_packs) {
    const auto& unit = ready.units[likely];
    LaneWorld made{.at_start = unit.bank.at_start,
                   .already_empty = outage::starts_empty(unit.bank)};
    for (int count = 1; count <= most_packs; ++count)
        made.packs.push_back(ready_packs(ready, count));
    made.segments =
        segments(unit, ready.steps[likely], skies, ready.outage.lasts, made.packs.front().direct);
    return made;
}

// By the clock of the single outage.
LaneEnding run_alone(const Design& design, const LaneJob& job) {
    const auto& ready = *design.ready;
    std::vector<outage::SunChange> sun;
    for (std::size_t i = 0; i < job.sun.size(); ++i)
        sun.push_back({.from = design.skies.from()[i],
                       .offered = job.sun[i] * watt,
                       .loads_only = design.skies.loads_only()[i]});
    const auto& unit = design.units[static_cast<std::size_t>(job.packs - 1)];
    const auto course = outage::run(unit, ready.steps[likely], sun, ready.outage.lasts,
                                    ready.midnight, {.trace = false, .after_failure = false});
    return {.lasts = course.lasts, .survives = course.survives};
}

}  // namespace

void run_outages(const Design& design, std::span<const LaneJob> jobs, std::span<LaneEnding> endings,
                 LaneCost* cost) {
    assert(jobs.size() <= lanes && endings.size() == jobs.size());
    std::array<LaneJob, lanes> together;
    std::array<LaneEnding, lanes> ended;
    std::array<std::size_t, lanes> whose;
    // Those with panels and those without have their own segments.
    for (const LaneWorld* world : {&design.lit, &design.dark}) {
        std::size_t count = 0;
        for (std::size_t i = 0; i < jobs.size(); ++i) {
            if (jobs[i].sun.empty() != (world == &design.dark)) continue;
            if (!design.alike(jobs[i].packs)) {
                endings[i] = run_alone(design, jobs[i]);
                continue;
            }
            together[count] = jobs[i];
            whose[count++] = i;
        }
        if (count == 0) continue;
        run_lanes(*world, std::span(together).first(count), std::span(ended).first(count), cost);
        for (std::size_t i = 0; i < count; ++i)
            endings[whose[i]] = ended[i];
    }
}

Result<Design> make_design(const scenario::Scenario& scenario, const std::string& folder,
                           int most_packs, int most_panels) {
    auto ready = outage::make_ready(scenario, folder);
    if (!ready) return fail(std::move(ready.error()));
    return design_of(std::make_shared<const outage::Ready>(std::move(*ready)), most_packs,
                     most_panels);
}

Design design_of(std::shared_ptr<const outage::Ready> ready, int most_packs, int most_panels) {
    Design design{.ready = std::move(ready), .most_packs = std::max(1, most_packs)};
    const auto& made = *design.ready;
    design.packs = outage::count_of(made.kinds);
    if (made.sky) {
        for (const auto& group : made.sky->groups)
            design.panels += group.count;
        design.most_panels = std::max(0, most_panels);
        design.skies = Skies(design.ready, design.most_panels);
        if (made.sky->hours) design.most_weathers = solar::start_dates;
    } else {
        design.most_panels = 0;
    }
    for (int count = 1; count <= design.most_packs; ++count)
        design.units.push_back(outage::with_packs(made, outage::End::likely, count));
    design.lit = world(made, design.skies, design.most_packs);
    design.dark = world(made, {}, design.most_packs);
    return design;
}

}  // namespace sizing
