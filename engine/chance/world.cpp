#include "chance/world.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>
#include <mutex>
#include <numbers>
#include <numeric>

#include <fmt/format.h>

#include "battery/cell/percent.hpp"
#include "battery/softness.hpp"
#include "demand/demand.hpp"
#include "handling/gauge.hpp"
#include "inverter/model.hpp"
#include "motor/appliances/appliances.hpp"
#include "outage/demand_pattern.hpp"
#include "outage/panel_counts.hpp"
#include "outage/sky.hpp"
#include "outage/warmth.hpp"
#include "outage/weathers.hpp"
#include "solar/recharge.hpp"
#include "solar/weather/drawn_days.hpp"
#include "solar/weather/weather_file.hpp"
#include "unit/built.hpp"

namespace chance {

using namespace units;

namespace {

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);

// ---- Loads.

// Local days that the outage touches, as spans of it.
std::vector<demand::Span> local_days(const outage::Ready& ready) {
    std::vector<demand::Span> days;
    Duration from{};
    for (Duration until = ready.midnight; from < ready.outage.lasts; until += day) {
        if (until > from) days.push_back({.from = from, .until = until});
        from = until;
    }
    return days;
}

// The load on one day alone.
demand::PlannedLoad on_day(const demand::PlannedLoad& load, const demand::Span& of_day) {
    demand::PlannedLoad made = load;
    made.strands.clear();
    made.strands_low.clear();
    made.strands_high.clear();
    for (demand::Strand strand : load.strands) {
        strand.on = demand::common(strand.on, {of_day});
        if (!strand.on.empty()) made.strands.push_back(std::move(strand));
    }
    return made;
}

std::string place_of_day(DayKind kind, const std::string& load, std::size_t number) {
    switch (kind) {
        case DayKind::warm:
            return fmt::format("day/{}/warm", number);
        case DayKind::cold:
            return fmt::format("day/{}/cold", number);
        case DayKind::own:
            break;
    }
    return fmt::format("load/{}/day/{}", load, number);
}

// Whether all loads at once may ask for more than the inverter or the packs give, with draws that
// turn out half as large again.
bool together_too_much(const outage::Ready& ready) {
    constexpr double more = 1.5;
    Power watts{};
    double volt_amperes = 0.0;
    for (const auto& load : ready.demand.loads) {
        const Power all = more * double(load.count) * load.power.likely;
        watts += all / load.power.converter.value();
        if (load.from == scenario::Outlet::ac)
            volt_amperes += all / watt / load.power.factor.value();
    }
    const auto& inverter = ready.units[likely].inverter;
    if (inverter && (volt_amperes > inverter->continuous_apparent / volt_ampere ||
                     volt_amperes > inverter->continuous / watt))
        return true;
    Current borne{};
    for (const auto& kind : ready.kinds) {
        if (kind.count == 0) continue;
        if (!kind.model->current_limit) return false;
        borne += double(kind.count) * *kind.model->current_limit;
    }
    return watts / (0.85 * ready.nominal) > borne;
}

// ---- Packs.

constexpr double told_full = 0.995;
constexpr double of_a_told_charge = 0.05 / 1.2816;  // four times in five; common practice
constexpr Voltage of_a_meter = 0.02 * volt;         // common practice, no source

// A voltage read at rest leaves what the gauge makes of it.
StartSpread start_of(const scenario::Scenario& scenario, const scenario::Pack& pack,
                     double charge) {
    if (!pack.rested_voltage) {
        if (charge >= told_full) return {};
        return {.told_full = false, .above = of_a_told_charge, .below = of_a_told_charge};
    }
    const auto read = handling::gauge(scenario, {.reads = *pack.rested_voltage,
                                                 .error = of_a_meter,
                                                 .rested_for = pack.rested_for,
                                                 .pack = pack.name});
    if (!read) return {.told_full = false, .above = of_a_told_charge, .below = of_a_told_charge};
    constexpr double four_in_five = 1.2816;
    return {.told_full = false,
            .above = std::max(0.0, read->high.value() - charge) / four_in_five,
            .below = std::max(0.0, charge - read->low.value()) / four_in_five};
}

double charge_at(const StartSpread& spread, double charge, double value) {
    if (spread.told_full) return charge * (1.0 - 0.02 * value);
    const double score = score_of(value);
    return std::clamp(charge - (score > 0.0 ? spread.below : spread.above) * score,
                      std::min(0.0, charge), std::max(1.0, charge));
}

struct PackFactors {
    double charge = 1.0;
    double resistance = 1.0;
    double charging = 1.0;  // of the resistance that charging meets
};

// A pack that holds so much more charge bears no more current. method.md (4)
std::shared_ptr<const battery::PackModel> varied(const battery::PackModel& model,
                                                 const PackFactors& factors,
                                                 const StartSpread& start, double start_value) {
    auto made = std::make_shared<battery::PackModel>(model);
    made->kinetics.total *= factors.charge;
    made->capacity *= factors.charge;
    made->usable *= factors.charge;
    made->inner *= factors.resistance;
    made->charging.resistance.when_empty *= factors.charging;
    made->charging.resistance.rated *= factors.charge;
    made->locked = made->locked.of_more_charge(factors.charge);
    const double charge = battery::charge_left(model.capacity, model.at_start).value();
    made->at_start.removed = (1.0 - charge_at(start, charge, start_value)) * made->capacity;
    made->at_start.head_difference *= factors.charge;
    return made;
}

// ---- Warmth.

constexpr TemperatureDifference warmth_step = 0.5 * kelvin;
// What a model can be made for.
constexpr Temperature coldest_pack = celsius(-79.0);
constexpr Temperature warmest_pack = celsius(99.0);

Temperature moved(Temperature temperature, TemperatureDifference by) {
    return std::clamp(temperature + by, coldest_pack, warmest_pack);
}

unit::Warmth moved(unit::Warmth warmth, TemperatureDifference by) {
    warmth.packs = moved(warmth.packs, by);
    for (auto& of_day : warmth.days)
        of_day.temperature = moved(of_day.temperature, by);
    return warmth;
}

// The kinds as they are at another warmth.
//   of   the unknowns of each
outage::PackKinds kinds_at(const scenario::Scenario& scenario, const unit::Warmth& warmth,
                           outage::PackKinds kinds, const std::vector<PackUnknowns>& of) {
    const auto built = unit::built(scenario, warmth);
    if (!built) return kinds;
    for (std::size_t i = 0; i < kinds.size(); ++i)
        for (const unit::Packs& packs : built->packs)
            if (packs.index == of[i].index) {
                kinds[i].model = packs.model;
                kinds[i].days = packs.days;
            }
    return kinds;
}

// ---- Sun.

// Start dates of a weather file, those that offer most first.
std::vector<int> brightest_first(const outage::Ready& ready) {
    std::vector<double> offered;
    for (int number = 0; number < solar::start_dates; ++number) {
        const auto& sky = *ready.sky;
        offered.push_back(
            solar::sum(sky.track.under(solar::from_start_date(sky.hours, number), sky.controller))
                .offered /
            joule);
    }
    std::vector<int> order(offered.size());
    std::iota(order.begin(), order.end(), 0);
    std::ranges::stable_sort(order, std::greater{},
                             [&](int number) { return offered[std::size_t(number)]; });
    return order;
}

// Panels that give `scale` times as much, before the controller's limits.
outage::SunChange scaled(const solar::SunStep& step, const solar::ControllerModel& controller,
                         LocalTime starts, double scale) {
    outage::SunChange change = outage::sun_change(step, controller, starts);
    change.offered *= scale;
    change.clipped *= scale;
    change.passes *= scale;
    return change;
}

// What so many panels offer of what one gives before the controller.
solar::SunSeries of_panels(const solar::SunTrack& track, const std::vector<Power>& one, int panels,
                           const solar::ControllerModel& controller) {
    solar::SunSeries series;
    series.reserve(one.size());
    for (std::size_t i = 0; i < one.size(); ++i) {
        const auto offer = solar::through_controller(
            controller, {.power = double(panels) * one[i], .current = {}});
        series.push_back({.start = track.steps()[i].start,
                          .duration = track.steps()[i].duration,
                          .on_plane = {},
                          .offered = offer.power,
                          .clipped = offer.clipped,
                          .current = offer.current});
    }
    return series;
}

solar::ControllerModel limits_over(solar::ControllerModel controller, double scale) {
    if (controller.input_limit) *controller.input_limit /= scale;
    if (controller.output_limit) *controller.output_limit /= scale;
    return controller;
}

}  // namespace

