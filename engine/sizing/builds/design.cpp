#include "sizing/builds/design.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

#include "outage/clock/overload.hpp"
#include "outage/clock/serving.hpp"
#include "solar/recharge.hpp"

namespace sizing {

namespace {

using namespace units;

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);

abreast::ReadyPacks ready_packs(const outage::Unit& unit, std::size_t day, Voltage lowest,
                                Voltage needs) {
    const auto bank = outage::on_day(unit, 0, day);
    return {.count = bank.count,
            .timed = outage::Overload(bank).timed(),
            .charge_borne = outage::charge_borne(bank),
            .with_inverter = outage::serving(bank, true, lowest, needs),
            .direct = outage::serving(bank, false, lowest, needs)};
}

// Counts of packs that differ have no lane; what stands in their place is not looked at.
abreast::LaneWorld world(const outage::Ready& ready, const std::vector<outage::Unit>& units,
                         const std::vector<abreast::Need>& asked, const Skies& skies) {
    const auto& unit = ready.units[likely];
    const auto first = outage::on_day(unit, 0, 0);
    abreast::LaneWorld made{.at_start = first.at_start,
                            .already_empty = outage::starts_empty(first)};
    made.a_fuse_may_open =
        outage::main_fuse_may_open(unit, ready.steps[likely]) || ready.parts[likely].may_open;
    const auto lowest =
        std::ranges::max(ready.steps[likely], {}, &demand::DemandStep::lowest).lowest;
    const double needs = std::ranges::max(asked, {}, &abreast::Need::needs).needs;
    for (std::size_t day = 0; day < std::max<std::size_t>(1, unit.days.size()); ++day) {
        auto& packs = made.days.emplace_back();
        for (const auto& of_count : units)
            packs.push_back(ready_packs(of_count, day, lowest, needs * volt));
    }
    made.segments = abreast::segments(unit, ready.steps[likely], skies.from(), ready.outage.lasts,
                                      made.days.front().front().direct);
    return made;
}

// Of the sun, whatever the voltage of the bus: the lanes know powers alone.
bool passes_current(const Design& design) {
    const auto& sky = design.ready->sky;
    return sky && sky->controller.kind == scenario::ControllerKind::pwm;
}

// Of a unit of its own, whose packs differ or that only the clock can run.
class Own {
  public:
    Own(const Design& design, std::size_t most) : design_(design) { suns_.reserve(most); }

    void add(const abreast::LaneJob& job, std::size_t whose) {
        auto& sun = suns_.emplace_back();
        for (std::size_t i = 0; i < job.sun.size(); ++i) {
            const Power offered = job.sun[i] * watt;
            sun.push_back({.from = design_.skies.from()[i],
                           .offered = offered,
                           .passes = passes_current(design_)
                                         ? offered / design_.ready->sky->controller.battery_voltage
                                         : Current{}});
        }
        outages_.push_back({.unit = &design_.units[static_cast<std::size_t>(job.packs - 1)],
                            .demand = design_.ready->steps[likely],
                            .needs = design_.needs,
                            .sun = sun,
                            .guarded = outage::guarded_loads(*design_.ready, outage::End::likely)});
        whose_.push_back(whose);
    }

    void run(std::span<abreast::LaneEnding> endings, abreast::LaneCost* cost) const {
        if (outages_.empty()) return;
        std::vector<abreast::OwnEnding> ended(outages_.size());
        abreast::run_own(outages_, design_.ready->outage.lasts, design_.ready->midnight, ended,
                         cost);
        for (std::size_t i = 0; i < ended.size(); ++i)
            endings[whose_[i]] = {.lasts = ended[i].lasts, .survives = ended[i].survives};
    }

  private:
    const Design& design_;
    std::vector<std::vector<outage::SunChange>> suns_;
    std::vector<abreast::Outage> outages_;
    std::vector<std::size_t> whose_;
};

// Whether so much may be offered that a fuse could open on the charge.
bool may_open_on_charge(const Design& design, const abreast::LaneWorld& world,
                        const abreast::LaneJob& job) {
    const auto& packs = world.days.front()[static_cast<std::size_t>(job.packs - 1)];
    if (!std::isfinite(packs.charge_borne / watt)) return false;
    Power most = job.sun.empty() ? Power{} : *std::ranges::max_element(job.sun) * watt;
    Power charger{};
    for (const auto& step : design.ready->steps[likely])
        charger = std::max(charger, step.charger);
    return most + charger > packs.charge_borne;
}

}  // namespace

void run_outages(const Design& design, std::span<const abreast::LaneJob> jobs,
                 std::span<abreast::LaneEnding> endings, abreast::LaneCost* cost) {
    assert(jobs.size() <= abreast::lanes && endings.size() == jobs.size());
    std::array<abreast::LaneJob, abreast::lanes> together;
    std::array<abreast::LaneEnding, abreast::lanes> ended;
    std::array<std::size_t, abreast::lanes> whose;
    Own own(design, jobs.size());
    // Those with panels and those without have their own segments.
    for (const abreast::LaneWorld* world : {&design.lit, &design.dark}) {
        std::size_t count = 0;
        for (std::size_t i = 0; i < jobs.size(); ++i) {
            if (jobs[i].sun.empty() != (world == &design.dark)) continue;
            const bool as_current = !jobs[i].sun.empty() && passes_current(design);
            if (!design.alike(jobs[i].packs) || world->a_fuse_may_open || as_current ||
                may_open_on_charge(design, *world, jobs[i])) {
                own.add(jobs[i], i);
                continue;
            }
            together[count] = jobs[i];
            whose[count++] = i;
        }
        if (count == 0) continue;
        abreast::run_lanes(*world, std::span(together).first(count), std::span(ended).first(count),
                           cost);
        for (std::size_t i = 0; i < count; ++i)
            if (ended[i].undecided)
                own.add(together[i], whose[i]);
            else
                endings[whose[i]] = ended[i];
    }
    own.run(endings, cost);
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
    design.needs = abreast::needs_of(made.units[likely], made.steps[likely]);
    design.lit = world(made, design.units, design.needs, design.skies);
    design.dark = world(made, design.units, design.needs, {});
    return design;
}

}  // namespace sizing