// The packs by steps from their likely warmth, each made when it is first asked for.
class KindsByWarmth {
  public:
    KindsByWarmth(scenario::Scenario scenario, unit::Warmth usual, outage::PackKinds likely,
                  std::vector<PackUnknowns> unknowns)
        : scenario_(std::move(scenario)),
          usual_(std::move(usual)),
          likely_(std::move(likely)),
          unknowns_(std::move(unknowns)) {}

    outage::PackKinds at(int level) {
        if (level == 0) return likely_;
        const std::scoped_lock lock(making_);
        const auto [found, added] = made_.try_emplace(level);
        if (added)
            found->second =
                kinds_at(scenario_, moved(usual_, double(level) * warmth_step), likely_, unknowns_);
        return found->second;
    }

  private:
    scenario::Scenario scenario_;
    unit::Warmth usual_;
    outage::PackKinds likely_;
    std::vector<PackUnknowns> unknowns_;
    std::mutex making_;
    std::map<int, outage::PackKinds> made_;
};

// When loads run, for those that are switched off, each made when it is first asked for.
class PatternsByLoads {
  public:
    explicit PatternsByLoads(std::shared_ptr<const outage::Ready> ready)
        : ready_(std::move(ready)) {}

    //   demand   gives what is left
    std::shared_ptr<const outage::DemandPattern> of(const SwitchedOff& off,
                                                    const std::function<demand::Demand()>& demand) {
        const std::scoped_lock lock(making_);
        auto& found = made_[off];
        if (!found)
            found = std::make_shared<const outage::DemandPattern>(*ready_, demand(),
                                                                  outage::End::likely);
        return found;
    }

    // Whether no fuse of a 12 V circuit opens with these draws, nor with some of them off: looked at
    // once, with draws that hardly a member passes. False where that does not tell.
    //   much   gives the loads with such draws
    bool fuses_stand(std::span<const Power> drawn, const std::function<demand::Demand()>& much) {
        const std::scoped_lock lock(making_);
        if (!borne_) {
            borne_.emplace();
            const demand::Demand most = much();
            if (!outage::guarded_loads(*ready_, most, outage::End::likely))
                for (const auto& load : most.loads)
                    borne_->push_back(load.power.likely);
        }
        return std::ranges::equal(drawn, *borne_, std::less_equal<>());
    }

  private:
    std::shared_ptr<const outage::Ready> ready_;
    std::mutex making_;
    std::map<SwitchedOff, std::shared_ptr<const outage::DemandPattern>> made_;
    std::optional<std::vector<Power>> borne_;  // empty: a fuse may open with so much
};

// What any number of panels stands under, each made when it is first asked for.
class PanelsLit {
  public:
    explicit PanelsLit(std::shared_ptr<const outage::Ready> ready) : ready_(std::move(ready)) {}

    std::shared_ptr<const outage::SkyModels> with(int panels) {
        const std::scoped_lock lock(making_);
        const auto [found, added] = made_.try_emplace(panels);
        if (added) found->second = outage::sky_with_panels(*ready_, panels);
        return found->second;
    }

  private:
    std::shared_ptr<const outage::Ready> ready_;
    std::mutex making_;
    std::map<int, std::shared_ptr<const outage::SkyModels>> made_;
};

std::size_t Names::place_of(const std::string& name) {
    const auto [found, added] = places_.try_emplace(name, all_.size());
    if (added) all_.push_back(name);
    return found->second;
}

Result<World> World::of(const scenario::Scenario& written, const std::string& folder,
                        std::shared_ptr<const outage::Ready> ready) {
    auto likened = motor::with_appliances(written);
    if (!likened) return fail(std::move(likened.error()));
    World world;
    world.scenario_ = std::move(likened->scenario);
    scenario::Assumptions told_already;
    const auto warmth = outage::warmth_of(world.scenario_, folder, told_already);
    world.ready_ = std::move(ready);
    world.take_loads();
    world.take_packs();
    world.kinds_ =
        std::make_shared<KindsByWarmth>(world.scenario_, warmth, world.ready_->kinds, world.packs_);
    world.take_sun();
    world.note_parts();
    return world;
}

void World::note_parts() {
    for (const std::string& name : names_.all())
        part_of_.push_back(name.starts_with("load/") || name.starts_with("day/") ? Part::loads
                           : name.starts_with("inverter/")                       ? Part::inverter
                           : name.starts_with("pack/")                           ? Part::packs
                                                                                 : Part::light);
}

void World::take_loads() {
    const auto& demand = ready_->demand;
    take_phases();
    const auto days = local_days(*ready_);
    for (std::size_t i = 0; i < demand.loads.size(); ++i) {
        const auto& load = scenario_.loads[i];
        draws_.push_back(chance::draw_of(load, demand.loads[i].power));
        const DayKind kind = day_kind_of(load);
        const std::size_t draw = names_.place_of(fmt::format("load/{}/draw", load.name));
        auto& of_days = draws_of_days_.emplace_back();
        for (std::size_t number = 0; number < days.size(); ++number) {
            of_days.push_back(
                {.load = i, .draw = draw, .day = draw, .day_deviation = day_deviation(kind)});
            // With other phases it may run on days on which it does not with the usual one.
            if (may_meet() || !on_day(demand.loads[i], days[number]).strands.empty())
                of_days.back().day = names_.place_of(place_of_day(kind, load.name, number + 1));
        }
    }
    by_day_ = by_day(demand);
    patterns_ = std::make_shared<PatternsByLoads>(ready_);
    if (!scenario_.inverter) return;
    idle_ = names_.place_of("inverter/idle");
    idle_deviation_ = idle_deviation(*scenario_.inverter);
}

void World::take_phases() {
    if (!together_too_much(*ready_)) return;
    for (std::size_t i = 0; i < scenario_.loads.size(); ++i) {
        const auto& load = scenario_.loads[i];
        if (load.runs && load.runs->on < load.runs->every && !load.runs->starts_at)
            phases_.push_back(
                {.load = i, .place = names_.place_of(fmt::format("load/{}/phase", load.name))});
    }
}

ByDay World::by_day(const demand::Demand& demand) const {
    ByDay made{.demand = demand, .draws = {}};  // with what holds for all loads
    made.demand.loads.clear();
    made.demand.assumptions.clear();
    const auto days = local_days(*ready_);
    for (std::size_t i = 0; i < demand.loads.size(); ++i)
        for (std::size_t number = 0; number < days.size(); ++number) {
            auto of_day = on_day(demand.loads[i], days[number]);
            if (of_day.strands.empty()) continue;
            made.demand.loads.push_back(std::move(of_day));
            made.draws.push_back(draws_of_days_[i][number]);
        }
    return made;
}

ByDay World::by_day_with(Values values) const {
    if (!may_meet()) return by_day_;
    auto scenario = scenario_;
    for (const CyclePhase& phase : phases_)
        scenario.loads[phase.load].runs->starts_at =
            values[phase.place] * scenario.loads[phase.load].runs->every;
    auto demand = demand::plan_demand(scenario);
    if (!demand) return by_day_;
    // A load that was switched off for a time stays so.
    for (std::size_t i = 0; i < demand->loads.size(); ++i)
        for (auto& strand : demand->loads[i].strands)
            strand.on = demand::common(strand.on, ready_->demand.loads[i].may_run);
    return by_day(*demand);
}

void World::take_packs() {
    for (const auto& kind : ready_->kinds) {
        const auto named = std::ranges::find(scenario_.packs, kind.name, &scenario::Pack::name);
        assert(named != scenario_.packs.end());
        const scenario::Pack& pack = *named;
        const auto place = [&](const char* what) {
            return names_.place_of(fmt::format("pack/{}/{}", kind.name, what));
        };
        const double charge =
            battery::charge_left(kind.model->capacity, kind.model->at_start).value();
        std::optional<std::size_t> softness;
        if (battery::has_unknown_softness(pack)) softness = place("softness");
        packs_.push_back({.index = std::size_t(named - scenario_.packs.begin()),
                          .capacity = place("capacity"),
                          .resistance = place("resistance"),
                          .charging = place("charging"),
                          .start = place("start"),
                          .softness = softness,
                          .capacity_deviation = capacity_deviation(pack),
                          .start_spread = start_of(scenario_, pack, charge)});
    }
    warmth_ = names_.place_of("pack/warmth");
    warmth_deviation_ = warmth_deviation(scenario_.outage.battery_temperature.has_value());
}

void World::take_sun() {
    if (!ready_->sky) return;
    lit_ = std::make_shared<PanelsLit>(ready_);
    panels_ = names_.place_of("sun/scale");
    if (ready_->sky->hours) {
        file_start_ = names_.place_of("sky/start");
        dates_ = brightest_first(*ready_);
        take_snow(ready_->sky->hours->snowfall.empty());
        return;
    }
    climate_ = names_.place_of("sun/climate");
    for (std::size_t number = 1; number <= ready_->sky->track.days().size(); ++number)
        skies_.push_back(names_.place_of(fmt::format("sky/{}", number)));
    take_snow(true);
}

void World::take_snow(bool falls_are_drawn) {
    if (std::ranges::all_of(ready_->sky->groups,
                            [](const solar::PanelGroup& group) { return group.snow.empty(); }))
        return;
    for (std::size_t number = 1; number <= ready_->sky->track.days().size(); ++number) {
        SnowPlaces& of_day = snow_.emplace_back();
        if (falls_are_drawn) of_day.falls = names_.place_of(fmt::format("snow/{}/falls", number));
        of_day.goes = names_.place_of(fmt::format("snow/{}/goes", number));
    }
}

int World::warmth_level(Values values) const {
    const TemperatureDifference colder = warmth_deviation_ * score_of(values[warmth_]);
    return -static_cast<int>(std::lround(colder / warmth_step));
}

outage::PackKinds World::varied_kinds(Values values) const {
    outage::PackKinds kinds = kinds_->at(warmth_level(values));
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        const PackUnknowns& unknown = packs_[i];
        const PackFactors factors{
            .charge = std::exp(-unknown.capacity_deviation * score_of(values[unknown.capacity])),
            .resistance = std::exp(resistance_deviation * score_of(values[unknown.resistance])),
            .charging = std::exp(charging_deviation * score_of(values[unknown.charging]))};
        const auto soft = [&](const battery::PackModel& model) {
            return battery::with_softness(model, scenario_.packs[unknown.index],
                                          softness_at(score_of(values[*unknown.softness])));
        };
        const auto of = [&](const battery::PackModel& model) {
            return varied(unknown.softness ? soft(model) : model, factors, unknown.start_spread,
                          values[unknown.start]);
        };
        kinds[i].model = of(*kinds[i].model);
        for (auto& of_day : kinds[i].days)
            of_day.model = of(*of_day.model);
    }
    return kinds;
}

bool World::feeds_nothing(const SwitchedOff& off) const {
    if (!ready_->units[likely].inverter || std::ranges::find(off, true) == off.end()) return false;
    const auto& loads = ready_->demand.loads;
    for (std::size_t i = 0; i < loads.size(); ++i)
        if (!off[i] && loads[i].from == scenario::Outlet::ac) return false;
    return true;
}

Power World::drawn(const DayDraw& draw, Power likely, Values values) const {
    return likely * (factor_at(draws_[draw.load], score_of(values[draw.draw])) *
                     std::exp(draw.day_deviation * score_of(values[draw.day])));
}

demand::Demand World::switched(ByDay all, const SwitchedOff& off) const {
    for (std::size_t i = 0; i < all.demand.loads.size(); ++i)
        if (!off.empty() && off[all.draws[i].load]) all.demand.loads[i].strands.clear();
    if (feeds_nothing(off)) all.demand.inverter_on.clear();
    return std::move(all.demand);
}

demand::Demand World::demand(Values values, const SwitchedOff& off) const {
    const ByDay all = by_day_with(values);
    auto demand = switched(all, off);
    for (std::size_t i = 0; i < demand.loads.size(); ++i)
        demand.loads[i].power.likely = drawn(all.draws[i], demand.loads[i].power.likely, values);
    return demand;
}

std::optional<std::vector<demand::DemandStep>> World::steps_by_pattern(
    Values values, const SwitchedOff& off) const {
    if (may_meet()) return std::nullopt;
    std::vector<Power> loads;
    for (std::size_t i = 0; i < by_day_.draws.size(); ++i)
        loads.push_back(drawn(by_day_.draws[i], by_day_.demand.loads[i].power.likely, values));
    return patterns_->of(off, [&] { return switched(by_day_, off); })->with(loads);
}

std::vector<double> World::corner(double score) const {
    const double at = 0.5 * std::erfc(-score / std::numbers::sqrt2);
    std::vector<double> values;
    for (const std::string& name : names_.all()) {
        const bool of_a_day = name.starts_with("day/") || name.find("/day/") != std::string::npos;
        values.push_back(of_a_day ? 0.5 : at);
    }
    return values;
}

std::optional<int> World::start_date(Values values) const {
    if (dates_.empty()) return std::nullopt;
    const auto rank = static_cast<std::size_t>(values[file_start_] * double(dates_.size()));
    return dates_[std::min(rank, dates_.size() - 1)];
}

Light World::light(Values values) const {
    if (!lit_) return {};
    Light light = sky_of(values);
    light.one_panel = of_one_panel(light.sky);
    return light;
}

Light World::sky_of(Values values) const {
    Light light{.scale = std::exp(-panels_deviation * score_of(values[panels_]) -
                                  0.5 * panels_deviation * panels_deviation)};
    std::vector<solar::SnowDraw> snow;
    for (const SnowPlaces& of_day : snow_)
        snow.push_back({.falls = of_day.falls ? 1.0 - values[*of_day.falls] : 1.0,
                        .goes = 1.0 - values[of_day.goes]});
    if (const auto date = start_date(values)) {
        light.sky = solar::from_start_date(ready_->sky->hours, *date, std::move(snow));
        return light;
    }
    std::vector<double> bright;
    for (const std::size_t place : skies_)
        bright.push_back(1.0 - values[place]);
    solar::GivenSky given{
        .days = solar::daily_clearness(*ready_->site, ready_->outage.starts, ready_->sky->weather,
                                       1.0 - values[climate_], bright),
        .snow = std::move(snow)};
    light.sky = std::move(given);
    return light;
}

// So many panels that stand alike behind a controller that seeks their best voltage give so many
// times one of them, to the last bit; a drawn sky is one sky a step.
std::vector<Power> World::of_one_panel(const solar::Sky& sky) const {
    const bool alike = ready_->sky->groups.size() == 1 &&
                       ready_->sky->controller.kind == scenario::ControllerKind::mppt;
    if (!alike || !std::holds_alternative<solar::GivenSky>(sky)) return {};
    std::vector<Power> watts;
    const auto one = lit_->with(1);
    for (const auto& step :
         one->track.under(sky, {.kind = one->controller.kind, .efficiency = Efficiency(1.0)}))
        watts.push_back(step.offered);
    return watts;
}

std::vector<outage::SunChange> World::sun(const Light& light, int panels) const {
    const auto models =
        lit_ ? lit_->with(light.one_panel.empty() ? panels : std::min(panels, 1)) : nullptr;
    if (!models) return {};
    const auto controller = limits_over(models->controller, light.scale);
    solar::SunSeries lit;
    if (light.one_panel.empty())
        lit = models->track.under(light.sky, controller);
    else
        lit = of_panels(models->track, light.one_panel, panels, controller);
    std::vector<outage::SunChange> changes;
    changes.reserve(lit.size());
    for (const auto& step : lit)
        changes.push_back(scaled(step, models->controller, ready_->outage.starts, light.scale));
    return changes;
}

std::vector<outage::SunChange> World::sun(Values values, int panels) const {
    return sun(light(values), panels);
}

World::World() = default;
World::World(const World& other) = default;
World::World(World&& other) noexcept = default;
World& World::operator=(const World& other) = default;
World& World::operator=(World&& other) noexcept = default;
World::~World() = default;

int World::packs() const {
    return outage::count_of(ready_->kinds);
}

int World::panels() const {
    int panels = 0;
    if (ready_->sky)
        for (const auto& group : ready_->sky->groups)
            panels += group.count;
    return panels;
}

bool World::alike(Part part, Values one, Values other) const {
    for (std::size_t i = 0; i < part_of_.size(); ++i)
        if (part_of_[i] == part && one[i] != other[i]) return false;
    return true;
}

std::optional<inverter::Model> World::inverter_of(Values values) const {
    auto inverter = ready_->units[likely].inverter;
    if (inverter)
        inverter = inverter::with_idle(
            *inverter, std::exp(idle_deviation_ * score_of(values[idle_])) * inverter->losses.idle);
    return inverter;
}

void World::take_steps(Lived& made, Values values, const SwitchedOff& off) const {
    auto steps = steps_by_pattern(values, off);
    const auto fuses_stand = [&] {
        constexpr double hardly_passed = 3.5;  // deviations
        std::vector<Power> loads;
        for (std::size_t i = 0; i < by_day_.draws.size(); ++i)
            loads.push_back(drawn(by_day_.draws[i], by_day_.demand.loads[i].power.likely, values));
        return patterns_->fuses_stand(loads, [&] {
            demand::Demand most = by_day_.demand;
            for (std::size_t i = 0; i < most.loads.size(); ++i) {
                const DayDraw& draw = by_day_.draws[i];
                most.loads[i].power.likely *= factor_at(draws_[draw.load], hardly_passed) *
                                              std::exp(draw.day_deviation * hardly_passed);
            }
            return most;
        });
    };
    if (!steps || (outage::has_fuses(*ready_) && !fuses_stand())) {
        const demand::Demand drawn = demand(values, off);
        if (!steps) steps = outage::steps_of(*ready_, drawn, outage::End::likely);
        made.guarded = outage::guarded_loads(*ready_, drawn, outage::End::likely);
    }
    made.steps = std::move(*steps);
}

Lived World::lived(Values values, const SwitchedOff& off) const {
    assert(values.size() == names().size());
    Lived made{.kinds = varied_kinds(values),
               .inverter = inverter_of(values),
               .steps = {},
               .light = light(values),
               .sun = {}};
    take_steps(made, values, off);
    made.sun = sun(made.light, panels());
    return made;
}

Lived World::lived(Values values, const SwitchedOff& off, const LivedBefore& before) const {
    const auto same = [&](Part part) { return alike(part, values, before.values); };
    Lived made{
        .kinds = same(Part::packs) ? before.lived.kinds : varied_kinds(values),
        .inverter = same(Part::inverter) ? before.lived.inverter : inverter_of(values),
        .steps = {},
        .light = same(Part::light) ? before.lived.light : light(values),
        .sun = {},
    };
    if (off == before.off && same(Part::loads)) {
        made.steps = before.lived.steps;
        made.guarded = before.lived.guarded;
    } else {
        take_steps(made, values, off);
    }
    made.sun = sun(made.light, panels());
    return made;
}

outage::Course World::run(const Lived& lived, int packs, const std::vector<outage::SunChange>& sun,
                          outage::Keep keep, std::vector<outage::SunOfDay>* days) const {
    const auto kinds = outage::with_count(lived.kinds, packs);
    outage::Unit unit = outage::unit_of(kinds, ready_->main_path);
    unit.inverter = lived.inverter;
    unit.main_fuse = ready_->units[likely].main_fuse;
    return outage::run(unit, lived.steps, sun, ready_->outage.lasts, ready_->midnight, keep, days,
                       outage::or_none(lived.guarded));
}

}  // namespace chance
